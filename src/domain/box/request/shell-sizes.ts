import type { BoxShape } from '../../../contract/boxes/words.ts'
import type { Polygon } from '../../../numeric/geometry/polygon.ts'

/** Every outer size settled. */
export interface ShellSizes {
  readonly shape: BoxShape
  readonly widthM: number
  readonly heightM: number
  readonly depthM: number
  /** Of a wedge whose lid slopes, where it would be if it were level. */
  readonly topDepthM: number
  readonly slopedFace: 'front' | 'back'
  /** Of a wedge: lean of the face across from the sloped one, and fall of the lid to the rear [rad]. */
  readonly acrossRad: number
  readonly lidRad: number
  /** Prism only: footprint in the order given. */
  readonly footprint: Polygon
  /** Prism only: index of the wall that carries the drivers. */
  readonly baffleEdge: number
  readonly thicknessM: number
  readonly frontLayers: number
  readonly recessM: number
  /** Prism only: the front stands between its neighbours, for a recess or for the mouth of a slot beside it. */
  readonly frontBetween: boolean
  readonly sides: 'between' | 'over'
  readonly corners: 'butt' | 'mitre'
}
