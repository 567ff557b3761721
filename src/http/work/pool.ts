/** Worker threads for heavy calls: a line before them, a time budget, and an end when nobody waits any longer. */

import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import { Piscina } from 'piscina'
import { DesignError } from '../../domain/design-error.ts'
import { say } from '../../domain/say.ts'
import type { Answer } from '../wire/operation.ts'
import { ClientGone, Refusal } from '../wire/problem/refusal.ts'
import type { Task, TaskOutcome } from './task.ts'
import { waitingLine } from './waiting-line.ts'

export interface Work {
  /** @throws Refusal `overloaded` or `out-of-time`, DesignError of the calculation */
  readonly run: (task: Task, nobodyWaits: AbortSignal) => Promise<Answer>
  readonly waiting: () => number
  readonly close: () => Promise<void>
}

/** What the settings of the service say about its workers. */
interface Sizes {
  readonly workers: number
  readonly workerHeapMb: number
  readonly workQueueMax: number
  readonly workTimeoutMs: number
}

/** From sources the threads need the same loader as the tests and scripts; from dist they need none. */
function threadOptions() {
  const here = import.meta.url
  const fromSource = here.endsWith('.ts')
  const loader = () => pathToFileURL(createRequire(here).resolve('tsx')).href
  return {
    filename: new URL(fromSource ? './worker.ts' : './worker.js', here).href,
    execArgv: fromSource ? ['--import', loader()] : [],
    env: {}
  }
}

/** What a plan leaves behind is swept up in small steps: without this a worker kept 38 MB more resident after ten plans. */
const YOUNG_MB = 8

function pool({ workers, workerHeapMb }: Sizes): Piscina<Task, TaskOutcome> {
  return new Piscina<Task, TaskOutcome>({
    ...threadOptions(),
    minThreads: 1,
    maxThreads: workers,
    idleTimeout: 60_000,
    concurrentTasksPerWorker: 1,
    resourceLimits: { maxOldGenerationSizeMb: workerHeapMb, maxYoungGenerationSizeMb: YOUNG_MB }
  })
}

const outOfMemory = (error: unknown) => (error as NodeJS.ErrnoException).code === 'ERR_WORKER_OUT_OF_MEMORY'

/** Why a call ends whose caller has gone, or whose batch is out of time. */
const ended = ({ reason }: AbortSignal): ClientGone | Refusal =>
  reason instanceof ClientGone || reason instanceof Refusal
    ? reason
    : new Refusal('out-of-time', say('service.batch-out-of-time'))

/** @throws Refusal `out-of-time` when the budget or the memory of a thread is spent, ClientGone when nobody waits any longer */
async function outcome(
  threads: Piscina<Task, TaskOutcome>,
  task: Task,
  nobodyWaits: AbortSignal,
  budgetMs: number
): Promise<TaskOutcome> {
  const budget = AbortSignal.timeout(budgetMs)
  try {
    return await threads.run(task, { signal: AbortSignal.any([nobodyWaits, budget]) })
  } catch (error) {
    if (nobodyWaits.aborted) throw ended(nobodyWaits)
    if (!budget.aborted && !outOfMemory(error)) throw error
    throw new Refusal('out-of-time', say('service.out-of-time', { budgetS: budgetMs / 1000 }))
  }
}

/** @param report  hears what threads say when no call waits for it; an aborted call may still answer, which is no fault */
export function workPool(sizes: Sizes, report: (error: unknown) => void = () => {}): Work {
  const { workers, workQueueMax, workTimeoutMs } = sizes
  const line = waitingLine({ threads: workers, mostWaiting: workQueueMax, mostWaitMs: workTimeoutMs })
  let threads: Piscina<Task, TaskOutcome> | undefined
  const started = () => {
    threads ??= pool(sizes).on('error', report)
    return threads
  }

  return {
    waiting: line.waiting,
    run: async (task, nobodyWaits) => {
      const kind = `${task.operationId} ${task.options.form ?? ''}`
      const call = { kind, costMs: task.costMs }
      // The budget of a call begins with its work: waiting has a bound of its own.
      const done = await line
        .enter(call, nobodyWaits, () => outcome(started(), task, nobodyWaits, workTimeoutMs))
        .catch(error => {
          throw nobodyWaits.aborted ? ended(nobodyWaits) : error
        })
      if ('refusal' in done) throw new DesignError(done.refusal.code, ...done.refusal.faults)
      return done.answer
    },
    close: async () => {
      await threads?.destroy()
      threads = undefined
    }
  }
}
