/** The process that works on a list of mutants sent by its parent, one after another; a mutant may take it along. */
import { type Asked, bench } from './bench.ts'
import type { Mutant } from './mutants.ts'
import { sourceOf } from './rooms.ts'

/** A test that takes this long where none takes a third of it never ends. */
const PATIENCE_MS = 30_000

export interface Task {
  readonly room: string
  readonly mutant: Mutant
  /** Those that run it, the likeliest to fail first. */
  readonly tests: readonly Asked[]
}

const faulty = ({ file, start, end, now }: Mutant): string => {
  const text = sourceOf(file)
  return text.slice(0, start) + now + text.slice(end)
}

async function judge(tasks: readonly Task[]): Promise<void> {
  const { failing } = bench(PATIENCE_MS)
  for (const { mutant, tests } of tasks) {
    const by = tests.length === 0 ? undefined : await failing(tests, mutant.file, faulty(mutant))
    process.send?.({ by })
  }
}

process.once('message', (tasks: readonly Task[]) => {
  judge(tasks).then(
    () => process.exit(0),
    error => process.send?.({ error: String(error) }, () => process.exit(1))
  )
})
