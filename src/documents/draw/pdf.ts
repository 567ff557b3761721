/** PDF through pdfmake: our fonts only, no file and no address ever fetched, the same bytes for the same document. */

import { createRequire } from 'node:module'
import path from 'node:path'
import type { TDocumentDefinitions } from 'pdfmake/interfaces.js'
import { present } from '../../domain/present.ts'
import { fontFamily, ink } from './paper.ts'
import { markRoles } from './pdf-roles.ts'
import { tagWhatIsDrawn } from './tagged-pdf.ts'

const fontFolder = path.join(
  path.dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')),
  'ttf'
)
const fontFile = (name: string) => path.join(fontFolder, name)
const fontFiles = {
  normal: fontFile('DejaVuSans.ttf'),
  bold: fontFile('DejaVuSans-Bold.ttf'),
  italics: fontFile('DejaVuSans-Oblique.ttf'),
  bolditalics: fontFile('DejaVuSans-BoldOblique.ttf')
}

/** Prose of paper is set narrower than lettering of drawings, so that it may stand larger. */
const proseFamily = `${fontFamily} Condensed`
const proseFiles = {
  normal: fontFile('DejaVuSansCondensed.ttf'),
  bold: fontFile('DejaVuSansCondensed-Bold.ttf'),
  italics: fontFile('DejaVuSansCondensed-Oblique.ttf'),
  bolditalics: fontFile('DejaVuSansCondensed-BoldOblique.ttf')
}
const allowed = new Set([...Object.values(fontFiles), ...Object.values(proseFiles)])

/** Loaded when the first document is made: whoever asks for no paper does not wait for its writer. */
async function printer(): Promise<typeof import('pdfmake')> {
  const { default: pdfmake } = await import('pdfmake')
  const { default: loaded } = await import('pdfmake/js/Renderer.js')
  // A module of the older kind: its class stands under `default` once more, unless the loader has unwrapped it.
  tagWhatIsDrawn('default' in loaded ? loaded.default : loaded)
  pdfmake.setFonts({ [fontFamily]: fontFiles, [proseFamily]: proseFiles })
  pdfmake.setUrlAccessPolicy(() => false)
  pdfmake.setLocalAccessPolicy(file => allowed.has(file))
  return pdfmake
}

/** Documents carry no clock: the date of the first public edition of the format they are written in. */
const fixedDate = new Date(Date.UTC(2000, 0, 1))

const pointsPerMm = 72 / 25.4
export const mmToPoints = (mm: number): number => mm * pointsPerMm

/** A4 with margins of 10 mm for drawings to scale; the same paper a desk printer has. */
export const drawingPage = { width: 297, height: 210, margin: 10 } as const

/** SVG as pdfmake's reader wants it: outer size in points beside the viewBox. */
export function scaledSvg(svg: string, widthMm: number, heightMm: number) {
  return { svg: plainFonts(svg), width: mmToPoints(widthMm), height: mmToPoints(heightMm) }
}

/** Only the registered family may be named, and white paper is left white. */
export const plainFonts = (svg: string): string =>
  svg.replace(/font-family="[^"]*"/g, `font-family="${fontFamily}"`).replaceAll(`fill="${ink.paper}"`, 'fill="#ffffff"')

/** A drawing that is printed small keeps its lettering readable. */
export const largerText = (svg: string, factor: number): string =>
  svg.replace(/font-size="([\d.]+)"/g, (_, size: string) => `font-size="${(Number(size) * factor).toFixed(1)}"`)

interface PdfHead {
  readonly title: string
  /** BCP 47; a voice reads the document in it. */
  readonly language: string
  readonly author?: string
  /** Words that a search finds the document by. */
  readonly subject?: string
  /** A text that travels inside the document, with its file name. */
  readonly attachment?: { readonly name: string; readonly json: string }
}

function files({ attachment }: PdfHead): Pick<TDocumentDefinitions, 'files'> {
  if (attachment === undefined) return {}
  const { name, json } = attachment
  const src = `data:application/json;base64,${Buffer.from(json, 'utf8').toString('base64')}`
  const dates = { creationDate: fixedDate, modifiedDate: fixedDate }
  // The types of the package lack the media type and the dates, which its writer reads.
  const file = { src, name, type: 'application/json', ...dates }
  return { files: { [name]: file } }
}

export async function pdfBytes(
  head: PdfHead,
  definition: Omit<TDocumentDefinitions, 'info' | 'defaultStyle' | 'files'>
): Promise<Uint8Array> {
  const pdfmake = await printer()
  const { title, author, subject, language } = head
  markRoles(definition.content)
  const document = pdfmake.createPdf({
    ...definition,
    ...files(head),
    version: '1.7',
    language,
    tagged: true,
    displayTitle: true,
    info: {
      title,
      ...present({ author }),
      ...present({ subject }),
      creator: 'Cabinbass',
      producer: 'Cabinbass',
      creationDate: fixedDate,
      modDate: fixedDate
    },
    defaultStyle: { font: proseFamily, fontSize: 9, color: ink.text, lineHeight: 1.2 }
  })
  return new Uint8Array(await document.getBuffer())
}
