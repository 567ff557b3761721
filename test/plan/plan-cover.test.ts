/** The first page as the plan answers it: the band by hand, the findings by the parts they are taken from. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { bandOf } from '../../src/plan/answer/plan-cover.ts'
import { planSystem } from '../../src/plan/plan-system.ts'

const frequencyHz = Array.from({ length: 121 }, (_, index) => 10 * 20 ** (index / 120))
const level = (of: (hz: number) => number) => frequencyHz.map(of)
const curves = (levelDb: readonly number[], seatLevelDb?: readonly number[]) =>
  ({
    curves: { frequencyHz, levelDb, ...(seatLevelDb === undefined ? {} : { seatLevelDb }) }
  }) as unknown as Parameters<typeof bandOf>[0]

describe('the band of use', () => {
  // By hand: 12 dB in an octave either side of 40 Hz; 6 dB are half an octave.
  it('reaches half an octave either way where the level falls 12 dB in each', () => {
    const middleHz = frequencyHz[55] ?? 0
    const band = bandOf(curves(level(hz => 120 - 12 * Math.abs(Math.log2(hz / middleHz)))))
    expect(band.fromHz).toBeCloseTo(middleHz / Math.SQRT2, 6)
    expect(band.toHz).toBeCloseTo(middleHz * Math.SQRT2, 6)
    expect(band.loudestDb).toBe(120)
    expect([band.place, band.uncertaintyDb]).toEqual(['half-space', undefined])
    expect(band.finding).toBe('Full bass from 28 to 56 Hz in half space')
  })

  it('takes the curve at the seat where there is one, and the unbroken stretch round its loudest', () => {
    const dip = (hz: number) => (hz > 50 && hz < 60 ? 100 : hz > 60 ? 119 : 120)
    const band = bandOf(
      curves(
        level(() => 0),
        level(dip)
      )
    )
    expect(band.place).toBe('seat')
    expect(band.toHz).toBeGreaterThan(48)
    expect(band.toHz).toBeLessThan(52)
    expect(band.fromHz).toBe(10)
  })
})

describe('the first page of a plan', () => {
  const { result } = planSystem(toSi(leaningPlan) as unknown as PlanRequest)
  const { cover, parts } = result
  if (!parts.response.done || !parts.box.done || !parts.driver.done) throw new Error('the example is not complete')
  const { limits, scalars } = parts.response.outcome.result
  const { outer, volume } = parts.box.outcome.result

  it('repeats the figures of the parts', () => {
    expect(cover.travel?.peakM).toBe(limits?.atDrive.coneExcursionM)
    expect(cover.travel?.held).toBe((limits?.atDrive.coneExcursionOfXmax ?? 2) <= 1)
    expect(cover.portAir?.peakMPerS).toBe(limits?.atDrive.portAirSpeedMPerS)
    expect(cover.asked?.volume).toEqual({
      askedM3: 0.085,
      builtM3: volume.netM3,
      kept: Math.abs(volume.netM3 / 0.085 - 1) <= 0.01
    })
    expect(cover.asked?.tuning).toEqual({
      askedHz: 31,
      builtHz: scalars.tuningHz,
      kept: Math.abs((scalars.tuningHz ?? 0) / 31 - 1) <= 0.01
    })
  })

  it('lays the covered box beside the space, which it never exceeds', () => {
    const { space } = cover.asked ?? {}
    // 4 mm of carpet on each face.
    expect(space?.boxWidthM).toBeCloseTo(outer.widthM + 0.008, 9)
    for (const [box, room] of [
      [space?.boxWidthM, space?.widthM],
      [space?.boxHeightM, space?.heightM],
      [space?.boxDepthM, space?.depthM]
    ])
      expect(box).toBeLessThanOrEqual((room ?? 0) + 1e-9)
  })

  it('says the system in one sentence', () => {
    expect(cover.sentence).toMatch(/^Two Fenlark 30 in a vented box of [\d.]+ L, tuned to [\d.]+ Hz, on 700 W\.$/)
  })
})
