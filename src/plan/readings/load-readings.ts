/** Readings under load: drops along the plus and minus side, over a fuse and over one joint, each beside its current. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import { circuitJudgement } from '../../domain/circuit/points/circuit-judgement.ts'
import type { Probe } from '../../domain/circuit/readings/measured.ts'
import type { SolvedLevel } from '../../domain/circuit/readings/solved-level.ts'
import type { Card, Feeding } from './card.ts'
import { limitOf, type Row, readingOf } from './reading.ts'

const MUSIC = 'dense bass at full level, engine idling'
/** A joint that is to be remade [Ω]. Common practice, no source. */
const POOR_JOINT_OHM = 0.0005

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
      what: `${row.what}, divided by the clamp amperes`,
      when: 'any music, both read at the same moment'
    })
  ]
}

/** Clamp amperes of this amplifier alone flow in all of the way. */
const alone = ({ request: { amplifiers, batteries } }: Card) => amplifiers.length === 1 && batteries.length === 1

const minusPosts = {
  battery: 'minus post of the battery',
  converter: 'minus output of the converter',
  sensor: 'body side of the battery sensor',
  second: 'minus post of the second battery'
} as const
const plusPosts = {
  battery: 'plus post of the battery',
  converter: 'plus output of the converter',
  sensor: 'plus post of the battery',
  second: 'plus post of the second battery'
} as const
const post = (pole: 'plus' | 'minus', { name }: Feeding) => (pole === 'minus' ? minusPosts : plusPosts)[name]

/** What the vehicle reads, against the clamp: a return that bypasses it shows here. */
function sensorReading({ heavy, request }: Card): readonly PlanReading[] {
  const sensor = request.links?.find(({ id }) => id === 'battery sensor')
  if (heavy === undefined || sensor === undefined) return []
  const row = {
    step: 'ground-drop',
    what: 'over the battery sensor',
    probes: 'its body side to the minus post of the battery',
    when: MUSIC,
    above: 'a poor joint at the sensor; and nothing else may sit on the post, or it reads too little'
  }
  const over = readingOf(heavy, 'mV', see => Math.abs(see.between(sensor.from, sensor.to)), row)
  return [{ ...over, lowest: 0 }]
}

function plusDrops(card: Card): readonly PlanReading[] {
  const { heavy, request, names, feedIds, feeding } = card
  if (heavy === undefined) return []
  const below = 'it does not play at full level, or the probes sit on the wrong side of a joint'
  return request.amplifiers.flatMap(({ plus }, index) => {
    const from = feeding[index]
    if (from === undefined) return []
    const row = {
      step: 'plus-drop',
      what: `plus side to ${names[index]}`,
      probes: `${post('plus', from)} to the plus terminal of the amplifier`,
      when: MUSIC,
      below,
      above: 'measure on from joint to joint: the one with the most millivolts is to be remade'
    }
    const drop = (see: Probe) => see.between(from.plus, plus)
    const ids = feedIds[index] ?? []
    return alone(card) ? dropAndRatio(heavy, drop, ids, row) : [readingOf(heavy, 'mV', drop, row)]
  })
}

function minusDrops(card: Card): readonly PlanReading[] {
  const { heavy, request, names, backIds, feeding } = card
  if (heavy === undefined) return []
  return request.amplifiers.flatMap(({ minus }, index) => {
    const to = feeding[index]
    if (to === undefined) return []
    const row = {
      step: 'ground-drop',
      what: `minus side of ${names[index]}`,
      probes: `ground terminal of the amplifier to the ${post('minus', to)}`,
      when: MUSIC,
      above: 'a joint to remake, or a body that conducts worse than the plan took it: measure and plan again'
    }
    const drop = (see: Probe) => see.between(minus, to.minus)
    const ids = backIds[index] ?? []
    return alone(card) ? dropAndRatio(heavy, drop, ids, row) : [readingOf(heavy, 'mV', drop, row)]
  })
}

function currents({ heavy, mainIds, mainName, request, names }: Card): readonly PlanReading[] {
  if (heavy === undefined) return []
  const row = { step: 'plus-drop', when: MUSIC }
  return [
    readingOf(heavy, 'A', see => see.through(mainIds), {
      ...row,
      what: 'current with music',
      probes: `clamp around ${mainName}`,
      above: 'more is drawn than the plan holds: look for another load'
    }),
    ...request.amplifiers.map(({ plus, minus }, index) =>
      readingOf(heavy, 'V', see => see.between(plus, minus), {
        ...row,
        what: `voltage at ${names[index]}`,
        probes: 'its plus terminal to its ground terminal',
        below: 'a weak battery, a poor joint or an engine that idles low: the drops tell which'
      })
    )
  ]
}

function fuseAndJoint({ heavy, request, mainIds }: Card): readonly PlanReading[] {
  const fuse = request.fuses?.[0]
  if (heavy === undefined || fuse === undefined) return []
  const row = { step: 'plus-drop', when: MUSIC }
  const joint = readingOf(heavy, 'mV', see => circuitJudgement.jointOhm.value * see.through(mainIds), {
    ...row,
    what: 'one joint',
    probes: 'lug to stud',
    above: 'remake it: crimp, bare metal, torque'
  })
  const poor = POOR_JOINT_OHM / circuitJudgement.jointOhm.value
  return [
    readingOf(heavy, 'mV', see => see.between(fuse.from, fuse.to), {
      ...row,
      what: `over ${fuse.id}`,
      probes: 'over its holder, lug to lug',
      above: 'a loose holder: it warms here first'
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
        what: 'over the charging resistor',
        probes: 'clip to clip',
        when: 'until it has fallen',
        above: 'wait: the capacitor still charges; no fall within five times the time stated is a short'
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
