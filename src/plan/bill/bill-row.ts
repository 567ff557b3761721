/** One line of the bill of materials: how much of what, and how that was reached. */

import type { Said } from '../../contract/sentences/form/template.ts'
import type { BillGroup, BillPart } from '../../contract/systems/words.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { worded } from '../../domain/say.ts'

interface BillNeed {
  readonly group: BillGroup
  readonly part: BillPart
  readonly item: Said
  readonly need: number
  readonly unit: string
  readonly sparePercent?: number
  /** Step of what can be bought; 1 for whole pieces. */
  readonly step?: number
  readonly basis: Said
  readonly needed?: boolean
  readonly specification?: NonNullable<BillRow['specification']>
  /** Bought instead of the rows of this part. */
  readonly insteadOf?: BillPart
}

/** @param row  need ≥ 0; a row of nothing is left out */
export function billRow({
  step = 1,
  sparePercent = 0,
  needed = true,
  item,
  basis,
  ...row
}: BillNeed): readonly BillRow[] {
  if (!(row.need > 0)) return []
  const steps = Math.ceil((row.need * (1 + sparePercent / 100)) / step - 1e-9)
  const digits = Math.max(0, Math.ceil(-Math.log10(step)))
  return [
    {
      id: row.part,
      ...row,
      ...worded({ item, basis }),
      quantity: Number((steps * step).toFixed(digits)),
      sparePercent,
      needed
    }
  ]
}

/** A row is named by its part, and from the second row of the part on by a number as well. */
export function namedRows(rows: readonly BillRow[]): readonly BillRow[] {
  const seen = new Map<BillPart, number>()
  return rows.map(row => {
    const count = (seen.get(row.part) ?? 0) + 1
    seen.set(row.part, count)
    return { ...row, id: count === 1 ? row.part : `${row.part}-${count}` }
  })
}
