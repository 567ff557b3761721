import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  compare,
  numberOf,
  product,
  rational,
  rationalOf,
  reciprocal,
  sum,
  textOf
} from '../../src/numeric/rational.ts'

describe('exact fractions', () => {
  it('takes the decimal that was typed', () => {
    expect(textOf(rationalOf(3.6))).toBe('18/5')
    expect(textOf(rationalOf(1e-7))).toBe('1/10000000')
    expect(textOf(rationalOf(1.5e21))).toBe('1500000000000000000000/1')
  })

  it('adds thirds without a remainder', () => {
    const third = rational(1n, 3n)
    expect(textOf(sum([third, third, third]))).toBe('1/1')
  })

  it('keeps the sign above the line', () => {
    expect(textOf(rational(3n, -6n))).toBe('-1/2')
  })

  it('refuses a denominator of zero', () => {
    expect(() => rational(1n, 0n)).toThrow(RangeError)
    expect(() => reciprocal(rational(0n))).toThrow(RangeError)
  })

  it('agrees with floating point, and undoes what it did', () => {
    const fraction = fc
      .tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 9999 }))
      .map(([n, d]) => rational(BigInt(n), BigInt(d)))
    fc.assert(
      fc.property(fraction, fraction, (a, b) => {
        expect(numberOf(sum([a, b]))).toBeCloseTo(numberOf(a) + numberOf(b), 8)
        expect(compare(product(product(a, b), reciprocal(b)), a)).toBe(0)
        expect(Math.sign(numberOf(a) - numberOf(b))).toBe(compare(a, b))
      }),
      { seed: 11, numRuns: 200 }
    )
  })
})
