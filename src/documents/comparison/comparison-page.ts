/** Several designs on one page: what differs, which parameter does it, and the curves over each other. */
import type { Comparison } from '../../contract/enclosures/comparison.ts'
import type { LanguageCode } from '../../contract/sentences/words.ts'
import type { Caution } from '../../domain/caution.ts'
import { languages } from '../../domain/languages.ts'
import { type Language, told } from '../../domain/say.ts'
import { findingChart } from '../charts/finding-chart.ts'
import { html, type Part } from '../draw/html.ts'
import { htmlPage } from '../draw/html-page.ts'
import { across, cautionsOf, table } from '../plan/page/page-parts.ts'
import { pageStyle } from '../plan/page/page-style.ts'
import { comparisonFindings } from './comparison-charts.ts'
import { causeHeadings, causeRows, differingRows } from './comparison-rows.ts'

const columnsOf = (titles: readonly string[]) =>
  titles.map((title, index) => (index === 0 ? { title } : { title, figures: true as const }))

function figuresOf(comparison: Comparison, language: Language) {
  const rows = differingRows(comparison, language)
  if (rows.length === 0) return html`<p>${told(language, 'compare.no-difference')}</p>`
  const title = told(language, 'compare.what-differs')
  return across(title, table(title, columnsOf(['', ...comparison.designs.map(({ name }) => name)]), rows))
}

function causesOf(comparison: Comparison, language: Language) {
  const [first] = comparison.designs
  const columns = columnsOf(causeHeadings(comparison, language))
  return comparison.differences
    .filter(({ causes }) => causes.length > 0)
    .map(difference => {
      const caption = told(language, 'compare.against', { name: difference.name, first: first?.name ?? '' })
      return across(difference.name, table(caption, columns, causeRows(difference, language)))
    })
}

/** Each with the name of the design it is about. */
const cautionsByName = ({ designs }: Comparison, cautions: readonly Caution[]): readonly Caution[] =>
  cautions.map(each => {
    const name = designs[Number(each.at?.match(/^designs\[(\d+)\]/)?.[1])]?.name
    return name === undefined ? each : { ...each, message: `${name}: ${each.message}` }
  })

export function comparisonPage(comparison: Comparison, cautions: readonly Caution[], code: LanguageCode): string {
  const language = languages[code]
  const title = comparison.designs.map(({ name }) => name).join(', ')
  const heard = comparison.place === 'seat' ? 'compare.heard-seat' : 'compare.heard-half-space'
  const charts = comparisonFindings(comparison, language).map(findingChart)
  const part = (name: string, content: Part) =>
    html`<section><div class="name"><h2>${name}</h2></div><div class="body">${content}</div></section>`
  return htmlPage(
    { language: code, title, style: pageStyle },
    html`<main>
<h1>${told(language, 'compare.title')}</h1>
<p class="sentence">${told(language, heard, { designs: title })}</p>
${part(told(language, 'compare.figures'), figuresOf(comparison, language))}
${part(told(language, 'compare.curves'), html`<div class="two">${charts}</div>`)}
${part(told(language, 'compare.causes'), html`<p>${told(language, 'compare.causes-text')}</p>${causesOf(comparison, language)}`)}
${part(told(language, 'compare.cautions'), cautionsOf(cautionsByName(comparison, cautions), language))}
</main>`
  )
}
