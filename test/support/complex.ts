/** Complex arithmetic of the tests' own. */
export interface Complex {
  readonly re: number
  readonly im: number
}

export const complex = (re: number, im: number): Complex => ({ re, im })
export const add = (...terms: readonly Complex[]): Complex =>
  complex(
    terms.reduce((sum, term) => sum + term.re, 0),
    terms.reduce((sum, term) => sum + term.im, 0)
  )
export const subtract = (a: Complex, b: Complex): Complex => complex(a.re - b.re, a.im - b.im)
export const multiply = (...factors: readonly Complex[]): Complex =>
  factors.reduce((a, b) => complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re), complex(1, 0))
export const scale = (a: Complex, by: number): Complex => complex(a.re * by, a.im * by)
export const divide = (a: Complex, b: Complex): Complex => {
  const square = b.re ** 2 + b.im ** 2
  return complex((a.re * b.re + a.im * b.im) / square, (a.im * b.re - a.re * b.im) / square)
}
export const conjugate = (a: Complex): Complex => complex(a.re, -a.im)
export const size = (a: Complex): number => Math.hypot(a.re, a.im)
/** |a − b| over the larger of the two. */
export const apart = (a: Complex, b: Complex): number => size(subtract(a, b)) / Math.max(size(a), size(b), 1e-300)
