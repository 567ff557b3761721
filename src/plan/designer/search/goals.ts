/** A wish as it stands for drivers of one Qts. */
import { type Goal, searchDefaults } from './defaults.ts'

/** The goal as it stands for drivers of this Qts. */
export function goalFor(goal: Goal, qts: number): Goal {
  if (goal.closedOnly) return { ...goal, highestQtc: Math.max(goal.highestQtc, searchDefaults.tightRise.value * qts) }
  if (goal.unevennessWeight > 0 && qts > searchDefaults.looseQts.value) return { ...goal, unevennessWeight: 1 }
  return goal
}
