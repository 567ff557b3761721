/** What holds the box in the vehicle. */
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import { say } from '../../domain/say.ts'
import { billRow } from './bill-row.ts'
import { billDefaults } from './defaults.ts'

/** Straps by the force of the plan, or bolts with load plates instead of them. */
export function restraintRows({ strapCount, strapCapacityN }: Restraint): readonly BillRow[] {
  return [
    ...billRow({
      group: 'fittings',
      part: 'strap',
      specification: { capacityN: strapCapacityN },
      item: say('bill.lashing-strap-with-label-at-least', { strapCapacity: Math.round(strapCapacityN / 10) }),
      need: strapCount,
      unit: 'piece',
      basis: say('bill.the-straps-that-hold-the-crash')
    }),
    ...billRow({
      group: 'fittings',
      part: 'anchor-bolt',
      specification: { thread: 'M8' },
      insteadOf: 'strap',
      item: say('bill.or-instead-of-straps-bolt-m8'),
      need: billDefaults.boltsInsteadOfStraps.value,
      unit: 'piece',
      needed: false,
      basis: say('bill.one-near-each-corner-into-body')
    })
  ]
}
