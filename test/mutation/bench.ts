/** Puts a changed source file to tests, in one warm process and without a byte written to the sources. */
import path from 'node:path'
import { createVitest, type TestSpecification, type Vitest } from 'vitest/node'
import { simulator, thorough } from '../slow-files.ts'

const root = path.resolve(import.meta.dirname, '../..')

type Ran = Awaited<ReturnType<Vitest['runTestSpecifications']>>

/** @throws Error where not every file ran and it is not said what that means, for then nothing is known */
function firstFailure({ testModules, unhandledErrors }: Ran, unrun?: string): string | undefined {
  for (const module of testModules) {
    for (const test of module.children.allTests('failed')) return `${module.relativeModuleId}: ${test.fullName}`
    const [error] = module.errors()
    if (error !== undefined) return `${module.relativeModuleId} does not load: ${error.message}`
  }
  if (unhandledErrors.length > 0) return 'an error outside the tests'
  for (const module of testModules)
    if ([...module.children.allTests('passed')].length === 0) {
      if (unrun !== undefined) return `${module.relativeModuleId}: ${unrun}`
      throw new Error(`${module.relativeModuleId} did not run`)
    }
  return undefined
}

/** Files in the order they are asked in: the next is loaded only where those before have passed. */
class InTurn {
  shard = async (files: TestSpecification[]) => files
  sort = async (files: TestSpecification[]) => files
}

/** @param read  text of a source where it is another than stands in the file */
async function started(read: (file: string) => string | undefined): Promise<Vitest> {
  const plugin = { name: 'another-text', enforce: 'pre' as const, load: (id: string) => read(id.split('?')[0] ?? id) }
  const options = {
    root,
    config: false as const,
    include: ['test/**/*.test.ts'],
    exclude: [...thorough, ...simulator, 'test/deploy/**'],
    setupFiles: [path.join(import.meta.dirname, 'ran.ts')],
    sequence: { sequencer: InTurn },
    watch: false,
    isolate: false,
    fileParallelism: false
  }
  return createVitest(
    'test',
    { ...options, pool: 'threads' as const, bail: 1, testTimeout: 60_000, hookTimeout: 60_000, reporters: [{}] },
    { plugins: [plugin], logLevel: 'silent' }
  )
}

async function ready(read: (file: string) => string | undefined) {
  const vitest = await started(read)
  const all = await vitest.globTestSpecifications()
  const specifications = new Map(all.map(each => [path.relative(root, each.moduleId), each]))
  const run = (tests: readonly string[]) => {
    // What an earlier run said of a file that this one does not reach would be taken for its own.
    vitest.state.filesMap.clear()
    return vitest.runTestSpecifications(tests.flatMap(test => specifications.get(test) ?? []))
  }
  return { vitest, run, tests: [...specifications.keys()].toSorted() }
}

export interface Bench {
  /** First test that fails with the file so changed; undefined where all pass. */
  readonly failing: (tests: readonly string[], file?: string, text?: string) => Promise<string | undefined>
  /** Every quick test there is. */
  readonly tests: readonly string[]
  readonly close: () => Promise<void>
}

export async function bench(): Promise<Bench> {
  let planted: { readonly file: string; readonly text: string } | undefined
  const { vitest, run, tests } = await ready(id => (id === planted?.file ? planted?.text : undefined))
  const failing: Bench['failing'] = async (asked, file = '', text = '') => {
    const source = path.join(root, file)
    planted = text === '' ? undefined : { file: source, text }
    vitest.invalidateFile(source)
    const ran = await run(asked)
    planted = undefined
    // Without this every later run would still see the fault.
    vitest.invalidateFile(source)
    return firstFailure(ran)
  }
  return { failing, tests, close: () => vitest.close() }
}

/** What a test file ran and how long it took, loading included. */
export interface Walked {
  readonly test: string
  readonly ms: number
  readonly ran: readonly string[]
}

/**
 * Each file alone, so that nothing another has worked out before hides what it runs.
 * @param marked  text of a source file with its marks
 * A file that fails without a fault is told of and left out: it can show nothing.
 */
export async function walked(marked: (file: string) => string | undefined): Promise<Walked[]> {
  const { vitest, run, tests } = await ready(id => marked(path.relative(root, id)))
  const found: Walked[] = []
  for (const test of tests) {
    const before = performance.now()
    const ran = await run([test])
    const broken = firstFailure(ran, 'none of its tests ran')
    if (broken !== undefined) {
      console.warn(`asked nothing, for it fails without a fault: ${broken}`)
      continue
    }
    const [module] = ran.testModules
    const { ran: places = [] } = (module?.meta() ?? {}) as { readonly ran?: readonly string[] }
    found.push({ test, ms: performance.now() - before, ran: places })
  }
  await vitest.close()
  return found
}
