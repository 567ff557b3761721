/** A stated short circuit: the constant of the metal, the section it needs, and how long the chosen one survives. */

import type { ShortCircuitAnswer, ShortCircuitRequest } from '../../../contract/supply/supply-cables.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import type { CableSize } from '../cable/cable-size.ts'
import { cableDefaults } from '../cable/defaults.ts'
import { finalTemperatureC } from '../cable/insulation-material.ts'
import { leastAreaForFault, shortCircuitK, shortCircuitKOfMetal, withstandA2s } from '../cable/short-circuit.ts'
import type { CableTask } from './cable-request.ts'

/** @throws DesignError `conflicting-input` unless the end temperature lies above the start */
function temperaturesOf({ startC, endC }: ShortCircuitRequest, task: CableTask, assumed: Assumptions) {
  const { insulationC } = task.surroundings
  const largestM2 = Math.max(...task.sizes.map(({ areaM2 }) => areaM2))
  const from = assumed.work(startC, 'shortCircuit.startC', insulationC, cableDefaults.faultStartC)
  const survives = {
    why: `what ${task.insulationMaterial} survives once, IEC 60364-4-43 and 60724`,
    source: 'practice'
  } as const
  const lastC = finalTemperatureC(task.insulationMaterial, insulationC, largestM2)
  const to = assumed.work(endC, 'shortCircuit.endC', lastC, survives)
  if (to > from) return [from, to] as const
  throw new DesignError('conflicting-input', { field: 'shortCircuit.endC', value: to, minimum: from, unit: '°C' })
}

/** @throws DesignError `not-positive` for a metal whose resistance does not rise with heat */
function constantOf({ law }: CableTask, heatCapacityJPerM3K: number | undefined, startC: number, endC: number): number {
  const { material, resistivityOhmM, perK } = law
  if (heatCapacityJPerM3K === undefined) return shortCircuitK(material, startC, endC)
  if (perK > 0) return shortCircuitKOfMetal({ heatCapacityJPerM3K, resistivityOhmM, perK }, startC, endC)
  throw new DesignError('not-positive', { field: 'temperatureCoefficientPerK', value: perK, unit: '1/K' })
}

/** @throws DesignError `conflicting-input`, `not-positive` */
export function shortCircuitAnswer(
  request: ShortCircuitRequest,
  task: CableTask,
  chosen: CableSize | undefined,
  assumed: Assumptions
): ShortCircuitAnswer {
  const { currentA, durationS, heatCapacityJPerM3K } = request
  const [startC, endC] = temperaturesOf(request, task, assumed)
  const k = constantOf(task, heatCapacityJPerM3K, startC, endC)
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
