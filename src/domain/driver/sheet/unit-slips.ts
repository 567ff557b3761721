/** The slips of unit and reading that data sheets and their copyists make, and which of them would explain a contradiction. */
import { CUBIC_FOOT_M3, INCH_M } from '../../constants.ts'
import { freeConeAirLoadKg } from './air-load.ts'
import { completeSet } from './complete-set.ts'
import { agreementLimits, surfaceDensityIsUnusual, unusualValues } from './consistency.ts'
import { disagreements, type PrintedSet } from './disagreement.ts'
import type { PartialSmallSignalSet, SmallSignalQuantity } from './small-signal-quantities.ts'

interface Slip {
  readonly id: string
  readonly quantity: SmallSignalQuantity
  readonly says: string
  /** What the value would be if the slip had happened. */
  readonly mended: (value: number, given: PartialSmallSignalSet, densityKgPerM3: number) => number | undefined
  /** A slip of a few per cent, to be looked for where the larger ones would be absurd. */
  readonly fine?: boolean
}

const times = (factor: number) => (value: number) => value * factor

const slips: readonly Slip[] = [
  {
    id: 'vas-in-cubic-feet',
    quantity: 'vasM3',
    says: 'Vas looks like cubic feet, not litres',
    mended: times(CUBIC_FOOT_M3 * 1e3)
  },
  {
    id: 'vas-in-cubic-inches',
    quantity: 'vasM3',
    says: 'Vas looks like cubic inches, not litres',
    mended: times(INCH_M ** 3 * 1e3)
  },
  {
    id: 'sd-in-square-millimetres',
    quantity: 'sdM2',
    says: 'Sd looks like mm², not cm²',
    mended: times(1e-2)
  },
  {
    id: 'sd-in-square-inches',
    quantity: 'sdM2',
    says: 'Sd looks like square inches, not cm²',
    mended: times((INCH_M * 100) ** 2)
  },
  {
    id: 're-of-one-coil-others-in-series',
    quantity: 'reOhm',
    says: 'Re looks like that of one coil, the rest like that of two in series',
    mended: times(2)
  },
  {
    id: 're-of-one-coil-others-in-parallel',
    quantity: 'reOhm',
    says: 'Re looks like that of one coil, the rest like that of two in parallel',
    mended: times(1 / 2)
  },
  {
    id: 're-in-series-others-in-parallel',
    quantity: 'reOhm',
    says: 'Re looks like that of two coils in series, the rest like that of the parallel pair',
    mended: times(1 / 4)
  },
  {
    id: 're-in-parallel-others-in-series',
    quantity: 'reOhm',
    says: 'Re looks like that of the parallel pair, the rest like that of two coils in series',
    mended: times(4)
  },
  {
    id: 'qes-of-one-coil',
    quantity: 'qes',
    says: 'Qes looks like that of one coil alone, the rest like that of both',
    mended: times(1 / 2)
  },
  {
    id: 'sd-from-diameter-as-radius',
    quantity: 'sdM2',
    says: 'Sd looks four times too large: a diameter taken for a radius',
    mended: times(1 / 4)
  },
  {
    id: 'mms-in-kilograms',
    quantity: 'mmsKg',
    says: 'Mms looks like kilograms, not grams',
    mended: times(1e3)
  },
  {
    id: 'mass-without-air-load',
    quantity: 'mmsKg',
    says: 'Mms looks like the bare moving mass without the air load (Mmd)',
    mended: (value, { sdM2 }, density) => (sdM2 === undefined ? undefined : value + freeConeAirLoadKg(sdM2, density)),
    fine: true
  },
  {
    id: 'cms-in-micrometres',
    quantity: 'cmsMPerN',
    says: 'Cms looks like µm/N, not mm/N',
    mended: times(1e-3)
  },
  { id: 'cms-in-metres', quantity: 'cmsMPerN', says: 'Cms looks like m/N, not mm/N', mended: times(1e3) },
  { id: 'sd-in-square-metres', quantity: 'sdM2', says: 'Sd looks like m², not cm²', mended: times(1e4) },
  { id: 'sd-in-square-decimetres', quantity: 'sdM2', says: 'Sd looks like dm², not cm²', mended: times(100) },
  { id: 'vas-in-cubic-metres', quantity: 'vasM3', says: 'Vas looks like m³, not litres', mended: times(1e3) },
  { id: 'rms-in-grams', quantity: 'rmsKgPerS', says: 'Rms looks like g/s, not kg/s', mended: times(1e-3) }
]

interface SlipSuspicion {
  readonly slip: Slip
  readonly mended: number
}

/**
 * Every slip which, if it had happened, would leave a set without contradiction and with usual values. A slip is only
 * named; the completed set keeps what the sheet says.
 *
 * @param printed  the figures of the sheet, SI, and their roundings
 * @param before  faults of the set as printed
 * @validity One slip at a time. Two slips of equal effect on every relation (Re doubled, Qes halved) are both named.
 * @source derived: each slip is undone in turn and the relations are asked again
 * @check  Vas 2.1189 "L" among otherwise consistent figures → vas-in-cubic-feet, 60.0 L
 */
export function suspectedSlips(
  printed: PrintedSet,
  before: Faults,
  stiffnessPa: number,
  densityKgPerM3: number
): readonly SlipSuspicion[] {
  const { given } = printed
  return slips.flatMap(slip => {
    const value = given[slip.quantity]
    const mended = value === undefined ? undefined : slip.mended(value, given, densityKgPerM3)
    if (mended === undefined) return []
    const after = faultsOf({ ...printed, given: { ...given, [slip.quantity]: mended } }, stiffnessPa)
    const explains = slip.fine ? explainsFinely(before, after) : explainsGrossly(before, after)
    return explains ? [{ slip, mended }] : []
  })
}

export interface Faults {
  /** Largest deviation of a relation beyond rounding. */
  readonly worst: number
  readonly unusual: number
}

export function faultsOf(printed: PrintedSet, stiffnessPa: number): Faults {
  const { known } = completeSet(printed.given, stiffnessPa)
  return {
    worst: Math.max(0, ...disagreements(printed, stiffnessPa).map(({ beyond }) => beyond)),
    unusual: unusualValues(known).length + (surfaceDensityIsUnusual(known) ? 1 : 0)
  }
}

export const isOdd = ({ worst, unusual }: Faults): boolean => worst > agreementLimits.agrees || unusual > 0

/** Within 6 % beyond rounding afterwards: the exact factor of a unit is telling enough for a sheet that is a little off besides. */
export function explainsGrossly(before: Faults, after: Faults): boolean {
  if (after.worst > 0.06) return false
  return before.worst > 0.1 ? after.unusual <= before.unusual : after.unusual < before.unusual
}

function explainsFinely(before: Faults, after: Faults): boolean {
  const slight = before.worst > agreementLimits.agrees && before.worst <= agreementLimits.care
  return slight && after.worst <= 0.02 && after.unusual <= before.unusual
}
