/** Which outer arrises of a box may be rounded after assembly, and how far. */

import type { PanelEdge } from '../../../contract/boxes/panel.ts'
import { interiorAngle } from '../../../numeric/geometry/polygon.ts'
import { boardLength, type Shell, wallOf } from './shell.ts'

/** Judgement, common practice, no source: wood left between the rounding and the seam; what a hand-held router takes. */
const roundingRule = { leftM: 6e-3, mostM: 12e-3, leastM: 2e-3 } as const

/**
 * Largest radius of an arris that lies whole in one board.
 *
 *   r = min(t − 6 mm, 12 mm)
 *
 * The next seam lies a board away, so that r < t never reaches it.
 *
 * @returns undefined where less than 2 mm would be left
 * @source common practice, no source
 * @check  18 mm → 12 mm, 15 mm → 9 mm, 7 mm → none
 */
export function roundingRadius(thicknessM: number): number | undefined {
  const { leftM, mostM, leastM } = roundingRule
  const radius = Math.round(Math.min(thicknessM - leftM, mostM) * 1e6) / 1e6
  return radius < leastM ? undefined : radius
}

/** Whether a wall runs past its neighbour at a corner of the profile that sticks out: then the arris is its own. */
function owns({ profile, corners }: Shell, vertex: number, as: 'before' | 'after'): boolean {
  const i = vertex % profile.length
  return corners[i] === as && interiorAngle(profile, i) < Math.PI - 1e-9
}

export interface OwnArrises {
  readonly low: boolean
  readonly high: boolean
  /** At both caps. */
  readonly caps: boolean
}

/** Only the outermost board of a wall has outer arrises; one set back has none, its neighbours stand before it. */
export function ownArrises(shell: Shell, wall: number, layer: number): OwnArrises {
  if (layer > 0 || wallOf(shell, wall).recessM > 0) return { low: false, high: false, caps: false }
  return {
    low: owns(shell, wall, 'after'),
    high: owns(shell, wall + 1, 'before'),
    caps: boardLength(shell, wall) >= shell.lengthM
  }
}

/** A square edge with its rounding; a tilted one stays sharp, its seam lies nearer. */
export function withRounding(edge: PanelEdge, own: boolean, thicknessM: number): PanelEdge {
  const radius = own && edge.tiltDeg === 0 ? roundingRadius(thicknessM) : undefined
  return radius === undefined ? edge : { ...edge, roundingRadiusM: radius }
}
