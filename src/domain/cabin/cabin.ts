/** The car around the seat: what a caller may say of it, and what the model makes of that. */

export interface MeasuredTransfer {
  /** Ascending. */
  readonly frequencyHz: readonly number[]
  /** Level at the seat over the level in half space at 1 m. */
  readonly gainDb: readonly number[]
}
