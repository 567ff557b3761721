/** What it will do, and the work: see, build, wire, switch on, check. */
import { told } from '../../../domain/say.ts'
import { findingChart } from '../../charts/finding-chart.ts'
import { limitCharts } from '../../charts/plan-charts.ts'
import { type Html, html } from '../../draw/html.ts'
import { durationText, opened, type Reader, shortUnit } from '../../draw/number-text.ts'
import { systemWiring } from '../../wiring/system-wiring.ts'
import { wiringDiagram } from '../../wiring/wiring-diagram.ts'
import { daysOf, stagesOf } from '../paper-steps.ts'
import type { PaperOptions, PlanPaper } from '../plan-paper.ts'
import { conductorRows } from '../plan-rows.ts'
import { waysTable } from '../ways-rows.ts'
import { across, chapter, figureOf, fold, list, phoneFold, table } from './page-parts.ts'
import { stretches } from './page-steps.ts'

export function see(plan: PlanPaper): Html | undefined {
  const { curves, cover, language } = plan
  const shown = curves === undefined ? [] : limitCharts(cover, curves, language).map(findingChart)
  const two = shown.length === 0 ? undefined : html`<div class="two">${shown}</div>`
  const others =
    plan.others.length === 0
      ? undefined
      : fold(told(language, 'paper.others-count', { count: plan.others.length }), list(plan.others))
  const head = { id: 'see', title: told(language, 'paper.see'), line: told(language, 'paper.see.line') } as const
  return chapter(plan, head, two, others, whatMoves(plan))
}

function whatMoves({ headroom, whatIf: { headings, rows }, language }: PlanPaper): Html | undefined {
  if (rows.length === 0) return undefined
  const columns = headings.map((title, index) => (index === 0 ? { title } : { title, figures: true as const }))
  const name = told(language, 'paper.what-if.change')
  const cost = headroom === undefined ? undefined : html`<p>${headroom}</p>`
  return fold(
    told(language, 'paper.limits-and-moves'),
    cost,
    across(name, table(told(language, 'paper.what-if'), columns, rows))
  )
}

function otherWays(order: NonNullable<PlanPaper['buildOrder']>, paper: Reader): Html {
  const { language } = paper
  const { headings, rows } = waysTable(order, paper)
  const columns = headings.map((title, index) => (index === 0 ? { title } : { title, figures: true as const }))
  const caption = told(language, 'paper.ways.caption', { unit: shortUnit(paper) })
  const tools = order.ways.find(({ taken }) => taken)?.tools ?? []
  const needed = html`<p>${told(language, 'paper.ways.tools', { all: tools.join(', ') })}</p>`
  return fold(told(language, 'paper.ways.title'), table(caption, columns, rows), needed)
}

export function build(plan: PlanPaper, { paper }: PaperOptions): Html | undefined {
  const { buildOrder, language } = plan
  if (buildOrder === undefined) return undefined
  const duration = durationText(buildOrder.workMinutes, plan)
  const line = told(language, 'paper.build.line', { duration, dayCount: buildOrder.days.length })
  const days = stretches(plan, daysOf(plan, ['table', 'bench']))
  return chapter(plan, { id: 'build', title: told(language, 'paper.build'), line }, otherWays(buildOrder, paper), days)
}

/** Picture, table and coils: what an electrician looks at before anything else. */
function conductors(plan: PlanPaper): Html {
  const { wiring, coils, language } = plan
  const columns = [
    { title: told(language, 'paper.count') },
    { title: told(language, 'paper.what') },
    { title: told(language, 'paper.size') },
    { title: told(language, 'paper.run'), figures: true as const },
    { title: told(language, 'paper.facts.fuse'), figures: true as const }
  ]
  const picture =
    wiring === undefined
      ? undefined
      : html`<div>${figureOf(systemWiring(wiring), 'drawing small wiring')}<p class="quiet">${told(language, 'paper.legend')}</p>${wiring.notDrawn.map(what => html`<p class="barrier">${told(language, 'paper.not-drawn', { what })}</p>`)}</div>`
  const joints = wiring?.joints ?? []
  const coilFigure =
    coils === undefined
      ? undefined
      : phoneFold(told(language, 'paper.joints-picture'), figureOf(wiringDiagram(coils), 'drawing small wiring'))
  const words = joints.length === 0 ? undefined : fold(told(language, 'paper.joints'), list(joints))
  return html`<div class="two">${picture}<div>${table(told(language, 'paper.conductors'), columns, conductorRows(plan))}${coilFigure}${words}</div></div>`
}

export function wire(plan: PlanPaper): Html | undefined {
  const { wiring, coils, remedies, language } = plan
  if (wiring === undefined && coils === undefined) return undefined
  return chapter(
    plan,
    { id: 'wire', title: told(language, 'paper.wire'), line: told(language, 'paper.wire.line') },
    conductors(plan),
    remedies.length === 0
      ? undefined
      : fold(told(language, 'paper.supply-help-count', { count: remedies.length }), list(remedies)),
    stretches(plan, daysOf(plan, ['car']))
  )
}

export function switchOn(plan: PlanPaper): Html | undefined {
  const stages = stagesOf(plan)
  const minutes = stages.reduce((sum, stage) => sum + stage.minutes, 0)
  const line = told(plan.language, 'paper.switch-on.line', { duration: durationText(minutes, plan) })
  return chapter(
    plan,
    { id: 'switch-on', title: told(plan.language, 'paper.switch-on'), line },
    stretches(plan, stages)
  )
}

type CardRow = PlanPaper['card'][number]

/** Name and planned figure in sight; where the probes go, and what another figure means, folded. */
function cardTable(rows: readonly (readonly [CardRow, number])[], { language }: PlanPaper): Html {
  const cells = rows.map(([{ what, how, planned, step, otherwise }, index]) => {
    const more = [how, otherwise].filter(text => text !== '')
    const name = html`${opened(what)} <a href="#step-${step}" aria-label="${told(language, 'paper.step-of', { number: step })}">${step}</a>`
    const folded = html`<details class="more"><summary>${told(language, 'paper.check.how')}</summary>${more.map(text => html`<p>${opened(text)}</p>`)}</details>`
    const field = html`<input type="text" aria-label="${told(language, 'paper.check.your-reading', { what })}" id="reading-${index + 1}">`
    const [expected, ...limits] = planned.split(', ')
    const read = html`${expected}${limits.map(each => html`<br>${each}`)}`
    return [more.length === 0 ? name : html`${name} ${folded}`, read, field]
  })
  const columns = [
    { title: told(language, 'paper.what') },
    { title: told(language, 'paper.check.planned') },
    { title: told(language, 'paper.check.yours') }
  ]
  return table(told(language, 'paper.check.card'), columns, cells)
}

/** The card by the stretches of switching on: on a phone one is filled in at a time. */
export function check(plan: PlanPaper): Html | undefined {
  const { card, language } = plan
  if (card.length === 0) return undefined
  const all = card.map((row, index) => [row, index] as const)
  const parts = stagesOf(plan).flatMap(({ title, steps }) => {
    const rows = all.filter(([{ step }]) => steps.some(({ number }) => number === step))
    const line = `${title}: ${told(language, 'paper.reading-count', { count: rows.length })}`
    return rows.length === 0 ? [] : [phoneFold(line, cardTable(rows, plan))]
  })
  return chapter(
    plan,
    { id: 'check', title: told(language, 'paper.check'), line: told(language, 'paper.check.line') },
    html`${parts}`
  )
}
