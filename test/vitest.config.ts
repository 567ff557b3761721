/**
 * Files share their process: most of a run was loading the service again in every file. `npm test` runs the quick projects,
 * `npm run thorough` the rest: the fuzzer, long searches, worker threads, the browser and whole processes.
 */
import { defineConfig } from 'vitest/config'
import { inner } from './inner-files.ts'

const thorough = [
  'test/deploy/search-job.test.ts',
  'test/contract-reads.test.ts',
  'test/contract-served.test.ts',
  'test/defaults.test.ts',
  'test/effects.test.ts',
  'test/fuzz.test.ts',
  'test/client.test.ts',
  'test/examples.test.ts',
  'test/main.test.ts',
  'test/released.test.ts',
  'test/documents/{plan-page,page-screens,plan-contradictions}.test.ts',
  'test/domain/driver/printed-sheets.test.ts',
  'test/plan/{larger-space,plan-faces,random-plans}.test.ts',
  'test/plan/designer/{goal-plans,search-bounds,sweep}.test.ts',
  'test/domain/box/mesh-kernel.test.ts',
  'test/domain/enclosure/{sizing-agrees,tolerance}.test.ts',
  'test/domain/sheet/{nest-panels,sheet-bound}.test.ts',
  'test/http/{base-path,built-checks,longest-body}.test.ts',
  'test/http/{batches,callers,design-merge,design-search,docs,forms,front-browser,observability,plan-pages}.test.ts',
  'test/http/{calculation,compression,search-lines,shared-limits,snippets,strangers}.test.ts',
  'test/http/work/*.test.ts'
]
// The circuit simulator keeps state between netlists of different files, so each file has it alone.
const simulator = ['test/domain/**/{circuit-simulator,feeder-simulator,ladder,solve-points}.test.ts']

const project = (name: string, include: readonly string[], exclude: readonly string[] = [], isolate = false) => ({
  extends: true as const,
  test: { name, include: [...include], exclude: [...exclude], isolate }
})

export default defineConfig({
  test: {
    experimental: { fsModuleCache: true },
    root: new URL('..', import.meta.url).pathname,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      project('inner', inner, [...simulator, ...thorough]),
      project('edge', ['test/**/*.test.ts'], [...inner, ...simulator, ...thorough]),
      project('thorough', thorough),
      project('simulator', simulator, [], true)
    ]
  }
})
