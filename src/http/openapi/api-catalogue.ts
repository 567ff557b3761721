/** Where a program that knows only the host finds the rest: /.well-known/api-catalog, and links on what calculates. */
import type { FastifyInstance } from 'fastify'
import { fixedText, sendFixed } from '../serving/representation/fixed-text.ts'

const PATH = '/.well-known/api-catalog'

/** @source RFC 9727 §2, RFC 9264 §4.2, RFC 8631 §4 (from memory): a set of links, whose relations say description, manual and state */
const linkset = {
  linkset: [
    {
      anchor: '/v1',
      'service-desc': [
        { href: '/openapi.yaml', type: 'application/yaml' },
        { href: '/openapi.json', type: 'application/json' }
      ],
      'service-doc': [{ href: '/docs', type: 'text/html' }],
      status: [{ href: '/health/ready', type: 'application/json' }]
    }
  ]
}

export function apiCatalogue(app: FastifyInstance): void {
  const text = fixedText(PATH, JSON.stringify(linkset))
  const type = 'application/linkset+json; profile="https://www.rfc-editor.org/info/rfc9727"'
  app.get(PATH, { schema: { hide: true } }, async (request, reply) => {
    reply.header('link', `<${PATH}>; rel="api-catalog"`)
    return sendFixed(request, reply, text, { shared: true, type })
  })
}
