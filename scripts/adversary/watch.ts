/** Ends the process when one call takes too much processor time, after writing down which: a hang cannot be seen from the thread it holds. */
import { Worker } from 'node:worker_threads'

const LOOKS_MS = 1_000

const source = `
const { parentPort, workerData } = require('node:worker_threads')
let call, since = 0
const spent = () => { const { user, system } = process.cpuUsage(); return (user + system) / 1000 }
parentPort.on('message', text => { call = text; since = spent() })
setInterval(() => {
  if (call === null || spent() - since < workerData.mostMs) return
  require('node:fs').writeSync(2, 'hangs: ' + call + '\\n')
  process.kill(process.pid, 'SIGKILL')
}, workerData.looksMs)`

export interface Watch {
  readonly begin: (operationId: string, request: unknown) => void
  readonly end: () => void
}

export function watch(mostMs: number): Watch {
  const worker = new Worker(source, { eval: true, workerData: { mostMs, looksMs: LOOKS_MS } })
  worker.unref()
  return {
    begin: (operationId, request) => worker.postMessage(`${operationId} ${JSON.stringify(request).slice(0, 100_000)}`),
    end: () => worker.postMessage(null)
  }
}
