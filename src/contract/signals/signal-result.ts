/** Schemas of what a signal set-up answers. */

import Type, { type Static } from 'typebox'
import { gainTargetFields, meterFields } from '../amplifiers/gain.ts'
import { cautionCodes } from '../cautions/catalogue.ts'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import type { SaidFields } from '../sentences/form/template.ts'
import { signalStepIds } from './words.ts'

const text = (description: string) => Type.String({ description })

const Stage = component('SignalStage', 'One place on the way of the signal.', {
  stage: text('The place'),
  levelV: quantity('V', 'RMS at full level')
})
export interface SignalStage extends Si<Static<typeof Stage>> {}

export const InputLevel = component('SignalInputLevel', "What reaches the amplifier's input.", {
  connection: choice('How the source is connected', [
    'line',
    'speaker-level-input',
    'line-output-converter',
    'digital-converter'
  ]),
  why: text('Why this way'),
  sourceV: quantity('V', 'At the output of the source'),
  levelV: quantity('V', "At the amplifier's input"),
  outputOhm: Type.Optional(quantity('Ω', 'Output resistance it comes from')),
  inputOhm: Type.Optional(quantity('Ω', 'Resistance of all inputs on the line')),
  loadingDb: Type.Optional(quantity('dB', 'Loss into the inputs')),
  converterDb: Type.Optional(quantity('dB', 'What the line-output converter takes away'))
})
export interface InputLevel extends Si<Static<typeof InputLevel>> {}

const Gain = component('GainSetting', 'What the meter shall read.', {
  ...gainTargetFields,
  toneHz: quantity('Hz', 'Frequency of the test tone'),
  ...meterFields,
  boostDb: quantity('dB', 'Room left for a boost'),
  filterLossDb: quantity('dB', 'What the filters take from the tone if they cannot be switched off, as Butterworth'),
  meterVoltageWithFiltersV: quantity('V', 'Reading with those filters on'),
  voltageGainDb: Type.Optional(quantity('dB', 'Voltage gain from the input to the target'))
})

export const Corner = component('FilterCornerSet', 'A corner of the band and its reason.', {
  cornerHz: quantity('Hz', 'Corner frequency'),
  order: Type.Integer({ description: 'Order, 6 dB an octave each' }),
  why: text('Why this corner')
})
export interface Corner extends Si<Static<typeof Corner>> {}

const Filters = component('SignalFiltersSet', 'The band of the subwoofer.', {
  lowPass: ref(Corner),
  highPass: Type.Optional(ref(Corner, 'Protective high-pass; absent when nothing says where it belongs'))
})
export interface Crossover extends Si<Static<typeof Filters>> {}

export const RelayTerminal = component('RelayTerminal', 'One terminal of the relay.', {
  terminal: choice('Terminal number of DIN 72552', ['30', '85', '86', '87']),
  to: text('Where it goes')
})
export interface RelayTerminal extends Si<Static<typeof RelayTerminal>> {}

const Relay = component('TurnOnRelay', 'The relay that turns the amplifiers on.', {
  coilCurrentA: quantity('A', 'Current of the coil'),
  fuseA: quantity('A', 'Fuse of its feed'),
  terminals: Type.Array(ref(RelayTerminal), { description: 'How it is wired' })
})

export const TurnOn = component('TurnOn', 'How the amplifiers are turned on.', {
  method: choice('The way', ['remote-line', 'relay', 'signal-sensing', 'accessory-relay']),
  why: text('Why this way'),
  loadA: quantity('A', 'Turn-on current of all inputs'),
  limitA: Type.Optional(quantity('A', 'What the switched output may deliver')),
  relay: Type.Optional(ref(Relay))
})
export interface TurnOn extends Si<Static<typeof TurnOn>> {}

const CommissioningStepBody = component('SignalStep', 'One step of the first switching-on.', {
  id: choice('Which step', signalStepIds),
  text: text('What to do'),
  passIf: text('What must be seen before the next step'),
  cautions: Type.Array(choice('Code of a caution', cautionCodes), {
    description: 'What to mind; /v1/cautions documents each'
  })
})
export interface SignalStep extends Si<Static<typeof CommissioningStepBody>> {
  /** The sentences behind the texts, for another language. */
  readonly said?: SaidFields
}

export const SignalSetupResultBody = component(
  'SignalSetupResult',
  'The way of the signal, and the first switching-on.',
  {
    path: Type.Optional(
      Type.Array(ref(Stage), { description: 'Levels from source to loudspeaker; absent without a source' })
    ),
    input: Type.Optional(ref(InputLevel, 'Absent without a source')),
    gain: ref(Gain),
    filters: ref(Filters),
    turnOn: Type.Optional(ref(TurnOn, 'Absent when not asked for')),
    steps: Type.Array(ref(CommissioningStepBody), { description: 'In this order' })
  }
)
export interface SignalSetup extends Si<Static<typeof SignalSetupResultBody>> {}
