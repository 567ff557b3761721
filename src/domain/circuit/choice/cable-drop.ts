/** What a cable choice says of its drop: what is lost in all, what of it was assumed, and the size that just misses. */

import type { Said } from '../../../contract/sentences/form/template.ts'
import type { CableChoice, ChosenCable } from '../../../contract/supply/supply-cables.ts'
import { type Caution, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { supplyDefaults } from '../source/defaults.ts'
import type { Circuit } from './cable-circuit.ts'

/** What would settle a drop whose body was assumed. */
function bodyRemedy(bodyV: number, assumedOhm: number): Said | readonly [] {
  if (assumedOhm === 0) return []
  return say('total-drop.body', { bodyV: fixed(bodyV, 2), assumedMohm: toDigits(assumedOhm * 1000) })
}

/** The body counts into a stop only where its resistance was given. */
function totalDrop(cable: ChosenCable, { heavyA, assumedOhm, criteria, task }: Circuit): readonly Caution[] {
  const { hotTotalDropPercent: percent, hotTotalDropV, conductorC } = cable
  const { totalDropCarePercent: care, totalDropStopPercent: stop } = supplyDefaults
  if (percent <= care.value) return []
  const fullSineA = cable.currentA ?? task.currentA
  const bodyV = fullSineA * assumedOhm
  const givenPercent = (100 * (hotTotalDropV - bodyV)) / criteria.systemVoltageV
  const heavyPercent = (percent * heavyA) / fullSineA
  const given = givenPercent > stop.value
  return [
    caution(
      'total-drop',
      say('total-drop.cable', {
        dropV: fixed(hotTotalDropV, 2),
        dropPercent: toDigits(percent, 2),
        conductorC: fixed(conductorC, 0),
        heavyPercent: toDigits(heavyPercent, 2),
        body: bodyRemedy(bodyV, assumedOhm)
      }),
      {
        at: assumedOhm > 0 ? 'return.resistanceOhm' : 'dropLimitPercent',
        level: given ? 'stop' : 'care',
        figures: { dropV: hotTotalDropV, dropPercent: percent, heavyDropPercent: heavyPercent, bodyV, conductorC }
      }
    )
  ]
}

export function dropCautions(cable: ChosenCable, circuit: Circuit): readonly Caution[] {
  const { conductorC } = cable
  const { insulationC } = circuit.task.surroundings
  return [
    ...totalDrop(cable, circuit),
    ...(conductorC > insulationC
      ? [
          caution('conductor-hot', say('conductor-hot.cable', { conductorC: fixed(conductorC, 0), insulationC }), {
            figures: { conductorC, insulationC }
          })
        ]
      : [])
  ]
}

/** A size just below the chosen one that only the drop kept out, by little. */
export function nearMiss({ task }: Circuit, result: CableChoice): readonly Caution[] {
  const chosen = result.candidates.findIndex(({ designation }) => designation === result.cable?.designation)
  const below = result.candidates[chosen - 1]
  const least = result.minimumAreaM2
  if (below?.dropV === undefined || least === undefined || below.fails.some(limit => limit !== 'drop')) return []
  const missPercent = 100 * (least / below.areaM2 - 1)
  if (missPercent > supplyDefaults.nearMissPercent.value) return []
  const lengthM = (task.conductorLengthM * below.areaM2) / least
  return [
    caution(
      'near-miss',
      say('near-miss', {
        designation: below.designation,
        missPercent: toDigits(missPercent),
        dropV: fixed(below.dropV, 3),
        dropLimitV: fixed(task.dropLimitV, 3),
        lengthM: fixed(lengthM, 2),
        conductorLengthM: fixed(task.conductorLengthM, 2)
      }),
      { at: 'sizes', figures: { missPercent, dropV: below.dropV, dropLimitV: task.dropLimitV } }
    )
  ]
}
