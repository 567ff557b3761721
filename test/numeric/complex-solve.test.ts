import { type Complex, complex, lusolve, type Matrix, matrix } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { solveInPlace } from '../../src/numeric/linear/complex-solve.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

describe('small complex systems', () => {
  for (const n of [1, 2, 3, 5]) {
    it(`agrees with a general-purpose library at order ${n}, also when the first pivot is zero`, () => {
      const { normal } = randomStream(n)
      const draw = (size: number) => ({
        re: Float64Array.from({ length: size }, normal),
        im: Float64Array.from({ length: size }, normal)
      })
      const [a, b] = [draw(n * n), draw(n)]
      if (n > 1) [a.re[0], a.im[0]] = [0, 0]
      const at = ({ re, im }: typeof a, k: number) => complex(re[k] as number, im[k] as number)
      const rows = Array.from({ length: n }, (_, row) =>
        Array.from({ length: n }, (_, column) => at(a, row * n + column))
      )
      const expected = lusolve(
        matrix(rows as never),
        matrix(Array.from({ length: n }, (_, row) => [at(b, row)]) as never)
      ) as Matrix
      solveInPlace(a, b)
      for (let row = 0; row < n; row++) {
        const value = expected.get([row, 0]) as unknown as Complex
        expect(b.re[row]).toBeCloseTo(value.re, 10)
        expect(b.im[row]).toBeCloseTo(value.im, 10)
      }
    })
  }
})
