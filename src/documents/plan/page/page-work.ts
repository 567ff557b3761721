/** What it will do, and the work: see, build, wire, switch on, check. */
import { findingChart } from '../../charts/finding-chart.ts'
import { portAirChart, travelChart } from '../../charts/plan-charts.ts'
import { type Html, html } from '../../draw/html.ts'
import { durationText, opened, type PaperUnits } from '../../draw/number-text.ts'
import { systemWiring } from '../../wiring/system-wiring.ts'
import { wiringDiagram } from '../../wiring/wiring-diagram.ts'
import { daysOf, stagesOf } from '../paper-steps.ts'
import type { PaperOptions, PlanPaper } from '../plan-paper.ts'
import { conductorRows } from '../plan-rows.ts'
import { WAYS_CAPTION, waysTable } from '../ways-rows.ts'
import { WHAT_IF_CAPTION } from '../what-if-rows.ts'
import { chapter, figureOf, fold, list, table } from './page-parts.ts'
import { stretches } from './page-steps.ts'

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

function otherWays(order: NonNullable<PlanPaper['buildOrder']>, paper: PaperUnits): Html {
  const { headings, rows } = waysTable(order, paper)
  const columns = headings.map((title, index) => (index === 0 ? { title } : { title, figures: true as const }))
  const tools = order.ways.find(({ taken }) => taken)?.tools ?? []
  const needed = html`<p>Tools for the boards: ${tools.join(', ')}.</p>`
  return fold('Other ways to work the boards, and the tools of this one', table(WAYS_CAPTION, columns, rows), needed)
}

export function build(plan: PlanPaper, { paper }: PaperOptions): Html | undefined {
  const { buildOrder } = plan
  if (buildOrder === undefined) return undefined
  const line = `${durationText(buildOrder.workMinutes)} of work in all, over ${buildOrder.days.length} days. Open a step for how it is done.`
  const days = stretches(plan, daysOf(plan, ['table', 'bench']))
  return chapter(plan, { id: 'build', title: 'Build', line }, otherWays(buildOrder, paper), days)
}

const LEGEND =
  'Solid: positive and signal. Dashed: negative. Numbers as in the table. Power cables are joined with the battery off; the fuse goes in last.'

/** Picture, table and coils: what an electrician looks at before anything else. */
function conductors(plan: PlanPaper): Html {
  const { wiring, coils } = plan
  const columns = [
    { title: 'No.' },
    { title: 'What' },
    { title: 'Size' },
    { title: 'Run', figures: true as const },
    { title: 'Fuse', figures: true as const }
  ]
  const picture =
    wiring === undefined
      ? undefined
      : html`<div>${figureOf(systemWiring(wiring), 'drawing small wiring')}<p class="quiet">${LEGEND}</p>${wiring.notDrawn.map(text => html`<p class="barrier">Not drawn: ${text}</p>`)}</div>`
  const joints = wiring?.joints ?? []
  const coilFigure = coils === undefined ? undefined : figureOf(wiringDiagram(coils), 'drawing small wiring')
  const words = joints.length === 0 ? undefined : fold('How the coils are joined, in words', list(joints))
  return html`<div class="two">${picture}<div>${table('Conductors', columns, conductorRows(plan))}${coilFigure}${words}</div></div>`
}

export function wire(plan: PlanPaper): Html | undefined {
  const { wiring, coils, remedies } = plan
  if (wiring === undefined && coils === undefined) return undefined
  return chapter(
    plan,
    { id: 'wire', title: 'Wire', line: 'In the car, battery and fuse off.' },
    conductors(plan),
    remedies.length === 0 ? undefined : fold(`What would help the supply (${remedies.length})`, list(remedies)),
    stretches(plan, daysOf(plan, ['car']))
  )
}

export function switchOn(plan: PlanPaper): Html | undefined {
  const stages = stagesOf(plan)
  const minutes = stages.reduce((sum, stage) => sum + stage.minutes, 0)
  const line = `${durationText(minutes)}, in this order. Continue when the reading is right.`
  return chapter(plan, { id: 'switch-on', title: 'Switch on', line }, stretches(plan, stages))
}

/** Name and planned figure in sight; where the probes go, and what another figure means, folded. */
export function check(plan: PlanPaper): Html | undefined {
  const { card } = plan
  if (card.length === 0) return undefined
  const rows = card.map(({ what, how, planned, step, otherwise }, index) => {
    const more = [how, otherwise].filter(text => text !== '')
    const name = html`${opened(what)} <a href="#step-${step}" aria-label="step ${step}">${step}</a>`
    const folded = html`<details class="more"><summary>how</summary>${more.map(text => html`<p>${opened(text)}</p>`)}</details>`
    const field = html`<input type="text" aria-label="Your reading: ${what}" id="reading-${index + 1}">`
    const [expected, ...limits] = planned.split(', ')
    const read = html`${expected}${limits.map(each => html`<br>${each}`)}`
    return [more.length === 0 ? name : html`${name} ${folded}`, read, field]
  })
  const columns = [{ title: 'What' }, { title: 'Planned' }, { title: 'Yours' }]
  return chapter(
    plan,
    { id: 'check', title: 'Check', line: 'Write down what you read.' },
    table('Test card', columns, rows)
  )
}
