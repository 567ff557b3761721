/** What every operation of the service returns: a result, and all that a person must know to trust it. */

import type { Basis } from '../contract/field/envelope.ts'
import type { SourceId } from '../contract/sources/source.ts'
import type { Caution } from './caution.ts'

/** A default that was used because the request left the field out. */
export interface Assumption {
  /** Path in the request, SI names, e.g. `enclosure.rear.port.endFactor`. */
  readonly field: string
  /** In SI, as the domain used it. */
  readonly value: number | string | boolean
  readonly why: string
}

export interface Outcome<Result> {
  readonly result: Result
  readonly cautions: readonly Caution[]
  readonly assumed: readonly Assumption[]
  readonly sources: readonly SourceId[]
  readonly basis: readonly Basis[]
}
