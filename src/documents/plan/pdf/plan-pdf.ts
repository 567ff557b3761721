/** The whole plan as a document to print, in the order of the page. */
import { present } from '../../../domain/present.ts'
import { told } from '../../../domain/say.ts'
import { mapped } from '../../../numeric/tuple.ts'
import { ink } from '../../draw/paper.ts'
import { mmToPoints, pdfBytes } from '../../draw/pdf.ts'
import { plain } from '../../draw/pdf-text.ts'
import { imprintTexts, type PaperOptions, type PlanPaper, REQUEST_FILE } from '../plan-paper.ts'
import { pdfBuy } from './plan-pdf-buy.ts'
import { pdfCover, pdfSee } from './plan-pdf-cover.ts'
import { pdfEnd, pdfLookUp } from './plan-pdf-look-up.ts'
import { chapterCautions, pdfBuild, pdfCheck, pdfCut, pdfWire } from './plan-pdf-work.ts'

/** A type area that A4 and Letter both hold. */
const margins = { side: 12.7, top: 15, bottom: 12.7 } as const

export function planPdf(plan: PlanPaper, options: PaperOptions): Promise<Uint8Array> {
  const [side, top, bottom] = mapped([margins.side, margins.top, margins.bottom], mmToPoints)
  const title = plain(plan.title)
  const { issue, rights } = imprintTexts(options)
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
    ...pdfCheck(plan),
    ...pdfLookUp(plan, options),
    ...pdfEnd(options)
  ]
  const small = { fontSize: 8, color: ink.quiet }
  return pdfBytes(
    {
      title,
      language: plan.language.tag,
      subject: plain(plan.cover.sentence),
      ...present({
        author: author === undefined ? undefined : plain(author),
        attachment: requestJson === undefined ? undefined : { name: REQUEST_FILE, json: requestJson }
      })
    },
    {
      pageSize: 'A4',
      pageMargins: [side, top, side, bottom],
      content: parts,
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
        columns: [
          { text: plain(rights) },
          { text: told(plan.language, 'paper.page', { page, pages: count }), alignment: 'right' }
        ],
        ...small,
        margin: [side, 10, side, 0]
      })
    }
  )
}
