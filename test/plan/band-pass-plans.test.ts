/** Plans of band-passes of fourth order: two chambers, the drivers between them, a front that comes off. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post, testApp } from '../support/call.ts'
import { mergePatch } from '../support/merge-patch.ts'
import { workStates } from '../support/work-states.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const bandPassPlan = { ...estatePlan, driverCount: 1, enclosure: { kind: 'band-pass-4', goal: 'loud' } }
const planned = (patch: object = {}): Answer =>
  JSON.parse(planSystem.answerText(mergePatch(bandPassPlan, patch), { digits: 'six', basis: false }))

/** Dry air at 20 °C: a common handbook value, from memory. */
const SOUND_M_PER_S = 343.2

describe('a plan of a band-pass', () => {
  const plan = planned()
  const { result, cautions } = plan
  const box = result.parts.box.answer.result
  const chamber = (name: string) => box.chambers.find((each: Answer) => each.name === name)
  const { figures } = result.choice

  it('is whole: nothing is refused, nothing stops', () => {
    expect(result.summary.verdict).toBe('take-care')
    expect(result.summary.reasons).toEqual([])
    expect(figures.kind).toBe('band-pass-4')
    expect(box.clearances.every(({ passes }: Answer) => passes)).toBe(true)
    expect(box.assembly.stuck).toEqual([])
    expect(result.cover.sentence).toContain('in a band-pass of')
    expect(result.summary.lines.join(' ')).toMatch(/For that it gives up/)
  })

  it('parts its inside without a litre lost: chambers, divider and what stands in them', () => {
    const { inner, volume, panels } = box
    const insideL = inner.widthMm * inner.heightMm * inner.depthMm * 1e-6
    expect(chamber('rear').grossL + chamber('front').grossL + volume.displaced.dividerL).toBeCloseTo(insideL, 3)
    expect(chamber('rear').netL + chamber('front').netL).toBeCloseTo(volume.netL, 3)
    // four strips of 30 mm along the mouth: two across it, two between them
    const { thicknessMm } = panels[0]
    const roundMm = 2 * inner.widthMm + 2 * (inner.heightMm - 60)
    expect(volume.displaced.cleatsL).toBeCloseTo(roundMm * 30 * thicknessMm * 1e-6, 3)
    expect(figures.netVolumeL).toBe(chamber('rear').netL)
    expect(figures.frontVolumeL).toBe(chamber('front').netL)
  })

  it('tunes the front chamber by the tube that goes through its wall (Helmholtz 1860, from memory)', () => {
    const { port } = box
    const areaM2 = port.count * port.areaCm2 * 1e-4
    const lengthM = (port.lengthMm + 1.463e3 * Math.sqrt((port.areaCm2 * 1e-4) / Math.PI)) / 1e3
    const tuningHz = (SOUND_M_PER_S / (2 * Math.PI)) * Math.sqrt(areaM2 / (lengthM * chamber('front').netL * 1e-3))
    expect(figures.tuningHz / tuningHz).toBeCloseTo(1, 2)
    expect(port.pipeResonanceHz).toBeGreaterThan(2 * 80)
  })

  it('keeps the cone, the air and the drivers within their limits', () => {
    const { atDrive } = result.parts.response.answer.result.limits
    expect(atDrive.coneExcursionOfXmax).toBeLessThanOrEqual(1.001)
    expect(atDrive.portAirSpeedMPerS).toBeLessThanOrEqual(25)
  })

  it('screws the front on over a gasket, after each cone was seen to move and to come back', () => {
    const ids = result.buildOrder.steps.map(({ id }: Answer) => id)
    const order = ['close-box', 'leak-test', 'fit-driver', 'cone-leak-test', 'polarity', 'close-front', 'listen']
    expect(ids.filter((id: string) => order.includes(id))).toEqual(order)
    expect(ids.every((id: string) => id in workStates)).toBe(true)
    const rows = (part: string) => result.billOfMaterials.filter((row: Answer) => row.part === part)
    const [front] = box.panels.filter(({ role }: Answer) => role === 'front')
    const roundM = (2 * (front.lengthMm + front.widthMm)) / 1e3
    const gaskets = rows('gasket').map(({ need }: Answer) => need)
    expect(gaskets.some((need: number) => Math.abs(need - roundM) < 0.01)).toBe(true)
    expect(rows('t-nut').some(({ need }: Answer) => need === Math.ceil(roundM / 0.12))).toBe(true)
    // nothing glues or screws the lid to a front that comes off
    const screws = box.panels.flatMap(({ copies }: Answer) => copies.flatMap(({ marks }: Answer) => marks))
    expect(screws.filter(({ part, screws: held }: Answer) => part.startsWith('front') && held.length > 0)).toEqual([])
    expect(box.panels.filter(({ name }: Answer) => name.startsWith('ledge')).length).toBeGreaterThan(0)
  })

  it('warns that nobody sees the cones', () => {
    expect(cautions.map(({ code }: Answer) => code)).toContain('cones-out-of-sight')
    expect(cautions.find(({ code }: Answer) => code === 'cones-out-of-sight').level).toBe('care')
  })

  it('is planned again to the last digit by the patch of each other box', () => {
    expect(result.choice.alternatives.length).toBeGreaterThan(0)
    for (const { patch, figures: other } of result.choice.alternatives) {
      const again = planned(patch).result
      expect(again.summary.reasons).toEqual([])
      const volumes = again.parts.box.answer.result.chambers
      expect(volumes.find(({ name }: Answer) => name === 'rear').netL).toBe(other.netVolumeL)
      expect(volumes.find(({ name }: Answer) => name === 'front').netL).toBe(other.frontVolumeL)
      expect(again.parts.response.answer.result.scalars.frontTuningHz).toBe(other.tuningHz)
    }
  })

  it('stands in German too', async () => {
    const headers = { 'accept-language': 'de', 'content-type': 'application/json' }
    const request = { method: 'POST', url: '/v1/plans', headers, payload: JSON.stringify(bandPassPlan) } as const
    const { statusCode, body } = await (await testApp()).inject(request)
    expect(statusCode).toBe(200)
    expect(body).toContain('im Bandpassgehäuse mit')
    expect(body).toContain('Anschlagleiste')
  })
})

describe('a plan asked for a band-pass', () => {
  const given = { goal: null, netVolumeL: 20, frontVolumeL: 26, tuningHz: 55 }

  it('builds both volumes and the tuning that are given', () => {
    const { chambers } = planned({ enclosure: given }).result.parts.box.answer.result
    const netL = Object.fromEntries(chambers.map(({ name, netL: each }: Answer) => [name, each]))
    expect(netL.rear / 20).toBeCloseTo(1, 1)
    expect(netL.front / 26).toBeCloseTo(1, 2)
  })

  it.each([
    [{ enclosure: { portShape: 'slot' } }, '/enclosure/portShape'],
    [{ enclosure: { portFace: 'back' } }, '/enclosure/portFace'],
    [{ enclosure: { kind: 'vented', frontVolumeL: 20 } }, '/enclosure/frontVolumeL'],
    [{ enclosure: { frontVolumeL: 20 } }, '/enclosure/frontVolumeL'],
    [{ enclosure: { qtc: 0.7, goal: null } }, '/enclosure/qtc'],
    [{ enclosure: { radiatorCount: 2 } }, '/enclosure/radiatorCount'],
    [{ enclosure: { goal: 'tight' } }, '/enclosure/goal'],
    [{ driver: { mounting: { face: 'top' } } }, '/driver/mounting/face'],
    [{ car: { space: { lidSlopeDeg: 10, shape: 'wedge' } } }, '/enclosure/kind']
  ])('refuses %j at %s', async (patch, pointer) => {
    const { status, body } = await post('/v1/plans', mergePatch(bandPassPlan, patch))
    expect(status).toBe(422)
    expect(body.errors.map((each: Answer) => each.pointer)).toContain(pointer)
  })
})
