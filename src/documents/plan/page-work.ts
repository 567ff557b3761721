/** The parts of the page in the order of the work: see, buy, cut, build, wire, switch on, check. */
import type { SheetLayout } from '../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { findingChart } from '../charts/finding-chart.ts'
import { portAirChart, travelChart } from '../charts/plan-charts.ts'
import { cutText } from '../draw/cut-list-text.ts'
import { type Html, html } from '../draw/html.ts'
import { dimension, durationText, lengthText, type PaperUnits } from '../draw/number-text.ts'
import { boxOverview } from '../panels/box-overview.ts'
import { pagePanel } from '../panels/page-panel.ts'
import { pageSheet } from '../panels/page-sheet.ts'
import { drawnApart } from '../panels/panel-copies.ts'
import { countText, holeRows, materialTitle, seenFrom } from '../panels/panel-drawing.ts'
import { markTexts } from '../panels/panel-marks.ts'
import { PLAIN_PANELS, panelsToDraw } from '../panels/panel-work.ts'
import { systemWiring } from '../wiring/system-wiring.ts'
import { wiringDiagram } from '../wiring/wiring-diagram.ts'
import { chapter, figureOf, fold, list, scrolling, table } from './page-parts.ts'
import { stepList, stepsByDay } from './page-steps.ts'
import { firstSteps } from './paper-steps.ts'
import type { PaperOptions, PlanPaper } from './plan-paper.ts'
import { buyText, CUT_TO_SIZE, clearanceRows, conductorRows, cutListRows, shoppingRows, shops } from './plan-rows.ts'
import { WHAT_IF_CAPTION } from './what-if-rows.ts'

export function see(plan: PlanPaper): Html | undefined {
  const { curves, cover } = plan
  const charts = curves === undefined ? [] : [travelChart(cover, curves), portAirChart(cover, curves)]
  const shown = charts.flatMap(chart => (chart === undefined ? [] : [findingChart(chart)]))
  const line = 'What it will do, and what holds it back.'
  const two = shown.length === 0 ? undefined : html`<div class="two">${shown}</div>`
  const others =
    plan.others.length === 0
      ? undefined
      : fold(`Other boxes for the same parts (${plan.others.length})`, list(plan.others))
  return chapter(plan, { id: 'see', title: 'See', line }, two, others, whatMoves(plan))
}

function whatMoves({ headroom, whatIf: { headings, rows } }: PlanPaper): Html | undefined {
  if (rows.length === 0) return undefined
  const columns = headings.map((title, index) => (index === 0 ? { title } : { title, figures: true as const }))
  const cost = headroom === undefined ? undefined : html`<p>${headroom}</p>`
  return fold('What the limits cost, and what moves', cost, table(WHAT_IF_CAPTION, columns, rows))
}

/** Where a thing is used first, at the bench, in the car or when it is switched on. */
function stepOf({ buildOrder, commissioning }: PlanPaper, part: BillRow['part']): Html | undefined {
  const steps = [...(buildOrder?.steps ?? []), ...commissioning.map(({ uses = [], ...step }) => ({ ...step, uses }))]
  const step = steps.find(({ uses }) => uses.some(each => each === part))
  return step === undefined
    ? undefined
    : html`<a href="#step-${step.number}" aria-label="step ${step.number}">${step.number}</a>`
}

export function buy(plan: PlanPaper): Html | undefined {
  const { bill } = plan
  const rows = shoppingRows(bill)
  if (rows.length === 0) return undefined
  const lists = shops.map(({ title, groups }) => {
    const mine = rows.filter(({ group }) => groups.includes(group))
    const items = mine.map(
      ({ item, quantity, unit, needed, part }) =>
        html`<li><label><input type="checkbox"><span class="many">${buyText(quantity, unit)}</span><span>${item}${needed ? '' : ' (optional)'}</span></label>${stepOf(plan, part)}</li>`
    )
    return mine.length === 0 ? undefined : html`<div class="shop"><h3>${title}</h3><ul class="buy">${items}</ul></div>`
  })
  const why = rows.map(({ item, basis, sparePercent }) => [
    item,
    sparePercent === 0 ? 'none' : `${sparePercent} %`,
    basis
  ])
  const columns = [{ title: 'Item' }, { title: 'Spare', figures: true as const }, { title: 'How much and why' }]
  return chapter(
    plan,
    {
      id: 'buy',
      title: 'Buy',
      line: `${rows.length} things, by shop. Tick what you have. At the right the step that needs it.`
    },
    html`<div class="columns">${lists}</div>`,
    rows.length < bill.length ? html`<p class="quiet">${CUT_TO_SIZE}</p>` : undefined,
    fold('How much, and why', table('How much, and why', columns, why))
  )
}

function cutList({ box }: PlanPaper, paper: PaperUnits): Html | undefined {
  if (box === undefined) return undefined
  const unit = paper.units === 'metric' ? 'mm' : 'in'
  const materials = [...new Set(box.panels.map(({ material }) => materialTitle(material)))].join(', ')
  return table(
    `Cut list: ${materials}, ${unit}`,
    [{ title: 'Panel' }, { title: 'No.', figures: true }, { title: 'Size', figures: true }, { title: 'Work' }],
    cutListRows(box, paper)
  )
}

/** One sheet with its drawing; the order of cuts in words is looked up. */
function sheet(layout: SheetLayout, paper: PaperUnits): Html {
  const { number, lengthM, widthM, cuts, trimM } = layout
  const size = `${dimension(lengthM, paper)} × ${lengthText(widthM, paper)}`
  const trim = trimM > 0 ? `; trim ${lengthText(trimM, paper)} off every edge first` : ''
  const order = cuts.map(each => html`<li value="${each.step}">${cutText(each, paper)}</li>`)
  return html`<div><p><b>Sheet ${number}</b>, ${size}${trim}</p>${figureOf(pageSheet(layout, `sheet-${number}`, paper), 'drawing small')}${
    cuts.length === 0 ? undefined : fold(`The ${cuts.length} cuts of sheet ${number} in order`, html`<ol>${order}</ol>`)
  }</div>`
}

/** A panel that a size alone does not describe: drawing, each hole and what stands against it from the same two edges. */
const panel = (each: Panel, index: number, paper: PaperUnits): Html =>
  html`<div><h3>${each.name}${countText(each)}, ${seenFrom(each)}</h3>${figureOf(pagePanel(each, `panel-${index + 1}`, paper), 'drawing small')}${list([...holeRows(each, paper), ...markTexts(each, paper)])}</div>`

function clearances({ box }: PlanPaper, paper: PaperUnits): Html | undefined {
  const rows = box === undefined ? [] : clearanceRows(box, paper)
  if (rows.length === 0) return undefined
  const columns = [
    { title: 'Between' },
    { title: 'There is', figures: true as const },
    { title: 'Needed', figures: true as const },
    { title: 'Verdict' }
  ]
  return fold('Clearances', table('Clearances', columns, rows))
}

export function cut(plan: PlanPaper, { paper }: PaperOptions): Html | undefined {
  const { box, cutPlan } = plan
  if (box === undefined) return undefined
  const layouts = cutPlan?.layouts ?? []
  const cutCount = layouts.reduce((sum, { cuts }) => sum + cuts.length, 0)
  const panelCount = box.panels.reduce((sum, { quantity }) => sum + quantity, 0)
  const sheets =
    layouts.length === 0 ? '' : `, ${layouts.length} ${layouts.length === 1 ? 'sheet' : 'sheets'}, ${cutCount} cuts`
  const drawnPanels = panelsToDraw(box)
  const overview = boxOverview(box, 'box-overview', paper)
  return chapter(
    plan,
    { id: 'cut', title: 'Cut', line: `${panelCount} panels${sheets}. Blue is what is cut.` },
    html`<div class="two">${layouts.map(each => sheet(each, paper))}</div>`,
    cutList(plan, paper),
    html`<div class="two">${drawnPanels.flatMap(drawnApart).map((each, index) => panel(each, index, paper))}</div>`,
    drawnPanels.length < box.panels.length ? html`<p class="quiet">${PLAIN_PANELS}</p>` : undefined,
    overview === undefined ? undefined : fold('Which panel goes where', figureOf(overview, 'drawing overview')),
    clearances(plan, paper)
  )
}

export function build(plan: PlanPaper): Html | undefined {
  const { buildOrder } = plan
  if (buildOrder === undefined) return undefined
  const line = `${durationText(buildOrder.workMinutes)} of work in all, over ${buildOrder.days.length} days. Open a step for how it is done.`
  return chapter(plan, { id: 'build', title: 'Build', line }, stepsByDay(plan, ['table', 'bench']))
}

export function wire(plan: PlanPaper): Html | undefined {
  const { wiring, coils, remedies } = plan
  if (wiring === undefined && coils === undefined) return undefined
  const rows = conductorRows(plan)
  const columns = [
    { title: 'No.' },
    { title: 'What' },
    { title: 'Size' },
    { title: 'Run', figures: true as const },
    { title: 'Fuse', figures: true as const }
  ]
  return chapter(
    plan,
    { id: 'wire', title: 'Wire', line: 'In the car, battery and fuse off.' },
    wiring === undefined ? undefined : scrolling(systemWiring(wiring), 'Wiring from battery to drivers'),
    wiring === undefined
      ? undefined
      : html`${wiring.notDrawn.map(text => html`<p class="barrier">Not drawn: ${text}</p>`)}`,
    table('Conductors', columns, rows),
    remedies.length === 0 ? undefined : fold(`What would help the supply (${remedies.length})`, list(remedies)),
    coils === undefined ? undefined : scrolling(wiringDiagram(coils), 'Wiring of the coils'),
    stepsByDay(plan, ['car'])
  )
}

export const switchOn = (plan: PlanPaper): Html | undefined =>
  chapter(
    plan,
    { id: 'switch-on', title: 'Switch on', line: 'In this order. Continue when the reading is right.' },
    stepList(plan, firstSteps(plan))
  )

export function check(plan: PlanPaper): Html | undefined {
  const { card } = plan
  if (card.length === 0) return undefined
  const rows = card.map(({ what, planned, step, otherwise }, index) => [
    otherwise === '' ? what : html`${what}<br><small class="quiet">${otherwise}</small>`,
    planned,
    html`<a href="#step-${step}">${step}</a>`,
    html`<input type="text" aria-label="Your reading: ${what}" id="reading-${index + 1}">`
  ])
  const columns = [{ title: 'What' }, { title: 'Planned' }, { title: 'Step' }, { title: 'Yours' }]
  return chapter(
    plan,
    { id: 'check', title: 'Check', line: 'Write down what you read.' },
    table('Test card', columns, rows)
  )
}
