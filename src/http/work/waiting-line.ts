/**
 * The line before the worker threads. How long a call would wait is worked out when it comes: where that is too long it is
 * refused at once, with the time after which asking again is worth it, and who has waited too long is not started any more.
 */
import { say } from '../../domain/say.ts'
import { Refusal } from '../wire/problem/refusal.ts'

interface Call {
  /** Calls that are alike share what was learnt about them. */
  readonly kind: string
  /** By the cost model of the operation [ms]. */
  readonly costMs: number
}

interface Running extends Call {
  readonly since: number
}

interface Waiting extends Running {
  readonly start: (run: Running) => void
  readonly refuse: (error: Refusal) => void
}

interface Sizes {
  readonly threads: number
  readonly mostWaiting: number
  readonly mostWaitMs: number
  readonly now?: () => number
}

interface WaitingLine {
  /** @throws Refusal `overloaded` where the wait is or grows too long; whatever `work` throws */
  readonly enter: <Result>(call: Call, nobodyWaits: AbortSignal, work: () => Promise<Result>) => Promise<Result>
  readonly waiting: () => number
}

/** Threads are cold at first. */
const FIRST_PACE = 2
const FORGETS = 0.3

/** Measured over predicted time, by kind; what is not known yet takes the mean of all. */
function paces() {
  const byKind = new Map<string, number>()
  let mean = FIRST_PACE
  const towards = (before: number, ratio: number) => before + FORGETS * (ratio - before)
  return {
    expectedMs: ({ kind, costMs }: Call) => costMs * (byKind.get(kind) ?? mean),
    learn: ({ kind, costMs }: Call, measuredMs: number) => {
      const ratio = Math.min(20, Math.max(0.05, measuredMs / costMs))
      byKind.set(kind, towards(byKind.get(kind) ?? mean, ratio))
      mean = towards(mean, ratio)
    }
  }
}

function tooBusy(waitMs: number, mostWaitMs: number): Refusal {
  // By then half of the line has gone.
  const retryS = Math.max(1, Math.ceil((waitMs - mostWaitMs / 2) / 1000))
  return new Refusal('overloaded', say('service.heavy-calls-wait', { waitS: Math.ceil(waitMs / 1000) }), {
    headers: { 'retry-after': String(retryS) }
  })
}

interface State extends Required<Sizes> {
  readonly line: Waiting[]
  readonly running: Set<Running>
  readonly pace: ReturnType<typeof paces>
}

function expectedWaitMs({ line, running, threads, pace, now }: State): number {
  if (running.size < threads && line.length === 0) return 0
  const ahead = line.reduce((sum, call) => sum + pace.expectedMs(call), 0)
  const left = [...running].reduce((sum, call) => sum + Math.max(0, pace.expectedMs(call) - (now() - call.since)), 0)
  return (ahead + left) / threads
}

function begun({ running, now }: State, { kind, costMs }: Call): Running {
  const run = { kind, costMs, since: now() }
  running.add(run)
  return run
}

function startNext(state: State): void {
  const { line, running, threads, mostWaitMs, now } = state
  while (running.size < threads) {
    const call = line.shift()
    if (call === undefined) return
    if (now() - call.since > mostWaitMs) call.refuse(tooBusy(expectedWaitMs(state), mostWaitMs))
    else call.start(begun(state, call))
  }
}

function turn({ line, now }: State, call: Call, nobodyWaits: AbortSignal): Promise<Running> {
  return new Promise((resolve, reject) => {
    const leave = () => {
      line.splice(line.indexOf(entry), 1)
      reject(nobodyWaits.reason)
    }
    const called = <Value>(settle: (value: Value) => void) => {
      return (value: Value) => {
        nobodyWaits.removeEventListener('abort', leave)
        settle(value)
      }
    }
    const entry: Waiting = { ...call, since: now(), start: called(resolve), refuse: called(reject) }
    nobodyWaits.addEventListener('abort', leave, { once: true })
    line.push(entry)
  })
}

/** At once where a thread is free, else in its turn. @throws Refusal `overloaded` */
async function admitted(state: State, call: Call, nobodyWaits: AbortSignal): Promise<Running> {
  const { line, running, threads, mostWaiting, mostWaitMs } = state
  nobodyWaits.throwIfAborted()
  if (running.size < threads && line.length === 0) return begun(state, call)
  const waitMs = expectedWaitMs(state)
  if (line.length >= mostWaiting || waitMs > mostWaitMs) throw tooBusy(waitMs, mostWaitMs)
  return turn(state, call, nobodyWaits)
}

export function waitingLine({ now = () => performance.now(), ...sizes }: Sizes): WaitingLine {
  const state: State = { ...sizes, now, line: [], running: new Set(), pace: paces() }
  return {
    waiting: () => state.line.length,
    enter: async (call, nobodyWaits, work) => {
      const run = await admitted(state, call, nobodyWaits)
      try {
        const result = await work()
        state.pace.learn(call, now() - run.since)
        return result
      } finally {
        state.running.delete(run)
        startNext(state)
      }
    }
  }
}
