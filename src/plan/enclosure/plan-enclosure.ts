/** From candidates to one box that fits: the first that clears everything is braced and heard. */

import type { DesignGoal } from '../../contract/systems/words.ts'
import { present } from '../../domain/present.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { BoxBrief } from '../request/box-brief.ts'
import { planDefaults } from '../request/defaults.ts'
import { refusedBy, waitingFor } from '../request/part.ts'
import { attemptResponse } from './attempt-response.ts'
import { wishDesigner } from './goal-designs.ts'
import { leafletEnclosure } from './leaflet-enclosure.ts'
import { type BoxPart, roomForAir } from './parts/plan-box.ts'
import { planSizing, type SizingPart } from './parts/plan-candidates.ts'
import type { DriverPart } from './parts/plan-drivers.ts'
import { type Setting, settingOf } from './parts/setting.ts'
import { type Attempt, askedAttempts, attempts } from './plan-attempts.ts'
import { type PlannedEnclosure, triedRows, unfitting } from './planned-enclosure.ts'
import { wishedAttempts } from './wished-attempts.ts'

/** The first candidate that fits; where none does, the nearest one, with its refusals in their places. */
export function planEnclosure(
  brief: BoxBrief,
  drivers: DriverPart,
  joined: JoinedDrivers | undefined
): PlannedEnclosure {
  const missing = (what: string) => {
    const part = waitingFor(what)
    return { sizing: part, box: part, response: part, fits: false, tried: [] }
  }
  if (brief.leaflet !== undefined) return leafletEnclosure(brief, brief.leaflet)
  if (!drivers.done) return missing('the complete data of the driver')
  if (joined === undefined) return missing('a load that the amplifier can drive')
  const setting = settingOf(brief, drivers, joined)
  const roomM3 = roomForAir(brief)
  const passed: Attempt[] = []
  const told = toldBox(setting, roomM3, passed)
  if (told !== undefined) return told
  const { goal, netVolumeM3 } = brief.enclosure
  const sizing = planSizing(setting, roomM3)
  if (!sizing.done) return { ...missing('an enclosure'), sizing }
  for (const attempted of attempts(setting, sizing)) {
    if (attempted.complaint === undefined) {
      const strayed = goal !== undefined || netVolumeM3 !== undefined
      return { ...finished(setting, sizing, attempted, passed), ...present({ goalMissed: goal }), strayed, fits: true }
    }
    passed.push(attempted)
  }
  if (passed.length === 0) return { ...missing('an enclosure'), sizing, box: unsuitable(sizing) }
  return unfitting(setting, sizing, passed)
}

/** The box as the caller tells it, by a wish or by its volume; none where that cannot be built. */
export function toldBox(
  setting: Setting,
  roomM3: number | undefined,
  passed: Attempt[] = []
): PlannedEnclosure | undefined {
  const { goal, netVolumeM3 } = setting.brief.enclosure
  if (roomM3 === undefined) return undefined
  if (goal !== undefined) return forWish(setting, goal, roomM3, passed)
  return netVolumeM3 === undefined ? undefined : ofVolume(setting, roomM3, passed)
}

/** The volume as asked, at full power; where no port bears that, with the gain, filter and port of a search in which it is fixed. */
function ofVolume(setting: Setting, roomM3: number, passed: Attempt[]): PlannedEnclosure | undefined {
  const sizing = planSizing(setting, roomM3)
  if (!sizing.done) return undefined
  for (const attempt of askedAttempts(setting, sizing)) {
    if (attempt.complaint === undefined) return { ...finished(setting, sizing, attempt, passed), fits: true }
    passed.push(attempt)
  }
  const searched = forWish(setting, planDefaults.goal.value, roomM3, passed)
  if (searched === undefined) return undefined
  const { wished: _, ...alone } = searched
  return alone
}

/** The first box of those searched for the wish that can be built. */
function forWish(setting: Setting, goal: DesignGoal, roomM3: number, passed: Attempt[]): PlannedEnclosure | undefined {
  const designs = wishDesigner(setting, roomM3)
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

function finished(
  setting: Setting,
  sizing: SizingPart,
  chosen: Attempt,
  passed: readonly Attempt[]
): Omit<PlannedEnclosure, 'fits'> {
  const port = chosen.port === undefined ? {} : { port: chosen.port }
  return { sizing, ...port, ...attemptResponse(setting, chosen), chosen: chosen.candidate, tried: triedRows(passed) }
}
