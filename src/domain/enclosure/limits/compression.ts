/** Level lost at the given drive: to the amplifier's swing, to warm coils, to jets in the ports, and to all of them. */

import { REFERENCE_PRESSURE_PA } from '../../constants.ts'
import { chainGain } from '../../filter/filter-transfer.ts'
import { present } from '../../present.ts'
import { DISTANCE_M, type ResponseSystem, solveGrid } from '../model/response-system.ts'
import { levelCurve } from '../response/curves.ts'
import { hotSystem, unfiltered } from './hot-system.ts'
import { jetSolver } from './port-compression.ts'

export interface CompressionCurves {
  /** Level at the given drive with every loss that was modelled, never beyond the swing of the amplifier. */
  readonly compressedLevelDb: readonly number[]
  /** Negative where level is lost. */
  readonly coilCompressionDb?: readonly number[]
  readonly portCompressionDb?: readonly number[]
}

/** RMS that reaches the drivers at a frequency: what the source asks for through the filters, as far as the amplifier swings. */
const driveV = ({ voltageV, filters }: ResponseSystem, swingV: number, frequencyHz: number) =>
  Math.min(swingV, voltageV * chainGain(filters, frequencyHz))

/** Level with jet losses at the drive that reaches each frequency. */
function jetLevel(
  system: ResponseSystem,
  lossFactor: number,
  frequenciesHz: Float64Array,
  swingV: number
): readonly number[] {
  const { radiated } = jetSolver(unfiltered(system), lossFactor, frequenciesHz)
  const scale = system.air.densityKgPerM3 / (2 * Math.PI * DISTANCE_M * REFERENCE_PRESSURE_PA)
  return [...frequenciesHz].map((frequency, k) => {
    const voltageV = driveV(system, swingV, frequency)
    return 20 * Math.log10(scale * 2 * Math.PI * frequency * radiated(k, voltageV) * voltageV + 1e-15)
  })
}

/** Linear level at the drive that reaches each frequency. */
function swungLevel(system: ResponseSystem, frequenciesHz: Float64Array, swingV: number): readonly number[] {
  const level = levelCurve(solveGrid(system, frequenciesHz), system.air.densityKgPerM3, system.voltageV)
  return level.map((db, k) => {
    const frequency = frequenciesHz[k] as number
    const asked = system.voltageV * chainGain(system.filters, frequency)
    return asked > swingV ? db + 20 * Math.log10(swingV / asked) : db
  })
}

interface Losses {
  /** Resistance of the warm coil over the cold one; nothing where unknown. */
  readonly coilRatio?: number
  /** K of the ports; nothing where there is none. */
  readonly portLossFactor?: number
  /** RMS the amplifier can give; nothing where unknown. */
  readonly amplifierV?: number
}

/** @validity a clipped sine is taken at the amplifier's sine voltage; its heat is counted at the drive asked for, the worse case */
export function compressionCurves(
  system: ResponseSystem,
  frequenciesHz: Float64Array,
  { coilRatio, portLossFactor: lossFactor, amplifierV }: Losses
): CompressionCurves | undefined {
  if (coilRatio === undefined && lossFactor === undefined && amplifierV === undefined) return undefined
  const swingV = amplifierV ?? Number.POSITIVE_INFINITY
  const level = (of: ResponseSystem) => swungLevel(of, frequenciesHz, swingV)
  const jetsOf = (of: ResponseSystem, factor: number) => jetLevel(of, factor, frequenciesHz, swingV)
  const cold = level(system)
  const warm = coilRatio === undefined ? system : hotSystem(system, coilRatio)
  const hot = coilRatio === undefined ? cold : level(warm)
  const jets = lossFactor === undefined ? cold : jetsOf(system, lossFactor)
  const both = lossFactor === undefined ? hot : coilRatio === undefined ? jets : jetsOf(warm, lossFactor)
  const less = (one: readonly number[], other: readonly number[]) => one.map((value, k) => value - (other[k] as number))
  return {
    compressedLevelDb: both,
    ...present({
      coilCompressionDb: coilRatio === undefined ? undefined : less(hot, cold),
      portCompressionDb: lossFactor === undefined ? undefined : less(jets, cold)
    })
  }
}
