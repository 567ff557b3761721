/** Headings, lists and tables of a PDF document; all text is made plain here. */
import type { Content, ContentTable, CustomTableLayout } from 'pdfmake/interfaces.js'
import { ink } from './paper.ts'
import { smallerHeading } from './pdf-roles.ts'

/** Characters a reader of the page may turn around or hide. */
export const plain = (text: string) =>
  text
    .toWellFormed()
    .replace(/\p{Cc}/gu, ' ')
    .replace(/[\u202a-\u202e\u2066-\u2069\ufffe\uffff]/g, '')

/** @param onNewPage  where the part is taken along as a sheet of its own */
export const heading = (text: string, onNewPage = false): Content => ({
  ...(onNewPage ? { pageBreak: 'before' as const } : {}),
  text: plain(text),
  fontSize: 13,
  bold: true,
  margin: [0, 12, 0, 4],
  headlineLevel: 1,
  outline: true
})

export const lines = (items: readonly string[]): Content => ({ ul: items.map(plain), margin: [0, 2, 0, 4] })

/** Lines as of the ready layout, rows closer together. */
const tightLines: CustomTableLayout = {
  hLineWidth: (index, { table: { body } }) => (index === 0 || index === body.length ? 0 : index === 1 ? 1 : 0.5),
  vLineWidth: () => 0,
  hLineColor: index => (index === 1 ? ink.text : ink.grid),
  paddingLeft: index => (index === 0 ? 0 : 6),
  paddingRight: () => 0,
  paddingTop: () => 1,
  paddingBottom: () => 1
}

/** Rows up to which a table is not parted by the end of a page. */
const SHORT_TABLE = 14

type Width = number | 'auto' | '*'

export function table(
  title: string,
  columns: readonly string[],
  widths: readonly Width[],
  rows: readonly (readonly string[])[],
  figures: readonly number[] = [],
  size = 8,
  tight = false
): Content {
  const align = (index: number) => (figures.includes(index) ? ('right' as const) : ('left' as const))
  const body: ContentTable['table']['body'] = [
    columns.map((text, index) => ({ text, bold: true, fontSize: size, color: ink.quiet, alignment: align(index) })),
    ...rows.map(row =>
      row.map((text, index) => ({
        text: plain(text),
        fontSize: size,
        alignment: align(index),
        noWrap: figures.includes(index) && text.length < 24
      }))
    )
  ]
  return {
    unbreakable: rows.length <= SHORT_TABLE,
    stack: [
      ...(title === ''
        ? []
        : [
            {
              text: plain(title),
              bold: true,
              margin: [0, 8, 0, 2] as [number, number, number, number],
              ...smallerHeading
            }
          ]),
      {
        table: { headerRows: 1, keepWithHeaderRows: 1, dontBreakRows: true, widths: [...widths], body },
        layout: tight ? tightLines : 'lightHorizontalLines'
      }
    ]
  }
}
