/** A stated short circuit: the constant of the metal, the section it needs, and how long the chosen one survives. */
import type { Assumptions } from '../assume.ts'
import type { CableSize } from '../cable/cable-size.ts'
import {
  finalTemperatureC,
  leastAreaForFault,
  shortCircuitK,
  shortCircuitKOfMetal,
  withstandA2s
} from '../cable/short-circuit.ts'
import { DesignError } from '../design-error.ts'
import type { CableTask, ShortCircuitRequest } from './cable-request.ts'

export interface ShortCircuitAnswer {
  /** A·√s/mm². */
  readonly k: number
  readonly letThroughA2s: number
  readonly minimumAreaM2: number
  readonly sizes: readonly {
    readonly designation: string
    readonly withstandA2s: number
    /** How long it survives the current. */
    readonly survivesS: number
    /** Current it survives for the duration. */
    readonly survivesA: number
    readonly withstands: boolean
  }[]
}

/** @throws DesignError `conflicting-input` unless the end temperature lies above the start */
export function shortCircuitAnswer(
  request: ShortCircuitRequest,
  task: CableTask,
  chosen: CableSize | undefined,
  assumed: Assumptions
): ShortCircuitAnswer {
  const { currentA, durationS, heatCapacityJPerM3K } = request
  const { insulationC } = task.surroundings
  const startC = assumed.or(
    request.startC,
    'shortCircuit.startC',
    insulationC,
    'conductor at the class of its insulation before the fault'
  )
  const endC = assumed.or(
    request.endC,
    'shortCircuit.endC',
    finalTemperatureC(insulationC),
    'what this class of insulation survives once, IEC 60364-5-54'
  )
  if (endC <= startC) {
    throw new DesignError('conflicting-input', { field: 'shortCircuit.endC', value: endC, minimum: startC, unit: '°C' })
  }
  const { resistivityOhmM, perK } = task.law
  if (heatCapacityJPerM3K !== undefined && !(perK > 0)) {
    throw new DesignError('not-positive', { field: 'temperatureCoefficientPerK', value: perK, unit: '1/K' })
  }
  const k =
    heatCapacityJPerM3K === undefined
      ? shortCircuitK(task.law.material, startC, endC)
      : shortCircuitKOfMetal({ heatCapacityJPerM3K, resistivityOhmM, perK }, startC, endC)
  const letThroughA2s = currentA ** 2 * durationS
  const sizes = chosen === undefined ? task.sizes : [chosen, ...task.sizes.filter(size => size !== chosen)]
  return {
    k,
    letThroughA2s,
    minimumAreaM2: leastAreaForFault(k, currentA, durationS),
    sizes: sizes.map(({ designation, areaM2 }) => {
      const withstand = withstandA2s(k, areaM2)
      return {
        designation,
        withstandA2s: withstand,
        survivesS: withstand / currentA ** 2,
        survivesA: Math.sqrt(withstand / durationS),
        withstands: withstand >= letThroughA2s
      }
    })
  }
}
