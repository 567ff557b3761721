/** Polynomials that vanish at the ends of [−1, 1], and the integrals a plate needs of them. */

/** How an end is held: free to turn, or not. */
export type EndKind = 'supported' | 'clamped'

/** Coefficients, lowest power first. */
type Polynomial = readonly number[]

const times = (a: Polynomial, b: Polynomial): Polynomial => {
  const out = new Array<number>(a.length + b.length - 1).fill(0)
  a.forEach((x, i) => {
    b.forEach((y, k) => {
      out[i + k] = (out[i + k] ?? 0) + x * y
    })
  })
  return out
}
const derivative = (p: Polynomial): Polynomial => p.slice(1).map((c, i) => c * (i + 1))
const overInterval = (p: Polynomial): number =>
  p.reduce((sum, c, i) => (i % 2 === 0 ? sum + (2 * c) / (i + 1) : sum), 0)

/** Value at a point. */
const valueAt = (p: Polynomial, x: number): number => p.reduceRight((sum, c) => sum * x + c, 0)

function legendre(order: number): Polynomial {
  let [before, here]: [Polynomial, Polynomial] = [[1], [0, 1]]
  if (order === 0) return before
  for (let n = 1; n < order; n++) {
    const up = times([0, (2 * n + 1) / (n + 1)], here)
    const next = up.map((c, i) => c - (n / (n + 1)) * (before[i] ?? 0))
    before = here
    here = next
  }
  return here
}

const power = (p: Polynomial, n: number): Polynomial =>
  Array.from({ length: n }).reduce<Polynomial>(out => times(out, p), [1])

/** Matrices row by row in one array. */
interface RitzBasis {
  /** φm at 0. */
  readonly middle: Float64Array
  /** ∫ φm, ∫ φm φn, ∫ φm′ φn′, ∫ φm″ φn″ over [−1, 1]. */
  readonly load: Float64Array
  readonly mass: Float64Array
  readonly slope: Float64Array
  readonly bend: Float64Array
}

function build(low: EndKind, high: EndKind, size: number): RitzBasis {
  const held = (kind: EndKind) => (kind === 'clamped' ? 2 : 1)
  const hull = times(power([1, 1], held(low)), power([1, -1], held(high)))
  const step = low === high ? 2 : 1
  const raw = Array.from({ length: size }, (_, m) => times(hull, legendre(m * step)))
  const functions = raw.map(p => {
    const norm = Math.sqrt(overInterval(times(p, p)))
    return p.map(c => c / norm)
  })
  const first = functions.map(derivative)
  const second = first.map(derivative)
  const gram = (set: readonly Polynomial[]) =>
    Float64Array.from(set.flatMap(p => set.map(q => overInterval(times(p, q)))))
  return {
    middle: Float64Array.from(functions, p => valueAt(p, 0)),
    load: Float64Array.from(functions, overInterval),
    mass: gram(functions),
    slope: gram(first),
    bend: gram(second)
  }
}

const built = new Map<string, RitzBasis>()

/** φm = (1 + x)^p (1 − x)^q · Legendre m, with 1 for a supported and 2 for a clamped end; even m only where the ends are alike. */
export function ritzBasis(low: EndKind, high: EndKind, size: number): RitzBasis {
  const key = `${low} ${high} ${size}`
  const found = built.get(key)
  if (found !== undefined) return found
  const basis = build(low, high, size)
  built.set(key, basis)
  return basis
}
