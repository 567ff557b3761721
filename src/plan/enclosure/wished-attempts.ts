/** Boxes found for a wish made concrete: each sized, ported and laid out as if a caller had given it. */
import type { DesignGoal } from '../../contract/systems/words.ts'
import { present } from '../../domain/present.ts'
import { sixDigitsThroughout } from '../../numeric/six-digits.ts'
import type { PlacedBox } from '../designer/room/box-room.ts'
import type { FoundDesign } from '../designer/search/design-problem.ts'
import type { PlanEnclosure } from '../request/plan-request.ts'
import { type Attempt, attemptsOf, type Setting } from './plan-attempts.ts'
import { inPlanOrder, planSizing, type SizingPart } from './plan-candidates.ts'

/** A box told by its figures. */
export type GivenEnclosure = Omit<PlanEnclosure, 'goal' | 'qtc'>

export interface WishedAttempt {
  /** What a caller says to have this very box. */
  readonly enclosure: GivenEnclosure
  readonly sizing: SizingPart
  readonly attempt: Attempt
}

/** Of the searched figures those that a plan takes, at the digits it shows. */
function given(
  { request }: Setting,
  { kind, netVolumeM3, tuningHz, areaM2, place }: FoundDesign<PlacedBox>
): GivenEnclosure {
  const { goal: _, qtc: _qtc, ...fixed } = request.enclosure ?? {}
  const port = { portShape: place.portShape, portAreaM2: areaM2 }
  return sixDigitsThroughout({ ...fixed, ...present({ kind, netVolumeM3, tuningHz, ...port }) })
}

/** What is tried for a wish, the best first; nothing where the box is given or the space unknown. */
export function* wishedAttempts(
  setting: Setting,
  wish: DesignGoal,
  designs: (wish: DesignGoal) => readonly FoundDesign<PlacedBox>[],
  roomM3: number
): Generator<WishedAttempt> {
  const { request, drivers, joined } = setting
  for (const design of designs(wish)) {
    const enclosure = given(setting, design)
    const asGiven = { ...request, enclosure }
    const sizing = planSizing(asGiven, drivers, joined, roomM3)
    if (!sizing.done) continue
    const asked = inPlanOrder(sizing.outcome.result.candidates).find(({ alignment }) => alignment === 'as-asked')
    if (asked === undefined) continue
    for (const attempt of attemptsOf({ ...setting, request: asGiven }, asked, sizing))
      yield { enclosure, sizing, attempt }
  }
}
