/** Whether a fuse stands before every cable of a feeder that could burn, and whether main and branches are selective. */
import type { CableProtection, Protection } from '../../../contract/supply/supply-feeder.ts'
import { present } from '../../present.ts'
import { selectivity } from '../fuse/selectivity.ts'
import type { StageTask } from './feeder-stage.ts'

function guard(stage: StageTask, stretch: string, upstreamA: number | undefined): readonly CableProtection[] {
  const { cable, fuse } = stage
  if (cable === undefined) return []
  const { ampacityA } = cable.carries
  const ratingA = fuse?.ratingA ?? upstreamA
  return [
    {
      stretch,
      designation: cable.size.designation,
      ...present({ ampacityA, fuseRatingA: ratingA }),
      guarded: ratingA !== undefined && ratingA <= (ampacityA ?? 0) * (1 + 1e-12)
    }
  ]
}

/**
 * Protection of every cable.
 *
 * Each run's ampacity reaches the rating of its fuse; a branch without one needs the ampacity for the main fuse.
 *
 * @source In ≤ Iz; 46 CFR 111.50-5(a)(3) for unfused branches (read)
 * @check  800 W class D and 400 W class AB at 12 V: main 150 A, branches 80 and 60 A, ratios 1.875 and 2.5
 */
export function protectionOf(trunk: StageTask, branches: readonly StageTask[]): Protection {
  const mainA = trunk.fuse === undefined ? undefined : trunk.fuse.ratingA * (trunk.cable?.runs ?? 1)
  return {
    ...present({ mainRatingA: mainA }),
    cables: [
      ...guard(trunk, 'trunk', undefined),
      ...branches.flatMap((stage, index) => guard(stage, String(index), mainA))
    ],
    branches: branches.flatMap(({ fuse }, index) =>
      fuse === undefined || mainA === undefined ? [] : [{ stretch: String(index), ...selectivity(mainA, fuse.ratingA) }]
    )
  }
}
