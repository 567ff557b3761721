/** Request of setting up the signal path. */
import Type, { type Static } from 'typebox'
import { gainPowerW, toneFields } from '../amplifiers/gain.ts'
import { ratingKinds } from '../amplifiers/words.ts'
import { byTag, component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const volts = (description: string) => quantity('V', description, { from: 0.01, to: 200 })
const resistance = (description: string) => quantity('Ω', description, { from: 0.1, to: 1_000_000 })
const hertz = (description: string) => quantity('Hz', description, { from: 5, to: 500 })
const flag = (description: string) => Type.Boolean({ description })
const tag = <const Kind extends string>(kind: Kind) => Type.Literal(kind, { description: 'Kind of source' })
const factory = Type.Optional(flag("The source is the vehicle's own and may equalise, delay and roll off"))
export const LineLevelSource = component('LineLevelSource', 'A line output.', {
  kind: tag('line-level'),
  levelV: volts('Highest undistorted RMS output'),
  outputOhm: Type.Optional(resistance('Output resistance')),
  differential: Type.Optional(flag('Whether plus and minus both carry signal')),
  factory
})
export interface LineLevelSource extends Si<Static<typeof LineLevelSource>> {}

export const SpeakerLevelSource = component(
  'SpeakerLevelSource',
  'A loudspeaker output: levelV, or powerW with loadOhm.',
  {
    kind: tag('speaker-level'),
    levelV: Type.Optional(volts('Highest undistorted RMS output')),
    powerW: Type.Optional(quantity('W', 'Continuous power of one output', { from: 0.1, to: 5000 })),
    loadOhm: Type.Optional(quantity('Ω', 'Loudspeaker it is rated for', { from: 0.5, to: 64 })),
    bridgeTied: Type.Optional(flag('Whether both wires rest at half the supply')),
    factory
  }
)
export interface SpeakerLevelSource extends Si<Static<typeof SpeakerLevelSource>> {}

export const DigitalSource = component('DigitalSource', 'A digital output behind a converter with a line output.', {
  kind: tag('digital'),
  levelV: Type.Optional(volts('Line output of the converter at full scale')),
  outputOhm: Type.Optional(resistance('Output resistance of the converter')),
  factory
})
export interface DigitalSource extends Si<Static<typeof DigitalSource>> {}

export const SignalSource = byTag('SignalSource', 'Where the signal comes from.', 'kind', [
  LineLevelSource,
  SpeakerLevelSource,
  DigitalSource
])
export const SignalInput = component('SignalInput', "The amplifier's input.", {
  lowestV: Type.Optional(volts('Lowest input voltage at which it can give full output')),
  highestV: Type.Optional(volts('Highest input voltage its gain control covers')),
  inputOhm: Type.Optional(resistance('Input resistance')),
  differential: Type.Optional(flag('Whether the input is differential or isolated')),
  speakerLevelV: Type.Optional(volts('Highest voltage of its speaker-level input; absent: it has none'))
})
export interface AmplifierInput extends Si<Static<typeof SignalInput>> {}

const SignalAmplifier = component('SignalAmplifier', 'The output whose gain is set.', {
  powerW: quantity('W', 'Continuous RMS power into loadOhm', { from: 0.1, to: 100_000 }),
  ratingKind: Type.Optional(choice('What kind of figure powerW is; only `rms` is taken', ratingKinds)),
  loadOhm: quantity('Ω', 'Load that is wired', { from: 0.05, to: 1000 }),
  bridged: Type.Optional(flag('Whether the output is a bridged pair of channels')),
  input: Type.Optional(ref(SignalInput))
})
export const TestTone = component('TestTone', 'The test tone and what is allowed past it.', {
  ...toneFields,
  frequencyHz: Type.Optional(hertz('Frequency of the tone')),
  boostDb: Type.Optional(quantity('dB', 'Boost that is switched on after the setting', { from: 0, to: 24 }))
})

const FilterCorner = component('FilterCorner', 'A corner of the band.', {
  cornerHz: hertz('Corner frequency'),
  order: Type.Optional(Type.Integer({ description: 'Order, 6 dB an octave each', minimum: 1, maximum: 8 }))
})
export interface CornerRequest extends Si<Static<typeof FilterCorner>> {}

const AcousticFacts = component('AcousticFacts', 'What the response of the enclosure showed.', {
  tuningHz: Type.Optional(hertz('Tuning of a port or passive radiator')),
  excursionLimitHz: Type.Optional(hertz('Below this the cone passes its limit at the target power')),
  mainsLowHz: Type.Optional(hertz('Lower end of the front loudspeakers'))
})
const SignalFilters = component('SignalFilters', 'The corners wanted, or what they can be derived from.', {
  lowPass: Type.Optional(ref(FilterCorner)),
  highPass: Type.Optional(ref(FilterCorner, 'Protective high-pass')),
  acoustic: Type.Optional(ref(AcousticFacts))
})
export interface CrossoverRequest extends Si<Static<typeof SignalFilters>> {}

export const TurnOnRequest = component('TurnOnRequest', 'How the amplifier can be switched on.', {
  remoteOutput: flag('Whether the source has a switched 12 V output'),
  limitA: Type.Optional(quantity('A', 'What that output may deliver', { from: 0.001, to: 10 })),
  loadsA: Type.Optional(
    Type.Array(quantity('A', 'Turn-on current of one input', { from: 0, to: 2 }), {
      description: 'Turn-on currents of all amplifiers and accessories',
      minItems: 1,
      maxItems: 16
    })
  ),
  amplifierSenses: Type.Optional(flag('Whether the amplifier can switch itself on by its signal')),
  relayCoilOhm: Type.Optional(quantity('Ω', 'Coil of the relay', { from: 10, to: 10_000 })),
  systemVoltageV: Type.Optional(quantity('V', 'Highest voltage with the engine running', { from: 6, to: 60 }))
})
export interface TurnOnRequest extends Si<Static<typeof TurnOnRequest>> {}

export const inputsInParallel = Type.Optional(
  Type.Integer({ description: 'Amplifier inputs on one line output', minimum: 1, maximum: 16 })
)
export const converterLineV = Type.Optional(volts('Line level a line-output converter is set to'))
export const SignalSetupRequest = component(
  'SignalSetupRequest',
  'The way from the music source to one amplifier output.',
  {
    source: Type.Optional(ref(SignalSource)),
    amplifier: ref(SignalAmplifier),
    driversPowerW: Type.Optional(
      quantity('W', 'Sum of the continuous ratings of the drivers on this output', { from: 0.1, to: 100_000 })
    ),
    gainPowerW,
    inputsInParallel,
    converterLineV,
    tone: Type.Optional(ref(TestTone)),
    filters: Type.Optional(ref(SignalFilters)),
    turnOn: Type.Optional(ref(TurnOnRequest)),
    systemVoltageV: Type.Optional(
      quantity('V', 'Nominal voltage of the amplifier’s supply, 12, 24 or 48', { from: 6, to: 58 })
    ),
    vehicleVoltageV: Type.Optional(
      quantity('V', 'Nominal voltage of the vehicle, where a converter feeds the amplifier', { from: 6, to: 58 })
    )
  }
)
export interface SignalSetupRequest extends Si<Static<typeof SignalSetupRequest>> {}
