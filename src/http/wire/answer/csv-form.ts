/** Curves and lists of a result as CSV, under the names they have on the wire: each name ends in its public unit. */
import { siField } from '../../../contract/field/wire-units.ts'
import { type Cell, type Column, csv } from '../../../documents/draw/csv.ts'
import type { Digits } from './json-writer.ts'

type SiRecord = Readonly<Record<string, unknown>>

function cellOf(value: unknown, perSi: number, digits: Digits): Cell {
  if (typeof value === 'number') return digits === 'full' ? value * perSi : Number((value * perSi).toPrecision(6))
  return typeof value === 'string' || typeof value === 'boolean' ? value : undefined
}

/**
 * A record of SI curves as columns, in the order of the wire names; a curve that is not there has no column.
 *
 * @param group  put before each name, so that `p95` gives `p95.levelDb`
 */
export function curveColumns(curves: object, wireNames: readonly string[], digits: Digits, group?: string): Column[] {
  return wireNames.flatMap(wireName => {
    const { name, perSi } = siField(wireName)
    const values = (curves as SiRecord)[name]
    if (!Array.isArray(values)) return []
    const header = group === undefined ? wireName : `${group}.${wireName}`
    return [{ header, values: values.map(value => cellOf(value, perSi, digits)) }]
  })
}

/** SI records as rows; a column stands even where no record fills it, so that a script finds it. */
export function csvOfRecords(records: readonly object[], wireNames: readonly string[], digits: Digits): string {
  const fields = wireNames.map(siField)
  const rows = records.map(record => fields.map(({ name, perSi }) => cellOf((record as SiRecord)[name], perSi, digits)))
  return csv(wireNames, rows)
}
