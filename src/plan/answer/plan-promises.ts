/** What was asked of the enclosure and is not built, with the amount. */

import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import type { PlanSignal } from '../../contract/systems/plan-request.ts'
import type { DesignGoal } from '../../contract/systems/words.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { toDigits } from '../../domain/digits.ts'
import { tuningIn } from '../../domain/enclosure/response/tuning-in.ts'
import { say } from '../../domain/say.ts'
import { airIn, type BoxPart } from '../enclosure/parts/plan-box.ts'
import type { PlannedBox } from '../enclosure/parts/plan-candidates.ts'
import type { ResponsePart } from '../enclosure/parts/plan-response.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { answerDefaults } from './defaults.ts'

/** Differences that the step of a saw makes. */
const same = {
  volume: answerDefaults.sameVolumeShare,
  tuning: answerDefaults.sameTuningShare,
  qtc: answerDefaults.sameQtcShare
} as const

/** Whether a figure is built as it was asked, if it was. */
export const isKept = (what: keyof typeof same, asked: number | undefined, built: number): boolean =>
  asked === undefined || Math.abs(built / asked - 1) <= same[what].value

interface Built {
  readonly chosen: PlannedBox | undefined
  readonly box: BoxPart
  readonly response: ResponsePart
  readonly goalMissed?: DesignGoal
}

interface Wish {
  readonly figure: string
  readonly asked?: number | undefined
  readonly built?: number | undefined
  readonly of: keyof typeof same
}

function broken({ figure, asked, built, of }: Wish): readonly Caution[] {
  if (asked === undefined || built === undefined || isKept(of, asked, built)) return []
  const figured = (value: number) => say(`figure.${of}`, { value: toDigits(value) })
  const figures = { [`asked${figure}`]: asked, [`built${figure}`]: built }
  return [
    caution(
      'not-as-asked',
      say('not-as-asked', { what: say(`what.${of}`), asked: figured(asked), built: figured(built) }),
      { figures }
    )
  ]
}

function unportedCaution({ tuningHz, portShape }: PlanEnclosure): readonly Caution[] {
  if (tuningHz === undefined && portShape === undefined) return []
  const asked =
    tuningHz === undefined
      ? say('not-as-asked.port', { portShape: portShape === undefined ? [] : say(`port-shape.${portShape}`) })
      : say('not-as-asked.tuning', { tuningHz: toDigits(tuningHz) })
  const figures = tuningHz === undefined ? {} : { askedTuningHz: tuningHz }
  return [caution('not-as-asked', say('not-as-asked.closed', { asked }), { figures })]
}

function unclosedCaution({ qtc }: PlanEnclosure): readonly Caution[] {
  if (qtc === undefined) return []
  const message = say('not-as-asked.vented', { askedQ: toDigits(qtc) })
  return [caution('not-as-asked', message, { figures: { askedQtc: qtc } })]
}

/** A wish that nobody uttered is not broken. */
function wishCaution({ goal: asked }: PlanEnclosure, goal: DesignGoal | undefined): readonly Caution[] {
  if (goal === undefined || asked === undefined) return []
  const message = say('not-as-asked.wish', { goal })
  return [caution('not-as-asked', message)]
}

/** A gain wanted for more than the parts bear is set for what they bear. */
export function gainAbove({ gainPowerW }: PlanSignal, joined: JoinedDrivers | undefined): readonly Caution[] {
  if (gainPowerW === undefined || joined === undefined || gainPowerW <= joined.usablePowerW) return []
  const { usablePowerW } = joined
  const message = say('not-as-asked.gain', { askedW: toDigits(gainPowerW), setW: toDigits(usablePowerW) })
  return [caution('not-as-asked', message, { figures: { askedPowerW: gainPowerW, setPowerW: usablePowerW } })]
}

/** @returns a caution for each figure or kind that was asked for and is not built */
export function notAsAsked(
  asked: PlanEnclosure = {},
  { chosen, box, response, goalMissed }: Built
): readonly Caution[] {
  if (chosen === undefined || !box.done) return []
  const { netVolumeM3 } = airIn(box)
  const { qtc } = response.done ? response.outcome.result.scalars : {}
  const tuningHz = response.done ? tuningIn(response.outcome.result.scalars) : undefined
  const litres = (volumeM3: number | undefined) => (volumeM3 === undefined ? undefined : volumeM3 * 1000)
  const volume = broken({
    figure: 'NetVolumeL',
    asked: litres(asked.netVolumeM3),
    built: litres(netVolumeM3),
    of: 'volume' as const
  })
  if (chosen.kind === 'closed') {
    const damping = { figure: 'Qtc', asked: asked.qtc, built: qtc, of: 'qtc' as const }
    return [...wishCaution(asked, goalMissed), ...unportedCaution(asked), ...volume, ...broken(damping)]
  }
  const tuned = { figure: 'TuningHz', asked: asked.tuningHz, built: tuningHz }
  return [
    ...wishCaution(asked, goalMissed),
    ...unclosedCaution(asked),
    ...volume,
    ...broken({ ...tuned, of: 'tuning' })
  ]
}
