/** A port as the air sees it: its mouths and their shape, not yet its length. */
export interface PortShape {
  readonly kind: 'round' | 'slot'
  readonly count: number
  readonly areaM2: number
  /** In the plane of a bend: the diameter, or the height of a slot. */
  readonly depthM: number
  /** Of a slot. */
  readonly widthM?: number
}
