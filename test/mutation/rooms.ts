/** Where a wrong number or sign can burn, cut, deafen or waste money, and the tests that guard each room, nearest first. */
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { inner } from '../inner-files.ts'
import { type Mutant, mutantsOf } from './mutants.ts'

const root = path.resolve(import.meta.dirname, '../..')
export const sourceOf = (file: string): string => readFileSync(path.join(root, file), 'utf8')

interface Room {
  readonly files: RegExp
  /** In turn: a mutant that one list lets live is put to the next. */
  readonly tests: readonly RegExp[]
}

export const rooms: Readonly<Record<string, Room>> = {
  fuse: { files: /circuit\/fuse\//, tests: [/domain\/(fuse\/|small-terms)/, /domain\/(cable\/|supply\/choose-cable)/] },
  cable: { files: /circuit\/cable\//, tests: [/domain\/(cable\/|fuse\/|small-terms)/, /supply\/choose-cable/] },
  circuit: {
    files: /circuit\/(choice|graph|load|source|points)\//,
    tests: [/domain\/(supply\/(?!feeder-simulator)|small-terms)/, /domain\/circuit\/(?!solve-points)/]
  },
  coils: { files: /domain\/coils\//, tests: [/domain\/coils\//, /domain\/amplifier\//] },
  amplifier: { files: /domain\/amplifier\//, tests: [/domain\/amplifier\//] },
  solids: { files: /box\/(boot|solids|layout)\//, tests: [/domain\/(box\/(?!mesh-kernel)|small-terms)/] },
  stiffness: {
    files: /box\/stiffness\//,
    tests: [/domain\/(box\/(plate|bracing)|small-terms)/, /domain\/box\/(?!mesh-kernel)/]
  },
  port: { files: /domain\/port\//, tests: [/domain\/(port\/|small-terms)/, /domain\/enclosure\/(large-signal|size-)/] },
  limits: { files: /enclosure\/limits\//, tests: [/enclosure\/(coil-heating|governing|large|limit|beyond)/] },
  sizing: {
    files: /enclosure\/sizing\//,
    tests: [/(enclosure\/size|small-terms)/, /enclosure\/(closed|vented|other)/]
  },
  plan: { files: /^src\/plan\/(?!designer)/, tests: [/^test\/plan\/(?!random-plans)/] }
}

const sources = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter(name => name.endsWith('.ts'))
  .map(name => `src/${name}`)
  .toSorted()

/** What a formula or a basis tells of itself is held by `basis.test.ts`. */
const told = /(formulas|-basis|-explained)\.ts$/

export function mutantsIn(room: Room): readonly Mutant[] {
  return sources
    .filter(file => room.files.test(file) && !told.test(file))
    .flatMap(file => mutantsOf(file, sourceOf(file)))
}

export const testsOf = (room: Room): readonly (readonly string[])[] =>
  room.tests.map(list => inner.filter(test => list.test(test))).filter(list => list.length > 0)
