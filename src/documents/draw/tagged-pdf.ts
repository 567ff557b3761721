/**
 * A PDF that is read aloud in its order: headings, paragraphs and figures with their titles; lines, heads and feet of pages are
 * left out. The writer of documents draws without tags, the writer under it knows them: its drawing of a line of text, of a
 * vector and of a picture is wrapped. Tables are told cell by cell.
 *
 * @source ISO 32000-1, 14.7 and 14.8 (from memory): marked content, structure tree, artifacts
 */
import type { DrawnLine, Renderer, StructureElement, TaggedDocument } from 'pdfmake/js/Renderer.js'

interface Structure {
  readonly root: StructureElement
  readonly topPt: number
  readonly bottomPt: number
  paragraph?: StructureElement
}

/** From this size on a line is the title of the document. */
const TITLE_PT = 20

const structures = new WeakMap<TaggedDocument, Structure>()

const artifact = (document: TaggedDocument, type: 'Layout' | 'Pagination', draw: () => void) => {
  document.markContent('Artifact', { type })
  draw()
  document.endMarkedContent()
}

const unescaped = (text: string) =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')

const titleOf = (svg: string) => unescaped(/<title[^>]*>([^<]*)</.exec(svg)?.[1] ?? '')

function paragraphLine(document: TaggedDocument, structure: Structure, line: DrawnLine, draw: () => void): void {
  const [{ fontSize = 0 } = {}] = line.inlines
  const tag = fontSize >= TITLE_PT ? 'H1' : line._outline === undefined ? 'P' : 'H2'
  if (structure.paragraph === undefined) {
    structure.paragraph = document.struct(tag)
    structure.root.add(structure.paragraph)
  }
  const content = document.markStructureContent(tag)
  draw()
  document.endMarkedContent()
  structure.paragraph.add(content)
  if (!line.lastLineInParagraph) return
  structure.paragraph.end()
  delete structure.paragraph
}

function figure(document: TaggedDocument, { root }: Structure, alt: string, draw: () => void): void {
  const element = document.struct('Figure', { alt })
  root.add(element)
  const content = document.markStructureContent('Figure')
  draw()
  document.endMarkedContent()
  element.add(content)
  element.end()
}

const wrapped = new WeakSet<object>()

/** Wraps the drawing of a renderer, once. */
export function tagWhatIsDrawn({ prototype }: typeof Renderer): void {
  if (wrapped.has(prototype)) return
  wrapped.add(prototype)
  const { renderPages, renderLine, renderVector, renderSVG } = prototype
  prototype.renderPages = function (pages) {
    const { pdfDocument: document } = this
    const [first] = pages
    const root = document.struct('Document')
    document.addStructure(root)
    const { top = 0, bottom = 0 } = first?.pageMargins ?? {}
    structures.set(document, { root, topPt: top, bottomPt: (first?.pageSize.height ?? 0) - bottom })
    renderPages.call(this, pages)
    structures.get(document)?.paragraph?.end()
    root.end()
  }
  prototype.renderLine = function (line, x, y) {
    const { pdfDocument: document } = this
    const structure = structures.get(document)
    const draw = () => renderLine.call(this, line, x, y)
    if (structure === undefined) draw()
    else if (y < structure.topPt - 1 || y > structure.bottomPt) artifact(document, 'Pagination', draw)
    else paragraphLine(document, structure, line, draw)
  }
  prototype.renderVector = function (vector) {
    artifact(this.pdfDocument, 'Layout', () => renderVector.call(this, vector))
  }
  prototype.renderSVG = function (picture) {
    const structure = structures.get(this.pdfDocument)
    const draw = () => renderSVG.call(this, picture)
    if (structure === undefined) draw()
    else figure(this.pdfDocument, structure, titleOf(String(picture.svg)), draw)
  }
}
