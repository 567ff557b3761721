/** Passive radiators set into the box of a plan: where they stand, what they carry for a tuning. */
import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import type { PassiveRadiatorRequest } from '../../../contract/enclosures/enclosure.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import { isFlatFace, type RadiatorFace } from '../../../contract/systems/words.ts'
import { airOf } from '../../../domain/air/air.ts'
import { assumptions } from '../../../domain/assume.ts'
import { toDigits } from '../../../domain/digits.ts'
import { radiatorTuning } from '../../../domain/enclosure/alignment/passive-radiator.ts'
import { loadedRadiator, travelLeftM } from '../../../domain/enclosure/alignment/radiator-sheet.ts'
import { present } from '../../../domain/present.ts'
import { say } from '../../../domain/say.ts'
import type { BoxBrief, RadiatorsAtHand } from '../../request/box-brief.ts'

export interface RadiatorPlace {
  readonly count: number
  readonly face: RadiatorFace
}

/** One beside the drivers or on a side; two against each other, so that the box stays still, or beside the drivers. Ours. */
const usualPlaces: readonly RadiatorPlace[] = [
  { count: 1, face: 'front' },
  { count: 1, face: 'right' },
  { count: 2, face: 'sides' },
  { count: 2, face: 'front' }
]

/** Places worth a look, in turn; where the caller names count and face just that one. */
export function radiatorPlaces({ enclosure, radiators }: BoxBrief): readonly RadiatorPlace[] {
  const { radiatorCount, radiatorFace } = enclosure
  if (radiators === undefined) return []
  if (radiatorCount !== undefined && radiatorFace !== undefined) return [{ count: radiatorCount, face: radiatorFace }]
  if (radiatorFace !== undefined) {
    return (radiatorFace === 'sides' ? [2] : [1, 2]).map(count => ({ count, face: radiatorFace }))
  }
  if (radiatorCount === undefined) return usualPlaces
  const faces: readonly RadiatorFace[] = radiatorCount % 2 === 0 ? ['sides', 'front', 'right'] : ['front', 'right']
  return faces.map(face => ({ count: radiatorCount, face }))
}

/** As parts of the box. */
export function boxRadiators({ radiators }: BoxBrief, place: RadiatorPlace): readonly BoxDriver[] {
  if (radiators === undefined) return []
  const { name, unit, mounting } = radiators
  const on = (face: Exclude<RadiatorFace, 'sides'>, count: number): BoxDriver => ({
    kind: 'passive-radiator',
    ...mounting,
    count,
    face,
    sdM2: unit.areaM2,
    xmaxM: unit.travelM,
    ...present({ label: name })
  })
  const { face, count } = place
  return face === 'sides' ? [on('left', count / 2), on('right', count / 2)] : [on(face, count)]
}

export interface WeightedRadiators extends RadiatorPlace {
  readonly of: RadiatorsAtHand
  /** To be added to each; below 0 where even bare ones are too heavy. */
  readonly addedKg: number
}

/** A kitchen scale reads to the gram. */
const toGram = (massKg: number) => Math.round(massKg * 1e3) / 1e3

/** With what tunes them to the air there is. */
export function weightedRadiators(
  { radiators, air }: BoxBrief,
  place: RadiatorPlace,
  netVolumeM3: number,
  tuningHz: number
): WeightedRadiators | undefined {
  if (radiators === undefined) return undefined
  const { areaM2, massKg, complianceMPerN } = radiators.unit
  const { stiffnessPa } = airOf(air, assumptions())
  const size = { count: place.count, areaM2 }
  const tuned = radiatorTuning(tuningHz, netVolumeM3, size, complianceMPerN, stiffnessPa)
  return { ...place, of: radiators, addedKg: toGram(tuned.massKg - massKg) }
}

/** Why these cannot be had; nothing where they can. */
export function radiatorComplaint({ addedKg, of: { unit } }: WeightedRadiators, tuningHz: number): Said | undefined {
  const { mostAddedKg, massKg } = unit
  if (addedKg < 0) {
    return say('answer.radiators-too-heavy', { tuningHz: toDigits(tuningHz, 3), massG: toDigits(massKg * 1e3, 3) })
  }
  if (addedKg <= mostAddedKg) return undefined
  return say('answer.radiators-carry-too-much', {
    tuningHz: toDigits(tuningHz, 3),
    addedG: toDigits(addedKg * 1e3, 3),
    mostG: toDigits(mostAddedKg * 1e3, 3)
  })
}

export const acousticRadiators = ({ of, addedKg, count }: WeightedRadiators): PassiveRadiatorRequest => ({
  count,
  ...loadedRadiator(of.unit, Math.max(0, addedKg))
})

/** One way, of cones that lie flat what their own weight leaves. */
export const radiatorTravelM = ({ of: { unit }, addedKg, face }: WeightedRadiators): number =>
  travelLeftM(unit, unit.massKg + Math.max(0, addedKg), isFlatFace(face))
