import type { CapacitorEffect, CapacitorRequest } from '../../../contract/supply/supply-current.ts'
import { present } from '../../present.ts'

/** Left across the resistor when the fuse may go in: then hardly a spark [V]. Engineering choice. */
const DONE_V = 1

/** At 12 V; at more it grows with the square, so that the resistor takes the same power at first. */
const USUAL_PRECHARGE_OHM = 10

/**
 * Resistor for charging where none is named.
 *
 *   R = 10 Ω·n², n batteries of 12 V in series
 *
 * @source engineering choice: about 20 W at first, as a 21 W lamp
 * @check  14.4 V, 10 Ω → 20.7 W; 28.8 V, 40 Ω → 20.7 W
 */
export const usualPrechargeOhm = (twelves: number): number => USUAL_PRECHARGE_OHM * twelves ** 2

/** Ratings that are sold [W]. Common practice, no source. */
const soldRatingsW = [5, 10, 17, 25, 50, 100] as const

/** Rating of the resistor to buy: its power at first, rounded up to what is sold. */
export const prechargeRatingW = (peakW: number): number =>
  soldRatingsW.find(rating => rating >= peakW) ?? Math.ceil(peakW)

/**
 * Hold-up, ripple corner and precharge.
 *
 *   E = C·(V1² − V2²)/2,  t = E/P,  f = 1/(2π·R·C),  t99 = R·C·ln(100),  t1V = R·C·ln(V1/1 V)
 *
 * @param capacitor  C [F] > 0, V1 > V2 [V]
 * @param loadW  power drawn [W] > 0; @param currentA  the current it steps by [A]
 * @source derived
 * @check  1 F, 14.4 → 12 V: 31.68 J, 31.7 ms at 1 kW; 20 mΩ → 7.958 Hz; 30 Ω → 138 s, 6.9 W; 4 F, 14.4 V, 10 Ω → 414.7 J, 106.7 s; 100 A through 2 mΩ → 0.2 V
 */
export function capacitorEffect(
  capacitor: CapacitorRequest,
  fromV: number,
  toV: number,
  loadW: number,
  currentA: number
): CapacitorEffect {
  const { capacitanceF, esrOhm, sourceOhm, prechargeOhm } = capacitor
  const usableJ = (capacitanceF * (fromV ** 2 - toV ** 2)) / 2
  return {
    storedJ: (capacitanceF * fromV ** 2) / 2,
    usableJ,
    holdUpS: usableJ / loadW,
    ...present({
      esrStepV: esrOhm === undefined ? undefined : currentA * esrOhm,
      cornerHz: sourceOhm === undefined ? undefined : 1 / (2 * Math.PI * sourceOhm * capacitanceF)
    }),
    ...(prechargeOhm === undefined
      ? {}
      : {
          prechargeTimeConstantS: prechargeOhm * capacitanceF,
          precharge99S: prechargeOhm * capacitanceF * Math.log(100),
          prechargePeakW: fromV ** 2 / prechargeOhm,
          prechargeOhm,
          prechargeDoneS: prechargeOhm * capacitanceF * Math.log(Math.max(1, fromV / DONE_V))
        })
  }
}
