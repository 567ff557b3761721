/** Lists and curves as CSV (RFC 4180): CRLF, quotes doubled, and no cell that a spreadsheet would run as a formula. */
import { plainOrder } from './plain-order.ts'

export type Cell = string | number | boolean | undefined

/** Signs that start a formula, in their wide forms too, behind whatever does not show. */
const formula = /^[\s\u00ad\u061c\u180e\u200b-\u200f\u2060-\u2064\ufeff]*[=+\-@|%\t\r\uff1d\uff0b\uff0d\uff20]/

/** Text that begins like a formula gets an apostrophe in front; figures are figures. */
function cell(value: Cell): string {
  if (value === undefined) return ''
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : ''
  if (typeof value === 'boolean') return String(value)
  const text = plainOrder(value.toWellFormed().replaceAll('\u0000', ''))
  const safe = formula.test(text) ? `'${text}` : text
  // Where the decimal sign is a comma, spreadsheets part cells at a semicolon.
  return /[",;\t\r\n]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** @param header  column names, each ending in its unit */
export function csv(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [header, ...rows].map(row => `${row.map(cell).join(',')}\r\n`).join('')
}

export interface Column {
  readonly header: string
  readonly values: readonly Cell[]
}

/** Columns side by side; a shorter one leaves its last cells empty. */
export function csvOfColumns(columns: readonly Column[]): string {
  const length = columns.reduce((most, { values }) => Math.max(most, values.length), 0)
  const rows = Array.from({ length }, (_, index) => columns.map(({ values }) => values[index]))
  return csv(
    columns.map(({ header }) => header),
    rows
  )
}
