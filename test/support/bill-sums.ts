/** The rows of a bill by their part. */
import type { BillRow } from '../../src/contract/systems/workshop.ts'

/** Needs of all rows of a part together. */
export const needs = (rows: readonly BillRow[]) => {
  const sums = new Map<string, number>()
  for (const { part, need } of rows) sums.set(part, Number(((sums.get(part) ?? 0) + need).toFixed(9)))
  return Object.fromEntries(sums)
}
/** What is bought of a part, of its last row. */
export const bought = (rows: readonly BillRow[]) =>
  Object.fromEntries(rows.map(({ part, quantity }) => [part, quantity]))
