/** Setup of a marked run: tells with each test file which functions it ran. */
import { afterEach } from 'vitest'

const seen = new Set<string>()
Object.assign(globalThis, { ran: (file: string, place: number) => seen.add(`${file}#${place}`) })

afterEach(({ task }) => {
  Object.assign(task.file.meta, { ran: [...seen] })
})
