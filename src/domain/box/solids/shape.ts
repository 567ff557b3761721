/** What a thing looks like, for a model of the box: the same sizes and the same place as its convex pieces. */
import type { Vector3 } from '../../../numeric/geometry/convex-distance.ts'
import type { Disc } from './solids.ts'

/** A point of an outline that is turned round an axis [m]. */
export interface TurnedPoint {
  readonly along: number
  readonly radius: number
}

export type Shape =
  /** Turned round an axis; the outline is closed, or starts and ends on the axis. */
  | {
      readonly kind: 'turned'
      readonly centre: Vector3
      /** Unit vector. */
      readonly along: Vector3
      readonly outline: readonly TurnedPoint[]
      readonly isClosed: boolean
    }
  | {
      readonly kind: 'block'
      readonly middle: Vector3
      readonly halves: readonly { readonly along: Vector3; readonly half: number }[]
    }
  /** A bore along discs, each square to the way. */
  | { readonly kind: 'pipe'; readonly way: readonly Disc[]; readonly innerRadius: number }
