/** POST /v1/amplifiers/matching */
import Type from 'typebox'
import { powerOrigins } from '../../domain/amplifier/amplifier-sheet.ts'
import { matchAmplifier as compute, MOST_OPTIONS_SHOWN } from '../../domain/amplifier/match-amplifier.ts'
import { matchVerdicts } from '../../domain/amplifier/match-options.ts'
import { ratingKinds } from '../../domain/amplifier/power-rating.ts'
import { rankings } from '../../domain/amplifier/rank-options.ts'
import { amplifierClasses } from '../../domain/supply/supply-judgement.ts'
import { defineOperation } from '../operation.ts'
import { component, ref } from '../schemas/component.ts'
import { gainTargetFields, meterFields, toneFields } from '../schemas/gain.ts'
import { choice, count, label, list, quantity } from '../schemas/quantities.ts'
import { SpeakerCableBody, SpeakerCableResult } from '../schemas/speaker-cable.ts'
import { wiringFields } from '../schemas/wiring.ts'

const load = (description: string) => quantity('Ω', description, { from: 0.05, to: 1000 })
const power = (description: string) => quantity('W', description, { from: 0.1, to: 100_000 })
const ratingKind = (whose: string) =>
  Type.Optional(choice(`What kind of figure ${whose} is; only \`rms\` can be matched`, ratingKinds))

const Rating = component('AmplifierRating', 'One published power of an amplifier.', {
  loadOhm: load('Load it is rated at'),
  powerW: power('Continuous RMS power of one channel, or of the bridged pair'),
  bridged: Type.Optional(Type.Boolean({ description: 'Rated with two channels bridged' }))
})

export const Sheet = component('AmplifierSheet', "What an amplifier's data sheet says.", {
  name: Type.Optional(label('Name by which the answer speaks of it')),
  ratings: list('Published powers, one a load', ref(Rating), 1, 24),
  ratingKind: ratingKind('each rating'),
  minimumOhm: load('Lowest load of one channel'),
  minimumBridgedOhm: Type.Optional(load('Lowest load of a bridged pair')),
  channels: Type.Optional(count('Channels', 1, 16)),
  class: Type.Optional(choice('Class of the output stage, for the heat', amplifierClasses)),
  efficiency: Type.Optional(quantity('1', 'Output over input at rated output', { from: 0.05, to: 0.99 })),
  quiescentW: Type.Optional(quantity('W', 'Idle draw', { from: 0, to: 1000 })),
  ratedVoltageV: Type.Optional(
    quantity('V', 'Supply at which the powers are rated, for what the fuses pass', { from: 6, to: 60 })
  ),
  onboardFusesA: Type.Optional(
    list('Fuses on the amplifier', quantity('A', 'Rating of one', { above: 0, to: 1000 }), 1, 12)
  ),
  price: Type.Optional(quantity('1', 'Price, in any one currency', { from: 0, to: 1e9 })),
  footprintCm2: Type.Optional(quantity('cm²', 'Area it takes where it is mounted', { above: 0, to: 100_000 }))
})

const MatchDriver = component('MatchDriver', 'One of the drivers, all alike.', {
  powerW: power('Continuous RMS power it takes, all its coils together'),
  ratingKind: ratingKind('powerW'),
  coils: count('Voice coils', 1, 4),
  coilOhm: load('Rated impedance of one coil')
})

const ToneLevel = component('ToneLevel', 'The test tone the gain is set with.', toneFields)

const Body = component('AmplifierMatchRequest', 'An amplifier and the drivers it shall drive.', {
  amplifier: ref(Sheet),
  otherAmplifiers: Type.Optional(list('Amplifiers to compare it with', ref(Sheet), 1, 10)),
  amplifierCount: Type.Optional(count('How many of the amplifier may be used together', 1, 16)),
  driver: ref(MatchDriver),
  driverCount: count('Drivers', 1, 16),
  rankBy: Type.Optional(
    choice(
      '`power`: closest to the drivers; `price` or `size`: least among those that fit, given for every amplifier',
      rankings
    )
  ),
  tone: Type.Optional(ref(ToneLevel)),
  cable: Type.Optional(ref(SpeakerCableBody, 'The cable from each output to its drivers'))
})

const MatchGain = component('MatchGain', 'The voltage an output shall give, and what the meter shall read.', {
  ...gainTargetFields,
  ...meterFields
})

const Option = component('MatchOption', 'One balanced way of putting the drivers on the amplifier.', {
  amplifier: Type.String({ description: 'Which amplifier' }),
  bridged: Type.Boolean({ description: 'Whether each output is a bridged pair of channels' }),
  outputs: count('Outputs in use, each with an equal share of the drivers', 1, 16),
  driversPerOutput: count('Drivers on each output', 1, 16),
  amplifiersNeeded: count('Amplifiers of this kind needed', 1, 16),
  loadOhm: quantity('Ω', 'Load on each output'),
  lowestOhm: quantity('Ω', 'Lowest load this output may drive'),
  join: Type.String({ description: 'How the coils on one output are joined' }),
  verdict: choice(
    '`good`: 0.75 to 1.5 times the drivers; `power-unknown`: nothing published for this load or an allowed one below; `below-minimum`: must not be wired',
    matchVerdicts
  ),
  advice: Type.String({ description: 'What follows from it' }),
  outputPowerW: Type.Optional(
    quantity('W', 'Continuous power of one output into this load; absent when nothing follows from the sheet')
  ),
  powerFrom: Type.Optional(
    choice(
      '`published` for this load; `two-channels`: twice one channel at half the load; `voltage-bound`: at least this, by the voltage reached at the lower load `ratedOhm`',
      powerOrigins
    )
  ),
  claimedPowerW: Type.Optional(quantity('W', 'What the sheet claims, where the fuses on board pass less')),
  ratedOhm: Type.Optional(quantity('Ω', 'Load of the rating a bound comes from')),
  ratedPowerW: Type.Optional(quantity('W', 'Power of that rating: size the supply for it')),
  totalPowerW: Type.Optional(quantity('W', 'Power of all outputs in use')),
  driverPowerW: Type.Optional(quantity('W', 'Power offered to each driver')),
  coilPowerW: Type.Optional(quantity('W', 'Power offered to each coil')),
  powerRatio: Type.Optional(quantity('1', "Power offered over the driver's rating")),
  price: Type.Optional(quantity('1', 'Price of the amplifiers needed')),
  footprintCm2: Type.Optional(quantity('cm²', 'Area of the amplifiers needed'))
})

const Heat = component('AmplifierHeat', 'What all amplifiers of the best way give off together.', {
  fullSineW: quantity('W', 'With a test tone at full level'),
  averageW: quantity('W', 'With music that averages one eighth of it')
})

const Wiring = component('MatchWiring', 'How to join the drivers of one output.', wiringFields)

const Result = component('AmplifierMatchResult', 'How the amplifier can drive the drivers, best first.', {
  best: Type.Optional(
    ref(Option, 'The way to take; absent when the power of no allowed load of the amplifiers at hand is known')
  ),
  wiring: Type.Optional(ref(Wiring, 'How to join the drivers of each output of the best way')),
  gain: Type.Optional(ref(MatchGain, 'Gain setting of each output of the best way')),
  heat: Type.Optional(ref(Heat, 'Absent when neither class nor efficiency was given')),
  cable: Type.Optional(ref(SpeakerCableResult, 'Cable of each output of the best way')),
  options: list(`Every balanced way, at most ${MOST_OPTIONS_SHOWN}, best first`, ref(Option), 1, MOST_OPTIONS_SHOWN)
})

export const matchAmplifier = defineOperation({
  path: '/v1/amplifiers/matching',
  operationId: 'matchAmplifier',
  tag: 'Coils and amplifier',
  summary: 'Whether amplifier and drivers fit, and at which load',
  description:
    'Continuous RMS power of the amplifier against that of the drivers at every load they can be wired to, on one output or spread over several, single or bridged. Power is taken as published for the load and never scaled to a lower one; above the rated loads it is bounded by the voltage reached there. Two powers at one load, bridged figures of one channel, peak, maximum and total figures are refused with the reason.',
  body: Body,
  result: Result,
  compute,
  examples: {
    monoBlock: {
      summary: 'A mono-block and one driver with two coils',
      request: {
        amplifier: {
          ratings: [
            { loadOhm: 4, powerW: 320 },
            { loadOhm: 2, powerW: 540 },
            { loadOhm: 1, powerW: 820 }
          ],
          minimumOhm: 1,
          channels: 1,
          class: 'D',
          onboardFusesA: [40, 40]
        },
        driver: { powerW: 500, coils: 2, coilOhm: 4 },
        driverCount: 1,
        cable: { lengthM: 2.5 }
      }
    },
    bridgedPair: {
      summary: 'Two drivers on a bridged pair, against a mono-block for each',
      request: {
        amplifier: {
          name: 'four-channel',
          ratings: [
            { loadOhm: 4, powerW: 100 },
            { loadOhm: 2, powerW: 160 }
          ],
          minimumOhm: 2,
          channels: 4
        },
        otherAmplifiers: [
          { name: 'small mono-block', ratings: [{ loadOhm: 4, powerW: 260 }], minimumOhm: 2, channels: 1 }
        ],
        amplifierCount: 2,
        driver: { powerW: 250, coils: 1, coilOhm: 4 },
        driverCount: 2
      }
    }
  }
})
