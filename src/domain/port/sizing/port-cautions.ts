/** What a person should know before cutting a port. */

import type { PortSizing } from '../../../contract/ports/port-sizing.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
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
  const ways = waysOut.map(({ detail }) => detail).join('; ')
  const message = `No port of the kind asked for keeps all limits; nearest: ${recommended.name}, ${recommended.why[0] ?? ''}. What would: ${ways || 'nothing found'}.`
  return [caution('port-does-not-fit', message, { at: 'port' })]
}

function speedCautions({ demand, recommended }: PortSizing): readonly Caution[] {
  if (demand === undefined) {
    const message = 'Nothing tells how much air the port carries: its speed was not checked.'
    return [caution('port-speed-unchecked', message)]
  }
  const { airSpeedMPerS: speed = 0 } = recommended
  const kept = speed <= demand.limitMPerS * (1 + 1e-9)
  const level = airSpeedLevel(speed)
  // A note says no more than the limit that was kept already does.
  if (kept && (level === undefined || level === 'note')) return []
  const judged = kept ? 'within' : 'above'
  const message = `${inDigits(speed)} m/s peak in the port at full drive, ${judged} the ${inDigits(demand.limitMPerS)} m/s asked for.`
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
  const message = `The port also resonates at ${inDigits(resonance)} Hz, like an organ pipe: a low-pass of ${inDigits(resonance / portSizingDefaults.resonanceClear.value)} Hz or below keeps it quiet, a shorter port moves it up.`
  return [caution('port-pipe-resonance', message, { figures: { resonanceHz: resonance, lowPassHz } })]
}

function modelCautions({ recommended }: PortSizing, { volumeM3, walls }: PortSetting): readonly Caution[] {
  const cautions: Caution[] = []
  const { totalAreaM2, effectiveLengthM, tuningHz, waveguideTuningHz, otherEnds, kind } = recommended
  if ((totalAreaM2 * effectiveLengthM) / volumeM3 > portSizingDefaults.largePortShare.value) {
    const message = `The port is large against the box: as a waveguide it tunes to ${inDigits(waveguideTuningHz)} Hz instead of ${inDigits(tuningHz)} Hz.`
    cautions.push(caution('port-large-for-box', message))
  }
  if (kind === 'slot' && walls !== 'own') {
    const message = `The exact length of a slot beside a wall is uncertain: by two methods the same length tunes to ${inDigits(otherEnds.tuningHz)} or ${inDigits(tuningHz)} Hz. Cut it long, measure, trim.`
    cautions.push(caution('slot-end-uncertain', message))
  }
  return cautions
}
