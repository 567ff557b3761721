/** A wish in plain words decides the box of a plan, and is told where it cannot. */
import { describe, expect, it } from 'vitest'
import { planSystem } from '../../../src/http/operations/systems/plans.ts'
import { hatchbackPlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { post } from '../../support/call.ts'
import { sweepRequests } from '../../support/sweep-requests.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const planned = (enclosure: object | undefined, rest: object = {}): Answer =>
  JSON.parse(planSystem.answerText({ ...hatchbackPlan, ...rest, enclosure }, { digits: 'six', basis: false }))
const netL = ({ result }: Answer): number => result.parts.box.answer.result.volume.netL
const unkept = ({ cautions }: Answer) => cautions.filter(({ code }: { code: string }) => code === 'not-as-asked')

describe('a plan for a wish', () => {
  it('builds a vented box for everyday listening, quiet enough and in a range that builders use', () => {
    const everyday = planned({ goal: 'everyday' })
    const { result } = everyday.result.parts.response.answer
    // one 30 cm driver: 40 to 65 L and 30 to 38 Hz (common practice, no source)
    expect(netL(everyday)).toBeGreaterThan(40)
    expect(netL(everyday)).toBeLessThan(65)
    expect(result.scalars.tuningHz).toBeGreaterThan(30)
    expect(result.scalars.tuningHz).toBeLessThan(38)
    expect(everyday.result.parts.port.answer.result.recommended.airSpeedMPerS).toBeLessThan(25)
    expect(unkept(everyday)).toEqual([])
  })

  it('gives more room for loudness, a closed box for tightness', () => {
    const [everyday, loud, tight] = [{ goal: 'everyday' }, { goal: 'loud' }, { goal: 'tight' }].map(wish =>
      planned(wish)
    )
    expect(netL(loud)).toBeGreaterThan(netL(everyday))
    expect(netL(tight)).toBeLessThan(netL(everyday))
    expect(tight.result.parts.response.request.enclosure.kind).toBe('closed')
    expect(tight.result.parts.response.answer.result.scalars.qtc).toBeLessThan(0.85)
  })

  it('keeps the tuning that is given', () => {
    const kept = planned({ goal: 'everyday', tuningHz: 40 })
    expect(kept.result.parts.response.answer.result.scalars.tuningHz).toBeGreaterThan(39.6)
    expect(kept.result.parts.response.answer.result.scalars.tuningHz).toBeLessThan(40.4)
  })

  it('builds the least box where that is the wish', () => {
    expect(netL(planned({ goal: 'small' }))).toBeLessThan(0.5 * netL(planned({ goal: 'everyday' })))
  })

  it('says first that a wish could not be met', () => {
    const car = { space: { widthMm: 400, heightMm: 400, depthMm: 240 } }
    const [caution] = unkept(planned({ goal: 'tight' }, { car }))
    expect(caution.message).toContain('tight')
  })

  describe('that full gain would cost more bass than it brings', () => {
    const [small] = sweepRequests
    const held: Answer = planned(undefined, small?.request)
    const { response, signal } = held.result.parts
    const highPassOf = (filters: readonly { kind: string; cornerHz: number }[]) =>
      filters.find(({ kind }) => kind === 'high-pass')?.cornerHz

    it('is heard, ported and set to one gain, below what the parts bear', () => {
      const { powerW, loadOhm, targetVoltageV, limitedBy } = signal.answer.result.gain
      expect(limitedBy).toBe('asked')
      expect(powerW).toBeLessThan(200)
      expect(targetVoltageV).toBeCloseTo(Math.sqrt(powerW * loadOhm), 3)
      expect(response.request.source.voltageV).toBe(targetVoltageV)
      expect(held.result.parts.port.request.source.voltageV).toBe(targetVoltageV)
      expect(held.result.choice.figures.gainPowerW).toBe(powerW)
      expect(held.result.summary.lines[1]).toContain(`Gain set for ${powerW.toFixed(0)} W of the 200 W`)
    })

    it('keeps the filter at the ceiling of the wish and the cone within its travel', () => {
      expect(highPassOf(response.request.filters)).toBeLessThanOrEqual(30)
      expect(response.answer.result.limits.atDrive.coneExcursionOfXmax).toBeLessThanOrEqual(1)
    })

    it('is set as the caller asks, and no higher than the parts bear', () => {
      const asked = (gainPowerW: number) =>
        planned(undefined, { ...small?.request, signal: { ...hatchbackPlan.signal, gainPowerW } })
      const [less, more] = [asked(90), asked(900)]
      expect(less.result.parts.signal.answer.result.gain.powerW).toBeCloseTo(90, 6)
      expect(less.result.parts.response.request.source.voltageV).toBeCloseTo(Math.sqrt(90 * 4), 3)
      expect(unkept(less)).toEqual([])
      expect(unkept(more)[0].figures).toEqual({ askedPowerW: 900, setPowerW: 200 })
    })
  })

  it('builds a port of the area that is asked for', () => {
    const asked = planned({ kind: 'vented', netVolumeL: 55, tuningHz: 34, portAreaCm2: 120 })
    const { totalAreaCm2, lengthMm } = asked.result.parts.port.answer.result.recommended
    expect(totalAreaCm2).toBeGreaterThan(117)
    expect(totalAreaCm2).toBeLessThan(125)
    // L = S·(c/2πf)²/V − ends: 0.563 m of effective length, 16 to 20 cm of it at the ends (worked by hand, 1.463·r for round ones)
    expect(lengthMm).toBeGreaterThan(440 - 90)
    expect(lengthMm).toBeLessThan(563)
  })

  it.each([
    [{ goal: 'low', netVolumeL: 40 }, ['/enclosure/goal', '/enclosure/netVolumeL']],
    [{ goal: 'tight', portShape: 'slot' }, ['/enclosure/goal', '/enclosure/portShape']]
  ])('refuses what leaves nothing to search: %j', async (enclosure, pointers) => {
    const { status, body } = await post('/v1/plans', { ...hatchbackPlan, enclosure })
    expect(status).toBe(422)
    expect(body.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual(pointers)
  })
})
