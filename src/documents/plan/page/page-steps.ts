/** Steps on the page: title, time, what prevents harm and what must be read in sight; how, tools and why folded. */
import { told } from '../../../domain/say.ts'
import { type Html, html } from '../../draw/html.ts'
import { durationText } from '../../draw/number-text.ts'
import { barriersOf, type PaperStep, type PaperStretch } from '../paper-steps.ts'
import type { PlanPaper } from '../plan-paper.ts'
import { list } from './page-parts.ts'

/** Short sentences one after the other, on as few lines as they need. */
const inSight = (className: string, texts: readonly string[]): Html | undefined =>
  texts.length === 0 ? undefined : html`<span class="${className}">${texts.join(' ')}</span>`

function stepItem(plan: PlanPaper, step: PaperStep): Html {
  const { number, title, time, readings, how, tools, uses = [] } = step
  const { short, whole } = barriersOf(plan, step)
  const sight = html`<b class="number">${number}</b> <b>${title}</b>${time === undefined ? undefined : html` <span class="time">${time}</span>`}<span class="sight">${inSight('barrier', short)} ${inSight('reading', readings)}</span>`
  const { language } = plan
  const named = (id: 'paper.tools' | 'paper.uses', items: readonly string[]) =>
    items.length === 0 ? undefined : html`<p class="quiet">${told(language, id, { all: items.join(', ') })}</p>`
  const taken = uses.map(item => told(language, `item.${item}`))
  const done = told(language, 'paper.step-done', { number })
  return html`<li id="step-${number}"><input type="checkbox" aria-label="${done}"><details><summary>${sight}</summary>${list(how)}${named('paper.tools', tools)}${named('paper.uses', taken)}${whole.map(text => html`<p class="barrier">${text}</p>`)}</details></li>`
}

/** A stretch of the work folds to one line: who opens it sees of each step what prevents harm and what is read. */
function stretch(plan: PlanPaper, { title, minutes, steps }: PaperStretch): Html {
  const [first, last] = [steps[0]?.title, steps.at(-1)?.title]
  const from = first === last ? first : `${first} … ${last}`
  const count = told(plan.language, 'paper.step-count', { count: steps.length })
  return html`<details class="stretch"><summary><b>${title}</b> <span class="time">${count}, ${durationText(minutes, plan)}</span><span class="ends">${from}</span></summary><ol class="steps">${steps.map(step => stepItem(plan, step))}</ol></details>`
}

export const stretches = (plan: PlanPaper, all: readonly PaperStretch[]): Html | undefined =>
  all.length === 0 ? undefined : html`${all.map(each => stretch(plan, each))}`
