/** From candidates to one box that fits: each is sized, ported and laid out in turn until one clears everything. */
import type { EnclosureCandidate } from '../domain/enclosure/sizing.ts'
import { waitingFor } from './part.ts'
import { type BoxPart, clears, planBox, roomForAir } from './plan-box.ts'
import { inPlanOrder, type PlannedCandidate, planSizing, type SizingPart } from './plan-candidates.ts'
import type { DriverPart } from './plan-drivers.ts'
import type { JoinedDrivers } from './plan-load.ts'
import {
  AIR_SPEEDS_TRIED,
  acousticPort,
  boxPort,
  type PortPart,
  type PortShape,
  planPort,
  portShapesTried
} from './plan-port.ts'
import type { PlanRequest } from './plan-request.ts'
import { type BuiltEnclosure, planResponse, protectiveCornerHz, type ResponsePart } from './plan-response.ts'

export interface Tried {
  readonly name: string
  readonly netVolumeM3: number
  readonly tuningHz?: number
  readonly why: string
}

export interface PlannedEnclosure {
  readonly sizing: SizingPart
  /** Absent for a closed box. */
  readonly port?: PortPart
  readonly box: BoxPart
  readonly response: ResponsePart
  readonly chosen?: EnclosureCandidate
  /** False where no candidate could be built; port, box and response then show the first that was tried. */
  readonly fits: boolean
  /** Candidates that were passed over. */
  readonly tried: readonly Tried[]
}

type Built = Pick<PlannedEnclosure, 'port' | 'box' | 'response'>
interface Setting {
  readonly request: PlanRequest
  readonly drivers: DriverPart & { readonly done: true }
  readonly joined: JoinedDrivers
}

/** Losses the sizing counted with, so that the response is of the same box. */
function leakQOf({ alignment, kind }: EnclosureCandidate, sizing: SizingPart): number | undefined {
  if (kind !== 'vented' || alignment === undefined || !sizing.done) return undefined
  const assumed = sizing.outcome.assumed.find(({ field }) => field === 'losses.leakQ')
  return typeof assumed?.value === 'number' ? assumed.value : undefined
}

function enclosureOf(
  candidate: PlannedCandidate,
  box: BoxPart,
  port: PortPart | undefined,
  leakQ: number | undefined
): BuiltEnclosure {
  const wanted = candidate.builtVolumeM3 ?? candidate.netVolumeM3
  return {
    kind: candidate.kind,
    netVolumeM3: box.done ? box.outcome.result.volume.netM3 : wanted,
    ...(port?.done ? { port: acousticPort(port.outcome.result.recommended) } : {}),
    ...(leakQ === undefined ? {} : { leakQ })
  }
}

function builtClosed({ request, drivers, joined }: Setting, candidate: PlannedCandidate): Built {
  const box = planBox(request, candidate.builtVolumeM3 ?? candidate.netVolumeM3, undefined)
  return { box, response: planResponse(request, drivers, joined, enclosureOf(candidate, box, undefined, undefined)) }
}

/** Sized twice: the high-pass that the first response asks for takes flow away below the tuning. */
function builtVented(
  setting: Setting,
  candidate: PlannedCandidate,
  port: { readonly airSpeedMPerS: number; readonly shape: PortShape },
  leakQ: number | undefined
): Built {
  const { request, drivers, joined } = setting
  const { netVolumeM3, tuningHz } = candidate
  if (tuningHz === undefined) return { box: waitingFor('a tuning'), response: waitingFor('a tuning') }
  const question = { netVolumeM3, tuningHz, ...port, ...(leakQ === undefined ? {} : { leakQ }) }
  const first = planPort(request, drivers, joined, question)
  if (!first.done) return { port: first, box: waitingFor('a port'), response: waitingFor('a port') }
  const bare = planResponse(request, drivers, joined, enclosureOf(candidate, waitingFor('a port'), first, leakQ))
  const highPassHz = bare.done ? protectiveCornerHz(bare.outcome.result, bare.request) : undefined
  const sized = highPassHz === undefined ? first : planPort(request, drivers, joined, { ...question, highPassHz })
  if (!sized.done) return { port: sized, box: waitingFor('a port'), response: bare }
  const box = planBox(request, netVolumeM3, boxPort(sized.outcome.result.recommended))
  const built = enclosureOf(candidate, box, sized, leakQ)
  return { port: sized, box, response: planResponse(request, drivers, joined, built) }
}

function complaint({ port, box }: Built): string | undefined {
  if (port !== undefined && !port.done) return port.refusal.message
  if (port?.done && !port.outcome.result.fits) return port.outcome.result.recommended.why.join('; ')
  if (!box.done) return box.refusal.message
  if (clears(box)) return undefined
  const tight = box.outcome.result.clearances.filter(({ passes }) => !passes)
  return `Too tight: ${tight.map(({ between }) => between).join(', ')}.`
}

interface Try extends Built {
  readonly candidate: PlannedCandidate
  readonly complaint: string | undefined
}

/** Quiet before loud, tubes before slots; a closed box has nothing to vary. */
function portsTried({ enclosure = {} }: PlanRequest) {
  const speeds = enclosure.airSpeedMPerS === undefined ? AIR_SPEEDS_TRIED : [enclosure.airSpeedMPerS]
  const shapes = enclosure.portShape === undefined ? portShapesTried : [enclosure.portShape]
  return speeds.flatMap(airSpeedMPerS => shapes.map(shape => ({ airSpeedMPerS, shape })))
}

function* tries(setting: Setting, sizing: SizingPart & { readonly done: true }): Generator<Try> {
  for (const candidate of inPlanOrder(sizing.outcome.result.candidates)) {
    if (candidate.kind === 'closed') {
      const built = builtClosed(setting, candidate)
      yield { candidate, ...built, complaint: complaint(built) }
      continue
    }
    const leakQ = leakQOf(candidate, sizing)
    for (const port of portsTried(setting.request)) {
      const built = builtVented(setting, candidate, port, leakQ)
      yield { candidate, ...built, complaint: complaint(built) }
    }
  }
}

const triedRow = ({ candidate, complaint }: Try): Tried => ({
  name: candidate.name,
  netVolumeM3: candidate.netVolumeM3,
  ...(candidate.tuningHz === undefined ? {} : { tuningHz: candidate.tuningHz }),
  why: complaint ?? 'fits'
})

/** The first candidate that fits; where none does, the first one tried, with its refusals in their places. */
export function planEnclosure(
  request: PlanRequest,
  drivers: DriverPart,
  joined: JoinedDrivers | undefined
): PlannedEnclosure {
  const missing = (what: string) => {
    const part = waitingFor(what)
    return { sizing: part, box: part, response: part, fits: false, tried: [] }
  }
  if (!drivers.done) return missing('the complete data of the driver')
  if (joined === undefined) return missing('a load that the amplifier can drive')
  const setting = { request, drivers, joined }
  const sizing = planSizing(request, drivers, joined, roomForAir(request))
  if (!sizing.done) return { ...missing('an enclosure'), sizing }
  const passed: Try[] = []
  for (const attempted of tries(setting, sizing)) {
    if (attempted.complaint === undefined) return { ...finished(sizing, attempted, passed), fits: true }
    passed.push(attempted)
  }
  const [first, ...others] = passed
  if (first === undefined) return { ...missing('an enclosure that suits the driver'), sizing }
  return { ...finished(sizing, first, others), fits: false }
}

function finished(
  sizing: SizingPart,
  { candidate, complaint: _, ...built }: Try,
  passed: readonly Try[]
): Omit<PlannedEnclosure, 'fits'> {
  const rows = new Map(passed.map(row => [`${row.candidate.name} ${row.candidate.netVolumeM3}`, triedRow(row)]))
  return { sizing, ...built, chosen: candidate, tried: [...rows.values()] }
}
