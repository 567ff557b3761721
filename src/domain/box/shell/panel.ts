import type { Point3 } from '../../../contract/boxes/panel.ts'

/** An edge of the outline that is not simply sawn square. `edge` n runs from outline point n to the next. */
export interface PanelEdge {
  readonly edge: number
  /** Tilt of the saw from square [°]; 0 is a square cut. */
  readonly tiltDeg: number
  /** The face on which the part is longer at this edge; `equal` for a square cut. */
  readonly longFace: 'outer' | 'inner' | 'equal'
  /** Largest radius the outer arris may be rounded to after assembly [m]; absent where the edge stays sharp. */
  readonly roundingRadiusM?: number
}

/** Where the frame of a part lies in the box: x from left to right, y from front to rear, z up, from the outer corner. */
export interface PanelPlace {
  readonly origin: Point3
  readonly uAxis: Direction3
  readonly vAxis: Direction3
}

/** A unit vector. */
export interface Direction3 {
  readonly x: number
  readonly y: number
  readonly z: number
}
