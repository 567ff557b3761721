/** Each formula is one record: its text, worked out by a general-purpose evaluator, is the function the answers come from. */
import { evaluate, type MathNode, parse, type SymbolNode, unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { sources } from '../src/contract/sources/source.ts'
import type { Formula, FormulaUnit } from '../src/domain/formula.ts'
import { formulas } from '../src/plan/formulas.ts'
import { expectPrinted } from './support/printed.ts'
import { seeded } from './support/random-requests.ts'

type Given = Readonly<Record<string, number>>

const TRIES = 200

function randomGiven({ symbols }: Formula, random: () => number): Given {
  const value = ({ from, to, whole }: Formula['symbols'][string]) =>
    whole ? Math.floor(from + random() * (to + 1 - from)) : from + random() * (to - from)
  return Object.fromEntries(Object.entries(symbols).map(([name, symbol]) => [name, value(symbol)]))
}

/** Places at which text and function part, over random inputs in the ranges. */
function disagreements(record: Formula): readonly string[] {
  const compiled = parse(record.text).compile()
  const random = seeded(record.text.length)
  return Array.from({ length: TRIES }, () => randomGiven(record, random)).flatMap(given => {
    const [text, code] = [Number(compiled.evaluate({ ...given })), record.of(given)]
    const close = Math.abs(text - code) <= 1e-10 * Math.max(Math.abs(text), Math.abs(code), 1e-3)
    return close ? [] : [`${record.id} at ${JSON.stringify(given)}: text ${text}, function ${code}`]
  })
}

/** Names in the text that are neither constant nor function. */
function namesIn(text: string): ReadonlySet<string> {
  const names = new Set<string>()
  parse(text).traverse((node: MathNode, path: string) => {
    const name = (node as SymbolNode).name
    if (node.type === 'SymbolNode' && path !== 'fn' && name !== 'pi') names.add(name)
  })
  return names
}

/** As the evaluator spells them; ratios and levels are pure numbers, and a temperature in °C counts as a difference. */
const spelled: Partial<Record<FormulaUnit, string>> = {
  '1/K': 'K^-1',
  'K/W': 'K/W',
  'kg/m²': 'kg/m^2',
  'kg/m³': 'kg/m^3',
  'm²': 'm^2',
  'm³': 'm^3',
  'm³/s': 'm^3/s',
  N·m: 'N m',
  T·m: 'T m',
  Ω: 'ohm',
  'Ω/m': 'ohm/m'
}
const pure: readonly FormulaUnit[] = ['1', '%', 'dB']

/** Constants with a unit stand in their text, so that the sum of units does not come out. */
const noDimensions: Readonly<Record<string, string>> = {
  'warm-resistance': 'the 20 is degrees',
  'steady-coil-temperature': 'the 1000 is degrees',
  'level-of-one-watt': 'the 20e-6 is pascals, the 1 W and the 1 m are left out',
  'plateau-level': 'the 1 m is left out',
  'design-score': 'decibels of worth over bare reference figures',
  'design-score-with-price': 'decibels of worth over bare reference figures'
}

function dimensionFault({ text, symbols, unit: wanted }: Formula): string | undefined {
  const scope = Object.fromEntries(
    Object.entries(symbols).map(([name, symbol]) => {
      const value = symbol.to
      return [name, pure.includes(symbol.unit) ? value : unit(value, spelled[symbol.unit] ?? symbol.unit)]
    })
  )
  const result = evaluate(text.replaceAll('log10(', 'level('), {
    ...scope,
    level: (ratio: unknown) => Math.log10(Number(typeof ratio === 'number' ? ratio : `${ratio}`))
  })
  if (pure.includes(wanted)) return Number.isFinite(Number(`${result}`)) ? undefined : `${result} is no pure number`
  if (typeof result === 'number') return `${result} has no unit`
  return result.equalBase(unit(1, spelled[wanted] ?? wanted)) ? undefined : `${result} is not in ${wanted}`
}

describe('a formula', () => {
  it('has an id of its own', () => {
    const ids = formulas.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.length).toBeGreaterThan(50)
  })

  for (const record of formulas) {
    it(`${record.id}: text, function, symbols, units and checks agree`, () => {
      expect(disagreements(record).slice(0, 3)).toEqual([])
      expect([...namesIn(record.text)].sort()).toEqual(Object.keys(record.symbols).sort())
      if (noDimensions[record.id] === undefined) expect(dimensionFault(record)).toBeUndefined()
      for (const { given, gives } of record.checks) expectPrinted(record.of(given), gives)
      expect(record.checks.length).toBeGreaterThan(0)
      expect(Object.keys(sources)).toContain(record.source)
    })
  }

  it('is exempt from units only where it needs to be', () => {
    const exempt = formulas.filter(({ id }) => noDimensions[id] !== undefined)
    expect(exempt).toHaveLength(Object.keys(noDimensions).length)
  })
})

describe('the comparison', () => {
  const sound = formulas.find(({ id }) => id === 'helmholtz-tuning') as Formula

  it('would notice a wrong text, a wrong function, a wrong unit and a symbol left out', () => {
    expect(disagreements(sound)).toEqual([])
    expect(disagreements({ ...sound, text: 'c/(2*pi)*sqrt(S/(Leff*V))' }).length).toBeGreaterThan(0)
    expect(disagreements({ ...sound, of: given => 1.000_001 * sound.of(given) }).length).toBeGreaterThan(0)
    expect(dimensionFault({ ...sound, unit: 'm' })).toMatch(/not in m/)
    expect(dimensionFault({ ...sound, text: 'c/(2*pi)*sqrt(n*S/V)' })).toBeDefined()
    expect(namesIn('c/(2*pi)*sqrt(S/(Leff*V))')).not.toContain('n')
  })
})
