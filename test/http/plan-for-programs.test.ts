/** What a shop or a phone takes from a plan: figures, reasons, rows of the bill and the compact form, each from the plan itself. */
import { gzipSync } from 'node:zlib'
import { beforeAll, describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post, type Reply, testApp } from '../support/call.ts'
import { contractFaults } from '../support/contract-judge.ts'

type Plan = Reply['body']

let estate: Plan
beforeAll(async () => {
  estate = (await post('/v1/plans', estatePlan)).body
})

const resultOf = (name: string) => estate.result.parts[name].answer.result

describe('figures of the summary', () => {
  it('are those of the parts', () => {
    const { figures } = estate.result.summary
    const { outer, volume, massKg } = resultOf('box')
    const { scalars, limits } = resultOf('response')
    expect(figures).toMatchObject({
      netVolumeL: volume.netL,
      widthMm: outer.widthMm,
      depthMm: outer.depthMm,
      massKg,
      tuningHz: scalars.tuningHz,
      f3Hz: scalars.f3Hz,
      peakLevelDb: scalars.peakLevelDb,
      coneExcursionMm: limits.atDrive.coneExcursionMm,
      fullSineA: resultOf('current').currents.fullSineA,
      fuseA: estate.result.circuit.trunk.fuse.ratingA,
      powerCable: estate.result.circuit.trunk.designation
    })
  })

  it('say nothing of a box that does not fit', async () => {
    const tiny = { ...estatePlan, car: { space: { widthMm: 330, heightMm: 200, depthMm: 200 } } }
    const { summary } = (await post('/v1/plans?parts=summary', tiny)).body.result
    expect(summary.figures.netVolumeL).toBeUndefined()
    expect(summary.figures.fullSineA).toBeGreaterThan(0)
    expect(summary.reasons[0]).toMatchObject({ code: 'no-box-fits', detail: expect.any(String) })
  })
})

describe('reasons', () => {
  it('name part, code and field', async () => {
    // a piston would bear a guess of its power
    const { powerW: _, sdCm2: __, ...sheet } = estatePlan.driver.sheet
    const unrated = { ...estatePlan, driver: { ...estatePlan.driver, sheet } }
    const { summary, parts } = (await post('/v1/plans?parts=parts', unrated)).body.result
    expect(summary.reasons[0]).toMatchObject({
      code: 'missing-input',
      part: 'matching',
      pointer: '/driver/sheet/powerW'
    })
    expect(summary.reasons.at(-1).code).toBe('waiting')
    expect([parts.matching.status, parts.wiring.status]).toEqual(['failed', 'waiting'])
  })
})

/** A fuse is bought by its form, and told by the word of its family in programs. */
const forms = { C: 'regular blade', F: 'miniature blade', 'marine-strip': 'bolt-down strip for boats' } as const

describe('rows of the bill', () => {
  it('have names of their own, and figures that their words have', () => {
    const rows: Plan[] = estate.result.billOfMaterials
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length)
    for (const { id, part } of rows) expect(id.replace(/-\d+$/, ''), id).toBe(part.replace(/-\d+$/, ''))
    const specified = rows.filter(({ specification }) => specification !== undefined)
    expect(specified.length).toBeGreaterThan(15)
    for (const { item, basis, specification } of specified) {
      const { fuseType } = specification as { readonly fuseType?: keyof typeof forms }
      const told = { ...specification, fuseType: fuseType && forms[fuseType] }
      for (const name of ['designation', 'ratedA', 'fuseType', 'thread'] as const) {
        const value = told[name]
        if (value !== undefined) expect(`${item} ${basis}`, name).toContain(String(value))
      }
    }
  })

  it('say of what they are the alternative', () => {
    const rows: Plan[] = estate.result.billOfMaterials
    for (const { item, insteadOf, needed } of rows) {
      expect(item.startsWith('or, instead of'), item).toBe(insteadOf !== undefined)
      if (insteadOf === undefined) continue
      expect(needed).toBe(false)
      expect(rows.some(({ part }) => part === insteadOf)).toBe(true)
    }
  })
})

describe('the compact form', () => {
  for (const [name, request] of Object.entries({ estatePlan, hatchbackPlan, leaningPlan })) {
    it(`of ${name} is at most 6 kB, leaves no caution out and agrees with the whole`, async () => {
      const app = await testApp()
      const compact = await app.inject({ method: 'POST', url: '/v1/plans?form=compact', payload: request })
      expect(compact.headers['content-type']).toMatch(/^application\/vnd\.cabinbass\.compact\+json/)
      expect(gzipSync(compact.body).length).toBeLessThanOrEqual(6_000)
      const whole = (await post('/v1/plans', request)).body
      const phone = compact.json()
      expect(phone.summary).toEqual(whole.result.summary)
      expect(phone.calculation).toEqual(whole.calculation)
      expect(phone.cautions.map((each: Plan) => [each.code, each.level])).toEqual(
        whole.cautions.map((each: Plan) => [each.code, each.level])
      )
      expect(phone.buy.map(({ id }: Plan) => id)).toEqual(
        whole.result.billOfMaterials.flatMap(({ id, needed }: Plan) => (needed ? [id] : []))
      )
    })
  }

  it('keeps to the contract, whole and in parts', async () => {
    const { path } = planSystem
    expect(
      contractFaults(path, 200, 'application/json', (await post(`${path}?parts=cover,parts.fuse`, estatePlan)).body)
    ).toEqual([])
  })
})
