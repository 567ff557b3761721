/** Readings before any music plays: batteries at rest, what the amplifiers draw idle, the charging voltage. */

import type { PlanReading } from '../../contract/systems/readings.ts'
import type { Probe } from '../../domain/circuit/readings/measured.ts'
import { say } from '../../domain/say.ts'
import { SWITCHED_ON_V } from '../../domain/signal/commissioning.ts'
import { twelves } from '../../domain/twelves.ts'
import { partSaid } from '../electric/part-words.ts'
import { workDefaults } from '../work/defaults.ts'
import type { Card, Feeding } from './card.ts'
import { readingDefaults } from './defaults.ts'
import { limitOf, readingOf } from './reading.ts'

function restReadings({ silentOff, request, when }: Card): readonly PlanReading[] {
  if (silentOff === undefined) return []
  return request.batteries.map(({ id, plus, minus }) =>
    readingOf(silentOff, 'V', see => see.between(plus, minus), {
      step: 'battery-on',
      what: say('reading.at-rest', { id: partSaid(id) }),
      probes: say('reading.post-to-post'),
      when: when.off,
      below: say('reading.it-is-not-full-charge-it'),
      above: say('reading.fresh-from-a-charger-it-settles')
    })
  )
}

/** What flows into the amplifiers before the first note. */
function idleDraw({ silentOff, mainIds, mainName, when }: Card): readonly PlanReading[] {
  if (silentOff === undefined) return []
  const { expected = 0, ...reading } = readingOf(silentOff, 'A', see => see.through(mainIds), {
    step: 'fuse-last',
    what: say('reading.current-drawn-idle'),
    probes: say('reading.clamp-around', { mainName }),
    when: when.switchedOn,
    below: say('reading.they-are-not-switched-on'),
    above: say('reading.a-short-or-another-load-fuse')
  })
  const { idleTimes, idleSpareA } = readingDefaults
  return [{ ...reading, expected, lowest: 0, highest: idleTimes.value * expected + idleSpareA.value }]
}

type Poles = Pick<Feeding, 'plus' | 'minus'>

/** Either way: towards a battery that is being charged it runs uphill. */
const difference = (from: Poles, to: Poles) => (see: Probe) =>
  Math.abs(see.between(from.plus, from.minus) - see.between(to.plus, to.minus))

const sourceWays = {
  battery: say('reading.difference-of-the-readings-at-the-2'),
  converter: say('reading.difference-of-the-readings-at-the'),
  sensor: say('reading.difference-of-the-readings-at-the-2'),
  second: say('reading.difference-of-the-readings-at-the-3')
} as const

function chargingReadings({ silentIdling, request, names, feeding, when }: Card): readonly PlanReading[] {
  const [battery] = request.batteries
  if (silentIdling === undefined || battery === undefined) return []
  const charging = readingOf(silentIdling, 'V', see => see.between(battery.plus, battery.minus), {
    step: 'running',
    what: say('reading.charging-voltage-at-the-battery'),
    probes: say('reading.post-to-post'),
    when: when.running,
    below: say('reading.charging-is-weak-or-held-back'),
    above: say('reading.as-below-above-15-v-for')
  })
  const { lowestSetV = Infinity, highestSetV = 0 } = request.alternators?.[0] ?? {}
  return [
    {
      ...charging,
      lowest: Math.min(charging.lowest ?? lowestSetV, lowestSetV),
      highest: Math.max(charging.highest ?? highestSetV, highestSetV)
    },
    ...request.amplifiers.flatMap(({ plus, minus }, index) => {
      const from = feeding[index]
      if (from === undefined) return []
      const lost = readingOf(silentIdling, 'mV', difference(from, { plus, minus }), {
        step: 'running',
        what: say('reading.lost-on-the-way-to', { names: names[index] ?? '' }),
        probes: sourceWays[from.name],
        when: when.running,
        above: say('reading.a-joint-that-is-not-tight')
      })
      return [{ ...lost, lowest: 0, highest: Math.max(readingDefaults.leastLossMv.value, lost.highest ?? 0) }]
    })
  ]
}

/** A weak battery, or a poor strap of the engine, shows here before the music does. */
function startReadings({ coldStart, request: { batteries } }: Card): readonly PlanReading[] {
  const [battery] = batteries
  if (coldStart === undefined || battery === undefined) return []
  return [
    readingOf(coldStart, 'V', see => see.between(battery.plus, battery.minus), {
      step: 'running',
      what: say('reading.starter'),
      probes: say('reading.least-reading'),
      when: say('reading.at-the-start'),
      below: say('reading.weak-battery'),
      above: say('reading.warm-engine')
    })
  ]
}

/** Lead by lead, before any current can flow. */
function continuity({ names }: Card): readonly PlanReading[] {
  return names.map(name =>
    limitOf(
      'Ω',
      { highest: readingDefaults.continuityOhm.value },
      {
        step: 'no-short',
        what: say('reading.ground-of', { name }),
        probes: say('reading.its-ground-terminal-to-the-minus'),
        when: say('reading.battery-off'),
        above: say('reading.a-lead-is-missing-or-lies')
      }
    )
  )
}

/** An amplifier is on from a voltage upwards, whatever the output of the source should hold. */
function turnOnReading({ feeding, silentOff, request }: Card): PlanReading {
  const lowest = SWITCHED_ON_V * twelves(Math.min(...feeding.map(({ nominalV }) => nominalV)))
  const row = {
    step: 'turn-on',
    what: say('reading.turn-on-of-the-amplifier'),
    probes: say('reading.turn-on-terminal-to-ground-terminal'),
    when: say('reading.source-on'),
    below: say('reading.the-output-is-loaded-too-much')
  }
  const inputs = request.accessories?.find(({ id }) => id === 'turn-on')
  if (silentOff === undefined || inputs === undefined) return limitOf('V', { lowest }, row)
  const { highest: _, ...read } = readingOf(silentOff, 'V', see => see.between(inputs.plus, inputs.minus), row)
  return { ...read, lowest }
}

function switching(card: Card): readonly PlanReading[] {
  return [
    turnOnReading(card),
    limitOf(
      'mA',
      { highest: 1000 * workDefaults.parkedA.value },
      {
        step: 'parked-current',
        what: say('reading.drain-of-the-amplifiers'),
        probes: say('reading.clamp-around-the-main-cable-or'),
        when: say('reading.latched-everything-asleep-for-half-an'),
        above: say('reading.something-stays-awake-turn-on-converter')
      }
    )
  ]
}

function tieReadings({ silentIdling, request, when }: Card): readonly PlanReading[] {
  const relay = request.links?.find(({ id }) => id === 'isolating relay')
  if (silentIdling === undefined || relay === undefined) return []
  const closed = readingOf(silentIdling, 'mV', see => Math.abs(see.between(relay.from, relay.to)), {
    step: 'relay-check',
    what: say('reading.over-the-closed-relay'),
    probes: say('reading.stud-to-stud'),
    when: when.running,
    above: say('reading.it-has-not-closed-or-its')
  })
  return [{ ...closed, lowest: 0 }]
}

/** Before the amplifier may see it: with 24 V on it, it burns. */
function converterReading({ silentOff, request }: Card): readonly PlanReading[] {
  const converter = request.converters?.find(({ id }) => id === 'converter')
  if (silentOff === undefined || converter === undefined) return []
  return [
    readingOf(silentOff, 'V', see => see.between(converter.outPlus, converter.outMinus), {
      step: 'converter-check',
      what: say('reading.output-of-the-converter'),
      probes: say('reading.its-plus-output-to-its-minus'),
      when: say('reading.main-fuse-in-the-fuse-of'),
      below: say('reading.its-input-is-missing-or-turned'),
      above: say('reading.input-and-output-are-exchanged-or')
    })
  ]
}

function chargerReading({ silentIdling, request, when }: Card): readonly PlanReading[] {
  const charger = request.converters?.find(({ id }) => id === 'charger')
  if (silentIdling === undefined || charger === undefined) return []
  const given = readingOf(silentIdling, 'A', see => -see.through(['charger']), {
    step: 'charger-check',
    what: say('reading.output-of-the-charger'),
    probes: say('reading.clamp-around-its-output-lead'),
    when: when.running,
    below: say('reading.the-second-battery-is-full-or'),
    above: say('reading.more-than-its-rating-look-at')
  })
  // a flat battery takes all it gives, a full one nothing
  return [{ ...given, lowest: 0, highest: readingDefaults.chargerTimes.value * charger.ratedA }]
}

export const silentReadings = (card: Card): readonly PlanReading[] => [
  ...continuity(card),
  ...restReadings(card),
  ...converterReading(card),
  ...idleDraw(card),
  ...startReadings(card),
  ...chargingReadings(card),
  ...tieReadings(card),
  ...chargerReading(card),
  ...switching(card)
]
