/** Puts a changed source file to tests, in one warm process and without a byte written to the sources. */
import path from 'node:path'
import { createVitest, type TestSpecification, type Vitest } from 'vitest/node'
import { inner } from '../inner-files.ts'

const root = path.resolve(import.meta.dirname, '../..')

export interface Bench {
  /** First test that fails with the file so changed; undefined where all pass. */
  readonly failing: (tests: readonly string[], file?: string, text?: string) => Promise<string | undefined>
  readonly close: () => Promise<void>
}

/** @throws Error where not every test ran, for then nothing is known */
function firstFailure({ testModules, unhandledErrors }: Awaited<ReturnType<Vitest['runTestSpecifications']>>) {
  for (const module of testModules) {
    for (const test of module.children.allTests('failed')) return `${module.relativeModuleId}: ${test.fullName}`
    const [error] = module.errors()
    if (error !== undefined) return `${module.relativeModuleId} does not load: ${error.message}`
  }
  if (unhandledErrors.length > 0) return 'an error outside the tests'
  for (const module of testModules)
    if ([...module.children.allTests('passed')].length === 0) throw new Error(`${module.relativeModuleId} did not run`)
  return undefined
}

export async function bench(): Promise<Bench> {
  let planted: { readonly file: string; readonly text: string } | undefined
  const plugin = {
    name: 'planted-fault',
    enforce: 'pre' as const,
    load: (id: string) => (id.split('?')[0] === planted?.file ? planted?.text : undefined)
  }
  const options = {
    root,
    config: false as const,
    include: [...inner],
    watch: false,
    isolate: false,
    fileParallelism: false
  }
  const vitest = await createVitest(
    'test',
    { ...options, pool: 'threads' as const, bail: 1, testTimeout: 20_000, reporters: [{}] },
    { plugins: [plugin], logLevel: 'silent' }
  )
  const all = await vitest.globTestSpecifications()
  const specifications = new Map(all.map(each => [path.relative(root, each.moduleId), each]))

  const failing: Bench['failing'] = async (tests, file = '', text = '') => {
    const source = path.join(root, file)
    planted = text === '' ? undefined : { file: source, text }
    vitest.invalidateFile(source)
    const chosen = tests.flatMap(test => specifications.get(test) ?? []) as TestSpecification[]
    // What an earlier run said of a file that this one does not reach would be taken for its own.
    vitest.state.filesMap.clear()
    const ran = await vitest.runTestSpecifications(chosen)
    planted = undefined
    // Without this every later run would still see the fault.
    vitest.invalidateFile(source)
    return firstFailure(ran)
  }
  return { failing, close: () => vitest.close() }
}
