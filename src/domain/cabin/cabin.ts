/** The car around the seat: what a caller may say of it, and what the model makes of that. */

export interface MeasuredTransfer {
  /** Ascending. */
  readonly frequencyHz: readonly number[]
  /** Level at the seat over the level in half space at 1 m. */
  readonly gainDb: readonly number[]
}

export interface Cabin {
  readonly volumeM3?: number
  /** Longest inner dimension, from the pedals to the rear wall. */
  readonly lengthM?: number
  readonly cornerQ?: number
  readonly leakCornerHz?: number
  readonly leakQ?: number
  readonly measured?: MeasuredTransfer
}

export interface CabinModel {
  readonly model: 'pressure-vessel' | 'measured'
  /** Below it the cabin acts as a pressure vessel. */
  readonly cornerHz?: number
  readonly lowestModeHz?: number
  readonly leakCornerHz?: number
  /** Real cars lie within this of the curve. */
  readonly uncertaintyDb: number
}
