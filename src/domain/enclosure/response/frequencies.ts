/** The frequencies a response is computed at. */
import { logarithmicGrid } from '../../../numeric/grid.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import type { ResponseRequest } from '../model/request.ts'
import { responseDefaults } from './defaults.ts'

/** @throws DesignError `conflicting-input` when the range is empty */
export function frequenciesOf(
  { frequenciesHz }: Pick<ResponseRequest, 'frequenciesHz'>,
  assume: Assumptions
): readonly number[] {
  if (frequenciesHz !== undefined && !('fromHz' in frequenciesHz)) return frequenciesHz
  const { fromHz, toHz, points } = frequenciesHz ?? {
    fromHz: assume.take<number>(undefined, 'frequenciesHz.fromHz', responseDefaults.fromHz),
    toHz: assume.take<number>(undefined, 'frequenciesHz.toHz', responseDefaults.toHz),
    points: assume.take<number>(undefined, 'frequenciesHz.points', responseDefaults.points)
  }
  if (toHz <= fromHz) {
    throw new DesignError('conflicting-input', {
      field: 'frequenciesHz.toHz',
      value: toHz,
      minimum: fromHz,
      unit: 'Hz',
      detail: say('refused.the-range-ends-at-hz-not', { toHz, fromHz })
    })
  }
  return logarithmicGrid(fromHz, toHz, points)
}
