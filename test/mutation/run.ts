/**
 * Which small faults the tests let live. `npm run mutants` draws 200 by a seed and fails under 80 %; `-- --room fuse,cable`
 * takes rooms whole, `-- --all` every one; `-- --seed 7 --sample 50` draws others; `--file choose-load` narrows to a file.
 */
import { fork } from 'node:child_process'
import path from 'node:path'
import { parseArgs } from 'node:util'
import { randomStream } from '../../src/numeric/random-stream.ts'
import type { Task } from './judge.ts'
import { mutantsIn, rooms } from './rooms.ts'

const { values } = parseArgs({
  options: {
    room: { type: 'string' },
    file: { type: 'string', default: '' },
    all: { type: 'boolean', default: false },
    sample: { type: 'string', default: '200' },
    seed: { type: 'string', default: '1' },
    least: { type: 'string', default: '80' },
    verbose: { type: 'boolean', default: false }
  }
})

/** Longer than this a mutant takes only if it never ends. */
const PATIENCE_MS = 60_000
const START_MS = 300_000

function drawn(tasks: readonly Task[], count: number, seed: number): readonly Task[] {
  const { uniform } = randomStream(seed)
  return tasks
    .map(task => ({ task, place: uniform() }))
    .toSorted((a, b) => a.place - b.place)
    .slice(0, count)
    .map(({ task }) => task)
}

/** Judges until the list or the patience ends; how many were judged comes back. @throws Error where the judge fails */
function judged(tasks: readonly Task[], told: (task: Task, by?: string) => void): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = fork(path.join(import.meta.dirname, 'judge.ts'), {
      execArgv: process.execArgv,
      serialization: 'advanced'
    })
    let done = 0
    let ready = false
    let stuck = false
    const waiting = (ms: number) =>
      setTimeout(() => {
        stuck = true
        child.kill('SIGKILL')
      }, ms)
    let patience = waiting(START_MS)
    child.on('message', (message: { readonly ready?: true; readonly by?: string }) => {
      clearTimeout(patience)
      patience = waiting(PATIENCE_MS)
      const task = tasks[done]
      ready ||= message.ready === true
      if (message.ready || task === undefined) return
      done++
      told(task, message.by)
    })
    child.on('exit', code => {
      clearTimeout(patience)
      const task = tasks[done]
      if (stuck && ready && task !== undefined) {
        told(task, 'it never ends')
        resolve(done + 1)
      } else if (code === 0) resolve(done)
      else reject(new Error(`the judge ended with ${code}`))
    })
    child.send(tasks)
  })
}

const chosen = Object.entries(rooms).filter(
  ([name]) => values.room === undefined || values.room.split(',').includes(name)
)
const every = chosen.flatMap(([room, of]) =>
  mutantsIn(of)
    .filter(({ file }) => file.includes(values.file))
    .map(mutant => ({ room, mutant }))
)
const whole = values.all || values.room !== undefined
const tasks = whole ? every : drawn(every, Number(values.sample), Number(values.seed))
console.log(`${tasks.length} of ${every.length} mutants${whole ? '' : `, seed ${values.seed}`}`)

const tally = new Map<string, { killed: number; of: number }>()
function count({ room, mutant }: Task, by?: string): void {
  for (const name of [room, `${room} ${mutant.kind}s`, 'all']) {
    const { killed, of } = tally.get(name) ?? { killed: 0, of: 0 }
    tally.set(name, { killed: killed + Number(by !== undefined), of: of + 1 })
  }
  const where = `${mutant.file}:${mutant.line} ${mutant.was} -> ${mutant.now}`
  if (by === undefined) console.log(`lives: ${where}`)
  else if (values.verbose) console.log(`${where}: ${by}`)
}
for (let from = 0; from < tasks.length; ) from += await judged(tasks.slice(from), count)

for (const [name, { killed, of }] of [...tally].toSorted(([a], [b]) => (a < b ? -1 : 1)))
  console.log(`${name.padEnd(22)} ${killed} of ${of}, ${((100 * killed) / of).toFixed(1)} %`)
const { killed = 0, of = 0 } = tally.get('all') ?? {}
if (100 * killed < Number(values.least) * of) {
  console.error(`under ${values.least} %: test what lives, or say in the room's README why it may`)
  process.exitCode = 1
}
