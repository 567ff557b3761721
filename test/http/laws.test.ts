/** What is said always to hold does so for every example, and is noticed where it does not. */
import { describe, expect, it } from 'vitest'
import { asked, generalFinding, lawFindings, type Reply } from '../../scripts/adversary/judge.ts'
import { minimised } from '../../scripts/adversary/minimise.ts'
import { referenceChapters } from '../../src/http/docs/reference.ts'
import type { ContractDocument } from '../../src/http/openapi/reading.ts'
import { generalLaws } from '../../src/http/operations/general-laws.ts'
import { operations } from '../../src/http/operations.ts'
import type { Operation } from '../../src/http/wire/operation.ts'
import { testApp } from '../support/call.ts'
import { seeded } from '../support/random-requests.ts'
import { worked } from '../support/worked-examples.ts'

const operation = (id: string): Operation => {
  const found = operations.find(({ operationId }) => operationId === id)
  if (found === undefined) throw new TypeError(`no operation ${id}`)
  return found
}
const firstExample = ({ examples }: Operation) => Object.values(examples)[0]?.request

describe('what always holds', () => {
  it('has one name and one sentence for each operation', () => {
    for (const { operationId, laws } of operations) {
      expect(new Set(laws.map(({ id }) => id)).size, operationId).toBe(laws.length)
      for (const { sentence } of laws) expect(sentence).toMatch(/^[A-Z].*\.$/)
    }
    expect(operations.flatMap(({ laws }) => laws).length).toBeGreaterThan(40)
  })

  for (const one of operations.filter(({ heavy }) => heavy !== true)) {
    it(`holds for the examples of ${one.operationId}`, async () => {
      const app = await testApp()
      for (const { request } of Object.values(one.examples)) {
        const reply = await asked(app, one, request)
        if (reply.status !== 200) continue
        expect(await lawFindings(app, one, { request, reply }, seeded(7))).toEqual([])
      }
    })
  }
})

describe('the reference page', () => {
  it('says beside a calculation what always holds', () => {
    const post = { operationId: 'chooseCable', tags: ['Supply'], summary: 'Cable', responses: {} }
    const document: ContractDocument = {
      paths: { '/v1/supply/cables': { post } },
      components: { schemas: {}, parameters: {}, responses: {} }
    }
    const chapters = referenceChapters(document)
    const text = (id: string) => String(chapters.find(chapter => chapter.id === id)?.body.html)
    expect(text('tag-supply')).toContain('<li>Of two sizes the larger never drops more')
    expect(text('always')).toContain('<li>Six digits are the full figure rounded.</li>')
  })
})

/** A figure of an answer made wrong, and the law that says so. */
const wrongs: readonly (readonly [id: string, law: string, spoil: (result: Spoilt) => void])[] = [
  ['chooseCable', 'larger-cable-drops-less', ({ candidates }) => (candidates[5].dropV *= 3)],
  ['chooseCable', 'drop-is-current-times-loop', ({ candidates }) => (candidates[5].loopOhm *= 1.001)],
  ['chooseCable', 'chosen-size-passes', ({ candidates, cable }) => (cable.designation = candidates[0].designation)],
  ['rateFuse', 'fuse-within-its-bounds', ({ fuse, bounds }) => (fuse.ratingA = bounds.highestA + 5)],
  ['computeFeeder', 'currents-meet', ({ amplifiers }) => (amplifiers[0].currentA += 0.1)],
  ['computeCurrent', 'louder-draws-more', ({ currents }) => (currents.averageA = currents.heavyA * 1.01)],
  ['computeCurrent', 'currents-are-sums', ({ amplifiers }) => (amplifiers[0].fullSineA *= 1.01)],
  ['computeCircuit', 'currents-balance', ({ states }) => (states[0].parts[0].currentA += 1)],
  ['wireCoils', 'loads-between-parallel-and-series', ({ loads }) => (loads[0].ohm = 0.1)],
  ['wireCoils', 'chosen-load-is-allowed', ({ chosen }) => (chosen.ohm = 0.5)],
  ['layOutBox', 'volumes-balance', ({ volume }) => (volume.netL += 0.1)],
  ['modelBox', 'bodies-fit-their-hull', ({ bodies }) => (bodies[0].volumeL *= 2)],
  ['checkPanelVibration', 'clamped-is-higher', ({ plain }) => (plain.supportedHz = plain.clampedHz * 1.1)],
  ['nestPanels', 'every-panel-once', ({ layouts }) => layouts[0].pieces.pop()],
  ['nestPanels', 'pieces-apart-on-their-sheet', ({ layouts }) => (layouts[0].pieces[0].xMm = 1e5)],
  ['nestPanels', 'areas-balance', ({ total }) => (total.wastePercent += 1)],
  ['sizePort', 'areas-of-ports-add-up', ({ candidates }) => (candidates[0].totalAreaCm2 += 1)],
  ['sizePort', 'recommended-is-a-candidate', ({ recommended }) => (recommended.lengthMm += 7)],
  ['computeResponse', 'impedance-above-the-coil', ({ curves }) => (curves.impedanceOhm[3] = 0.5)],
  ['completeDriverParameters', 'total-q', ({ driver }) => (driver.qts *= 1.01)],
  ['matchAmplifier', 'gain-is-power-into-the-load', ({ gain }) => (gain.targetVoltageV *= 1.01)],
  ['setUpSignal', 'gain-is-power-into-the-load', ({ gain }) => (gain.powerW *= 1.01)]
]
// biome-ignore lint/suspicious/noExplicitAny: an answer that is spoilt on purpose
type Spoilt = any

describe('a law', () => {
  for (const [id, name, spoil] of wrongs) {
    it(`notices a wrong figure: ${id} ${name}`, () => {
      const one = operation(id)
      const law = one.laws.find(each => each.id === name)
      const complaints = Object.values(one.examples).map(({ request }) => {
        const result = structuredClone(worked(one, request).result)
        expect(law?.broken({ request, result }, { request, result })).toBeUndefined()
        try {
          spoil(result)
        } catch {
          return undefined
        }
        return law?.broken({ request, result }, { request, result })
      })
      expect(complaints.find(complaint => complaint !== undefined)).toBeTypeOf('string')
    })
  }

  it('of every operation notices another answer, another digit and a changed figure', async () => {
    const one = operation('wireCoils')
    const request = firstExample(one)
    const app = await testApp()
    const reply = await asked(app, one, request)
    const spoilt: Reply = { ...reply, body: reply.body.replace(/"ohm":\d+/, '"ohm":77') }
    for (const law of generalLaws) {
      expect(await generalFinding(app, one, law, { request, reply })).toBeUndefined()
      expect(await generalFinding(app, one, law, { request, reply: spoilt })).toMatchObject({ law: law.id })
    }
  })
})

describe('a find', () => {
  it('is made as small as it can be', async () => {
    const large = {
      amplifiers: [{ powerW: 1234.567, class: 'D' }, { powerW: 3 }],
      drive: 'hybrid',
      systemVoltageV: 12.6
    }
    const harms = async (request: unknown) => /"powerW":1\d+/.test(JSON.stringify(request))
    expect(await minimised(large, harms)).toEqual({ amplifiers: [{ powerW: 1000 }] })
  })
})
