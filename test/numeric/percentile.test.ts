import { describe, expect, it } from 'vitest'
import { percentileOfSorted } from '../../src/numeric/percentile.ts'

describe('percentiles', () => {
  const sample = Float64Array.of(15, 20, 35, 40, 50)
  it('interpolates between order statistics (definition 7 of Hyndman & Fan, the usual textbook sample)', () => {
    expect(percentileOfSorted(sample, 40)).toBeCloseTo(29, 12)
    expect(percentileOfSorted(sample, 50)).toBe(35)
    expect(percentileOfSorted(sample, 25)).toBe(20)
  })
  it('ends at the extremes, and a single value is every percentile', () => {
    expect(percentileOfSorted(sample, 0)).toBe(15)
    expect(percentileOfSorted(sample, 100)).toBe(50)
    expect(percentileOfSorted(Float64Array.of(3), 95)).toBe(3)
  })
})
