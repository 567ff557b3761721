/** POST /v1/signal/setup */
import Type from 'typebox'
import { ratingKinds } from '../../domain/amplifier/power-rating.ts'
import { setUpSignal as compute } from '../../domain/signal/set-up-signal.ts'
import { defineOperation } from '../operation.ts'
import { byTag, component, ref } from '../schemas/component.ts'
import { toneFields } from '../schemas/gain.ts'
import { choice, quantity } from '../schemas/quantities.ts'
import { SignalSetupResultBody } from '../schemas/signal-result.ts'

const volts = (description: string) => quantity('V', description, { from: 0.01, to: 200 })
const resistance = (description: string) => quantity('Ω', description, { from: 0.1, to: 1_000_000 })
const hertz = (description: string) => quantity('Hz', description, { from: 5, to: 500 })
const flag = (description: string) => Type.Boolean({ description })
const tag = <const Kind extends string>(kind: Kind) => Type.Literal(kind, { description: 'Kind of source' })
const factory = Type.Optional(flag("The source is the vehicle's own and may equalise, delay and roll off"))

const LineLevel = component('LineLevelSource', 'A line output.', {
  kind: tag('line-level'),
  levelV: volts('Highest undistorted RMS output'),
  outputOhm: Type.Optional(resistance('Output resistance')),
  differential: Type.Optional(flag('Whether plus and minus both carry signal')),
  factory
})

const SpeakerLevel = component('SpeakerLevelSource', 'A loudspeaker output: levelV, or powerW with loadOhm.', {
  kind: tag('speaker-level'),
  levelV: Type.Optional(volts('Highest undistorted RMS output')),
  powerW: Type.Optional(quantity('W', 'Continuous power of one output', { from: 0.1, to: 5000 })),
  loadOhm: Type.Optional(quantity('Ω', 'Loudspeaker it is rated for', { from: 0.5, to: 64 })),
  bridgeTied: Type.Optional(flag('Whether both wires rest at half the supply')),
  factory
})

const Digital = component('DigitalSource', 'A digital output behind a converter with a line output.', {
  kind: tag('digital'),
  levelV: Type.Optional(volts('Line output of the converter at full scale')),
  outputOhm: Type.Optional(resistance('Output resistance of the converter')),
  factory
})

export const Source = byTag('SignalSource', 'Where the signal comes from.', 'kind', [LineLevel, SpeakerLevel, Digital])

export const Input = component('SignalInput', "The amplifier's input.", {
  lowestV: Type.Optional(volts('Lowest input voltage at which it can give full output')),
  highestV: Type.Optional(volts('Highest input voltage its gain control covers')),
  inputOhm: Type.Optional(resistance('Input resistance')),
  differential: Type.Optional(flag('Whether the input is differential or isolated')),
  speakerLevelV: Type.Optional(volts('Highest voltage of its speaker-level input; absent: it has none'))
})

const Amplifier = component('SignalAmplifier', 'The output whose gain is set.', {
  powerW: quantity('W', 'Continuous RMS power into loadOhm', { from: 0.1, to: 100_000 }),
  ratingKind: Type.Optional(choice('What kind of figure powerW is; only `rms` is taken', ratingKinds)),
  loadOhm: quantity('Ω', 'Load that is wired', { from: 0.05, to: 1000 }),
  bridged: Type.Optional(flag('Whether the output is a bridged pair of channels')),
  input: Type.Optional(ref(Input))
})

export const Tone = component('TestTone', 'The test tone and what is allowed past it.', {
  ...toneFields,
  frequencyHz: Type.Optional(hertz('Frequency of the tone')),
  boostDb: Type.Optional(quantity('dB', 'Boost that is switched on after the setting', { from: 0, to: 24 }))
})

const Corner = component('FilterCorner', 'A corner of the band.', {
  cornerHz: hertz('Corner frequency'),
  order: Type.Optional(Type.Integer({ description: 'Order, 6 dB an octave each', minimum: 1, maximum: 8 }))
})

const Acoustic = component('AcousticFacts', 'What the response of the enclosure showed.', {
  tuningHz: Type.Optional(hertz('Tuning of a port or passive radiator')),
  excursionLimitHz: Type.Optional(hertz('Below this the cone passes its limit at the target power')),
  mainsLowHz: Type.Optional(hertz('Lower end of the front loudspeakers'))
})

const Filters = component('SignalFilters', 'The corners wanted, or what they can be derived from.', {
  lowPass: Type.Optional(ref(Corner)),
  highPass: Type.Optional(ref(Corner, 'Protective high-pass')),
  acoustic: Type.Optional(ref(Acoustic))
})

export const TurnOn = component('TurnOnRequest', 'How the amplifier can be switched on.', {
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

export const inputsInParallel = Type.Optional(
  Type.Integer({ description: 'Amplifier inputs on one line output', minimum: 1, maximum: 16 })
)
export const converterLineV = Type.Optional(volts('Line level a line-output converter is set to'))

const Body = component('SignalSetupRequest', 'The way from the music source to one amplifier output.', {
  source: Type.Optional(ref(Source)),
  amplifier: ref(Amplifier),
  driversPowerW: Type.Optional(
    quantity('W', 'Sum of the continuous ratings of the drivers on this output', { from: 0.1, to: 100_000 })
  ),
  inputsInParallel,
  converterLineV,
  tone: Type.Optional(ref(Tone)),
  filters: Type.Optional(ref(Filters)),
  turnOn: Type.Optional(ref(TurnOn)),
  systemVoltageV: Type.Optional(quantity('V', 'Nominal voltage of the vehicle, 12, 24 or 48', { from: 6, to: 58 }))
})

export const setUpSignal = defineOperation({
  path: '/v1/signal/setup',
  operationId: 'setUpSignal',
  tag: 'Signal',
  summary: 'From the music source to a gain that is set',
  description:
    'Level at the amplifier’s input from a line, loudspeaker or digital output, the meter reading to set the gain to, the corners of the band, how the amplifier is turned on, and the first switching-on step by step.',
  body: Body,
  result: SignalSetupResultBody,
  compute,
  examples: {
    lineLevel: {
      summary: 'A 4 V line output, 640 W into 2.5 Ω, a tone 12 dB below full scale and 4 dB for quiet recordings',
      request: {
        source: { kind: 'line-level', levelV: 4 },
        amplifier: { powerW: 640, loadOhm: 2.5, input: { lowestV: 0.2, highestV: 6, inputOhm: 20_000 } },
        driversPowerW: 600,
        tone: { levelDb: -12, quietRecordingDb: 4 },
        filters: { acoustic: { excursionLimitHz: 28, mainsLowHz: 70 } },
        turnOn: { remoteOutput: true, loadsA: [0.02, 0.02] }
      }
    },
    factorySource: {
      summary: "The vehicle's own source by its loudspeaker output, a bridged pair, four amplifiers to turn on",
      request: {
        source: { kind: 'speaker-level', powerW: 20, loadOhm: 4, factory: true },
        amplifier: { powerW: 600, loadOhm: 4, bridged: true },
        filters: { acoustic: { tuningHz: 36 } },
        turnOn: { remoteOutput: true, loadsA: [0.05, 0.05, 0.05, 0.05] }
      }
    }
  }
})
