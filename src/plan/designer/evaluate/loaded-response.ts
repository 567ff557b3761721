/** Any enclosure as what the cones work against: heard and limited like {@link solveBox}, a little slower. */
import { REFERENCE_PRESSURE_PA } from '../../../domain/constants.ts'
import { type BoxCurves, type DriveLimits, HIGHEST_V2 } from './box-response.ts'
import type { DriverTables } from './driver-tables.ts'

/** At one frequency, written again and again: no object is made in the loop. */
interface ConeLoad {
  /** Acoustic impedance that the cones see [Pa·s/m³]. */
  zRe: number
  zIm: number
  /** Radiated flow for one of the cones. */
  heardRe: number
  heardIm: number
  /** Square of the flow through a port for one of the cones; 0 where none limits. */
  port2: number
  /** Square of the flow of the cones at which something in the box reaches its own limit [m⁶/s²]. */
  most2: number
}

/** Writes what the cones see at a frequency [rad/s]. */
export type LoadAt = (omega: number, at: ConeLoad) => void

/**
 * Cones on a load, for one volt.
 *
 *   U = g/(m + Z)   radiated R = U·T   port P = U·T_p   current i = (n + Z)/(Ze·(m + Z))
 *   excursion² = 2|U|²/(Sd·ω)²   heat |i|²·Re   terminals |1 − i·Rs|   level (ρ·f/p₀)²·|R|²
 *
 * @source derived: the mechanical and acoustic circuit of a driver on one acoustic impedance
 * @check  a closed box given as the load jωC → as the closed form of the box itself
 */
export function solveLoaded(tables: DriverTables, load: LoadAt, limits: DriveLimits, into: BoxCurves): void {
  const { frequenciesHz, g, m, n, ze, air, seriesOhm, areaM2, groupOhm } = tables
  const { coneM = Infinity, heatW = Infinity, amplifierA = Infinity, ratedV = Infinity } = limits
  const current2 = Math.min(heatW / (limits.duty * groupOhm), amplifierA ** 2)
  const amplifier2 = Math.min(HIGHEST_V2, (limits.amplifierV ?? Infinity) ** 2)
  const loud = (air.densityKgPerM3 / REFERENCE_PRESSURE_PA) ** 2
  const at: ConeLoad = { zRe: 0, zIm: 0, heardRe: 0, heardIm: 0, port2: 0, most2: 0 }
  for (let k = 0; k < frequenciesHz.length; k++) {
    const frequency = frequenciesHz[k] as number
    const omega = 2 * Math.PI * frequency
    load(omega, at)
    const [sRe, sIm] = [(m.re[k] as number) + at.zRe, (m.im[k] as number) + at.zIm]
    const s2 = sRe * sRe + sIm * sIm
    const [gRe, gIm] = [g.re[k] as number, g.im[k] as number]
    const [uRe, uIm] = [(gRe * sRe + gIm * sIm) / s2, (gIm * sRe - gRe * sIm) / s2]
    const cones2 = uRe * uRe + uIm * uIm
    const rRe = uRe * at.heardRe - uIm * at.heardIm
    const rIm = uRe * at.heardIm + uIm * at.heardRe
    into.radiatedRe[k] = rRe
    into.radiatedIm[k] = rIm
    into.level2[k] = loud * frequency * frequency * (rRe * rRe + rIm * rIm)
    into.port2[k] = cones2 * at.port2
    const [oRe, oIm] = [(n.re[k] as number) + at.zRe, (n.im[k] as number) + at.zIm]
    const [zRe, zIm] = [ze.re[k] as number, ze.im[k] as number]
    const [bRe, bIm] = [zRe * sRe - zIm * sIm, zRe * sIm + zIm * sRe]
    const b2 = bRe * bRe + bIm * bIm
    const [iRe, iIm] = [(oRe * bRe + oIm * bIm) / b2, (oIm * bRe - oRe * bIm) / b2]
    into.other2[k] = Math.min(
      amplifier2,
      Math.min((areaM2 * coneM * omega) ** 2 / 2, at.most2) / cones2,
      current2 / (iRe * iRe + iIm * iIm),
      ratedV ** 2 / ((1 - iRe * seriesOhm) ** 2 + (iIm * seriesOhm) ** 2)
    )
  }
}
