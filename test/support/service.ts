/** A service of its own for tests about the service itself, and bytes over a real socket. */
import { connect } from 'node:net'
import type { FastifyInstance } from 'fastify'
import { type AppOptions, buildApp } from '../../src/app.ts'
import { inThisProcess } from './work-here.ts'

export const quiet: AppOptions = { rateLimitMax: 0, eventLoopDelayMaxMs: 0 }

/** Without threads, each of which would load the service again. */
export const here: AppOptions = { ...quiet, work: inThisProcess }

export async function listening(
  options: AppOptions = {}
): Promise<{ app: FastifyInstance; port: number; url: string }> {
  const app = await buildApp({ ...quiet, ...options })
  const address = await app.listen({ port: 0, host: '127.0.0.1' })
  const port = Number(new URL(address).port)
  return { app, port, url: `http://127.0.0.1:${port}` }
}

/** Sends bytes as they are and collects what comes back until the other end closes. */
export function exchange(port: number, bytes: string | Buffer): Promise<string> {
  return new Promise((resolve, reject) => {
    const received: Buffer[] = []
    const socket = connect(port, '127.0.0.1', () => socket.write(bytes))
    socket.on('data', chunk => received.push(chunk))
    socket.on('close', () => resolve(Buffer.concat(received).toString('latin1')))
    socket.on('error', reject)
  })
}

export const coils = { url: '/v1/coils/wiring', body: { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 } }
