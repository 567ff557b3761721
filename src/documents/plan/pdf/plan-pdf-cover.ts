/** The first page on paper: the same order as on the page, picture and verdict side by side. */
import type { Content } from 'pdfmake/interfaces.js'
import { told } from '../../../domain/say.ts'
import { fixedChart } from '../../charts/fixed-chart.ts'
import { levelChart, limitCharts } from '../../charts/plan-charts.ts'
import { ink } from '../../draw/paper.ts'
import { plainFonts } from '../../draw/pdf.ts'
import { partHeading } from '../../draw/pdf-roles.ts'
import { heading, lines, plain, table } from '../../draw/pdf-text.ts'
import { bootPicture } from '../boot-picture.ts'
import { imprintTexts, type PaperOptions, type PlanPaper, verdictText } from '../plan-paper.ts'
import { askedRows } from '../plan-rows.ts'

/** 92 mm: the picture; the rest of the type area beside it. */
const PICTURE_PT = 262

function verdict(plan: PlanPaper): Content[] {
  const { verdict: kind, reasons } = plan
  const { title, text } = verdictText(plan)
  const stopped = kind === 'stop' || kind === 'incomplete'
  return [
    {
      canvas: [
        { type: 'line', x1: 0, y1: 0, x2: 215, y2: 0, lineWidth: 2.2, lineColor: stopped ? ink.limit : ink.text }
      ]
    },
    {
      text: title,
      bold: true,
      fontSize: 13,
      margin: [0, 5, 0, 1],
      ...partHeading,
      ...(stopped ? { color: ink.limit } : {})
    },
    text,
    ...(reasons.length > 0 ? [lines(reasons)] : [])
  ]
}

function figures({ figures: six }: PlanPaper): Content[] {
  const cells = six.map(({ value, unit, note }) => ({
    stack: [
      { text: [{ text: plain(value), bold: true, fontSize: 12 }, ` ${plain(unit)}`] },
      { text: plain(note), fontSize: 8, color: ink.quiet }
    ],
    margin: [0, 2, 0, 2] as [number, number, number, number]
  }))
  const rows = Array.from({ length: Math.ceil(cells.length / 2) }, (_, index) => [
    cells[2 * index] ?? '',
    cells[2 * index + 1] ?? ''
  ])
  return rows.length === 0
    ? []
    : [{ table: { widths: ['*', '*'], body: rows }, layout: 'lightHorizontalLines', margin: [0, 6, 0, 0] }]
}

const misses = ({ nearest, ways, language }: PlanPaper): Content[] =>
  nearest.length === 0
    ? []
    : [
        ...(ways.length === 0 ? [] : [heading(told(language, 'paper.ways')), lines(ways)]),
        heading(told(language, 'paper.nearest')),
        lines(nearest.map(({ name, why }) => `${name}: ${why}`))
      ]

/** What the end of a caution leaves blank, in letters. */
const SPARE_LETTERS = 40

/** So many in the first of two columns that the longer one is as short as can be. */
function evenSplit(lengths: readonly number[]): number {
  const sum = (some: readonly number[]) => some.reduce((total, each) => total + each, 0)
  const longer = lengths.map((_, index) => Math.max(sum(lengths.slice(0, index + 1)), sum(lengths.slice(index + 1))))
  return longer.indexOf(Math.min(...longer)) + 1
}

function cautions({ cover: { pageOne }, language }: PlanPaper): Content[] {
  if (pageOne.length === 0) return []
  const items = pageOne.map(({ clause, sentence, step }) => ({
    text: [
      { text: `▲ ${plain(clause)}. `, bold: true, color: ink.limit },
      plain(sentence),
      step === undefined ? '' : told(language, 'paper.in-step', { number: step })
    ],
    fontSize: 8.1,
    margin: [0, 0, 0, 2] as [number, number, number, number]
  }))
  const half = evenSplit(pageOne.map(({ clause, sentence }) => clause.length + sentence.length + SPARE_LETTERS))
  return [
    heading(told(language, 'paper.peculiar')),
    { columns: [{ stack: items.slice(0, half) }, { stack: items.slice(half) }], columnGap: 16 }
  ]
}

export function pdfCover(plan: PlanPaper, options: PaperOptions): Content[] {
  const { paper } = options
  const { box, cover, curves, language } = plan
  const picture =
    box === undefined || cover.asked === undefined
      ? undefined
      : bootPicture(box, cover.asked.space, paper, 'boot-paper')
  const level = curves === undefined ? undefined : levelChart(cover, curves, language)
  const { issue, rights } = imprintTexts(options)
  const head = [issue, rights].filter(text => text !== '').join('; ')
  const asked = askedRows(plan, paper).map(({ what, was, is, kept }) => [
    what,
    was,
    kept ? is : told(language, 'paper.not-as-asked', { value: is })
  ])
  const titles = [told(language, 'paper.what'), told(language, 'paper.asked'), told(language, 'paper.built')]
  const beside = (left: Content | undefined, right: Content[]): Content =>
    left === undefined
      ? { stack: right }
      : { columns: [{ width: PICTURE_PT, stack: [left] }, { stack: right }], columnGap: 18, margin: [0, 4, 0, 6] }
  return [
    ...(head === '' ? [] : [{ text: plain(head), fontSize: 8.5, color: ink.quiet }]),
    { text: plain(plan.title), fontSize: 22, bold: true, margin: [0, 2, 0, 2] },
    { text: plain(cover.sentence), fontSize: 11, color: ink.quiet, margin: [0, 0, 0, 8] },
    beside(picture === undefined ? undefined : { svg: plainFonts(picture), width: PICTURE_PT }, [
      ...verdict(plan),
      ...figures(plan),
      ...misses(plan)
    ]),
    ...(asked.length === 0
      ? []
      : [
          beside(level === undefined ? undefined : { svg: plainFonts(fixedChart(level)), width: PICTURE_PT }, [
            table(told(language, 'paper.asked-and-built'), titles, ['auto', '*', '*'], asked)
          ])
        ]),
    ...cautions(plan)
  ]
}

/** The cover stands alone: where the charts begin is not found by laying the whole document twice. */
export function pdfSee({ curves, cover, language }: PlanPaper): Content[] {
  const charts = curves === undefined ? [] : limitCharts(cover, curves, language)
  const shown = charts.map(chart => ({ svg: plainFonts(fixedChart(chart)), width: 250 }))
  return shown.length === 0 ? [] : [heading(told(language, 'paper.see'), true), { columns: shown, columnGap: 10 }]
}
