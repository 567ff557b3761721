import type { Said } from '../../contract/sentences/form/template.ts'
import { inLitres, toDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { airIn } from '../enclosure/parts/plan-box.ts'
import type { PlanParts } from './plan-parts.ts'

/** The two chambers of a band-pass, and what it gives up. */
export function chamberLines({ box, response }: PlanParts): readonly Said[] {
  const { netVolumeM3, frontVolumeM3 = undefined } = box.done ? airIn(box) : {}
  if (netVolumeM3 === undefined || frontVolumeM3 === undefined || !response.done) return []
  const { frontTuningHz = 0, f3Hz, f3UpperHz } = response.outcome.result.scalars
  const air = { rear: inLitres(netVolumeM3), front: inLitres(frontVolumeM3), tuningHz: toDigits(frontTuningHz, 3) }
  const chambers = say('answer.chambers', air)
  if (f3Hz === undefined || f3UpperHz === undefined) return [chambers]
  return [chambers, say('answer.band-pass-gives-up', { fromHz: toDigits(f3Hz, 2), toHz: toDigits(f3UpperHz, 2) })]
}
