/** HTML as text: whatever is put into a page is escaped unless it was made here. */
export interface Html {
  readonly html: string
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;'
}
const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, character => entities[character] ?? '')

/** A drawing that our own writers put together; it has escaped what a caller wrote. */
export const drawn = (svg: string): Html => ({ html: svg })

export type Part = Html | string | number | undefined | readonly Part[]

function textOf(part: Part): string {
  if (part === undefined) return ''
  if (Array.isArray(part)) return part.map(textOf).join('')
  return typeof part === 'object' ? (part as Html).html : escapeHtml(String(part))
}

/** html`<p>${text}</p>`: strings are escaped, nested pieces stand as they are. */
export function html(pieces: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return { html: pieces.map((piece, at) => piece + textOf(parts[at])).join('') }
}

/** Running text of the contract: blank lines part paragraphs, backticks mark code. */
export function prose(text: string): readonly Html[] {
  return text.split(/\n{2,}/).map(paragraph => {
    const pieces = paragraph
      .split('`')
      .map((piece, at) => (at % 2 === 1 ? html`<code>${piece}</code>` : html`${piece}`))
    return html`<p>${pieces}</p>`
  })
}

/** Like prose, for a cell of a table. */
export function phrase(text: string): Html {
  return html`${text.split('`').map((piece, at) => (at % 2 === 1 ? html`<code>${piece}</code>` : html`${piece}`))}`
}

/** @param name  tells it from the other tables of a page, to who hears the page */
export function table(
  heads: readonly string[],
  rows: readonly (readonly Part[])[],
  name: string = heads.join(', ')
): Html {
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${name}"><table><thead><tr>${heads.map(
    head => html`<th scope="col">${head}</th>`
  )}</tr></thead><tbody>${rows.map(row => html`<tr>${row.map(cell => html`<td>${cell}</td>`)}</tr>`)}</tbody></table></div>`
}

export const code = (text: string, label: string): Html =>
  html`<pre tabindex="0" aria-label="${label}"><code>${text}</code></pre>`
