/** One sample of a tolerance run: its curves into shared columns, its figures into a record. */

import type { SampleCurves } from '../../../contract/enclosures/tolerance.ts'
import type { FigureName } from '../../../contract/enclosures/words.ts'
import type { Assumptions } from '../../assume.ts'
import { present } from '../../present.ts'
import { quickHalfPower } from '../model/half-power.ts'
import type { SystemRequest } from '../model/request.ts'
import { type ResponseSystem, responseSystem, solveGrid } from '../model/response-system.ts'
import { airSpeed, excursionCurve, levelCurve } from '../response/curves.ts'

/** Absent where the system has no such figure. */
export type Figures = Readonly<Partial<Record<FigureName, number>>>

export interface Sample {
  readonly system: ResponseSystem
  readonly curves: SampleCurves
  readonly figures: Figures
}

const highest = (values: readonly number[]) => values.reduce((most, value) => Math.max(most, value), 0)
const lowest = (values: readonly number[]) =>
  values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY)

function resonances({ chambers, custom }: ResponseSystem): Figures {
  const { rear, front } = chambers
  if (custom) return {}
  return {
    ...(rear && (rear.opening === undefined ? { 'closed-resonance': rear.lossHz } : { tuning: rear.lossHz })),
    ...(front?.opening && { 'front-tuning': front.lossHz })
  }
}

/** @param frequenciesHz  of the curves; peaks are the highest over them */
export function sampleOf(request: SystemRequest, frequenciesHz: Float64Array, assume: Assumptions): Sample {
  const system = responseSystem(request, assume)
  const solution = solveGrid(system, frequenciesHz)
  const { terminal, current } = solution
  const levelDb = levelCurve(solution, system.air.densityKgPerM3, system.voltageV)
  const coneExcursionM = excursionCurve(solution, system.voltageV)
  const impedanceOhm = levelDb.map((_, k) => {
    const over = (terminal.re[k] as number) ** 2 + (terminal.im[k] as number) ** 2
    return Math.sqrt(over / ((current.re[k] as number) ** 2 + (current.im[k] as number) ** 2))
  })
  const speeds = system.ports.map(port => highest(airSpeed(solution, port, system.voltageV)))
  const { f3Hz, f3UpperHz } = quickHalfPower(system)
  return {
    system,
    curves: { levelDb, coneExcursionM, impedanceOhm },
    figures: {
      ...present({ f3: f3Hz, 'f3-upper': f3UpperHz }),
      ...resonances(system),
      'driver-resonance': system.driver.fsHz,
      'driver-total-q': system.driver.qts,
      'peak-excursion': highest(coneExcursionM),
      ...(speeds.length === 0 ? {} : { 'peak-air-speed': highest(speeds) }),
      'minimum-impedance': lowest(impedanceOhm)
    }
  }
}
