/** The whole plan as one page: no script, nothing fetched, one style element that the content policy knows by its hash. */
import { drawn, type Html, html } from '../../draw/html.ts'
import { calculationText, type PaperOptions, type PlanPaper } from '../plan-paper.ts'
import { buy, cut } from './page-buy-cut.ts'
import { cover } from './page-cover.ts'
import { lookUp } from './page-look-up.ts'
import { pageStyle } from './page-style.ts'
import { build, check, see, switchOn, wire } from './page-work.ts'

const END =
  'Computed from what was entered; measure before you cut, and follow local codes. Work at the battery, the fuse and the fastening in the car belongs to someone who knows it.'

export function planPage(plan: PlanPaper, options: PaperOptions): string {
  const parts: readonly (readonly [id: string, name: string, content: Html | undefined])[] = [
    ['see', 'See', see(plan)],
    ['buy', 'Buy', buy(plan)],
    ['cut', 'Cut', cut(plan, options)],
    ['build', 'Build', build(plan, options)],
    ['wire', 'Wire', wire(plan)],
    ['switch-on', 'Switch on', switchOn(plan)],
    ['check', 'Check', check(plan)]
  ]
  const there = parts.filter(([, , content]) => content !== undefined)
  const bar =
    there.length === 0
      ? undefined
      : html`<nav aria-label="Parts of the plan"><ul>${there.map(([id, name]) => html`<li><a href="#${id}">${name}</a></li>`)}</ul></nav>`
  const link = options.imprint?.link
  const cited = calculationText(options)
  const again = link === undefined ? undefined : html`<p>Make this plan again: <a href="${link}">${link}</a></p>`
  return html`<!doctype html>
<html lang="${options.language ?? 'en'}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${plan.title}</title>
<style>${drawn(pageStyle)}</style>
</head>
<body>
<a class="skip" href="#main">Skip to the plan</a>
<main id="main">
${cover(plan, options)}
${bar}
${there.map(([, , content]) => content)}
${lookUp(
  plan,
  options,
  there.map(([id]) => id)
)}
</main>
<footer><p>${END}</p>${cited === undefined ? undefined : html`<p>${cited}</p>`}${again}</footer>
</body>
</html>
`.html
}
