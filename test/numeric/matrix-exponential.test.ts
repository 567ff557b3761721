import { describe, expect, it } from 'vitest'
import { matrixExponential, multiplyMatrices } from '../../src/numeric/linear/matrix-exponential.ts'
import { solveReal } from '../../src/numeric/linear/real-solve.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

describe('matrix exponential', () => {
  it('turns by 60° (rotation)', () => {
    const third = Math.PI / 3
    const turned = matrixExponential(Float64Array.of(0, -third, third, 0), 2)
    const expected = [0.5, -Math.sqrt(0.75), Math.sqrt(0.75), 0.5]
    expected.forEach((value, k) => {
      expect(turned[k]).toBeCloseTo(value, 14)
    })
  })

  it('sums a nilpotent matrix exactly, and is the inverse of that of the opposite', () => {
    expect([...matrixExponential(Float64Array.of(0, 1, 2, 0, 0, 3, 0, 0, 0), 3)]).toEqual([1, 1, 3.5, 0, 1, 3, 0, 0, 1])
    const { normal } = randomStream(3)
    const a = Float64Array.from({ length: 36 }, () => normal())
    const product = multiplyMatrices(
      matrixExponential(a, 6),
      matrixExponential(
        a.map(x => -x),
        6
      ),
      6
    )
    product.forEach((value, k) => {
      expect(value).toBeCloseTo(k % 7 === 0 ? 1 : 0, 10)
    })
  })
})

describe('real systems', () => {
  it('gives back the vector it was made from, with pivoting', () => {
    const { normal } = randomStream(4)
    for (let n = 1; n < 9; n++) {
      const a = Float64Array.from({ length: n * n }, normal)
      a[0] = 0
      if (n === 1) a[0] = 2
      const x = Float64Array.from({ length: n }, normal)
      const b = Float64Array.from({ length: n }, (_, row) =>
        x.reduce((sum, value, k) => sum + value * (a[row * n + k] as number), 0)
      )
      solveReal(a, b)
      b.forEach((value, k) => {
        expect(value).toBeCloseTo(x[k] as number, 9)
      })
    }
  })
})
