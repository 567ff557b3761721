/** Passive radiators and the weights that tune them. */
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { FittedRadiators } from '../enclosure/parts/fitted-radiators.ts'
import { billRow } from './bill-row.ts'

export function radiatorRows({ name, count, addedKg }: FittedRadiators): readonly BillRow[] {
  const item = name === undefined ? say('bill.passive-radiator') : say('bill.passive-radiator-named', { name })
  return [
    ...billRow({
      group: 'fittings',
      part: 'passive-radiator',
      item,
      need: count,
      unit: 'piece',
      basis: say('bill.as-the-request-names-it-what')
    }),
    ...billRow({
      group: 'fittings',
      part: 'radiator-weight',
      item: say('bill.radiator-weight', { addedG: inDigits(addedKg * 1e3, 3) }),
      need: addedKg > 0 ? count : 0,
      unit: 'piece',
      basis: say('bill.one-for-each-radiator')
    })
  ]
}
