/**
 * The one way a design calculation refuses. It carries data, never an HTTP status:
 * src/http turns the code into a status and the field into a JSON pointer.
 */
const designErrorCodes = {
  'not-positive': 'A quantity that must be a finite number above zero is not.',
  'out-of-range': 'A quantity lies outside the range in which the calculation holds.',
  'missing-input': 'The inputs given do not determine what was asked for.',
  'conflicting-input': 'Two inputs exclude or contradict each other.',
  'no-solution': 'The inputs are valid, but no design satisfies them.',
  'unknown-designation': 'A designation names no member of its published series.',
  'undefined-rating': 'A power rating is not a continuous RMS figure and cannot be compared with one.',
  'insulation-below-ambient': 'The insulation of a cable may not get as hot as the place it lies in.',
  'fuse-voltage': 'A fuse is rated for less than the voltage it would have to break.'
} as const

export type DesignErrorCode = keyof typeof designErrorCodes

export interface Fault {
  /** Path of the offending input in the request, e.g. `enclosure.rear.netVolumeM3`; '' for the whole request. */
  readonly field: string
  readonly value?: number | string
  readonly minimum?: number
  readonly maximum?: number
  /** Unit of value and bounds; '1' for a pure number. */
  readonly unit?: string
  /** One plain sentence for the person who has to mend it; made from the numbers when absent. */
  readonly detail?: string
}

function sentence(code: DesignErrorCode, { field, value, minimum, maximum, unit = '1', detail }: Fault): string {
  if (detail !== undefined) return detail
  const suffix = unit === '1' ? '' : ` ${unit}`
  const bounds = [
    minimum === undefined ? '' : `at least ${minimum}${suffix}`,
    maximum === undefined ? '' : `at most ${maximum}${suffix}`
  ]
  const allowed = bounds.filter(Boolean).join(' and ')
  return `${field || 'the request'}${value === undefined ? '' : ` = ${value}${suffix}`}: ${designErrorCodes[code]}${allowed && ` Allowed: ${allowed}.`}`
}

export class DesignError extends Error {
  override readonly name = 'DesignError'
  readonly code: DesignErrorCode
  readonly faults: readonly Fault[]

  constructor(code: DesignErrorCode, ...faults: readonly [Fault, ...Fault[]]) {
    // two fields may share one fault; its sentence is said once
    super([...new Set(faults.map(fault => sentence(code, fault)))].join(' '))
    this.code = code
    this.faults = faults.map(fault => ({ ...fault, detail: sentence(code, fault) }))
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
