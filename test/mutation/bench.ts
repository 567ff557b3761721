/** Puts a changed source file to tests, in one warm process and without a byte written to the sources. */
import { readdirSync } from 'node:fs'
import os from 'node:os'
import { simulator, thorough } from '../slow-files.ts'
import { collected, runInOrder, words } from './harness.ts'
import { ranSince } from './reach.ts'
import { sourceOf } from './rooms.ts'
import { world } from './world.ts'

/** A list of files as the configuration of the tests writes it. */
function matches(pattern: string): RegExp {
  const parts: Readonly<Record<string, string>> = {
    '.': '\\.',
    '**/': '(.*/)?',
    '*': '[^/]*',
    '{': '(',
    '}': ')',
    ',': '|'
  }
  return new RegExp(`^${pattern.replaceAll(/\*\*\/|[.*{},]/g, part => parts[part] ?? part)}$`)
}
const slow = [...thorough, ...simulator].map(matches)

export const isQuick = (file: string): boolean => !slow.some(each => each.test(file))

/** They read texts, or listen at a port: nothing of what they say rests on a figure. */
const deaf = /^test\/(mutation|deploy)\/|^test\/http\/(over-http|settings|front|docs)\.|^test\/(architecture|checks)\./

/** Of the long tests those that one fault can be put to in a second or two; `npm run thorough` runs them. */
const alsoAsked: readonly string[] = [
  'test/domain/box/mesh-boxes.test.ts',
  'test/domain/enclosure/sizing-agrees.test.ts',
  'test/domain/enclosure/tolerance.test.ts',
  'test/domain/sheet/nest-panels.test.ts'
]

/** The tests that can see a fault and are asked. */
export const asking: readonly string[] = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .map(name => `test/${name}`)
  .filter(file => file.endsWith('.test.ts') && (alsoAsked.includes(file) || isQuick(file)) && !deaf.test(file))
  .toSorted()

/** A test of a file by its place in it; undefined are all of them. */
export interface Asked {
  readonly file: string
  readonly places?: readonly number[] | undefined
}

export interface Bench {
  /** First test that fails with the file so changed; undefined where all pass. */
  readonly failing: (asked: readonly Asked[], file?: string, text?: string) => Promise<string | undefined>
}

const REGISTER = 'src/contract/field/component.ts'
const GUARD = /^ *if \(components\.has\(name\)\).*$/m

/** Routes enter their schemas once in a life; here they are loaded again with each fault under them, and enter them again. */
function unguarded(): string {
  const text = sourceOf(REGISTER)
  if (!GUARD.test(text)) throw new Error(`${REGISTER} has no guard any more: load the routes again without it`)
  return text.replace(GUARD, '')
}

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error)).slice(0, 200)

/** The worker of the service makes itself the humblest of processes: here that would be the judge. */
const given = { vitest: words, 'node:os': { ...os, setPriority: () => undefined } }

const PLAN = 'src/plan/plan-system.ts'
const ONCE = 'test/support/once.ts'

/** A dozen files plan the same car: of one fault it is planned once, and with the next fault the memory goes. */
function plannedOnce(): string {
  const wrapped = `import { once } from '../../${ONCE}'; export const planSystem = once(afresh)`
  return `${sourceOf(PLAN).replace('export function planSystem(', 'function afresh(')}\n${wrapped}\n`
}

export function bench(): Bench {
  const texts: Readonly<Record<string, string>> = { [REGISTER]: unguarded(), [PLAN]: plannedOnce() }
  const { load, replace, forget } = world(given, file => texts[file])
  const firstFailure = async ({ file, places }: Asked) => {
    let running = 'does not load'
    try {
      const all = collected(() => load(file))
      const tests = places === undefined ? all : places.flatMap(place => all[place] ?? [])
      if (tests.length === 0) throw new Error('no test in it')
      await runInOrder(tests, test => {
        running = test?.name ?? 'what goes before its tests'
      })
    } catch (error) {
      return `${file}: ${running}: ${messageOf(error)}`
    } finally {
      replace(file)
    }
    return undefined
  }
  const failing: Bench['failing'] = async (asked, file, text) => {
    // What tests have worked out and kept was worked out with the fault before.
    forget(each => each.startsWith('test/') && each !== ONCE)
    if (file !== undefined) replace(file, text)
    try {
      for (const each of asked) {
        const by = await firstFailure(each)
        if (by !== undefined) return by
      }
      return undefined
    } finally {
      // Without this every later run would still see the fault.
      if (file !== undefined) replace(file)
    }
  }
  return { failing }
}

/** On a busy machine the clock says nothing of what a test costs. */
export const processorMs = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

/** What a test ran and how much processor time it took. */
export interface Walked {
  readonly file: string
  readonly place: number
  readonly ms: number
  readonly ran: readonly string[]
}

/**
 * Each file alone, so that nothing another has worked out before hides what it runs. What runs as the file is read, or before
 * several tests, counts for each of them.
 * @param files  of tests
 * @param marked  text of a source file with its marks
 * A file that fails without a fault is told of and left out: it can show nothing.
 */
export async function walked(
  files: readonly string[],
  marked: (file: string) => string | undefined
): Promise<Walked[]> {
  const { load, forget } = world(given, marked)
  const stepsOf = async (file: string) => {
    const shared = new Set<string>()
    const steps: { readonly ran: Set<string>; readonly at: number }[] = []
    let running = shared
    const note = () => {
      for (const place of ranSince()) running.add(place)
    }
    ranSince()
    const tests = collected(() => load(file))
    await runInOrder(tests, test => {
      note()
      running = test === undefined ? shared : new Set()
      if (test !== undefined) steps.push({ ran: running, at: processorMs() })
    })
    note()
    const ended = processorMs()
    return steps.map((step, place) => ({
      file,
      place,
      ms: (steps[place + 1]?.at ?? ended) - step.at,
      ran: [...shared, ...step.ran]
    }))
  }
  const found: Walked[] = []
  for (const file of files) {
    forget()
    try {
      found.push(...(await stepsOf(file)))
    } catch (error) {
      console.warn(`asked nothing, for it fails without a fault: ${file}: ${messageOf(error)}`)
    }
  }
  return found
}
