/** How far the relations of a driver are from holding on a sheet, beyond what rounding in print explains. */

import { mapped } from '../../../numeric/tuple.ts'
import { type CompletedSet, completeSet } from './complete-set.ts'
import type { DriverIdentity } from './driver-identities.ts'
import type { Roundings } from './printed-rounding.ts'
import type { PartialSmallSignalSet, SmallSignalQuantity } from './small-signal-quantities.ts'

/** Figures as they stand on a sheet. */
export interface PrintedSet {
  readonly given: PartialSmallSignalSet
  readonly roundings: Roundings
}

export interface Disagreement {
  readonly identity: DriverIdentity
  /** The member looked at, its value on the sheet and what the others give. */
  readonly member: SmallSignalQuantity
  readonly stated: number
  readonly computed: number
  /** |ln(stated/computed)|; infinite where the members exclude each other. */
  readonly whole: number
  /** What the roundings of all figures together can amount to; infinite where they leave the value open. */
  readonly byRounding: number
  /** What is left. */
  readonly beyond: number
}

const logRatio = (ratio: number) => (ratio > 0 ? Math.log(ratio) : Number.POSITIVE_INFINITY)

function heldAgainst(identity: DriverIdentity, { known }: CompletedSet, stiffnessPa: number) {
  const [member] = identity.members as readonly [SmallSignalQuantity]
  const computed = identity.solve(member, known, stiffnessPa)
  const stated = known[member] ?? Number.NaN
  return { member, stated, computed, log: logRatio(stated / computed) }
}

function logsOf(given: PartialSmallSignalSet, stiffnessPa: number): readonly number[] {
  const set = completeSet(given, stiffnessPa)
  return set.redundant.map(identity => heldAgainst(identity, set, stiffnessPa).log)
}

/** By how much each relation moves when the figures move by their half units, the worst of all together. */
function roundingAllowances({ given, roundings }: PrintedSet, stiffnessPa: number, logs: readonly number[]) {
  const allowances = logs.map(() => 0)
  for (const [name, share] of Object.entries(roundings) as [SmallSignalQuantity, number][]) {
    const value = given[name]
    if (value === undefined || !(share > 0)) continue
    const [up, down] = mapped([1 + share, Math.max(1 - share, 1e-3)], factor =>
      logsOf({ ...given, [name]: value * factor }, stiffnessPa)
    )
    logs.forEach((log, index) => {
      const moved = Math.max(Math.abs((up[index] ?? log) - log), Math.abs((down[index] ?? log) - log))
      allowances[index] = (allowances[index] ?? 0) + moved
    })
  }
  return allowances
}

/**
 * One entry for each relation that nothing was taken from.
 *
 *   beyond = max(0, |ln(stated/computed)| − Σ over the figures of the move by half a printed unit)
 *
 * @source derived: a relation is followed through every step that led to its members; the sum is the worst case
 * @check  Qts 0.41, Qes 0.45 alone leave Qms between 3.6 and 6: 5.9 from Rms does not contradict them
 */
export function disagreements(printed: PrintedSet, stiffnessPa: number): readonly Disagreement[] {
  const set = completeSet(printed.given, stiffnessPa)
  const held = set.redundant.map(identity => ({ identity, ...heldAgainst(identity, set, stiffnessPa) }))
  if (held.length === 0) return []
  const logs = held.map(({ log }) => log)
  const allowances = roundingAllowances(printed, stiffnessPa, logs)
  return held.map(({ log, ...rest }, index) => {
    const whole = Math.abs(log)
    const byRounding = allowances[index] ?? 0
    const beyond = Number.isFinite(whole) ? Math.max(0, whole - byRounding) : whole
    return { ...rest, whole, byRounding, beyond }
  })
}
