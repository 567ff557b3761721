/** Readings under load: drops along the plus and minus side, over a fuse and over one joint, each beside its current. */

import type { PlanReading } from '../../contract/systems/readings.ts'
import { circuitDefaults } from '../../domain/circuit/points/defaults.ts'
import type { Probe } from '../../domain/circuit/readings/measured.ts'
import type { SolvedLevel } from '../../domain/circuit/readings/solved-level.ts'
import { say } from '../../domain/say.ts'
import { partSaid } from '../electric/part-words.ts'
import type { Card, Feeding } from './card.ts'
import { readingDefaults } from './defaults.ts'
import { limitOf, type Row, readingOf } from './reading.ts'

/** Millivolts at the current of the plan, and, what holds at any level, milliohms. */
function dropAndRatio(
  level: SolvedLevel,
  drop: (see: Probe) => number,
  ids: readonly string[],
  row: Row
): readonly PlanReading[] {
  return [
    readingOf(level, 'mV', drop, row),
    readingOf(level, 'mΩ', see => drop(see) / see.through(ids), {
      ...row,
      what: say('reading.divided-by-the-clamp-amperes', { what: row.what }),
      when: say('reading.any-music-both-read-at-the')
    })
  ]
}

/** Clamp amperes of this amplifier alone flow in all of the way. */
const alone = ({ request: { amplifiers, batteries } }: Card) => amplifiers.length === 1 && batteries.length === 1

const minusPosts = {
  battery: say('reading.minus-post-of-the-battery'),
  converter: say('reading.minus-output-of-the-converter'),
  sensor: say('start.body-side-of-the-battery-sensor'),
  second: say('reading.minus-post-of-the-second-battery')
} as const
const plusPosts = {
  battery: say('reading.plus-post-of-the-battery'),
  converter: say('reading.plus-output-of-the-converter'),
  sensor: say('reading.plus-post-of-the-battery'),
  second: say('reading.plus-post-of-the-second-battery')
} as const
const post = (pole: 'plus' | 'minus', { name }: Feeding) => (pole === 'minus' ? minusPosts : plusPosts)[name]

/** What the vehicle reads, against the clamp: a return that bypasses it shows here. */
function sensorReading({ heavy, request, when }: Card): readonly PlanReading[] {
  const sensor = request.links?.find(({ id }) => id === 'battery sensor')
  if (heavy === undefined || sensor === undefined) return []
  const row = {
    step: 'ground-drop',
    what: say('reading.over-the-battery-sensor'),
    probes: say('reading.its-body-side-to-the-minus'),
    when: when.music,
    above: say('reading.a-poor-joint-at-the-sensor')
  }
  const over = readingOf(heavy, 'mV', see => Math.abs(see.between(sensor.from, sensor.to)), row)
  return [{ ...over, lowest: 0 }]
}

function plusDrops(card: Card): readonly PlanReading[] {
  const { heavy, request, names, feedIds, feeding, when } = card
  if (heavy === undefined) return []
  const below = say('reading.it-does-not-play-at-full')
  return request.amplifiers.flatMap(({ plus }, index) => {
    const from = feeding[index]
    if (from === undefined) return []
    const row = {
      step: 'plus-drop',
      what: say('reading.plus-side-to', { names: names[index] ?? '' }),
      probes: say('reading.to-the-plus-terminal-of-the', { post: post('plus', from) }),
      when: when.music,
      below,
      above: say('reading.measure-on-from-joint-to-joint')
    }
    const drop = (see: Probe) => see.between(from.plus, plus)
    const ids = feedIds[index] ?? []
    return alone(card) ? dropAndRatio(heavy, drop, ids, row) : [readingOf(heavy, 'mV', drop, row)]
  })
}

function minusDrops(card: Card): readonly PlanReading[] {
  const { heavy, request, names, backIds, feeding, when } = card
  if (heavy === undefined) return []
  return request.amplifiers.flatMap(({ minus }, index) => {
    const to = feeding[index]
    if (to === undefined) return []
    const row = {
      step: 'ground-drop',
      what: say('reading.minus-side-of', { names: names[index] ?? '' }),
      probes: say('reading.ground-terminal-of-the-amplifier-to', { post: post('minus', to) }),
      when: when.music,
      above: say('reading.a-joint-to-remake-or-a')
    }
    const drop = (see: Probe) => see.between(minus, to.minus)
    const ids = backIds[index] ?? []
    return alone(card) ? dropAndRatio(heavy, drop, ids, row) : [readingOf(heavy, 'mV', drop, row)]
  })
}

function currents({ heavy, mainIds, mainName, request, names, when }: Card): readonly PlanReading[] {
  if (heavy === undefined) return []
  const row = { step: 'plus-drop', when: when.music }
  return [
    readingOf(heavy, 'A', see => see.through(mainIds), {
      ...row,
      what: say('reading.current-with-music'),
      probes: say('reading.clamp-around', { mainName }),
      above: say('reading.more-is-drawn-than-the-plan')
    }),
    ...request.amplifiers.map(({ plus, minus }, index) =>
      readingOf(heavy, 'V', see => see.between(plus, minus), {
        ...row,
        what: say('reading.voltage-at', { names: names[index] ?? '' }),
        probes: say('reading.its-plus-terminal-to-its-ground'),
        below: say('reading.a-weak-battery-a-poor-joint')
      })
    )
  ]
}

function fuseAndJoint({ heavy, request, mainIds, when }: Card): readonly PlanReading[] {
  const fuse = request.fuses?.[0]
  if (heavy === undefined || fuse === undefined) return []
  const row = { step: 'plus-drop', when: when.music }
  const joint = readingOf(heavy, 'mV', see => circuitDefaults.jointOhm.value * see.through(mainIds), {
    ...row,
    what: say('reading.one-joint'),
    probes: say('reading.lug-to-stud'),
    above: say('reading.remake-it-crimp-bare-metal-torque')
  })
  const poor = readingDefaults.poorJointOhm.value / circuitDefaults.jointOhm.value
  return [
    readingOf(heavy, 'mV', see => see.between(fuse.from, fuse.to), {
      ...row,
      what: say('reading.over', { id: partSaid(fuse.id) }),
      probes: say('reading.over-its-holder-lug-to-lug'),
      above: say('reading.a-loose-holder-it-warms-here')
    }),
    { ...joint, lowest: 0, highest: poor * (joint.expected ?? 0) }
  ]
}

/** Through a hand meter, whatever the plan: a step whose capacitor is charged. */
function capacitorReading({ capacitor }: Card): readonly PlanReading[] {
  if (!capacitor) return []
  return [
    limitOf(
      'V',
      { highest: 1 },
      {
        step: 'precharge',
        what: say('reading.over-the-charging-resistor'),
        probes: say('reading.clip-to-clip'),
        when: say('reading.until-it-has-fallen'),
        above: say('reading.wait-the-capacitor-still-charges-no')
      }
    )
  ]
}

export const loadReadings = (card: Card): readonly PlanReading[] => [
  ...capacitorReading(card),
  ...currents(card),
  ...plusDrops(card),
  ...fuseAndJoint(card),
  ...minusDrops(card),
  ...sensorReading(card)
]
