/** What Node would answer without a document: a request without its Host, with two, or with an expectation it does not know. */
import type { FastifyInstance } from 'fastify'
import { Refusal } from '../wire/problem/refusal.ts'

/** @source RFC 9112 §3.2 (from memory): exactly one Host in HTTP/1.1; RFC 9110 §10.1.1 (from memory): 417 is a may, so an unknown expectation is passed over */
export function registerHost(app: FastifyInstance): void {
  app.server.on('checkExpectation', (request, response) => app.server.emit('request', request, response))
  app.addHook('onRequest', async ({ raw: { httpVersion, rawHeaders } }) => {
    const hosts = rawHeaders.filter((name, index) => index % 2 === 0 && name.toLowerCase() === 'host').length
    if (hosts === 1 || (hosts === 0 && httpVersion !== '1.1')) return
    throw new Refusal('malformed-http', 'A request of HTTP/1.1 names its host, once.', {
      headers: { connection: 'close' }
    })
  })
}
