/** Whether a driver's figures can be believed: relations that contradict each other, and slips that would explain it. */
import { type IdentityCheck, identityChecks } from './consistency.ts'
import { disagreements, type PrintedSet } from './disagreement.ts'
import { oddFigures } from './odd-figures.ts'
import type { Roundings } from './printed-rounding.ts'
import type { PartialSmallSignalSet } from './small-signal-quantities.ts'
import { faultsOf, suspectedSlips } from './unit-slips.ts'
import { looseSlips } from './unprinted-slips.ts'

export interface NamedSlip {
  readonly id: string
  readonly detail: string
  /** What the figures would be if the slip had happened; never applied. */
  readonly mended: PartialSmallSignalSet & { readonly xmaxM?: number; readonly leH?: number }
}

export interface SetJudgement {
  readonly checks: readonly IdentityCheck[]
  readonly slips: readonly NamedSlip[]
}

export interface JudgedFigures {
  /** What the sheet says, SI. */
  readonly stated: PartialSmallSignalSet
  readonly roundings: Roundings
  /** With what had to be assumed. */
  readonly taken: PartialSmallSignalSet
  /** Given or derived. */
  readonly sdM2: number
  readonly xmaxM?: number
  readonly leH?: number
  readonly nominalDiameterM?: number
}

/** Of the air the sheet was made in. */
interface SheetAir {
  readonly stiffnessPa: number
  readonly densityKgPerM3: number
}

export function judgeSet(figures: JudgedFigures, { stiffnessPa, densityKgPerM3 }: SheetAir): SetJudgement {
  const { stated, roundings, taken } = figures
  const printed: PrintedSet = { given: stated, roundings }
  const units = suspectedSlips(printed, stiffnessPa, densityKgPerM3).map(
    ({ slip, mended }): NamedSlip => ({ id: slip.id, detail: slip.says, mended: { [slip.quantity]: mended } })
  )
  const odd = oddFigures(printed, faultsOf(printed, stiffnessPa), stiffnessPa).map(
    ({ id, says, mended }): NamedSlip => ({ id, detail: says, mended })
  )
  // The exact factor of a unit tells more than that the others agree without the figure.
  const tied = units.length > 0 ? units : odd
  const sdM2 = tied.find(({ mended }) => mended.sdM2 !== undefined)?.mended.sdM2 ?? figures.sdM2
  const loose = looseSlips({ ...figures, sdM2, ...(stated.sdM2 === undefined ? {} : { statedSdM2: stated.sdM2 }) }).map(
    ({ id, says, mended }): NamedSlip => ({ id, detail: says, mended })
  )
  return { checks: identityChecks(disagreements({ given: taken, roundings }, stiffnessPa)), slips: [...tied, ...loose] }
}
