/** Lists and curves as CSV (RFC 4180): CRLF, quotes doubled, and no cell that a spreadsheet would run as a formula. */

export type Cell = string | number | boolean | undefined

/** Text that begins like a formula gets an apostrophe in front; figures are figures. */
function cell(value: Cell): string {
  if (value === undefined) return ''
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : ''
  if (typeof value === 'boolean') return String(value)
  const text = value.toWellFormed().replaceAll('\u0000', '')
  const safe = /^[\s]*[=+\-@|%\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe
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
