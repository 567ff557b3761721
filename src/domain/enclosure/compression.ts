/** Level lost at the given drive: to warm coils, to jets in the ports, and to both. */
import { REFERENCE_PRESSURE_PA } from '../constants.ts'
import { chainGain } from '../filter/filter-transfer.ts'
import { levelCurve } from './curves.ts'
import { hotSystem, unfiltered } from './hot-system.ts'
import { jetSolver } from './port-compression.ts'
import { DISTANCE_M, type ResponseSystem, solveGrid } from './response-system.ts'

export interface CompressionCurves {
  /** Level at the given drive with every loss that was modelled. */
  readonly compressedLevelDb: readonly number[]
  /** Negative where level is lost. */
  readonly coilCompressionDb?: readonly number[]
  readonly portCompressionDb?: readonly number[]
}

/** Level with jet losses at the drive that reaches each frequency through the filters. */
function jetLevel(system: ResponseSystem, lossFactor: number, frequenciesHz: Float64Array): readonly number[] {
  const { radiated } = jetSolver(unfiltered(system), lossFactor, frequenciesHz)
  const scale = system.air.densityKgPerM3 / (2 * Math.PI * DISTANCE_M * REFERENCE_PRESSURE_PA)
  return [...frequenciesHz].map((frequency, k) => {
    const voltageV = system.voltageV * chainGain(system.filters, frequency)
    return 20 * Math.log10(scale * 2 * Math.PI * frequency * radiated(k, voltageV) * voltageV + 1e-15)
  })
}

/**
 * @param coilRatio   resistance of the warm coil over the cold one; nothing where unknown
 * @param lossFactor  K of the ports; nothing where there is none
 */
export function compressionCurves(
  system: ResponseSystem,
  frequenciesHz: Float64Array,
  coilRatio: number | undefined,
  lossFactor: number | undefined
): CompressionCurves | undefined {
  if (coilRatio === undefined && lossFactor === undefined) return undefined
  const level = (of: ResponseSystem) =>
    levelCurve(solveGrid(of, frequenciesHz), of.air.densityKgPerM3, of.voltageV) as readonly number[]
  const cold = level(system)
  const warm = coilRatio === undefined ? system : hotSystem(system, coilRatio)
  const hot = coilRatio === undefined ? cold : level(warm)
  const jets = lossFactor === undefined ? cold : jetLevel(system, lossFactor, frequenciesHz)
  const both =
    lossFactor === undefined ? hot : coilRatio === undefined ? jets : jetLevel(warm, lossFactor, frequenciesHz)
  const less = (one: readonly number[], other: readonly number[]) => one.map((value, k) => value - (other[k] as number))
  return {
    compressedLevelDb: both,
    ...(coilRatio === undefined ? {} : { coilCompressionDb: less(hot, cold) }),
    ...(lossFactor === undefined ? {} : { portCompressionDb: less(jets, cold) })
  }
}
