/** Environment → buildApp → listen → close on a signal. */
import { setTimeout as pause } from 'node:timers/promises'
import { buildApp } from './app.ts'
import { serviceLog } from './http/serving/log.ts'
import { readSettings } from './http/serving/settings.ts'

const read = readSettings(process.env)
if ('faults' in read) {
  for (const { variable, value, allowed } of read.faults) console.error(`${variable}=${value}: must be ${allowed}`)
  process.exit(1)
}

const { settings } = read
const app = await buildApp({ ...settings, log: serviceLog(settings.logLevel) })

let stopping = false
async function stop(signal: string): Promise<void> {
  if (stopping) return
  stopping = true
  app.log.info({ signal }, 'draining')
  app.startDraining()
  // A request that outlives its budget must not keep the process.
  setTimeout(() => process.exit(1), settings.drainMs + settings.workTimeoutMs + 5_000).unref()
  await pause(settings.drainMs)
  await app.close()
  app.log.info('stopped')
}
for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, () => void stop(signal))

for (const fault of ['uncaughtException', 'unhandledRejection'] as const) {
  process.on(fault, (error: unknown) => {
    app.log.fatal({ err: error }, fault)
    process.exitCode = 1
    void stop(fault)
  })
}

try {
  await app.listen({ port: settings.port, host: settings.host })
} catch (error) {
  console.error(`cannot listen on ${settings.host} port ${settings.port}: ${(error as Error).message}`)
  process.exit(1)
}

// Readiness does not wait for it, and it takes no part in the memory that is needed to be ready.
setTimeout(() => void app.warmUp(), 2_000).unref()
