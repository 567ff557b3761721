/** What the limits cost, in a sentence or two. */

import type { LimitName } from '../../contract/enclosures/words.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanHeadroom } from '../../contract/systems/plan-margins.ts'
import type { DriveWay } from '../../contract/systems/words.ts'
import { inDigits, inLitres } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { variationDefaults } from '../designer/variations/defaults.ts'
import { enclosurePlanDefaults } from './defaults.ts'

const reaches: Readonly<Record<LimitName, Said>> = {
  'cone-excursion': say('answer.the-cone-reaches-xmax'),
  'passive-radiator-excursion': say('answer.the-passive-radiator-reaches-its-travel'),
  'coil-heat': say('answer.the-coils-reach-the-heat-they'),
  'rated-voltage': say('answer.the-drivers-reach-the-power-they'),
  'amplifier-voltage': say('answer.the-amplifier-gives-all-it-has'),
  'amplifier-current': say('answer.the-amplifier-gives-all-the-current'),
  'port-air-speed': say('answer.the-air-in-the-port-is-2')
}

type Way = PlanHeadroom['ways'][number]

const watts = (powerW: number) => `${inDigits(powerW, 2)} W`

function cost({ againstPlanDb }: Way): Said {
  const decibels = inDigits(Math.abs(againstPlanDb), 2)
  if (Math.abs(againstPlanDb) < enclosurePlanDefaults.asLoudDb.value) return say('answer.as-loud-as-planned')
  return againstPlanDb < 0
    ? say('answer.db-quieter-than-planned', { decibels })
    : say('answer.db-louder-than-planned', { decibels })
}

const told: Readonly<Record<DriveWay, (way: Way) => Said | ''>> = {
  'as-planned': ({ powerW, highPassHz }) =>
    highPassHz === undefined
      ? ''
      : say('answer.the-high-pass-at-hz-lets', { highPass: inDigits(highPassHz), power: watts(powerW) }),
  'less-power': way => say('answer.without-it-are-the-most', { power: watts(way.powerW), way: cost(way) }),
  'higher-filter': way =>
    say('answer.all-need-a-high-pass-at', {
      power: watts(way.powerW),
      highPass: inDigits(way.highPassHz ?? 0, 2),
      way: cost(way)
    }),
  'smaller-box': way =>
    say('answer.hold-without-a-high-pass', {
      netVolumeM3: inLitres(way.netVolumeM3 ?? 0),
      power: watts(way.powerW),
      way: cost(way)
    })
}

export function headroomText(limits: PlanHeadroom['limits'], ways: PlanHeadroom['ways'], usablePowerW: number): Said {
  const [first] = limits
  if (first === undefined || first.powerW >= variationDefaults.allPower.value * usablePowerW) {
    return say('answer.all-that-amplifier-and-drivers-bear', { bornePower: watts(usablePowerW) })
  }
  const reached = say('answer.without-a-high-pass-at-at', {
    reaches: reaches[first.limit],
    power: watts(first.powerW),
    at: inDigits(first.atHz, 2)
  })
  return say('sentences', { all: [reached, ...ways.map(way => told[way.way](way)).filter(text => text !== '')] })
}
