/** A region of drivers as a page: for a phone in front of a shelf. */
import type { LanguageCode } from '../../contract/sentences/words.ts'
import type { DriverRegion } from '../../contract/systems/driver-region.ts'
import { languages } from '../../domain/languages.ts'
import { told } from '../../domain/say.ts'
import { html, type Part } from '../draw/html.ts'
import { htmlPage } from '../draw/html-page.ts'
import { across, table } from '../plan/page/page-parts.ts'
import { pageStyle } from '../plan/page/page-style.ts'
import { builtTable, lookForTable, type RegionTable, regionTexts, takenRows } from './region-rows.ts'

const columnsOf = (headings: readonly string[], wordsTo: number) =>
  headings.map((title, at) => (at <= wordsTo ? { title } : { title, figures: true as const }))

/** Words in one line: the table moves sideways by itself. */
const unbroken = (row: readonly string[], wordsTo: number) =>
  row.map((cell, at) => (at <= wordsTo ? cell.replaceAll(' ', '\u00a0') : cell))

const tableOf = (caption: string, { headings, rows }: RegionTable) => table(caption, columnsOf(headings, 0), rows)

const wideTableOf = (caption: string, { headings, rows }: RegionTable, wordsTo: number) =>
  across(
    caption,
    table(
      caption,
      columnsOf(headings, wordsTo),
      rows.map(row => unbroken(row, wordsTo))
    )
  )

export function regionPage(region: DriverRegion, code: LanguageCode): string {
  const language = languages[code]
  const texts = regionTexts(region, language)
  const part = (name: string, content: Part) =>
    html`<section><div class="name"><h2>${name}</h2></div><div class="body">${content}</div></section>`
  const taken = { headings: ['', ''], rows: takenRows(region, language) }
  return htmlPage(
    { language: code, title: texts.title, style: pageStyle },
    html`<main>
<h1>${texts.title}</h1>
<p class="sentence">${texts.region}</p>
<p>${texts.wish}</p>
${part(told(language, 'region.part.shelf'), html`${tableOf(texts.lookFor, lookForTable(region, language))}<p>${texts.together}</p>`)}
${part(told(language, 'region.part.boxes'), html`<p>${texts.builtText}</p>${wideTableOf(texts.built, builtTable(region, language), 1)}`)}
${part(told(language, 'region.part.assumed'), html`${tableOf(texts.taken, taken)}<p>${texts.next}</p>`)}
</main>`
  )
}
