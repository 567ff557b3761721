/** `?basis=true` explains figures so that a reader can work them out: a general-purpose evaluator does. */
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { siField } from '../src/contract/field/wire-units.ts'
import { operations } from '../src/http/operations.ts'
import { formulas } from '../src/plan/formulas.ts'
import { post } from './support/call.ts'
import { contractFaults } from './support/contract-judge.ts'
import { worked } from './support/worked-examples.ts'

interface Entry {
  readonly quantity: string
  readonly formulaId: string
  readonly formula: string
  readonly inputs: readonly { readonly symbol: string; readonly value: number; readonly unit: string }[]
  readonly value: number
  readonly unit: string
  readonly source: string
}

const tokens = (pointer: string) =>
  pointer
    .split('/')
    .slice(1)
    .map(token => token.replaceAll('~1', '/').replaceAll('~0', '~'))

function at(result: unknown, pointer: string): unknown {
  return tokens(pointer).reduce((here, token) => (here as Record<string, unknown> | undefined)?.[token], result)
}

/** What the result says of the quantity, in SI; the last name that is no index carries the unit. */
function said(result: unknown, pointer: string): number | undefined {
  const value = at(result, pointer)
  const name = tokens(pointer).findLast(token => !/^\d+$/.test(token)) ?? ''
  return typeof value === 'number' ? value / siField(name).perSi : undefined
}

/** What an entry says otherwise than the record it names. */
function partsFromRecord({ formulaId, formula, unit, source, inputs }: Entry): readonly string[] {
  const record = formulas.find(({ id }) => id === formulaId)
  if (record === undefined) return [`no formula has the id ${formulaId}`]
  const symbols = Object.entries(record.symbols).map(([symbol, { unit: of }]) => `${symbol} ${of}`)
  const told = inputs.map(({ symbol, unit: of }) => `${symbol} ${of}`)
  const same = formula === record.text && unit === record.unit && source === record.source
  return same && told.join() === symbols.join() ? [] : [`${formulaId} is not as its record says`]
}

/** Formulas that no example of the contract needs, each with a request that does. */
const seldom = {
  '/v1/drivers/parameters': [
    { fsHz: 30, qms: 5, qts: 0.41, cmsMmPerN: 0.181, sdCm2: 483, reOhm: 3.4 },
    { fsHz: 30, qes: 0.45, qts: 0.41, vasL: 60, cmsMmPerN: 0.181, reOhm: 3.4 },
    { fsHz: 30, mmsG: 155, rmsKgPerS: 5.85, blTm: 14.9, sdCm2: 483, reOhm: 3.4 },
    { fsHz: 30, mmsG: 155, qms: 5, qes: 0.45, blTm: 14.9, sdCm2: 483 },
    { fsHz: 30, qms: 5, qes: 0.45, blTm: 14.9, sdCm2: 483, reOhm: 3.4 },
    { mmsG: 155, qms: 5, qes: 0.45, blTm: 14.9, sdCm2: 483, reOhm: 3.4 },
    { fsHz: 30, qms: 5, rmsKgPerS: 5.85, qes: 0.45, sdCm2: 483, reOhm: 3.4 },
    { mmsG: 155, qms: 5, rmsKgPerS: 5.85, qes: 0.45, sdCm2: 483, reOhm: 3.4 }
  ].map(driver => ({ driver })),
  '/v1/enclosures/response': [
    {
      driver: { mmsG: 168, cmsMmPerN: 0.18, rmsKgPerS: 5.3, blTm: 15.2, sdCm2: 490, reOhm: 3.4 },
      enclosure: {
        kind: 'passive-radiator',
        rear: { netVolumeL: 50, passiveRadiators: { areaCm2: 490, massG: 350, complianceMmPerN: 0.4 } }
      },
      source: { voltageV: 2.83 },
      cabin: { lengthM: 2.5 }
    }
  ],
  '/v1/amplifiers/matching': [
    {
      amplifier: { ratings: [{ loadOhm: 2, powerW: 500 }], minimumOhm: 2, channels: 1, class: 'D' },
      driver: { powerW: 300, coils: 1, coilOhm: 4 },
      driverCount: 1
    }
  ]
} as const

/** The cut of a bend is an input of another formula; a search without prices takes as long as one with them. */
const unnamed = ['mitre-cut', 'design-score']

const relative = (a: number, b: number) => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-12)

describe('basis', () => {
  for (const operation of operations) {
    const { path, operationId, examples } = operation
    for (const [name, { request }] of Object.entries(examples)) {
      it(`${operationId} explains its example ${name} in figures that can be worked out again`, () => {
        const body = worked(operation, request)
        expect(contractFaults(path, 200, 'application/json', body)).toEqual([])
        for (const entry of body.basis as readonly Entry[]) {
          const scope = Object.fromEntries(entry.inputs.map(({ symbol, value }) => [symbol, value]))
          const worked = Number(evaluate(entry.formula, scope))
          expect(
            relative(worked, entry.value),
            `${entry.quantity}: ${entry.formula} gives ${worked}, said ${entry.value}`
          ).toBeLessThan(1e-9)
          const figure = said(body.result, entry.quantity)
          expect(figure, `${entry.quantity} is a number of the result`).toBeTypeOf('number')
          expect(
            relative(Number(figure), entry.value),
            `${entry.quantity} is ${figure} in the result, ${entry.value} in its basis`
          ).toBeLessThan(1e-9)
          expect(partsFromRecord(entry)).toEqual([])
          expect(body.sources, `${entry.quantity} rests on ${entry.source}`).toContain(entry.source)
        }
      })
    }
  }

  it('is given by most operations', () => {
    const withBasis = operations.filter(operation =>
      Object.values(operation.examples).some(({ request }) => worked(operation, request).basis.length > 0)
    )
    expect(withBasis.length).toBeGreaterThan(operations.length / 2)
  })

  it('names every formula that is on record in some example', () => {
    const named = new Set<string>()
    for (const operation of operations) {
      const examples = Object.values(operation.examples).map(({ request }) => request)
      const more: readonly unknown[] = seldom[operation.path as keyof typeof seldom] ?? []
      for (const request of [...examples, ...more])
        for (const { formulaId } of worked(operation, request).basis as readonly Entry[]) named.add(formulaId)
    }
    expect(formulas.map(({ id }) => id).filter(id => !named.has(id))).toEqual(unnamed)
  })

  it('is left out unless asked for, and changes nothing else', async () => {
    const payload = { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 }
    const plain = await post('/v1/coils/wiring', payload)
    const withBasis = await post('/v1/coils/wiring?basis=true', payload)
    expect(plain.body.basis).toBeUndefined()
    const { basis, ...rest } = withBasis.body
    expect(rest).toEqual(plain.body)
    expect(basis.length).toBeGreaterThan(0)
  })
})
