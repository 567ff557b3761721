/** A box with passive radiators as the load on the cones. */
import type { Air } from '../../../domain/air/air.ts'
import { radiatorTuning } from '../../../domain/enclosure/alignment/passive-radiator.ts'
import { type RadiatorUnit, travelLeftM } from '../../../domain/enclosure/alignment/radiator-sheet.ts'
import type { DriveLimits } from './box-response.ts'
import type { LoadAt } from './loaded-response.ts'

interface RadiatorBox {
  readonly netVolumeM3: number
  /** What the radiators are weighted for, and at which the leak is counted. */
  readonly tuningHz: number
  readonly leakQ?: number
  readonly unit: RadiatorUnit
  readonly count: number
  /** Whether the cones lie flat and hang through. */
  readonly isFlat: boolean
}

/**
 *   Y = jωC + ωb·C/QL + Y_p   Y_p = n·S²/(Rms + j(ωm − 1/(ωC_p)))   Z = 1/Y
 *   heard jωC/Y   travel |U·Y_p/Y|·√2/(n·S·ω) ≤ x_p   air of the box |U·C/Y|·√2·ρc²/V ≤ share
 *
 * @param box  volume, tuning, area and compliance above 0
 * @source Small, "Passive-radiator loudspeaker systems", JAES 22(8), 1974 (opening read, formula from memory), as admittances
 * @check  levels and limits of random systems equal those of the network solver to 1e-9 dB
 */
export function radiatorLoad(
  { stiffnessPa }: Air,
  box: RadiatorBox,
  { springShare = Infinity }: Pick<DriveLimits, 'springShare'>
): LoadAt {
  const { netVolumeM3, tuningHz, leakQ, count, unit, isFlat } = box
  const { areaM2, complianceMPerN, rmsKgPerS } = unit
  const { massKg } = radiatorTuning(tuningHz, netVolumeM3, { count, areaM2 }, complianceMPerN, stiffnessPa)
  const compliance = netVolumeM3 / stiffnessPa
  const leak = leakQ === undefined ? 0 : (2 * Math.PI * tuningHz * compliance) / leakQ
  const [flow, spring2] = [count * areaM2 ** 2, (springShare * netVolumeM3) ** 2 / 2]
  const travel2 = (count * areaM2 * travelLeftM(unit, massKg, isFlat)) ** 2 / 2
  return (omega, at) => {
    const reactance = omega * massKg - 1 / (omega * complianceMPerN)
    const mechanical2 = rmsKgPerS * rmsKgPerS + reactance * reactance
    const air = omega * compliance
    const yRe = leak + (flow * rmsKgPerS) / mechanical2
    const yIm = air - (flow * reactance) / mechanical2
    const y2 = yRe * yRe + yIm * yIm
    at.zRe = yRe / y2
    at.zIm = -yIm / y2
    at.heardRe = (air * yIm) / y2
    at.heardIm = (air * yRe) / y2
    at.port2 = 0
    const moved2 = flow ** 2 / mechanical2 / y2
    at.most2 = omega * omega * Math.min(travel2 / moved2, spring2 / ((air * air) / y2))
  }
}
