/** Candidates made concrete one after the other: sized, ported and laid out, each with what is wrong with it. */

import type { EnclosureCandidate } from '../../contract/enclosures/enclosure-sizing.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { toMm } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { allSaidOf, listed, saidOf, say } from '../../domain/say.ts'
import type { BoxBrief } from '../request/box-brief.ts'
import { refusalSaid, refusedBy, waitingFor } from '../request/part.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import { airIn, type BoxWish, clears, type JudgedBoxPart, type TriedBoxPart } from './parts/plan-box.ts'
import { inPlanOrder, type PlannedBox, type PlannedCandidate, type SizingPart } from './parts/plan-candidates.ts'
import { acousticPort, boxPort, type PortPart, type PortWish, planPort, portsTried } from './parts/plan-port.ts'
import { type RadiatorPlace, radiatorComplaint, radiatorPlaces, weightedRadiators } from './parts/plan-radiators.ts'
import { type BuiltEnclosure, protectionFor } from './parts/plan-response.ts'
import type { Setting } from './parts/setting.ts'
import { laidOut, regrown } from './plan-layout.ts'
import { boxMiss, missOf, portMiss } from './plan-miss.ts'

interface Built {
  /** Absent for a closed box. */
  readonly port?: PortPart
  readonly box: TriedBoxPart
}

/** Losses the sizing counted with, so that the response is of the same box. */
function leakQOf({ alignment, kind }: EnclosureCandidate, sizing: SizingPart): number | undefined {
  if (kind === 'closed' || alignment === undefined || !sizing.done) return undefined
  if (kind === 'band-pass-4') return sizing.request.losses?.leakQ
  const assumed = sizing.outcome.assumed.find(({ field }) => field === 'losses.leakQ')
  return typeof assumed?.value === 'number' ? assumed.value : undefined
}

/** Radiators are weighted for the air that there is. */
export function enclosureOf(
  brief: BoxBrief,
  { candidate, port, leakQ, radiators }: Omit<Sized, 'wish'>,
  box: JudgedBoxPart
): BuiltEnclosure {
  const wanted = candidate.builtVolumeM3 ?? candidate.netVolumeM3
  const built = box.done ? airIn(box) : undefined
  const { netVolumeM3, frontVolumeM3 } = built ?? { ...candidate, netVolumeM3: wanted }
  return {
    kind: candidate.kind,
    netVolumeM3,
    ...present({ frontVolumeM3 }),
    ...(port?.done ? acousticPort(port.outcome.result.recommended) : {}),
    ...present({ leakQ, radiators: radiators && weighted(brief, candidate, radiators, netVolumeM3) })
  }
}

const weighted = (brief: BoxBrief, { tuningHz }: PlannedBox, place: RadiatorPlace, netVolumeM3: number) =>
  tuningHz === undefined ? undefined : weightedRadiators(brief, place, netVolumeM3, tuningHz)

/** Sized twice: the high-pass that the first response asks for takes flow away below the tuning. */
function sizedPort(setting: Setting, candidate: PlannedCandidate, wish: PortWish, leakQ: number | undefined): PortPart {
  const { netVolumeM3, frontVolumeM3, tuningHz } = candidate
  if (tuningHz === undefined) return waitingFor('a tuning')
  const air = frontVolumeM3 === undefined ? { netVolumeM3 } : { netVolumeM3: frontVolumeM3, rearVolumeM3: netVolumeM3 }
  const question = { ...air, tuningHz, ...wish, ...present({ leakQ }) }
  const first = planPort(setting, question)
  if (!first.done) return first
  const highPassHz = protectionFor(
    setting,
    enclosureOf(setting.brief, { candidate, port: first, leakQ }, waitingFor('a port'))
  )
  return highPassHz === undefined ? first : planPort(setting, { ...question, highPassHz })
}

/** What the box of an attempt is laid out for; none without the port it needs. */
function boxWish(brief: BoxBrief, { candidate, port, wish, radiators }: Sized): Omit<BoxWish, 'strategy'> | undefined {
  if (candidate.kind === 'closed' || candidate.kind === 'passive-radiator') {
    const netVolumeM3 = candidate.builtVolumeM3 ?? candidate.netVolumeM3
    return { netVolumeM3, port: undefined, ...present({ radiators }) }
  }
  if (!port?.done || wish === undefined) return undefined
  const { netVolumeM3, frontVolumeM3 } = candidate
  return {
    netVolumeM3,
    ...present({ frontVolumeM3 }),
    port: boxPort(brief, port.outcome.result.recommended, wish.form)
  }
}

function complaint({ port, box }: Built): Said | undefined {
  if (port !== undefined && !port.done) return refusalSaid(port.refusal)
  const unportable = port?.done && !port.outcome.result.fits ? port.outcome.result.recommended : undefined
  if (unportable !== undefined && portMiss(port) >= boxMiss(box)) {
    return say('answer.port-why', { reasons: listed(allSaidOf(unportable, 'why'), 'list.clauses') })
  }
  if (!box.done) return refusalSaid(box.refusal)
  if (clears(box)) return undefined
  const tight = box.outcome.result.clearances.filter(({ passes }) => !passes)
  const rows = tight.map(row =>
    say('answer.tight', {
      between: saidOf(row, 'between'),
      availableMm: toMm(row.availableM, 1),
      neededMm: toMm(row.neededM, 1)
    })
  )
  return say('answer.too-tight', { rows: listed(rows) })
}

export interface Sized {
  readonly candidate: PlannedBox
  readonly leakQ: number | undefined
  /** Absent for a closed box, as what it was sized for. */
  readonly port?: PortPart
  readonly wish?: PortWish
  /** Only of a box that has some. */
  readonly radiators?: RadiatorPlace
}

export interface Attempt extends Sized, Built {
  readonly complaint: Said | undefined
  /** By how much it does not fit. */
  readonly missShare: number
}

const attemptOf = (sized: Sized, box: TriedBoxPart): Attempt => {
  const { port } = sized
  const made = port === undefined ? { box } : { port, box }
  return { ...sized, box, complaint: complaint(made), missShare: missOf(made) }
}

/** A box is laid out only round a port that fits, and radiators that can be had. */
export function withBox({ brief }: Pick<Setting, 'brief'>, sized: Sized): Attempt {
  const { port } = sized
  if (port !== undefined && !(port.done && port.outcome.result.fits)) {
    return attemptOf(sized, waitingFor('a port that fits'))
  }
  const { candidate, radiators } = sized
  const { netVolumeM3, tuningHz } = candidate
  const carried = radiators && weighted(brief, candidate, radiators, netVolumeM3)
  const unfit = carried && tuningHz ? radiatorComplaint(carried, tuningHz) : undefined
  if (unfit !== undefined) {
    const box = refusedBy('no-solution', 'passiveRadiators', unfit)
    return { ...sized, box, complaint: unfit, missShare: enclosurePlanDefaults.unmeasured.value }
  }
  const wish = boxWish(brief, sized)
  return attemptOf(sized, wish === undefined ? waitingFor('a port') : laidOut(brief, wish))
}

/** The same attempt with its box laid out whatever its port, for showing what it lacks. */
export function shown({ brief }: Pick<Setting, 'brief'>, attempt: Attempt): Attempt {
  const wish = attempt.box.done || !attempt.box.refusal.waiting ? undefined : boxWish(brief, attempt)
  return wish === undefined ? attempt : attemptOf(attempt, laidOut(brief, wish))
}

/** Of boxes that are only tight the least tight one, in other proportions. */
export function regrownAttempt({ brief }: Pick<Setting, 'brief'>, tight: readonly Attempt[]): readonly Attempt[] {
  const [attempt] = tight.filter(({ box }) => box.done).toSorted((a, b) => a.missShare - b.missShare)
  const wish = attempt === undefined ? undefined : boxWish(brief, attempt)
  const box = wish === undefined ? undefined : regrown(brief, wish)
  return attempt === undefined || box === undefined ? [] : [attemptOf(attempt, box)]
}

function* sizedAttempts(setting: Setting, candidate: PlannedCandidate, sizing: SizingPart): Generator<Sized> {
  const leakQ = leakQOf(candidate, sizing)
  if (candidate.kind === 'closed') yield { candidate, leakQ }
  else if (candidate.kind === 'passive-radiator') {
    for (const radiators of radiatorPlaces(setting.brief)) yield { candidate, leakQ, radiators }
  } else
    for (const wish of portsTried(setting.brief)) {
      yield { candidate, leakQ, wish, port: sizedPort(setting, candidate, wish, leakQ) }
    }
}

/** One candidate with each port in turn, then the one that is least tight in other proportions: each costs some thirty boxes. */
export function* attemptsOf(setting: Setting, candidate: PlannedCandidate, sizing: SizingPart): Generator<Attempt> {
  const tight: Attempt[] = []
  for (const sized of sizedAttempts(setting, candidate, sizing)) {
    const made = withBox(setting, sized)
    tight.push(made)
    yield made
  }
  yield* regrownAttempt(setting, tight)
}

type SizedBoxes = SizingPart & { readonly done: true }

const isAsked = ({ alignment }: EnclosureCandidate) => alignment === 'as-asked'

/** What volume, or volume and tuning, ask for by themselves. */
export function* askedAttempts(setting: Setting, sizing: SizedBoxes): Generator<Attempt> {
  for (const candidate of inPlanOrder(sizing.outcome.result.candidates.filter(isAsked))) {
    yield* attemptsOf(setting, candidate, sizing)
  }
}

/** The textbook's alignments; of a volume that was asked for not that volume again. */
export function* attempts(setting: Setting, sizing: SizedBoxes): Generator<Attempt> {
  const isTried = setting.brief.enclosure.netVolumeM3 !== undefined
  for (const candidate of inPlanOrder(sizing.outcome.result.candidates)) {
    if (!(isTried && isAsked(candidate))) yield* attemptsOf(setting, candidate, sizing)
  }
}
