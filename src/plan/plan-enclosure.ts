/** From candidates to one box that fits: the first that clears everything is braced and heard. */
import type { EnclosureCandidate } from '../domain/enclosure/sizing.ts'
import { waitingFor } from './part.ts'
import { type BoxPart, bracedBox, clears, roomForAir } from './plan-box.ts'
import { planSizing, type SizingPart } from './plan-candidates.ts'
import type { DriverPart } from './plan-drivers.ts'
import type { JoinedDrivers } from './plan-load.ts'
import type { PortPart } from './plan-port.ts'
import type { PlanRequest } from './plan-request.ts'
import { planResponse, type ResponsePart } from './plan-response.ts'
import { enclosureOf, type Setting, type Try, tries } from './plan-tries.ts'

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
    if (attempted.complaint === undefined) return { ...finished(setting, sizing, attempted, passed), fits: true }
    passed.push(attempted)
  }
  const [first, ...others] = passed
  if (first === undefined) return { ...missing('an enclosure that suits the driver'), sizing }
  return { ...finished(setting, sizing, first, others), fits: false }
}

/** Braces take air, so a braced box is heard again; a box that braces would crowd stays as it was, with its caution. */
function heard({ request, drivers, joined }: Setting, { candidate, port, box, leakQ }: Try) {
  const hear = (part: BoxPart) => planResponse(request, drivers, joined, enclosureOf(candidate, part, port, leakQ))
  const response = hear(box)
  if (!box.done || !response.done) return { box, response }
  const braced = bracedBox(request, box, response.outcome.result)
  const isAsked = request.board.bracing !== undefined && braced.done
  return isAsked || clears(braced) ? { box: braced, response: hear(braced) } : { box, response }
}

function finished(
  setting: Setting,
  sizing: SizingPart,
  chosen: Try,
  passed: readonly Try[]
): Omit<PlannedEnclosure, 'fits'> {
  const rows = new Map(passed.map(row => [`${row.candidate.name} ${row.candidate.netVolumeM3}`, triedRow(row)]))
  const port = chosen.port === undefined ? {} : { port: chosen.port }
  return { sizing, ...port, ...heard(setting, chosen), chosen: chosen.candidate, tried: [...rows.values()] }
}
