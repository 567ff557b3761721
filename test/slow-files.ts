/** Test files that take no part in `npm test`, nor are faults put to them. */

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
  'test/documents/{plan-page,page-screens,random-forms}.test.ts',
  'test/domain/driver/printed-sheets.test.ts',
  'test/plan/{larger-space,plan-faces,random-plans}.test.ts',
  'test/plan/designer/{driver-region,goal-plans,search-bounds,sweep}.test.ts',
  'test/domain/box/{mesh-boxes,mesh-kernel}.test.ts',
  'test/domain/enclosure/{sizing-agrees,tolerance}.test.ts',
  'test/domain/sheet/nest-panels.test.ts',
  'test/http/{base-path,built-checks,longest-body}.test.ts',
  'test/http/{batches,callers,design-merge,design-search,docs,forms,front-browser,german-phrases,observability,plan-pages}.test.ts',
  'test/http/{calculation,compression,heavy-laws,search-lines,shared-limits,snippets,strangers}.test.ts',
  'test/http/work/*.test.ts'
]
/** The circuit simulator keeps state between netlists of different files, so each file has it alone. */
export const simulator: readonly string[] = [
  'test/domain/**/{circuit-simulator,feeder-simulator,ladder,solve-points}.test.ts'
]
