/** Other boxes for the same parts, and what would make one fit: a sentence each. */

import { told } from '../../domain/say.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { figure, lengthText, opened, type Reader, volumeText } from '../draw/number-text.ts'

export const otherBoxes = ({ choice }: Pick<SystemPlan, 'choice'>, paper: Reader): readonly string[] =>
  (choice?.alternatives ?? []).map(({ goal, figures, gains, givesUp }) => {
    const { kind, netVolumeM3, tuningHz } = figures
    const { language } = paper
    const tuned = (hz: number) => told(language, 'paper.other.tuned', { frequency: figure(hz, 0, paper) })
    return told(language, 'paper.other', {
      goal: opened(told(language, `paper.goal.${goal}`)),
      kind: told(language, `paper.kind.${kind}`),
      volume: volumeText(netVolumeM3, paper),
      tuned: tuningHz === undefined ? '' : tuned(tuningHz),
      better: gains.length === 0 ? '' : told(language, 'paper.other.better', { all: gains.join(', ') }),
      worse: givesUp.length === 0 ? '' : told(language, 'paper.other.worse', { all: givesUp.join(', ') })
    })
  })

export function waysToFit({ waysOut }: Pick<SystemPlan, 'waysOut'>, paper: Reader): readonly string[] {
  if (waysOut === undefined) return []
  const { changes, largestDriver: largest } = waysOut
  const driver =
    largest === undefined
      ? []
      : [
          told(paper.language, 'paper.largest-driver', {
            size: lengthText(largest.nominalM, paper),
            flange: lengthText(largest.flangeDiameterM, paper),
            depth: lengthText(largest.mountingDepthM, paper)
          })
        ]
  return [...changes.map(({ change, builds }) => `${change} ${builds}.`), ...driver]
}
