/** The costly half of a design: the box searched for the goal, sized, ported, laid out, braced and heard as a plan would do it. */
import type { DesignFigures } from '../../../contract/systems/design-system.ts'
import type { PlanEnclosure } from '../../../contract/systems/plan-enclosure.ts'
import type { SearchedKind } from '../../../contract/systems/words.ts'
import type { Caution } from '../../../domain/caution.ts'
import { present } from '../../../domain/present.ts'
import { inEnglish } from '../../../domain/say.ts'
import { planCautions } from '../../answer/plan-cautions.ts'
import { planSignal } from '../../electric/plan-signal.ts'
import { type AttemptResponse, attemptResponse } from '../../enclosure/attempt-response.ts'
import { isAnother, wishProblem } from '../../enclosure/goal-designs.ts'
import { roomForAir } from '../../enclosure/parts/plan-box.ts'
import { closedHighPass } from '../../enclosure/parts/plan-high-pass.ts'
import type { ResponsePart } from '../../enclosure/parts/plan-response.ts'
import type { Attempt } from '../../enclosure/plan-attempts.ts'
import { wishedAttempts } from '../../enclosure/wished-attempts.ts'
import { loadAtGain } from '../../load/plan-load.ts'
import { withEnclosure } from '../../request/box-brief.ts'
import type { PlacedBox } from '../room/box-room.ts'
import { goals } from '../search/defaults.ts'
import type { DesignProblem, FoundDesign, Room } from '../search/design-problem.ts'
import { goalFor } from '../search/goals.ts'
import { searchBoxes } from '../search/search-boxes.ts'
import type { Electrics, Weighed } from '../search-electrics.ts'
import { broken, readLimits } from '../search-limits.ts'
import { hindered, rejectionBy } from '../search-rejection.ts'
import { systemDefaults } from './defaults.ts'
import type { Question } from './question.ts'

export interface BuiltDesign {
  /** What a plan has to be told to build this very box. */
  readonly enclosure: PlanEnclosure
  readonly figures: DesignFigures
  readonly cautions: readonly Caution[]
}

function figuresOf(
  { figures }: Electrics,
  { candidate }: Attempt,
  { box, response }: AttemptResponse
): DesignFigures | undefined {
  if (!box.done || !response.done) return undefined
  const { outer, volume, massKg } = box.outcome.result
  const { scalars, curves, limits } = response.outcome.result
  const { f3Hz, tuningHz } = scalars
  const { coneExcursionM = 0, coneExcursionOfXmax = 0, portAirSpeedMPerS } = limits?.atDrive ?? {}
  const [playedDb] = curves.levelDb
  const [highestDb] = curves.maximumLevelDb ?? []
  if (f3Hz === undefined || playedDb === undefined) return undefined
  return {
    ...figures,
    netVolumeM3: volume.netM3,
    outerVolumeM3: outer.widthM * outer.heightM * outer.depthM,
    massKg,
    ...present({ tuningHz: candidate.kind === 'closed' ? undefined : tuningHz }),
    f3Hz,
    levelDb: Math.min(playedDb, highestDb ?? playedDb),
    coneExcursionM,
    excursionOfXmax: coneExcursionOfXmax,
    ...present({ airSpeedMPerS: portAirSpeedMPerS })
  }
}

function finished(
  electrics: Electrics,
  enclosure: PlanEnclosure,
  attempt: Attempt,
  levelHz: number
): Weighed<BuiltDesign> {
  const { resolved, power, joined, setting, load, supply, drivers } = electrics
  const told = { ...setting, brief: withEnclosure(setting.brief, enclosure) }
  const { box, response } = attemptResponse(told, attempt, [levelHz])
  const figures = figuresOf(electrics, attempt, { box, response })
  if (figures === undefined) return { rejection: hindered('response', unheard(response)) }
  const signal = planSignal(power, resolved, joined, response)
  if (!signal.done) return { rejection: hindered('signal', signal.refusal.message) }
  const { matching, wiring } = loadAtGain(resolved.run, load, joined)
  const parts = { matching, wiring, drivers, port: attempt.port, box, response, ...supply, signal }
  const cautions = planCautions(parts, undefined, closedHighPass(resolved.run, response, joined), [])
  const stop = cautions.find(({ level }) => level === 'stop')
  if (stop !== undefined) return { rejection: hindered('stop-caution', stop.message) }
  return { found: { enclosure, figures, cautions } }
}

const unheard = (response: ResponsePart) =>
  response.done ? 'The response never rises to half the power of its plateau.' : response.refusal.message

/** Boxes near a volume that was found good, no larger than the caller allows. */
function near(
  { room, radiators }: Pick<DesignProblem<PlacedBox>, 'room' | 'radiators'>,
  netVolumeM3: number,
  mostOuterM3: number
) {
  const small = (placed: PlacedBox | undefined) =>
    placed !== undefined && placed.outerM3 <= mostOuterM3 * systemDefaults.slack.value ? placed : undefined
  const ways = radiators?.map(way => ({ ...way, stands: (netM3: number) => small(way.stands(netM3)) }))
  const near: Room<PlacedBox> = {
    fromM3: Math.max(room.fromM3, netVolumeM3 / systemDefaults.neighbourhood.value),
    toM3: Math.min(room.toM3, netVolumeM3 * systemDefaults.neighbourhood.value),
    closed: netM3 => small(room.closed(netM3)),
    ported: (netM3, tuningHz, areaM2) => small(room.ported(netM3, tuningHz, areaM2))
  }
  return { room: near, ...present({ radiators: ways }) }
}

function designsNear(
  { setting }: Electrics,
  kind: SearchedKind,
  { goal: name, limits }: Question,
  roomM3: number,
  netVolumeM3: number
): readonly FoundDesign<PlacedBox>[] {
  const problem = { ...wishProblem(setting, roomM3), kind }
  const goalNamed = (each: typeof name) => goalFor(goals[each].value, problem.tables.qts)
  const loudest = () => searchBoxes({ ...problem, goal: goalNamed('loud') })[0]?.held.levelDb
  const goal = goalNamed(name)
  const referenceDb = goal.withinDb === undefined ? undefined : loudest()
  const stands = near(problem, netVolumeM3, limits.outerVolumeM3 ?? Infinity)
  return searchBoxes({ ...problem, ...stands, goal, ...present({ referenceDb }) })
}

/** `outerRatio`: what was laid out over what was foreseen. */
type Made = Weighed<BuiltDesign> & { readonly outerRatio?: number }

/** One design with each port in turn. */
function made(electrics: Electrics, question: Question, design: FoundDesign<PlacedBox>, roomM3: number): Made {
  let last: Made = { rejection: hindered('enclosure', 'No enclosure of this volume and tuning can be sized.') }
  let ports = 0
  for (const { enclosure, attempt } of wishedAttempts(electrics.setting, question.goal, () => [design], roomM3)) {
    if (ports++ >= systemDefaults.mostPorts.value) break
    if (attempt.complaint !== undefined) {
      if (ports === 1) last = { rejection: hindered('space', inEnglish(attempt.complaint)) }
      continue
    }
    const { found, rejection } = finished(electrics, enclosure, attempt, question.levelHz)
    if (found === undefined) return { rejection }
    const outerRatio = found.figures.outerVolumeM3 / design.place.outerM3
    const beyond = rejectionBy(broken(readLimits(question.limits, found.figures)))
    return beyond === undefined ? { found, outerRatio } : { rejection: beyond, outerRatio }
  }
  return last
}

/**
 * @param netVolumeM3  foreseen
 * @returns the best box for the goal that is built and keeps every limit, or why there is none
 */
export function builtDesign(
  electrics: Electrics,
  kind: SearchedKind,
  question: Question,
  netVolumeM3: number
): Weighed<BuiltDesign> {
  const roomM3 = roomForAir(electrics.setting.brief)
  if (roomM3 === undefined) return { rejection: hindered('space', 'The space does not hold the drivers.') }
  const designs = designsNear(electrics, kind, question, roomM3, netVolumeM3)
  const mostM3 = question.limits.outerVolumeM3 ?? Infinity
  const passed: FoundDesign<PlacedBox>[] = []
  // the first box is looked at as it is foreseen, the others as what was laid out before them corrects it
  let [ratio, isTooLarge]: [number, boolean] = [1 / systemDefaults.slack.value, false]
  let rejection = hindered('enclosure', 'No box near the one foreseen stands in the space.')
  while (passed.length < systemDefaults.mostDesigns.value) {
    const next = designs.find(
      design =>
        design.place.outerM3 * ratio <= mostM3 &&
        (isTooLarge ? !passed.includes(design) : passed.every(other => isAnother(design, other)))
    )
    if (next === undefined) break
    const tried = made(electrics, question, next, roomM3)
    if (tried.found !== undefined) return { found: tried.found }
    const { rejection: why, outerRatio = ratio } = tried
    if (passed.length === 0 || why.rule !== 'space') rejection = why
    isTooLarge = why.rule === 'box-size'
    ratio = outerRatio
    passed.push(next)
  }
  return { rejection }
}
