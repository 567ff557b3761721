/**
 * Which small faults the tests let live. `npm run mutants` draws 200 by a seed and fails under 80 %; `-- --room circuit/fuse,cabin`
 * takes rooms whole, `-- --all` every one; `-- --seed 7 --sample 50` draws others, `--each 30` so many of each room; `--file
 * choose-load` narrows to a file; `--patience 2000` asks fewer tests. First every quick test is run once with marks, to know what it runs; `--reach FILE` keeps that, and
 * asks anew what has changed. What only the printed answers of the contract notice is told apart: they say that a figure has moved.
 */
import { fork } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import path from 'node:path'
import { parseArgs } from 'node:util'
import { randomStream } from '../../src/numeric/random-stream.ts'
import { type Asked, asking, type Walked, walked } from './bench.ts'
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
    each: { type: 'string' },
    least: { type: 'string', default: '80' },
    patience: { type: 'string', default: '6000' },
    reach: { type: 'string' },
    verbose: { type: 'boolean', default: false }
  }
})

/** Of processor time; what lies beyond is spared a mutant that the nearer tests let live. */
const mostAskedMs = Number(values.patience)
/** Tests that hold an answer against the one the contract prints, which this program wrote. */
const printed = /^test\/(as-shown|contract|readme)\./

const texts = sources.map(file => ({ file, text: sourceOf(file) }))

interface Kept {
  readonly sources: Readonly<Record<string, string>>
  readonly tests: Readonly<Record<string, { readonly text: string; readonly walked: readonly Walked[] }>>
}
const digest = (text: string) => createHash('sha256').update(text).digest('hex')
const digests = (files: readonly string[]) => Object.fromEntries(files.map(file => [file, digest(sourceOf(file))]))
/** As a file loads its place 0 runs, whether the test asks for anything in it or not. */
const runs = ({ ran }: Walked, files: ReadonlySet<string>) =>
  ran.some(each => !each.endsWith('#0') && files.has(each.slice(0, each.lastIndexOf('#'))))

function grouped(all: readonly Walked[]): ReadonlyMap<string, readonly Walked[]> {
  const groups = new Map<string, Walked[]>()
  for (const each of all) groups.set(each.file, [...(groups.get(each.file) ?? []), each])
  return groups
}

/** What each test runs; of what was kept only test files that are the same and run no function of a source that is another. */
async function reach(): Promise<readonly Walked[]> {
  const now = digests(sources)
  const textOf = digests(asking)
  const kept: Kept | undefined =
    values.reach !== undefined && existsSync(values.reach) ? JSON.parse(readFileSync(values.reach, 'utf8')) : undefined
  const moved = new Set(sources.filter(file => kept?.sources[file] !== now[file]))
  const old = kept?.tests ?? {}
  const stale = asking.filter(
    file => old[file]?.text !== textOf[file] || old[file]?.walked.some(each => runs(each, moved))
  )
  const byFile = new Map(texts.map(({ file, text }) => [file, marked(file, text)]))
  const fresh = grouped(await walked(stale, file => byFile.get(file)))
  const again = new Set(stale)
  const tests = Object.fromEntries(
    asking.map(file => [
      file,
      { text: textOf[file] ?? '', walked: (again.has(file) ? fresh.get(file) : old[file]?.walked) ?? [] }
    ])
  )
  if (values.reach !== undefined) writeFileSync(values.reach, JSON.stringify({ sources: now, tests }))
  return Object.values(tests).flatMap(each => each.walked)
}

const testTexts = new Map(asking.map(file => [file, sourceOf(file)]))
function readersOf(names: readonly string[]): ReadonlySet<string> {
  if (names.length === 0) return new Set()
  const named = new RegExp(`\\b(${names.join('|')})\\b`)
  return new Set(asking.filter(test => named.test(testTexts.get(test) ?? '')))
}

/** The tests that run a mutant or read the constant it is in, by file: those of its room first, of them the quick ones, as far as patience goes. */
function testsFor(room: string, { file, start }: Mutant, all: readonly Walked[]): readonly Asked[] {
  const { places: ran, names } = witnesses(file, start, texts)
  const places = new Set(ran)
  const readers = readersOf(names)
  const files = new Map<string, { readonly places: number[]; ms: number }>()
  for (const { file: test, place, ms, ran: hit } of all) {
    if (!readers.has(test) && !hit.some(each => places.has(each))) continue
    const known = files.get(test) ?? { places: [], ms: 0 }
    files.set(test, { places: [...known.places, place], ms: known.ms + ms })
  }
  let spentMs = 0
  return [...files]
    .map(([test, asked]) => ({ file: test, ...asked, near: printed.test(test) ? -1 : nearness(room, test) }))
    .toSorted((a, b) => b.near - a.near || a.ms - b.ms)
    .filter(({ ms, near }, place) => {
      const fits = place === 0 || near < 0 || spentMs + ms <= mostAskedMs
      if (fits) spentMs += ms
      return fits
    })
    .map(({ file: test, places: asked }) => ({ file: test, places: asked }))
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

/** Judges until the list or the process ends; how many were judged comes back. @throws Error where the judge itself fails */
function judged(tasks: readonly Task[], told: (task: Task, by?: string) => void): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = fork(path.join(import.meta.dirname, 'judge.ts'), {
      execArgv: process.execArgv,
      serialization: 'advanced'
    })
    let done = 0
    child.on('message', ({ by, error }: { readonly by?: string; readonly error?: string }) => {
      if (error !== undefined) return reject(new Error(error))
      const task = tasks[done]
      done++
      if (task !== undefined) told(task, by)
    })
    child.on('exit', code => {
      const task = tasks[done]
      if (code === 0 || task === undefined) return resolve(done)
      told(task, 'it takes the process along')
      resolve(done + 1)
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
const seed = Number(values.seed)
function asked(): readonly Drawn[] {
  const { each } = values
  if (each !== undefined)
    return chosen.flatMap(name =>
      drawn(
        every.filter(({ room }) => room === name),
        Number(each),
        seed
      )
    )
  return whole ? every : drawn(every, Number(values.sample), seed)
}
const draw = asked()
console.log(`${draw.length} of ${every.length} mutants, seed ${seed}`)
const began = performance.now()
const seconds = () => ((performance.now() - began) / 1000).toFixed(0)
const known = await reach()
console.log(`${known.length} tests walked through: ${seconds()} s`)
const tasks = draw.map(each => ({ ...each, tests: testsFor(each.room, each.mutant, known) }))

const tally = new Map<string, { killed: number; of: number }>()
let moved = 0
function count({ room, mutant }: Task, by?: string): void {
  const isPrinted = by !== undefined && printed.test(by)
  moved += Number(isPrinted)
  for (const name of [room, `all ${mutant.kind}s`, 'all']) {
    const { killed, of } = tally.get(name) ?? { killed: 0, of: 0 }
    tally.set(name, { killed: killed + Number(by !== undefined && !isPrinted), of: of + 1 })
  }
  const where = `${mutant.file}:${mutant.line} ${mutant.was} -> ${mutant.now}`
  if (by === undefined || isPrinted) console.log(`${isPrinted ? 'moves a printed figure' : 'lives'}: ${where}`)
  else if (values.verbose) console.log(`${where}: ${by}`)
}
async function judgeAll(mine: readonly Task[]): Promise<void> {
  for (let from = 0; from < mine.length; ) from += await judged(mine.slice(from), count)
}
const LANES = Math.min(2, availableParallelism())
await Promise.all(Array.from({ length: LANES }, (_, lane) => judgeAll(tasks.filter((_, at) => at % LANES === lane))))
console.log(`${seconds()} s`)

for (const [name, { killed, of }] of [...tally].toSorted(([a], [b]) => (a < b ? -1 : 1)))
  console.log(`${name.padEnd(28)} ${killed} of ${of}, ${((100 * killed) / of).toFixed(1)} %`)
console.log(`${moved} more only move a printed figure`)
const { killed = 0, of = 0 } = tally.get('all') ?? {}
if (100 * killed < Number(values.least) * of) {
  console.error(`under ${values.least} %: test what lives, or say in the room's README why it may`)
  process.exitCode = 1
}
