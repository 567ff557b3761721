/** The voltage a music source delivers, and what the way to the amplifier makes of it. */

import type { InputLevel } from '../../contract/signals/signal-result.ts'
import type {
  AmplifierInput,
  DigitalSource,
  LineLevelSource,
  SpeakerLevelSource
} from '../../contract/signals/signal-setup.ts'
import { targetVoltage } from '../amplifier/formulas.ts'
import type { Assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { say } from '../say.ts'
import { signalDefaults } from './defaults.ts'
export type SignalSource = LineLevelSource | SpeakerLevelSource | DigitalSource

/**
 * Level lost when an output resistance drives an input.
 *
 *   20·lg(Zin/(Zin + Zout))
 *
 * @source derived: voltage divider
 * @check  600 Ω into 10 kΩ → −0.506 dB
 */
export function loadingDb(outputOhm: number, inputOhm: number): number {
  return 20 * Math.log10(inputOhm / (inputOhm + outputOhm))
}

/**
 * Ratio of a line-output converter.
 *
 *   20·lg(Vline/Vspeaker)
 *
 * @source definition of the decibel
 * @check  20 W in 4 Ω (8.944 V) to 2 V → −13.01 dB
 */
export function converterDb(speakerV: number, lineV: number): number {
  return 20 * Math.log10(lineV / speakerV)
}

function speakerVoltage({ levelV, powerW, loadOhm }: SpeakerLevelSource): number {
  const byPower = powerW !== undefined && loadOhm !== undefined
  if (levelV !== undefined && (powerW !== undefined || loadOhm !== undefined)) {
    throw new DesignError('conflicting-input', {
      field: 'source.levelV',
      detail: say('refused.give-the-level-of-the-loudspeaker')
    })
  }
  if (levelV !== undefined) return levelV
  if (byPower) return targetVoltage.of({ P: powerW, Z: loadOhm })
  throw new DesignError('missing-input', {
    field: powerW === undefined ? 'source.levelV' : 'source.loadOhm',
    detail: say('refused.a-loudspeaker-output-needs-levelv-or')
  })
}

function lineInto(
  sourceV: number,
  source: LineLevelSource | DigitalSource,
  input: AmplifierInput,
  inputs: number,
  assumed: Assumptions
): InputLevel {
  const { outputOhm: output, inputOhm: into } = signalDefaults
  const outputOhm = assumed.take(source.outputOhm, 'source.outputOhm', output)
  const inputOhm = assumed.take(input.inputOhm, 'amplifier.input.inputOhm', into) / inputs
  const loss = loadingDb(outputOhm, inputOhm)
  return {
    connection: source.kind === 'digital' ? 'digital-converter' : 'line',
    why:
      source.kind === 'digital'
        ? 'A digital output needs a converter; its line output feeds the amplifier.'
        : 'A line output feeds the line input directly.',
    sourceV,
    levelV: sourceV * 10 ** (loss / 20),
    loadingDb: loss,
    outputOhm,
    inputOhm
  }
}

function speakerInto(
  sourceV: number,
  input: AmplifierInput,
  lineV: number | undefined,
  assumed: Assumptions
): InputLevel {
  if (input.speakerLevelV !== undefined && sourceV <= input.speakerLevelV) {
    const why = `The speaker-level input takes ${input.speakerLevelV} V, the source gives ${sourceV.toPrecision(3)} V.`
    return { connection: 'speaker-level-input', why, sourceV, levelV: sourceV }
  }
  const usual = signalDefaults.converterLineV
  const inRange = Math.min(Math.max(usual.value, input.lowestV ?? 0), input.highestV ?? Number.POSITIVE_INFINITY)
  const wanted = assumed.work(lineV, 'converterLineV', inRange, usual)
  const levelV = Math.min(wanted, sourceV)
  const why =
    input.speakerLevelV === undefined
      ? 'The amplifier has no speaker-level input, so the level is brought down to a line level.'
      : `The source gives ${sourceV.toPrecision(3)} V, more than the ${input.speakerLevelV} V of the speaker-level input.`
  return { connection: 'line-output-converter', why, sourceV, levelV, converterDb: converterDb(sourceV, levelV) }
}

interface InputPath {
  readonly input?: AmplifierInput
  readonly inputsInParallel?: number
  /** Line level a line-output converter is set to [V]. */
  readonly converterLineV?: number
}

/**
 * Level at the amplifier's input at the source's full output.
 *
 * @throws DesignError `missing-input`, `conflicting-input`
 */
export function inputLevel(source: SignalSource, path: InputPath, assumed: Assumptions): InputLevel {
  const { input = {}, converterLineV } = path
  if (source.kind === 'speaker-level') return speakerInto(speakerVoltage(source), input, converterLineV, assumed)
  const { inputsInParallel, digitalLineV } = signalDefaults
  const inputs = assumed.take(path.inputsInParallel, 'inputsInParallel', inputsInParallel)
  const sourceV =
    source.kind === 'line-level' ? source.levelV : assumed.take(source.levelV, 'source.levelV', digitalLineV)
  return lineInto(sourceV, source, input, inputs, assumed)
}
