/** Which parameter moves which figure, one at a time. */

import type { Sensitivity } from '../../../contract/enclosures/tolerance.ts'
import { figureNames, type ParameterName } from '../../../contract/enclosures/words.ts'
import { assumptions } from '../../assume.ts'
import type { Driver } from '../../driver/driver.ts'
import type { SystemRequest } from '../model/request.ts'
import { type Parameter, variedRequest } from './tolerance-parameters.ts'
import { type Figures, sampleOf } from './tolerance-sample.ts'

/** A parameter and its standard deviation, relative. */
export interface Scatter extends Parameter {
  readonly relative: number
}

const STEP = 0.002

/** Elasticities below this are rounding of the difference. */
const NEGLIGIBLE = 1e-6

/**
 *   e = [ln y(p·(1 + h)) − ln y(p·(1 − h))]/[ln(1 + h) − ln(1 − h)],  h = 0.002
 *
 * @source derived: central difference of the logarithms
 * @check  tuning of a vented box to its volume → −½
 */
function elasticities(up: Figures, down: Figures): Figures {
  const span = Math.log(1 + STEP) - Math.log(1 - STEP)
  const entries = figureNames.flatMap(name => {
    const [high, low] = [up[name], down[name]]
    if (high === undefined || low === undefined || !(high > 0 && low > 0)) return []
    const value = Math.log(high / low) / span
    return [[name, Math.abs(value) < NEGLIGIBLE ? 0 : value] as const]
  })
  return Object.fromEntries(entries)
}

/** For each figure the parameters that move it, the one with the greatest share first. */
export function sensitivities(
  request: SystemRequest,
  nominal: Driver,
  scatters: readonly Scatter[],
  frequenciesHz: Float64Array
): readonly Sensitivity[] {
  const figuresAt = (moved: ParameterName, factor: number) => {
    const varied = variedRequest(request, nominal, name => (name === moved ? factor : 1))
    return sampleOf(varied, frequenciesHz, assumptions()).figures
  }
  const table = scatters.map(scatter => ({
    scatter,
    by: elasticities(figuresAt(scatter.name, 1 + STEP), figuresAt(scatter.name, 1 - STEP))
  }))
  return figureNames.flatMap(figure => {
    const rows = table.flatMap(({ scatter, by }) => {
      const elasticity = by[figure] ?? 0
      return elasticity === 0 ? [] : [{ scatter, elasticity, effect: Math.abs(elasticity) * scatter.relative }]
    })
    const variance = rows.reduce((sum, { effect }) => sum + effect ** 2, 0)
    return rows
      .map(({ scatter, elasticity, effect }) => ({
        figure,
        parameter: scatter.name,
        elasticity,
        standardDeviationPercent: 100 * scatter.relative,
        effectPercent: 100 * effect,
        sharePercent: variance > 0 ? (100 * effect ** 2) / variance : 0
      }))
      .sort((one, other) => other.sharePercent - one.sharePercent)
  })
}
