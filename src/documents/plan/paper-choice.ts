/** Other boxes for the same parts, and what would make one fit: a sentence each. */
import { goalMeanings } from '../../contract/systems/words.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { figure, lengthText, opened, type PaperUnits, volumeText } from '../draw/number-text.ts'

export const otherBoxes = ({ choice }: Pick<SystemPlan, 'choice'>, paper: PaperUnits): readonly string[] =>
  (choice?.alternatives ?? []).map(({ goal, figures, gains, givesUp }) => {
    const { kind, netVolumeM3, tuningHz } = figures
    const tuned = tuningHz === undefined ? '' : `, tuned to ${figure(tuningHz, 0)} Hz`
    const better = gains.length === 0 ? '' : ` Better: ${gains.join(', ')}.`
    const worse = givesUp.length === 0 ? '' : ` Worse: ${givesUp.join(', ')}.`
    return `${opened(goalMeanings[goal])}: ${kind}, ${volumeText(netVolumeM3, paper)}${tuned}.${better}${worse}`
  })

export function waysToFit({ waysOut }: Pick<SystemPlan, 'waysOut'>, paper: PaperUnits): readonly string[] {
  if (waysOut === undefined) return []
  const { changes, largestDriver: largest } = waysOut
  const driver =
    largest === undefined
      ? []
      : [
          `The largest usual driver that this space takes: ${lengthText(largest.nominalM, paper)}, flange ${lengthText(largest.flangeDiameterM, paper)}, ${lengthText(largest.mountingDepthM, paper)} deep.`
        ]
  return [...changes.map(({ change, builds }) => `${change} ${builds}.`), ...driver]
}
