/** Sentences in inches: exact factors of the yard and pound agreement, what stays as printed, and a whole plan. */
import { describe, expect, it } from 'vitest'
import type { Figure } from '../../src/contract/sentences/form/template.ts'
import { inUnitsOf } from '../../src/documents/draw/imperial-words.ts'
import { languages } from '../../src/domain/languages.ts'
import { say, spoken } from '../../src/domain/say.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'

const fractions = inUnitsOf({ units: 'imperial', inches: 'sixteenths' }, languages['en-US'])
const decimals = inUnitsOf({ units: 'imperial', inches: 'decimal' }, languages.de)

describe('a sentence in inches', () => {
  it('has the figures of the agreement of 1959: 25.4 mm, 0.3048 m, 0.45359 kg; and 212 °F at 100 °C', () => {
    const at = (distanceMm: number) =>
      spoken(say('fuse-too-far', { distanceMm, advice: say('fuse-too-far.move-or-sheath') }), fractions)
    expect(at(254)).toMatch(/^10 in of conductor/)
    // 36 13/16 in are 935.04 mm, told as 935.
    expect(at(935)).toMatch(/^36 13\/16 in of/)
    // 33 CFR 183.455 (read): 40 in.
    expect(at(254)).toContain('stay within 40 in')
    expect(spoken(say('way-out.room-depth', { byMm: 25.4 }), decimals)).toMatch(/^1 in/)
    expect(spoken(say('way-out.room-depth', { byMm: 60 }), decimals)).toMatch(/^2,36 in/)
    expect(spoken(say('bill.metres', { lengthM: 3.048 }), fractions)).toBe('10 ft')
    // 2 kg are 4.409 lb, 16.5 kg 36.38 lb, 47.7 kg 105.2 lb; 9400 N are 2113 lbf, 900 N 202 lbf.
    const masses = (language: typeof decimals) =>
      ['2.0', '16.5', '47.7'].map(
        massKg =>
          /[\d.,]+ lb/.exec(spoken(say('heavy-box', { massKg: massKg as Figure, people: 'zwei' }), language))?.[0]
      )
    expect(masses(fractions)).toEqual(['4.4 lb', '36 lb', '105 lb'])
    expect(masses(decimals)).toEqual(['4,4 lb', '36 lb', '105 lb'])
    const weight = spoken(say('heavy-box', { massKg: 45.36, people: 'two people' }), fractions)
    expect(weight).toBe('The box weighs 100 lb: two people over the trunk sill, sliding it on a board.')
  })

  it('keeps round distances round, and reads no section or class of insulation as a length', () => {
    expect(spoken(say('vehicle.where-the-two-run-side-by'), fractions)).toContain('at least 7 3/4 in between')
    expect(spoken(say('excursion-above-xmax', { excursionMm: 14, frequencyHz: 30, xmaxMm: 12 }), fractions)).toContain(
      '14 mm one way'
    )
    expect(spoken(say('cable-bill.turn-on-wire', { turnOnSize: '0.75 mm²' }), fractions)).toContain('0.75 mm²')
  })

  it('leaves what is said inside it alone: it is measured where it stands, once', () => {
    const inner = say('heavy-box.empty', { emptyKg: 20, people: 'two people' })
    expect(spoken(say('heavy-box.more', { massKg: 40, way: inner }), fractions)).toContain(
      'carry it without its drivers (44 lb, two people)'
    )
    expect(spoken(say('heavy-box', { massKg: 20, people: 'the crew of 30 mm and 5 kg' }), fractions)).toContain(
      'the crew of 30 mm and 5 kg'
    )
  })
})

describe('a plan for North America', () => {
  const request = { ...estatePlan, paper: { units: 'imperial' } }
  const { result, cautions } = JSON.parse(
    planSystem.answerText(request, { digits: 'six', basis: false, language: 'en-US' })
  )
  const told = [
    ...cautions.map(({ message }: { message: string }) => message),
    ...result.summary.lines,
    ...result.commissioning.flatMap(({ text, passIf }: { text: string; passIf: string }) => [text, passIf]),
    ...result.buildOrder.steps.flatMap(({ actions, checks, warnings = [] }: Record<string, readonly string[]>) => [
      ...(actions ?? []),
      ...(checks ?? []),
      ...warnings
    ])
  ].join('\n')

  it('tells no millimetre, metre, litre, kilogram or newton but travel and the one metre of a level', () => {
    const metric = /[^\n]{0,30}\d (mm|m|L|kg|N|°C)(?![\p{L}\d²³/])[^\n]{0,20}/gu
    const left = [...told.matchAll(metric)].map(([text]) => text)
    expect(left.filter(text => !/cone|at 1 m|Xmax/.test(text))).toEqual([])
    expect(told).toMatch(/\d 1\/2 in|\d ft/)
    // A milliohm is no metre of anything.
    expect(told).toContain('assumed at 2 mΩ')
    expect(told).not.toMatch(/\d (in|ft|lb|lbf)[\p{L}²³]*Ω/u)
  })

  it('tells the sizes that the panels have, on their grid of sixteenths', () => {
    const { widthMm } = result.parts.box.answer.result.outer
    const sixteenths = Math.round((widthMm / 25.4) * 16)
    expect(Math.abs(sixteenths * 1.5875 - widthMm)).toBeLessThan(0.01)
    const rest = sixteenths % 16
    const whole = Math.floor(sixteenths / 16)
    const reduced =
      rest === 0
        ? `${whole}`
        : `${whole} ${rest % 8 === 0 ? '1/2' : rest % 4 === 0 ? `${rest / 4}/4` : rest % 2 === 0 ? `${rest / 2}/8` : `${rest}/16`}`
    expect(result.summary.lines.join(' ')).toContain(`outside ${reduced} ×`)
  })
})
