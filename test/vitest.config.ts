/**
 * Files share their process: most of a run was loading the service again in every file. `npm test` runs the quick project,
 * `npm run thorough` the rest: the fuzzer, long searches, worker threads, the browser and whole processes.
 */
import { defineConfig, type Plugin } from 'vitest/config'
import { simulator, thorough } from './inner-files.ts'

const root = new URL('..', import.meta.url).pathname
const once = `${root}test/support/planned-once.ts`

/**
 * Whoever asks for a plan is given the one that was worked out before, if there was one. A path from the root comes from the
 * cache of an earlier run, where it was found already: sent on again, the stand-in would ask itself for ever.
 */
const plannedOnce: Plugin = {
  name: 'planned-once',
  enforce: 'pre',
  resolveId: (source, importer) => (/^\..*\/plan-system\.ts$/.test(source) && importer !== once ? once : undefined)
}

const project = (name: string, include: readonly string[], exclude: readonly string[] = [], isolate = false) => ({
  extends: true as const,
  test: { name, include: [...include], exclude: [...exclude], isolate }
})

export default defineConfig({
  plugins: [plannedOnce],
  test: {
    experimental: { fsModuleCache: true },
    root,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      project('quick', ['test/**/*.test.ts'], [...simulator, ...thorough]),
      project('thorough', thorough),
      project('simulator', simulator, [], true)
    ]
  }
})
