/** Changes worth trying for a plan whose supply is short of something, each a patch on its request. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { RemedyPatch } from '../../contract/systems/remedies.ts'
import type { RemedyCost, RemedyId } from '../../contract/systems/words.ts'
import { converterJudgement } from '../../domain/circuit/load/converter-judgement.ts'
import { inDecimals, inDigits, toDigits } from '../../domain/digits.ts'
import type { ElectricOutcome } from './electric-outcome.ts'

export interface Candidate {
  readonly id: RemedyId
  readonly cost: RemedyCost
  readonly what: string
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
  const what = `Take a cable that prints ${USUAL_CLASS_C} °C on its insulation, or read that on the one you have`
  return [{ id: 'other-insulation', cost: 'reading', what, patch: { supply: { insulationC: USUAL_CLASS_C } } }]
}

function body({ supply: { return: path } }: PlanRequest): readonly Candidate[] {
  if (path.kind !== 'chassis' || path.resistanceOhm !== undefined) return []
  const what = `Measure the body from ground point to negative post; if it is ${1000 * GOOD_BODY_OHM} mΩ`
  const patch = { supply: { return: { kind: 'chassis', resistanceOhm: GOOD_BODY_OHM } } } as const
  return [{ id: 'measure-body', cost: 'reading', what, patch }]
}

function returnCable({ supply: { return: path, positiveLengthM } }: PlanRequest): readonly Candidate[] {
  if (path.kind !== 'chassis') return []
  const cable = { kind: 'cable', lengthM: positiveLengthM } as const
  const back = { ...cable, leadLengthM: null, body: null, resistanceOhm: null }
  const what = `Run a return cable of ${inDecimals(positiveLengthM)} m, to the body side of a battery sensor where there is one`
  return [{ id: 'return-cable', cost: 'cable', what, patch: { supply: { return: back } } }]
}

/** A limit just below what the chosen size takes asks for the next one. */
function nextSize({ lossPercent }: ElectricOutcome): readonly Candidate[] {
  if (lossPercent === undefined || lossPercent <= 0.2) return []
  const patch = { supply: { dropLimitPercent: toDigits(0.99 * lossPercent) } }
  return [{ id: 'next-size', cost: 'cable', what: 'Take the next size of cable', patch }]
}

function copper({ supply: { conductor } }: PlanRequest): readonly Candidate[] {
  if (conductor === undefined || conductor === 'copper') return []
  const what = 'Take full copper in place of this metal'
  return [{ id: 'full-copper', cost: 'cable', what, patch: { supply: { conductor: 'copper' } } }]
}

/** Of the kind of the first, so that a relay ties them. */
function secondBattery({ supply }: PlanRequest): readonly Candidate[] {
  if (supply.secondBattery !== undefined) return []
  const { chemistry = 'flooded', capacityAh = SECOND_AH }: Partial<NonNullable<PlanRequest['supply']['battery']>> = {
    ...supply.battery
  }
  const second = { arrangement: 'isolated', capacityAh, chemistry } as const
  const what = `Put a second battery beside the amplifiers, ${inDigits(capacityAh)} A·h, ${chemistry}, behind a relay and its own fuse`
  return [{ id: 'second-battery', cost: 'battery', what, patch: { supply: { secondBattery: second } } }]
}

function alternator({ supply: { charging } }: PlanRequest): readonly Candidate[] {
  if (charging?.kind !== 'alternator') return []
  const ratedA = Math.min(1000, 10 * Math.ceil((NEXT_ALTERNATOR * charging.ratedA) / 10))
  const what = `Fit an alternator of ${ratedA} A in place of ${inDigits(charging.ratedA)} A, with its cables`
  return [{ id: 'stronger-alternator', cost: 'alternator', what, patch: { supply: { charging: { ratedA } } } }]
}

/** Between a vehicle and amplifiers made for less; one that is too small gives way to the next above the full sine. */
function converter({ supply }: PlanRequest, { problems, fullSineA = Infinity }: ElectricOutcome): readonly Candidate[] {
  const { secondBattery, converter: given, systemVoltageV } = supply
  if (secondBattery !== undefined) return []
  const base = { id: 'converter', cost: 'converter' } as const
  if (given === undefined) {
    const what = `Put a converter from ${inDigits(systemVoltageV)} to 12 V beside the amplifiers, with a fuse on both sides`
    return problems.has('amplifier-voltage-class') ? [{ ...base, what, patch: { supply: { converter: {} } } }] : []
  }
  if (!problems.has('converter-too-small') || given.ratedA === undefined) return []
  const ratedA = converterJudgement.ratingsA.find(each => each >= fullSineA)
  if (ratedA === undefined) return []
  return [{ ...base, what: `Take a converter of ${ratedA} A`, patch: { supply: { converter: { ratedA } } } }]
}

/** Only where this version gives no load that the amplifier can drive. */
function otherCoils({ driver: { coils } }: PlanRequest, { joined }: ElectricOutcome): readonly Candidate[] {
  if (joined) return []
  return coilsOhm
    .filter(ratedOhm => ratedOhm !== coils.ratedOhm)
    .map(ratedOhm => ({
      id: 'other-coils' as const,
      cost: 'driver' as const,
      what: `Take the version of the driver with ${coils.count === 1 ? 'a coil' : `${coils.count} coils`} of ${ratedOhm} Ω, and enter its own sheet`,
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
