/** The unit that a field's description states is the unit that its name ends in. */
import { describe, expect, it } from 'vitest'
import type { JsonSchema } from '../../src/contract/field/component.ts'
import { siField } from '../../src/contract/field/wire-units.ts'
import { operations } from '../../src/http/operations.ts'
import { objectsOf } from '../support/schema-walk.ts'

/** Ends of names and their units, the longest first. A name with none of them is a pure number, or its unit is told in words. */
const suffixes = [
  ['JPerM3K', 'J/(m³·K)'],
  ['PaSPerM3', 'Pa·s/m³'],
  ['KgPerM3', 'kg/m³'],
  ['KgPerM2', 'kg/m²'],
  ['KgPerS', 'kg/s'],
  ['M3PerS', 'm³/s'],
  ['MPerS', 'm/s'],
  ['PerMin', '1/min'],
  ['MmPerN', 'mm/N'],
  ['OhmPerM', 'Ω/m'],
  ['MohmPerM', 'mΩ/m'],
  ['OhmM', 'Ω·m'],
  ['KPerW', 'K/W'],
  ['PerK', '1/K'],
  ['PerS', '1/s'],
  ['A2s', 'A²·s'],
  ['Percent', '%'],
  ['Minutes', 'min'],
  ['Hours', 'h'],
  ['Mohm', 'mΩ'],
  ['Ohm', 'Ω'],
  ['Cm2', 'cm²'],
  ['Mm2', 'mm²'],
  ['Gpa', 'GPa'],
  ['Deg', '°'],
  ['Hz', 'Hz'],
  ['Db', 'dB'],
  ['Mm', 'mm'],
  ['Ms', 'ms'],
  ['Mv', 'mV'],
  ['Mh', 'mH'],
  ['Kg', 'kg'],
  ['Pa', 'Pa'],
  ['Nm', 'N·m'],
  ['Tm', 'T·m'],
  ['Va', 'VA'],
  ['Ah', 'A·h'],
  ['M2', 'm²'],
  ['L', 'L'],
  ['G', 'g'],
  ['M', 'm'],
  ['V', 'V'],
  ['A', 'A'],
  ['W', 'W'],
  ['C', '°C'],
  ['S', 's'],
  ['F', 'F'],
  ['J', 'J'],
  ['K', 'K'],
  ['N', 'N']
] as const

interface Declared {
  readonly name: string
  readonly unit: string
}

const unitOf = (schema: JsonSchema) => /\[([^\]]*)\]$/.exec(schema.description ?? schema.items?.description ?? '')?.[1]

/** Every field whose description ends in a unit, of all requests and answers. */
function declared(): readonly Declared[] {
  const roots = operations.flatMap(({ body, answer }) => [body as JsonSchema, answer as JsonSchema])
  return [...objectsOf(roots)].flatMap(({ properties = {} }) =>
    Object.entries(properties).flatMap(([name, inner]) => {
      const unit = unitOf(inner)
      return unit === undefined ? [] : [{ name, unit }]
    })
  )
}

/** A whole name may be its unit (`ohmPerM`), a single letter is a symbol. */
function suffixOf(name: string): (typeof suffixes)[number] | undefined {
  const whole = `${name[0]?.toUpperCase()}${name.slice(1)}`
  return suffixes.find(([end]) => (name.endsWith(end) && name.length > end.length) || (end.length > 2 && whole === end))
}

describe('fields', () => {
  const all = declared()

  it('state the unit that their name ends in', () => {
    expect(all.length).toBeGreaterThan(800)
    const wrong = all.filter(({ name, unit }) => {
      const end = suffixOf(name)
      return end !== undefined && end[1] !== unit
    })
    expect(wrong).toEqual([])
  })

  it('without such an end are pure numbers, or have their unit by their name', () => {
    const bare = all.filter(({ name }) => suffixOf(name) === undefined)
    const odd = bare.filter(({ unit }) => unit !== '1')
    // Weights and points of a search, resistances by place, and three quantities with a unit of their own.
    expect([...new Set(odd.map(({ name, unit }) => `${name} ${unit}`))].sort()).toEqual([
      'box dB',
      'chassis Ω',
      'current dB',
      'fuse Ω',
      'hoursToEmpty h',
      'joints Ω',
      'k A·√s/mm²',
      'leFactor Ω·s^n',
      'level dB',
      'other Ω',
      'positive Ω',
      'price dB',
      'reach dB',
      'return Ω',
      'score dB'
    ])
  })

  it('that are scaled on their way in are scaled by the unit they state', () => {
    const perSi: Readonly<Record<string, number>> = {
      mm: 1e3,
      L: 1e3,
      g: 1e3,
      'cm²': 1e4,
      'mm²': 1e6,
      'mm/N': 1e3,
      '1/min': 60,
      mH: 1e3,
      mV: 1e3,
      ms: 1e3,
      mΩ: 1e3,
      'mΩ/m': 1e3,
      GPa: 1e-9
    }
    const wrong = all.filter(({ name, unit }) => siField(name).perSi !== (perSi[unit] ?? 1))
    expect(wrong).toEqual([])
  })
})
