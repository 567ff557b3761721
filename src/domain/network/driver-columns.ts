/** A group of equal drivers as seen by the network: an admittance between front and rear with a flow source across it. */
import { type DualColumn, dualColumn } from '../../numeric/dual-column.ts'
import { coilImpedance } from '../driver/coil-impedance.ts'
import type { DriverGroup } from './network.ts'

/** The group as one driver: N faces, N masses, and the coils as they are joined. */
export interface GroupTotals {
  readonly sd: number
  readonly bl: number
  readonly mass: number
  readonly resistance: number
  readonly stiffness: number
  /** Factor from one coil's impedance to the group's. */
  readonly coilScale: number
}

/**
 * N equal drivers, S in each string, N/S strings in parallel, driven by the voltage over the group.
 *
 *   Sd·N   Mms·N   Rms·N   N/Cms   Bl·S   Ze·S²/N
 *
 * @source derived: equal drivers move alike, forces and flows add
 * @check  4 drivers, 2 in series: Re as one, Bl of the group twice that of one
 */
export function groupTotals({ driver, count, inSeries }: DriverGroup): GroupTotals {
  return {
    sd: driver.sdM2 * count,
    bl: driver.blTm * inSeries,
    mass: driver.mmsKg * count,
    resistance: driver.rmsKgPerS * count,
    stiffness: count / driver.cmsMPerN,
    coilScale: inSeries ** 2 / count
  }
}

export interface DriverColumns {
  /** Blocked coil impedance. */
  readonly ze: DualColumn
  /** Mechanical impedance. */
  readonly zm: DualColumn
  /** 1/(Ze·Zm + Bl²). */
  readonly q: DualColumn
  /** Acoustic admittance between the faces, Sd²·Ze·q. */
  readonly y: DualColumn
}

export function driverColumns(length: number): DriverColumns {
  return { ze: dualColumn(length), zm: dualColumn(length), q: dualColumn(length), y: dualColumn(length) }
}

/**
 * The driver's equations with the coil current eliminated.
 *
 *   E = Ze·i + Bl·u,  Bl·i = Zm·u + Sd·(p_front − p_rear),  Zm = Rms + j(ωMms − 1/(ωCms))
 *   u = q·(Bl·E − Sd·Ze·Δp)   i = q·(Zm·E + Bl·Sd·Δp)   q = 1/(Ze·Zm + Bl²)
 *
 * @source Small, "Direct-radiator loudspeaker system analysis", JAES 20(5), 1972 (from memory); elimination derived
 */
export function fillDriverColumns(
  { ze, zm, q, y }: DriverColumns,
  omegas: Float64Array,
  count: number,
  group: DriverGroup,
  totals: GroupTotals
): void {
  const { bl, mass, resistance, stiffness } = totals
  const sd2 = totals.sd ** 2
  const bl2 = bl * bl
  coilImpedance(ze, omegas, count, group.driver.coil, totals.coilScale)
  for (let k = 0; k < count; k++) {
    const omega = omegas[k] as number
    const zer = ze.re[k] as number
    const zei = ze.im[k] as number
    const dzer = ze.dre[k] as number
    const dzei = ze.dim[k] as number
    const spring = stiffness / omega
    const zmi = omega * mass - spring
    const dzmi = mass + spring / omega
    zm.re[k] = resistance
    zm.im[k] = zmi
    zm.dim[k] = dzmi
    const dr = zer * resistance - zei * zmi + bl2
    const di = zer * zmi + zei * resistance
    const ddr = dzer * resistance - dzei * zmi - zei * dzmi
    const ddi = dzer * zmi + dzei * resistance + zer * dzmi
    const size = dr * dr + di * di
    const qr = dr / size
    const qi = -di / size
    const sr = qr * qr - qi * qi
    const si = 2 * qr * qi
    const dqr = si * ddi - sr * ddr
    const dqi = -(sr * ddi + si * ddr)
    q.re[k] = qr
    q.im[k] = qi
    q.dre[k] = dqr
    q.dim[k] = dqi
    y.re[k] = sd2 * (zer * qr - zei * qi)
    y.im[k] = sd2 * (zer * qi + zei * qr)
    y.dre[k] = sd2 * (dzer * qr - dzei * qi + zer * dqr - zei * dqi)
    y.dim[k] = sd2 * (dzer * qi + dzei * qr + zer * dqi + zei * dqr)
  }
}

/** Pressure difference over a group; absent where both faces see constant pressure. */
export type Difference = DualColumn | undefined

/** Cone velocity for one volt over the group, into `into` from `offset`. */
export function coneVelocity(
  into: DualColumn,
  offset: number,
  { ze, q }: DriverColumns,
  { bl, sd }: GroupTotals,
  difference: Difference,
  count: number
): void {
  for (let k = 0, o = offset; k < count; k++, o++) {
    let fr = bl
    let fi = 0
    let dfr = 0
    let dfi = 0
    if (difference !== undefined) {
      const zer = (ze.re[k] as number) * sd
      const zei = (ze.im[k] as number) * sd
      const dzer = (ze.dre[k] as number) * sd
      const dzei = (ze.dim[k] as number) * sd
      const pr = difference.re[k] as number
      const pi = difference.im[k] as number
      const dpr = difference.dre[k] as number
      const dpi = difference.dim[k] as number
      fr -= zer * pr - zei * pi
      fi -= zer * pi + zei * pr
      dfr -= dzer * pr - dzei * pi + zer * dpr - zei * dpi
      dfi -= dzer * pi + dzei * pr + zer * dpi + zei * dpr
    }
    storeProduct(into, o, q, k, fr, fi, dfr, dfi)
  }
}

/** Current into the group for one volt over it. */
export function groupCurrent(
  into: DualColumn,
  offset: number,
  { zm, q }: DriverColumns,
  { bl, sd }: GroupTotals,
  difference: Difference,
  count: number
): void {
  const coupling = bl * sd
  for (let k = 0, o = offset; k < count; k++, o++) {
    let fr = zm.re[k] as number
    let fi = zm.im[k] as number
    let dfr = 0
    let dfi = zm.dim[k] as number
    if (difference !== undefined) {
      fr += coupling * (difference.re[k] as number)
      fi += coupling * (difference.im[k] as number)
      dfr += coupling * (difference.dre[k] as number)
      dfi += coupling * (difference.dim[k] as number)
    }
    storeProduct(into, o, q, k, fr, fi, dfr, dfi)
  }
}

function storeProduct(
  into: DualColumn,
  o: number,
  q: DualColumn,
  k: number,
  fr: number,
  fi: number,
  dfr: number,
  dfi: number
) {
  const qr = q.re[k] as number
  const qi = q.im[k] as number
  const dqr = q.dre[k] as number
  const dqi = q.dim[k] as number
  into.re[o] = qr * fr - qi * fi
  into.im[o] = qr * fi + qi * fr
  into.dre[o] = dqr * fr - dqi * fi + qr * dfr - qi * dfi
  into.dim[o] = dqr * fi + dqi * fr + qr * dfi + qi * dfr
}
