/** What holds the box in the vehicle. */
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import { billRow } from './bill-row.ts'

/** Straps by the force of the plan, or bolts with load plates instead of them. */
export function restraintRows({ strapCount, strapCapacityN }: Restraint): readonly BillRow[] {
  return [
    ...billRow({
      group: 'fittings',
      part: 'strap',
      specification: { capacityN: strapCapacityN },
      item: `lashing strap with label, at least ${Math.round(strapCapacityN / 10)} daN`,
      need: strapCount,
      unit: 'piece',
      basis: 'the straps that hold the crash force of the plan, to lashing eyes'
    }),
    ...billRow({
      group: 'fittings',
      part: 'anchor-bolt',
      specification: { thread: 'M8' },
      insteadOf: 'strap',
      item: 'or, instead of straps: bolt M8 with washer, self-locking nut and load plate of 50 × 50 mm',
      need: 4,
      unit: 'piece',
      needed: false,
      basis: 'one near each corner, into body structure (common practice, no source)'
    })
  ]
}
