/** The process that works on a list of mutants sent by its parent, one after another; a mutant may take it along. */
import { Worker } from 'node:worker_threads'
import { type Asked, bench, processorMs } from './bench.ts'
import type { Mutant } from './mutants.ts'
import { sourceOf } from './rooms.ts'

/** Of processor time, many times what the tests of one mutant are allowed: it never ends. */
const PATIENCE_MS = 60_000
/** A thread of its own, for the one that turns for ever answers nothing. */
const WATCH = `
const { workerData } = require('node:worker_threads')
const began = new Float64Array(workerData)
setInterval(() => {
  const { user, system } = process.cpuUsage()
  if ((user + system) / 1000 - began[0] > ${PATIENCE_MS}) process.kill(process.pid, 'SIGKILL')
}, 1000)`

export interface Task {
  readonly room: string
  readonly mutant: Mutant
  /** Those that run it, the likeliest to fail first. */
  readonly tests: readonly Asked[]
}

const faulty = ({ file, start, end, now }: Mutant): string => {
  const text = sourceOf(file)
  return text.slice(0, start) + now + text.slice(end)
}

async function judge(tasks: readonly Task[]): Promise<void> {
  const { failing } = bench()
  const shared = new SharedArrayBuffer(8)
  const began = new Float64Array(shared)
  new Worker(WATCH, { eval: true, workerData: shared }).unref()
  for (const { mutant, tests } of tasks) {
    began[0] = processorMs()
    const by = tests.length === 0 ? undefined : await failing(tests, mutant.file, faulty(mutant))
    process.send?.({ by })
  }
}

process.once('message', (tasks: readonly Task[]) => {
  judge(tasks).then(
    () => process.exit(0),
    error => process.send?.({ error: String(error) }, () => process.exit(1))
  )
})
