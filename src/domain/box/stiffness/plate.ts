/** Thin rectangular plates held along all four edges: fundamental frequency, and deflection under even pressure. */
import { choleskyFactor, choleskySolve } from '../../../numeric/linear/cholesky.ts'
import { type EndKind, ritzBasis } from '../../../numeric/linear/ritz-basis.ts'
import type { BoardProperties } from '../../material/board-properties.ts'

/** Bending stiffness per metre of width [N·m]: along x, along y, and of twist H = ν·Dy + 2·Dxy. */
interface Rigidity {
  readonly x: number
  readonly y: number
  readonly twist: number
}

/**
 * Bending stiffness of a board.
 *
 *   one stiffness all ways   D = E·h³/(12(1 − ν²)), H = D
 *   with grain along x       Dx = E∥·h³/12, Dy = E⊥·h³/12, H = ν·Dy + 2·G·h³/12
 *
 * @param board  moduli [Pa], ν
 * @param thicknessM  h [m] > 0; glued layers count as one board
 * @param grainAlongX  for a board with grain
 * @validity Thin plates: h below about a tenth of the shorter side.
 * @source A. W. Leissa, Vibration of plates, NASA SP-160 (1969), orthotropic chapter, from memory
 * @check  E 2.2 GPa, ν 0.25, 18 mm → 1140.5 N·m
 */
export function plateRigidity(board: BoardProperties, thicknessM: number, grainAlongX = true): Rigidity {
  const { alongPa, acrossPa, poisson, shearPa, grained } = board
  const inertia = thicknessM ** 3 / 12
  if (!grained && alongPa === acrossPa) {
    const d = (alongPa * inertia) / (1 - poisson ** 2)
    return { x: d, y: d, twist: d }
  }
  const [along, across] = [alongPa * inertia, acrossPa * inertia]
  const twist = poisson * across + 2 * shearPa * inertia
  return grainAlongX ? { x: along, y: across, twist } : { x: across, y: along, twist }
}

export interface Plate {
  /** Sides [m]. */
  readonly xM: number
  readonly yM: number
  readonly rigidity: Rigidity
  /** Mass per area [kg/m²]. */
  readonly massPerAreaKgPerM2: number
}

export interface PlateEdges {
  readonly x: readonly [EndKind, EndKind]
  readonly y: readonly [EndKind, EndKind]
}

const all = (kind: EndKind): PlateEdges => ({ x: [kind, kind], y: [kind, kind] })
export const supported = all('supported')
export const clamped = all('clamped')

/** Terms in a direction: enough for five figures, see the tests. Alike ends need only the even ones. */
const terms = ([low, high]: readonly [EndKind, EndKind]) => (low === high ? 4 : 7)

/** Element by element the two matrices are products of those of the two directions. */
function assemble({ xM: a, yM: b, rigidity }: Plate, edges: PlateEdges) {
  const [nx, ny] = [terms(edges.x), terms(edges.y)]
  const x = ritzBasis(...edges.x, nx)
  const y = ritzBasis(...edges.y, ny)
  const size = nx * ny
  const [stiffness, mass, load] = [new Float64Array(size * size), new Float64Array(size * size), new Float64Array(size)]
  const area = (a * b) / 4
  const [kx, ky] = [(2 / a) ** 2, (2 / b) ** 2]
  const [alongX, twist, alongY] = [rigidity.x * kx ** 2, 2 * rigidity.twist * kx * ky, rigidity.y * ky ** 2]
  for (let i = 0; i < nx; i++) {
    for (let j = 0; j < ny; j++) load[i * ny + j] = area * (x.load[i] as number) * (y.load[j] as number)
    for (let k = 0; k < nx; k++) {
      const at = i * nx + k
      const massX = area * (x.mass[at] as number)
      const [bend, slope, rest] = [
        alongX * area * (x.bend[at] as number),
        twist * area * (x.slope[at] as number),
        alongY * massX
      ]
      for (let j = 0; j < ny; j++) {
        const row = (i * ny + j) * size + k * ny
        for (let l = 0; l < ny; l++) {
          const of = j * ny + l
          const massY = y.mass[of] as number
          mass[row + l] = massX * massY
          stiffness[row + l] = bend * massY + slope * (y.slope[of] as number) + rest * (y.bend[of] as number)
        }
      }
    }
  }
  const factor = choleskyFactor(stiffness, size)
  if (factor === undefined) throw new RangeError('the stiffness of a plate is not positive definite')
  return { x, y, ny, size, mass, load, factor }
}

function dotted(matrix: Float64Array, size: number, vector: Float64Array): Float64Array {
  const out = new Float64Array(size)
  for (let i = 0; i < size; i++) {
    let sum = 0
    for (let k = 0; k < size; k++) sum += (matrix[i * size + k] as number) * (vector[k] as number)
    out[i] = sum
  }
  return out
}

const inner = (a: Float64Array, b: Float64Array) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0)

/**
 * Lowest frequency at which a plate rings by itself.
 *
 *   minimum of  ∫(Dx·w_xx² + 2H·w_xy² + Dy·w_yy²) / ∫ρh·w²  over polynomials that meet the edges;  f = sqrt(minimum)/2π
 *   all edges supported, exactly:  f = π/2·sqrt((Dx/a⁴ + 2H/(a²b²) + Dy/b⁴)/ρh)
 *
 * @param plate  sides [m] > 0, rigidity [N·m] > 0, mass per area [kg/m²] > 0
 * @returns [Hz], an upper bound that lies within 0.01 % of the plate's own
 * @validity Thin plates in vacuum with no hole; the air of the box and the loading of the outside are left out.
 * @source derived: Rayleigh and Ritz; compared with A. W. Leissa, J. Sound Vib. 31 (1973) 257, values from memory
 * @check  square, all edges clamped: ω·a²·sqrt(ρh/D) = 35.992 (Leissa; upper bound)
 */
export function plateFrequency(plate: Plate, edges: PlateEdges): number {
  const { size, mass, load, factor } = assemble(plate, edges)
  let shape = choleskySolve(factor, size, load)
  let squared = 0
  for (let round = 0; round < 200; round++) {
    const pushed = dotted(mass, size, shape)
    const next = choleskySolve(factor, size, pushed)
    const now = inner(next, pushed) / inner(next, dotted(mass, size, next))
    const scale = 1 / Math.sqrt(inner(next, next))
    shape = next.map(value => value * scale)
    const converged = Math.abs(now - squared) <= 1e-13 * now
    squared = now
    if (converged) break
  }
  return Math.sqrt(squared / plate.massPerAreaKgPerM2) / (2 * Math.PI)
}

/** All edges supported, exactly; the quick form of {@link plateFrequency}. */
export function supportedFrequency({ xM: a, yM: b, rigidity: d, massPerAreaKgPerM2: m }: Plate): number {
  return (Math.PI / 2) * Math.sqrt((d.x / a ** 4 + (2 * d.twist) / (a * b) ** 2 + d.y / b ** 4) / m)
}

interface PlateDeflection {
  /** Per pascal of even pressure [m/Pa]. */
  readonly largestMPerPa: number
  readonly meanMPerPa: number
}

/**
 * Static bending under even pressure, from the same polynomials.
 *
 * @returns deflection per pascal at the middle and over the area
 * @validity Well below the fundamental; small against the thickness.
 * @source derived: Ritz; compared with W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 7th ed., Table 11.4
 * @check  square, supported, ν 0.3: w = 0.0444·q·b⁴/(E·t³)
 */
export function plateDeflection(plate: Plate, edges: PlateEdges): PlateDeflection {
  const { size, load, factor, x, y, ny } = assemble(plate, edges)
  const shape = choleskySolve(factor, size, load)
  const middle = shape.reduce(
    (sum, c, row) => sum + c * (x.middle[Math.floor(row / ny)] as number) * (y.middle[row % ny] as number),
    0
  )
  return { largestMPerPa: middle, meanMPerPa: inner(shape, load) / (plate.xM * plate.yM) }
}
