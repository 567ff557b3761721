/** What is looked up, and the end of the paper: who published it, and how to make the plan again. */
import type { Content } from 'pdfmake/interfaces.js'
import { ink } from '../draw/paper.ts'
import { heading, lines, plain, table } from '../draw/pdf-text.ts'
import { calculationText, imprintTexts, type PaperOptions, type PlanPaper, valueText } from './plan-paper.ts'
import { airRows, clearanceRows, restraintRows } from './plan-rows.ts'
import { WHAT_IF_CAPTION } from './what-if-rows.ts'

/** A list that is only searched: small, in three columns. */
function small(title: string, items: readonly string[]): Content[] {
  if (items.length === 0) return []
  const third = Math.ceil(items.length / 3)
  const column = (from: number) => ({
    text: items
      .slice(from, from + third)
      .map(plain)
      .join('\n')
  })
  return [
    { text: title, bold: true, margin: [0, 6, 0, 2] },
    {
      columns: [column(0), column(third), column(2 * third)],
      columnGap: 10,
      fontSize: 5.8,
      lineHeight: 1.02,
      color: ink.quiet
    }
  ]
}

function figures({ facts, lines: said }: PlanPaper): Content[] {
  const tables = facts.map(({ title, rows }) =>
    table(
      title,
      ['Figure', 'Value'],
      ['*', 'auto'],
      rows.map(({ label, value }) => [label, value]),
      [1]
    )
  )
  const half = Math.ceil(tables.length / 2)
  return [
    ...(said.length === 0 ? [] : [lines(said)]),
    { columns: [{ stack: tables.slice(0, half) }, { stack: tables.slice(half) }], columnGap: 14 }
  ]
}

function box({ box: layout, restraint }: PlanPaper, { paper }: PaperOptions): Content[] {
  if (layout === undefined) return []
  // How each was reached stands on the page.
  const air = airRows(layout, paper).map(cells => cells.slice(0, 3))
  const left = [table('Air in the box', ['Part', 'Volume', 'How known'], ['*', 'auto', 'auto'], air, [1])]
  const right =
    restraint === undefined
      ? []
      : [table('Forces on the box', ['Case', 'Figure'], ['*', 'auto'], restraintRows(restraint, paper), [1])]
  return [{ columns: [{ stack: left }, { stack: right }], columnGap: 14 }]
}

function whatMoves({ whatIf: { headings, rows } }: PlanPaper): Content[] {
  if (rows.length === 0) return []
  const figures = headings.flatMap((_, index) => (index === 0 ? [] : [index]))
  const widths = headings.map((_, index) => (index === 0 ? '*' : 'auto'))
  return [table(WHAT_IF_CAPTION, headings, widths, rows, figures)]
}

export function pdfLookUp(plan: PlanPaper, options: PaperOptions): Content[] {
  const { assumed, sources, tried } = plan
  const clearances = plan.box === undefined ? [] : clearanceRows(plan.box, options.paper)
  return [
    heading('Look up'),
    ...figures(plan),
    ...box(plan, options),
    ...small(
      'Clearances',
      clearances.map(([between, is, needed, verdict]) => `${between}: ${is} of ${needed}, ${verdict}`)
    ),
    ...small('Other boxes for the same parts', plan.others),
    ...small('What the limits cost', plan.headroom === undefined ? [] : [plan.headroom]),
    ...whatMoves(plan),
    ...small(
      'Tried and passed over',
      tried.map(({ name, why }) => `${name}: ${why}`)
    ),
    ...small(
      'Assumed because nothing was said (SI units; the reasons stand on the page and in the answer)',
      assumed.map(({ field, value }) => `${field}: ${valueText(value)}`)
    ),
    ...small(
      'Sources, and how well we know them',
      sources.map(({ title, status }) => `${title} (${status})`)
    )
  ]
}

/** An address has no spaces to break at. */
const broken = (link: string) => link.match(/.{1,84}/g) ?? []

/** A camera reads modules of 0.4 mm and more: up to so many letters at 34 mm. */
const MOST_IN_CODE = 380
const CODE_PT = 96

export function pdfEnd(options: PaperOptions): Content[] {
  const { imprint = {}, requestJson } = options
  const cited = calculationText(options)
  const { issue, rights } = imprintTexts(imprint)
  const { link } = imprint
  const said = [
    ...(issue === '' ? [] : [`Plan: ${issue}`]),
    ...(rights === '' ? [] : [`By: ${rights}`]),
    ...(cited === undefined ? [] : [cited]),
    ...(requestJson === undefined
      ? []
      : ['The request that makes this plan travels in this file as plan-request.json.']),
    ...(link === undefined ? [] : ['Make this plan again:', ...broken(link)])
  ]
  const code =
    link !== undefined && link.length <= MOST_IN_CODE ? [{ qr: link, fit: CODE_PT, eccLevel: 'L' as const }] : []
  return said.length === 0
    ? []
    : [
        {
          unbreakable: true,
          margin: [0, 12, 0, 0],
          columns: [
            { width: '*', stack: said.map(text => ({ text: plain(text), fontSize: 8 })) },
            ...code.map(each => ({ width: CODE_PT + 10, stack: [each] }))
          ]
        }
      ]
}
