/** What is looked up, and the end of the paper: who published it, and how to make the plan again. */
import type { Content } from 'pdfmake/interfaces.js'
import { ink } from '../../draw/paper.ts'
import { heading, plain, table } from '../../draw/pdf-text.ts'
import { calculationText, imprintTexts, type PaperOptions, type PlanPaper, valueText } from '../plan-paper.ts'
import { airRows, restraintRows } from '../plan-rows.ts'

/** A list that is only searched: one after the other. */
const small = (title: string, items: readonly string[]): Content[] =>
  items.length === 0
    ? []
    : [
        { text: title, bold: true, margin: [0, 6, 0, 2] },
        { text: plain(items.join('; ')), fontSize: 7, lineHeight: 1.05, color: ink.quiet }
      ]

function figures({ facts }: PlanPaper): Content[] {
  const tables = facts.map(({ title, rows }) =>
    table(
      title,
      ['Figure', 'Value'],
      ['*', 'auto'],
      rows.map(({ label, value }) => [label, value]),
      [1],
      7
    )
  )
  const half = Math.ceil(tables.length / 2)
  return [{ columns: [{ stack: tables.slice(0, half) }, { stack: tables.slice(half) }], columnGap: 14 }]
}

function box({ box: layout, restraint }: PlanPaper, { paper }: PaperOptions): Content[] {
  if (layout === undefined) return []
  // How each was reached stands on the page.
  const air = airRows(layout, paper).map(cells => cells.slice(0, 3))
  const left = [table('Air in the box', ['Part', 'Volume', 'How known'], ['*', 'auto', 'auto'], air, [1], 7)]
  const right =
    restraint === undefined
      ? []
      : [table('Forces on the box', ['Case', 'Figure'], ['*', 'auto'], restraintRows(restraint, paper), [1], 7)]
  return [{ columns: [{ stack: left }, { stack: right }], columnGap: 14 }]
}

/** `read: one, another`, for each way of knowing what others published. */
const byStatus = (sources: PlanPaper['sources']): readonly string[] =>
  ['read', 'second-hand', 'from memory'].map(
    status => `${status}: ${sources.flatMap(each => (each.status === status ? [each.id] : [])).join(', ')}`
  )

/** What parts took by themselves is looked up where there is room for it. */
function onTheWay(assumed: PlanPaper['assumed']): Content[] {
  const count = assumed.filter(({ part }) => part !== undefined).length
  const text = `${count} more values were taken on the way; they stand with their reasons on the page and in the answer.`
  return count === 0 ? [] : [{ text, fontSize: 7, color: ink.quiet }]
}

export function pdfLookUp(plan: PlanPaper, options: PaperOptions): Content[] {
  const { assumed, sources, tried } = plan
  return [
    heading('Look up'),
    ...figures(plan),
    ...box(plan, options),
    ...small('What the limits cost', plan.headroom === undefined ? [] : [plan.headroom]),
    ...small(
      'Tried and passed over',
      tried.map(({ name, why }) => `${name}: ${why}`)
    ),
    ...small(
      'Assumed because nothing was said (SI units)',
      assumed.flatMap(({ part, field, value }) => (part === undefined ? [`${field}: ${valueText(value)}`] : []))
    ),
    ...onTheWay(assumed),
    ...small(
      'Published sources, by how well we know them (titles stand on the page and in the answer)',
      byStatus(sources)
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
