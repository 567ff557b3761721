/** Buy, cut, build, wire, switch on and check as parts of a PDF document. */
import type { Content } from 'pdfmake/interfaces.js'
import type { PlanChapter } from '../../contract/systems/words.ts'
import { gravestFirst } from '../../domain/caution.ts'
import { cutText } from '../draw/cut-list-text.ts'
import { durationText } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { plainFonts } from '../draw/pdf.ts'
import { heading, lines, plain, table } from '../draw/pdf-text.ts'
import { pageSheet } from '../panels/page-sheet.ts'
import { holeRows } from '../panels/panel-drawing.ts'
import { PLAIN_PANELS, panelsToDraw } from '../panels/panel-work.ts'
import { systemWiring } from '../wiring/system-wiring.ts'
import { wiringDiagram } from '../wiring/wiring-diagram.ts'
import { barriersOf, daysOf, type PaperStep, type PaperStretch, stagesOf } from './paper-steps.ts'
import type { PaperOptions, PlanPaper } from './plan-paper.ts'
import { buyText, CUT_TO_SIZE, cardText, conductorRows, cutListRows, shoppingRows, shops } from './plan-rows.ts'

/** Of no step: in the part of the paper they are about. */
export const chapterCautions = ({ chapterCautions: all }: PlanPaper, chapter: PlanChapter): Content[] =>
  gravestFirst(all.get(chapter) ?? []).map(({ level, message }) => ({
    text: plain(message),
    fontSize: 8,
    margin: [0, 1, 0, 1],
    color: level === 'note' ? ink.quiet : ink.limit
  }))

function shop(plan: PlanPaper, { title, groups }: (typeof shops)[number]): Content[] {
  const rows = shoppingRows(plan.bill)
    .filter(({ group }) => groups.includes(group))
    .map(({ item, quantity, unit, needed }) => ['☐', buyText(quantity, unit), item + (needed ? '' : ' (optional)')])
  return rows.length === 0 ? [] : [table(title, ['', 'How many', 'What'], ['auto', 46, '*'], rows, [1])]
}

export function pdfBuy(plan: PlanPaper): Content[] {
  const [timber = [], fittings = [], car = []] = shops.map(each => shop(plan, each))
  if (plan.bill.length === 0) return []
  const half = shoppingRows(plan.bill).length < plan.bill.length ? [{ text: CUT_TO_SIZE, fontSize: 8 }] : []
  return [heading('Buy'), { columns: [{ stack: [...timber, ...half, ...fittings] }, { stack: car }], columnGap: 16 }]
}

export function pdfCut(plan: PlanPaper, { paper }: PaperOptions): Content[] {
  const { box, cutPlan } = plan
  if (box === undefined) return []
  const layouts = cutPlan?.layouts ?? []
  const sheets = layouts.map(layout => ({
    stack: [
      { text: `Sheet ${layout.number}`, bold: true },
      { svg: plainFonts(pageSheet(layout, `sheet-${layout.number}`, paper)), width: 245 },
      { ol: layout.cuts.map(each => plain(cutText(each, paper))), fontSize: 7 }
    ]
  }))
  const pairs = Array.from({ length: Math.ceil(sheets.length / 2) }, (_, index) => ({
    columns: sheets.slice(2 * index, 2 * index + 2),
    columnGap: 14
  }))
  const holed = panelsToDraw(box)
  const holes = holed.flatMap(panel => holeRows(panel, paper).map(row => `${panel.name}: ${row}`))
  return [
    heading('Cut'),
    ...pairs,
    table(
      `Cut list, ${paper.units === 'metric' ? 'mm' : 'in'}`,
      ['Panel', 'No.', 'Size', 'Work'],
      ['auto', 'auto', 'auto', '*'],
      cutListRows(box, paper),
      [1, 2]
    ),
    ...(holes.length === 0 ? [] : [lines(holes)]),
    ...(holed.length < box.panels.length ? [{ text: PLAIN_PANELS, fontSize: 8 }] : []),
    ...chapterCautions(plan, 'cut')
  ]
}

function stepBlock(plan: PlanPaper, step: PaperStep): Content {
  const { number, title, time, readings, how, tools } = step
  const { short, whole } = barriersOf(plan, step)
  const warned = [...short, ...whole]
  return {
    unbreakable: true,
    margin: [0, 1, 0, 2],
    fontSize: 7.4,
    lineHeight: 1.08,
    stack: [
      {
        text: [
          { text: `☐ ${number}  ${plain(title)}`, bold: true, fontSize: 8.4 },
          { text: time === undefined ? '' : `   ${time}`, color: ink.quiet, fontSize: 7.5 }
        ]
      },
      ...(warned.length === 0 ? [] : [{ text: `▲ ${plain(warned.join(' '))}`, color: ink.limit }]),
      plain(how.join(' ')),
      ...(tools.length === 0 ? [] : [{ text: `Tools: ${plain(tools.join(', '))}.`, color: ink.quiet, fontSize: 7.5 }]),
      ...(readings.length === 0 ? [] : [{ text: `= ${plain(readings.join(' '))}` }])
    ]
  }
}

/** Two columns, the first no shorter than the second. */
function inColumns(plan: PlanPaper, steps: readonly PaperStep[]): Content {
  const length = ({ how, readings, warnings, tools }: PaperStep) =>
    [...how, ...readings, ...warnings, ...tools].join(' ').length + 120
  const all = steps.reduce((sum, step) => sum + length(step), 0)
  let sum = 0
  const left = steps.filter(step => {
    const before = sum
    sum += length(step)
    return before < all / 2
  })
  const stack = (some: readonly PaperStep[]) => ({ stack: some.map(step => stepBlock(plan, step)) })
  return { columns: [stack(left), stack(steps.slice(left.length))], columnGap: 16 }
}

const stretches = (plan: PlanPaper, all: readonly PaperStretch[]): Content[] =>
  all.flatMap(({ title, minutes, steps }) => [
    {
      text: `${title}, ${durationText(minutes)}`,
      bold: true,
      fontSize: 10,
      margin: [0, 6, 0, 2] as [number, number, number, number]
    },
    inColumns(plan, steps)
  ])

export function pdfBuild(plan: PlanPaper): Content[] {
  const steps = stretches(plan, daysOf(plan, ['table', 'bench']))
  return steps.length === 0 ? [] : [heading('Build'), ...steps, ...chapterCautions(plan, 'build')]
}

export function pdfWire(plan: PlanPaper): Content[] {
  const { wiring, coils, remedies } = plan
  if (wiring === undefined && coils === undefined) return []
  return [
    heading('Wire'),
    ...(wiring === undefined ? [] : [{ svg: plainFonts(systemWiring(wiring)), width: 420 }]),
    ...(wiring?.notDrawn ?? []).map(text => ({ text: plain(`Not drawn: ${text}`), color: ink.limit })),
    {
      columns: [
        table(
          'Conductors',
          ['No.', 'What', 'Size', 'Run', 'Fuse'],
          ['auto', '*', '*', 'auto', 'auto'],
          conductorRows(plan),
          [3, 4]
        ),
        ...(coils === undefined ? [] : [{ svg: plainFonts(wiringDiagram(coils)), width: 190 }])
      ],
      columnGap: 14
    },
    ...(remedies.length === 0 ? [] : [{ text: 'What would help the supply', bold: true }, lines(remedies)]),
    ...chapterCautions(plan, 'wire'),
    ...stretches(plan, daysOf(plan, ['car']))
  ]
}

export function pdfSwitchOn(plan: PlanPaper): Content[] {
  const steps = stretches(plan, stagesOf(plan))
  return steps.length === 0 ? [] : [heading('Switch on'), ...steps, ...chapterCautions(plan, 'switch-on')]
}

export function pdfCheck({ card }: PlanPaper): Content[] {
  if (card.length === 0) return []
  const rows = card.map(({ what, how, planned, step, otherwise }) => [
    [cardText({ what, how }), otherwise].filter(text => text !== '').join('\n'),
    planned,
    String(step),
    '............'
  ])
  const titles = ['What', 'Planned', 'Step', 'Yours']
  return [heading('Check'), { fontSize: 7, stack: [table('Test card', titles, ['*', 130, 'auto', 60], rows)] }]
}
