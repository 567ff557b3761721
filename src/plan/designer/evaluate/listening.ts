/** What is heard beside the level: how long the bass rings on, and how even it is. */
import type { BoxCurves } from './box-response.ts'
import { listeningDefaults } from './defaults.ts'

/**
 * Of a second-order Butterworth high-pass.
 *
 *   τ = √2·ω_h·(ω_h² + ω²)/(ω_h⁴ + ω⁴)
 *
 * @source derived from the phase of s²/(s² + √2·ω_h·s + ω_h²)
 * @check  far below the corner → √2/ω_h; at the corner → √2/ω_h
 */
function highPassDelayS(cornerHz: number, frequencyHz: number): number {
  if (cornerHz <= 0) return 0
  const corner = 2 * Math.PI * cornerHz
  const [corner2, omega2] = [corner ** 2, (2 * Math.PI * frequencyHz) ** 2]
  return (Math.SQRT2 * corner * (corner2 + omega2)) / (corner2 ** 2 + omega2 ** 2)
}

/** Group delay of a box in the middles between neighbours of the grid, 20 to 80 Hz. */
interface BoxDelays {
  readonly middlesHz: readonly number[]
  readonly delaysS: readonly number[]
}

/** The fall of the phase from one neighbour to the next. */
export function boxDelays(frequenciesHz: Float64Array, { radiatedRe: re, radiatedIm: im }: BoxCurves): BoxDelays {
  const { delayFromHz, delayToHz } = listeningDefaults
  const [middlesHz, delaysS]: [number[], number[]] = [[], []]
  for (let k = 1; k < frequenciesHz.length; k++) {
    const [low, high] = [frequenciesHz[k - 1] as number, frequenciesHz[k] as number]
    if (low < delayFromHz.value - 1e-6 || high > delayToHz.value) continue
    const [aRe, aIm, bRe, bIm] = [re[k - 1], im[k - 1], re[k], im[k]] as [number, number, number, number]
    const turned = Math.atan2(bIm * aRe - bRe * aIm, bRe * aRe + bIm * aIm)
    middlesHz.push((low + high) / 2)
    delaysS.push(-turned / (2 * Math.PI * (high - low)))
  }
  return { middlesHz, delaysS }
}

/** The worst of box and high-pass together. */
export function worstDelayS({ middlesHz, delaysS }: BoxDelays, highPassHz: number): number {
  let worst = 0
  for (let k = 0; k < delaysS.length; k++) {
    const delay = (delaysS[k] as number) + highPassDelayS(highPassHz, middlesHz[k] as number)
    if (delay > worst) worst = delay
  }
  return worst
}

/** Root mean square of what the level at the seat strays from its own slope, 31 to 66 Hz [dB]. */
export function unevennessDb(
  frequenciesHz: Float64Array,
  curves: BoxCurves,
  highPassHz: number,
  seatGainDb: Float64Array
): number {
  const { evenFromHz, evenToHz } = listeningDefaults
  let [count, sx, sy, sxx, sxy, syy] = [0, 0, 0, 0, 0, 0]
  for (let k = 0; k < frequenciesHz.length; k++) {
    const frequency = frequenciesHz[k] as number
    if (frequency < evenFromHz.value || frequency > evenToHz.value) continue
    const x = Math.log2(frequency)
    const filter = 1 + (highPassHz / frequency) ** 4
    const y = 10 * Math.log10((curves.level2[k] as number) / filter) + (seatGainDb[k] as number)
    count++
    sx += x
    sy += y
    sxx += x * x
    sxy += x * y
    syy += y * y
  }
  const [vx, cxy, vy] = [sxx - (sx * sx) / count, sxy - (sx * sy) / count, syy - (sy * sy) / count]
  return Math.sqrt(Math.max(0, vy - (cxy * cxy) / vx) / count)
}
