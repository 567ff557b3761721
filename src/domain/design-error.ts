/**
 * The one way a design calculation refuses. It carries data, never an HTTP status:
 * src/http turns the code into a status and the field into a JSON pointer.
 */
import type { Said } from '../contract/sentences/form/template.ts'
import { listed, say, type Worded, worded } from './say.ts'

const designErrorCodes = [
  'not-positive',
  'out-of-range',
  'missing-input',
  'conflicting-input',
  'no-solution',
  'unknown-designation',
  'undefined-rating',
  'insulation-below-ambient',
  'fuse-voltage'
] as const

export type DesignErrorCode = (typeof designErrorCodes)[number]

/** A fault as it is found. */
export interface FoundFault {
  /** Path of the offending input in the request, e.g. `enclosure.rear.netVolumeM3`; '' for the whole request. */
  readonly field: string
  readonly value?: number | string
  readonly minimum?: number
  readonly maximum?: number
  /** Unit of value and bounds; '1' for a pure number. */
  readonly unit?: string
  /** One plain sentence for the person who has to mend it; made from the numbers when absent. */
  readonly detail?: Said
}

/** A fault as it is told, with the sentence behind its detail for another language. */
export type Fault = Omit<FoundFault, 'detail'> & Worded<{ readonly detail: Said }>

const allowed = (id: 'refused.least' | 'refused.most', bound: number | undefined, unit: string): readonly Said[] =>
  bound === undefined ? [] : [say(id, { bound, unit })]

function sentence(code: DesignErrorCode, { field, value, minimum, maximum, unit = '1', detail }: FoundFault): Said {
  if (detail !== undefined) return detail
  const suffix = unit === '1' ? '' : unit
  const bounds = listed(
    [...allowed('refused.least', minimum, suffix), ...allowed('refused.most', maximum, suffix)],
    'list.and'
  )
  return say('refused', {
    field: field || say('refused.request'),
    given: value === undefined ? [] : say('refused.given', { value, unit: suffix }),
    meaning: say(`refused.${code}`),
    bounds: Array.isArray(bounds) ? [] : say('refused.allowed', { bounds })
  })
}

export class DesignError extends Error {
  override readonly name = 'DesignError'
  readonly code: DesignErrorCode
  readonly faults: readonly Fault[]

  constructor(code: DesignErrorCode, ...faults: readonly [FoundFault | Fault, ...(FoundFault | Fault)[]]) {
    const told = faults.map(fault =>
      'said' in fault ? fault : { ...fault, ...worded({ detail: sentence(code, fault) }) }
    )
    // two fields may share one fault; its sentence is said once
    super([...new Set(told.map(({ detail }) => detail))].join(' '))
    this.code = code
    this.faults = told
  }
}

/** @throws DesignError `not-positive` unless the value is finite and above zero */
export function requirePositive(field: string, value: number, unit: string): void {
  if (!(value > 0 && Number.isFinite(value))) throw new DesignError('not-positive', { field, value, unit })
}

/** @throws DesignError `out-of-range` unless minimum ≤ value ≤ maximum */
export function requireWithin(field: string, value: number, minimum: number, maximum: number, unit: string): void {
  if (!(value >= minimum && value <= maximum)) {
    throw new DesignError('out-of-range', { field, value, minimum, maximum, unit })
  }
}
