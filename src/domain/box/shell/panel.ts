/**
 * A part of the box as it leaves the saw. Drawings, the sheet plan and the bill of materials read these records.
 *
 * Every part has its own frame on its OUTER face (towards the listener, the room, or away from the chamber it closes):
 * origin at the lower left corner of the blank, u to the right, v up, seen from outside.
 */
import type { BoardId, cutOutPurposes, PanelRole } from '../../../contract/boxes/words.ts'

export interface PanelPoint {
  readonly uM: number
  readonly vM: number
}

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

interface ScrewCircle {
  readonly diameterM: number
  readonly count: number
  readonly startAngleDeg: number
  /** Pilot [m]; a T-nut has it opened to its barrel. */
  readonly holeDiameterM: number
  /** What goes into the holes, as the bill names it. */
  readonly screw: string
}

type CutOutPurpose = (typeof cutOutPurposes)[number]

/** A hole or rebate; its centre lies in the frame of the part. */
export interface CutOut {
  readonly kind: 'circle' | 'rectangle'
  readonly purpose: CutOutPurpose
  readonly label: string
  readonly uM: number
  readonly vM: number
  /** Circle. */
  readonly diameterM?: number
  /** Rectangle: along u and along v. */
  readonly widthM?: number
  readonly heightM?: number
  readonly cornerRadiusM?: number
  /** Depth of a rebate from the outer face; absent when cut right through. */
  readonly rebateDepthM?: number
  readonly screwCircle?: ScrewCircle
}

/** Where the frame of a part lies in the box: x from left to right, y from front to rear, z up, from the outer corner. */
export interface PanelPlace {
  readonly origin: Point3
  readonly uAxis: Direction3
  readonly vAxis: Direction3
}

export interface Point3 {
  readonly xM: number
  readonly yM: number
  readonly zM: number
}

/** A unit vector. */
export interface Direction3 {
  readonly x: number
  readonly y: number
  readonly z: number
}

export interface Panel {
  readonly name: string
  readonly role: PanelRole
  readonly quantity: number
  /** Id in the board table. */
  readonly material: BoardId
  /** The larger side of the blank [m], before any edge is tilted. */
  readonly lengthM: number
  /** The smaller side of the blank [m]. */
  readonly widthM: number
  readonly thicknessM: number
  /** Whether the length of the blank runs along u or along v. */
  readonly lengthAlong: 'u' | 'v'
  /** Direction of the face grain for the sheet plan. */
  readonly grain: 'length' | 'width' | 'any'
  /** The blank seen from outside, anticlockwise, in its own frame. */
  readonly outline: readonly PanelPoint[]
  readonly edges: readonly PanelEdge[]
  readonly cutOuts: readonly CutOut[]
  /** One part, cut-outs taken off [kg]. */
  readonly massKg: number
  /** Of the first part of this kind; absent for loose parts. */
  readonly place?: PanelPlace
}
