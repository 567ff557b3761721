/**
 * What a schema of fields alone does not say: which fields go together and which do not. The domain refuses the same; here it
 * stands for forms that are made from a schema, and for a question that is not to be calculated. Not every refusal is of this
 * kind: what follows from figures shows when it is worked out.
 */
import { branchesOf, type JsonSchema } from '../../../contract/field/component.ts'
import type { ProblemError } from '../problem/problem.ts'

interface Condition {
  /** It holds where all of these are given; always where there are none. */
  readonly given: readonly string[]
  /** Sets of fields of which one must be there whole; none says that the fields are never there together. */
  readonly needs: readonly (readonly string[])[]
  readonly detail: string
}

const apart = (first: string, second: string, detail: string): Condition => ({
  given: [first, second],
  needs: [],
  detail
})
const oneAtLeast = (sets: readonly (readonly string[])[], detail: string): Condition => ({
  given: [],
  needs: sets,
  detail
})
const oneOf = (first: string, second: string, detail: string) => [
  oneAtLeast([[first], [second]], detail),
  apart(first, second, detail)
]
const goesWith = (field: string, other: string, detail: string): Condition => ({
  given: [field],
  needs: [[other]],
  detail
})
const together = (first: string, second: string, detail: string) => [
  goesWith(first, second, detail),
  goesWith(second, first, detail)
]

const airDetail = 'Give either temperature and pressure, or density and speed of sound.'
const sourceDetail = 'Give voltageV, or powerW with loadOhm, not both.'
const coilDetail = 'Give the coil either as inductances or as leFactor with leExponent.'
const flowDetail = 'Give one of driver, sweptVolumeL and peakFlowM3PerS.'
const motionDetail = 'Give two of resonance (fsHz), compliance (vasL or cmsMmPerN) and moving mass (mmsG).'
const dampingDetail = 'Give two of qms (or rmsKgPerS), qes (or blTm) and qts.'

/** By the name of the object in the contract. */
const conditions: Readonly<Record<string, readonly Condition[]>> = {
  Air: [
    ...['temperatureC', 'pressurePa'].flatMap(climate =>
      ['densityKgPerM3', 'soundSpeedMPerS'].map(medium => apart(climate, medium, airDetail))
    ),
    ...together('densityKgPerM3', 'soundSpeedMPerS', 'Density and speed of sound go together.')
  ],
  CableRequest: [
    ...oneOf('loadPowerW', 'currentA', 'Give the power drawn or the current, not both.'),
    apart('dropLimitV', 'dropLimitPercent', 'Give the drop limit in volts or in percent, not both.')
  ],
  CoilWiringRequest: [
    ...oneOf(
      'coilOhm',
      'coilsOhm',
      'Give coilOhm when all coils are alike, or coilsOhm with one entry a coil, not both.'
    ),
    goesWith('cable', 'totalPowerW', 'A loudspeaker cable is chosen by its current: give totalPowerW as well.')
  ],
  Driver: [
    oneAtLeast(
      [
        ['fsHz', 'vasL'],
        ['fsHz', 'cmsMmPerN'],
        ['fsHz', 'mmsG'],
        ['vasL', 'mmsG'],
        ['cmsMmPerN', 'mmsG']
      ],
      motionDetail
    ),
    oneAtLeast(
      [
        ...['qms', 'rmsKgPerS'].flatMap(mechanical => ['qes', 'blTm', 'qts'].map(other => [mechanical, other])),
        ['qes', 'qts'],
        ['blTm', 'qts']
      ],
      dampingDetail
    ),
    ...together('leFactor', 'leExponent', 'The coil K·(jω)^n needs leFactor and leExponent.'),
    apart('leMh', 'leFactor', coilDetail),
    apart('le2Mh', 'leFactor', coilDetail),
    goesWith('leParallelOhm', 'leMh', 'A resistance across the inductance needs the inductance.'),
    goesWith('le2ParallelOhm', 'le2Mh', 'A resistance across the second inductance needs that inductance.')
  ],
  PortSizingRequest: [
    apart('driver', 'sweptVolumeL', flowDetail),
    apart('driver', 'peakFlowM3PerS', flowDetail),
    apart('sweptVolumeL', 'peakFlowM3PerS', flowDetail),
    ...['drivers', 'source', 'filters'].map(field =>
      goesWith(field, 'driver', `${field} only bears on the air that a driver moves: give the driver, or leave it out.`)
    )
  ],
  Source: [
    oneAtLeast([['voltageV'], ['powerW']], sourceDetail),
    apart('voltageV', 'powerW', sourceDetail),
    apart('voltageV', 'loadOhm', sourceDetail)
  ],
  SupplyAmplifier: [
    ...oneOf('powerW', 'ratings', 'Give either powerW at the wired load or ratings with loadOhm.'),
    apart('efficiency', 'inputCurrentA', 'Give the efficiency or the measured input current, not both.'),
    oneAtLeast(
      [['class'], ['efficiency'], ['inputCurrentA']],
      'Give the amplifier’s class, its efficiency or its input current at rated output.'
    )
  ]
}

/** A plan or a search answers all the same and shows what it could not do, so of their requests nothing is refused here. */
const answeredAnyway = new Set(['PlanRequest', 'DesignSearchRequest', 'DesignMergeRequest'])

const allOf = (fields: readonly string[]) => ({ required: [...fields] })

/** `if` and `then`, where something must be given for it. */
function keywordOf({ given, needs }: Condition): object {
  if (needs.length === 0) return { not: allOf(given) }
  const one = needs.length === 1 ? allOf(needs[0] ?? []) : { anyOf: needs.map(allOf) }
  // biome-ignore lint/suspicious/noThenProperty: a word of JSON Schema
  return given.length === 0 ? one : { if: allOf(given), then: one }
}

/**
 * The same in words of JSON Schema; nothing for an object without conditions.
 * @param within  the schema that it is served with
 */
export function conditionKeywords(name: string, within: string): { readonly allOf?: readonly object[] } {
  const found = Object.hasOwn(conditions, name) && !answeredAnyway.has(within) ? (conditions[name] ?? []) : []
  return found.length === 0 ? {} : { allOf: found.map(keywordOf) }
}

type Members = Readonly<Record<string, unknown>>

function broken({ given, needs, detail }: Condition, value: Members, at: string): readonly ProblemError[] {
  const hasAll = (fields: readonly string[]) => fields.every(field => value[field] !== undefined)
  if (!hasAll(given) || needs.some(hasAll)) return []
  if (needs.length === 0) return [{ pointer: `${at}/${given.at(-1)}`, code: 'conflicting-input', detail }]
  const missing = needs[0]?.find(field => value[field] === undefined)
  return [{ pointer: `${at}/${missing}`, code: 'missing-input', detail }]
}

/** @returns every condition that a request which fits its schema does not keep */
export const unmetConditions = (schema: JsonSchema, request: unknown): readonly ProblemError[] =>
  branchesOf(schema).some(({ $id = '' }) => answeredAnyway.has($id)) ? [] : unmetWithin(schema, request, '')

function unmetWithin(schema: JsonSchema, value: unknown, at: string): readonly ProblemError[] {
  if (typeof value !== 'object' || value === null) return []
  const readings = branchesOf(schema)
  if (Array.isArray(value)) {
    const items = readings.flatMap(({ items: each }) => (each === undefined ? [] : [each]))
    return value.flatMap((each, index) => items.flatMap(item => unmetWithin(item, each, `${at}/${index}`)))
  }
  const members = value as Members
  const own = readings.flatMap(({ $id = '' }) => conditions[$id] ?? [])
  const here = own.flatMap(condition => broken(condition, members, at))
  const inner = Object.entries(members).flatMap(([name, each]) =>
    readings.flatMap(({ properties }) => {
      const next = properties?.[name]
      return next === undefined ? [] : unmetWithin(next, each, `${at}/${name}`)
    })
  )
  return [...new Map([...here, ...inner].map(fault => [`${fault.pointer} ${fault.detail}`, fault])).values()]
}
