/**
 * A caution says its figures twice: in its sentence for people and beside it for programs. Both come from the same place, so that
 * a factor lost in one of them shows here: over every example and every seldom request.
 */
import { describe, expect, it } from 'vitest'
import { DesignError } from '../src/domain/design-error.ts'
import { operations } from '../src/http/operations.ts'
import type { Operation } from '../src/http/wire/operation.ts'
import { seldomDefaults } from './support/seldom-defaults.ts'
import { worked } from './support/worked-examples.ts'

interface Told {
  readonly code: string
  readonly message: string
  readonly figures?: Readonly<Record<string, number>>
}

/** Figures for programs alone: the sentence tells the ratio of two of them, the remedy, or the graver one. */
const UNSAID: readonly string[] = [
  'cabin-modes highestHz',
  'capacitor-charge prechargePeakW',
  'capacitor-discharge prechargePeakW',
  'capacitor-no-energy usableJ',
  'capacitor-discharge storedJ',
  'composition-unknown ampacityRatio',
  'driver-hits-box neededMm',
  'fuse-too-far idealMm',
  'fuse-too-far sheathedMm',
  'fuse-too-far usualMm',
  'inside-sizes-alike secondHz',
  'maker-fuse-not-obeyed loadA',
  'no-cable-fits minimumAreaMm2',
  'port-pipe-resonance lowPassHz',
  'under-powered clippedPowerRatio',
  'under-powered driverPowerW',
  'under-powered ratedPowerW',
  'box-restraint strapCapacityN'
]

/** Figures that a sentence tells in another unit: a time in minutes or hours, a small current in mA, a ratio in per cent. */
const told: Readonly<Record<string, readonly number[]>> = {
  'hearing-exposure allowedS': [1, 1 / 60, 1 / 3600],
  'relay-coil-load coilCurrentA': [1000],
  'relay-coil-load limitA': [1000],
  'turn-on-overload loadA': [1000],
  'turn-on-overload limitA': [1000],
  'under-powered powerRatio': [100]
}

const numbersIn = (message: string) =>
  [...message.matchAll(/\d[\d\u00a0\u2009\u202f]*(?:\.\d+)?/g)].map(([found]) => found.replaceAll(/[^\d.]/g, ''))

/** As rounded as a sentence rounds: two digits and sometimes one. */
function stands(value: number, message: string): boolean {
  return numbersIn(message).some(text => {
    const decimals = text.split('.')[1]?.length ?? 0
    return Math.abs(Number(text) - Math.abs(value)) <= Math.max(0.5001 * 10 ** -decimals, 0.04 * Math.abs(value))
  })
}

/** Their cautions come from the other operations, and they take seconds. */
const long = /designs|drivers\/region|tolerance/

function cautionsIn(value: unknown): readonly Told[] {
  if (typeof value !== 'object' || value === null) return []
  const inner = Object.values(value).flatMap(cautionsIn)
  return 'code' in value && 'message' in value ? [value as Told, ...inner] : inner
}

function answered(operation: Operation, request: unknown): unknown {
  try {
    return worked(operation, request)
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}

describe('the figures of a caution', () => {
  for (const operation of operations.filter(({ path }) => !long.test(path)))
    it(`stand in its sentence: ${operation.operationId}`, () => {
      const examples = Object.values(operation.examples).map(({ request }) => request as unknown)
      const asked = [...examples, ...(seldomDefaults[operation.path] ?? [])]
      const cautions = asked.flatMap(request => cautionsIn(answered(operation, request)))
      const missing = cautions.flatMap(({ code, message, figures = {} }) =>
        Object.entries(figures)
          .filter(([name, value]) => !(told[`${code} ${name}`] ?? [1]).some(per => stands(value * per, message)))
          .map(([name, value]) => ({ key: `${code} ${name}`, text: `${code} ${name} ${value}: ${message}` }))
      )
      expect(missing.filter(({ key }) => !UNSAID.includes(key)).map(({ text }) => text)).toEqual([])
    })

  it('are looked for as they are rounded', () => {
    expect(stands(146.9, 'under hard braking with 150 N')).toBe(true)
    expect(stands(146.9, 'under hard braking with 220 N')).toBe(false)
    expect(stands(0.25, 'drops 0.25 V')).toBe(true)
    expect(stands(2.25, 'drops 0.25 V')).toBe(false)
  })
})
