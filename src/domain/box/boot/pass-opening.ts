/** Whether a box goes through the opening of a boot, straight or tilted. */
import type { BootOpening } from '../../../contract/boxes/box-panels.ts'
import type { OpeningFit } from '../../../contract/boxes/box-result.ts'

/**
 * Whether a rectangle p × q passes an opening a × b (p ≥ q, a ≥ b):
 *
 *   p ≤ a and q ≤ b, or p > a, q ≤ b and b ≥ (2pqa + (p² − q²)·sqrt(p² + q² − a²))/(p² + q²)
 *
 * @source W. B. Carver, Solution of E1225, Amer. Math. Monthly 64 (1957) 114-116; J. E. Wetzel, Rectangles in rectangles, Math. Mag. 73 (2000) 204-211; from memory
 * @check  700 × 120 passes 650 × 486.34, not 650 × 486.33
 */
export function rectanglePasses(
  first: number,
  second: number,
  width: number,
  height: number
): 'straight' | 'tilted' | 'no' {
  const [p, q] = [Math.max(first, second), Math.min(first, second)]
  const [a, b] = [Math.max(width, height), Math.min(width, height)]
  if (p <= a && q <= b) return 'straight'
  if (p <= a || q > b) return 'no'
  const square = p * p + q * q
  const need = (2 * p * q * a + (p * p - q * q) * Math.sqrt(Math.max(0, square - a * a))) / square
  return b >= need ? 'tilted' : 'no'
}

/**
 * A block pushed straight through: one of its faces must pass. A sloped box counts as its block, which is the safe side.
 *
 * @validity Turning the block on its way is not considered.
 */
export function openingFit(
  { widthM, heightM, depthM }: { readonly widthM: number; readonly heightM: number; readonly depthM: number },
  opening: BootOpening,
  playM: number
): OpeningFit {
  const [w, h] = [opening.widthM - 2 * playM, opening.heightM - 2 * playM]
  const faces = [
    ['front', widthM, heightM],
    ['side', depthM, heightM],
    ['lid', widthM, depthM]
  ] as const
  for (const wanted of ['straight', 'tilted'] as const) {
    for (const [face, p, q] of faces) {
      if (rectanglePasses(p, q, w, h) === wanted) return { passes: true, face, tilted: wanted === 'tilted' }
    }
  }
  return { passes: false, face: 'none', tilted: false }
}
