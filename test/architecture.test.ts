/** Imports point inwards only, and a domain room opens only the doors listed here. */
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'

const src = path.resolve(import.meta.dirname, '../src')

/** Inner to outer. A layer imports itself and anything before it. */
const layers = ['numeric', 'domain', 'plan', 'documents', 'http', 'app.ts', 'main.ts']

/** Packages and node modules a layer may name. A layer that is not listed may name none. */
const packages: Record<string, RegExp> = {
  documents: /^(d3-(scale|shape)|pdfmake|@tarikjabiri\/dxf|node:(module|path|fs|url))(\/|$)/,
  http: /^(fastify|@fastify\/[a-z-]+|typebox|ajv|ajv-formats|yaml|piscina|prom-client|node:[a-z_/]+)(\/|$)/,
  'app.ts': /^(fastify|@fastify\/[a-z-]+)$/,
  'main.ts': /^node:[a-z/]+$/
}

/** Domain rooms and the rooms each may import. Loose files of the domain are open to all. */
const doors: Record<string, readonly string[]> = {
  cautions: [],
  sources: [],
  air: [],
  filter: [],
  material: [],
  driver: ['air'],
  network: ['air', 'driver', 'filter'],
  port: ['air', 'driver', 'network', 'filter', 'enclosure'],
  cabin: ['air'],
  enclosure: ['air', 'driver', 'network', 'cabin', 'filter'],
  box: ['air', 'driver', 'port', 'material'],
  sheet: [],
  coils: ['cable'],
  // Heat and plausibility need the class laws of the supply room, which needs no amplifier sheet.
  amplifier: ['coils', 'supply'],
  cable: [],
  fuse: ['cable'],
  supply: ['cable', 'fuse'],
  signal: ['amplifier', 'filter']
}

function violations(file: string, text: string): string[] {
  const place = (name: string) => path.relative(src, name).split(path.sep)
  const [layer = '', room = ''] = place(file)
  return [...text.matchAll(/\bfrom\s+['"]([^'"\n]+)['"]|\bimport\s*\(?\s*['"]([^'"\n]+)['"]/g)].flatMap(match => {
    const target = match[1] ?? match[2] ?? ''
    const complaint = [`${path.relative(src, file)} may not import ${target}`]
    if (!target.startsWith('.')) return packages[layer]?.test(target) ? [] : complaint
    const [toLayer = '', toRoom = ''] = place(path.resolve(path.dirname(file), target))
    if (!layers.includes(toLayer) && toLayer !== '')
      return layer === 'http' || layer === 'app.ts' || layer === 'main.ts' ? [] : complaint
    if (layers.indexOf(toLayer) > layers.indexOf(layer)) return complaint
    const crosses =
      layer === 'domain' && toLayer === 'domain' && room !== toRoom && !toRoom.endsWith('.ts') && !room.endsWith('.ts')
    return crosses && !doors[room]?.includes(toRoom) ? complaint : []
  })
}

const sourceFiles = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter(file => file.endsWith('.ts'))
  .map(file => ({ file, text: readFileSync(path.join(src, file), 'utf8') }))

describe('architecture', () => {
  it('has no import that points outwards', () => {
    expect(sourceFiles.length).toBeGreaterThan(10)
    expect(sourceFiles.flatMap(({ file, text }) => violations(path.join(src, file), text))).toEqual([])
  })

  it('keeps every file under 250 lines', () => {
    expect(sourceFiles.filter(({ text }) => text.split('\n').length > 250).map(({ file }) => file)).toEqual([])
  })

  it('has no bag of odds and ends, and no clock or chance inside', () => {
    expect(
      sourceFiles
        .filter(({ file }) => /(^|\/)(utils?|helpers?|common|misc|manager|index)(\/|\.ts$)/.test(file))
        .map(({ file }) => file)
    ).toEqual([])
    const inner = sourceFiles.filter(({ file }) => /^(numeric|domain|plan)\//.test(file))
    const impure = inner.filter(({ text }) =>
      /\b(Date\.now|new Date|Math\.random|process\.|console\.|performance\.)/.test(text)
    )
    expect(impure.map(({ file }) => file)).toEqual([])
  })

  for (const line of [
    "import fastify from 'fastify'",
    "import { buildApp } from '../../app.ts'",
    "import { rateFuse } from '../fuse/rate-fuse.ts'",
    "import 'node:fs'",
    "const m = await import('undici')"
  ]) {
    it(`would notice: ${line}`, () =>
      expect(violations(path.join(src, 'domain/port/port-length.ts'), line)).toHaveLength(1))
  }

  for (const line of [
    "import { airOf } from '../air/air.ts'",
    "import { DesignError } from '../design-error.ts'",
    "import { bisect } from '../../numeric/bisect.ts'"
  ]) {
    it(`lets through: ${line}`, () =>
      expect(violations(path.join(src, 'domain/port/port-length.ts'), line)).toEqual([]))
  }
})
