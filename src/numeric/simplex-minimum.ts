/** The lowest point of a function of several variables, without derivatives. */

interface Corner {
  readonly at: readonly number[]
  readonly value: number
}

const REFLECT = 1
const EXPAND = 2
const CONTRACT = 0.5

/**
 * Downhill simplex. Deterministic: the same start gives the same end.
 *
 * @param f  finite everywhere it is asked
 * @param start  first corner; the others lie one step along each axis
 * @param rounds  at most; stops earlier where all corners are alike within 1e-6
 * @returns the best corner: a local minimum, not proved to be the lowest
 * @source Nelder & Mead, "A simplex method for function minimization", Computer Journal 7, 1965, from memory
 * @check  (x − 1)² + 100(y − x²)² from (−1.2, 1) → (1, 1)
 */
export function simplexMinimum(
  f: (at: readonly number[]) => number,
  start: readonly number[],
  step: number,
  rounds: number
): Corner {
  const corner = (at: readonly number[]): Corner => ({ at, value: f(at) })
  const moved = start.map((_, axis) => corner(start.map((x, other) => (other === axis ? x + step : x))))
  let corners: readonly Corner[] = [corner(start), ...moved]
  for (let round = 0; round < rounds; round++) {
    corners = [...corners].sort((a, b) => a.value - b.value)
    const best = corners[0] as Corner
    const worst = corners.at(-1) as Corner
    if (worst.value - best.value < 1e-6 * (1 + Math.abs(best.value))) break
    corners = nextCorners(corners, corner)
  }
  return [...corners].sort((a, b) => a.value - b.value)[0] as Corner
}

/** @param corners  ascending by value */
function nextCorners(corners: readonly Corner[], corner: (at: readonly number[]) => Corner): readonly Corner[] {
  const best = corners[0] as Corner
  const worst = corners.at(-1) as Corner
  const rest = corners.slice(0, -1)
  const second = rest.at(-1) as Corner
  const centre = best.at.map((_, axis) => rest.reduce((sum, { at }) => sum + (at[axis] ?? 0), 0) / rest.length)
  const along = (share: number) => corner(centre.map((c, axis) => c + share * (c - (worst.at[axis] ?? 0))))
  const reflected = along(REFLECT)
  if (reflected.value < best.value) {
    const expanded = along(EXPAND)
    return [...rest, expanded.value < reflected.value ? expanded : reflected]
  }
  if (reflected.value < second.value) return [...rest, reflected]
  const contracted = along(reflected.value < worst.value ? CONTRACT : -CONTRACT)
  if (contracted.value < Math.min(reflected.value, worst.value)) return [...rest, contracted]
  return corners.map((each, index) =>
    index === 0 ? each : corner(each.at.map((x, axis) => (x + (best.at[axis] ?? 0)) / 2))
  )
}
