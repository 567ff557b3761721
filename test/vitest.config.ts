/**
 * Files share their process: most of a run was loading the service again in every file. `npm test` runs the quick projects,
 * `npm run thorough` the rest: the fuzzer, long searches, worker threads, the browser and whole processes.
 */
import { defineConfig } from 'vitest/config'
import { inner, simulator, thorough } from './inner-files.ts'

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
