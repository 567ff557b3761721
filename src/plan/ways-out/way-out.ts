/** A change of the request, and the box that is planned with it. */
import type { PlanChange, SystemFigures } from '../../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { inDigits, inLitres } from '../../domain/digits.ts'
import { mean } from '../../numeric/mean.ts'
import { goals } from '../designer/search/goals.ts'
import { firstBuilt } from '../enclosure/alternatives.ts'
import { wishDesigner } from '../enclosure/goal-designs.ts'
import { roomForAir } from '../enclosure/parts/plan-box.ts'
import { planDrivers } from '../enclosure/parts/plan-drivers.ts'
import { systemFigures } from '../enclosure/parts/system-figures.ts'
import { planEnclosure, toldBox } from '../enclosure/plan-enclosure.ts'
import { planLoad } from '../load/plan-load.ts'
import { usual } from '../request/plan-usual.ts'
import { resolvedPlan } from '../request/resolved-plan.ts'

export interface Change {
  readonly text: string
  /** As it is with the change. */
  readonly request: PlanRequest
  readonly patch: PlanChange['patch']
}

/** Attempts to build a box for a wish before a change is not offered. */
const MOST_ATTEMPTS = 12

/** The box for the wish, or as it is given; the textbook's others are not looked at. */
function plannedFigures(request: PlanRequest): SystemFigures | undefined {
  const resolved = resolvedPlan(request, assumptions())
  const { joined } = planLoad(resolved)
  const drivers = planDrivers(resolved, joined)
  const roomM3 = roomForAir(resolved)
  if (!drivers.done || joined === undefined || roomM3 === undefined) return undefined
  const setting = { request: resolved, drivers, joined }
  const { goal } = resolved.enclosure ?? {}
  if (goal !== undefined) {
    const designs = wishDesigner(resolved, drivers, joined, roomM3)
    return firstBuilt({ setting, goal, designs, roomM3 }, goal, MOST_ATTEMPTS)?.figures
  }
  const { netVolumeM3 } = resolved.enclosure ?? {}
  const found = netVolumeM3 === undefined ? planEnclosure(resolved, drivers, joined) : toldBox(setting, roomM3)
  return found?.fits ? systemFigures(found.box, found.response, found.driven ?? joined) : undefined
}

/** What the box is, how loud, how large, and how fast the air in its port. */
function inWords({
  kind,
  netVolumeM3,
  tuningHz,
  levelDb,
  heardAt,
  outerVolumeM3,
  airSpeedMPerS
}: SystemFigures): string {
  const box = `${kind === 'vented' ? 'Vented' : 'Closed'}, ${inLitres(netVolumeM3)}`
  const tuned = tuningHz === undefined ? '' : ` at ${inDigits(tuningHz)} Hz`
  const heard = `${inDigits(mean(levelDb), 3)} dB ${heardAt === 'seat' ? 'at the seat' : 'in half space'} from 25 to 63 Hz`
  const air = airSpeedMPerS === undefined ? '' : `, air at most ${inDigits(airSpeedMPerS, 2)} m/s`
  return `${box}${tuned}: ${heard}, ${inLitres(outerVolumeM3)} of room${air}`
}

/** Decibels less what the wish takes for room: the scale on which the search weighs boxes too. */
function worthDb({ enclosure = {} }: PlanRequest, { levelDb, outerVolumeM3 }: SystemFigures): number {
  const { doublingDb } = goals[enclosure.goal ?? usual.goal.value]
  return mean(levelDb) - doublingDb * Math.log2(outerVolumeM3)
}

interface WayOut {
  readonly change: PlanChange
  readonly worthDb: number
}

/** The change with what is built then; none where that is nothing. */
export function wayOut({ text, request, patch }: Change): readonly WayOut[] {
  const figures = plannedFigures(request)
  if (figures === undefined) return []
  return [{ change: { change: text, builds: inWords(figures), figures, patch }, worthDb: worthDb(request, figures) }]
}

/** What costs the least first. */
export const inOrder = (ways: readonly WayOut[]): readonly PlanChange[] =>
  ways.toSorted((a, b) => b.worthDb - a.worthDb).map(({ change }) => change)
