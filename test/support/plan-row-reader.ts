/** Tables of a finished plan, taken apart cell by cell: each figure under its table, its row and its column. */

/** A cell with the words it stands under; one that holds no figure tells nothing. */
export interface RowCell {
  readonly form: 'page' | 'pdf'
  /** `row: Box | Net volume | Value`. */
  readonly key: string
  readonly text: string
}

const tidy = (text: string) => text.replace(/\s+/g, ' ').trim()

const withoutTags = (html: string) =>
  tidy(
    html
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&#39;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&')
  )

/** What is said to a row's name below it, in smaller letters, is none of it. */
const rowName = (html: string) => withoutTags(/^[^<]*/.exec(html)?.[0] ?? '')

function cellsOf(
  form: RowCell['form'],
  caption: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[]
): readonly RowCell[] {
  return rows.flatMap(([name = '', ...others]) =>
    others.flatMap((text, index) =>
      /\d/.test(text) ? [{ form, key: `row: ${caption} | ${name} | ${columns[index + 1] ?? ''}`, text }] : []
    )
  )
}

export function pageRows(page: string): readonly RowCell[] {
  return [...page.matchAll(/<table[^>]*><caption>([\s\S]*?)<\/caption>([\s\S]*?)<\/table>/g)].flatMap(
    ([, caption = '', body = '']) => {
      const [head = [], ...rows] = [...body.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row = '']) =>
        [...row.matchAll(/<t([hd])([^>]*)>([\s\S]*?)<\/t[hd]>/g)].map(([, kind, look = '', cell = '']) =>
          kind === 'h' && look.includes('"row"') ? rowName(cell) : withoutTags(cell)
        )
      )
      return cellsOf('page', withoutTags(caption), head, rows)
    }
  )
}

interface Piece {
  readonly text?: unknown
  readonly stack?: readonly unknown[]
  readonly columns?: readonly unknown[]
  readonly table?: { readonly headerRows?: number; readonly body: readonly (readonly unknown[])[] }
}

const isPiece = (node: unknown): node is Piece => typeof node === 'object' && node !== null && !Array.isArray(node)

function textOf(node: unknown): string {
  if (typeof node === 'string') return node
  if (Array.isArray(node)) return node.map(textOf).join('')
  return isPiece(node) ? textOf(node.text ?? '') : ''
}

/**
 * Rows of the paper under the names of the page: paper has the sentence of a reading where the page folds it away, and the
 * material of a cut list elsewhere.
 */
export function alike(page: readonly RowCell[], pdf: readonly RowCell[]): readonly RowCell[] {
  const parts = ({ key }: RowCell) => key.split(' | ')
  const table = (caption = '') => caption.split(/[:,]/, 2).join('').replace(/^row /, '')
  const named = (cell: RowCell): RowCell => {
    const [caption, row = '', column = ''] = parts(cell)
    const names = page.map(parts).filter(([other]) => table(other) === table(caption))
    const whole = names.flatMap(([, name = '']) => (row.startsWith(name) ? [name] : []))
    const longest = whole.reduce((best, each) => (each.length > best.length ? each : best), '')
    return {
      ...cell,
      key: `row: ${table(caption)} | ${longest || row} | ${column}`,
      text: cell.text.replaceAll(', ', ' ')
    }
  }
  return [...page, ...pdf].map(named)
}

/** A title stands over its table in one stack. */
export function pdfRows(content: unknown, title = ''): readonly RowCell[] {
  if (Array.isArray(content)) {
    return content.flatMap((each, index) => pdfRows(each, tidy(textOf(content[index - 1]))))
  }
  if (!isPiece(content)) return []
  const { table, stack = [], columns = [] } = content
  if (table === undefined) return [...pdfRows([...stack]), ...pdfRows([...columns])]
  if (table.headerRows === undefined) return table.body.flatMap(row => pdfRows([...row]))
  const [head = [], ...rows] = table.body.map(row => row.map(cell => tidy(textOf(cell))))
  return cellsOf('pdf', title, head, rows)
}
