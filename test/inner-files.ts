/** Test files that do not start the service: a mutant can be put to them in a blink. */
import { readdirSync, readFileSync } from 'node:fs'

const root = new URL('..', import.meta.url)
const service = /from '[^']*(support\/(call|service|contract-judge|printed-sheets)|src\/(app|http\/operations))\.ts'/

const testsUnder = (room: string) =>
  readdirSync(new URL(`test/${room}/`, root), { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.test.ts'))
    .map(name => `test/${room}/${name}`)

export const inner: readonly string[] = ['numeric', 'domain', 'plan', 'situations']
  .flatMap(testsUnder)
  .filter(file => !service.test(readFileSync(new URL(file, root), 'utf8')))

/** Minutes together: `npm run thorough`. */
export const thorough: readonly string[] = [
  'test/deploy/search-job.test.ts',
  'test/contract-reads.test.ts',
  'test/contract-served.test.ts',
  'test/judged-answers.test.ts',
  'test/effects.test.ts',
  'test/fuzz.test.ts',
  'test/client.test.ts',
  'test/examples.test.ts',
  'test/main.test.ts',
  'test/released.test.ts',
  'test/documents/{plan-page,page-screens,plan-contradictions}.test.ts',
  'test/domain/driver/printed-sheets.test.ts',
  'test/plan/{larger-space,plan-faces,random-plans}.test.ts',
  'test/plan/designer/{driver-region,goal-plans,search-bounds,sweep}.test.ts',
  'test/domain/box/mesh-kernel.test.ts',
  'test/domain/enclosure/{sizing-agrees,tolerance}.test.ts',
  'test/domain/sheet/nest-panels.test.ts',
  'test/http/{base-path,built-checks,longest-body}.test.ts',
  'test/http/{batches,callers,design-merge,design-search,docs,forms,front-browser,observability,plan-pages}.test.ts',
  'test/http/{calculation,compression,heavy-laws,search-lines,shared-limits,snippets,strangers}.test.ts',
  'test/http/work/*.test.ts'
]
/** The circuit simulator keeps state between netlists of different files, so each file has it alone. */
export const simulator: readonly string[] = [
  'test/domain/**/{circuit-simulator,feeder-simulator,ladder,solve-points}.test.ts'
]
