/** The whole plan as one page: no script, nothing fetched, one style element that the content policy knows by its hash. */
import { told } from '../../../domain/say.ts'
import { html } from '../../draw/html.ts'
import { htmlPage } from '../../draw/html-page.ts'
import { calculationText, type PaperOptions, type PlanPaper } from '../plan-paper.ts'
import { buy, cut } from './page-buy-cut.ts'
import { cover } from './page-cover.ts'
import { lookUp } from './page-look-up.ts'
import { pageStyle } from './page-style.ts'
import { build, check, see, switchOn, wire } from './page-work.ts'

export function planPage(plan: PlanPaper, options: PaperOptions): string {
  const { language } = plan
  const parts = [
    ['see', see(plan)],
    ['buy', buy(plan)],
    ['cut', cut(plan, options)],
    ['build', build(plan, options)],
    ['wire', wire(plan)],
    ['switch-on', switchOn(plan)],
    ['check', check(plan)]
  ] as const
  const there = parts.filter(([, content]) => content !== undefined)
  const bar =
    there.length === 0
      ? undefined
      : html`<nav aria-label="${told(language, 'paper.parts')}"><ul>${there.map(([id]) => html`<li><a href="#${id}">${told(language, `paper.${id}`)}</a></li>`)}</ul></nav>`
  const link = options.imprint?.link
  const cited = calculationText(options)
  const again =
    link === undefined ? undefined : html`<p>${told(language, 'paper.again')} <a href="${link}">${link}</a></p>`
  return htmlPage(
    { language: language.tag, title: plan.title, style: pageStyle },
    html`<a class="skip" href="#main">${told(language, 'paper.skip')}</a>
<main id="main">
${cover(plan, options)}
${bar}
${there.map(([, content]) => content)}
${lookUp(
  plan,
  options,
  there.map(([id]) => id)
)}
</main>
<footer><p>${told(language, 'paper.end')}</p>${cited === undefined ? undefined : html`<p>${cited}</p>`}${again}</footer>`
  )
}
