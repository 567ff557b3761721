/** Other cables, and other ways back, for a plan whose supply is short of something: each a patch on its request. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { RemedyPatch } from '../../contract/systems/remedies.ts'
import type { RemedyCost, RemedyId } from '../../contract/systems/words.ts'
import { inDecimals, toDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { remedyDefaults } from './defaults.ts'
import type { ElectricOutcome } from './electric-outcome.ts'

export interface Candidate {
  readonly id: RemedyId
  readonly cost: RemedyCost
  readonly what: Said
  readonly patch: RemedyPatch
}

/** What is printed costs a look where nobody said it; else another cable. */
function insulation({ supply: { insulationC } }: PlanRequest): readonly Candidate[] {
  const base = { id: 'other-insulation' as const }
  if (insulationC === undefined) {
    const what = say('answer.take-a-cable-that-prints-c', { usualClassC: remedyDefaults.usualClassC.value })
    return [{ ...base, cost: 'reading', what, patch: { supply: { insulationC: remedyDefaults.usualClassC.value } } }]
  }
  if (insulationC >= remedyDefaults.hotClassC.value) return []
  if (insulationC < remedyDefaults.usualClassC.value) {
    const what = say('answer.take-a-cable-that-prints-c', { usualClassC: remedyDefaults.usualClassC.value })
    return [{ ...base, cost: 'cable', what, patch: { supply: { insulationC: remedyDefaults.usualClassC.value } } }]
  }
  const what = say('answer.take-a-cross-linked-cable', { classC: remedyDefaults.hotClassC.value })
  const patch = { supply: { insulationC: remedyDefaults.hotClassC.value, insulationMaterial: 'xlpe' } } as const
  return [{ ...base, cost: 'cable', what, patch }]
}

function body({ supply: { return: path } }: PlanRequest): readonly Candidate[] {
  if (path.kind !== 'chassis' || path.resistanceOhm !== undefined) return []
  const what = say('answer.measure-the-body-from-ground-point', { value: 1000 * remedyDefaults.goodBodyOhm.value })
  const patch = { supply: { return: { kind: 'chassis', resistanceOhm: remedyDefaults.goodBodyOhm.value } } } as const
  return [{ id: 'measure-body', cost: 'reading', what, patch }]
}

function returnCable({ supply: { return: path, positiveLengthM } }: PlanRequest): readonly Candidate[] {
  if (path.kind !== 'chassis') return []
  const cable = { kind: 'cable', lengthM: positiveLengthM } as const
  const back = { ...cable, leadLengthM: null, body: null, resistanceOhm: null }
  const what = say('answer.run-a-return-cable-of-m', { positiveLength: inDecimals(positiveLengthM) })
  return [{ id: 'return-cable', cost: 'cable', what, patch: { supply: { return: back } } }]
}

/** A limit just below what the chosen size takes asks for the next one. */
function nextSize({ lossPercent }: ElectricOutcome): readonly Candidate[] {
  if (lossPercent === undefined || lossPercent <= remedyDefaults.leastLossPercent.value) return []
  const patch = { supply: { dropLimitPercent: toDigits(remedyDefaults.underLoss.value * lossPercent) } }
  return [{ id: 'next-size', cost: 'cable', what: say('answer.take-the-next-size-of-cable'), patch }]
}

/** The size that only just misses the limit of the drop, with the limit that lets it pass. */
export function smallerSize({ nearMiss }: ElectricOutcome): readonly Candidate[] {
  if (nearMiss === undefined) return []
  const { designation, missPercent, limitPercent } = nearMiss
  const allowedPercent = toDigits(remedyDefaults.overLimit.value * limitPercent, 4)
  const what = say('answer.allow-a-little-more-drop', {
    designation,
    missPercent: toDigits(missPercent),
    allowedPercent: toDigits(allowedPercent, 3)
  })
  return [{ id: 'smaller-size', cost: 'setting', what, patch: { supply: { dropLimitPercent: allowedPercent } } }]
}

/** One more beside those there are, each behind its own fuse. */
function parallelRuns({ runs, sectionM2 = 0 }: ElectricOutcome): readonly Candidate[] {
  if (runs === undefined || runs >= remedyDefaults.mostRuns.value || sectionM2 < remedyDefaults.stiffM2.value) return []
  const what = say('answer.lay-runs-side-by-side', { runs: runs + 1 })
  return [{ id: 'parallel-runs', cost: 'cable', what, patch: { supply: { runs: runs + 1 } } }]
}

function copper({ supply: { conductor } }: PlanRequest): readonly Candidate[] {
  if (conductor === undefined || conductor === 'copper') return []
  const what = say('answer.take-full-copper-in-place-of')
  return [{ id: 'full-copper', cost: 'cable', what, patch: { supply: { conductor: 'copper' } } }]
}

export const cableCandidates = (request: PlanRequest, now: ElectricOutcome): readonly Candidate[] => [
  ...body(request),
  ...insulation(request),
  ...smallerSize(now),
  ...nextSize(now),
  ...parallelRuns(now),
  ...copper(request),
  ...returnCable(request)
]
