/**
 * What a schema of fields alone does not say: which fields go together and which do not. The domain refuses the same; here it
 * stands for forms that are made from a schema, and for a question that is not to be calculated. Not every refusal is of this
 * kind: what follows from figures shows when it is worked out.
 */
import { branchesOf, type JsonSchema } from '../../../contract/field/component.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import { say, worded } from '../../../domain/say.ts'
import type { ProblemError } from '../problem/problem.ts'

interface Condition {
  /** It holds where all of these are given; always where there are none. */
  readonly given: readonly string[]
  /** Sets of fields of which one must be there whole; none says that the fields are never there together. */
  readonly needs: readonly (readonly string[])[]
  readonly detail: Said
}

const apart = (first: string, second: string, detail: Said): Condition => ({
  given: [first, second],
  needs: [],
  detail
})
const oneAtLeast = (sets: readonly (readonly string[])[], detail: Said): Condition => ({
  given: [],
  needs: sets,
  detail
})
const oneOf = (first: string, second: string, detail: Said) => [
  oneAtLeast([[first], [second]], detail),
  apart(first, second, detail)
]
const goesWith = (field: string, other: string, detail: Said): Condition => ({
  given: [field],
  needs: [[other]],
  detail
})
const together = (first: string, second: string, detail: Said) => [
  goesWith(first, second, detail),
  goesWith(second, first, detail)
]

const airDetail = say('refused.give-either-temperature-and-pressure-or')
const sourceDetail = say('refused.give-voltagev-or-powerw-with-loadohm')
const coilDetail = say('refused.give-the-coil-either-as-inductances')
const flowDetail = say('refused.give-one-of-the-three-a')
const motionDetail = say('refused.the-moving-system-needs-two-of')
const dampingDetail = say('refused.damping-needs-two-of-qms-or')

/** By the name of the object in the contract. */
const conditions: Readonly<Record<string, readonly Condition[]>> = {
  Air: [
    ...['temperatureC', 'pressurePa'].flatMap(climate =>
      ['densityKgPerM3', 'soundSpeedMPerS'].map(medium => apart(climate, medium, airDetail))
    ),
    ...together('densityKgPerM3', 'soundSpeedMPerS', say('refused.density-and-speed-of-sound-go'))
  ],
  CableRequest: [
    ...oneOf('loadPowerW', 'currentA', say('refused.give-the-power-drawn-or-the')),
    apart('dropLimitV', 'dropLimitPercent', say('refused.give-the-drop-limit-in-volts'))
  ],
  CoilWiringRequest: [
    ...oneOf('coilOhm', 'coilsOhm', say('refused.give-coilohm-when-all-coils-are')),
    goesWith('cable', 'totalPowerW', say('refused.a-loudspeaker-cable-is-chosen-by'))
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
    ...together('leFactor', 'leExponent', say('refused.the-power-law-k-j-n')),
    apart('leMh', 'leFactor', coilDetail),
    apart('le2Mh', 'leFactor', coilDetail),
    goesWith('leParallelOhm', 'leMh', say('refused.a-resistance-across-the-inductance-needs')),
    goesWith('le2ParallelOhm', 'le2Mh', say('refused.a-resistance-across-the-second-inductance'))
  ],
  PortSizingRequest: [
    apart('driver', 'sweptVolumeL', flowDetail),
    apart('driver', 'peakFlowM3PerS', flowDetail),
    apart('sweptVolumeL', 'peakFlowM3PerS', flowDetail),
    ...['drivers', 'source', 'filters'].map(field =>
      goesWith(field, 'driver', say('refused.only-bears-on-the-air-that', { idle: field }))
    )
  ],
  Source: [
    oneAtLeast([['voltageV'], ['powerW']], sourceDetail),
    apart('voltageV', 'powerW', sourceDetail),
    apart('voltageV', 'loadOhm', sourceDetail)
  ],
  SupplyAmplifier: [
    ...oneOf('powerW', 'ratings', say('refused.give-either-powerw-at-the-wired')),
    apart('efficiency', 'inputCurrentA', say('refused.give-the-efficiency-or-the-measured')),
    oneAtLeast([['class'], ['efficiency'], ['inputCurrentA']], say('refused.give-the-amplifier-s-class-its'))
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
  if (needs.length === 0)
    return [{ pointer: `${at}/${given.at(-1)}`, code: 'conflicting-input', ...worded({ detail }) }]
  const missing = needs[0]?.find(field => value[field] === undefined)
  return [{ pointer: `${at}/${missing}`, code: 'missing-input', ...worded({ detail }) }]
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
