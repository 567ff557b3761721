/** Where no box fits: the least changes of the request with which one does, each planned before it is offered. */
import type { PlanChange, PlanWaysOut } from '../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../contract/systems/plan-request.ts'
import { assumptions } from '../domain/assume.ts'
import { inDigits, inLitres } from '../domain/digits.ts'
import { present } from '../domain/present.ts'
import { standsAny } from './designer/room/stands-any.ts'
import { wantedKind } from './enclosure/goal-designs.ts'
import { roomForAir } from './enclosure/parts/plan-box.ts'
import { planDrivers } from './enclosure/parts/plan-drivers.ts'
import { spaceQuestion } from './enclosure/parts/plan-shell.ts'
import { forWish, type PlannedEnclosure, planEnclosure } from './enclosure/plan-enclosure.ts'
import { planLoad } from './load/plan-load.ts'
import { resolvedPlan } from './request/resolved-plan.ts'

/** The box for the wish, or as it is given; the textbook's others are not looked at. */
function planned(request: PlanRequest): PlannedEnclosure | undefined {
  const resolved = resolvedPlan(request, assumptions())
  const { joined } = planLoad(resolved)
  const drivers = planDrivers(resolved, joined)
  const { goal } = resolved.enclosure ?? {}
  if (goal === undefined) return planEnclosure(resolved, drivers, joined)
  const roomM3 = roomForAir(resolved)
  if (!drivers.done || joined === undefined || roomM3 === undefined) return undefined
  return forWish({ request: resolved, drivers, joined }, goal, roomM3, [])
}

/** What a box of the request would be, in words; none where there is none. */
function built(request: PlanRequest): string | undefined {
  const { fits, chosen, box } = planned(request) ?? {}
  if (!fits || chosen === undefined || !box?.done) return undefined
  const tuned = chosen.tuningHz === undefined ? '' : ` at ${inDigits(chosen.tuningHz)} Hz`
  return `${chosen.kind === 'vented' ? 'Vented' : 'Closed'}, ${inLitres(box.outcome.result.volume.netM3)}${tuned}`
}

const change = (text: string, request: PlanRequest, patch: PlanChange['patch']): readonly PlanChange[] => {
  const builds = built(request)
  return builds === undefined ? [] : [{ change: text, builds, patch }]
}

const sides = { heightM: 'higher', depthM: 'deeper', widthM: 'wider' } as const
type Side = keyof typeof sides

/** Sizes are told in steps of half a centimetre; a space that is this much too small is another space. Ours. */
const STEP_M = 5e-3
const MOST_STEPS = 60
/** The closed question may be a little too hopeful; further steps tried then. Ours. */
const FURTHER = [0, 4] as const

const grown = (request: PlanRequest, side: Side, byM: number): PlanRequest => {
  const { space } = request.car
  const sizeM = Math.round(((space[side] ?? 0) + byM) * 1e4) / 1e4
  return { ...request, car: { ...request.car, space: { ...space, [side]: sizeM } } }
}

function stands(request: PlanRequest): boolean {
  const resolved = resolvedPlan(request, assumptions())
  const { strategy } = resolved.car.space
  const { enclosure = {} } = resolved
  const asked = { strategy, kind: wantedKind(enclosure), ...enclosure }
  return standsAny(spaceQuestion(resolved), asked)
}

const isOnFront = ({ driver }: PlanRequest) => (driver.mounting?.face ?? 'front') === 'front'

/** Drivers where most room is; the closed question knows no other place for them. */
function frontwards({ driver, ...request }: PlanRequest): readonly PlanChange[] {
  const { face, ...mounting } = driver.mounting ?? {}
  if (face === undefined || face === 'front') return []
  const patch = { driver: { mounting: { face: null } } }
  return change('Set the drivers into the front.', { ...request, driver: { ...driver, mounting } }, patch)
}

/** The least by which one side must grow. */
function roomier(request: PlanRequest, side: Side): readonly PlanChange[] {
  const given = request.car.space[side]
  if (given === undefined || !isOnFront(request) || !stands(grown(request, side, MOST_STEPS * STEP_M))) return []
  let [low, high] = [0, MOST_STEPS]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (stands(grown(request, side, middle * STEP_M))) high = middle
    else low = middle
  }
  for (const further of FURTHER) {
    const larger = grown(request, side, (high + further) * STEP_M)
    const sizeM = larger.car.space[side] ?? 0
    const text = `Make the room ${inDigits((sizeM - given) * 1e3)} mm ${sides[side]}.`
    const found = change(text, larger, { car: { space: { [side]: sizeM } } })
    if (found.length > 0) return found
  }
  return []
}

/** Whatever was asked of the box, left open. */
function opened(request: PlanRequest): readonly PlanChange[] {
  const { enclosure, ...open } = request
  if (enclosure === undefined || Object.keys(enclosure).length === 0) return []
  return change('Leave open what the box shall be.', open, { enclosure: null })
}

function fewer(request: PlanRequest): readonly PlanChange[] {
  const driverCount = request.driverCount - 1
  if (driverCount < 1) return []
  const text = driverCount === 1 ? 'Take one driver.' : `Take ${driverCount} drivers.`
  return change(text, { ...request, driverCount }, { driverCount })
}

/** Usual sizes of bass drivers, flange, hole and depth; common practice, no source. */
const usualDrivers = [
  { nominalM: 0.38, flangeDiameterM: 0.388, cutOutDiameterM: 0.352, mountingDepthM: 0.185 },
  { nominalM: 0.3, flangeDiameterM: 0.312, cutOutDiameterM: 0.282, mountingDepthM: 0.158 },
  { nominalM: 0.25, flangeDiameterM: 0.262, cutOutDiameterM: 0.232, mountingDepthM: 0.142 },
  { nominalM: 0.2, flangeDiameterM: 0.212, cutOutDiameterM: 0.182, mountingDepthM: 0.118 },
  { nominalM: 0.165, flangeDiameterM: 0.18, cutOutDiameterM: 0.146, mountingDepthM: 0.085 }
] as const

function largestDriver(request: PlanRequest): PlanWaysOut['largestDriver'] {
  const found = usualDrivers.find(({ nominalM: _, ...mounting }) =>
    stands({ ...request, enclosure: {}, driverCount: 1, driver: { ...request.driver, mounting } })
  )
  if (found === undefined) return undefined
  const { nominalM, flangeDiameterM, mountingDepthM } = found
  return { nominalM, flangeDiameterM, mountingDepthM }
}

/** @param request  as the caller gave it */
export function planWaysOut(request: PlanRequest): PlanWaysOut {
  const changes = [
    ...opened(request),
    ...frontwards(request),
    ...(Object.keys(sides) as readonly Side[]).flatMap(side => roomier(request, side)),
    ...fewer(request)
  ]
  return { changes, ...present({ largestDriver: largestDriver(request) }) }
}

/** The sentence that says why nothing fits, with the least change that mends it. */
export function withWayOut(misfit: string | undefined, waysOut: PlanWaysOut | undefined): string | undefined {
  const least = waysOut?.changes[0]
  return misfit === undefined || least === undefined ? misfit : `${misfit} What would do: ${least.change}`
}
