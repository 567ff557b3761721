/** From candidates to one box that fits: the first that clears everything is braced and heard. */

import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { DesignGoal } from '../../contract/systems/words.ts'
import { inLitres, toDigits } from '../../domain/digits.ts'
import type { EnclosureCandidate } from '../../domain/enclosure/sizing/sizing.ts'
import { present } from '../../domain/present.ts'
import { saidOf, say, worded } from '../../domain/say.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { refusedBy, waitingFor } from '../request/part.ts'
import type { Wished } from './alternatives.ts'
import { attemptResponse } from './attempt-response.ts'
import { wishDesigner } from './goal-designs.ts'
import { type BoxPart, roomForAir } from './parts/plan-box.ts'
import { planSizing, type SizingPart } from './parts/plan-candidates.ts'
import type { DriverPart } from './parts/plan-drivers.ts'
import type { PortPart } from './parts/plan-port.ts'
import type { ResponsePart } from './parts/plan-response.ts'
import type { Setting } from './parts/setting.ts'
import { type Attempt, attempts, shown } from './plan-attempts.ts'
import { boxMiss, portMiss } from './plan-miss.ts'
import type { SheetSaving } from './sheet-saving.ts'
import { wishedAttempts } from './wished-attempts.ts'

export interface Tried {
  readonly name: string
  readonly netVolumeM3: number
  readonly tuningHz?: number
  readonly why: string
}

interface PlannedEnclosure {
  readonly sizing: SizingPart
  /** Absent for a closed box. */
  readonly port?: PortPart
  readonly box: BoxPart
  readonly response: ResponsePart
  /** Where other sizes than those first chosen need a sheet less. */
  readonly saving?: SheetSaving
  readonly chosen?: EnclosureCandidate
  /** Whether there is a box to build. */
  readonly fits: boolean
  /** Where no candidate could be built: what the nearest one lacks; port, box and response then show that one. */
  readonly misfit?: Said
  /** Candidates that were passed over. */
  readonly tried: readonly Tried[]
  /** The wish that no box could be built for; what is shown is a textbook's. */
  readonly goalMissed?: DesignGoal
  /** Where the box was searched for a wish. */
  readonly wished?: Wished
  /** The drivers at the gain that the box is planned for, where it was searched for. */
  readonly driven?: JoinedDrivers
}

const triedRow = ({ candidate, complaint }: Attempt): Tried => ({
  ...worded({
    name: say('sentences', { all: saidOf(candidate, 'name') }),
    why: complaint ?? say('answer.fits')
  }),
  netVolumeM3: candidate.netVolumeM3,
  ...present({ tuningHz: candidate.tuningHz })
})

/** The first candidate that fits; where none does, the nearest one, with its refusals in their places. */
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
  const roomM3 = roomForAir(request)
  const passed: Attempt[] = []
  const { goal } = request.enclosure ?? {}
  if (goal !== undefined && roomM3 !== undefined) {
    const wished = forWish(setting, goal, roomM3, passed)
    if (wished !== undefined) return wished
  }
  const sizing = planSizing(request, drivers, joined, roomM3)
  if (!sizing.done) return { ...missing('an enclosure'), sizing }
  for (const attempted of attempts(setting, sizing)) {
    if (attempted.complaint === undefined) {
      return { ...finished(setting, sizing, attempted, passed), ...present({ goalMissed: goal }), fits: true }
    }
    passed.push(attempted)
  }
  if (passed.length === 0) return { ...missing('an enclosure'), sizing, box: unsuitable(sizing) }
  return unfitting(setting, sizing, passed)
}

/** The first box of those searched for the wish that can be built. */
function forWish(setting: Setting, goal: DesignGoal, roomM3: number, passed: Attempt[]): PlannedEnclosure | undefined {
  const { request, drivers, joined } = setting
  const designs = wishDesigner(request, drivers, joined, roomM3)
  for (const { setting: told, sizing, attempt } of wishedAttempts(setting, goal, designs, roomM3)) {
    if (attempt.complaint !== undefined) {
      passed.push(attempt)
      continue
    }
    const wished = { setting, goal, designs, roomM3 }
    return { ...finished(told, sizing, attempt, passed), fits: true, wished, driven: told.joined }
  }
  return undefined
}

/** Where not one candidate came of the sizing: why. */
function unsuitable(sizing: SizingPart & { readonly done: true }): BoxPart {
  const why = sizing.outcome.result.unsuited.map(each => each.why)
  return refusedBy(
    'no-solution',
    'enclosure',
    `No enclosure asked for suits the drivers: ${[...new Set(why)].join('; ')}.`
  )
}

/** Attempts whose boxes are laid out to find the nearest miss, where their ports already do not fit. */
const MOST_SHOWN = 4

const byMiss = (a: Attempt, b: Attempt) => a.missShare - b.missShare

/** The nearest miss; its port is shown only where the port is what does not fit. */
function unfitting(setting: Setting, sizing: SizingPart, passed: readonly Attempt[]): PlannedEnclosure {
  const likely = passed.toSorted(byMiss).slice(0, MOST_SHOWN)
  const [nearest] = likely.map(each => shown(setting, each)).toSorted(byMiss)
  if (nearest === undefined) throw new Error('No enclosure was tried.')
  const { candidate, port, box } = nearest
  const rest = passed.filter(each => each.candidate !== candidate)
  return {
    sizing,
    ...(port !== undefined && portMiss(port) > boxMiss(box) ? { port } : {}),
    box,
    response: waitingFor('a box that fits'),
    chosen: candidate,
    fits: false,
    misfit: misfitText(nearest),
    tried: triedRows(rest)
  }
}

const triedRows = (passed: readonly Attempt[]): readonly Tried[] => [
  ...new Map(passed.map(row => [`${row.candidate.name} ${row.candidate.netVolumeM3}`, triedRow(row)])).values()
]

function misfitText({ candidate, complaint = say('answer.fits') }: Attempt): Said {
  const { netVolumeM3, tuningHz } = candidate
  const tuned = tuningHz === undefined ? '' : say('answer.tuned-at', { tuningHz: toDigits(tuningHz) })
  return say('answer.misfit', {
    name: saidOf(candidate, 'name'),
    volume: inLitres(netVolumeM3),
    tuned,
    complaint
  })
}

function finished(
  setting: Setting,
  sizing: SizingPart,
  chosen: Attempt,
  passed: readonly Attempt[]
): Omit<PlannedEnclosure, 'fits'> {
  const port = chosen.port === undefined ? {} : { port: chosen.port }
  return { sizing, ...port, ...attemptResponse(setting, chosen), chosen: chosen.candidate, tried: triedRows(passed) }
}
