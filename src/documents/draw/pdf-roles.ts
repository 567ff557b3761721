/**
 * What a text of a document is, for who hears it: cells of tables and smaller headings get an id that says so, which
 * `tagged-pdf.ts` reads where the text is drawn. Tables without a head only set things side by side.
 */

export interface CellRole {
  readonly is: 'cell'
  readonly table: string
  readonly row: number
  readonly column: number
  readonly columnCount: number
  readonly headCount: number
}

/** Level of a part and of what stands under it; the title of the document is the first. */
const levels = { part: 2, under: 3 } as const
type HeadingTag = 'H2' | 'H3'

const cellId = /^cell-(\d+)-(\d+)-(\d+)-(\d+)-(\d+)$/
const headingId = /^heading-([23])-\d+$/

interface HeadingRole {
  readonly is: 'heading'
  readonly tag: HeadingTag
}

/** @returns what an id of ours says; undefined for any other */
export function roleOf(id: string | undefined): CellRole | HeadingRole | undefined {
  const [, table, row, column, columnCount, headCount] = cellId.exec(id ?? '') ?? []
  if (table !== undefined)
    return {
      is: 'cell',
      table,
      row: Number(row),
      column: Number(column),
      columnCount: Number(columnCount),
      headCount: Number(headCount)
    }
  const [, level] = headingId.exec(id ?? '') ?? []
  return level === undefined ? undefined : { is: 'heading', tag: level === '2' ? 'H2' : 'H3' }
}

interface Counter {
  table: number
  heading: number
}

/** Of whatever the writer takes for content: what is looked at here. */
interface Piece {
  id?: string
  readonly text?: unknown
  readonly headlineLevel?: number
  readonly stack?: readonly unknown[]
  readonly columns?: readonly unknown[]
  readonly table?: { readonly body: readonly (readonly unknown[])[]; readonly headerRows?: number }
}

const isPiece = (content: unknown): content is Piece => typeof content === 'object' && content !== null

function markCells({ body, headerRows = 0 }: NonNullable<Piece['table']>, counter: Counter): void {
  if (headerRows === 0) {
    for (const cell of body.flat()) markIn(cell, counter)
    return
  }
  counter.table++
  for (const [row, cells] of body.entries())
    for (const [column, cell] of cells.entries())
      if (isPiece(cell)) cell.id = `cell-${counter.table}-${row}-${column}-${cells.length}-${headerRows}`
}

function markIn(content: unknown, counter: Counter): void {
  if (Array.isArray(content)) for (const each of content) markIn(each, counter)
  else if (isPiece(content)) {
    const { stack = [], columns = [], table, text, headlineLevel } = content
    for (const each of [...stack, ...columns]) markIn(each, counter)
    if (table !== undefined) markCells(table, counter)
    if (text !== undefined && headlineLevel !== undefined && headlineLevel > 1)
      content.id = `heading-${headlineLevel}-${++counter.heading}`
  }
}

/** Marks the content of one document, in place. */
export const markRoles = (content: unknown): void => markIn(content, { table: 0, heading: 0 })

/** Of a text that is a heading of a part without a line in the outline, and of one under a part. */
export const partHeading = { headlineLevel: levels.part } as const
export const smallerHeading = { headlineLevel: levels.under } as const
