/** The frame around every page of the documentation. */
import { type Html, html } from '../../documents/draw/html.ts'
import { htmlPage } from '../../documents/draw/html-page.ts'
import { version } from '../wire/answer/version.ts'

export interface Chapter {
  readonly id: string
  readonly title: string
  readonly body: Html
  /** Places inside the chapter worth a line in the contents. */
  readonly entries?: readonly { readonly id: string; readonly title: string }[]
}

interface Page {
  readonly title: string
  readonly here: '/docs' | '/docs/reference'
  readonly chapters: readonly Chapter[]
}

const places = [
  ['/docs', 'Guide'],
  ['/docs/reference', 'Reference'],
  ['/openapi.yaml', 'openapi.yaml']
] as const

const item = (id: string, name: string, inner?: Html) => html`<li><a href="#${id}">${name}</a>${inner}</li>`

function contentsOf({ id, title, entries = [] }: Chapter): Html {
  if (entries.length === 0) return item(id, title)
  return item(id, title, html`<ul>${entries.map(entry => item(entry.id, entry.title))}</ul>`)
}

const sectionOf = ({ id, title, body }: Chapter) =>
  html`<section id="${id}" aria-labelledby="${id}-title"><h2 id="${id}-title">${title}</h2>${body}</section>`

export function page({ title, here, chapters }: Page): string {
  const top = places.map(
    ([href, name]) => html`<a href="${href}"${href === here ? html` aria-current="page"` : undefined}>${name}</a>`
  )
  const links = html`
<link rel="icon" href="data:,">
<link rel="stylesheet" href="/docs/style.css">
<script src="/docs/try-it.js" defer></script>`
  return htmlPage(
    { language: 'en', title, links },
    html`<a class="skip" href="#content">Skip to the content</a>
<header><p class="name">Cabinbass <span>${version}</span></p><nav aria-label="Pages">${top}</nav></header>
<div class="frame">
<nav class="contents" aria-label="On this page"><div class="search" hidden><label>Search this page <input type="search" id="search" autocomplete="off"></label><ul id="found" aria-live="polite"></ul></div><details open><summary>On this page</summary><ul>${chapters.map(contentsOf)}</ul></details></nav>
<main id="content"><h1>${title}</h1>${chapters.map(sectionOf)}</main>
</div>`
  )
}
