/** Puts a changed source file to tests, in one warm process and without a byte written to the sources. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { createVitest, type TestSpecification } from 'vitest/node'
import { inner } from '../inner-files.ts'

export const root = path.resolve(import.meta.dirname, '../..')

export interface Bench {
  /** First test that fails with the file so changed; undefined where all pass. */
  readonly failing: (tests: readonly string[], file?: string, text?: string) => Promise<string | undefined>
  readonly close: () => Promise<void>
}

export async function bench(include: readonly string[] = inner): Promise<Bench> {
  let planted: { readonly file: string; readonly text: string } | undefined
  const plugin = {
    name: 'planted-fault',
    enforce: 'pre' as const,
    load: (id: string) => (id.split('?')[0] === planted?.file ? planted?.text : undefined)
  }
  const vitest = await createVitest(
    'test',
    {
      root,
      config: false,
      include: [...include],
      watch: false,
      isolate: false,
      fileParallelism: false,
      pool: 'threads',
      bail: 1,
      testTimeout: 10_000,
      reporters: [{}]
    },
    { plugins: [plugin], logLevel: 'silent' }
  )
  const all = await vitest.globTestSpecifications()
  const specifications = new Map(all.map(each => [path.relative(root, each.moduleId), each]))

  const failing: Bench['failing'] = async (tests, file, text) => {
    planted = file === undefined || text === undefined ? undefined : { file: path.join(root, file), text }
    if (file !== undefined) vitest.invalidateFile(path.join(root, file))
    const chosen = tests.flatMap(test => specifications.get(test) ?? []) as TestSpecification[]
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(chosen)
    if (file !== undefined) {
      planted = undefined
      vitest.invalidateFile(path.join(root, file))
    }
    for (const module of testModules) {
      for (const test of module.children.allTests('failed')) return `${module.relativeModuleId}: ${test.fullName}`
      if (!module.ok()) return `${module.relativeModuleId}: does not load`
    }
    return unhandledErrors.length > 0 ? 'an error outside the tests' : undefined
  }
  return { failing, close: () => vitest.close() }
}

export const sourceOf = (file: string): string => readFileSync(path.join(root, file), 'utf8')
