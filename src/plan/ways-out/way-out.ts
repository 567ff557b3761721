/** A change of the request, and the box that is planned with it. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanChange, SystemFigures } from '../../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { inDigits, toDigits } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import { mean } from '../../numeric/mean.ts'
import { goals } from '../designer/search/defaults.ts'
import { firstBuilt } from '../enclosure/alternatives.ts'
import { wishDesigner } from '../enclosure/goal-designs.ts'
import { leafletEnclosure } from '../enclosure/leaflet-enclosure.ts'
import { roomForAir } from '../enclosure/parts/plan-box.ts'
import { planDrivers } from '../enclosure/parts/plan-drivers.ts'
import { settingOf } from '../enclosure/parts/setting.ts'
import { systemFigures } from '../enclosure/parts/system-figures.ts'
import { planEnclosure, toldBox } from '../enclosure/plan-enclosure.ts'
import { planLoad } from '../load/plan-load.ts'
import { type BoxBrief, boxBrief } from '../request/box-brief.ts'
import { planDefaults } from '../request/defaults.ts'
import type { RunPart } from '../request/part.ts'
import type { GivenBox } from '../request/plan-leaflet.ts'
import { type ResolvedPlan, resolvedPlan } from '../request/resolved-plan.ts'
import { wayOutDefaults } from './defaults.ts'

export interface Change {
  /** What to do, a sentence each. */
  readonly texts: readonly Said[]
  /** As it is with the change. */
  readonly request: PlanRequest
  readonly patch: PlanChange['patch']
  /** Of the plan that fits nowhere. */
  readonly run: RunPart
}

/** A box to build, and what it does where that can be told. */
interface Built extends Pick<SystemFigures, 'kind' | 'netVolumeM3' | 'outerVolumeM3' | 'tuningHz'> {
  readonly figures?: SystemFigures
}

/** By a leaflet: the box it tells, without a word on its sound. */
function builtByLeaflet(brief: BoxBrief, given: GivenBox): Built | undefined {
  const { box, fits } = leafletEnclosure(brief, given)
  if (!(fits && box.done)) return undefined
  const { outer, volume } = box.outcome.result
  return {
    ...given,
    netVolumeM3: volume.netM3,
    outerVolumeM3: outer.widthM * outer.heightM * outer.depthM
  }
}

/** The box for the wish, or as it is given; the textbook's others are not looked at. */
function plannedFigures(brief: BoxBrief, resolved: ResolvedPlan): SystemFigures | undefined {
  const { joined } = planLoad(resolved)
  const drivers = planDrivers(resolved, joined)
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
  return found?.fits ? systemFigures(brief, found.box, found.response, found.driven ?? joined) : undefined
}

function built({ request, run }: Pick<Change, 'request' | 'run'>): Built | undefined {
  const resolved = resolvedPlan(request, assumptions(), run)
  const brief = boxBrief(resolved)
  if (brief.leaflet !== undefined) return builtByLeaflet(brief, brief.leaflet)
  const figures = plannedFigures(brief, resolved)
  return figures && { ...figures, figures }
}

/** How loud from 25 to 63 Hz, where that can be told. */
function loudness({ levelDb, heardAt }: SystemFigures): Said {
  return say('way-out.level', {
    levelDb: toDigits(mean(levelDb)),
    heard: say(heardAt === 'seat' ? 'answer.at-the-seat' : 'answer.in-half-space')
  })
}

/** What the box is, how loud, how large, and how fast the air in its port. */
function inWords({ kind, netVolumeM3, outerVolumeM3, tuningHz, figures }: Built): Said {
  const { airSpeedMPerS, price } = figures ?? {}
  return say('way-out.built', {
    kind: say(`way-out.${kind}`),
    netVolumeL: toDigits(netVolumeM3 * 1e3),
    tuned: tuningHz === undefined ? '' : say('answer.tuned-at', { tuningHz: toDigits(tuningHz) }),
    level: figures === undefined ? '' : loudness(figures),
    outerVolumeL: toDigits(outerVolumeM3 * 1e3),
    air: airSpeedMPerS === undefined ? '' : say('answer.air-at-most-m-s', { airSpeed: inDigits(airSpeedMPerS, 2) }),
    price: price === undefined ? '' : say('way-out.price', { price: toDigits(price, 4) })
  })
}

/** Decibels less what the wish takes for room: the scale on which the search weighs boxes too; of a leaflet's box only the room. */
function worthDb({ enclosure = {} }: PlanRequest, { outerVolumeM3, figures }: Built): number {
  const { doublingDb } = goals[enclosure.goal ?? planDefaults.goal.value].value
  const levelDb = figures === undefined ? 0 : mean(figures.levelDb)
  return levelDb - doublingDb * Math.log2(outerVolumeM3)
}

interface WayOut {
  readonly change: PlanChange
  readonly worthDb: number
}

/** The change with what is built then; none where that is nothing. */
export function wayOut({ texts, request, patch, run }: Change): readonly WayOut[] {
  const box = built({ request, run })
  if (box === undefined) return []
  const told = worded({ change: say('sentences', { all: texts }), builds: inWords(box) })
  const { figures } = box
  return [{ change: { ...told, ...present({ figures }), patch }, worthDb: worthDb(request, box) }]
}

/** What costs the least first. */
export const inOrder = (ways: readonly WayOut[]): readonly PlanChange[] =>
  ways.toSorted((a, b) => b.worthDb - a.worthDb).map(({ change }) => change)
