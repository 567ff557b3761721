import { bounds } from '../../../numeric/geometry/polygon.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import type { Shell } from './shell.ts'

export interface OuterSize {
  readonly widthM: number
  readonly heightM: number
  /** At the floor of a wedge. */
  readonly depthM: number
  /** Wedge only: depth at the lid. */
  readonly topDepthM?: number
  /** Wedge only: lean of the sloped face from the vertical [°]. */
  readonly slopeDeg?: number
}

export function outerSize(sizes: ShellSizes, shell: Shell): OuterSize {
  const box = bounds(shell.profile)
  if (sizes.shape === 'prism') return { widthM: box.width, heightM: shell.lengthM, depthM: box.height }
  const { widthM, heightM, depthM, topDepthM } = sizes
  if (sizes.shape === 'rectangular') return { widthM, heightM, depthM }
  return { widthM, heightM, depthM, topDepthM, slopeDeg: (Math.atan2(depthM - topDepthM, heightM) * 180) / Math.PI }
}
