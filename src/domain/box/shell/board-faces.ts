/** The two faces of a board whose edges are sawn at a tilt. */
import type { PanelPoint } from '../../../contract/boxes/box-hardware.ts'
import type { CutOut, PanelEdge } from '../../../contract/boxes/panel.ts'
import type { Polygon } from '../../../numeric/geometry/polygon.ts'
import { insideDistance } from '../../../numeric/geometry/polygon-distance.ts'
import { insetPolygon } from '../../../numeric/geometry/polygon-inset.ts'
import { notched } from '../../../numeric/geometry/polygon-window.ts'

interface Board {
  /** The blank: as large as the larger face at every edge. */
  readonly outline: readonly PanelPoint[]
  readonly edges: readonly PanelEdge[]
  readonly thicknessM: number
}

type Blank = Pick<Board, 'outline'>

/** A board as it is sawn out of the sheet. */
export const blankOf = ({ outline }: Blank): Polygon => outline.map(({ uM, vM }) => ({ x: uM, y: vM }))

/**
 * A face is drawn in by t·tan(tilt) at every edge that is longer on the other; the blank where that leaves nothing.
 *
 * @source derived: a right triangle across the board
 */
export function boardFace(board: Board, face: 'outer' | 'inner'): Polygon {
  const { edges, thicknessM } = board
  const blank = blankOf(board)
  const inwards = blank.map((_, i) => {
    const edge = edges.find(each => each.edge === i)
    if (edge === undefined || edge.longFace === face || edge.longFace === 'equal') return 0
    return thicknessM * Math.tan((edge.tiltDeg * Math.PI) / 180)
  })
  if (inwards.every(each => each === 0)) return blank
  const inset = insetPolygon(blank, inwards)
  return 'polygon' in inset ? inset.polygon : blank
}

const TOUCHES_M = 1e-6

/** A rectangle that reaches the edge of its board is no hole but a notch of its outline. */
export function isNotch(board: Blank, { kind, uM, vM, widthM = 0, heightM = 0, rebateDepthM }: CutOut): boolean {
  if (kind !== 'rectangle' || rebateDepthM !== undefined) return false
  const blank = blankOf(board)
  return [-0.5, 0.5].some(i =>
    [-0.5, 0.5].some(k => insideDistance(blank, { x: uM + i * widthM, y: vM + k * heightM }) < TOUCHES_M)
  )
}

/** A face of a board less the notches in its edge. */
export function notchedFace(board: Board & { readonly cutOuts: readonly CutOut[] }, face: 'outer' | 'inner'): Polygon {
  const whole = boardFace(board, face)
  const notches = board.cutOuts.filter(cut => isNotch(board, cut))
  if (notches.length === 0) return whole
  return notched(whole, notches.map(windowOf)) ?? whole
}

export const windowOf = ({ uM, vM, widthM = 0, heightM = 0 }: CutOut) => ({
  x: uM,
  y: vM,
  width: widthM,
  height: heightM
})
