import { bounds, vertex } from '../../../numeric/geometry/polygon.ts'
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
  /** Wedge only, where they slope: lean of the face across from it, and fall of its lid to the rear [°]. */
  readonly acrossSlopeDeg?: number
  readonly lidSlopeDeg?: number
}

const degrees = (radians: number) => (radians * 180) / Math.PI

export function outerSize(sizes: ShellSizes, shell: Shell): OuterSize {
  const box = bounds(shell.profile)
  if (sizes.shape === 'prism') return { widthM: box.width, heightM: shell.lengthM, depthM: box.height }
  const { widthM, heightM, depthM, acrossRad, lidRad } = sizes
  if (sizes.shape === 'rectangular') return { widthM, heightM, depthM }
  const topDepthM = vertex(shell.profile, 2).x - vertex(shell.profile, 3).x
  const lean = Math.atan2(depthM - sizes.topDepthM, heightM)
  return {
    widthM,
    heightM,
    depthM,
    topDepthM,
    slopeDeg: degrees(lean),
    ...(acrossRad === 0 ? {} : { acrossSlopeDeg: degrees(acrossRad) }),
    ...(lidRad === 0 ? {} : { lidSlopeDeg: degrees(lidRad) })
  }
}
