/** Small parts of a page: tables that hold on a phone, sections, scrolling figures. All text is escaped here. */
import { element, escaped } from '../draw/svg.ts'

interface Column {
  readonly title: string
  /** Figures stand right. */
  readonly figures?: boolean
}

export const paragraph = (text: string, className?: string): string => element('p', { class: className }, escaped(text))

export const listOf = (items: readonly string[], className?: string): string =>
  items.length === 0 ? '' : element('ul', { class: className }, ...items.map(item => element('li', {}, escaped(item))))

/** Rows up to which a printer keeps a table on one page. */
const SHORT_TABLE = 14

/** Rows become cards on a narrow screen; the roles keep the table a table for a screen reader. */
export function tableOf(caption: string, columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const head = columns.map(({ title, figures }) =>
    element('th', { scope: 'col', role: 'columnheader', class: figures ? 'figures' : undefined }, escaped(title))
  )
  const body = rows.map(row =>
    element(
      'tr',
      { role: 'row' },
      ...row.map((text, index) =>
        element(
          'td',
          { role: 'cell', class: columns[index]?.figures ? 'figures' : undefined, 'data-label': columns[index]?.title },
          escaped(text)
        )
      )
    )
  )
  return element(
    'table',
    { role: 'table', class: rows.length <= SHORT_TABLE ? 'short' : undefined },
    element('caption', {}, escaped(caption)),
    element('thead', { role: 'rowgroup' }, element('tr', { role: 'row' }, ...head)),
    element('tbody', { role: 'rowgroup' }, ...body)
  )
}

/** Rows from which a table that is looked up rather than read stands folded on a screen. */
const LONG_TABLE = 8

/** A table behind a line that opens it; on paper it stands open, its own caption above it. */
export const foldedTable = (line: string, rows: readonly (readonly string[])[], table: string): string =>
  rows.length < LONG_TABLE
    ? table
    : element('details', {}, element('summary', {}, escaped(`${line} (${rows.length})`)), table)

export const section = (id: string, title: string, ...children: readonly string[]): string =>
  children.every(child => child === '')
    ? ''
    : element(
        'section',
        { id, 'aria-labelledby': `${id}-title` },
        element('h2', { id: `${id}-title` }, escaped(title)),
        ...children
      )

/** A drawing wider than a phone scrolls in its own frame, also by keyboard. */
export const figureOf = (svg: string, label: string): string =>
  element(
    'figure',
    {},
    element('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': escapedTwice(label) }, svg)
  )

/** The attribute writer escapes; only control characters need to go here. */
const escapedTwice = (text: string) => text.replace(/\p{Cc}/gu, ' ')
