/** Boxes found for a wish made concrete: each sized, ported and laid out as if a caller had given it. */

import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import type { DesignGoal, PlannedKind } from '../../contract/systems/words.ts'
import { present } from '../../domain/present.ts'
import { sixDigitsThroughout } from '../../numeric/six-digits.ts'
import type { PlacedBox } from '../designer/room/box-room.ts'
import type { FoundDesign } from '../designer/search/design-problem.ts'
import { gainPowerAt, withGainFor } from '../load/set-gain.ts'
import { withEnclosure } from '../request/box-brief.ts'
import type { WishDesigner } from './goal-designs.ts'
import { inPlanOrder, planSizing, type SizingPart } from './parts/plan-candidates.ts'
import type { Setting } from './parts/setting.ts'
import { type Attempt, attemptsOf } from './plan-attempts.ts'

/** A box told by its figures. */
type GivenEnclosure = Omit<PlanEnclosure, 'goal' | 'qtc'>

interface WishedAttempt {
  /** What a caller says to have this very box. */
  readonly enclosure: GivenEnclosure
  /** The setting in which it is told, its gain set. */
  readonly setting: Setting
  readonly sizing: SizingPart
  readonly attempt: Attempt
}

/** Of the searched figures those that a plan takes, at the digits it shows. */
function given(
  { brief }: Setting,
  { kind, netVolumeM3, frontVolumeM3, tuningHz, areaM2, place }: FoundDesign<PlacedBox>
): GivenEnclosure {
  const { goal: _, qtc: _qtc, portShape, portFace, airSpeedMPerS, ...rest } = brief.enclosure
  const fixed = kind === 'passive-radiator' ? rest : { ...rest, ...present({ portShape, portFace, airSpeedMPerS }) }
  const opening = {
    portShape: place.portShape,
    portFace: place.portFace,
    portAreaM2: areaM2,
    radiatorCount: place.radiators?.count,
    radiatorFace: place.radiators?.face
  }
  return sixDigitsThroughout({ ...fixed, ...present({ kind, netVolumeM3, frontVolumeM3, tuningHz, ...opening }) })
}

/** The box as given, at the gain that the search held it to. */
function toldOf(setting: Setting, enclosure: GivenEnclosure, { held }: FoundDesign<PlacedBox>): Setting {
  const { joined } = setting
  const brief = withEnclosure(setting.brief, enclosure)
  const gainPowerW = gainPowerAt(joined, held.voltageV)
  if (gainPowerW === undefined) return { ...setting, brief }
  return { ...setting, brief: { ...brief, gainPowerW }, joined: withGainFor(joined, gainPowerW) }
}

/** What is tried for a wish, the best first; nothing where the box is given or the space unknown. */
export function* wishedAttempts(
  setting: Setting,
  wish: DesignGoal,
  designs: WishDesigner,
  roomM3: number,
  kind?: PlannedKind
): Generator<WishedAttempt> {
  for (const design of designs(wish, kind)) {
    const enclosure = given(setting, design)
    const asGiven = toldOf(setting, enclosure, design)
    const sizing = planSizing(asGiven, roomM3)
    if (!sizing.done) continue
    const asked = inPlanOrder(sizing.outcome.result.candidates).find(({ alignment }) => alignment === 'as-asked')
    if (asked === undefined) continue
    for (const attempt of attemptsOf(asGiven, asked, sizing)) yield { enclosure, setting: asGiven, sizing, attempt }
  }
}
