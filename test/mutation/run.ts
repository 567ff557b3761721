/**
 * Which small faults the tests let live. `npm run mutants` draws 200 by a seed and fails under 80 %; `-- --room circuit/fuse,cabin`
 * takes rooms whole, `-- --all` every one; `-- --seed 7 --sample 50` draws others; `--file choose-load` narrows to a file. First
 * every test file is run once with marks, to know what it runs; `--reach FILE` keeps that, for as long as nothing changes.
 */
import { fork } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { parseArgs } from 'node:util'
import { randomStream } from '../../src/numeric/random-stream.ts'
import { type Walked, walked } from './bench.ts'
import type { Task } from './judge.ts'
import type { Mutant } from './mutants.ts'
import { marked, witnesses } from './reach.ts'
import { mutantsIn, nearness, rooms, sourceOf, sources } from './rooms.ts'

const { values } = parseArgs({
  options: {
    room: { type: 'string' },
    file: { type: 'string', default: '' },
    all: { type: 'boolean', default: false },
    sample: { type: 'string', default: '200' },
    seed: { type: 'string', default: '1' },
    least: { type: 'string', default: '80' },
    judges: { type: 'string', default: '1' },
    reach: { type: 'string' },
    verbose: { type: 'boolean', default: false }
  }
})

/** Longer than this a mutant takes only if it never ends. */
const PATIENCE_MS = 180_000
const START_MS = 300_000
/** Of the time of all quick tests; what lies beyond is spared a mutant that the nearer ones let live. */
const SHARE_ASKED = 0.06

const texts = sources.map(file => ({ file, text: sourceOf(file) }))

async function reach(): Promise<readonly Walked[]> {
  const { reach: kept } = values
  if (kept !== undefined && existsSync(kept)) return JSON.parse(readFileSync(kept, 'utf8'))
  const byFile = new Map(texts.map(({ file, text }) => [file, marked(file, text)]))
  const found = await walked(file => byFile.get(file))
  if (kept !== undefined) writeFileSync(kept, JSON.stringify(found))
  return found
}

/** The tests that run a mutant: those of its room first, of them the quick ones, as far as patience goes. */
function testsFor(room: string, { file, start }: Mutant, all: readonly Walked[]): readonly string[] {
  const places = new Set(witnesses(file, start, texts))
  const near = all
    .filter(({ ran }) => ran.some(place => places.has(place)))
    .map(each => ({ ...each, near: nearness(room, each.test) }))
    .toSorted((a, b) => b.near - a.near || a.ms - b.ms)
  const mostMs = SHARE_ASKED * all.reduce((sum, { ms }) => sum + ms, 0)
  let spentMs = 0
  return near.flatMap(({ test, ms }, place) => {
    spentMs += ms
    return place > 0 && spentMs > mostMs ? [] : [test]
  })
}

type Drawn = Omit<Task, 'tests'>

function drawn(tasks: readonly Drawn[], count: number, seed: number): readonly Drawn[] {
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

const chosen = rooms.filter(room => values.room?.split(',').some(name => room.includes(name)) ?? true)
const every = chosen.flatMap(room =>
  mutantsIn(room)
    .filter(({ file }) => file.includes(values.file))
    .map(mutant => ({ room, mutant }))
)
const whole = values.all || values.room !== undefined || values.file !== ''
const draw = whole ? every : drawn(every, Number(values.sample), Number(values.seed))
console.log(`${draw.length} of ${every.length} mutants${whole ? '' : `, seed ${values.seed}`}`)
const began = performance.now()
const seconds = () => ((performance.now() - began) / 1000).toFixed(0)
const known = await reach()
console.log(`${known.length} test files walked through: ${seconds()} s`)
const tasks = draw.map(each => ({ ...each, tests: testsFor(each.room, each.mutant, known) }))

const tally = new Map<string, { killed: number; of: number }>()
function count({ room, mutant }: Task, by?: string): void {
  for (const name of [room, `all ${mutant.kind}s`, 'all']) {
    const { killed, of } = tally.get(name) ?? { killed: 0, of: 0 }
    tally.set(name, { killed: killed + Number(by !== undefined), of: of + 1 })
  }
  const where = `${mutant.file}:${mutant.line} ${mutant.was} -> ${mutant.now}`
  if (by === undefined) console.log(`lives: ${where}`)
  else if (values.verbose) console.log(`${where}: ${by}`)
}
async function judgeAll(mine: readonly Task[]): Promise<void> {
  for (let from = 0; from < mine.length; ) from += await judged(mine.slice(from), count)
}
const judges = Number(values.judges)
await Promise.all(Array.from({ length: judges }, (_, index) => judgeAll(tasks.filter((_, n) => n % judges === index))))
console.log(`${seconds()} s`)

for (const [name, { killed, of }] of [...tally].toSorted(([a], [b]) => (a < b ? -1 : 1)))
  console.log(`${name.padEnd(28)} ${killed} of ${of}, ${((100 * killed) / of).toFixed(1)} %`)
const { killed = 0, of = 0 } = tally.get('all') ?? {}
if (100 * killed < Number(values.least) * of) {
  console.error(`under ${values.least} %: test what lives, or say in the room's README why it may`)
  process.exitCode = 1
}
