/** One closed or vented box around tabled drivers: what it radiates for one volt and what each limit leaves. */

import { REFERENCE_PRESSURE_PA } from '../../../domain/constants.ts'
import type { DriverTables } from './driver-tables.ts'

/** What may not be passed; what is absent does not limit. */
export interface DriveLimits {
  readonly coneM?: number
  /** Mean heat in all coils [W]. */
  readonly heatW?: number
  /** RMS at the terminals of the drivers, already over the root of the duty. */
  readonly ratedV?: number
  /** Share of a full sine that heats. */
  readonly duty: number
  readonly amplifierV?: number
  readonly amplifierA?: number
  /** Peak of ΔV/V of the air in the box. */
  readonly springShare?: number
}

interface BoxDesign {
  readonly netVolumeM3: number
  /** Absent: closed. */
  readonly tuningHz?: number
  readonly leakQ?: number
}

/** Filled by {@link solveBox}, again and again: per frequency, squares of magnitudes for one volt. */
export interface BoxCurves {
  /** Flow into the air of the box [m³/s], the one that is heard. */
  readonly radiatedRe: Float64Array
  readonly radiatedIm: Float64Array
  readonly level2: Float64Array
  /** Square of the largest voltage that every limit but the air speed leaves. */
  readonly other2: Float64Array
  /** Square of the flow through the port. */
  readonly port2: Float64Array
}

export const boxCurves = (length: number): BoxCurves => ({
  radiatedRe: new Float64Array(length),
  radiatedIm: new Float64Array(length),
  level2: new Float64Array(length),
  other2: new Float64Array(length),
  port2: new Float64Array(length)
})

/** Where nothing moves nothing limits; the square of the highest voltage that is quoted. */
export const HIGHEST_V2 = 1e12

/** Squares of the limits over the quantity they hold, so that the loop divides once a limit. */
function squares(limits: DriveLimits, { areaM2, groupOhm }: DriverTables, volumeM3: number) {
  const { coneM, heatW, duty, amplifierA, springShare } = limits
  return {
    cone2: coneM === undefined ? Infinity : (areaM2 * coneM) ** 2 / 2,
    current2: Math.min(
      heatW === undefined ? Infinity : heatW / (duty * groupOhm),
      amplifierA === undefined ? Infinity : amplifierA ** 2
    ),
    rated2: limits.ratedV === undefined ? Infinity : limits.ratedV ** 2,
    amplifier2: limits.amplifierV === undefined ? HIGHEST_V2 : Math.min(HIGHEST_V2, limits.amplifierV ** 2),
    spring2: springShare === undefined ? Infinity : (springShare * volumeM3) ** 2 / 2
  }
}

/**
 * The box as one complex product a frequency.
 *
 *   C = V/(ρc²)   y = ωb/QL + j(ω − ωb²/ω)   D = 1 + m·C·y
 *   cones U = g·C·y/D   radiated R = g·C·jω/D   port P = g·C·ωb²/(jω·D)   current i = (1 + n·C·y)/(Ze·D)
 *   excursion² = 2|U|²/(Sd·ω)²   heat |i|²·Re   terminals |1 − i·Rs|   level (ρ·f/p₀)²·|R|²
 *
 * One long body on purpose: it is the innermost loop of the search and all quantities share D.
 *
 * @param design  volume above 0; a closed box has no leak here
 * @source Small, "Closed-box loudspeaker systems", 1972, and "Vented-box loudspeaker systems", 1973, JAES (from memory), as impedances
 * @check  levels and limits of random systems equal those of the network solver to 1e-9 dB
 */
export function solveBox(tables: DriverTables, design: BoxDesign, limits: DriveLimits, into: BoxCurves): void {
  const { frequenciesHz, g, m, n, ze, air, seriesOhm } = tables
  const compliance = design.netVolumeM3 / air.stiffnessPa
  const tuning = 2 * Math.PI * (design.tuningHz ?? 0)
  const leak = design.leakQ === undefined ? 0 : (tuning / design.leakQ) * compliance
  const { cone2, current2, rated2, amplifier2, spring2 } = squares(limits, tables, design.netVolumeM3)
  const loud = (air.densityKgPerM3 / REFERENCE_PRESSURE_PA) ** 2
  for (let k = 0; k < frequenciesHz.length; k++) {
    const frequency = frequenciesHz[k] as number
    const omega = 2 * Math.PI * frequency
    const yIm = (omega - (tuning * tuning) / omega) * compliance
    const [mRe, mIm] = [m.re[k] as number, m.im[k] as number]
    const dRe = 1 + mRe * leak - mIm * yIm
    const dIm = mRe * yIm + mIm * leak
    const d2 = dRe * dRe + dIm * dIm
    const [gRe, gIm] = [g.re[k] as number, g.im[k] as number]
    const pRe = (gRe * dRe + gIm * dIm) / d2
    const pIm = (gIm * dRe - gRe * dIm) / d2
    const p2 = pRe * pRe + pIm * pIm
    const radiated2 = p2 * (omega * compliance) ** 2
    const cones2 = p2 * (leak * leak + yIm * yIm)
    into.radiatedRe[k] = -pIm * omega * compliance
    into.radiatedIm[k] = pRe * omega * compliance
    into.level2[k] = loud * frequency * frequency * radiated2
    into.port2[k] = p2 * ((tuning * tuning * compliance) / omega) ** 2
    const [nRe, nIm] = [n.re[k] as number, n.im[k] as number]
    const aRe = 1 + nRe * leak - nIm * yIm
    const aIm = nRe * yIm + nIm * leak
    const [zRe, zIm] = [ze.re[k] as number, ze.im[k] as number]
    const [bRe, bIm] = [zRe * dRe - zIm * dIm, zRe * dIm + zIm * dRe]
    const b2 = bRe * bRe + bIm * bIm
    const [iRe, iIm] = [(aRe * bRe + aIm * bIm) / b2, (aIm * bRe - aRe * bIm) / b2]
    const terminal2 = (1 - iRe * seriesOhm) ** 2 + (iIm * seriesOhm) ** 2
    into.other2[k] = Math.min(
      amplifier2,
      (cone2 * omega * omega) / cones2,
      current2 / (iRe * iRe + iIm * iIm),
      rated2 / terminal2,
      (spring2 * omega * omega) / radiated2
    )
  }
}

/** Square of the largest voltage at which a port of one square metre keeps one metre a second, peak. */
export const portLimit2 = (port2: number): number => (port2 <= 0 ? HIGHEST_V2 : 0.5 / port2)
