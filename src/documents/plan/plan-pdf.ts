/** The whole plan as a document to print: words, tables and curves upright, drawings lying and to scale. */
import type { Content } from 'pdfmake/interfaces.js'
import { responseCharts } from '../charts/response-charts.ts'
import { ink } from '../draw/paper.ts'
import { drawingPage, mmToPoints, pdfBytes, plainFonts, scaledSvg } from '../draw/pdf.ts'
import { heading, lines, plain, table } from '../draw/pdf-text.ts'
import { cutSheetDrawings, panelDrawings } from '../panels/draw-box.ts'
import { panelsToDraw } from '../panels/panel-work.ts'
import { gravestFirst, levelText, type PaperOptions, type PlanPaper, verdictText } from './plan-paper.ts'
import { bill, boxTables, build, endTables } from './plan-pdf-work.ts'

function verdict({ verdict: kind, reasons, lines: said }: PlanPaper): Content[] {
  const { mark, title, text } = verdictText[kind]
  const words = {
    stack: [{ text: title, bold: true, fontSize: 11 }, text, ...(reasons.length > 0 ? [lines(reasons)] : [])]
  }
  return [
    {
      table: {
        widths: ['auto', '*'],
        body: [
          [
            { text: mark, bold: true, fontSize: 12, margin: [4, 4, 4, 4] },
            { ...words, margin: [4, 4, 4, 4] }
          ]
        ]
      }
    },
    ...said.map(line => ({ text: plain(line), margin: [0, 4, 0, 0] as [number, number, number, number] }))
  ]
}

function cautions({ cover: { pageOne }, chapterCautions }: PlanPaper): Content[] {
  const first = pageOne.map(({ clause, sentence, step }) => [
    `${clause}. ${sentence}`,
    step === undefined ? '' : `step ${step}`
  ])
  const whole = gravestFirst([...chapterCautions.values()].flat())
  return [
    ...(first.length === 0
      ? []
      : [heading('What is peculiar to this design'), table('', ['Caution', ''], ['*', 44], first)]),
    ...(whole.length === 0
      ? []
      : [
          table(
            '',
            ['Level', 'What to know'],
            [44, '*'],
            whole.map(({ level, message }) => [levelText[level].toUpperCase(), message])
          )
        ])
  ]
}

const factTables = ({ facts }: PlanPaper): Content[] =>
  facts.length === 0
    ? []
    : [
        heading('The system in figures'),
        ...facts.map(({ title, rows }) =>
          table(
            title,
            ['Figure', 'Value'],
            ['*', 'auto'],
            rows.map(({ label, value }) => [label, value]),
            [1]
          )
        )
      ]

function charts({ curves, limits }: PlanPaper): Content[] {
  if (curves === undefined) return []
  return [
    heading('Sound'),
    ...responseCharts(curves, limits, 'curve').map(({ svg }) => ({
      svg: plainFonts(svg),
      width: 400,
      margin: [0, 4, 0, 4] as [number, number, number, number]
    }))
  ]
}

function drawingPages({ box, cutPlan }: PlanPaper, { paper }: PaperOptions): Content[] {
  const drawings = [
    ...(box === undefined ? [] : panelDrawings(panelsToDraw(box), paper, 'box')),
    ...(cutPlan === undefined ? [] : cutSheetDrawings(cutPlan, paper, 'cut'))
  ]
  return drawings.map(({ svg, widthM, heightM }) => ({
    ...scaledSvg(svg, widthM * 1000, heightM * 1000),
    pageBreak: 'before',
    pageOrientation: 'landscape'
  }))
}

export function planPdf(plan: PlanPaper, options: PaperOptions): Promise<Uint8Array> {
  const margin = mmToPoints(drawingPage.margin)
  const title = plain(plan.title)
  const upright = [
    { text: title, fontSize: 18, bold: true, margin: [0, 4, 0, 8] as [number, number, number, number] },
    ...verdict(plan),
    ...cautions(plan),
    ...factTables(plan),
    ...charts(plan),
    ...boxTables(plan, options),
    ...bill(plan),
    ...build(plan),
    ...endTables(plan, options)
  ]
  return pdfBytes(title, {
    pageSize: 'A4',
    pageOrientation: 'portrait',
    pageMargins: [margin, margin, margin, margin * 0.5],
    content: [{ stack: upright, margin: [14, 6, 14, 10] }, ...drawingPages(plan, options)],
    pageBreakBefore: (node, { getFollowingNodesOnPage }) =>
      node.headlineLevel === 1 && getFollowingNodesOnPage().length < 4,
    footer: (page, count) => ({
      text: `${title}, page ${page} of ${count}. Print drawings at 100 % to keep their scale.`,
      fontSize: 6.5,
      color: ink.quiet,
      margin: [margin, 2, margin, 0]
    })
  })
}
