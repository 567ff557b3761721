/** Changes worth trying for a plan whose supply is short of something, each a patch on its request. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { RemedyPatch } from '../../contract/systems/remedies.ts'
import type { RemedyCost, RemedyId } from '../../contract/systems/words.ts'
import { converterJudgement } from '../../domain/circuit/load/converter-judgement.ts'
import { inDecimals, inDigits, toDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { ElectricOutcome } from './electric-outcome.ts'

export interface Candidate {
  readonly id: RemedyId
  readonly cost: RemedyCost
  readonly what: Said
  readonly patch: RemedyPatch
}

/** A welded steel body between ground point and post, measured well [Ω]. Common practice, no source. */
const GOOD_BODY_OHM = 0.0006
/** The class that power cable for cars is mostly printed with [°C]. Common practice, no source. */
const USUAL_CLASS_C = 105
/** What a second battery holds where the first says nothing [A·h]. */
const SECOND_AH = 70
const NEXT_ALTERNATOR = 1.4
/** Rated impedances that coils are sold with [Ω]. Common practice, no source. */
const coilsOhm = [1, 2, 4] as const

function insulation({ supply }: PlanRequest): readonly Candidate[] {
  if (supply.insulationC !== undefined && supply.insulationC >= USUAL_CLASS_C) return []
  const what = say('answer.take-a-cable-that-prints-c', { usualClassC: USUAL_CLASS_C })
  return [{ id: 'other-insulation', cost: 'reading', what, patch: { supply: { insulationC: USUAL_CLASS_C } } }]
}

function body({ supply: { return: path } }: PlanRequest): readonly Candidate[] {
  if (path.kind !== 'chassis' || path.resistanceOhm !== undefined) return []
  const what = say('answer.measure-the-body-from-ground-point', { value: 1000 * GOOD_BODY_OHM })
  const patch = { supply: { return: { kind: 'chassis', resistanceOhm: GOOD_BODY_OHM } } } as const
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
  if (lossPercent === undefined || lossPercent <= 0.2) return []
  const patch = { supply: { dropLimitPercent: toDigits(0.99 * lossPercent) } }
  return [{ id: 'next-size', cost: 'cable', what: say('answer.take-the-next-size-of-cable'), patch }]
}

function copper({ supply: { conductor } }: PlanRequest): readonly Candidate[] {
  if (conductor === undefined || conductor === 'copper') return []
  const what = say('answer.take-full-copper-in-place-of')
  return [{ id: 'full-copper', cost: 'cable', what, patch: { supply: { conductor: 'copper' } } }]
}

/** Of the kind of the first, so that a relay ties them. */
function secondBattery({ supply }: PlanRequest): readonly Candidate[] {
  if (supply.secondBattery !== undefined) return []
  const { chemistry = 'flooded', capacityAh = SECOND_AH }: Partial<NonNullable<PlanRequest['supply']['battery']>> = {
    ...supply.battery
  }
  const second = { arrangement: 'isolated', capacityAh, chemistry } as const
  const kind = say(`part.chemistry.${chemistry}`)
  const what = say('answer.put-a-second-battery-beside-the', { capacity: inDigits(capacityAh), kind })
  return [{ id: 'second-battery', cost: 'battery', what, patch: { supply: { secondBattery: second } } }]
}

function alternator({ supply: { charging } }: PlanRequest): readonly Candidate[] {
  if (charging?.kind !== 'alternator') return []
  const ratedA = Math.min(1000, 10 * Math.ceil((NEXT_ALTERNATOR * charging.ratedA) / 10))
  const what = say('answer.fit-an-alternator-of-a-in', { ratedA, rated: inDigits(charging.ratedA) })
  return [{ id: 'stronger-alternator', cost: 'alternator', what, patch: { supply: { charging: { ratedA } } } }]
}

/** Between a vehicle and amplifiers made for less; one that is too small gives way to the next above the full sine. */
function converter({ supply }: PlanRequest, { problems, fullSineA = Infinity }: ElectricOutcome): readonly Candidate[] {
  const { secondBattery, converter: given, systemVoltageV } = supply
  if (secondBattery !== undefined) return []
  const base = { id: 'converter', cost: 'converter' } as const
  if (given === undefined) {
    const what = say('answer.put-a-converter-from-to-12', { systemVoltage: inDigits(systemVoltageV) })
    return problems.has('amplifier-voltage-class') ? [{ ...base, what, patch: { supply: { converter: {} } } }] : []
  }
  if (!problems.has('converter-too-small') || given.ratedA === undefined) return []
  const ratedA = converterJudgement.ratingsA.find(each => each >= fullSineA)
  if (ratedA === undefined) return []
  return [
    { ...base, what: say('answer.take-a-converter-of-a', { ratedA }), patch: { supply: { converter: { ratedA } } } }
  ]
}

/** Only where this version gives no load that the amplifier can drive. */
function otherCoils({ driver: { coils } }: PlanRequest, { joined }: ElectricOutcome): readonly Candidate[] {
  if (joined) return []
  return coilsOhm
    .filter(ratedOhm => ratedOhm !== coils.ratedOhm)
    .map(ratedOhm => ({
      id: 'other-coils' as const,
      cost: 'driver' as const,
      what: say('answer.take-the-version-of-the-driver', {
        more: coils.count === 1 ? say('answer.a-coil') : say('answer.coils', { count: coils.count }),
        ratedOhm
      }),
      patch: { driver: { coils: { ratedOhm } } }
    }))
}

export function candidates(request: PlanRequest, now: ElectricOutcome): readonly Candidate[] {
  const coils = otherCoils(request, now)
  if (coils.length > 0) return coils
  return [
    ...converter(request, now),
    ...body(request),
    ...insulation(request),
    ...nextSize(now),
    ...copper(request),
    ...returnCable(request),
    ...secondBattery(request),
    ...alternator(request)
  ]
}
