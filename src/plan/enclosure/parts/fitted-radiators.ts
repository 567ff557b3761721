/** The passive radiators of the box that is planned, as they are bought, weighted and set in. */
import { isFlatFace, type RadiatorFace, radiatorFaces } from '../../../contract/systems/words.ts'
import { toDigits } from '../../../domain/digits.ts'
import { radiatorSagM, travelLeftM } from '../../../domain/enclosure/alignment/radiator-sheet.ts'
import { radiatorResonanceHz } from '../../../domain/enclosure/model/tuned-radiators.ts'
import { present } from '../../../domain/present.ts'
import type { ResolvedPlan } from '../../request/resolved-plan.ts'
import type { BoxPart } from './plan-box.ts'
import type { ResponsePart } from './plan-response.ts'

export interface FittedRadiators {
  readonly name?: string
  readonly count: number
  readonly face: RadiatorFace
  /** To be added to each. */
  readonly addedKg: number
  /** With what is added. */
  readonly massKg: number
  /** Of one, so loaded, in free air. */
  readonly resonanceHz: number
  /** One way, less what it hangs through. */
  readonly travelM: number
  /** How far a cone that lies flat hangs through by its own weight; absent where it stands upright. */
  readonly sagM?: number
}

/** @returns none where the box has no radiators */
export function fittedRadiators(
  { passiveRadiators }: Pick<ResolvedPlan, 'passiveRadiators'>,
  box: BoxPart,
  response: ResponsePart
): FittedRadiators | undefined {
  const units = response.done ? radiatorsIn(response.request) : undefined
  const set = box.done ? (box.request.drivers ?? []).filter(({ kind }) => kind === 'passive-radiator') : []
  const [one] = set
  if (passiveRadiators === undefined || units === undefined || one === undefined) return undefined
  const { name, sheet } = passiveRadiators
  const { massKg, complianceMPerN, count = 1 } = units
  const face = set.length > 1 ? 'sides' : shellFace(one)
  const isFlat = isFlatFace(face)
  return {
    ...present({ name, sagM: isFlat ? radiatorSagM({ complianceMPerN }, massKg) : undefined }),
    count,
    face,
    massKg,
    addedKg: toDigits(massKg - sheet.massKg),
    travelM: travelLeftM({ complianceMPerN, travelM: sheet.xmaxM }, massKg, isFlat),
    resonanceHz: radiatorResonanceHz({ massKg, complianceMPerN })
  }
}

function radiatorsIn({ enclosure }: (ResponsePart & { readonly done: true })['request']) {
  return enclosure.kind === 'passive-radiator' ? enclosure.rear?.passiveRadiators : undefined
}

function shellFace({ face = 'front' }: { readonly face?: string | undefined }): RadiatorFace {
  return radiatorFaces.find(each => each === face) ?? 'front'
}
