/** Steps on the page: title, time, what prevents harm and what must be read in sight; how, tools and why folded. */

import { cautionBriefs } from '../../contract/cautions/briefs.ts'
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { type Html, html } from '../draw/html.ts'
import { durationText } from '../draw/number-text.ts'
import { list } from './page-parts.ts'
import type { PlanPaper } from './plan-paper.ts'

interface PageStep {
  readonly number: number
  readonly id: string
  readonly title: string
  readonly time?: string
  readonly warnings: readonly string[]
  readonly readings: readonly string[]
  readonly how: readonly string[]
  readonly tools: readonly string[]
  readonly uses?: readonly string[]
  readonly cautions: readonly CautionCode[]
}

/** The short form of every caution of the step that the plan gives anywhere; one without a short form stands whole. */
function barriers(plan: PlanPaper, { id, cautions, warnings }: PageStep): readonly string[] {
  const given = new Set([...plan.stepCautions.values()].flat().map(({ code }) => code))
  const briefs = cautions.filter(code => given.has(code)).flatMap(code => cautionBriefs[code] ?? [])
  const whole = (plan.stepCautions.get(id) ?? []).filter(({ code }) => cautionBriefs[code] === undefined)
  return [...new Set([...warnings, ...briefs, ...whole.map(({ message }) => message)])]
}

/** What the short form stands for, once. */
const wholeCautions = (plan: PlanPaper, { id }: PageStep) =>
  (plan.stepCautions.get(id) ?? []).filter(({ code }) => cautionBriefs[code] !== undefined)

/** Short sentences one after the other, on as few lines as they need. */
const inSight = (className: string, texts: readonly string[]): Html | undefined =>
  texts.length === 0
    ? undefined
    : html`<span class="${className}">${texts.map(text => (/[.!?]$/.test(text) ? text : `${text}.`)).join(' ')}</span>`

function stepItem(plan: PlanPaper, step: PageStep): Html {
  const { number, title, time, readings, how, tools, uses = [] } = step
  const sight = html`<b class="number">${number}</b> <b>${title}</b>${time === undefined ? undefined : html` <span class="time">${time}</span>`}<span class="sight">${inSight('barrier', barriers(plan, step))} ${inSight('reading', readings)}</span>`
  const whole = wholeCautions(plan, step).map(({ message }) => html`<p class="barrier">${message}</p>`)
  return html`<li id="step-${number}"><input type="checkbox" aria-label="Step ${number} done"><details><summary>${sight}</summary>${list(how)}${
    tools.length === 0 ? undefined : html`<p class="quiet">Tools: ${tools.join(', ')}.</p>`
  }${
    uses.length === 0
      ? undefined
      : html`<p class="quiet">Uses: ${uses.map(item => item.replaceAll('-', ' ')).join(', ')}.</p>`
  }${whole}</details></li>`
}

export const stepList = (plan: PlanPaper, steps: readonly PageStep[]): Html | undefined =>
  steps.length === 0 ? undefined : html`<ol class="steps">${steps.map(step => stepItem(plan, step))}</ol>`

type Place = NonNullable<PlanPaper['buildOrder']>['steps'][number]['place']

const pageStep = (
  { actions, checks, minutes, cureMinutes, ...step }: NonNullable<PlanPaper['buildOrder']>['steps'][number],
  { restraint }: PlanPaper
): PageStep => ({
  ...step,
  time: `${durationText(minutes)}${cureMinutes > 0 ? `, then ${durationText(cureMinutes)}` : ''}`,
  readings: checks,
  // How the box is held stands where it is fastened.
  how: step.cautions.includes('box-restraint') ? [...actions, ...(restraint?.advice ?? [])] : actions
})

/** The steps of some places, day by day. */
export function stepsByDay(plan: PlanPaper, places: readonly Place[]): Html | undefined {
  const { steps = [], days = [] } = plan.buildOrder ?? {}
  const here = steps.filter(({ place }) => places.includes(place))
  if (here.length === 0) return undefined
  const shown = days.flatMap(({ day, steps: ids }) => {
    const mine = here.filter(({ id }) => ids.includes(id)).map(step => pageStep(step, plan))
    return mine.length === 0 ? [] : [html`<h3 class="day">Day ${day}</h3>${stepList(plan, mine)}`]
  })
  return html`${shown}`
}

export const firstSteps = ({ commissioning }: PlanPaper): readonly PageStep[] =>
  commissioning.map(({ text, passIf, ...step }) => ({
    ...step,
    warnings: [],
    readings: [passIf],
    how: [text],
    tools: []
  }))
