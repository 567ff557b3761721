import { describe, expect, it } from 'vitest'
import { randomStream, streamFrom } from '../../src/numeric/random-stream.ts'

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

describe('seeded random numbers', () => {
  it('gives the reference sequence of xoshiro128** for the state 1, 2, 3, 4 (as the test suites of several libraries quote it)', () => {
    const { word } = streamFrom([1, 2, 3, 4])
    expect(Array.from({ length: 10 }, word)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804
    ])
  })

  it('repeats itself for a seed, and differs for its neighbours and above 32 bits', () => {
    const first = (seed: number) => randomStream(seed).word()
    expect(first(7)).toBe(first(7))
    expect(new Set([0, 1, 2, 7, 2 ** 32, 2 ** 32 + 7, 2 ** 53 - 1].map(first)).size).toBe(7)
  })

  it('draws standard normals: mean 0, variance 1, kurtosis 3, 95 % within 1.96', () => {
    const { normal } = randomStream(20261125)
    const draws = Array.from({ length: 40_000 }, normal)
    expect(Math.abs(mean(draws))).toBeLessThan(4 / Math.sqrt(draws.length))
    expect(Math.abs(mean(draws.map(draw => draw ** 2)) - 1)).toBeLessThan(4 * Math.sqrt(2 / draws.length))
    expect(Math.abs(mean(draws.map(draw => draw ** 4)) - 3)).toBeLessThan(4 * Math.sqrt(96 / draws.length))
    const outside = draws.filter(draw => Math.abs(draw) > 1.959964).length / draws.length
    expect(Math.abs(outside - 0.05)).toBeLessThan(0.0045)
  })

  it('never draws a uniform of 0 or 1', () => {
    const { uniform } = streamFrom([0, 0, 0, 1])
    const draws = Array.from({ length: 1000 }, uniform)
    expect(Math.min(...draws)).toBeGreaterThan(0)
    expect(Math.max(...draws)).toBeLessThan(1)
  })
})
