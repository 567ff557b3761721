/** The first page: what it is, whether it can be built, six figures, the level, what was asked, what to know first. */
import type { FirstCaution } from '../../../contract/systems/plan-cover.ts'
import { type Language, told } from '../../../domain/say.ts'
import { findingChart } from '../../charts/finding-chart.ts'
import { levelChart } from '../../charts/plan-charts.ts'
import { type Html, html } from '../../draw/html.ts'
import type { Reader } from '../../draw/number-text.ts'
import { bootPicture } from '../boot-picture.ts'
import { imprintTexts, type PaperOptions, type PlanPaper, verdictText } from '../plan-paper.ts'
import { askedRows } from '../plan-rows.ts'
import { figureOf, fold, list, table } from './page-parts.ts'

function picture({ box, cover: { asked } }: PlanPaper, { paper }: PaperOptions): Html | undefined {
  if (box === undefined || asked === undefined) return undefined
  const svg = bootPicture(box, asked.space, paper)
  return svg === undefined ? undefined : figureOf(svg, 'drawing boot')
}

function verdict(plan: PlanPaper): Html {
  const { verdict: kind, reasons } = plan
  const { mark, title, text } = verdictText(plan)
  return html`<div class="verdict ${kind}"><span class="mark" aria-hidden="true">${mark}</span><div><p class="great">${title}</p><p>${text}</p>${list(reasons)}</div></div>`
}

const figures = ({ figures: six }: PlanPaper): Html | undefined =>
  six.length === 0
    ? undefined
    : html`<dl class="six">${six.map(
        ({ value, unit, note }) => html`<div><dt>${note}</dt><dd><b>${value}</b>&nbsp;${unit}</dd></div>`
      )}</dl>`

/** Where nothing fits: what was tried and what each lacked, in place of the six figures. */
const misses = ({ nearest, ways, language }: PlanPaper): Html | undefined =>
  nearest.length === 0
    ? undefined
    : html`${ways.length === 0 ? undefined : html`<h2>${told(language, 'paper.ways')}</h2>${list(ways)}`}<h2>${told(language, 'paper.nearest')}</h2><dl class="misses">${nearest.map(({ name, why }) => html`<div><dt>${name}</dt><dd>${why}</dd></div>`)}</dl>`

function askedTable(plan: PlanPaper, paper: Reader): Html | undefined {
  const { language } = plan
  const all = askedRows(plan, paper)
  const rows = all.map(({ what, was, is, kept }) => [
    what,
    was,
    kept ? is : html`<span class="missed">${told(language, 'paper.not-as-asked', { value: is })}</span>`
  ])
  if (rows.length === 0) return undefined
  const columns = [
    { title: told(language, 'paper.what') },
    { title: told(language, 'paper.asked') },
    { title: told(language, 'paper.built') }
  ]
  const shown = table(told(language, 'paper.asked-and-built'), columns, rows)
  return all.every(({ kept }) => kept)
    ? html`<div>${fold(told(language, 'paper.nothing-differs'), shown)}</div>`
    : shown
}

/** Clause, sentence, and where in the work it counts. */
function cautionItem({ clause, sentence, step }: FirstCaution, language: Language): Html {
  const at =
    step === undefined
      ? undefined
      : html` <a href="#step-${step}">${told(language, 'paper.step-of', { number: step })}</a>`
  return html`<li><b>${clause}.</b> ${sentence}${at}</li>`
}

const cautions = ({ cover: { pageOne }, language }: PlanPaper): Html | undefined =>
  pageOne.length === 0
    ? undefined
    : html`<section class="first" aria-labelledby="cautions"><h2 id="cautions">${told(language, 'paper.peculiar')}</h2><ul class="cautions">${pageOne.map(each => cautionItem(each, language))}</ul></section>`

export function cover(plan: PlanPaper, options: PaperOptions): Html {
  const level = plan.curves === undefined ? undefined : levelChart(plan.cover, plan.curves, plan.language)
  const asked = askedTable(plan, options.paper)
  const { issue, rights } = imprintTexts(options)
  const head =
    issue + rights === '' ? undefined : html`<p class="imprint"><span>${issue}</span><span>${rights}</span></p>`
  return html`<header>${head}<h1>${plan.title}</h1><p class="sentence">${plan.cover.sentence}</p></header>
<div class="cover">${picture(plan, options)}<div class="facts">${verdict(plan)}${figures(plan)}${misses(plan)}</div></div>
${level === undefined && asked === undefined ? undefined : html`<div class="cover">${level === undefined ? undefined : findingChart(level)}${asked}</div>`}
${cautions(plan)}`
}
