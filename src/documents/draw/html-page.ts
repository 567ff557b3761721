/** A whole page: the head that all of ours have, and what is in it. */
import { drawn, type Html, html } from './html.ts'

interface PageHead {
  /** Tag of the language it is in (RFC 5646). */
  readonly language: string
  readonly title: string
  readonly description?: string
  /** Its one style sheet, where it stands in the page; the content policy knows it by its hash. */
  readonly style?: string
  /** Lines of a page that fetches what it needs. */
  readonly links?: Html
}

export const htmlPage = ({ language, title, description, style, links }: PageHead, body: Html): string =>
  html`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">${
    description === undefined
      ? undefined
      : html`
<meta name="description" content="${description}">`
  }
<title>${title}</title>${
    style === undefined
      ? undefined
      : html`
<style>${drawn(style)}</style>`
  }${links}
</head>
<body>
${body}
</body>
</html>
`.html
