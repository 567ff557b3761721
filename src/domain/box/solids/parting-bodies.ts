/** What parts a box into two chambers, as bodies: the divider, and the strips behind a front that comes off. */
import { cross } from '../../../numeric/geometry/convex-distance.ts'
import { LEDGE_WIDTH_M } from '../shell/ledges.ts'
import { clearLength } from '../shell/shell.ts'
import type { FittedBox } from './fitted-box.ts'
import { bars, block, toDirection, toVector } from './solids.ts'

export function dividerBody({ inside, divider }: FittedBox) {
  if (divider === undefined) return []
  const from = inside.shell.caps.low.thicknessM
  const solids = bars(inside.shell.axis, divider.parts.board, from, from + clearLength(inside.shell))
  return [{ name: 'divider', kind: 'divider' as const, pieces: solids.map(solid => ({ solid })) }]
}

export const ledgeBodies = ({ ledges = [], divider }: FittedBox) =>
  ledges.map(({ name, on, middle, along, inwards, lengthM }) => {
    const [run, away] = [toDirection(along), toDirection(inwards)]
    const halves = [
      { along: run, half: lengthM / 2 },
      { along: away, half: LEDGE_WIDTH_M / 2 },
      { along: cross(run, away), half: (divider?.panel.thicknessM ?? 0) / 2 }
    ]
    return { name, on, kind: 'batten' as const, pieces: [{ solid: block(toVector(middle), halves) }] }
  })
