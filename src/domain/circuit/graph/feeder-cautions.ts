/** Cautions of a solved feeder, each with the figures that triggered it. */

import type { AmplifierAnswer, Feeder, FeederRequest } from '../../../contract/supply/supply-feeder.ts'
import { type Caution, catalogued, caution, resaid } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { feederAmplifierCautions } from './feeder-amplifier-cautions.ts'
import { atAmplifier, protection, returns, stretchCautions } from './feeder-cable-cautions.ts'
import type { FeederTask } from './solve-feeder.ts'

const named = (amplifier: AmplifierAnswer, index: number) => amplifier.name ?? `amplifier ${index + 1}`

/** The same feeder solved otherwise, where a figure failed. */
export interface Comparisons {
  /** Without the body's resistance where nobody stated it. */
  readonly bare?: Feeder
  /** At dense bass. */
  readonly heavy?: Feeder
}

const SETTLES = say('assumed-body')

function collapse(
  { feasible, collapseMargin: margin, maximumPowerW, sourceVoltageV }: Feeder,
  bare: Feeder | undefined
): readonly Caution[] {
  if (margin === undefined || (margin <= 0 && feasible)) return []
  const most = maximumPowerW === undefined ? [] : say('feed-collapse.most', { maximumPowerW: toDigits(maximumPowerW) })
  if (!feasible) {
    const figures = {
      collapseMargin: margin,
      sourceVoltageV,
      ...present({ maximumPowerW })
    }
    return [
      caution(
        'feed-collapse',
        margin > 0
          ? say('feed-collapse', { askedTimes: toDigits(1 / margin), most })
          : say('feed-collapse.nothing-left'),
        { level: bare?.feasible ? 'care' : 'stop', figures }
      )
    ]
  }
  if (margin >= supplyDefaults.collapseMargin.value) return []
  return [
    caution('collapse-margin', say('collapse-margin', { marginTimes: toDigits(margin) }), {
      figures: { collapseMargin: margin }
    })
  ]
}

function amplifierVoltage(amplifier: AmplifierAnswer, index: number, { bare, heavy }: Comparisons): readonly Caution[] {
  const { voltageV, dropOutV, runs, dropPercent = 0, dropV = 0 } = amplifier
  const at = `amplifiers[${index}]`
  if (voltageV === undefined) return []
  const [without, music] = [bare?.amplifiers[index], heavy?.amplifiers[index]]
  const { totalDropCarePercent: care, totalDropStopPercent: stop } = supplyDefaults
  const name = named(amplifier, index)
  const bass =
    music?.voltageV === undefined
      ? []
      : say('dense-bass.voltage-and-drop', {
          voltageV: toDigits(music.voltageV, 4),
          dropPercent: toDigits(music.dropPercent ?? 0)
        })
  const settles = (fails: boolean) => (without !== undefined && !fails ? SETTLES : [])
  const stays = { low: !(without?.runs ?? false), lossy: (without?.dropPercent ?? dropPercent) > stop.value }
  const low = caution(
    'below-drop-out',
    say('below-drop-out', {
      voltageV: toDigits(voltageV, 4),
      name,
      dropOutV: toDigits(dropOutV, 4),
      bass,
      settles: settles(stays.low)
    }),
    { at, level: stays.low ? 'stop' : 'care', figures: { voltageV, dropOutV } }
  )
  const drop = caution(
    'total-drop',
    say('total-drop', {
      dropV: toDigits(dropV),
      dropPercent: toDigits(dropPercent),
      name,
      bass,
      settles: settles(stays.lossy)
    }),
    { at, level: stays.lossy ? 'stop' : 'care', figures: { dropV, dropPercent } }
  )
  return [...(runs ? [] : [low]), ...(dropPercent > care.value ? [drop] : [])]
}

function noise({ groundNoise }: Feeder): readonly Caution[] {
  if (groundNoise === undefined || groundNoise.levelDb < supplyDefaults.groundNoiseDb.value) return []
  const { noiseV, levelDb } = groundNoise
  return [
    caution('ground-noise', say('ground-noise', { noiseMv: toDigits(noiseV * 1000), levelDb: toDigits(-levelDb) }), {
      at: 'groundNoise',
      figures: { noiseMv: noiseV * 1000, levelDb }
    })
  ]
}

/** A voltage belongs to the level it was worked out at. */
const atLevel =
  ({ level = 'full-sine' }: FeederRequest) =>
  (voltage: Caution): Caution =>
    resaid(voltage, say('at-level', { level: say(`circuit-level.${level}`), message: voltage.said.message }))

export function feederCautions(
  request: FeederRequest,
  feeder: FeederTask,
  result: Feeder,
  compared: Comparisons
): readonly Caution[] {
  const voltages = [
    ...collapse(result, compared.bare),
    ...result.amplifiers.flatMap((amplifier, index) => amplifierVoltage(amplifier, index, compared)),
    ...(result.mode === 'battery-assists' && result.feasible
      ? [
          caution(
            'battery-assists',
            say('battery-assists', {
              currentA: toDigits(feeder.source.limit?.currentA ?? 0),
              totalCurrentA: toDigits(result.totalCurrentA ?? 0),
              nodeVoltageV: toDigits(result.nodeVoltageV ?? 0, 4)
            }),
            {
              at: 'source',
              figures: { totalCurrentA: result.totalCurrentA ?? 0, nodeVoltageV: result.nodeVoltageV ?? 0 }
            }
          )
        ]
      : [])
  ]
  return [
    ...feederAmplifierCautions(request),
    ...voltages.map(atLevel(request)),
    ...result.amplifiers.flatMap((_, index) => atAmplifier(request, feeder, index)),
    ...protection(result, request),
    ...stretchCautions(feeder.trunk, result.trunk?.conductorC, 'trunk'),
    ...feeder.branches.flatMap((stage, index) =>
      stretchCautions(stage, result.amplifiers[index]?.branch?.conductorC, `amplifiers[${index}].branch`)
    ),
    ...returns(request),
    ...noise(result),
    ...(request.systemVoltageV > 36 ? [catalogued('forty-eight-volt', 'systemVoltageV')] : []),
    catalogued('fuse-last'),
    catalogued('licensed-work')
  ]
}
