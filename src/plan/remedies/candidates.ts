/** Changes worth trying for a plan whose supply is short of something, each a patch on its request. */

import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { converterDefaults } from '../../domain/circuit/load/defaults.ts'
import { inDigits, toDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { type Candidate, cableCandidates, smallerSize } from './cable-candidates.ts'
import { remedyDefaults } from './defaults.ts'
import { type ElectricOutcome, wantsVoltage } from './electric-outcome.ts'

/** Of the kind of the first, so that a relay ties them. */
function secondBattery({ supply }: PlanRequest): readonly Candidate[] {
  if (supply.secondBattery !== undefined) return []
  const {
    chemistry = 'flooded',
    capacityAh = remedyDefaults.secondAh.value
  }: Partial<NonNullable<PlanRequest['supply']['battery']>> = {
    ...supply.battery
  }
  const second = { arrangement: 'isolated', capacityAh, chemistry } as const
  const kind = say(`part.chemistry.${chemistry}`)
  const what = say('answer.put-a-second-battery-beside-the', { capacity: inDigits(capacityAh), kind })
  return [{ id: 'second-battery', cost: 'battery', what, patch: { supply: { secondBattery: second } } }]
}

function alternator({ supply: { charging } }: PlanRequest): readonly Candidate[] {
  if (charging?.kind !== 'alternator') return []
  const { nextAlternator, alternatorStepA: step, mostAlternatorA } = remedyDefaults
  const nextA = step.value * Math.ceil((nextAlternator.value * charging.ratedA) / step.value)
  const ratedA = Math.min(mostAlternatorA.value, nextA)
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
  const ratedA = converterDefaults.ratingsA.value.find(each => each >= fullSineA)
  if (ratedA === undefined) return []
  return [
    { ...base, what: say('answer.take-a-converter-of-a', { ratedA }), patch: { supply: { converter: { ratedA } } } }
  ]
}

/** Where this version gives no load that the amplifier can drive, and where one that draws less would keep the voltage. */
function otherCoils({ driver: { coils } }: PlanRequest): readonly Candidate[] {
  return remedyDefaults.coilsOhm.value
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

/** More power from an amplifier whose sheet was not read for it: each channel of the pair then sees half the load. */
function bridging({ amplifier }: PlanRequest): readonly Candidate[] {
  const { channels, minimumBridgedOhm, minimumOhm, ratings } = amplifier
  const told = minimumBridgedOhm !== undefined || ratings.some(({ bridged }) => bridged === true)
  // of two channels that are known the match thinks of a bridge itself
  if (told || channels !== undefined) return []
  const pairOhm = 2 * minimumOhm
  const what = say('answer.bridge-two-channels', { pairOhm })
  const patch = { amplifier: { channels: 2, minimumBridgedOhm: pairOhm } }
  return [{ id: 'bridging', cost: 'reading', what, patch }]
}

function lowerGain({ powerW }: ElectricOutcome): readonly Candidate[] {
  if (powerW === undefined) return []
  const what = say('answer.set-the-gain-db-lower-than', { turnDownDb: remedyDefaults.turnDownDb.value })
  const patch = { signal: { gainPowerW: toDigits(10 ** (-remedyDefaults.turnDownDb.value / 10) * powerW, 3) } }
  return [{ id: 'lower-gain', cost: 'setting', what, patch }]
}

export function candidates(request: PlanRequest, now: ElectricOutcome): readonly Candidate[] {
  if (!now.joined) return otherCoils(request)
  const bridge = now.weak ? bridging(request) : []
  if (now.problems.size === 0) return [...bridge, ...smallerSize(now)]
  return [
    ...bridge,
    ...converter(request, now),
    ...(wantsVoltage(now) ? [...lowerGain(now), ...otherCoils(request)] : []),
    ...cableCandidates(request, now),
    ...secondBattery(request),
    ...alternator(request)
  ]
}
