/** All roots of a real polynomial at once. */

interface ComplexRoot {
  readonly re: number
  readonly im: number
}

interface Mutable {
  re: number
  im: number
}

const MAX_ROUNDS = 500

/** p(z) by Horner's rule, coefficients ascending. */
function valueAt(coefficients: readonly number[], z: ComplexRoot): ComplexRoot {
  let re = 0
  let im = 0
  for (let power = coefficients.length - 1; power >= 0; power--) {
    const next = re * z.re - im * z.im + (coefficients[power] ?? 0)
    im = re * z.im + im * z.re
    re = next
  }
  return { re, im }
}

function quotient(a: ComplexRoot, b: ComplexRoot): ComplexRoot {
  const square = b.re * b.re + b.im * b.im
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square }
}

function separation(roots: readonly ComplexRoot[], index: number): ComplexRoot {
  const here = roots[index] ?? { re: 0, im: 0 }
  return roots.reduce<ComplexRoot>(
    (product, other, at) => {
      if (at === index) return product
      const re = here.re - other.re
      const im = here.im - other.im
      return { re: product.re * re - product.im * im, im: product.re * im + product.im * re }
    },
    { re: 1, im: 0 }
  )
}

/**
 * Simple roots of a polynomial by simultaneous iteration.
 *
 *   zᵢ ← zᵢ − p(zᵢ)/Π(zᵢ − zⱼ)
 *
 * @param coefficients  c₀ + c₁z + … + cₙzⁿ, cₙ ≠ 0, degree 1 … 12
 * @validity roots that are distinct; a multiple root converges slowly and to half the digits
 * @source Durand 1960, Kerner 1966 (from memory)
 * @check  z² − 3z + 2 → 1, 2
 */
export function polynomialRoots(coefficients: readonly number[]): readonly ComplexRoot[] {
  const degree = coefficients.length - 1
  const leading = coefficients[degree] ?? 1
  const monic = coefficients.map(coefficient => coefficient / leading)
  const radius = Math.abs(monic[0] ?? 1) ** (1 / degree) || 1
  const roots: Mutable[] = Array.from({ length: degree }, (_, index) => {
    const angle = (2 * Math.PI * index) / degree + 0.4
    return { re: radius * Math.cos(angle), im: radius * Math.sin(angle) }
  })
  for (let round = 0; round < MAX_ROUNDS; round++) {
    let moved = 0
    for (const [index, root] of roots.entries()) {
      const step = quotient(valueAt(monic, root), separation(roots, index))
      root.re -= step.re
      root.im -= step.im
      moved = Math.max(moved, Math.hypot(step.re, step.im) / radius)
    }
    if (moved < 1e-15) break
  }
  return roots
}
