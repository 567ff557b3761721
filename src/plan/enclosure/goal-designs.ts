/** The boxes worth trying first for a wish in plain words: searched in closed form, then sized, ported and laid out like any other. */

import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import { type DesignGoal, isFlatFace, type PlannedKind } from '../../contract/systems/words.ts'
import type { Air } from '../../domain/air/air.ts'
import { assumptions } from '../../domain/assume.ts'
import { cabinGain } from '../../domain/cabin/cabin-gain.ts'
import { enclosureDefaults } from '../../domain/enclosure/model/defaults.ts'
import { portSizingDefaults } from '../../domain/port/sizing/defaults.ts'
import { present } from '../../domain/present.ts'
import { designGridHz } from '../designer/evaluate/design-grid.ts'
import { driverTables } from '../designer/evaluate/driver-tables.ts'
import { programme } from '../designer/evaluate/held-level.ts'
import { boxFacts } from '../designer/room/box-facts.ts'
import { boxRoom, type PlacedBox, tightRoom } from '../designer/room/box-room.ts'
import { type DividedFace, dividedRoom } from '../designer/room/divided-room.ts'
import { goals } from '../designer/search/defaults.ts'
import type { DesignProblem, FoundDesign, RadiatorWay, Room } from '../designer/search/design-problem.ts'
import { goalFor } from '../designer/search/goals.ts'
import { remembered } from '../designer/search/remembered.ts'
import { searchBoxes } from '../designer/search/search-boxes.ts'
import { type BoxBrief, isDivided } from '../request/box-brief.ts'
import { planDefaults } from '../request/defaults.ts'
import { portOnly, radiatorOnly } from '../request/plan-conflicts.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import { drivenGroup } from './driven-group.ts'
import { radiatorPlaces } from './parts/plan-radiators.ts'
import { spaceQuestion } from './parts/plan-shell.ts'
import type { Setting } from './parts/setting.ts'

/** What stands in the space, up to the largest box that the layout has found there. */
function roomOf(brief: BoxBrief, largestM3: number, leastM3: number, { soundSpeedMPerS }: Air): Room<PlacedBox> {
  const facts = boxFacts(spaceQuestion(brief), brief.space.strategy)
  const longestM = soundSpeedMPerS / (2 * portSizingDefaults.resonanceClose.value * brief.crossoverHz)
  const room = boxRoom(facts, {
    shapes: brief.portShapes,
    portFace: brief.portFace,
    fromM3: leastM3,
    toM3: largestM3 / enclosurePlanDefaults.braced.value,
    longestM
  })
  return isDivided(brief) ? { ...room, divided: dividedRoom(facts, tubeFaces(brief), longestM) } : room
}

/** Across the front chamber before through the front, where the tubes end at the cones. */
const tubeFaces = ({ enclosure: { portFace } }: BoxBrief): readonly DividedFace[] =>
  portFace === undefined || portFace === 'back' ? ['right', 'top', 'front'] : [portFace]

/** Who asks for a port asks for a vented box, who places radiators for a box with them; a tuning alone leaves both. */
export function wantedKind({ kind, ...enclosure }: PlanEnclosure, hasRadiators: boolean): PlannedKind | undefined {
  if (kind === 'band-pass-4') return kind
  const asks = (fields: readonly (keyof typeof enclosure)[]) => fields.some(field => enclosure[field] !== undefined)
  if (asks(radiatorOnly)) return 'passive-radiator'
  if (asks(portOnly)) return 'vented'
  return kind ?? (asks(['tuningHz']) && !hasRadiators ? 'vented' : undefined)
}

/** Each way to set in the radiators at hand, as far as the space is asked. */
function radiatorWays(brief: BoxBrief): readonly RadiatorWay<PlacedBox>[] | undefined {
  const { radiators, space } = brief
  if (radiators === undefined) return undefined
  return radiatorPlaces(brief).map(place => {
    const room = tightRoom(boxFacts(spaceQuestion(brief, place), space.strategy))
    const stands = (netM3: number) => {
      const placed = room(netM3)
      return placed && { ...placed, radiators: place }
    }
    return { unit: radiators.unit, count: place.count, isFlat: isFlatFace(place.face), stands }
  })
}

/**
 * The question of the search, with what the caller has fixed.
 *
 * @param known  the room of other drivers of the same size in the same space
 */
export function wishProblem(
  setting: Setting,
  largestM3: number,
  known?: Room<PlacedBox>
): Omit<DesignProblem<PlacedBox>, 'goal'> {
  const { brief, joined } = setting
  const { enclosure, cabin, airSpeedMPerS, crossoverHz } = brief
  const { wish, limits, leastM3 } = drivenGroup(setting)
  const { air } = wish
  const { musicFromHz, musicSlopeOrder } = enclosurePlanDefaults
  const music = { fromHz: musicFromHz.value, slopeOrder: musicSlopeOrder.value }
  const seat = cabin && cabinGain(cabin, air.soundSpeedMPerS, designGridHz, assumptions()).gainDb
  return {
    tables: driverTables(wish, designGridHz),
    limits,
    airSpeedMPerS,
    leakQ: enclosureDefaults.openedLeakQ.value,
    programme: programme(designGridHz, { cornerHz: crossoverHz, order: planDefaults.crossoverOrder.value }, music),
    highestV: joined.targetVoltageV,
    gainStepDb: enclosurePlanDefaults.gainStepDb.value,
    seatGainDb: seat ?? new Float64Array(designGridHz.length),
    room: known === undefined ? roomOf(brief, largestM3, leastM3, air) : { ...known, fromM3: leastM3 },
    ...present({
      radiators: radiatorWays(brief),
      kind: wantedKind(enclosure, brief.radiators !== undefined),
      netVolumeM3: enclosure.netVolumeM3,
      frontVolumeM3: enclosure.frontVolumeM3,
      tuningHz: enclosure.tuningHz,
      areaM2: enclosure.portAreaM2
    })
  }
}

const ratio = (one = 1, other = 1) => Math.max(one / other, other / one)

const isOfVolume = (a: FoundDesign<PlacedBox>, b: FoundDesign<PlacedBox>) =>
  a.kind === b.kind && ratio(a.netVolumeM3, b.netVolumeM3) <= enclosurePlanDefaults.apartVolume.value

/** Far enough apart to be worth a layout of its own. */
export const isAnother = (a: FoundDesign<PlacedBox>, b: FoundDesign<PlacedBox>): boolean =>
  !isOfVolume(a, b) || ratio(a.tuningHz, b.tuningHz) > enclosurePlanDefaults.apartTuning.value

function isWorthALayout(design: FoundDesign<PlacedBox>, before: readonly FoundDesign<PlacedBox>[]): boolean {
  const alike = before.filter(other => isOfVolume(design, other))
  return alike.length < enclosurePlanDefaults.mostOfAVolume.value && alike.every(other => isAnother(design, other))
}

/** The best boxes for a wish, of one kind where that is named. */
export type WishDesigner = (wish: DesignGoal, kind?: PlannedKind) => readonly FoundDesign<PlacedBox>[]

/** Gives for a wish the best boxes first, each other than those before it; what several wishes ask is worked out once. */
export function wishDesigner(setting: Setting, largestM3: number, room?: Room<PlacedBox>): WishDesigner {
  const problem = wishProblem(setting, largestM3, room)
  const { qts } = problem.tables
  const found = remembered((wish: DesignGoal): readonly FoundDesign<PlacedBox>[] => {
    const referenceDb = goals[wish].value.withinDb === undefined ? undefined : found('loud')[0]?.held.levelDb
    return searchBoxes({ ...problem, goal: goalFor(goals[wish].value, qts), ...present({ referenceDb }) })
  })
  return (wish, kind) => {
    const apart: FoundDesign<PlacedBox>[] = []
    for (const design of found(wish)) {
      if (kind !== undefined && design.kind !== kind) continue
      if (apart.length < enclosurePlanDefaults.mostTried.value && isWorthALayout(design, apart)) apart.push(design)
    }
    return apart
  }
}
