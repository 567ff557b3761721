/** The structure of a PDF, read back from its bytes: what was put in as table, row, cell and heading, by count and in order. */
import { describe, expect, it } from 'vitest'
import { pdfBytes } from '../../src/documents/draw/pdf.ts'
import { roleOf } from '../../src/documents/draw/pdf-roles.ts'
import { heading, table } from '../../src/documents/draw/pdf-text.ts'

/** Tags of the structure elements, in the order of the file; their scope beside them. */
async function tagsOf(content: Parameters<typeof pdfBytes>[1]['content']) {
  const pdf = Buffer.from(await pdfBytes({ title: 'Tagged', language: 'en' }, { content })).toString('latin1')
  const elements = [...pdf.matchAll(/<<\n\/S \/(\w+)\n(?:\/A <<\n\/O \/Table\n\/Scope \/(\w+)\n>>\n)?/g)]
  const counted = (wanted: string, scope?: string) =>
    elements.filter(([, tag, its]) => tag === wanted && its === scope).length
  return { counted, pages: [...pdf.matchAll(/\/Type \/Page\n/g)].length }
}

/** Ninety rows, so that the head stands again on several pages; each third row has an empty cell. */
const rows = Array.from({ length: 90 }, (_, row) => [
  `thing ${row}`,
  row % 3 === 0 ? '' : `${row} mm`,
  'words that need a second line in a narrow column'
])

describe('a tagged PDF', () => {
  it('has a row for each row and a cell for each cell, empty ones too, heads once however many pages they stand on', async () => {
    const { counted, pages } = await tagsOf([
      { text: 'Title', fontSize: 22 },
      heading('Part'),
      table('Long', ['a', 'b', 'c'], ['*', 'auto', 80], rows),
      table('', ['x', 'y'], ['*', '*'], [['1', '2']]),
      'after'
    ])
    expect(pages).toBeGreaterThan(4)
    expect(['H1', 'H2', 'H3', 'P', 'Table'].map(tag => counted(tag))).toEqual([1, 1, 1, 1, 2])
    expect(counted('TR')).toBe(1 + rows.length + 1 + 1)
    expect(counted('TH', 'Column')).toBe(3 + 2)
    expect(counted('TH', 'Row')).toBe(rows.length + 1)
    expect(counted('TD')).toBe(2 * rows.length + 1)
  })

  it('takes what only stands side by side for no table, and no other id for ours', async () => {
    const { counted } = await tagsOf([
      { table: { widths: ['*', '*'], body: [['left', 'right']] }, layout: 'noBorders' },
      { text: 'a place that a link leads to', id: 'cell-of-ours' }
    ])
    expect(['Table', 'TR', 'TD', 'P'].map(tag => counted(tag))).toEqual([0, 0, 0, 3])
    expect(roleOf('cell-of-ours')).toBeUndefined()
  })
})
