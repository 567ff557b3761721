/** What a person should know before cutting a port. */
import type { PortSizing } from '../../../contract/ports/port-sizing.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { allSaidOf, listed, saidOf, say } from '../../say.ts'
import { airSpeedLevel } from '../air-speed.ts'
import { portSizingDefaults } from './defaults.ts'
import type { PortSetting } from './port-design.ts'

export function portCautions(result: PortSizing, setting: PortSetting): readonly Caution[] {
  return [
    ...fitCautions(result),
    ...speedCautions(result),
    ...resonanceCautions(result, setting),
    ...modelCautions(result, setting)
  ]
}

function fitCautions({ fits, recommended, waysOut }: PortSizing): readonly Caution[] {
  if (fits) return []
  const ways = waysOut.map(way => saidOf(way, 'detail'))
  const [why = ''] = allSaidOf(recommended, 'why')
  const message = say('port-does-not-fit', {
    name: saidOf(recommended, 'name'),
    why,
    ways: ways.length === 0 ? say('port-way.none') : listed(ways, 'list.clauses')
  })
  return [caution('port-does-not-fit', message, { at: 'port' })]
}

function speedCautions({ demand, recommended }: PortSizing): readonly Caution[] {
  if (demand === undefined) {
    const message = say('port-speed-unchecked')
    return [caution('port-speed-unchecked', message)]
  }
  const { airSpeedMPerS: speed = 0 } = recommended
  const kept = speed <= demand.limitMPerS * (1 + 1e-9)
  const level = airSpeedLevel(speed)
  // A note says no more than the limit that was kept already does.
  if (kept && (level === undefined || level === 'note')) return []
  const judged = kept ? say('judged.within') : say('judged.above')
  const message = say('port-air-speed.sizing', {
    speedMPerS: toDigits(speed),
    judged,
    limitMPerS: toDigits(demand.limitMPerS)
  })
  return [
    caution('port-air-speed', message, {
      figures: { airSpeedMPerS: speed, limitMPerS: demand.limitMPerS },
      level: level === 'stop' ? 'stop' : 'care'
    })
  ]
}

function resonanceCautions({ recommended }: PortSizing, { lowPassHz }: PortSetting): readonly Caution[] {
  const { pipeResonanceHz: resonance } = recommended
  if (resonance >= portSizingDefaults.resonanceClear.value * lowPassHz) return []
  const message = say('port-pipe-resonance', {
    resonanceHz: toDigits(resonance),
    cornerHz: toDigits(resonance / portSizingDefaults.resonanceClear.value)
  })
  return [caution('port-pipe-resonance', message, { figures: { resonanceHz: resonance, lowPassHz } })]
}

function modelCautions({ recommended }: PortSizing, { volumeM3, walls }: PortSetting): readonly Caution[] {
  const cautions: Caution[] = []
  const { totalAreaM2, effectiveLengthM, tuningHz, waveguideTuningHz, otherEnds, kind } = recommended
  if ((totalAreaM2 * effectiveLengthM) / volumeM3 > portSizingDefaults.largePortShare.value) {
    const message = say('port-large-for-box', {
      waveguideTuningHz: toDigits(waveguideTuningHz),
      tuningHz: toDigits(tuningHz)
    })
    cautions.push(caution('port-large-for-box', message))
  }
  if (kind === 'slot' && walls !== 'own') {
    const message = say('slot-end-uncertain', {
      tuningHz: toDigits(otherEnds.tuningHz),
      otherTuningHz: toDigits(tuningHz)
    })
    cautions.push(caution('slot-end-uncertain', message))
  }
  return cautions
}
