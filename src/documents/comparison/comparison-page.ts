/** Several designs on one page: what differs, which parameter does it, and the curves over each other. */
import type { Comparison } from '../../contract/enclosures/comparison.ts'
import type { Caution } from '../../domain/caution.ts'
import { findingChart } from '../charts/finding-chart.ts'
import { drawn, html } from '../draw/html.ts'
import { cautionsOf, table } from '../plan/page/page-parts.ts'
import { pageStyle } from '../plan/page/page-style.ts'
import { comparisonFindings } from './comparison-charts.ts'
import { causeHeadings, causeRows, differingRows } from './comparison-rows.ts'

const CAUSES =
  'Each row puts one parameter of the other design, alone, into the first; “last of all” is what it does in the other design, where all the rest is changed already. The single changes need not add up: a port that suits one volume does not suit another.'

const columnsOf = (titles: readonly string[]) =>
  titles.map((title, index) => (index === 0 ? { title } : { title, figures: true as const }))

function figuresOf(comparison: Comparison) {
  const rows = differingRows(comparison)
  if (rows.length === 0) return html`<p>They differ in nothing that can be heard or measured.</p>`
  return html`<div class="across" tabindex="0" role="region" aria-label="What differs">${table('What differs', columnsOf(['', ...comparison.designs.map(({ name }) => name)]), rows)}</div>`
}

const causesOf = (comparison: Comparison) =>
  comparison.differences
    .filter(({ causes }) => causes.length > 0)
    .map(
      difference =>
        html`<div class="across" tabindex="0" role="region" aria-label="${difference.name}">${table(`${difference.name} against ${comparison.designs[0]?.name}`, columnsOf(causeHeadings(comparison)), causeRows(difference))}</div>`
    )

/** Each with the name of the design it is about. */
const cautionsByName = ({ designs }: Comparison, cautions: readonly Caution[]): readonly Caution[] =>
  cautions.map(each => {
    const name = designs[Number(each.at?.match(/^designs\[(\d+)\]/)?.[1])]?.name
    return name === undefined ? each : { ...each, message: `${name}: ${each.message}` }
  })

export function comparisonPage(comparison: Comparison, cautions: readonly Caution[]): string {
  const title = comparison.designs.map(({ name }) => name).join(', ')
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${drawn(pageStyle)}</style>
</head>
<body>
<main>
<h1>Designs side by side</h1>
<p class="sentence">${title}; heard ${comparison.place === 'seat' ? 'at the seat' : 'at 1 m in half space'}.</p>
<section><div class="name"><h2>Figures</h2></div><div class="body">${figuresOf(comparison)}</div></section>
<section><div class="name"><h2>Curves</h2></div><div class="body"><div class="two">${comparisonFindings(comparison).map(findingChart)}</div></div></section>
<section><div class="name"><h2>Causes</h2></div><div class="body"><p>${CAUSES}</p>${causesOf(comparison)}</div></section>
<section><div class="name"><h2>Cautions</h2></div><div class="body">${cautionsOf(cautionsByName(comparison, cautions))}</div></section>
</main>
</body>
</html>
`.html
}
