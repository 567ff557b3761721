/** Request and answer of matching an amplifier to drivers. */
import Type, { type Static } from 'typebox'
import { wiringFields } from '../coils/wiring.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { SpeakerCableBody, SpeakerCableResult } from '../supply/speaker-cable.ts'
import { amplifierClasses } from '../supply/words.ts'
import { gainPowerW, gainTargetFields, meterFields, toneFields } from './gain.ts'
import { MOST_OPTIONS_SHOWN, matchVerdicts, powerOrigins, rankings, ratingKinds } from './words.ts'

const load = (description: string) => quantity('Ω', description, { from: 0.05, to: 1000 })
const power = (description: string) => quantity('W', description, { from: 0.1, to: 100_000 })
const ratingKind = (whose: string) =>
  Type.Optional(choice(`What kind of figure ${whose} is; only \`rms\` can be matched`, ratingKinds))
export const AmplifierRating = component('AmplifierRating', 'One published power of an amplifier.', {
  loadOhm: load('Load it is rated at'),
  powerW: power('Continuous RMS power of one channel, or of the bridged pair'),
  bridged: Type.Optional(Type.Boolean({ description: 'Rated with two channels bridged' }))
})
export interface AmplifierRating extends Si<Static<typeof AmplifierRating>> {}

export const AmplifierSheet = component('AmplifierSheet', "What an amplifier's data sheet says.", {
  name: Type.Optional(label('Name by which the answer speaks of it')),
  ratings: list('Published powers, one a load', ref(AmplifierRating), 1, 24),
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
export interface AmplifierSheet extends Si<Static<typeof AmplifierSheet>> {}

const MatchDriver = component('MatchDriver', 'One of the drivers, all alike.', {
  powerW: power('Continuous RMS power it takes, all its coils together'),
  ratingKind: ratingKind('powerW'),
  coils: count('Voice coils', 1, 4),
  coilOhm: load('Rated impedance of one coil')
})
export interface MatchDriver extends Si<Static<typeof MatchDriver>> {}

export const ToneLevel = component('ToneLevel', 'The test tone the gain is set with.', toneFields)
export interface ToneLevel extends Si<Static<typeof ToneLevel>> {}

export const AmplifierMatchRequest = component(
  'AmplifierMatchRequest',
  'An amplifier and the drivers it shall drive.',
  {
    amplifier: ref(AmplifierSheet),
    otherAmplifiers: Type.Optional(list('Amplifiers to compare it with', ref(AmplifierSheet), 1, 10)),
    amplifierCount: Type.Optional(count('How many of the amplifier may be used together', 1, 16)),
    driver: ref(MatchDriver),
    driverCount: count('Drivers', 1, 16),
    rankBy: Type.Optional(
      choice(
        '`power`: closest to the drivers; `price` or `size`: least among those that fit, given for every amplifier',
        rankings
      )
    ),
    gainPowerW,
    tone: Type.Optional(ref(ToneLevel)),
    cable: Type.Optional(ref(SpeakerCableBody, 'The cable from each output to its drivers'))
  }
)
export interface AmplifierMatchRequest extends Si<Static<typeof AmplifierMatchRequest>> {}

const MatchGain = component('MatchGain', 'The voltage an output shall give, and what the meter shall read.', {
  ...gainTargetFields,
  ...meterFields
})
export const MatchOption = component('MatchOption', 'One balanced way of putting the drivers on the amplifier.', {
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
export interface MatchOption extends Si<Static<typeof MatchOption>> {}

export const AmplifierHeat = component('AmplifierHeat', 'What all amplifiers of the best way give off together.', {
  fullSineW: quantity('W', 'With a test tone at full level'),
  averageW: quantity('W', 'With music that averages one eighth of it')
})
export interface AmplifierHeat extends Si<Static<typeof AmplifierHeat>> {}

export const MatchWiring = component('MatchWiring', 'How to join the drivers of one output.', wiringFields)
export interface MatchWiring extends Si<Static<typeof MatchWiring>> {}

export const AmplifierMatchResult = component(
  'AmplifierMatchResult',
  'How the amplifier can drive the drivers, best first.',
  {
    best: Type.Optional(
      ref(MatchOption, 'The way to take; absent when the power of no allowed load of the amplifiers at hand is known')
    ),
    wiring: Type.Optional(ref(MatchWiring, 'How to join the drivers of each output of the best way')),
    gain: Type.Optional(ref(MatchGain, 'Gain setting of each output of the best way')),
    heat: Type.Optional(ref(AmplifierHeat, 'Absent when neither class nor efficiency was given')),
    cable: Type.Optional(ref(SpeakerCableResult, 'Cable of each output of the best way')),
    options: list(
      `Every balanced way, at most ${MOST_OPTIONS_SHOWN}, best first`,
      ref(MatchOption),
      1,
      MOST_OPTIONS_SHOWN
    )
  }
)
export interface AmplifierMatch extends Si<Static<typeof AmplifierMatchResult>> {}
