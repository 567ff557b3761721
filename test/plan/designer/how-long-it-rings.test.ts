/** How long the bass of a design rings on, and how even it is: by the closed forms of a filter alone and of a straight line. */
import { describe, expect, it } from 'vitest'
import { boxDelays, unevennessDb, worstDelayS } from '../../../src/plan/designer/evaluate/listening.ts'

/** A box that passes everything as it is, so that only the filter delays. */
function alone(frequenciesHz: readonly number[], cornerHz: number): number {
  const n = frequenciesHz.length
  const curves = { radiatedRe: new Float64Array(n).fill(1), radiatedIm: new Float64Array(n) }
  return worstDelayS(boxDelays(Float64Array.from(frequenciesHz), curves as never), cornerHz)
}
const grid = (fromHz: number, toHz: number, count: number) =>
  Array.from({ length: count }, (_, k) => fromHz * (toHz / fromHz) ** (k / (count - 1)))

describe('a Butterworth high-pass by itself (highPassDelayS)', () => {
  it('delays by √2/ω_h at its corner, and as much far below', () => {
    expect(alone([49.5, 50.5], 50)).toBeCloseTo(Math.SQRT2 / (2 * Math.PI * 50), 9)
    expect(alone([20, 20.5], 5000)).toBeCloseTo(Math.SQRT2 / (2 * Math.PI * 5000), 8)
  })

  it('delays most at 0.6436 of its corner, (1 + √2)/2 of that: (1 + x²)/(1 + x⁴) differentiated', () => {
    expect(alone(grid(20, 80, 400), 50)).toBeCloseTo(((1 + Math.SQRT2) / 2) * (Math.SQRT2 / (2 * Math.PI * 50)), 6)
  })

  it('is not heard outside of 20 to 80 Hz, and is nothing where there is none', () => {
    expect(alone([10, 12, 18, 19.9], 15)).toBe(0)
    expect(alone([81, 90, 120], 90)).toBe(0)
    expect(alone(grid(20, 80, 50), 0)).toBe(0)
  })
})

describe('the delay of a box', () => {
  it('is the fall of its phase: a pure lag of 7 ms is 7 ms', () => {
    const frequenciesHz = Float64Array.from(grid(20, 80, 100))
    const turn = (f: number) => -2 * Math.PI * f * 0.007
    const curves = {
      radiatedRe: frequenciesHz.map(f => Math.cos(turn(f))),
      radiatedIm: frequenciesHz.map(f => Math.sin(turn(f)))
    }
    expect(worstDelayS(boxDelays(frequenciesHz, curves as never), 0)).toBeCloseTo(0.007, 9)
    // three of a filter beside it add up
    const corner = 5000
    expect(worstDelayS(boxDelays(frequenciesHz, curves as never), corner)).toBeCloseTo(
      0.007 + Math.SQRT2 / (2 * Math.PI * corner),
      7
    )
  })
})

describe('evenness', () => {
  const frequenciesHz = Float64Array.from(grid(25, 80, 60))
  const uneven = (levelDb: (hz: number) => number, seatDb: (hz: number) => number, highPassHz: number) =>
    unevennessDb(
      frequenciesHz,
      { level2: frequenciesHz.map(hz => 10 ** (levelDb(hz) / 10)) } as never,
      highPassHz,
      frequenciesHz.map(seatDb)
    )
  const octaves = (hz: number) => Math.log2(hz / 40)

  it('is nothing for a level that falls evenly by octaves, wherever it stands and whatever its slope', () => {
    expect(
      uneven(
        hz => 90 - 6 * octaves(hz),
        () => 0,
        0
      )
    ).toBeCloseTo(0, 4)
    expect(
      uneven(
        () => 0,
        hz => 12 - 12 * octaves(hz),
        0
      )
    ).toBeCloseTo(0, 4)
  })

  it('counts the filter: what it takes, 10·log(1 + (f_h/f)⁴), and no more', () => {
    const taken = (hz: number) => 10 * Math.log10(1 + (45 / hz) ** 4)
    expect(uneven(taken, () => 0, 45)).toBeCloseTo(0, 4)
    expect(
      uneven(
        () => 0,
        () => 0,
        45
      )
    ).toBeGreaterThan(0.2)
  })

  it('is the root of the mean square about the best line, from 31 to 66 Hz alone (least squares by its normal equations)', () => {
    const bump = (hz: number) => 3 * Math.sin(5 * octaves(hz)) + (hz < 31 || hz > 66 ? 50 : 0)
    const points = [...frequenciesHz].filter(hz => hz >= 31 && hz <= 66).map(hz => [octaves(hz), bump(hz)] as const)
    const mean = (of: (point: readonly [number, number]) => number) =>
      points.reduce((sum, point) => sum + of(point), 0) / points.length
    const [x, y] = [mean(each => each[0]), mean(each => each[1])]
    const slope = mean(each => (each[0] - x) * (each[1] - y)) / mean(each => (each[0] - x) ** 2)
    const rms = Math.sqrt(mean(each => (each[1] - y - slope * (each[0] - x)) ** 2))
    expect(rms).toBeGreaterThan(0.5)
    expect(uneven(bump, () => 0, 0)).toBeCloseTo(rms, 9)
    expect(uneven(() => 0, bump, 0)).toBeCloseTo(rms, 9)
  })
})
