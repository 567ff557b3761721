/**
 * Where a wrong number or sign can burn, cut, deafen or waste money: every room of the domain and of the plan but those that are
 * excused, so that a room that is new or moved is in the draw at once.
 */
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { type Mutant, mutantsOf } from './mutants.ts'

const root = path.resolve(import.meta.dirname, '../..')
export const sourceOf = (file: string): string => readFileSync(path.join(root, file), 'utf8')

export const sources: readonly string[] = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter(name => /^(numeric|domain|plan)\//.test(name) && name.endsWith('.ts'))
  .map(name => `src/${name}`)
  .toSorted()

/** Rooms in which no figure is made, with the reason. */
export const excused: Readonly<Record<string, string>> = {
  domain: 'records of assumptions, cautions and sentences, and the lists they are drawn from',
  'plan/answer': 'puts finished figures side by side; held by the reader of finished plans'
}

/** What a formula or a basis tells of itself is held by `basis.test.ts`; on the usual shapes of drivers only pictures rest. */
const told = /(formulas|-basis|-explained|\/hardware-shapes)\.ts$/

const roomOf = (file: string) => path.dirname(file).slice('src/'.length)

/** Every folder with sources in domain and plan. */
export const folders: readonly string[] = [...new Set(sources.map(roomOf))].filter(room => !/^numeric/.test(room))

/** The rooms mutants are drawn from. */
export const rooms: readonly string[] = folders.filter(room => excused[room] === undefined)

export function mutantsIn(room: string): readonly Mutant[] {
  return sources
    .filter(file => roomOf(file) === room && !told.test(file))
    .flatMap(file => mutantsOf(file, sourceOf(file)))
}

/** Names by which the tests of a room go where they differ from its own. */
const also: Readonly<Record<string, string>> = { circuit: 'supply', choice: 'cable', load: 'supply', source: 'supply' }

/** How many steps of a room's path a test shares; small terms belong to every room. */
export function nearness(room: string, test: string): number {
  const names = room.split('/').slice(1)
  const shared = names.filter(name => test.includes(`/${name}`) || (also[name] && test.includes(`/${also[name]}`)))
  const sameFloor = test.startsWith(`test/${room.split('/')[0]}/`)
  return shared.length + Number(sameFloor) + Number(test.includes('small-terms'))
}
