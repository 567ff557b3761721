/** Candidates made concrete one after the other: sized, ported and laid out, each with what is wrong with it. */
import type { EnclosureCandidate } from '../domain/enclosure/sizing.ts'
import { waitingFor } from './part.ts'
import { type BoxPart, clears, planBox } from './plan-box.ts'
import { inPlanOrder, type PlannedCandidate, type SizingPart } from './plan-candidates.ts'
import type { DriverPart } from './plan-drivers.ts'
import type { JoinedDrivers } from './plan-load.ts'
import {
  AIR_SPEEDS_TRIED,
  acousticPort,
  boxPort,
  type PortForm,
  type PortPart,
  planPort,
  portFormsTried
} from './plan-port.ts'
import type { PlanRequest } from './plan-request.ts'
import { type BuiltEnclosure, planResponse, protectiveCornerHz } from './plan-response.ts'

export interface PortWish {
  readonly airSpeedMPerS: number
  readonly form: PortForm
}

interface Built {
  /** Absent for a closed box. */
  readonly port?: PortPart
  readonly box: BoxPart
}

export interface Setting {
  readonly request: PlanRequest
  readonly drivers: DriverPart & { readonly done: true }
  readonly joined: JoinedDrivers
  /** Of the curves, where nobody reads a chart. */
  readonly frequenciesHz?: readonly number[]
  /** Whether the box is left out where the port already does not fit. */
  readonly hasty?: boolean
}

/** Losses the sizing counted with, so that the response is of the same box. */
function leakQOf({ alignment, kind }: EnclosureCandidate, sizing: SizingPart): number | undefined {
  if (kind !== 'vented' || alignment === undefined || !sizing.done) return undefined
  const assumed = sizing.outcome.assumed.find(({ field }) => field === 'losses.leakQ')
  return typeof assumed?.value === 'number' ? assumed.value : undefined
}

export function enclosureOf(
  candidate: PlannedCandidate,
  box: BoxPart,
  port: PortPart | undefined,
  leakQ: number | undefined
): BuiltEnclosure {
  const wanted = candidate.builtVolumeM3 ?? candidate.netVolumeM3
  return {
    kind: candidate.kind,
    netVolumeM3: box.done ? box.outcome.result.volume.netM3 : wanted,
    ...(port?.done ? acousticPort(port.outcome.result.recommended) : {}),
    ...(leakQ === undefined ? {} : { leakQ })
  }
}

/** Sized twice: the high-pass that the first response asks for takes flow away below the tuning. */
function sizedPort(
  { request, drivers, joined, frequenciesHz }: Setting,
  candidate: PlannedCandidate,
  wish: PortWish,
  leakQ: number | undefined
): PortPart {
  const { netVolumeM3, tuningHz } = candidate
  if (tuningHz === undefined) return waitingFor('a tuning')
  const question = { netVolumeM3, tuningHz, ...wish, ...(leakQ === undefined ? {} : { leakQ }) }
  const first = planPort(request, drivers, joined, question)
  if (!first.done) return first
  const enclosure = enclosureOf(candidate, waitingFor('a port'), first, leakQ)
  const bare = planResponse(request, drivers, joined, enclosure, frequenciesHz)
  const highPassHz = bare.done ? protectiveCornerHz(bare.outcome.result, bare.request) : undefined
  return highPassHz === undefined ? first : planPort(request, drivers, joined, { ...question, highPassHz })
}

function built(setting: Setting, candidate: PlannedCandidate, port: PortPart | undefined): Built {
  if (port === undefined) {
    return { box: planBox(setting.request, candidate.builtVolumeM3 ?? candidate.netVolumeM3, undefined) }
  }
  if (!port.done) return { port, box: waitingFor('a port') }
  if (setting.hasty && !port.outcome.result.fits) return { port, box: waitingFor('a port that fits') }
  return { port, box: planBox(setting.request, candidate.netVolumeM3, boxPort(port.outcome.result.recommended)) }
}

function complaint({ port, box }: Built): string | undefined {
  if (port !== undefined && !port.done) return port.refusal.message
  if (port?.done && !port.outcome.result.fits) return port.outcome.result.recommended.why.join('; ')
  if (!box.done) return box.refusal.message
  if (clears(box)) return undefined
  const tight = box.outcome.result.clearances.filter(({ passes }) => !passes)
  return `Too tight: ${tight.map(({ between }) => between).join(', ')}.`
}

export interface Try extends Built {
  readonly candidate: PlannedCandidate
  readonly leakQ: number | undefined
  readonly complaint: string | undefined
  /** What its port was sized for. */
  readonly wish?: PortWish
}

/** Quiet before loud, tubes before slots; a closed box has nothing to vary. */
function portsTried({ enclosure = {} }: PlanRequest): readonly PortWish[] {
  const speeds = enclosure.airSpeedMPerS === undefined ? AIR_SPEEDS_TRIED : [enclosure.airSpeedMPerS]
  const forms = portFormsTried.filter(form => form.endsWith(enclosure.portShape ?? ''))
  return speeds.flatMap(airSpeedMPerS => forms.map(form => ({ airSpeedMPerS, form })))
}

function tried(
  setting: Setting,
  candidate: PlannedCandidate,
  port: PortPart | undefined,
  leakQ: number | undefined
): Try {
  const made = built(setting, candidate, port)
  return { candidate, leakQ, ...made, complaint: complaint(made) }
}

/** One candidate with each port in turn. */
export function* triesOf(setting: Setting, candidate: PlannedCandidate, sizing: SizingPart): Generator<Try> {
  const leakQ = leakQOf(candidate, sizing)
  if (candidate.kind === 'closed') yield tried(setting, candidate, undefined, leakQ)
  else
    for (const wish of portsTried(setting.request)) {
      yield { ...tried(setting, candidate, sizedPort(setting, candidate, wish, leakQ), leakQ), wish }
    }
}

export function* tries(setting: Setting, sizing: SizingPart & { readonly done: true }): Generator<Try> {
  for (const candidate of inPlanOrder(sizing.outcome.result.candidates)) yield* triesOf(setting, candidate, sizing)
}
