/** Headers that keep a browser from doing more with an answer than it was meant for; CORS where it is configured. */
import cors from '@fastify/cors'
import helmet from '@fastify/helmet'
import type { FastifyInstance } from 'fastify'
import type { Settings } from './settings.ts'

/** Also sent where no plugin runs, see server.ts. */
export const plainHeaders = {
  'x-content-type-options': 'nosniff',
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'"
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
  app.addHook('onRequest', async (request, reply) => {
    reply.header('x-request-id', request.id)
  })
  if (corsOrigins.length > 0) {
    await app.register(cors, {
      origin: corsOrigins.includes('*') ? '*' : [...corsOrigins],
      methods: ['GET', 'HEAD', 'POST'],
      allowedHeaders: ['Content-Type', 'X-Api-Key', 'X-Request-Id', 'If-None-Match'],
      exposedHeaders: exposed,
      maxAge: 86_400,
      strictPreflight: false
    })
  }
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] }
    },
    // Says to browsers that know no frame-ancestors what that says.
    frameguard: { action: 'deny' },
    // Drawings are meant to be shown on a shop's own page.
    crossOriginResourcePolicy: { policy: 'cross-origin' },
    // The service speaks plain HTTP behind a gateway, which owns this header.
    strictTransportSecurity: false
  })
}
