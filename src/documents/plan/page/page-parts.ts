/** What every part of a page is made of: its frame, tables that stay tables on a phone, drawings, cautions, folds. */
import type { PlanChapter } from '../../../contract/systems/words.ts'
import { type Caution, gravestFirst } from '../../../domain/caution.ts'
import { type Language, told } from '../../../domain/say.ts'
import { drawn, type Html, html, type Part } from '../../draw/html.ts'
import type { PlanPaper } from '../plan-paper.ts'

interface Column {
  readonly title: string
  readonly figures?: true
}

export function table(caption: string, columns: readonly Column[], rows: readonly (readonly Part[])[]): Html {
  const look = (index: number) => (columns[index]?.figures ? html` class="figures"` : undefined)
  const cell = (content: Part, index: number) =>
    index === 0 ? html`<th scope="row">${content}</th>` : html`<td${look(index)}>${content}</td>`
  return html`<table><caption>${caption}</caption><thead><tr>${columns.map(
    ({ title }, index) => html`<th scope="col"${look(index)}>${title}</th>`
  )}</tr></thead><tbody>${rows.map(row => html`<tr>${row.map(cell)}</tr>`)}</tbody></table>`
}

/** A table that a phone has no room for: moved sideways by itself. */
export const across = (name: string, wide: Html): Html =>
  html`<div class="across" tabindex="0" role="region" aria-label="${name}">${wide}</div>`

export const list = (items: readonly string[]): Html | undefined =>
  items.length === 0 ? undefined : html`<ul>${items.map(item => html`<li>${item}</li>`)}</ul>`

export const fold = (line: string, ...content: readonly Part[]): Html =>
  html`<details><summary>${line}</summary>${content}</details>`

/** Folded on a phone, where one is wanted at a time; open wherever there is room. */
export const phoneFold = (line: string, ...content: readonly Part[]): Html =>
  html`<details class="desk"><summary>${line}</summary>${content}</details>`

export const figureOf = (svg: string, className = 'drawing'): Html =>
  html`<figure class="${className}">${drawn(svg)}</figure>`

/** What prevents harm stands open; what is only good to know is folded. */
export function cautionsOf(cautions: readonly Caution[], language: Language): Html | undefined {
  if (cautions.length === 0) return undefined
  const grave = gravestFirst(cautions).filter(isGrave)
  const light = cautions.filter(each => !isGrave(each))
  const title = told(language, 'paper.good-to-know', { count: light.length })
  const folded = light.length === 0 ? undefined : fold(title, list(light.map(({ message }) => message)))
  return html`${grave.map(({ message }) => html`<p class="barrier">${message}</p>`)}${folded}`
}

/** A note that keeps hands away from something is no look-up. */
const isGrave = ({ level, code }: Caution) => level !== 'note' || code === 'high-voltage-orange'

interface Chapter {
  readonly id: PlanChapter | 'look-up'
  readonly title: string
  readonly line: string
}

/** The name of a part beside its content and what to know of it; nothing where the plan has none. */
export function chapter(
  { chapterCautions, language }: PlanPaper,
  { id, title, line }: Chapter,
  ...content: readonly (Html | undefined)[]
): Html | undefined {
  if (content.every(each => each === undefined)) return undefined
  const cautions = id === 'look-up' ? undefined : cautionsOf(chapterCautions.get(id) ?? [], language)
  return html`<section id="${id}" aria-labelledby="${id}-t"><div class="name"><h2 id="${id}-t">${title}</h2><p>${line}</p></div><div class="body">${content}${cautions}</div></section>`
}
