/** What to mind about a signal path, its gain and its turn-on. */
import type { AmplifierInput } from '../../contract/signals/signal-setup.ts'
import { type Caution, caution } from '../caution.ts'
import { inDigits } from '../digits.ts'
import { present } from '../present.ts'
import type { Crossover } from './crossover.ts'
import type { InputLevel, SignalSource } from './source-level.ts'
import type { TurnOn } from './turn-on.ts'

function bridgeCaution(source: SignalSource, level: InputLevel, input: AmplifierInput, bridgeTied: boolean) {
  if (source.kind !== 'speaker-level' || !bridgeTied) return []
  const direct = level.connection === 'speaker-level-input'
  const danger = direct && input.differential === false
  const remedy = direct
    ? danger
      ? 'This input ties its minus to ground and would short the source: use an isolated line-output converter.'
      : 'Connect both wires of each output to a differential input, never one of them to ground.'
    : 'The line-output converter must be isolated or differential at its input.'
  return [
    caution('bridge-tied-source', `Both wires of the loudspeaker output rest at half the supply. ${remedy}`, {
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
        `${inDigits(levelV)} V reach the input, ${inDigits(lowestV)} V are needed: full gain gives ${Math.round(100 * share)} % of the power, with more noise.`,
        { at, figures: { ...figures, powerSharePercent: 100 * share } }
      )
    ]
  }
  if (highestV !== undefined && levelV > highestV) {
    const excessDb = 20 * Math.log10(levelV / highestV)
    return [
      caution(
        'input-too-high',
        `${inDigits(levelV)} V reach an input for at most ${inDigits(highestV)} V: it may clip before the gain control; attenuate by ${inDigits(excessDb)} dB.`,
        { at, figures: { ...figures, excessDb } }
      )
    ]
  }
  return []
}

/** The vehicle's own wires and connectors carry dangers of their own. */
const factoryWiringCautions: readonly Caution[] = [
  caution(
    'airbag-looms',
    'Loudspeaker wires are often picked up in doors and pillars, beside airbag and belt-tensioner looms: identify every wire by the vehicle maker’s plan, touch no yellow connector, and leave the rest to a qualified workshop.'
  ),
  caution(
    'connector-pins',
    'Most, not all, source connectors follow ISO 10487 (B1 to B8 loudspeakers, A5 switched output; some makes exchange A4 and A7): measure before connecting.'
  )
]

function speakerInputCaution({ sourceV }: InputLevel, { speakerLevelV }: AmplifierInput): readonly Caution[] {
  if (speakerLevelV === undefined || sourceV <= speakerLevelV) return []
  return [
    caution(
      'input-too-high',
      `${inDigits(sourceV)} V are more than the ${inDigits(speakerLevelV)} V of the speaker-level input: a line-output converter stands between.`,
      { at: 'source', level: 'note', figures: { sourceV, speakerLevelV } }
    )
  ]
}

const factoryProcessing = caution(
  'factory-processing',
  'The vehicle’s own source may equalise, delay and cut bass as the volume rises: measure its response at the volume in use before trusting filters and gain.',
  { at: 'source.factory' }
)

const differentialOutput = caution(
  'differential-output',
  'A differential output on a single-ended input: leave its minus open or use an isolator, as the maker says; never tie it to ground.',
  { at: 'source.differential' }
)

const groundLoop = caution(
  'ground-loop',
  'If you hear alternator whine: first one ground point for source and amplifier, then a differential input, then an isolator. Never take off a safety or vehicle ground.',
  { at: 'amplifier.input' }
)

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

const signalSensing = caution(
  'signal-sensing',
  'Signal sensing may cut the first bars, may not switch off, and may drop out when a start-stop system mutes the source: measure the parked current after a night.'
)

const accessoryTurnOn = caution(
  'accessory-turn-on',
  'An accessory feed turns the amplifier on with the ignition, music or not; tap it behind a fuse of its own and never at an airbag, engine or brake circuit.'
)

function relayCoilCaution(coilCurrentA: number, limitA: number): Caution {
  const milli = (currentA: number) => Math.round(currentA * 1000)
  return caution(
    'relay-coil-load',
    `The relay coil draws ${milli(coilCurrentA)} mA, more than the ${milli(limitA)} mA of the switched output: take a relay with a coil of higher resistance or a transistor switch.`,
    { at: 'turnOn.relayCoilOhm', figures: { coilCurrentA, limitA } }
  )
}

export function turnOnCautions(turnOn: TurnOn | undefined): readonly Caution[] {
  if (turnOn === undefined) return []
  const { method, relay, limitA, loadA, why } = turnOn
  const cautions: Caution[] = []
  if (method === 'relay' && limitA !== undefined) {
    cautions.push(caution('turn-on-overload', why, { at: 'turnOn.loadsA', figures: { loadA, limitA } }))
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
  return caution(
    'allowance-clips',
    `An allowance of ${inDigits(quietRecordingDb)} dB for quiet recordings clips loud ones: average power, and the heat in the coils, can rise by up to ${inDigits(quietRecordingDb)} dB.`,
    { at: 'tone.quietRecordingDb', figures: { quietRecordingDb } }
  )
}

function boostCaution(boostDb: number): Caution {
  return caution(
    'boost-after-gain',
    `The reading leaves ${inDigits(boostDb)} dB for a boost that is switched on later; any further boost needs the gain lower by as much.`,
    { at: 'tone.boostDb', figures: { boostDb } }
  )
}

function toneCaution(toneHz: number, lowPassHz: number): Caution {
  return caution(
    'tone-outside-band',
    `A tone of ${inDigits(toneHz)} Hz lies outside the band of the filters: switch them off for the setting, or the gain comes out too high.`,
    { at: 'tone.frequencyHz', figures: { toneHz, lowPassHz } }
  )
}

const noHighPass = caution(
  'no-protective-high-pass',
  'Nothing says below which frequency the cone needs protection: give the tuning or the excursion limit of the response. A vented box without a high-pass lets the cone run away below its tuning.',
  { at: 'filters.acoustic' }
)

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
