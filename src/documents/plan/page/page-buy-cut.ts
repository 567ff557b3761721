/** What is bought and what is cut, on the page: lists and drawings that a phone in a shop or at a saw can show. */
import type { SheetLayout } from '../../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../../contract/boxes/panel.ts'
import type { BillRow } from '../../../contract/systems/workshop.ts'
import { boxOverview } from '../../box/box-overview.ts'
import { cutText } from '../../draw/cut-list-text.ts'
import { type Html, html } from '../../draw/html.ts'
import { dimension, lengthText, type PaperUnits } from '../../draw/number-text.ts'
import { pagePanel } from '../../panels/page-panel.ts'
import { pageSheet } from '../../panels/page-sheet.ts'
import { drawnApart, sameHoles } from '../../panels/panel-copies.ts'
import { countText, holeRows, materialTitle, seenFrom } from '../../panels/panel-drawing.ts'
import { markTexts } from '../../panels/panel-marks.ts'
import { PLAIN_PANELS, panelsToDraw } from '../../panels/panel-work.ts'
import type { PaperOptions, PlanPaper } from '../plan-paper.ts'
import { buyText, CUT_TO_SIZE, clearanceRows, cutListRows, shoppingRows, shops, stepUsing } from '../plan-rows.ts'
import { chapter, figureOf, fold, list, table } from './page-parts.ts'

function stepOf(plan: PlanPaper, part: BillRow['part']): Html | undefined {
  const number = stepUsing(plan, part)
  return number === undefined ? undefined : html`<a href="#step-${number}" aria-label="step ${number}">${number}</a>`
}

export function buy(plan: PlanPaper): Html | undefined {
  const { bill } = plan
  const rows = shoppingRows(bill)
  if (rows.length === 0) return undefined
  const lists = shops.map(({ title, groups }) => {
    const mine = rows.filter(({ group }) => groups.includes(group))
    const items = mine.map(
      ({ item, quantity, unit, needed, part }) =>
        html`<li><label><input type="checkbox"><span><b>${buyText(quantity, unit)}</b> ${item}${needed ? '' : ' (optional)'}</span></label>${stepOf(plan, part)}</li>`
    )
    const line = html`${title} <span class="time">${mine.length} ${mine.length === 1 ? 'thing' : 'things'}</span>`
    return mine.length === 0
      ? undefined
      : html`<details class="shop"><summary>${line}</summary><ul class="buy">${items}</ul></details>`
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
      line: 'By shop, each thing with the step that needs it.'
    },
    html`${lists}`,
    bill.some(({ part }) => part === 'sheet') ? html`<p class="quiet">${CUT_TO_SIZE}</p>` : undefined,
    fold('How much, and why', table('How much, and why', columns, why))
  )
}

function cutList({ box }: PlanPaper, paper: PaperUnits): Html | undefined {
  if (box === undefined) return undefined
  const unit = paper.units === 'metric' ? 'mm' : 'in'
  const materials = [...new Set(box.panels.map(({ material }) => materialTitle(material)))].join(', ')
  const rows = cutListRows(box, paper).map(([name = '', count = '', size = '', work = '']) => [
    work === '' ? name : html`${name} <small class="quiet">${work}</small>`,
    count,
    size
  ])
  const columns = [
    { title: 'Panel' },
    { title: 'No.', figures: true as const },
    { title: 'Size', figures: true as const }
  ]
  return table(`Cut list: ${materials}, ${unit}`, columns, rows)
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

/** Panels that a size alone does not describe. In sight once for each set of holes; copies marked unlike, and mere marks, folded. */
function panelFigures(all: readonly Panel[], paper: PaperUnits): Html {
  const drawn = all.map((each, index) => {
    const title = `${each.name}${countText(each)}, ${seenFrom(each)}`
    const picture = figureOf(pagePanel(each, `panel-${index + 1}`, paper), 'drawing small')
    const words = list([...holeRows(each, paper), ...markTexts(each, paper)])
    const open = each.cutOuts.length > 0 && all.findIndex(other => sameHoles(other, each)) === index
    return open ? { open: html`<div><h3>${title}</h3>${picture}${words}</div>` } : { shut: fold(title, picture, words) }
  })
  return html`<div class="two">${drawn.map(({ open }) => open)}</div>${drawn.map(({ shut }) => shut)}`
}

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
    panelFigures(drawnPanels.flatMap(drawnApart), paper),
    drawnPanels.length < box.panels.length ? html`<p class="quiet">${PLAIN_PANELS}</p>` : undefined,
    overview === undefined
      ? undefined
      : fold(
          'Which panel goes where',
          figureOf(overview, 'drawing small'),
          html`<p class="quiet">Dashed: panels behind and inside.</p>`
        ),
    clearances(plan, paper)
  )
}
