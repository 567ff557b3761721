/** A box against the mesh kernel: what shares space, and the air that things take. */
import { expect } from 'vitest'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import { type BoxSolids, layOutSolids } from '../../src/domain/box/layout/lay-out-box.ts'
import { DesignError } from '../../src/domain/design-error.ts'
import { filledVolumes } from './mesh-holes.ts'
import { type loadKernel, type Shared, sceneOf, sharedSpace } from './mesh-kernel.ts'

type Kernel = Awaited<ReturnType<typeof loadKernel>>

/** A common part of facets that touch, and one that nobody can overlook [m³]. */
export const DUST_M3 = 1e-10
export const PLAIN_M3 = 2e-7
/** Deeper than this is an overlap and no rounding [m]. */
const DEEP_M = 2e-4

const isBoardOrAir = (name: string) => /^(board|air) /.test(name)

/** Common parts of any two of a box's boards and bodies. */
export function shared(kernel: Kernel, request: BoxRequest, solids: BoxSolids): readonly Shared[] {
  const scene = sceneOf(kernel, request, solids)
  const found = sharedSpace(scene)
  for (const { solid } of scene) solid.delete()
  return found
}

/** Boards are made for each other; the air of a slot is drawn as wide as its plate and so runs into its cheek. */
export const ofBoards = (found: readonly Shared[]) =>
  found.filter(({ names, volumeM3 }) => names.every(name => name.startsWith('board ')) && volumeM3 > 2e-9)
export const ofThings = (found: readonly Shared[]) => found.filter(({ names }) => !names.every(isBoardOrAir))

/** Bodies against the lines of the subtraction that stand for them; a divider counts whole, its driver's hole with the driver. */
export function checkAir(kernel: Kernel, request: BoxRequest, solids: BoxSolids, withinM3: number): void {
  const { displaced } = solids.layout.volume
  const filled = filledVolumes(kernel, request, solids)
  const tubes = request.port?.kind === 'round' ? displaced.portsM3 : 0
  const rows = { braces: displaced.bracesM3, tubes, cup: displaced.terminalM3, amplifier: displaced.amplifierM3 }
  for (const [item, volumeM3] of Object.entries(rows)) {
    const found = filled[item as keyof typeof filled]
    // An elbow of 12 slices falls short of its bend by 0.3 %.
    const off = Math.abs(found - volumeM3) / (withinM3 + 0.004 * volumeM3)
    expect([JSON.stringify(request), item, off < 1]).toEqual([JSON.stringify(request), item, true])
  }
}

/** Rows that say that two things share space; a flange over the edge of the free board does not yet. */
export const negative = ({ layout }: BoxSolids) =>
  layout.clearances.filter(({ availableM, between }) => availableM < -DEEP_M && !/flange to/.test(between))

export function laidOut(request: BoxRequest): BoxSolids | undefined {
  try {
    return layOutSolids(request).result
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}
