/** What Node would answer without a document: a request without its Host, with two, or with an expectation it does not know. */

import type { FastifyInstance } from 'fastify'
import { say } from '../../domain/say.ts'
import { Refusal } from '../wire/problem/refusal.ts'

/** @param rawHeaders  names and values in turns */
function hostsAmong(rawHeaders: readonly string[]): number {
  let hosts = 0
  for (let at = 0; at < rawHeaders.length; at += 2) {
    const name = rawHeaders[at] ?? ''
    if (name.length === 4 && name.toLowerCase() === 'host') hosts++
  }
  return hosts
}

/** @source RFC 9112 §3.2 (from memory): exactly one Host in HTTP/1.1; RFC 9110 §10.1.1 (from memory): 417 is a may, so an unknown expectation is passed over */
export function registerHost(app: FastifyInstance): void {
  app.server.on('checkExpectation', (request, response) => app.server.emit('request', request, response))
  app.addHook('onRequest', ({ raw: { httpVersion, rawHeaders } }, _reply, done) => {
    const hosts = hostsAmong(rawHeaders)
    if (hosts === 1 || (hosts === 0 && httpVersion !== '1.1')) return done()
    done(new Refusal('malformed-http', say('service.one-host'), { headers: { connection: 'close' } }))
  })
}
