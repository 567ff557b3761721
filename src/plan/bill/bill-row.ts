/** One line of the bill of materials: how much of what, and how that was reached. */
import type { BillGroup, BillPart } from '../../contract/systems/words.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'

interface BillNeed {
  readonly group: BillGroup
  readonly part: BillPart
  readonly item: string
  readonly need: number
  readonly unit: string
  readonly sparePercent?: number
  /** Step of what can be bought; 1 for whole pieces. */
  readonly step?: number
  readonly basis: string
  readonly needed?: boolean
}

/** @param row  need ≥ 0; a row of nothing is left out */
export function billRow({ step = 1, sparePercent = 0, needed = true, ...row }: BillNeed): readonly BillRow[] {
  if (!(row.need > 0)) return []
  const steps = Math.ceil((row.need * (1 + sparePercent / 100)) / step - 1e-9)
  const digits = Math.max(0, Math.ceil(-Math.log10(step)))
  return [{ ...row, quantity: Number((steps * step).toFixed(digits)), sparePercent, needed }]
}
