/** The two faces of a board whose edges are sawn at a tilt. */
import type { PanelPoint } from '../../../contract/boxes/box-hardware.ts'
import type { Polygon } from '../../../numeric/polygon.ts'
import { insetPolygon } from '../../../numeric/polygon-inset.ts'
import type { PanelEdge } from './panel.ts'

interface Board {
  /** The blank: as large as the larger face at every edge. */
  readonly outline: readonly PanelPoint[]
  readonly edges: readonly PanelEdge[]
  readonly thicknessM: number
}

/**
 * A face is drawn in by t·tan(tilt) at every edge that is longer on the other; the blank where that leaves nothing.
 *
 * @source derived: a right triangle across the board
 */
export function boardFace({ outline, edges, thicknessM }: Board, face: 'outer' | 'inner'): Polygon {
  const blank = outline.map(({ uM, vM }) => ({ x: uM, y: vM }))
  const inwards = blank.map((_, i) => {
    const edge = edges.find(each => each.edge === i)
    if (edge === undefined || edge.longFace === face || edge.longFace === 'equal') return 0
    return thicknessM * Math.tan((edge.tiltDeg * Math.PI) / 180)
  })
  if (inwards.every(each => each === 0)) return blank
  const inset = insetPolygon(blank, inwards)
  return 'polygon' in inset ? inset.polygon : blank
}
