/** Drawings as pages, to scale when printed at 100 %. */

import { type Language, told } from '../../domain/say.ts'
import { drawingPage, mmToPoints, pdfBytes, scaledSvg } from '../draw/pdf.ts'
import type { Drawing } from '../panels/panel-drawing.ts'

export function drawingsPdf(drawings: readonly Drawing[], title: string, language: Language): Promise<Uint8Array> {
  const margin = mmToPoints(drawingPage.margin)
  return pdfBytes(
    { title, language: language.tag },
    {
      pageSize: 'A4',
      pageOrientation: 'landscape',
      pageMargins: [margin, margin, margin, margin * 0.5],
      content: drawings.map(({ svg, widthM, heightM }, index) => ({
        ...scaledSvg(svg, widthM * 1000, heightM * 1000),
        ...(index === 0 ? {} : { pageBreak: 'before' as const })
      })),
      footer: (page, count) => ({
        text: told(language, 'draw.print-note', { title, page, pages: count }),
        fontSize: 6.5,
        margin: [margin, 2, margin, 0]
      })
    }
  )
}
