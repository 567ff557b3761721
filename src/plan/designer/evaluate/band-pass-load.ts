/** A band-pass of fourth order as the load on the cones: a closed chamber behind them, one with a port before them. */
import type { Air } from '../../../domain/air/air.ts'
import type { DriveLimits } from './box-response.ts'
import { closedHz, type DriverTables } from './driver-tables.ts'
import type { LoadAt } from './loaded-response.ts'

interface BandPassBox {
  /** Behind the cones. */
  readonly netVolumeM3: number
  /** Before them; its port plays. */
  readonly frontVolumeM3: number
  readonly tuningHz: number
  /** Of either chamber, at its own resonance. */
  readonly leakQ?: number
}

/**
 *   Z_r = 1/(y_r + jωC_r)   y_p = −jωb²·C_f/ω   Z_f = 1/(y_f + jωC_f + y_p)   Z = Z_r + Z_f
 *   heard (y_f + y_p)·Z_f − y_r·Z_r   port |y_p·Z_f|   leaks y_r = ωc·C_r/QL, y_f = ωb·C_f/QL
 *   air of a chamber |U·Z·C|·√2·ρc²/V ≤ share
 *
 * @param box  volumes and tuning above 0
 * @source Geddes, "An introduction to band-pass loudspeaker systems", JAES 37(5), 1989 (from memory), as admittances
 * @check  levels and limits of random systems equal those of the network solver to 1e-9 dB
 */
export function bandPassLoad(
  tables: DriverTables,
  { netVolumeM3, frontVolumeM3, tuningHz, leakQ = Infinity }: BandPassBox,
  { springShare = Infinity }: Pick<DriveLimits, 'springShare'>
): LoadAt {
  const { stiffnessPa }: Air = tables.air
  const [rear, front] = [netVolumeM3 / stiffnessPa, frontVolumeM3 / stiffnessPa]
  const tuning = 2 * Math.PI * tuningHz
  const rearLeak = (2 * Math.PI * closedHz(tables, netVolumeM3) * rear) / leakQ
  const frontLeak = (tuning * front) / leakQ
  const spring2 = (springShare * stiffnessPa) ** 2 / 2
  return (omega, at) => {
    const flow = (tuning * tuning * front) / omega
    const frontIm = omega * front - flow
    const rear2 = rearLeak * rearLeak + (omega * rear) ** 2
    const front2 = frontLeak * frontLeak + frontIm * frontIm
    const [rearRe, rearJ] = [rearLeak / rear2, (-omega * rear) / rear2]
    const [aheadRe, aheadJ] = [frontLeak / front2, -frontIm / front2]
    at.zRe = rearRe + aheadRe
    at.zIm = rearJ + aheadJ
    at.heardRe = frontLeak * aheadRe + flow * aheadJ - rearLeak * rearRe
    at.heardIm = frontLeak * aheadJ - flow * aheadRe - rearLeak * rearJ
    at.port2 = (flow * flow) / front2
    at.most2 = spring2 * Math.min(rear2, front2)
  }
}
