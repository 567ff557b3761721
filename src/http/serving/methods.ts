/** A known path answers a wrong method with 405 and the list of right ones, never with 404; OPTIONS says them. */

import type { FastifyInstance, HTTPMethods } from 'fastify'
import { say } from '../../domain/say.ts'
import { refuse } from './problems.ts'

const everyMethod: readonly HTTPMethods[] = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'TRACE']

/** Call {@link refuseOtherMethods} after the last route; this one before the first. */
export function watchMethods(app: FastifyInstance): Map<string, Set<string>> {
  const methodsByUrl = new Map<string, Set<string>>()
  app.addHook('onRoute', route => {
    const methods = methodsByUrl.get(route.url) ?? new Set<string>()
    for (const method of [route.method].flat()) methods.add(method)
    methodsByUrl.set(route.url, methods)
  })
  return methodsByUrl
}

export function refuseOtherMethods(app: FastifyInstance, methodsByUrl: ReadonlyMap<string, ReadonlySet<string>>): void {
  for (const [url, methods] of [...methodsByUrl]) {
    if (url.includes('*')) continue
    const allow = [...new Set([...methods, 'OPTIONS'])].sort().join(', ')
    const schema = { hide: true }
    if (!methods.has('OPTIONS')) {
      app.options(url, { schema }, (_request, reply) => reply.code(204).header('allow', allow).send())
    }
    app.route({
      url,
      method: everyMethod.filter(method => !methods.has(method)),
      schema,
      handler: (request, reply) =>
        refuse(request, reply.header('allow', allow), 'method-not-allowed', say('service.methods', { methods: allow }))
    })
  }
}
