/** Heavy calls worked out where the test runs. */
import { DesignError } from '../../src/domain/design-error.ts'
import type { Work } from '../../src/http/work/pool.ts'
import work from '../../src/http/work/worker.ts'

export const inThisProcess: Work = {
  run: async task => {
    const done = await work(task)
    if ('refusal' in done) throw new DesignError(done.refusal.code, ...done.refusal.faults)
    return done.answer
  },
  waiting: () => 0,
  close: async () => {}
}
