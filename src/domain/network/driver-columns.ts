/** A group of equal drivers as seen by the network: an admittance between front and rear with a flow source across it. */
import { type ComplexColumn, complexColumn } from '../../numeric/linear/complex-column.ts'
import { coilImpedance } from '../driver/coil-impedance.ts'
import type { Coil } from '../driver/driver.ts'
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
export function groupTotals({ driver, count, inSeries, polarity }: DriverGroup): GroupTotals {
  return {
    sd: driver.sdM2 * count,
    bl: driver.blTm * inSeries * polarity,
    mass: driver.mmsKg * count,
    resistance: driver.rmsKgPerS * count,
    stiffness: count / driver.cmsMPerN,
    coilScale: inSeries ** 2 / count
  }
}

export interface DriverColumns {
  /** Blocked coil impedance. */
  readonly ze: ComplexColumn
  /** Mechanical impedance. */
  readonly zm: ComplexColumn
  /** 1/(Ze·Zm + Bl²). */
  readonly q: ComplexColumn
  /** Acoustic admittance between the faces, Sd²·Ze·q. */
  readonly y: ComplexColumn
}

export function driverColumns(length: number): DriverColumns {
  return { ze: complexColumn(length), zm: complexColumn(length), q: complexColumn(length), y: complexColumn(length) }
}

/**
 * The driver's equations with the coil current eliminated.
 *
 *   E = Ze·i + Bl·u,  Bl·i = Zm·u + Sd·(p_front − p_rear),  Zm = Rms + j(ωMms − 1/(ωCms))
 *   u = q·(Bl·E − Sd·Ze·Δp)   i = q·(Zm·E + Bl·Sd·Δp)   q = 1/(Ze·Zm + Bl²)
 *
 * One long body on purpose: its steps share a dozen numbers a point, which functions of their own would have to hand back.
 *
 * @source Small, "Direct-radiator loudspeaker system analysis", JAES 20(5), 1972 (from memory); elimination derived
 */
export function fillDriverColumns(
  columns: DriverColumns,
  omegas: Float64Array,
  count: number,
  coil: Coil,
  totals: GroupTotals
): void {
  fillImpedances(columns, omegas, count, coil, totals)
  const { ze, zm, q, y } = columns
  const sd2 = totals.sd ** 2
  const bl2 = totals.bl ** 2
  const { resistance } = totals
  const { re: zRe, im: zIm, dre: zDre, dim: zDim } = ze
  const { im: mIm, dim: mDim } = zm
  const { re: qRe, im: qIm, dre: qDre, dim: qDim } = q
  const { re: yRe, im: yIm, dre: yDre, dim: yDim } = y
  for (let k = 0; k < count; k++) {
    const zer = zRe[k] as number
    const zei = zIm[k] as number
    const dzer = zDre[k] as number
    const dzei = zDim[k] as number
    const zmi = mIm[k] as number
    const dzmi = mDim[k] as number
    const dr = zer * resistance - zei * zmi + bl2
    const di = zer * zmi + zei * resistance
    const ddr = dzer * resistance - dzei * zmi - zei * dzmi
    const ddi = dzer * zmi + dzei * resistance + zer * dzmi
    const size = 1 / (dr * dr + di * di)
    const qr = dr * size
    const qi = -di * size
    const sr = qr * qr - qi * qi
    const si = 2 * qr * qi
    const dqr = si * ddi - sr * ddr
    const dqi = -(sr * ddi + si * ddr)
    qRe[k] = qr
    qIm[k] = qi
    qDre[k] = dqr
    qDim[k] = dqi
    yRe[k] = sd2 * (zer * qr - zei * qi)
    yIm[k] = sd2 * (zer * qi + zei * qr)
    yDre[k] = sd2 * (dzer * qr - dzei * qi + zer * dqr - zei * dqi)
    yDim[k] = sd2 * (dzer * qi + dzei * qr + zer * dqi + zei * dqr)
  }
}

/** Blocked coil impedance and mechanical impedance of a group. */
export function fillImpedances(
  { ze, zm }: DriverColumns,
  omegas: Float64Array,
  count: number,
  coil: Coil,
  { coilScale, mass, resistance, stiffness }: GroupTotals
): void {
  coilImpedance(ze, omegas, count, coil, coilScale)
  const { im, dim } = zm
  zm.re.fill(resistance, 0, count)
  for (let k = 0; k < count; k++) {
    const omega = omegas[k] as number
    const spring = stiffness / omega
    im[k] = omega * mass - spring
    dim[k] = mass + spring / omega
  }
}
