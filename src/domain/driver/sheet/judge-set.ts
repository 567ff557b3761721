/** Whether a driver's figures can be believed: relations that contradict each other, and slips that would explain it. */
import type { IdentityCheck, NamedSlip } from '../../../contract/drivers/driver-parameters.ts'
import { present } from '../../present.ts'
import { identityChecks } from './consistency.ts'
import { disagreements, type PrintedSet } from './disagreement.ts'
import { oddFigures } from './odd-figures.ts'
import type { Roundings } from './printed-rounding.ts'
import type { PartialSmallSignalSet } from './small-signal-quantities.ts'
import { faultsOf, isOdd, suspectedSlips } from './unit-slips.ts'
import { looseSlips } from './unprinted-slips.ts'

export interface SetJudgement {
  readonly checks: readonly IdentityCheck[]
  readonly slips: readonly NamedSlip[]
}

interface JudgedFigures {
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
  const tied = tiedSlips({ given: stated, roundings }, stiffnessPa, densityKgPerM3)
  const sdM2 = tied.find(({ mended }) => mended.sdM2 !== undefined)?.mended.sdM2 ?? figures.sdM2
  const loose = looseSlips({ ...figures, sdM2, ...present({ statedSdM2: stated.sdM2 }) }).map(
    ({ id, says, mended }): NamedSlip => ({ id, detail: says, mended })
  )
  return { checks: identityChecks(disagreements({ given: taken, roundings }, stiffnessPa)), slips: [...tied, ...loose] }
}

function tiedSlips(printed: PrintedSet, stiffnessPa: number, densityKgPerM3: number): readonly NamedSlip[] {
  const before = faultsOf(printed, stiffnessPa)
  if (!isOdd(before)) return []
  const units = suspectedSlips(printed, before, stiffnessPa, densityKgPerM3)
  // The exact factor of a unit tells more than that the others agree without the figure.
  if (units.length > 0) {
    return units.map(({ slip, mended }) => ({ id: slip.id, detail: slip.says, mended: { [slip.quantity]: mended } }))
  }
  return oddFigures(printed, before, stiffnessPa).map(({ id, says, mended }) => ({ id, detail: says, mended }))
}
