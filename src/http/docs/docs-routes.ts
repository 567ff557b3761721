/** /docs: the guide and the generated reference, from this service alone, under a policy that lets nothing else in. */
import type { FastifyInstance } from 'fastify'
import type { ContractDocument } from '../openapi/reading.ts'
import { planStyleHash } from '../serving/operations/page-policy.ts'
import { builtText } from '../serving/representation/fixed-file.ts'
import { type FixedText, fixedText, sendFixed } from '../serving/representation/fixed-text.ts'
import type { Settings } from '../serving/settings.ts'
import { guideChapters } from './guide.ts'
import { tableChapters } from './guide-tables.ts'
import { page } from './page.ts'
import { referenceChapters } from './reference.ts'
import { style } from './style.ts'
import { tryIt } from './try-it.ts'

/** What a form shows of an answer is a blob; a page in a frame takes this policy over, so its own style must be known here. */
const policy = `default-src 'none'; style-src 'self' 'sha256-${planStyleHash}'; script-src 'self'; connect-src 'self'; img-src 'self' data: blob:; frame-src blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`

interface Served {
  readonly path: string
  readonly type: string
  readonly text: (base: string) => string | Promise<string>
  /** Shows the address it was asked at. */
  readonly byHost?: boolean
}

export function registerDocs(app: FastifyInstance, settings: Settings): void {
  const html = 'text/html; charset=utf-8'
  const guide = (base: string) =>
    page({
      title: 'Guide to Cabinbass',
      here: '/docs',
      chapters: [...guideChapters(base), ...tableChapters(settings)]
    })
  const reference = async () => {
    const built = builtText('/docs/reference')
    if (built !== undefined) return built
    const document: ContractDocument = JSON.parse((await app.contract()).json)
    return page({ title: 'Reference', here: '/docs/reference', chapters: referenceChapters(document) })
  }
  const served: readonly Served[] = [
    { path: '/docs', type: html, text: guide, byHost: true },
    { path: '/docs/reference', type: html, text: reference },
    { path: '/docs/style.css', type: 'text/css; charset=utf-8', text: () => style },
    { path: '/docs/try-it.js', type: 'text/javascript; charset=utf-8', text: () => tryIt }
  ]
  for (const { path, type, text, byHost = false } of served) {
    let kept: FixedText | undefined
    app.get(path, { schema: { hide: true } }, async (request, reply) => {
      const base = `${request.protocol}://${request.host}${app.basePath}`
      const found = kept ?? fixedText(path, await text(base))
      if (!byHost) kept = found
      reply.header('content-security-policy', policy)
      return sendFixed(request, reply, found, { shared: !byHost, type })
    })
  }
}
