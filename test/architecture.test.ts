/** Imports point left only, a room opens only the rooms listed here, and nothing stands in a circle. */
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { doorsOf } from './support/doors.ts'
import {
  circles,
  edgesBetween,
  outsideFiles,
  roomOf,
  type SourceFile,
  sourceFile,
  sourceFiles,
  src,
  unusedExports
} from './support/source-map.ts'

/** Left to right. A layer imports itself and anything before it. */
const layers = ['numeric', 'contract', 'domain', 'plan', 'documents', 'http', 'app.ts', 'main.ts']

/** Packages and node modules a layer may name. A layer that is not listed may name none. */
const packages: Record<string, RegExp> = {
  contract: /^typebox$/,
  documents:
    /^(d3-(scale|shape)|pdfmake|@tarikjabiri\/dxf|@gltf-transform\/core|earcut|node:(module|path|fs|url))(\/|$)/,
  http: /^(fastify|@fastify\/[a-z-]+|typebox|ajv|ajv-formats|yaml|pino|piscina|prom-client|ioredis|node:[a-z_/]+)(\/|$)/,
  'app.ts': /^(fastify|@fastify\/[a-z-]+)$/,
  'main.ts': /^node:[a-z/]+$/
}

/** Houses of the domain and the houses each may open; the loose files of the domain are open to all. */
const doors: Record<string, readonly string[]> = {
  air: [],
  filter: [],
  material: [],
  cabin: ['air'],
  driver: ['air'],
  network: ['air', 'driver', 'filter'],
  enclosure: ['air', 'driver', 'network', 'cabin', 'filter', 'port'],
  port: ['air'],
  // Sizes a port on the network of the enclosure it belongs to: nobody in the domain opens it.
  'port/sizing': ['air', 'driver', 'network', 'enclosure', 'filter', 'port'],
  box: ['air', 'driver', 'port', 'material'],
  sheet: [],
  coils: ['circuit', 'driver'],
  // Heat and plausibility need the class laws of the circuit's loads, which need no amplifier sheet.
  amplifier: ['coils', 'circuit'],
  circuit: [],
  signal: ['amplifier', 'filter']
}

/** Rooms of the box, left to right. A room opens itself and those before it, for types as well. */
const boxRooms = ['request', 'shell', 'slot', 'solids', 'stiffness', 'assembly', 'boot', 'layout']

function boxViolations({ file, imports }: SourceFile): string[] {
  const room = (path: string) => /^domain\/box\/([a-z]+)\//.exec(path)?.[1]
  const own = room(file)
  if (own === undefined) return []
  return imports.flatMap(({ target = '' }) => {
    const other = room(target)
    return other === undefined || boxRooms.indexOf(other) <= boxRooms.indexOf(own) ? [] : [`${file} opens ${target}`]
  })
}

/** Files of the contract that the domain may load: words, catalogues and defaults. Of all others it takes types. */
const plainContract = /^contract\/((cautions|sources|sentences)\/|.*\/(words|defaults)\.ts$)/

/** Layer and house of a file; a folder with doors of its own is a house. */
function placeOf(file: string): readonly [layer: string, house: string] {
  const [layer = '', house = '', folder = ''] = file.split('/')
  return [layer, doors[`${house}/${folder}`] === undefined ? house : `${house}/${folder}`]
}

function violations({ file, imports }: SourceFile): string[] {
  const [layer, house] = placeOf(file)
  return imports.flatMap(({ specifier, target, typeOnly }) => {
    const complaint = [`${file} may not import ${specifier}`]
    if (target === undefined) return packages[layer]?.test(specifier) ? [] : complaint
    const [toLayer, toHouse] = placeOf(target)
    if (!layers.includes(toLayer)) return layers.indexOf(layer) >= layers.indexOf('http') ? [] : complaint
    if (layers.indexOf(toLayer) > layers.indexOf(layer)) return complaint
    const inner = layer === 'domain' || layer === 'plan'
    if (inner && toLayer === 'contract' && !typeOnly && !plainContract.test(target)) return complaint
    const crosses =
      layer === 'domain' &&
      toLayer === 'domain' &&
      house !== toHouse &&
      !toHouse.endsWith('.ts') &&
      !house.endsWith('.ts')
    return crosses && !doors[house]?.includes(toHouse) ? complaint : []
  })
}

/** Files of other rooms of domain and plan that a file imports; the loose files of the domain are open to all. */
const openedBy = ({ file, imports }: SourceFile): readonly string[] =>
  imports.flatMap(({ target = '' }) =>
    /^(domain\/.+|plan)\//.test(target) && roomOf(target) !== roomOf(file) ? [target] : []
  )

const knockedAt = (file: SourceFile): readonly string[] =>
  openedBy(file)
    .filter(target => !doorsOf[roomOf(target)]?.includes(path.basename(target, '.ts')))
    .map(target => `${file.file} opens ${target}, which is no door of its room (test/support/doors.ts)`)

/** Exports that nothing but tests and scripts import, though their own file uses them. */
const OPENED_TO_TESTS = 76

const files = sourceFiles()

/** README by room. */
const pagesOfRooms = (): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(src, { recursive: true, encoding: 'utf8' })
      .filter(name => name.endsWith('README.md'))
      .map(name => [path.dirname(name), readFileSync(path.join(src, name), 'utf8')])
  )

describe('architecture', () => {
  it('has no import that points to the right', () => {
    expect(files.length).toBeGreaterThan(10)
    expect(files.flatMap(violations)).toEqual([])
  })

  it('keeps what the domain loads of the contract free of packages and schemas', () => {
    const loaded = files.filter(({ file }) => plainContract.test(file))
    expect(loaded.length).toBeGreaterThan(10)
    const wrong = loaded.flatMap(({ file, imports }) =>
      imports
        .filter(({ target, typeOnly }) => !typeOnly && !(target !== undefined && plainContract.test(target)))
        .map(({ specifier }) => `${file} loads ${specifier}`)
    )
    expect(wrong).toEqual([])
  })

  it('has no circle, neither of files nor of rooms, types included', () => {
    expect(circles(edgesBetween(files))).toEqual([])
    expect(circles(edgesBetween(files, roomOf))).toEqual([])
  })

  it('opens the rooms of the box from the left only, types too', () => {
    const rooms = new Set(files.flatMap(({ file }) => /^domain\/box\/([a-z]+)\//.exec(file)?.[1] ?? []))
    expect([...rooms].toSorted()).toEqual(boxRooms.toSorted())
    expect(files.flatMap(boxViolations)).toEqual([])
    const wrong = "import type { BuiltBox } from '../layout/build-box.ts'"
    expect(boxViolations(sourceFile('domain/box/solids/bodies.ts', wrong))).toHaveLength(1)
  })

  it('opens no file of another room but its doors, and keeps no door that nobody uses', () => {
    const wrong = files.flatMap(knockedAt)
    expect(wrong).toEqual([])
    const used = new Set(files.flatMap(file => openedBy(file)))
    const listed = Object.entries(doorsOf).flatMap(([room, names]) => names.map(name => `${room}/${name}.ts`))
    expect(listed.filter(door => !used.has(door))).toEqual([])
    const knock = "import { fuseSources } from '../../circuit/fuse/fuse-basis.ts'"
    expect(knockedAt(sourceFile('domain/box/solids/bodies.ts', knock))).toHaveLength(1)
  })

  it('would notice a circle', () => {
    const edges = new Map([
      ['a', ['b']],
      ['b', ['c', 'd']],
      ['c', ['a']],
      ['d', []]
    ])
    expect(circles(edges).map(group => [...group].sort())).toEqual([['a', 'b', 'c']])
  })

  it('exports nothing that nobody imports, types included', () => {
    const outside = outsideFiles()
    // The pool opens the worker by the name of its file and calls what it exports by default.
    const byName = ['http/work/worker.ts work']
    expect(unusedExports(files, outside)).toEqual(byName)
    const lonely = sourceFile('domain/air/lonely.ts', 'export interface Unasked {}')
    expect(unusedExports([...files, lonely], outside)).toContain('domain/air/lonely.ts Unasked')
  })

  it('has no code that only tests call, and opens to tests alone what has a check of its own', () => {
    const opened = unusedExports(files)
    const usedAt = (place: string) => {
      const [file = '', name = ''] = place.split(' ')
      const text = readFileSync(path.join(src, file), 'utf8').replaceAll(/\/\*.*?\*\/|\/\/[^\n]*/gs, '')
      return text.match(new RegExp(`\\b${name}\\b`, 'g'))?.length ?? 0
    }
    // What the build writes reads its checks by the key, and the pool opens the worker by its file.
    const byBuild = ['http/wire/request/schema-key.ts schemaKey', 'http/work/worker.ts work']
    // The printed tables of cables tell currents for temperatures, so only this way round meets them.
    const byTables = 'domain/circuit/cable/conductor-temperature.ts currentForTemperature'
    expect(opened.filter(place => usedAt(place) < 2)).toEqual([byTables, ...byBuild])
    // Formulas whose checks are repeated, and types of what they take. The number may only fall.
    expect(opened.length - byBuild.length).toBeLessThanOrEqual(OPENED_TO_TESTS)
  })

  it('keeps every file under 250 lines', () => {
    expect(files.filter(({ lines }) => lines > 250).map(({ file }) => file)).toEqual([])
  })

  it('has no room of more than twenty files', () => {
    const crowded = (places: readonly string[]) =>
      [...new Set(places.map(roomOf))].filter(room => places.filter(place => roomOf(place) === room).length > 20)
    const places = files.map(({ file }) => file)
    expect(crowded(places)).toEqual([])
    expect(crowded([...places, ...Array.from({ length: 21 }, (_, n) => `domain/air/${n}.ts`)])).toHaveLength(1)
  })

  it('has a page in every room of more than five files, of one screen at most', () => {
    // A file of these is the schema, the sentences or the record of one thing, as the page of the layer says.
    const alike = /^(contract|http\/operations)\//
    const pageless = (places: readonly string[], pages: ReadonlyMap<string, string>) =>
      [...new Set(places.map(roomOf))].filter(
        room => !alike.test(room) && !pages.has(room) && places.filter(place => roomOf(place) === room).length > 5
      )
    const places = files.map(({ file }) => file)
    const pages = pagesOfRooms()
    expect(pageless(places, pages)).toEqual([])
    expect(pageless([...places, ...Array.from({ length: 6 }, (_, n) => `domain/new/${n}.ts`)], pages)).toEqual([
      'domain/new'
    ])
    expect(pages.size).toBeGreaterThan(60)
    expect([...pages].filter(([, text]) => text.split('\n').length > 50).map(([room]) => room)).toEqual([])
  })

  it('has no bag of odds and ends, and no clock or chance inside', () => {
    const bags = /(^|\/)(utils?|helpers?|common|misc|manager|index)(\/|\.ts$)/
    expect(files.filter(({ file }) => bags.test(file)).map(({ file }) => file)).toEqual([])
    const inner = files.filter(({ file }) => /^(numeric|contract|domain|plan)\//.test(file))
    const impure = inner.filter(({ file }) =>
      /\b(Date\.now|new Date|Math\.random|process\.|console\.|performance\.)/.test(
        readFileSync(path.join(src, file), 'utf8')
      )
    )
    expect(impure.map(({ file }) => file)).toEqual([])
  })

  const place = 'domain/port/port-length.ts'
  for (const line of [
    "import fastify from 'fastify'",
    "import { buildApp } from '../../app.ts'",
    "import { rateFuse } from '../circuit/fuse/rate-fuse.ts'",
    "import 'node:fs'",
    "const m = await import('undici')",
    "import { PortSizingRequest } from '../../contract/ports/port-sizing.ts'",
    "import { type PortSizingRequest } from '../../contract/ports/port-sizing.ts'"
  ]) {
    it(`would notice: ${line}`, () => expect(violations(sourceFile(place, line))).toHaveLength(1))
  }

  for (const line of [
    "import { airOf } from '../air/air.ts'",
    "import { DesignError } from '../design-error.ts'",
    "import { bisect } from '../../numeric/bisect.ts'",
    "import type { PortSizingRequest } from '../../contract/ports/port-sizing.ts'",
    "import { portMouths } from '../../contract/ports/words.ts'"
  ]) {
    it(`lets through: ${line}`, () => expect(violations(sourceFile(place, line))).toEqual([]))
  }
})
