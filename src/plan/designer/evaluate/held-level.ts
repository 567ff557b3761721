/** Gain and high-pass of a design in closed form: the loudest setting that passes no limit anywhere in the music. */
import { type BoxCurves, portLimit2 } from './box-response.ts'

/** What the filters that are set anyway and the music itself leave of the voltage, per frequency, squared. */
export interface Programme {
  readonly frequenciesHz: Float64Array
  /** f⁴: a second-order filter asks for it at every step of the gain. */
  readonly fourthHz4: Float64Array
  readonly weight2: Float64Array
}

interface HeldWish {
  readonly fromHz: number
  readonly toHz: number
  /** The protective high-pass never lies above. */
  readonly highestCornerHz: number
  /** No gain beyond this voltage. */
  readonly highestV?: number
  /** Steps of the gain [dB]. */
  readonly stepDb: number
  /** What the car adds over half space at 1 m, per frequency. */
  readonly seatGainDb: Float64Array
  /** What a high-pass of a corner costs beside the level it takes [dB]; its ringing. Never less than without one. */
  readonly costDb?: (highPassHz: number) => number
}

export interface Held {
  /** Mean over the band, where {@link HeldWish.seatGainDb} leads to [dB]. */
  readonly levelDb: number
  /** RMS at the amplifier before the filters [V]. */
  readonly voltageV: number
  /** 0: none is needed. */
  readonly highPassHz: number
}

/**
 * |H|² of a low-pass of Butterworth over the music's own weight.
 *
 * @param musicFromHz  below it nothing counts, or, with a slope, it falls by so much
 * @source Butterworth 1930 (from memory)
 * @check  half at the corner
 */
export function programme(
  frequenciesHz: Float64Array,
  lowPass: { readonly cornerHz: number; readonly order: number },
  music: { readonly fromHz: number; readonly slopeOrder: number }
): Programme {
  const weight2 = frequenciesHz.map(frequency => {
    const played = 1 / (1 + (frequency / lowPass.cornerHz) ** (2 * lowPass.order))
    if (frequency >= music.fromHz) return played
    return music.slopeOrder === 0 ? 0 : played * (frequency / music.fromHz) ** (2 * music.slopeOrder)
  })
  return { frequenciesHz, fourthHz4: frequenciesHz.map(frequency => frequency ** 4), weight2 }
}

/** Where nothing is played any gain will do. */
const LEAST_WEIGHT2 = 1e-30

/** Filled again and again: square of the largest gain per frequency. */
export function gainLimit2(curves: BoxCurves, programme: Programme, areaSpeed2: number, into: Float64Array): void {
  for (let k = 0; k < into.length; k++) {
    const port = areaSpeed2 * portLimit2(curves.port2[k] as number)
    into[k] = Math.min(curves.other2[k] as number, port) / Math.max(LEAST_WEIGHT2, programme.weight2[k] as number)
  }
}

/** The same for the air in the port alone. */
export function airLimit2(curves: BoxCurves, programme: Programme, areaSpeed2: number, into: Float64Array): void {
  for (let k = 0; k < into.length; k++) {
    const port = areaSpeed2 * portLimit2(curves.port2[k] as number)
    into[k] = port / Math.max(LEAST_WEIGHT2, programme.weight2[k] as number)
  }
}

/** |H|² of the protective high-pass. */
export const highPass2 = (cornerHz: number, frequencyHz: number): number => 1 / (1 + (cornerHz / frequencyHz) ** 4)

/**
 * Lowest corner of a second-order Butterworth high-pass with which a gain holds every limit.
 *
 *   f_h = max over f of f·((E/e(f))² − 1)^(1/4)
 *
 * @param gain2  square of the gain [V²]
 * @param limit2  square of what each frequency allows
 * @source derived: |H|² = 1/(1 + (f_h/f)⁴) (Butterworth 1930, from memory)
 * @check  E = 2·e at 30 Hz alone → 30·3^(1/4) = 39.48 Hz
 */
export function cornerFor({ fourthHz4 }: Pick<Programme, 'fourthHz4'>, limit2: Float64Array, gain2: number): number {
  let worst = 0
  for (let k = 0; k < fourthHz4.length; k++) {
    const excess = gain2 / (limit2[k] as number) - 1
    if (excess <= 0) continue
    const corner4 = (fourthHz4[k] as number) * excess
    if (corner4 > worst) worst = corner4
  }
  return Math.sqrt(Math.sqrt(worst))
}

/** The limit that is reached first, and the index of where. */
interface Least {
  readonly gain2: number
  readonly at: number
}

/**
 * Square of the largest gain that a high-pass at a corner holds.
 *
 *   E = min over f of e(f)·√(1 + (f_h/f)⁴)
 *
 * @source derived, as {@link cornerFor}
 * @check  e = 10 V at 30 Hz alone, corner 39.48 Hz → 20 V
 */
export function leastGain(frequenciesHz: Float64Array, limit2: Float64Array, cornerHz: number): Least {
  let [least2, at] = [Infinity, 0]
  for (let k = 0; k < frequenciesHz.length; k++) {
    const ratio2 = (cornerHz / (frequenciesHz[k] as number)) ** 2
    const held2 = (limit2[k] as number) * (1 + ratio2 ** 2)
    if (held2 < least2) [least2, at] = [held2, k]
  }
  return { gain2: least2, at }
}

/**
 * Walks the gain upwards from where no filter is needed to where the corner meets its ceiling, and keeps the loudest mean over
 * the band, less what the filter costs.
 *
 *   L = mean over the band of 10·lg(level²·E²/(1 + (f_h/f)⁴))
 *
 * @param limit2  from {@link gainLimit2}
 */
export function heldLevel(curves: BoxCurves, programme: Programme, limit2: Float64Array, wish: HeldWish): Held {
  const { frequenciesHz, fourthHz4 } = programme
  const [first, last] = bandOf(frequenciesHz, wish)
  let [lowest2, highest2] = [Infinity, 0]
  for (let k = 0; k < limit2.length; k++) {
    const limit = limit2[k] as number
    if (limit < lowest2) lowest2 = limit
    if (k >= first && k <= last && limit > highest2) highest2 = limit
  }
  const ceiling2 = wish.highestV === undefined ? Infinity : wish.highestV ** 2
  const most2 = Math.max(lowest2, leastGain(frequenciesHz, limit2, wish.highestCornerHz).gain2)
  const [from2, to2] = [Math.min(lowest2, ceiling2), Math.min(highest2, ceiling2, most2)]
  const own = meanLog(curves.level2, first, last) + mean(wish.seatGainDb, first, last) / 10
  const step = 10 ** (wish.stepDb / 10)
  const costDb = wish.costDb ?? (() => 0)
  let best: Held = { levelDb: 10 * (own + Math.log10(from2)), voltageV: Math.sqrt(from2), highPassHz: 0 }
  let most = best.levelDb - costDb(0)
  for (let gain2 = from2 * step; gain2 < to2 * step; gain2 *= step) {
    const tried2 = Math.min(gain2, to2)
    const highPassHz = cornerFor(programme, limit2, tried2)
    const levelDb = 10 * (own + Math.log10(tried2) - filterLoss(fourthHz4, first, last, highPassHz))
    if (levelDb <= most) continue
    const worth = levelDb - costDb(highPassHz)
    if (worth > most) [best, most] = [{ levelDb, voltageV: Math.sqrt(tried2), highPassHz }, worth]
  }
  return best
}

/** A node of the grid this near the end of a band is the end that was meant: 63.5 for 63 Hz. */
const SAME_END = 1.01

/** First and last index within the band. */
function bandOf(frequenciesHz: Float64Array, { fromHz, toHz }: HeldWish): readonly [number, number] {
  let [first, last] = [frequenciesHz.length - 1, 0]
  for (let k = 0; k < frequenciesHz.length; k++) {
    const frequency = frequenciesHz[k] as number
    if (frequency >= fromHz / SAME_END && k < first) first = k
    if (frequency <= toHz * SAME_END) last = k
  }
  return [first, last]
}

function mean(values: Float64Array, first: number, last: number): number {
  let sum = 0
  for (let k = first; k <= last; k++) sum += values[k] as number
  return sum / (last - first + 1)
}

/** Mean of lg, by one logarithm a few factors. */
function meanLog(values: Float64Array, first: number, last: number): number {
  let [sum, product] = [0, 1]
  for (let k = first; k <= last; k++) {
    product *= values[k] as number
    if (product > 1e200 || product < 1e-200) {
      sum += Math.log10(product)
      product = 1
    }
  }
  return (sum + Math.log10(product)) / (last - first + 1)
}

function filterLoss(fourthHz4: Float64Array, first: number, last: number, cornerHz: number): number {
  const corner4 = cornerHz ** 4
  let product = 1
  for (let k = first; k <= last; k++) product *= 1 + corner4 / (fourthHz4[k] as number)
  return Math.log10(product) / (last - first + 1)
}
