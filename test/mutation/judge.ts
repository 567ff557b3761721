/** The process that works on a list of mutants sent by its parent, one after another; a mutant that never ends takes it along. */
import { bench } from './bench.ts'
import type { Mutant } from './mutants.ts'
import { rooms, sourceOf, testsOf } from './rooms.ts'

export interface Task {
  readonly room: string
  readonly mutant: Mutant
}

export const faulty = ({ file, start, end, now }: Mutant): string => {
  const text = sourceOf(file)
  return text.slice(0, start) + now + text.slice(end)
}

async function judge(tasks: readonly Task[]): Promise<void> {
  const { failing, close } = await bench()
  const lists = (room: string) => testsOf(rooms[room] ?? { files: /^$/, tests: [] })
  for (const room of new Set(tasks.map(task => task.room)))
    for (const tests of lists(room)) {
      const broken = await failing(tests)
      if (broken !== undefined) throw new Error(`${room} fails without a fault: ${broken}`)
    }
  process.send?.({ ready: true })
  for (const { room, mutant } of tasks) {
    let by: string | undefined
    for (const tests of lists(room)) by ??= await failing(tests, mutant.file, faulty(mutant))
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
