/** What is looked up, and the end of the paper: who published it, and how to make the plan again. */
import type { Content } from 'pdfmake/interfaces.js'
import { told } from '../../../domain/say.ts'
import { ink } from '../../draw/paper.ts'
import { smallerHeading } from '../../draw/pdf-roles.ts'
import { heading, plain, table } from '../../draw/pdf-text.ts'
import {
  calculationText,
  imprintTexts,
  type PaperOptions,
  type PlanPaper,
  REQUEST_FILE,
  statusText,
  valueText
} from '../plan-paper.ts'
import { airRows, restraintRows } from '../plan-rows.ts'

/** A list that is only searched: one after the other. */
const small = (title: string, items: readonly string[]): Content[] =>
  items.length === 0
    ? []
    : [
        { text: title, bold: true, margin: [0, 6, 0, 2], ...smallerHeading },
        { text: plain(items.join('; ')), fontSize: 8, lineHeight: 1.02, color: ink.quiet }
      ]

function figures({ facts, language }: PlanPaper): Content[] {
  const tables = facts.map(({ title, rows }) =>
    table(
      title,
      [told(language, 'paper.look-up.figure'), told(language, 'paper.look-up.value')],
      ['*', 'auto'],
      rows.map(({ label, value }) => [label, value]),
      [1],
      8,
      true
    )
  )
  const half = Math.ceil(tables.length / 2)
  return [{ columns: [{ stack: tables.slice(0, half) }, { stack: tables.slice(half) }], columnGap: 14 }]
}

function box({ box: layout, restraint, language }: PlanPaper, { paper }: PaperOptions): Content[] {
  if (layout === undefined) return []
  // How each was reached stands on the page.
  const air = airRows(layout, paper).map(cells => cells.slice(0, 3))
  const titles = [
    told(language, 'paper.look-up.part'),
    told(language, 'paper.look-up.volume'),
    told(language, 'paper.look-up.known')
  ]
  const left = [table(told(language, 'paper.look-up.air'), titles, ['*', 'auto', 'auto'], air, [1], 8, true)]
  const cases = [told(language, 'paper.look-up.case'), told(language, 'paper.look-up.figure')]
  const forces = told(language, 'paper.look-up.forces')
  const right =
    restraint === undefined ? [] : [table(forces, cases, ['*', 'auto'], restraintRows(restraint, paper), [1], 8, true)]
  return [{ columns: [{ stack: left }, { stack: right }], columnGap: 14 }]
}

/** `read: one, another`, for each way of knowing what others published. */
const byStatus = ({ sources, language }: PlanPaper): readonly string[] =>
  (['read', 'second-hand', 'from memory'] as const).map(
    status =>
      `${statusText(status, language)}: ${sources.flatMap(each => (each.status === status ? [each.id] : [])).join(', ')}`
  )

/** What parts took by themselves is looked up where there is room for it. */
function onTheWay({ assumed, language }: PlanPaper): Content[] {
  const count = assumed.filter(({ part }) => part !== undefined).length
  const text = told(language, 'paper.look-up.on-the-way', { count })
  return count === 0 ? [] : [{ text, fontSize: 8, color: ink.quiet }]
}

export function pdfLookUp(plan: PlanPaper, options: PaperOptions): Content[] {
  const { assumed, tried, language } = plan
  return [
    // A row of columns moves as a whole and would leave the name of the part alone on the page before.
    { stack: [heading(told(language, 'paper.look-up')), ...figures(plan)], unbreakable: true },
    ...box(plan, options),
    ...small(told(language, 'paper.limits-cost'), plan.headroom === undefined ? [] : [plan.headroom]),
    ...small(
      told(language, 'paper.look-up.tried'),
      tried.map(({ name, why }) => `${name}: ${why}`)
    ),
    ...small(
      told(language, 'paper.look-up.assumed'),
      assumed.flatMap(({ part, field, value }) =>
        part === undefined ? [`${field}: ${valueText(value, { language })}`] : []
      )
    ),
    ...onTheWay(plan),
    ...small(told(language, 'paper.look-up.published'), byStatus(plan))
  ]
}

/** An address has no spaces to break at. */
const broken = (link: string) => link.match(/.{1,84}/g) ?? []

/** A camera reads modules of 0.4 mm and more: up to so many letters at 34 mm. */
const MOST_IN_CODE = 380
const CODE_PT = 96

export function pdfEnd(options: PaperOptions): Content[] {
  const { imprint = {}, requestJson, paper } = options
  const { language } = paper
  const cited = calculationText(options)
  const { issue, rights } = imprintTexts(options)
  const { link } = imprint
  const said = [
    ...(issue === '' ? [] : [told(language, 'paper.plan-is', { issue })]),
    ...(rights === '' ? [] : [told(language, 'paper.by', { rights })]),
    ...(cited === undefined ? [] : [cited]),
    ...(requestJson === undefined ? [] : [told(language, 'paper.travels', { file: REQUEST_FILE })]),
    ...(link === undefined ? [] : [told(language, 'paper.again'), ...broken(link)])
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
