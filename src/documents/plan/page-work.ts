/** What to buy and what to do, on the page. */
import type { BillRow } from '../../contract/systems/workshop.ts'
import type { BuildStep } from '../../plan/work/build-step.ts'
import { listOf, paragraph, section, tableOf } from '../draw/html.ts'
import { durationText, figure } from '../draw/number-text.ts'
import { element, escaped } from '../draw/svg.ts'
import { type PlanPaper, stepCautionTexts } from './plan-paper.ts'

export const billGroupTitles: Readonly<Record<BillRow['group'], string>> = {
  board: 'Board',
  joining: 'Joining',
  fittings: 'Fittings',
  finish: 'Finish',
  wiring: 'Wiring'
}

/** Counted units take a plural; measures do not. */
export function buyText(quantity: number, unit: string): string {
  const counted = ['piece', 'sheet', 'can', 'cartridge', 'tin'].includes(unit)
  return `${figure(quantity, 2)} ${unit}${counted && quantity !== 1 ? 's' : ''}`
}

/** Panels cut to size instead of sheets stand in the cut list already. */
export const shoppingRows = (bill: readonly BillRow[]): readonly BillRow[] =>
  bill.filter(({ group, needed }) => group !== 'board' || needed)

export const CUT_TO_SIZE =
  'Or buy the panels cut to size instead of sheets: the cut list is what a cutting service asks for.'

export function billSection({ bill: all }: PlanPaper): string {
  const bill = shoppingRows(all)
  const groups = Object.keys(billGroupTitles) as BillRow['group'][]
  const tables = groups.map(group => {
    const rows = bill
      .filter(row => row.group === group)
      .map(({ item, quantity, unit, basis, sparePercent, needed }) => [
        item + (needed ? '' : ' (optional)'),
        buyText(quantity, unit),
        sparePercent === 0 ? '' : `${sparePercent} %`,
        basis
      ])
    return rows.length === 0
      ? ''
      : tableOf(
          billGroupTitles[group],
          [
            { title: 'Item' },
            { title: 'Buy', figures: true },
            { title: 'Spare', figures: true },
            { title: 'How much and why' }
          ],
          rows
        )
  })
  const [board = '', ...others] = tables
  const choice = bill.length < all.length ? paragraph(CUT_TO_SIZE) : ''
  return section('materials', 'What to buy', board, choice, ...others)
}

function stepItem(plan: PlanPaper, step: BuildStep): string {
  const { number, id, title, actions, tools, uses, minutes, cureMinutes, checks, warnings } = step
  const time = `${durationText(minutes)}${cureMinutes > 0 ? `, then wait ${durationText(cureMinutes)}` : ''}`
  const needs = [
    ...(tools.length > 0 ? [`Tools: ${tools.join(', ')}.`] : []),
    ...(uses.length > 0 ? [`Uses: ${uses.map(item => item.replaceAll('-', ' ')).join(', ')}.`] : [])
  ].join(' ')
  const words = element(
    'div',
    {},
    element('h3', {}, escaped(title)),
    paragraph(time, 'quiet'),
    listOf(actions),
    ...(needs === '' ? [] : [paragraph(needs, 'quiet')]),
    ...[...stepCautionTexts(plan, id), ...warnings].map(warning => paragraph(warning, 'warning')),
    listOf(checks, 'check')
  )
  return element('li', {}, element('span', { class: 'number', 'aria-hidden': 'true' }, String(number)), words)
}

export function buildSection(plan: PlanPaper): string {
  const { buildOrder } = plan
  if (buildOrder === undefined) return ''
  const { steps, workMinutes, elapsedMinutes } = buildOrder
  return section(
    'build',
    'Order of work',
    paragraph(`About ${durationText(workMinutes)} of work, ${durationText(elapsedMinutes)} with drying times.`),
    element('ol', { class: 'steps' }, ...steps.map(step => stepItem(plan, step)))
  )
}
