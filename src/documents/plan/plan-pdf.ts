/** The whole plan as a document to print, in the order of the page; drawings to scale at the end, lying. */
import type { Content } from 'pdfmake/interfaces.js'
import { ink } from '../draw/paper.ts'
import { mmToPoints, pdfBytes, scaledSvg } from '../draw/pdf.ts'
import { plain } from '../draw/pdf-text.ts'
import { panelDrawings } from '../panels/draw-box.ts'
import { panelsToDraw } from '../panels/panel-work.ts'
import { imprintTexts, type PaperOptions, type PlanPaper } from './plan-paper.ts'
import { pdfCover, pdfSee } from './plan-pdf-cover.ts'
import { pdfEnd, pdfLookUp } from './plan-pdf-look-up.ts'
import { chapterCautions, pdfBuild, pdfBuy, pdfCheck, pdfCut, pdfSwitchOn, pdfWire } from './plan-pdf-work.ts'

/** A type area that A4 and Letter both hold. */
const margins = { side: 15, top: 17, bottom: 16 } as const

function drawingPages({ box }: PlanPaper, { paper }: PaperOptions): Content[] {
  const drawings = box === undefined ? [] : panelDrawings(panelsToDraw(box), paper, 'box')
  return drawings.map(({ svg, widthM, heightM }) => ({
    ...scaledSvg(svg, widthM * 1000, heightM * 1000),
    absolutePosition: { x: mmToPoints(10), y: mmToPoints(9) },
    pageBreak: 'before',
    pageOrientation: 'landscape'
  }))
}

export function planPdf(plan: PlanPaper, options: PaperOptions): Promise<Uint8Array> {
  const [side, top, bottom] = [margins.side, margins.top, margins.bottom].map(mmToPoints) as [number, number, number]
  const title = plain(plan.title)
  const { issue, rights } = imprintTexts(options.imprint)
  const { author } = options.imprint ?? {}
  const { requestJson } = options
  const parts = [
    ...pdfCover(plan, options),
    ...pdfSee(plan),
    ...chapterCautions(plan, 'see'),
    ...pdfBuy(plan),
    ...pdfCut(plan, options),
    ...pdfBuild(plan),
    ...pdfWire(plan),
    ...pdfSwitchOn(plan),
    ...pdfCheck(plan),
    ...pdfLookUp(plan, options),
    ...pdfEnd(options)
  ]
  const small = { fontSize: 7.5, color: ink.quiet }
  return pdfBytes(
    {
      title,
      subject: plain(plan.cover.sentence),
      ...(author === undefined ? {} : { author: plain(author) }),
      ...(requestJson === undefined ? {} : { attachment: { name: 'plan-request.json', json: requestJson } })
    },
    {
      pageSize: 'A4',
      pageMargins: [side, top, side, bottom],
      content: [...parts, ...drawingPages(plan, options)],
      pageBreakBefore: (node, { getFollowingNodesOnPage }) =>
        node.headlineLevel === 1 && getFollowingNodesOnPage().length < 4,
      header: page =>
        page === 1
          ? ''
          : {
              columns: [{ text: title }, { text: plain(issue), alignment: 'right' }],
              ...small,
              margin: [side, 20, side, 0]
            },
      footer: (page, count) => ({
        columns: [{ text: plain(rights) }, { text: `page ${page} of ${count}`, alignment: 'right' }],
        ...small,
        margin: [side, 14, side, 0]
      })
    }
  )
}
