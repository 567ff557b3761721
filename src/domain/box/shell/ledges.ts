/** Strips round the mouth of a box whose front comes off: flat behind it, for the gasket to lie on and its screws to hold in. */
import type { PanelPlace, Point3 } from '../../../contract/boxes/panel.ts'
import type { FaceName } from '../../../contract/boxes/words.ts'
import { bounds } from '../../../numeric/geometry/polygon.ts'
import { type Inside, moved } from './face.ts'
import type { Direction3 } from './panel.ts'
import { clearLength } from './shell.ts'
import type { BarePanel } from './shell-panels.ts'

/** Of the strips, from the wall inwards: room for gasket and screw; common practice, no source [m]. */
export const LEDGE_WIDTH_M = 30e-3

export interface Ledge {
  readonly name: string
  /** The wall it is glued to. */
  readonly on: FaceName
  readonly middle: Point3
  readonly along: Direction3
  /** Away from its wall. */
  readonly inwards: Direction3
  readonly lengthM: number
}

const [right, up, down, left] = [
  { x: 1, y: 0, z: 0 },
  { x: 0, y: 0, z: 1 },
  { x: 0, y: 0, z: -1 },
  { x: -1, y: 0, z: 0 }
]

/** @param inside  of a box of four walls with an upright front */
export function ledgesOf({ shell, inner }: Inside, boardM: number): readonly Ledge[] {
  const { left: front, low, high } = bounds(inner)
  const start = shell.caps.low.thicknessM
  const clear = clearLength(shell)
  const [half, yM] = [LEDGE_WIDTH_M / 2, front + boardM / 2]
  const [across, upright] = [clear, high - low - 2 * LEDGE_WIDTH_M]
  const [xM, zM] = [start + clear / 2, (low + high) / 2]
  const strip = (on: FaceName, middle: Point3, along: Direction3, inwards: Direction3, lengthM: number): Ledge => ({
    name: `ledge, ${on}`,
    ...{ on, middle, along, inwards, lengthM }
  })
  return [
    strip('top', { xM, yM, zM: high - half }, right, down, across),
    strip('bottom', { xM, yM, zM: low + half }, right, up, across),
    strip('left', { xM: start + half, yM, zM }, up, right, upright),
    strip('right', { xM: start + clear - half, yM, zM }, up, left, upright)
  ]
}

export const ledgeVolumeM3 = ({ lengthM }: Ledge, boardM: number): number => lengthM * LEDGE_WIDTH_M * boardM

function placeOf({ middle, along, inwards, lengthM }: Ledge, boardM: number): PanelPlace {
  const outwards = {
    x: along.y * inwards.z - along.z * inwards.y,
    y: along.z * inwards.x - along.x * inwards.z,
    z: along.x * inwards.y - along.y * inwards.x
  }
  const foot = moved(moved(middle, along, -lengthM / 2), inwards, -LEDGE_WIDTH_M / 2)
  return { origin: moved(foot, outwards, boardM / 2), uAxis: along, vAxis: inwards }
}

/** As a part of the cut list: u along it, v away from its wall. */
export const ledgePanel = (ledge: Ledge, thicknessM: number): BarePanel => ({
  name: ledge.name,
  role: 'brace',
  wall: 'inside',
  layer: 0,
  thicknessM,
  outline: [
    { uM: 0, vM: 0 },
    { uM: ledge.lengthM, vM: 0 },
    { uM: ledge.lengthM, vM: LEDGE_WIDTH_M },
    { uM: 0, vM: LEDGE_WIDTH_M }
  ],
  edges: [],
  place: placeOf(ledge, thicknessM),
  volumeM3: ledgeVolumeM3(ledge, thicknessM)
})
