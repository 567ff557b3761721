/** What is bought and what is cut, on the page: lists and drawings that a phone in a shop or at a saw can show. */
import type { SheetLayout } from '../../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../../contract/boxes/panel.ts'
import type { BillRow } from '../../../contract/systems/workshop.ts'
import { told } from '../../../domain/say.ts'
import { boxOverview } from '../../box/box-overview.ts'
import { type Html, html } from '../../draw/html.ts'
import { dimension, figure, lengthText, type Reader, shortUnit } from '../../draw/number-text.ts'
import { panelName } from '../../draw/panel-name.ts'
import { cutText } from '../../panels/cut-list-text.ts'
import { pagePanel } from '../../panels/page-panel.ts'
import { pageSheet } from '../../panels/page-sheet.ts'
import { drawnApart, sameHoles } from '../../panels/panel-copies.ts'
import { countText, holeRows, materialTitle, seenFrom } from '../../panels/panel-drawing.ts'
import { markTexts } from '../../panels/panel-marks.ts'
import { panelsToDraw } from '../../panels/panel-work.ts'
import type { PaperOptions, PlanPaper } from '../plan-paper.ts'
import { buyText, clearanceRows, cutListRows, panelsLine, shoppingRows, shops, stepUsing } from '../plan-rows.ts'
import { chapter, figureOf, fold, list, phoneFold, table } from './page-parts.ts'

function stepOf(plan: PlanPaper, part: BillRow['part']): Html | undefined {
  const number = stepUsing(plan, part)
  if (number === undefined) return undefined
  return html`<a href="#step-${number}" aria-label="${told(plan.language, 'paper.step-of', { number })}">${number}</a>`
}

export function buy(plan: PlanPaper): Html | undefined {
  const { bill, language } = plan
  const rows = shoppingRows(bill)
  if (rows.length === 0) return undefined
  const lists = shops.map(({ title, groups }) => {
    const mine = rows.filter(({ group }) => groups.includes(group))
    const items = mine.map(
      ({ item, quantity, unit, needed, part }) =>
        html`<li><label><input type="checkbox"><span><b>${buyText(quantity, unit, plan)}</b> ${item}${needed ? '' : told(language, 'paper.optional')}</span></label>${stepOf(plan, part)}</li>`
    )
    const line = html`${told(language, title)} <span class="time">${told(language, 'paper.thing-count', { count: mine.length })}</span>`
    return mine.length === 0
      ? undefined
      : html`<details class="shop"><summary>${line}</summary><ul class="buy">${items}</ul></details>`
  })
  const why = rows.map(({ item, basis, sparePercent }) => [
    item,
    sparePercent === 0 ? told(language, 'paper.spare-none') : `${figure(sparePercent, 1, plan)} %`,
    basis
  ])
  const columns = [
    { title: told(language, 'paper.item') },
    { title: told(language, 'paper.spare'), figures: true as const },
    { title: told(language, 'paper.why-so-much') }
  ]
  const reasons = told(language, 'paper.why-fold')
  const panels = panelsLine(plan)
  return chapter(
    plan,
    {
      id: 'buy',
      title: told(language, 'paper.buy'),
      line: told(language, 'paper.buy.line')
    },
    html`${lists}`,
    panels === undefined ? undefined : html`<p class="quiet">${panels}</p>`,
    fold(reasons, table(reasons, columns, why))
  )
}

function cutList({ box }: PlanPaper, paper: Reader): Html | undefined {
  if (box === undefined) return undefined
  const { language } = paper
  const materials = [...new Set(box.panels.map(({ material }) => materialTitle(material, paper)))].join(', ')
  const rows = cutListRows(box, paper).map(([name = '', count = '', size = '', work = '']) => [
    work === '' ? name : html`${name} <small class="quiet">${work}</small>`,
    count,
    size
  ])
  const columns = [
    { title: told(language, 'paper.panel') },
    { title: told(language, 'paper.pieces'), figures: true as const },
    { title: told(language, 'paper.size'), figures: true as const }
  ]
  return table(told(language, 'paper.cut-list', { materials, unit: shortUnit(paper) }), columns, rows)
}

/** One sheet with its drawing; the order of cuts in words is looked up. */
function sheet(layout: SheetLayout, paper: Reader): Html {
  const { number, lengthM, widthM, cuts, trimM } = layout
  const size = `${dimension(lengthM, paper)} × ${lengthText(widthM, paper)}`
  const { language } = paper
  const trim = trimM > 0 ? told(language, 'paper.trim-first', { trim: lengthText(trimM, paper) }) : ''
  const name = told(language, 'paper.sheet', { number })
  const inOrder = told(language, 'paper.cuts-of-sheet', { cutCount: cuts.length, number })
  const order = cuts.map(each => html`<li value="${each.step}">${cutText(each, paper)}</li>`)
  return html`<div><p><b>${name}</b>, ${size}${trim}</p>${figureOf(pageSheet(layout, `sheet-${number}`, paper), 'drawing small')}${
    cuts.length === 0 ? undefined : fold(inOrder, html`<ol>${order}</ol>`)
  }</div>`
}

/** Panels that a size alone does not describe. In sight once for each set of holes, on a phone that of the drivers; copies marked unlike, and mere marks, folded. */
function panelFigures(all: readonly Panel[], paper: Reader): Html {
  const first = all.findIndex(({ cutOuts }) => cutOuts.some(({ purpose }) => purpose === 'driver'))
  const drawn = all.map((each, index) => {
    const title = `${panelName(each.name, paper)}${countText(each, paper)}, ${seenFrom(each, paper)}`
    const picture = figureOf(pagePanel(each, `panel-${index + 1}`, paper), 'drawing small')
    const words = list([...holeRows(each, paper), ...markTexts(each, paper)])
    const isOwn = each.cutOuts.length > 0 && all.findIndex(other => sameHoles(other, each)) === index
    if (!isOwn) return { shut: fold(title, picture, words) }
    return index === first
      ? {
          open: html`<div><h3>${title}</h3>${picture}${phoneFold(told(paper.language, 'paper.hole-count', { count: each.cutOuts.length }), words)}</div>`
        }
      : { open: phoneFold(title, picture, words) }
  })
  return html`<div class="two">${drawn.map(({ open }) => open)}</div>${drawn.map(({ shut }) => shut)}`
}

function clearances({ box }: PlanPaper, paper: Reader): Html | undefined {
  const rows = box === undefined ? [] : clearanceRows(box, paper)
  if (rows.length === 0) return undefined
  const { language } = paper
  const columns = [
    { title: told(language, 'paper.between') },
    { title: told(language, 'paper.there-is'), figures: true as const },
    { title: told(language, 'paper.needed'), figures: true as const },
    { title: told(language, 'paper.verdict') }
  ]
  const title = told(language, 'paper.clearances')
  return fold(title, table(title, columns, rows))
}

export function cut(plan: PlanPaper, { paper }: PaperOptions): Html | undefined {
  const { box, cutPlan, language } = plan
  if (box === undefined) return undefined
  const layouts = cutPlan?.layouts ?? []
  const cutCount = layouts.reduce((sum, { cuts }) => sum + cuts.length, 0)
  const panelCount = box.panels.reduce((sum, { quantity }) => sum + quantity, 0)
  const line =
    layouts.length === 0
      ? told(language, 'paper.cut.line', { panelCount })
      : told(language, 'paper.cut.line-sheets', { panelCount, sheetCount: layouts.length, cutCount })
  const drawnPanels = panelsToDraw(box)
  const overview = boxOverview(box, 'box-overview', paper)
  return chapter(
    plan,
    { id: 'cut', title: told(language, 'paper.cut'), line },
    html`<div class="two">${layouts.map(each => sheet(each, paper))}</div>`,
    cutList(plan, paper),
    panelFigures(drawnPanels.flatMap(drawnApart), paper),
    drawnPanels.length < box.panels.length
      ? html`<p class="quiet">${told(language, 'draw.plain-panels')}</p>`
      : undefined,
    overview === undefined
      ? undefined
      : fold(
          told(language, 'paper.which-where'),
          figureOf(overview, 'drawing small'),
          html`<p class="quiet">${told(language, 'paper.dashed-behind')}</p>`
        ),
    clearances(plan, paper)
  )
}
