/** What to mind about a signal path, its gain and its turn-on. */

import type { Crossover, InputLevel, TurnOn } from '../../contract/signals/signal-result.ts'
import type { AmplifierInput } from '../../contract/signals/signal-setup.ts'
import { type Caution, caution } from '../caution.ts'
import { toDigits } from '../digits.ts'
import { present } from '../present.ts'
import { say } from '../say.ts'
import type { SignalSource } from './source-level.ts'

function bridgeCaution(source: SignalSource, level: InputLevel, input: AmplifierInput, bridgeTied: boolean) {
  if (source.kind !== 'speaker-level' || !bridgeTied) return []
  const direct = level.connection === 'speaker-level-input'
  const danger = direct && input.differential === false
  const remedy = direct
    ? danger
      ? say('bridge-tied-source.ground')
      : say('bridge-tied-source.differential')
    : say('bridge-tied-source.converter')
  return [
    caution('bridge-tied-source', say('bridge-tied-source', { remedy }), {
      at: 'source.bridgeTied',
      level: danger ? 'stop' : 'care'
    })
  ]
}

function rangeCautions({ levelV, connection }: InputLevel, { lowestV, highestV }: AmplifierInput): readonly Caution[] {
  if (connection === 'speaker-level-input') return []
  const figures = {
    levelV,
    ...present({ lowestV, highestV })
  }
  const at = 'source'
  if (lowestV !== undefined && levelV < lowestV) {
    const share = (levelV / lowestV) ** 2
    return [
      caution(
        'input-too-low',
        say('input-too-low', {
          levelV: toDigits(levelV),
          lowestV: toDigits(lowestV),
          sharePercent: Math.round(100 * share)
        }),
        { at, figures: { ...figures, powerSharePercent: 100 * share } }
      )
    ]
  }
  if (highestV !== undefined && levelV > highestV) {
    const excessDb = 20 * Math.log10(levelV / highestV)
    return [
      caution(
        'input-too-high',
        say('input-too-high', { levelV: toDigits(levelV), highestV: toDigits(highestV), excessDb: toDigits(excessDb) }),
        { at, figures: { ...figures, excessDb } }
      )
    ]
  }
  return []
}

/** The vehicle's own wires and connectors carry dangers of their own. */
const factoryWiringCautions: readonly Caution[] = [
  caution('airbag-looms', say('airbag-looms')),
  caution('connector-pins', say('connector-pins'))
]

function speakerInputCaution({ sourceV }: InputLevel, { speakerLevelV }: AmplifierInput): readonly Caution[] {
  if (speakerLevelV === undefined || sourceV <= speakerLevelV) return []
  return [
    caution(
      'input-too-high',
      say('input-too-high.speaker-level', { sourceV: toDigits(sourceV), speakerLevelV: toDigits(speakerLevelV) }),
      { at: 'source', level: 'note', figures: { sourceV, speakerLevelV } }
    )
  ]
}

const factoryProcessing = caution('factory-processing', say('factory-processing'), { at: 'source.factory' })

const differentialOutput = caution('differential-output', say('differential-output'), { at: 'source.differential' })

const groundLoop = caution('ground-loop', say('ground-loop'), { at: 'amplifier.input' })

export function sourceCautions(
  source: SignalSource,
  level: InputLevel,
  input: AmplifierInput,
  bridgeTied: boolean
): readonly Caution[] {
  const speaker = source.kind === 'speaker-level'
  const unbalanced = source.kind === 'line-level' && source.differential === true && input.differential === false
  return [
    ...bridgeCaution(source, level, input, bridgeTied),
    ...(speaker ? [...factoryWiringCautions, ...speakerInputCaution(level, input)] : []),
    ...(source.factory === true ? [factoryProcessing] : []),
    ...(unbalanced ? [differentialOutput] : []),
    ...(!speaker && input.differential !== true ? [groundLoop] : []),
    ...rangeCautions(level, input)
  ]
}

const signalSensing = caution('signal-sensing', say('signal-sensing'))

const accessoryTurnOn = caution('accessory-turn-on', say('accessory-turn-on'))

const milli = (currentA: number) => Math.round(currentA * 1000)

function relayCoilCaution(coilCurrentA: number, limitA: number): Caution {
  return caution(
    'relay-coil-load',
    say('relay-coil-load', { coilCurrentMa: milli(coilCurrentA), limitMa: milli(limitA) }),
    { at: 'turnOn.relayCoilOhm', figures: { coilCurrentA, limitA } }
  )
}

export function turnOnCautions(turnOn: TurnOn | undefined): readonly Caution[] {
  if (turnOn === undefined) return []
  const { method, relay, limitA, loadA } = turnOn
  const cautions: Caution[] = []
  if (method === 'relay' && limitA !== undefined && loadA > limitA * (1 + 1e-9)) {
    const message = say('turn-on-overload', { loadMa: milli(loadA), limitMa: milli(limitA) })
    cautions.push(caution('turn-on-overload', message, { at: 'turnOn.loadsA', figures: { loadA, limitA } }))
  }
  if (relay !== undefined && limitA !== undefined && relay.coilCurrentA > limitA) {
    cautions.push(relayCoilCaution(relay.coilCurrentA, limitA))
  }
  if (method === 'signal-sensing') cautions.push(signalSensing)
  if (method === 'accessory-relay') cautions.push(accessoryTurnOn)
  return cautions
}

interface GainFacts {
  readonly quietRecordingDb: number
  readonly boostDb: number
  readonly toneHz: number
  readonly crossover: Crossover
}

function allowanceCaution(quietRecordingDb: number): Caution {
  return caution('allowance-clips', say('allowance-clips', { quietRecordingDb: toDigits(quietRecordingDb) }), {
    at: 'tone.quietRecordingDb',
    figures: { quietRecordingDb }
  })
}

function boostCaution(boostDb: number): Caution {
  return caution('boost-after-gain', say('boost-after-gain', { boostDb: toDigits(boostDb) }), {
    at: 'tone.boostDb',
    figures: { boostDb }
  })
}

function toneCaution(toneHz: number, lowPassHz: number): Caution {
  return caution('tone-outside-band', say('tone-outside-band', { toneHz: toDigits(toneHz) }), {
    at: 'tone.frequencyHz',
    figures: { toneHz, lowPassHz }
  })
}

const noHighPass = caution('no-protective-high-pass', say('no-protective-high-pass'), { at: 'filters.acoustic' })

export function gainCautions({ quietRecordingDb, boostDb, toneHz, crossover }: GainFacts): readonly Caution[] {
  const { lowPass, highPass } = crossover
  const outside = toneHz > lowPass.cornerHz || toneHz < (highPass?.cornerHz ?? 0)
  return [
    ...(quietRecordingDb > 0 ? [allowanceCaution(quietRecordingDb)] : []),
    ...(boostDb > 0 ? [boostCaution(boostDb)] : []),
    ...(outside ? [toneCaution(toneHz, lowPass.cornerHz)] : []),
    ...(highPass === undefined ? [noHighPass] : [])
  ]
}
