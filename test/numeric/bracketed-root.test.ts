import { describe, expect, it } from 'vitest'
import { bracketedRoot } from '../../src/numeric/bracketed-root.ts'

const root = (f: (x: number) => number, low: number, high: number) => bracketedRoot(f, low, high, f(low), f(high))

describe('bracketed root', () => {
  it('finds roots known in closed form', () => {
    expect(root(x => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 10)
    expect(root(x => Math.cos(x), 1, 2)).toBeCloseTo(Math.PI / 2, 10)
    expect(root(x => Math.log(x) - 1, 0.1, 100)).toBeCloseTo(Math.E, 9)
    expect(root(x => x ** 9, -1, 1.7)).toBeCloseTo(0, 1)
  })

  it('closes in on a pole between two signs', () => {
    expect(root(x => 1 / (x - Math.PI), 3, 4)).toBeCloseTo(Math.PI, 9)
  })

  it('needs few evaluations where the curve is smooth', () => {
    let calls = 0
    root(
      x => {
        calls++
        return Math.tanh(x - 20)
      },
      19,
      22
    )
    expect(calls).toBeLessThan(15)
  })
})
