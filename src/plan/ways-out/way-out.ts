/** A change of the request, and the box that is planned with it. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanChange, SystemFigures } from '../../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { inDigits, toDigits } from '../../domain/digits.ts'
import { say, worded } from '../../domain/say.ts'
import { mean } from '../../numeric/mean.ts'
import { goals } from '../designer/search/defaults.ts'
import { firstBuilt } from '../enclosure/alternatives.ts'
import { wishDesigner } from '../enclosure/goal-designs.ts'
import { roomForAir } from '../enclosure/parts/plan-box.ts'
import { planDrivers } from '../enclosure/parts/plan-drivers.ts'
import { settingOf } from '../enclosure/parts/setting.ts'
import { systemFigures } from '../enclosure/parts/system-figures.ts'
import { planEnclosure, toldBox } from '../enclosure/plan-enclosure.ts'
import { planLoad } from '../load/plan-load.ts'
import { boxBrief } from '../request/box-brief.ts'
import { planDefaults } from '../request/defaults.ts'
import { resolvedPlan } from '../request/resolved-plan.ts'
import { wayOutDefaults } from './defaults.ts'

export interface Change {
  /** What to do, a sentence each. */
  readonly texts: readonly Said[]
  /** As it is with the change. */
  readonly request: PlanRequest
  readonly patch: PlanChange['patch']
}

/** The box for the wish, or as it is given; the textbook's others are not looked at. */
function plannedFigures(request: PlanRequest): SystemFigures | undefined {
  const resolved = resolvedPlan(request, assumptions())
  const { joined } = planLoad(resolved)
  const drivers = planDrivers(resolved, joined)
  const brief = boxBrief(resolved)
  const roomM3 = roomForAir(brief)
  if (!drivers.done || joined === undefined || roomM3 === undefined) return undefined
  const { goal } = brief.enclosure
  if (goal !== undefined) {
    const setting = settingOf(brief, drivers, joined)
    const designs = wishDesigner(setting, roomM3)
    return firstBuilt({ setting, goal, designs, roomM3 }, goal, wayOutDefaults.mostAttempts.value)?.figures
  }
  const { netVolumeM3 } = brief.enclosure
  const found =
    netVolumeM3 === undefined
      ? planEnclosure(brief, drivers, joined)
      : toldBox(settingOf(brief, drivers, joined), roomM3)
  return found?.fits ? systemFigures(found.box, found.response, found.driven ?? joined) : undefined
}

/** What the box is, how loud, how large, and how fast the air in its port. */
function inWords({ kind, netVolumeM3, tuningHz, levelDb, heardAt, outerVolumeM3, airSpeedMPerS }: SystemFigures): Said {
  return say('way-out.built', {
    kind: say(`way-out.${kind}`),
    netVolumeL: toDigits(netVolumeM3 * 1e3),
    tuned: tuningHz === undefined ? '' : say('answer.tuned-at', { tuningHz: toDigits(tuningHz) }),
    levelDb: toDigits(mean(levelDb)),
    heard: say(heardAt === 'seat' ? 'answer.at-the-seat' : 'answer.in-half-space'),
    outerVolumeL: toDigits(outerVolumeM3 * 1e3),
    air: airSpeedMPerS === undefined ? '' : say('answer.air-at-most-m-s', { airSpeed: inDigits(airSpeedMPerS, 2) })
  })
}

/** Decibels less what the wish takes for room: the scale on which the search weighs boxes too. */
function worthDb({ enclosure = {} }: PlanRequest, { levelDb, outerVolumeM3 }: SystemFigures): number {
  const { doublingDb } = goals[enclosure.goal ?? planDefaults.goal.value].value
  return mean(levelDb) - doublingDb * Math.log2(outerVolumeM3)
}

interface WayOut {
  readonly change: PlanChange
  readonly worthDb: number
}

/** The change with what is built then; none where that is nothing. */
export function wayOut({ texts, request, patch }: Change): readonly WayOut[] {
  const figures = plannedFigures(request)
  if (figures === undefined) return []
  const told = worded({ change: say('sentences', { all: texts }), builds: inWords(figures) })
  return [{ change: { ...told, figures, patch }, worthDb: worthDb(request, figures) }]
}

/** What costs the least first. */
export const inOrder = (ways: readonly WayOut[]): readonly PlanChange[] =>
  ways.toSorted((a, b) => b.worthDb - a.worthDb).map(({ change }) => change)
