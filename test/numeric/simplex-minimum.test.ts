import { describe, expect, it } from 'vitest'
import { simplexMinimum } from '../../src/numeric/simplex-minimum.ts'

describe('downhill simplex', () => {
  it('walks the curved valley of Rosenbrock 1960 to (1, 1)', () => {
    const valley = ([x = 0, y = 0]: readonly number[]) => (x - 1) ** 2 + 100 * (y - x ** 2) ** 2
    const { at, value } = simplexMinimum(valley, [-1.2, 1], 0.5, 400)
    expect(value).toBeLessThan(1e-5)
    expect(at[0]).toBeCloseTo(1, 1)
    expect(at[1]).toBeCloseTo(1, 1)
  })

  it('finds the middle of a bowl in four dimensions', () => {
    const bowl = (at: readonly number[]) => at.reduce((sum, x, axis) => sum + (axis + 1) * (x - axis) ** 2, 0)
    const { at } = simplexMinimum(bowl, [5, 5, 5, 5], 1, 600)
    at.forEach((x, axis) => {
      expect(Math.abs(x - axis)).toBeLessThan(0.01)
    })
  })

  it('says the same for the same start', () => {
    const f = ([x = 0, y = 0]: readonly number[]) => Math.sin(3 * x) + (y - 0.3) ** 2
    expect(simplexMinimum(f, [0, 0], 0.3, 100)).toEqual(simplexMinimum(f, [0, 0], 0.3, 100))
  })
})
