/** How a boot cuts the sizes a box may have: a leaning seat, wheel arches. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { Axis } from './axes.ts'
import { placeInBoot } from './boot-place.ts'
import type { Ranges } from './size-limits.ts'

export function standsInBoot({ request }: BoxTask, { width, height, depth }: Readonly<Record<Axis, number>>): boolean {
  const { widthM, depthM, keepOuts } = request.limits ?? {}
  if (keepOuts === undefined || widthM === undefined || depthM === undefined) return true
  return placeInBoot({ widthM: width, heightM: height, depthM: depth }, { widthM, depthM }, keepOuts) !== undefined
}

export function noPlace({ limits }: BoxRequest): DesignError {
  return new DesignError('no-solution', {
    field: 'limits.keepOuts',
    detail: say('refused.no-box-of-this-volume-stands', { keepOuts: limits?.keepOuts?.length ?? 0 })
  })
}

/** Heights tried under a leaning seat, each with the depth the seat leaves there. */
const HEIGHTS = 8

/** The ranges as the boot cuts them: less depth the higher under a leaning seat, less width between wheel arches. */
export function places({ request, fixed }: BoxTask, ranges: Ranges): readonly Ranges[] {
  const { seatSlopeDeg, keepOuts = [], widthM = 0 } = request.limits ?? {}
  const edges = [0, widthM, ...keepOuts.flatMap(block => [block.xM, block.xM + block.widthM])]
  const widths = [...new Set(edges.flatMap(a => edges.map(b => b - a)))]
    .filter(width => keepOuts.length > 0 && width >= ranges.width.min && width < ranges.width.max)
    .map(max => ({ ...ranges, width: { min: ranges.width.min, max } }))
  const beside = [ranges, ...widths]
  if (seatSlopeDeg === undefined || fixed.shape !== 'rectangular') return beside
  const lean = Math.tan((seatSlopeDeg * Math.PI) / 180)
  return beside.flatMap(each => {
    const { min, max } = each.height
    const heights =
      max > min
        ? Array.from({ length: HEIGHTS }, (_, i) => Math.round((min + ((max - min) * i) / (HEIGHTS - 1)) * 1e3) / 1e3)
        : [min]
    return heights
      .map(height => ({
        ...each,
        height: { min: height, max: height },
        depth: { min: each.depth.min, max: Math.min(each.depth.max, each.depth.max - height * lean) }
      }))
      .filter(({ depth, height }) => depth.max >= depth.min && height.max <= max + 1e-9)
  })
}
