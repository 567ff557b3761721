/** Steps on the page: title, time, what prevents harm and what must be read in sight; how, tools and why folded. */
import { type Html, html } from '../draw/html.ts'
import { list } from './page-parts.ts'
import { barriersOf, daysOf, type PaperStep } from './paper-steps.ts'
import type { PlanPaper } from './plan-paper.ts'

/** Short sentences one after the other, on as few lines as they need. */
const inSight = (className: string, texts: readonly string[]): Html | undefined =>
  texts.length === 0 ? undefined : html`<span class="${className}">${texts.join(' ')}</span>`

function stepItem(plan: PlanPaper, step: PaperStep): Html {
  const { number, title, time, readings, how, tools, uses = [] } = step
  const { short, whole } = barriersOf(plan, step)
  const sight = html`<b class="number">${number}</b> <b>${title}</b>${time === undefined ? undefined : html` <span class="time">${time}</span>`}<span class="sight">${inSight('barrier', short)} ${inSight('reading', readings)}</span>`
  const named = (label: string, items: readonly string[]) =>
    items.length === 0
      ? undefined
      : html`<p class="quiet">${label}: ${items.map(item => item.replaceAll('-', ' ')).join(', ')}.</p>`
  return html`<li id="step-${number}"><input type="checkbox" aria-label="Step ${number} done"><details><summary>${sight}</summary>${list(how)}${named('Tools', tools)}${named('Uses', uses)}${whole.map(text => html`<p class="barrier">${text}</p>`)}</details></li>`
}

export const stepList = (plan: PlanPaper, steps: readonly PaperStep[]): Html | undefined =>
  steps.length === 0 ? undefined : html`<ol class="steps">${steps.map(step => stepItem(plan, step))}</ol>`

/** The steps of some places, day by day. */
export function stepsByDay(plan: PlanPaper, places: Parameters<typeof daysOf>[1]): Html | undefined {
  const shown = daysOf(plan, places).map(
    ({ day, steps }) => html`<h3 class="day">Day ${day}</h3>${stepList(plan, steps)}`
  )
  return shown.length === 0 ? undefined : html`${shown}`
}
