/** Cut, build, wire, switch on and check as parts of a PDF document. */
import type { Content } from 'pdfmake/interfaces.js'
import type { Panel } from '../../../contract/boxes/panel.ts'
import type { PlanChapter } from '../../../contract/systems/words.ts'
import { gravestFirst } from '../../../domain/caution.ts'
import { told } from '../../../domain/say.ts'
import { opened, type Reader, shortUnit } from '../../draw/number-text.ts'
import { panelName } from '../../draw/panel-name.ts'
import { ink } from '../../draw/paper.ts'
import { largerText, plainFonts } from '../../draw/pdf.ts'
import { smallerHeading } from '../../draw/pdf-roles.ts'
import { heading, lines, plain, table } from '../../draw/pdf-text.ts'
import { cutText } from '../../panels/cut-list-text.ts'
import { pagePanel } from '../../panels/page-panel.ts'
import { pageSheet } from '../../panels/page-sheet.ts'
import { drawnApart, sameHoles } from '../../panels/panel-copies.ts'
import { countText, holeRows, seenFrom } from '../../panels/panel-drawing.ts'
import { markTexts } from '../../panels/panel-marks.ts'
import { panelsToDraw } from '../../panels/panel-work.ts'
import { systemWiring } from '../../wiring/system-wiring.ts'
import { wiringDiagram } from '../../wiring/wiring-diagram.ts'
import { daysOf, stagesOf } from '../paper-steps.ts'
import type { PaperOptions, PlanPaper } from '../plan-paper.ts'
import { cardText, conductorRows, cutListRows } from '../plan-rows.ts'
import { type Block, noteBlock, PAGE_PT, stepColumns } from './plan-pdf-steps.ts'

/** Of no step: in the part of the paper they are about. */
export const chapterCautions = ({ chapterCautions: all }: PlanPaper, chapter: PlanChapter): Content[] =>
  gravestFirst(all.get(chapter) ?? []).map(({ level, message }) => ({
    text: plain(message),
    fontSize: 8,
    margin: [0, 1, 0, 1],
    color: level === 'note' ? ink.quiet : ink.limit
  }))

const chapterNotes = ({ chapterCautions: all }: PlanPaper, chapter: PlanChapter): readonly Block[] =>
  gravestFirst(all.get(chapter) ?? []).map(({ level, message }) =>
    noteBlock(message, level === 'note' ? ink.quiet : ink.limit)
  )

/** Side by side, so many in a row, none parted by the end of a page. */
function inRows(cells: readonly Content[], across: number): Content[] {
  const rows = Array.from({ length: Math.ceil(cells.length / across) }, (_, index) =>
    cells.slice(across * index, across * (index + 1))
  )
  return rows.map(row => ({
    table: {
      widths: Array.from({ length: across }, () => '*'),
      dontBreakRows: true,
      body: [[...row, ...Array.from({ length: across - row.length }, () => '')]]
    },
    layout: 'noBorders'
  }))
}

const PANEL_PT = 150
/** So that what is 12 of 340 units reads at 7 pt. */
const PANEL_TEXT = 1.32
const SHEET_PT = 240

/** @param twin  a panel before it with the same holes, which are not listed twice */
function panelCell(panel: Panel, index: number, paper: Reader, twin: Panel | undefined): Content {
  const holes =
    twin === undefined
      ? holeRows(panel, paper)
      : [told(paper.language, 'paper.holes-as', { name: panelName(twin.name, paper) })]
  const title = `${panelName(panel.name, paper)}${countText(panel, paper)}, ${seenFrom(panel, paper)}`
  return {
    stack: [
      { text: plain(title), bold: true, fontSize: 8 },
      { svg: largerText(plainFonts(pagePanel(panel, `panel-${index + 1}`, paper)), PANEL_TEXT), width: PANEL_PT },
      { text: plain([...holes, ...markTexts(panel, paper)].join('; ')), fontSize: 8, lineHeight: 1.02 }
    ]
  }
}

export function pdfCut(plan: PlanPaper, { paper }: PaperOptions): Content[] {
  const { box, cutPlan, language } = plan
  if (box === undefined) return []
  const plainPanels = panelsToDraw(box).length < box.panels.length
  const notes = [
    ...chapterCautions(plan, 'cut'),
    ...(plainPanels ? [{ text: told(language, 'draw.plain-panels'), fontSize: 8 }] : [])
  ]
  const list = table(
    told(language, 'paper.cut-list-short', { unit: shortUnit(paper) }),
    [
      told(language, 'paper.panel'),
      told(language, 'paper.pieces'),
      told(language, 'paper.size'),
      told(language, 'paper.work')
    ],
    ['*', 'auto', 'auto', 74],
    cutListRows(box, paper),
    [1, 2],
    8
  )
  // Columns, since rows that are kept whole are lost where they are longer than a page.
  const sheets = (cutPlan?.layouts ?? []).map((layout, index) => ({
    columns: [
      [
        { svg: plainFonts(pageSheet(layout, `sheet-${layout.number}`, paper)), width: SHEET_PT },
        // Beside the cuts of the first sheet there is room below its picture.
        ...(index === 0 ? [...notes, list] : [])
      ],
      [
        { text: told(language, 'paper.sheet-cuts', { number: layout.number }), bold: true, ...smallerHeading },
        { ol: layout.cuts.map(each => plain(cutText(each, paper))), fontSize: 8, lineHeight: 1.02 }
      ]
    ],
    columnGap: 16
  }))
  const shown = panelsToDraw(box)
  const apart = shown.flatMap(drawnApart)
  const twinOf = (panel: Panel, index: number) =>
    panel.cutOuts.length === 0 ? undefined : apart.slice(0, index).find(each => sameHoles(each, panel))
  return [
    heading(told(language, 'paper.cut'), true),
    ...(sheets.length === 0 ? [...notes, list] : sheets),
    ...inRows(
      apart.map((each, index) => panelCell(each, index, paper, twinOf(each, index))),
      3
    )
  ]
}

/** What a heading takes [pt]. */
const HEADING_PT = 34

/** The bench begins a page, so that its sheets can be taken along. */
export function pdfBuild(plan: PlanPaper): Content[] {
  const stretches = daysOf(plan, ['table', 'bench'])
  if (stretches.length === 0) return []
  const { content } = stepColumns(plan, stretches, HEADING_PT, chapterNotes(plan, 'build'))
  return [heading(told(plan.language, 'paper.build'), true), ...content]
}

const WIRING_PT = 228

/** The sheet of the electrician: picture, conductors, coils, all on one page. */
function wiringSheet(plan: PlanPaper): Content[] {
  const { wiring, coils, remedies, language } = plan
  const joints = wiring?.joints ?? []
  const conductors = table(
    told(language, 'paper.conductors'),
    [
      told(language, 'paper.count'),
      told(language, 'paper.what'),
      told(language, 'paper.size'),
      told(language, 'paper.run'),
      told(language, 'paper.facts.fuse')
    ],
    ['auto', '*', 'auto', 'auto', 'auto'],
    conductorRows(plan),
    [3, 4]
  )
  const right = [
    conductors,
    ...(coils === undefined ? [] : [{ svg: plainFonts(wiringDiagram(coils)), width: WIRING_PT }]),
    ...(joints.length === 0 ? [] : [{ stack: [lines(joints)], fontSize: 8 }])
  ]
  const left = wiring === undefined ? [] : [{ svg: plainFonts(systemWiring(wiring)), width: WIRING_PT }]
  return [
    heading(told(language, 'paper.wire'), true),
    { columns: [{ width: WIRING_PT, stack: left }, { stack: right }], columnGap: 18 },
    ...(wiring?.notDrawn ?? []).map(what => ({
      text: plain(told(language, 'paper.not-drawn', { what })),
      color: ink.limit
    })),
    ...(remedies.length === 0
      ? []
      : [
          { text: told(language, 'paper.supply-help'), bold: true, ...smallerHeading },
          { stack: [lines(remedies)], fontSize: 8 }
        ])
  ]
}

/** From where on a page a part begins on the next [pt]. */
const LATE_PT = 0.8 * PAGE_PT

/** The car: the sheet of the electrician, then the steps in it, from the handbook to the first drive. */
export function pdfWire(plan: PlanPaper): Content[] {
  const sheet = plan.wiring === undefined && plan.coils === undefined ? [] : wiringSheet(plan)
  const wire = stepColumns(plan, daysOf(plan, ['car']), 0, chapterNotes(plan, 'wire'))
  const stages = stagesOf(plan)
  const fresh = wire.endPt > LATE_PT || wire.content.length === 0
  const start = stepColumns(plan, stages, (fresh ? 0 : wire.endPt) + HEADING_PT, chapterNotes(plan, 'switch-on'))
  const first = stages.length === 0 ? [] : [heading(told(plan.language, 'paper.switch-on'), fresh), ...start.content]
  return [...sheet, ...wire.content, ...first]
}

/** The card to take along: what, what is planned, and a line for what was read. */
export function pdfCheck({ card, language }: PlanPaper): Content[] {
  if (card.length === 0) return []
  const rows = card.map(({ what, how, planned, step, otherwise }) => [
    [`${opened(cardText({ what, how }))}.`, otherwise].filter(text => text !== '').join(' '),
    planned,
    String(step),
    '................'
  ])
  const titles = [
    told(language, 'paper.what'),
    told(language, 'paper.check.planned'),
    told(language, 'paper.step'),
    told(language, 'paper.check.yours')
  ]
  return [
    heading(told(language, 'paper.check')),
    table(told(language, 'paper.check.card'), titles, ['*', 104, 'auto', 56], rows, [], 8, true)
  ]
}
