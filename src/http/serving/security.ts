/** Headers that keep a browser from doing more with an answer than it was meant for; CORS where it is configured. */
import cors from '@fastify/cors'
import type { FastifyInstance } from 'fastify'
import type { Settings } from './settings.ts'

/**
 * On every answer, also where no hook runs, see server.ts. Written out: a plugin that makes them anew for each request took a
 * tenth of a small one. Strict-Transport-Security is the gateway's, for the service speaks plain HTTP behind it.
 *
 * @source OWASP Secure Headers Project (from memory)
 */
export const plainHeaders = {
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'",
  'cross-origin-opener-policy': 'same-origin',
  // Drawings are meant to be shown on a shop's own page.
  'cross-origin-resource-policy': 'cross-origin',
  'origin-agent-cluster': '?1',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-dns-prefetch-control': 'off',
  'x-download-options': 'noopen',
  // Says to browsers that know no frame-ancestors what that says.
  'x-frame-options': 'DENY',
  'x-permitted-cross-domain-policies': 'none',
  'x-xss-protection': '0'
} as const

/** What a script on another origin may read. */
const exposed = [
  'ETag',
  'Retry-After',
  'RateLimit',
  'RateLimit-Policy',
  'X-Request-Id',
  'Deprecation',
  'Sunset',
  'Link'
]

export async function registerSecurity(app: FastifyInstance, { corsOrigins }: Settings): Promise<void> {
  app.addHook('onRequest', (request, reply, done) => {
    reply.headers(plainHeaders).header('x-request-id', request.id)
    done()
  })
  if (corsOrigins.length === 0) return
  await app.register(cors, {
    origin: corsOrigins.includes('*') ? '*' : [...corsOrigins],
    methods: ['GET', 'HEAD', 'POST'],
    allowedHeaders: ['Content-Type', 'X-Api-Key', 'X-Request-Id', 'If-None-Match'],
    exposedHeaders: exposed,
    maxAge: 86_400,
    strictPreflight: false
  })
}
