/**
 * Files share their process: most of a run was loading the service again in every file. `npm test` runs the quick projects,
 * `npm run thorough` the rest: the fuzzer, long searches, the browser and whole processes.
 */
import { defineConfig } from 'vitest/config'

const thorough = [
  'test/contract-reads.test.ts',
  'test/contract-served.test.ts',
  'test/defaults.test.ts',
  'test/fuzz.test.ts',
  'test/client.test.ts',
  'test/main.test.ts',
  'test/released.test.ts',
  'test/documents/plan-page.test.ts',
  'test/plan/random-plans.test.ts',
  'test/domain/box/mesh-kernel.test.ts',
  'test/http/longest-body.test.ts',
  'test/http/{batches,design-search,docs,forms,observability,plan-pages}.test.ts'
]
// The circuit simulator keeps state between netlists of different files, so each file has it alone.
const simulator = ['test/domain/**/{circuit-simulator,feeder-simulator,ladder}.test.ts']
const contract = ['test/{contract,basis,readme}.test.ts']
const inner = ['test/{numeric,domain,plan}/**/*.test.ts']

const project = (name: string, include: readonly string[], exclude: readonly string[] = [], isolate = false) => ({
  extends: true as const,
  test: { name, include: [...include], exclude: [...exclude], isolate }
})

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      project('inner', inner, [...simulator, ...thorough]),
      project('edge', ['test/**/*.test.ts'], [...inner, ...contract, ...thorough]),
      project('contract', contract),
      project('thorough', thorough),
      project('simulator', simulator, [], true)
    ]
  }
})
