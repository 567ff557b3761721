/**
 * Files share their process: most of a run was loading the service again in every file. `npm test` runs the quick project,
 * `npm run thorough` the rest: the fuzzer, long searches, worker threads, the browser and whole processes.
 */
import { defineConfig, type Plugin } from 'vitest/config'
import { simulator, thorough } from './slow-files.ts'

const root = new URL('..', import.meta.url).pathname
const plan = 'export function planSystem('

/** Whoever asks for a plan is given the one that was worked out before, if there was one. */
const plannedOnce: Plugin = {
  name: 'planned-once',
  enforce: 'pre',
  transform: (code, id) => {
    if (id !== `${root}src/plan/plan-system.ts`) return undefined
    if (!code.includes(plan)) throw new Error(`no place for the memory of plans: ${plan}`)
    const wrapped = `import { once } from '${root}test/support/once.ts'; export const planSystem = once(afresh)`
    return { code: `${code.replace(plan, 'function afresh(')}\n${wrapped}\n`, map: null }
  }
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
