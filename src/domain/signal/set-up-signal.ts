/** The way from the music source to the amplifier: level, gain, filters, turn-on, and the first switching-on. */

import type { Basis } from '../../contract/field/envelope.ts'
import type { InputLevel, SignalSetup, SignalStage, TurnOn } from '../../contract/signals/signal-result.ts'
import type { SignalSetupRequest } from '../../contract/signals/signal-setup.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import { ratingFault, requireContinuous } from '../amplifier/power-rating.ts'
import { touchVoltageCautions } from '../amplifier/touch-voltage.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import type { Caution } from '../caution.ts'
import type { Outcome } from '../outcome.ts'
import { present } from '../present.ts'
import { signalSteps } from './commissioning.ts'
import { crossover } from './crossover.ts'
import { signalDefaults } from './defaults.ts'
import { type GainSetting, gainSetting } from './gain-setting.ts'
import { signalBasis } from './signal-basis.ts'
import { gainCautions, sourceCautions, turnOnCautions } from './signal-cautions.ts'
import { inputLevel, type SignalSource } from './source-level.ts'
import { turnOn } from './turn-on.ts'

const sourceNames: Readonly<Record<SignalSource['kind'], string>> = {
  'line-level': 'line output of the source',
  'speaker-level': 'loudspeaker output of the source',
  digital: 'digital output of the source and its converter, at full scale'
}

const inputNames: Readonly<Record<InputLevel['connection'], string>> = {
  line: 'line input of the amplifier',
  'digital-converter': 'line input of the amplifier',
  'speaker-level-input': 'speaker-level input of the amplifier',
  'line-output-converter': 'line-output converter and line input of the amplifier'
}

function pathOf(source: SignalSource, input: InputLevel, gain: GainSetting): readonly SignalStage[] {
  return [
    { stage: sourceNames[source.kind], levelV: input.sourceV },
    { stage: inputNames[input.connection], levelV: input.levelV },
    { stage: 'loudspeaker terminals of the amplifier', levelV: gain.targetVoltageV }
  ]
}

function bridgeTiedOf(source: SignalSource | undefined, assumed: Assumptions): boolean {
  if (source?.kind !== 'speaker-level') return false
  return assumed.take<boolean>(source.bridgeTied, 'source.bridgeTied', signalDefaults.bridgeTied)
}

function inputOf(request: SignalSetupRequest, assumed: Assumptions): InputLevel | undefined {
  const { source, amplifier, inputsInParallel, converterLineV } = request
  if (source === undefined) return undefined
  return inputLevel(source, present({ input: amplifier.input, inputsInParallel, converterLineV }), assumed)
}

function sourcesOf(on: TurnOn | undefined, basis: readonly Basis[]): readonly SourceId[] {
  return [
    'gain-practice',
    'signal-practice',
    ...(on === undefined ? [] : (['iso-10487'] as const)),
    ...(on?.relay === undefined ? [] : (['din-72552'] as const)),
    ...basis.map(({ source }) => source)
  ]
}

function cautionsOf(
  { source, amplifier }: SignalSetupRequest,
  { input, gain, filters, turnOn: on }: SignalSetup,
  bridgeTied: boolean
): readonly Caution[] {
  return [
    ...(source === undefined || input === undefined
      ? []
      : sourceCautions(source, input, amplifier.input ?? {}, bridgeTied)),
    ...gainCautions({ ...gain, crossover: filters }),
    ...touchVoltageCautions(gain.targetVoltageV),
    ...turnOnCautions(on)
  ]
}

/**
 * Target voltage, meter reading, input level, filters, turn-on and commissioning of one amplifier output.
 *
 * @throws DesignError `undefined-rating`, `missing-input`, `conflicting-input`
 * @validity Levels are RMS of a sine at the source's full output.
 * @source derived from Ohm's law; allowance, defaults and the order of work common practice, no source
 * @check  640 W, 2.5 Ω, −12 dB tone, 4 dB for quiet recordings → 40.00 V target, 15.92 V on the meter
 */
export function setUpSignal(request: SignalSetupRequest): Outcome<SignalSetup> {
  const assumed = assumptions()
  const { source, amplifier } = request
  requireContinuous(ratingFault('amplifier.ratingKind', amplifier.ratingKind ?? 'rms'))
  assumed.take(amplifier.ratingKind, 'amplifier.ratingKind', signalDefaults.ratingKind)
  const bridgeTied = bridgeTiedOf(source, assumed)
  const input = inputOf(request, assumed)
  const filters = crossover(request.filters ?? {}, assumed)
  const gain = gainSetting(request, filters, input, assumed)
  const systemVoltageV = assumed.take(request.systemVoltageV, 'systemVoltageV', signalDefaults.nominalVoltageV)
  const { vehicleVoltageV = systemVoltageV } = request
  const volts = { amplifierV: systemVoltageV, vehicleV: vehicleVoltageV }
  const on = request.turnOn === undefined ? undefined : turnOn(request.turnOn, volts, assumed)
  const switched = on === undefined ? {} : { turnOn: on }
  const bridged = gain.channelMeterVoltageV !== undefined
  const result: SignalSetup = {
    ...(source === undefined || input === undefined ? {} : { path: pathOf(source, input, gain), input }),
    gain,
    filters,
    ...switched,
    steps: signalSteps({ ...gain, bridged, crossover: filters, systemVoltageV, vehicleVoltageV, ...switched })
  }
  const basis = signalBasis(gain, input)
  return {
    result,
    cautions: cautionsOf(request, result, bridgeTied),
    assumed: assumed.list,
    sources: sourcesOf(on, basis),
    basis
  }
}
