/** What has not sent a whole request when the service closes is let go: its sender, if there is one, would be waited for in vain. */
import type { IncomingMessage, ServerResponse } from 'node:http'
import type { Socket } from 'node:net'
import type { FastifyInstance } from 'fastify'

/** Time a request underway still has to arrive once the service closes. */
const GRACE_MS = 1_000

export function registerUnfinished(app: FastifyInstance): void {
  const { server } = app
  const latest = new Map<Socket, IncomingMessage | undefined>()
  server.on('connection', (socket: Socket) => {
    latest.set(socket, undefined)
    socket.once('close', () => latest.delete(socket))
  })
  server.on('request', (request: IncomingMessage, response: ServerResponse) => {
    const { socket } = request
    latest.set(socket, request)
    response.once('close', () => {
      if (latest.get(socket) === request) latest.set(socket, undefined)
    })
  })
  app.addHook('preClose', async () => {
    const sweep = setInterval(() => {
      for (const [socket, request] of latest) if (request?.complete !== true) socket.destroy()
    }, GRACE_MS)
    sweep.unref()
    server.once('close', () => clearInterval(sweep))
  })
}
