/** A unit vector. */
export interface Direction3 {
  readonly x: number
  readonly y: number
  readonly z: number
}
