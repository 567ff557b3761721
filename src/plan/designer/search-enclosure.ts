/** The costly half of a design: each alignment that suits is sized, ported, laid out, braced and heard as a plan would do it. */
import type { PlannedKind } from '../../contract/systems/words.ts'
import type { Caution } from '../../domain/caution.ts'
import { inLitres } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { sixDigitsThroughout } from '../../numeric/six-digits.ts'
import { planCautions } from '../answer/plan-cautions.ts'
import { planSignal } from '../electric/plan-signal.ts'
import { type AttemptResponse, attemptResponse } from '../enclosure/attempt-response.ts'
import { type Attempt, attemptsOf, type Setting } from '../enclosure/plan-attempts.ts'
import { roomForAir } from '../enclosure/plan-box.ts'
import { inPlanOrder, type PlannedCandidate, planSizing, type SizingPart } from '../enclosure/plan-candidates.ts'
import { closedHighPass } from '../enclosure/plan-high-pass.ts'
import type { ResponsePart } from '../enclosure/plan-response.ts'
import type { PlanEnclosure } from '../request/plan-request.ts'
import type { Electrics, Weighed } from './search-electrics.ts'
import type { DesignFigures } from './search-figures.ts'
import { hindered, type Rejection } from './search-rejection.ts'

export interface BuiltDesign {
  readonly alignment: string
  /** What a plan has to be told to build this very box. */
  readonly enclosure: PlanEnclosure
  readonly figures: DesignFigures
  readonly cautions: readonly Caution[]
}

/** Alignments of one kind that are built, in the order of the plan; a vented box takes several times as long to build. */
const MOST_ALIGNMENTS: Readonly<Record<PlannedKind, number>> = { closed: 3, vented: 2 }

/** What a plan takes as volume and tuning. */
const plannable = ({ netVolumeM3, tuningHz }: PlannedCandidate) =>
  netVolumeM3 >= 1e-3 && netVolumeM3 <= 1 && (tuningHz === undefined || (tuningHz >= 15 && tuningHz <= 100))

interface Suited {
  readonly sizing: SizingPart
  readonly candidates: readonly PlannedCandidate[]
}

function suited({ resolved, drivers, joined }: Electrics, kind: PlannedKind): Weighed<Suited> {
  const roomM3 = roomForAir(resolved)
  const sizing = planSizing({ ...resolved, enclosure: { ...resolved.enclosure, kind } }, drivers, joined, roomM3)
  if (!sizing.done) return { rejection: hindered('enclosure', sizing.refusal.message) }
  const found = inPlanOrder(sizing.outcome.result.candidates).filter(({ suits }) => suits)
  const fitting = found.filter(candidate => candidate.netVolumeM3 <= (roomM3 ?? Infinity) && plannable(candidate))
  if (fitting.length > 0) {
    return { found: { sizing, candidates: fitting.slice(0, MOST_ALIGNMENTS[kind]).map(sixDigitsThroughout) } }
  }
  const least = Math.min(...found.map(({ netVolumeM3 }) => netVolumeM3))
  return {
    rejection: Number.isFinite(least)
      ? hindered(
          'space',
          `The smallest ${kind} box that suits takes ${inLitres(least)}${roomM3 === undefined ? '' : `; ${inLitres(roomM3)} are there`}.`
        )
      : hindered('enclosure', whyUnsuited(sizing, kind))
  }
}

function whyUnsuited(sizing: SizingPart & { readonly done: true }, kind: PlannedKind): string {
  const { candidates, unsuited } = sizing.outcome.result
  const why = candidates[0]?.why[0] ?? unsuited[0]?.why
  return `No ${kind} box suits these drivers${why === undefined ? '.' : `: ${why}.`}`
}

function pinned({ candidate, wish }: Attempt): PlanEnclosure {
  const { kind, netVolumeM3, tuningHz } = candidate
  return {
    kind,
    netVolumeM3,
    ...present({ tuningHz }),
    ...(wish === undefined
      ? {}
      : { portShape: wish.form === 'round' ? 'round' : 'slot', airSpeedMPerS: wish.airSpeedMPerS })
  }
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
    ...(tuningHz === undefined || candidate.kind === 'closed' ? {} : { tuningHz }),
    f3Hz,
    levelDb: Math.min(playedDb, highestDb ?? playedDb),
    coneExcursionM,
    excursionOfXmax: coneExcursionOfXmax,
    ...present({ airSpeedMPerS: portAirSpeedMPerS })
  }
}

function finished(electrics: Electrics, made: Attempt, levelHz: number): Weighed<BuiltDesign> {
  const { resolved, joined, load, supply, drivers } = electrics
  const enclosure = pinned(made)
  const request = { ...resolved, enclosure }
  const { box, response } = attemptResponse({ request, drivers, joined }, made, [levelHz])
  const figures = figuresOf(electrics, made, { box, response })
  if (figures === undefined) return { rejection: hindered('response', unheard(response)) }
  const signal = planSignal(request, joined, response)
  if (!signal.done) return { rejection: hindered('signal', signal.refusal.message) }
  const { matching, wiring } = load
  const parts = { matching, wiring, drivers, port: made.port, box, response, ...supply, signal }
  const cautions = planCautions(parts, undefined, closedHighPass(response, joined), [])
  const stop = cautions.find(({ level }) => level === 'stop')
  if (stop !== undefined) return { rejection: hindered('stop-caution', stop.message) }
  return { found: { alignment: made.candidate.name, enclosure, figures, cautions } }
}

const unheard = (response: ResponsePart) =>
  response.done ? 'The response never rises to half the power of its plateau.' : response.refusal.message

/** The quietest port with which the candidate can be built; a plan takes the same. */
function firstThatFits(setting: Setting, candidate: PlannedCandidate, sizing: SizingPart): Weighed<Attempt> {
  let complaint = 'There is nothing to build.'
  for (const made of attemptsOf(setting, candidate, sizing)) {
    if (made.complaint === undefined) return { found: made }
    complaint = made.complaint
  }
  return { rejection: hindered('space', `${candidate.name}, ${inLitres(candidate.netVolumeM3)}: ${complaint}`) }
}

/** @returns one entry an alignment that suits, or the one reason why there is none */
export function builtDesigns(
  electrics: Electrics,
  kind: PlannedKind,
  levelHz: number
): readonly Weighed<BuiltDesign>[] {
  const { found, rejection } = suited(electrics, kind)
  if (found === undefined) return [{ rejection: rejection as Rejection }]
  const { resolved, drivers, joined } = electrics
  const setting = { request: resolved, drivers, joined }
  return found.candidates.map(candidate => {
    const made = firstThatFits(setting, candidate, found.sizing)
    return made.found === undefined ? made : finished(electrics, made.found, levelHz)
  })
}
