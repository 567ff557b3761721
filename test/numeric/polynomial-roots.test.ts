import { describe, expect, it } from 'vitest'
import { polynomialRoots } from '../../src/numeric/polynomial-roots.ts'

describe('polynomial roots', () => {
  it('finds the roots a polynomial was multiplied from, real and complex', () => {
    // (z − 1)(z + 2)(z² − 6z + 25): 1, −2, 3 ± 4j
    const roots = [...polynomialRoots([-50, 37, 17, -5, 1])].sort((a, b) => a.re - b.re || a.im - b.im)
    const expected = [
      [-2, 0],
      [1, 0],
      [3, -4],
      [3, 4]
    ]
    for (const [index, [re = 0, im = 0]] of expected.entries()) {
      expect(roots[index]?.re).toBeCloseTo(re, 10)
      expect(roots[index]?.im).toBeCloseTo(im, 10)
    }
  })
})
