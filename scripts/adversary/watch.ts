/** Ends the process when one call holds it too long, after writing down which: a hang cannot be seen from the thread it holds. */
import { Worker } from 'node:worker_threads'

const source = `
const { parentPort, workerData } = require('node:worker_threads')
let timer
parentPort.on('message', text => {
  clearTimeout(timer)
  if (text === null) return
  timer = setTimeout(() => {
    require('node:fs').writeSync(2, 'hangs: ' + text + '\\n')
    process.kill(process.pid, 'SIGKILL')
  }, workerData)
})`

export interface Watch {
  readonly begin: (operationId: string, request: unknown) => void
  readonly end: () => void
}

export function watch(mostMs: number): Watch {
  const worker = new Worker(source, { eval: true, workerData: mostMs })
  worker.unref()
  return {
    begin: (operationId, request) => worker.postMessage(`${operationId} ${JSON.stringify(request).slice(0, 100_000)}`),
    end: () => worker.postMessage(null)
  }
}
