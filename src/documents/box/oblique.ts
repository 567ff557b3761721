/** A box in oblique projection: its boards where they stand, seen from the front right and above. */
import type { PanelPoint } from '../../contract/boxes/box-hardware.ts'
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { CutOut, Panel, PanelPlace } from '../../contract/boxes/panel.ts'
import type { Direction3 } from '../../domain/box/shell/panel.ts'

/** Oblique: the front keeps its true shape, depth runs up to the right. */
export const depth = { right: 0.42, up: 0.3 } as const
/** Towards the eye. */
export const view: Direction3 = { x: depth.right, y: -1, z: depth.up }

export interface Spot {
  readonly x: number
  readonly y: number
}

function cross(a: Direction3, b: Direction3): Direction3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x }
}

export const dot = (a: Direction3, b: Direction3) => a.x * b.x + a.y * b.y + a.z * b.z

/** A board as it stands; the second of a pair of sides is the first one mirrored. */
export interface Placed {
  readonly panel: Panel
  readonly place: PanelPlace
  /** Out of the box. */
  readonly out: Direction3
}

export function placedBoards({ panels, outer }: BoxLayout): readonly Placed[] {
  return panels.flatMap(panel => {
    const { place } = panel
    if (place === undefined) return []
    const one: Placed = { panel, place, out: cross(place.uAxis, place.vAxis) }
    if (panel.role !== 'side' || panel.quantity !== 2) return [one]
    const { origin, uAxis, vAxis } = place
    const mirrored = ({ x, y, z }: Direction3): Direction3 => ({ x: -x, y, z })
    const other = {
      origin: { ...origin, xM: outer.widthM - origin.xM },
      uAxis: mirrored(uAxis),
      vAxis: mirrored(vAxis)
    }
    return [one, { panel, place: other, out: mirrored(one.out) }]
  })
}

/** @param deepM  below the outer face */
export type Project = (board: Placed, point: PanelPoint, deepM?: number) => Spot

function inSpace({ place: { origin, uAxis: u, vAxis: v }, out }: Placed, { uM, vM }: PanelPoint, deepM: number) {
  return {
    x: origin.xM + uM * u.x + vM * v.x - deepM * out.x,
    y: origin.yM + uM * u.y + vM * v.y - deepM * out.y,
    z: origin.zM + uM * u.z + vM * v.z - deepM * out.z
  }
}

/** Scale and place of a drawing: millimetres of the sheet a metre, and where the lower left front corner of the box lies. */
export interface Oblique {
  readonly perM: number
  readonly left: number
  readonly bottom: number
}

/** A point of space on the sheet. */
export const spotOf = ({ perM, left, bottom }: Oblique, { x, y, z }: Direction3): Spot => ({
  x: left + perM * (x + depth.right * y),
  y: bottom - perM * (z + depth.up * y)
})

export const projectionOf =
  (oblique: Oblique): Project =>
  (board, point, deepM = 0) =>
    spotOf(oblique, inSpace(board, point, deepM))

export const points = (spots: readonly Spot[]) => spots.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')

export function rim({ kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0 }: CutOut): readonly PanelPoint[] {
  if (kind === 'circle') {
    return Array.from({ length: 48 }, (_, index) => {
      const angle = (2 * Math.PI * index) / 48
      return { uM: uM + (diameterM / 2) * Math.cos(angle), vM: vM + (diameterM / 2) * Math.sin(angle) }
    })
  }
  const [w, h] = [widthM / 2, heightM / 2]
  return [
    { uM: uM - w, vM: vM - h },
    { uM: uM + w, vM: vM - h },
    { uM: uM + w, vM: vM + h },
    { uM: uM - w, vM: vM + h }
  ]
}

export const openings = ({ cutOuts }: Panel) =>
  cutOuts.filter(
    ({ rebateDepthM, purpose }) => rebateDepthM === undefined && purpose !== 'brace-window' && purpose !== 'finger'
  )

export const isInside = ({ panel }: Placed) => ['brace', 'port-wall', 'divider', 'baffle-ring'].includes(panel.role)

interface End {
  readonly spots: readonly Spot[]
  readonly near: number
}

function endsOf(board: Placed, project: Project): readonly End[] {
  const { outline, thicknessM } = board.panel
  // Handed as the board is: the mirrored one turns the other way round.
  const hand = dot(cross(board.place.uAxis, board.place.vAxis), board.out)
  return outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] as PanelPoint
    const [a, b] = [inSpace(board, from, 0), inSpace(board, to, 0)]
    const along = { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z }
    if (hand * dot(cross(along, board.out), view) < 1e-9) return []
    const [c, d] = [inSpace(board, to, thicknessM), inSpace(board, from, thicknessM)]
    const near = [a, b, c, d].reduce((sum, corner) => sum + dot(corner, view) / 4, 0)
    const spots = [
      project(board, from),
      project(board, to),
      project(board, to, thicknessM),
      project(board, from, thicknessM)
    ]
    return [{ near, spots }]
  })
}

/** The sawn ends of boards that look towards the eye, the farthest first. */
export const sawnEnds = (boards: readonly Placed[], project: Project): readonly (readonly Spot[])[] =>
  boards
    .flatMap(board => endsOf(board, project))
    .toSorted((a, b) => a.near - b.near)
    .map(({ spots }) => spots)
