/** Box, bill, order of work, restraint and first start as parts of a PDF document. */
import type { Content } from 'pdfmake/interfaces.js'
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { BuildStep } from '../../plan/work/build-step.ts'
import { durationText, lengthText, massText, type PaperUnits, volumeText } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { plainFonts } from '../draw/pdf.ts'
import { heading, lines, plain, table } from '../draw/pdf-text.ts'
import { boxOverview } from '../panels/box-overview.ts'
import { materialTitle } from '../panels/panel-drawing.ts'
import { PLAIN_PANELS, panelsToDraw, panelWork } from '../panels/panel-work.ts'
import { systemWiring } from '../wiring/system-wiring.ts'
import { wiringDiagram } from '../wiring/wiring-diagram.ts'
import { type PaperOptions, type PlanPaper, stepCautionTexts, valueText } from './plan-paper.ts'
import { buyText, CUT_TO_SIZE, clearanceRows, restraintRows, shoppingRows, shops } from './plan-rows.ts'
import { READING_TITLES, readingRows } from './reading-rows.ts'

function volumeTable({ volume }: BoxLayout, paper: PaperUnits): Content {
  const rows = [
    ['inside of the panels, empty', volumeText(volume.grossM3, paper), 'computed'],
    ...volume.rows.map(({ item, volumeM3, known }) => [item, `−${volumeText(volumeM3, paper)}`, known]),
    ['net air volume', volumeText(volume.netM3, paper), 'computed']
  ]
  return table('Air in the box', ['Part', 'Volume', 'How known'], ['*', 'auto', 'auto'], rows, [1])
}

function cutListTable({ panels }: BoxLayout, paper: PaperUnits): Content {
  const rows = panels.map(panel => [
    panel.name,
    String(panel.quantity),
    lengthText(panel.lengthM, paper),
    lengthText(panel.widthM, paper),
    lengthText(panel.thicknessM, paper),
    [materialTitle(panel.material), panelWork(panel, paper)].filter(text => text !== '').join('; '),
    massText(panel.massKg, paper)
  ])
  const titles = ['Panel', 'Number', 'Length', 'Width', 'Thickness', 'Board and work', 'Each weighs']
  return table('Cut list', titles, [90, 'auto', 'auto', 'auto', 'auto', '*', 'auto'], rows, [1, 2, 3, 4, 6])
}

function clearanceTable(box: BoxLayout, paper: PaperUnits): Content[] {
  const rows = clearanceRows(box, paper)
  if (rows.length === 0) return []
  const titles = ['Between', 'There is', 'Needed', 'Verdict']
  return [table('Clearances', titles, ['*', 'auto', 'auto', 'auto'], rows, [1, 2])]
}

export function boxTables({ box }: PlanPaper, { paper }: PaperOptions): Content[] {
  if (box === undefined) return []
  const overview = boxOverview(box, 'box-overview', paper)
  return [
    heading('The box'),
    ...(overview === undefined ? [] : [{ svg: plainFonts(overview), width: 400 }]),
    volumeTable(box, paper),
    cutListTable(box, paper),
    ...(panelsToDraw(box).length < box.panels.length ? [PLAIN_PANELS] : []),
    ...clearanceTable(box, paper)
  ]
}

export function bill({ bill: all }: PlanPaper): Content[] {
  const rows = shoppingRows(all)
  const tables = shops.flatMap(({ title, groups }) => {
    const mine = rows
      .filter(({ group }) => groups.includes(group))
      .map(({ item, quantity, unit, basis, needed }) => [
        '\u2610',
        item + (needed ? '' : ' (optional)'),
        buyText(quantity, unit),
        basis
      ])
    return mine.length === 0
      ? []
      : [table(title, ['', 'Item', 'Buy', 'How much and why'], ['auto', 190, 'auto', '*'], mine, [2])]
  })
  const [board, ...others] = tables
  if (board === undefined) return []
  return [heading('What to buy'), board, ...(rows.length < all.length ? [CUT_TO_SIZE] : []), ...others]
}

function stepBlock(plan: PlanPaper, step: BuildStep): Content {
  const { number, id, title, actions, tools, minutes, cureMinutes, checks, warnings } = step
  const time = `${durationText(minutes)}${cureMinutes > 0 ? `, then wait ${durationText(cureMinutes)}` : ''}`
  return {
    unbreakable: true,
    margin: [0, 4, 0, 4],
    stack: [
      {
        text: [
          { text: `${number}  ${plain(title)}`, bold: true },
          { text: `   ${time}`, color: ink.quiet, fontSize: 8 }
        ]
      },
      lines(actions),
      ...(tools.length > 0 ? [{ text: `Tools: ${plain(tools.join(', '))}.`, fontSize: 8, color: ink.quiet }] : []),
      ...[...stepCautionTexts(plan, id), ...warnings].map(warning => ({
        text: plain(warning),
        fontSize: 8.5,
        bold: true,
        color: ink.limit
      })),
      ...checks.map(check => ({ text: `\u2610 ${plain(check)}`, fontSize: 8.5 }))
    ]
  }
}

export function build(plan: PlanPaper): Content[] {
  const { buildOrder } = plan
  if (buildOrder === undefined) return []
  const { workMinutes, elapsedMinutes, steps } = buildOrder
  return [
    heading('Order of work'),
    `About ${durationText(workMinutes)} of work, ${durationText(elapsedMinutes)} with drying times.`,
    ...steps.map(step => stepBlock(plan, step))
  ]
}

function wiringDrawings({ wiring, coils, remedies }: PlanPaper): Content[] {
  if (wiring === undefined && coils === undefined) return []
  return [
    heading('Wiring'),
    ...(wiring === undefined ? [] : [{ svg: plainFonts(systemWiring(wiring)), width: 510 }]),
    ...(wiring?.notDrawn ?? []).map(text => plain(`Not drawn: ${text}`)),
    ...(coils === undefined ? [] : [{ svg: plainFonts(wiringDiagram(coils)), width: 400 }]),
    ...(remedies.length === 0 ? [] : [{ text: 'What would help the supply', bold: true }, lines(remedies)])
  ]
}

function groundTables({ assumed, sources }: PlanPaper): Content[] {
  if (assumed.length + sources.length === 0) return []
  const defaults = assumed.map(({ field, value, why }) => [field, valueText(value), why])
  const known = sources.map(({ title, status }) => [title, status])
  return [
    heading('Assumptions and sources'),
    ...(defaults.length === 0
      ? []
      : [table('Assumed because nothing was said (SI units)', ['Field', 'Value', 'Why'], [150, 80, '*'], defaults)]),
    ...(known.length === 0
      ? []
      : [table('Sources, and how well we know them', ['Title', 'How we know'], ['*', 72], known)])
  ]
}

function restraintTable({ restraint }: PlanPaper, { paper }: PaperOptions): Content[] {
  if (restraint === undefined) return []
  return [
    heading('Securing the box'),
    table('Forces on the box', ['Case', 'Figure'], ['*', 'auto'], restraintRows(restraint, paper), [1]),
    lines(restraint.advice)
  ]
}

function commissioningTable(plan: PlanPaper): Content[] {
  if (plan.commissioning.length === 0) return []
  const rows = plan.commissioning.map(({ id, number, title, text, passIf }) => [
    String(number),
    [`${title}. ${text}`, ...stepCautionTexts(plan, id)].join('\n'),
    passIf
  ])
  return [heading('Switching it on'), table('In this order', ['', 'Do', 'Continue when'], ['auto', '*', 150], rows)]
}

function readingsTable({ readings, commissioning }: PlanPaper): Content[] {
  const rows = readingRows(readings, commissioning)
  if (rows.length === 0) return []
  return [table('What the meter shows', [...READING_TITLES], [28, '*', 110, 48, 72, 130], rows)]
}

export const endTables = (plan: PlanPaper, options: PaperOptions): Content[] => [
  ...wiringDrawings(plan),
  ...restraintTable(plan, options),
  ...commissioningTable(plan),
  ...readingsTable(plan),
  ...groundTables(plan)
]
