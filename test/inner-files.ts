/** Test files that load nothing of the service: they start at once, and a mutant can be put to them in a blink. */
import { readdirSync, readFileSync } from 'node:fs'

const root = new URL('..', import.meta.url)
const service =
  /from '[^']*(support\/(call|service|contract-judge|printed-sheets)|src\/(app|http\/operations|http\/operations\/systems\/(plans|design-search)))\.ts'/

const testsUnder = (room: string) =>
  readdirSync(new URL(`test/${room}/`, root), { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.test.ts'))
    .map(name => `test/${room}/${name}`)

export const inner: readonly string[] = ['numeric', 'domain', 'plan']
  .flatMap(testsUnder)
  .filter(file => !service.test(readFileSync(new URL(file, root), 'utf8')))
