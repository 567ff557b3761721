/** The process that works on a list of mutants sent by its parent, one after another; a mutant that never ends takes it along. */
import { bench } from './bench.ts'
import type { Mutant } from './mutants.ts'
import { sourceOf } from './rooms.ts'

export interface Task {
  readonly room: string
  readonly mutant: Mutant
  /** Those that run it, the likeliest to fail first. */
  readonly tests: readonly string[]
}

export const faulty = ({ file, start, end, now }: Mutant): string => {
  const text = sourceOf(file)
  return text.slice(0, start) + now + text.slice(end)
}

async function judge(tasks: readonly Task[]): Promise<void> {
  const { failing, close } = await bench()
  process.send?.({ ready: true })
  for (const { mutant, tests } of tasks) {
    const by = tests.length === 0 ? undefined : await failing(tests, mutant.file, faulty(mutant))
    process.send?.({ by })
  }
  await close()
}

process.once('message', (tasks: readonly Task[]) => {
  judge(tasks).then(
    () => process.exit(0),
    error => {
      console.error(error)
      process.exit(1)
    }
  )
})
