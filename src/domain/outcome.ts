/** What every operation of the service returns: a result, and all that a person must know to trust it. */
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

/** One figure of a result, explained so that a reader can work it out again. */
export interface Basis {
  /** Path in the result, SI names, e.g. `scalars.tuningHz`. */
  readonly quantity: string
  /** Id of the record, see `formula.ts`. */
  readonly formulaId: string
  /** Right-hand side in plain arithmetic over the input symbols. */
  readonly formula: string
  readonly inputs: readonly { readonly symbol: string; readonly value: number; readonly unit: string }[]
  /** What the formula gives, in `unit` (SI). */
  readonly value: number
  readonly unit: string
  readonly source: SourceId
}

export interface Outcome<Result> {
  readonly result: Result
  readonly cautions: readonly Caution[]
  readonly assumed: readonly Assumption[]
  readonly sources: readonly SourceId[]
  readonly basis: readonly Basis[]
}
