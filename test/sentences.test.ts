/** Sentences are templates: what they take, how they are printed, and that every language has all of them. */
import { describe, expect, it } from 'vitest'
import type { NamesOf, ValuesOf } from '../src/contract/sentences/form/template.ts'
import { inEnglish, listed, say } from '../src/domain/say.ts'
import { printed } from '../src/domain/template.ts'

const english = { decimalMark: '.', pluralOf: (count: number) => new Intl.PluralRules('en').select(count) }
const german = { decimalMark: ',', pluralOf: (count: number) => new Intl.PluralRules('de').select(count) }
const by = (values: Readonly<Record<string, number | string>>) => (name: string) => values[name] ?? 'none'

describe('a template', () => {
  const straps = 'Use {strapCount, plural, =0 {no strap} one {# strap} other {# straps}} for {massKg} kg.'

  it('prints figures and counts as the language does', () => {
    const values = { strapCount: 2, massKg: 16.5 }
    expect(printed(straps, by(values), english)).toBe('Use 2 straps for 16.5 kg.')
    expect(printed(straps, by({ ...values, strapCount: 1 }), english)).toBe('Use 1 strap for 16.5 kg.')
    expect(printed(straps, by({ ...values, strapCount: 0 }), english)).toBe('Use no strap for 16.5 kg.')
    expect(printed('{massKg} kg', by({ massKg: '30.0' }), german)).toBe('30,0 kg')
  })

  it('counts a half as several in both languages', () => {
    const hours = '{hours, plural, one {# hour} other {# hours}}'
    expect(printed(hours, by({ hours: 0.5 }), english)).toBe('0.5 hours')
    expect(printed(hours, by({ hours: 0.5 }), german)).toBe('0,5 hours')
  })

  it('chooses by a word, and takes names inside a branch', () => {
    const text = '{kind, select, slot {a slot of {heightMm} mm} other {a port here}}'
    expect(printed(text, by({ kind: 'slot', heightMm: 40 }), english)).toBe('a slot of 40 mm')
    expect(printed(text, by({ kind: 'tube' }), english)).toBe('a port here')
  })

  it('takes the blank before an empty part along', () => {
    expect(printed('It runs. {more} End.', by({ more: '' }), english)).toBe('It runs. End.')
  })

  for (const wrong of ['{open', '{a, select, x {a b}}', '{a, plural, other {word}}', '{a, number, x}']) {
    it(`refuses ${wrong}`, () => expect(() => printed(wrong, by({}), english)).toThrow(RangeError))
  }

  it('tells its names to the compiler', () => {
    const names: NamesOf<'{a} and {b, plural, one {# of {c} here} other {# of {c} there}}'>[] = ['a', 'b', 'c']
    const values: ValuesOf<'{massKg} of {name}'> = { massKg: 2, name: 'oak' }
    // @ts-expect-error a figure is no word
    const wrong: ValuesOf<'{massKg} kg'> = { massKg: 'heavy' }
    // @ts-expect-error a name is missing
    say('port-pipe-resonance', { resonanceHz: 200 })
    expect([names.length, values.massKg, wrong.massKg]).toEqual([3, 2, 'heavy'])
  })
})

it('lists with commas, and says nothing of nothing', () => {
  const list = listed(['oak', 'ash', 'elm'])
  expect(typeof list === 'object' && 'id' in list && inEnglish(list)).toBe('oak, ash, elm')
  expect(listed([])).toEqual([])
})
