/** What a cable choice says of its drop: what is lost in all, what of it was assumed, and the size that just misses. */
import type { CableChoice, ChosenCable } from '../../../contract/supply/supply-cables.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { supplyJudgement } from '../source/supply-judgement.ts'
import type { Circuit } from './cable-circuit.ts'

/** What would settle a drop whose body was assumed. */
function bodyRemedy(bodyV: number, assumedOhm: number): string {
  if (assumedOhm === 0) return ''
  return ` ${bodyV.toFixed(2)} V of it is the body, assumed at ${inDigits(assumedOhm * 1000)} mΩ: measure from ground point to negative post and plan with that, or run a return cable.`
}

/** The body counts into a stop only where its resistance was given. */
function totalDrop(cable: ChosenCable, { heavyA, assumedOhm, criteria, task }: Circuit): readonly Caution[] {
  const { hotTotalDropPercent: percent, hotTotalDropV, conductorC } = cable
  const { totalDropCarePercent, totalDropStopPercent } = supplyJudgement
  if (percent <= totalDropCarePercent) return []
  const fullSineA = cable.currentA ?? task.currentA
  const bodyV = fullSineA * assumedOhm
  const givenPercent = (100 * (hotTotalDropV - bodyV)) / criteria.systemVoltageV
  const heavyPercent = (percent * heavyA) / fullSineA
  const given = givenPercent > totalDropStopPercent
  return [
    caution(
      'total-drop',
      `The whole run, fuse, joints and return with it, loses ${hotTotalDropV.toFixed(2)} V (${inDigits(percent, 2)} %) at full level with the conductor at ${conductorC.toFixed(0)} °C, and ${inDigits(heavyPercent, 2)} % with dense bass.${bodyRemedy(bodyV, assumedOhm)}`,
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
          caution(
            'conductor-hot',
            `At a sustained full sine the conductor is estimated at ${conductorC.toFixed(0)} °C, above its ${insulationC} °C insulation.`,
            { figures: { conductorC, insulationC } }
          )
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
  if (missPercent > supplyJudgement.nearMissPercent) return []
  const lengthM = (task.conductorLengthM * below.areaM2) / least
  return [
    caution(
      'near-miss',
      `${below.designation} misses the drop limit by ${inDigits(missPercent)} %: ${below.dropV.toFixed(3)} V for ${task.dropLimitV.toFixed(3)} V. It would do with ${lengthM.toFixed(2)} m of conductor out and back instead of ${task.conductorLengthM.toFixed(2)} m.`,
      { at: 'sizes', figures: { missPercent, dropV: below.dropV, dropLimitV: task.dropLimitV } }
    )
  ]
}
