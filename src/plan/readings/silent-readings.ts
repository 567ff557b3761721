/** Readings before any music plays: batteries at rest, what the amplifiers draw idle, the charging voltage. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import type { Probe } from '../../domain/circuit/readings/measured.ts'
import { SWITCHED_ON_V } from '../../domain/signal/commissioning.ts'
import { twelves } from '../../domain/twelves.ts'
import { PARKED_A } from '../work/hand-over.ts'
import type { Card, Feeding } from './card.ts'
import { limitOf, readingOf } from './reading.ts'

const OFF = 'engine off, nothing plays'
const RUNNING = 'engine idling, nothing plays'

function restReadings({ silentOff, request }: Card): readonly PlanReading[] {
  if (silentOff === undefined) return []
  return request.batteries.map(({ id, plus, minus }) =>
    readingOf(silentOff, 'V', see => see.between(plus, minus), {
      step: 'battery-on',
      what: `${id} at rest`,
      probes: 'post to post',
      when: OFF,
      below: 'it is not full: charge it before anything is set',
      above: 'fresh from a charger: it settles within an hour'
    })
  )
}

/** What flows into the amplifiers before the first note. */
function idleDraw({ silentOff, mainIds, mainName }: Card): readonly PlanReading[] {
  if (silentOff === undefined) return []
  const { expected = 0, ...reading } = readingOf(silentOff, 'A', see => see.through(mainIds), {
    step: 'fuse-last',
    what: 'current drawn idle',
    probes: `clamp around ${mainName}`,
    when: 'engine off, amplifiers on, nothing plays',
    below: 'they are not switched on',
    above: 'a short or another load: fuse out, look again'
  })
  // a guess by class: half to three times of it is no fault
  return [{ ...reading, expected, lowest: 0, highest: 3 * expected + 1 }]
}

type Poles = Pick<Feeding, 'plus' | 'minus'>

/** Either way: towards a battery that is being charged it runs uphill. */
const difference = (from: Poles, to: Poles) => (see: Probe) =>
  Math.abs(see.between(from.plus, from.minus) - see.between(to.plus, to.minus))

const sourceNames = {
  battery: 'battery',
  sensor: 'battery',
  converter: 'converter',
  second: 'second battery'
} as const

function chargingReadings({ silentIdling, request, names, feeding }: Card): readonly PlanReading[] {
  const [battery] = request.batteries
  if (silentIdling === undefined || battery === undefined) return []
  const charging = readingOf(silentIdling, 'V', see => see.between(battery.plus, battery.minus), {
    step: 'running',
    what: 'charging voltage at the battery',
    probes: 'post to post',
    when: RUNNING,
    below: 'charging is weak or held back: 12.2 to 15 V are usual where a battery sensor governs it',
    above: 'as below; above 15 V for each 12 V the regulator is to be looked at'
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
        what: `lost on the way to ${names[index]}`,
        probes: `difference of the readings at the ${sourceNames[from.name]} and at the amplifier`,
        when: RUNNING,
        above: 'a joint that is not tight, or a battery that is being charged through this cable'
      })
      return [{ ...lost, lowest: 0, highest: Math.max(20, lost.highest ?? 0) }]
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
      what: 'battery while the starter turns',
      probes: 'post to post, the meter on its least reading',
      when: 'at the start of the engine, amplifiers on, nothing plays',
      below: 'a battery that is weak or not full: test it before anything is set',
      above: 'a warm engine turns lightly'
    })
  ]
}

/** Lead by lead, before any current can flow. */
function continuity({ names }: Card): readonly PlanReading[] {
  return names.map(name =>
    limitOf(
      'Ω',
      { highest: 0.3 },
      {
        step: 'no-short',
        what: `ground of ${name}`,
        probes: 'its ground terminal to the minus post that is off the battery',
        when: 'battery off',
        above: 'a lead is missing or lies on paint; a hand meter proves no more than that there is one'
      }
    )
  )
}

function switching({ feeding }: Card): readonly PlanReading[] {
  return [
    limitOf(
      'V',
      { lowest: SWITCHED_ON_V * twelves(Math.min(...feeding.map(({ nominalV }) => nominalV))) },
      {
        step: 'turn-on',
        what: 'turn-on of the amplifier',
        probes: 'turn-on terminal to ground terminal',
        when: 'source on',
        below: 'the output is loaded too much, or the relay does not close'
      }
    ),
    limitOf(
      'mA',
      { highest: 1000 * PARKED_A },
      {
        step: 'parked-current',
        what: 'drain of the amplifiers',
        probes: 'clamp around the main cable, or millivolts over its fuse',
        when: 'latched, everything asleep for half an hour',
        above: 'something stays awake: turn-on, converter or processor; an amplifier that sleeps takes 1 mA'
      }
    )
  ]
}

function tieReadings({ silentIdling, request }: Card): readonly PlanReading[] {
  const relay = request.links?.find(({ id }) => id === 'isolating relay')
  if (silentIdling === undefined || relay === undefined) return []
  const closed = readingOf(silentIdling, 'mV', see => Math.abs(see.between(relay.from, relay.to)), {
    step: 'relay-check',
    what: 'over the closed relay',
    probes: 'stud to stud',
    when: RUNNING,
    above: 'it has not closed, or its contact is burnt'
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
      what: 'output of the converter',
      probes: 'its plus output to its minus output',
      when: 'main fuse in, the fuse of the output out',
      below: 'its input is missing, or turned round',
      above: 'input and output are exchanged, or it is set for another voltage: the fuse of the output stays out'
    })
  ]
}

function chargerReading({ silentIdling, request }: Card): readonly PlanReading[] {
  const charger = request.converters?.find(({ id }) => id === 'charger')
  if (silentIdling === undefined || charger === undefined) return []
  const given = readingOf(silentIdling, 'A', see => -see.through(['charger']), {
    step: 'charger-check',
    what: 'output of the charger',
    probes: 'clamp around its output lead',
    when: RUNNING,
    below: 'the second battery is full, or the ignition signal is missing',
    above: 'more than its rating: look at its settings'
  })
  // a flat battery takes all it gives, a full one nothing
  return [{ ...given, lowest: 0, highest: 1.05 * charger.ratedA }]
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
