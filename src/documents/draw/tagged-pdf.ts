/**
 * A PDF that is read aloud in its order: headings, paragraphs, tables with their rows and cells, figures with their titles; lines,
 * heads and feet of pages, and the head of a table where it stands again on the next page, are left out. The writer of documents
 * draws without tags, the writer under it knows them: its drawing of a line of text, of a vector and of a picture is wrapped.
 *
 * @source ISO 32000-1, 14.7 and 14.8 (from memory): marked content, structure tree, artifacts
 */
import type { DrawnLine, Renderer, StructureElement, TaggedDocument } from 'pdfmake/js/Renderer.js'
import { type CellRole, roleOf } from './pdf-roles.ts'

interface TableStructure {
  readonly element: StructureElement
  /** Cells of each row, empty ones too. */
  readonly rows: Map<number, readonly StructureElement[]>
}

interface Structure {
  readonly root: StructureElement
  readonly topPt: number
  readonly bottomPt: number
  readonly tables: Map<string, TableStructure>
  /** Ids of cells that were drawn: a second time is the head of a table on another page. */
  readonly drawn: Set<string>
  /** The lines of one text follow each other: what the next one belongs to. */
  open?: { readonly element: StructureElement | undefined; readonly tag: string }
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

function tableOf(document: TaggedDocument, { root, tables }: Structure, name: string): TableStructure {
  const known = tables.get(name)
  if (known !== undefined) return known
  const made = { element: document.struct('Table'), rows: new Map() }
  root.add(made.element)
  tables.set(name, made)
  return made
}

const isHead = ({ row, headCount }: CellRole) => row < headCount

/** The cell, in its row, in its table; a row is made whole, so that an empty cell keeps its place. */
function cellElement(document: TaggedDocument, structure: Structure, role: CellRole): StructureElement | undefined {
  const { element, rows } = tableOf(document, structure, role.table)
  const known = rows.get(role.row)
  if (known !== undefined) return known[role.column]
  const row = document.struct('TR')
  element.add(row)
  const cells = Array.from({ length: role.columnCount }, (_, column) => {
    const scope = isHead(role) ? 'Column' : 'Row'
    const cell = isHead(role) || column === 0 ? document.struct('TH', { scope }) : document.struct('TD')
    row.add(cell)
    return cell
  })
  rows.set(role.row, cells)
  return cells[role.column]
}

/** What a text begins with its first line. */
function begun(document: TaggedDocument, structure: Structure, line: DrawnLine): NonNullable<Structure['open']> {
  const { id = '' } = line
  const role = roleOf(id)
  if (role?.is === 'cell') {
    if (structure.drawn.has(id)) return { element: undefined, tag: '' }
    structure.drawn.add(id)
    const tag = isHead(role) || role.column === 0 ? 'TH' : 'TD'
    return { element: cellElement(document, structure, role), tag }
  }
  const [{ fontSize = 0 } = {}] = line.inlines
  const plainTag = line._outline === undefined ? 'P' : 'H2'
  const tag = fontSize >= TITLE_PT ? 'H1' : (role?.tag ?? plainTag)
  const element = document.struct(tag)
  structure.root.add(element)
  return { element, tag }
}

function textLine(document: TaggedDocument, structure: Structure, line: DrawnLine, draw: () => void): void {
  structure.open ??= begun(document, structure, line)
  const { element, tag } = structure.open
  // An id of ours is no place that a link leads to.
  if (roleOf(line.id) !== undefined) line.id = undefined
  if (element === undefined) artifact(document, 'Pagination', draw)
  else {
    const content = document.markStructureContent(tag)
    draw()
    document.endMarkedContent()
    element.add(content)
  }
  if (line.lastLineInParagraph) delete structure.open
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
    structures.set(document, {
      root,
      topPt: top,
      bottomPt: (first?.pageSize.height ?? 0) - bottom,
      tables: new Map(),
      drawn: new Set()
    })
    renderPages.call(this, pages)
    root.end()
  }
  prototype.renderLine = function (line, x, y) {
    const { pdfDocument: document } = this
    const structure = structures.get(document)
    const draw = () => renderLine.call(this, line, x, y)
    if (structure === undefined) draw()
    else if (y < structure.topPt - 1 || y > structure.bottomPt) artifact(document, 'Pagination', draw)
    else textLine(document, structure, line, draw)
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
