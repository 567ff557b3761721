/** What the enclosure of a plan comes to: a box that fits, or the nearest miss with what it lacks. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { DesignGoal } from '../../contract/systems/words.ts'
import { inLitres, toDigits } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { saidOf, say, worded } from '../../domain/say.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { waitingFor } from '../request/part.ts'
import type { Wished } from './alternatives.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import { type BoxPart, wholeBox } from './parts/plan-box.ts'
import type { PlannedBox, SizingPart } from './parts/plan-candidates.ts'
import type { PortPart } from './parts/plan-port.ts'
import type { ResponsePart } from './parts/plan-response.ts'
import type { Setting } from './parts/setting.ts'
import { type Attempt, shown } from './plan-attempts.ts'
import { boxMiss, portMiss } from './plan-miss.ts'
import type { SheetSaving } from './sheet-saving.ts'

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
  /** Where other sizes than those first chosen need a sheet less. */
  readonly saving?: SheetSaving
  readonly chosen?: PlannedBox
  /** Whether there is a box to build. */
  readonly fits: boolean
  /** Where no candidate could be built: what the nearest one lacks; port, box and response then show that one. */
  readonly misfit?: Said
  /** Candidates that were passed over. */
  readonly tried: readonly Tried[]
  /** The wish that no box could be built for; what is shown is a textbook's. */
  readonly goalMissed?: DesignGoal
  /** Whether a textbook's box stands for one that was told by wish or volume and could not be built. */
  readonly strayed?: boolean
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

const byMiss = (a: Attempt, b: Attempt) => a.missShare - b.missShare

/** The nearest miss; its port is shown only where the port is what does not fit. */
export function unfitting(
  setting: Pick<Setting, 'brief'>,
  sizing: SizingPart,
  passed: readonly Attempt[]
): PlannedEnclosure {
  const likely = passed.toSorted(byMiss).slice(0, enclosurePlanDefaults.mostShown.value)
  const [nearest] = likely.map(each => shown(setting, each)).toSorted(byMiss)
  if (nearest === undefined) throw new Error('No enclosure was tried.')
  const { candidate, port, box } = nearest
  const rest = passed.filter(each => each.candidate !== candidate)
  return {
    sizing,
    ...(port !== undefined && portMiss(port) > boxMiss(box) ? { port } : {}),
    box: wholeBox(setting.brief, box),
    response: waitingFor('a box that fits'),
    chosen: candidate,
    fits: false,
    misfit: misfitText(nearest),
    tried: triedRows(rest)
  }
}

/** Each box once, with what was against it last. */
export const triedRows = (passed: readonly Attempt[]): readonly Tried[] => [
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
