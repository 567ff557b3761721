/** The frequencies a response is computed at. */
import { logarithmicGrid } from '../../../numeric/grid.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import type { FrequencyRange, ResponseRequest } from '../model/request.ts'

const DEFAULT: FrequencyRange = { fromHz: 10, toHz: 300, points: 200 }

/** @throws DesignError `conflicting-input` when the range is empty */
export function frequenciesOf(
  { frequenciesHz }: Pick<ResponseRequest, 'frequenciesHz'>,
  assume: Assumptions
): readonly number[] {
  if (frequenciesHz !== undefined && !('fromHz' in frequenciesHz)) return frequenciesHz
  const why = 'the range of a bass system'
  const { fromHz, toHz, points } = frequenciesHz ?? {
    fromHz: assume.or(undefined, 'frequenciesHz.fromHz', DEFAULT.fromHz, why),
    toHz: assume.or(undefined, 'frequenciesHz.toHz', DEFAULT.toHz, why),
    points: assume.or(undefined, 'frequenciesHz.points', DEFAULT.points, 'enough for a smooth curve')
  }
  if (toHz <= fromHz) {
    throw new DesignError('conflicting-input', {
      field: 'frequenciesHz.toHz',
      value: toHz,
      minimum: fromHz,
      unit: 'Hz',
      detail: `The range ends at ${toHz} Hz, not above its start at ${fromHz} Hz.`
    })
  }
  return logarithmicGrid(fromHz, toHz, points)
}
