/** What has not sent a whole request when the service closes is let go: its sender, if there is one, would be waited for in vain. */
import type { IncomingMessage, ServerResponse } from 'node:http'
import type { Socket } from 'node:net'
import type { FastifyInstance } from 'fastify'

/** Time a request underway still has to arrive once the service closes. */
const GRACE_MS = 1_000

/** Whether a whole request has come whose answer has not left. */
const isAtWork = (response: ServerResponse | undefined): boolean =>
  response?.req.complete === true && !response.writableFinished

export function registerUnfinished(app: FastifyInstance): void {
  const { server } = app
  const latest = new Map<Socket, ServerResponse | undefined>()
  server.on('connection', (socket: Socket) => {
    latest.set(socket, undefined)
    socket.once('close', () => latest.delete(socket))
  })
  server.on('request', ({ socket }: IncomingMessage, response: ServerResponse) => latest.set(socket, response))
  app.addHook('preClose', async () => {
    const sweep = setInterval(() => {
      for (const [socket, response] of latest) if (!isAtWork(response)) socket.destroy()
    }, GRACE_MS)
    sweep.unref()
    server.once('close', () => clearInterval(sweep))
  })
}
