/** Whether the figures of a data sheet fit one another, and whether they are those of a driver for low frequencies. */
import type { IdentityCheck } from '../../../contract/drivers/driver-parameters.ts'
import { toDigits } from '../../digits.ts'
import type { Disagreement } from './disagreement.ts'
import {
  type PartialSmallSignalSet,
  printedQuantities,
  printedValue,
  type SmallSignalQuantity,
  smallSignalQuantities
} from './small-signal-quantities.ts'

/**
 * Limits of |ln(given/computed)| beyond rounding; engineering choice of this service. Sheets are measured on several
 * specimens and in other air, which accounts for 1 to 3 %; above a quarter no box should be cut.
 */
export const agreementLimits = { agrees: 0.03, note: 0.1, care: 0.25 } as const
type Verdict = 'agrees' | 'note' | 'care' | 'stop'

function verdictOf(deviation: number): Verdict {
  if (deviation <= agreementLimits.agrees) return 'agrees'
  if (deviation <= agreementLimits.note) return 'note'
  return deviation <= agreementLimits.care ? 'care' : 'stop'
}

/** Each relation that was not needed for completing the set, held against its members. */
export function identityChecks(found: readonly Disagreement[]): readonly IdentityCheck[] {
  return found.map(({ identity, member, stated, computed, beyond }) => {
    const ratio = stated / computed
    const percent = toDigits(Math.abs(ratio - 1) * 100, 2)
    const others = identity.members.filter(name => name !== member).map(name => printedQuantities[name].symbol)
    return {
      identity: identity.id,
      relation: identity.relation,
      ratio,
      verdict: verdictOf(beyond),
      detail: `${printedValue(member, stated)} against ${printedValue(member, computed)} from ${others.join(', ')}: ${percent} % apart`
    }
  })
}

interface UnusualValue {
  readonly name: SmallSignalQuantity
  readonly value: number
  readonly usual: readonly [number, number]
}

/** Values, given or derived, that lie outside the usual range of their quantity. */
export function unusualValues(known: PartialSmallSignalSet): readonly UnusualValue[] {
  return smallSignalQuantities.flatMap(name => {
    const value = known[name]
    const { usual } = printedQuantities[name]
    return value === undefined || (value >= usual[0] && value <= usual[1]) ? [] : [{ name, value, usual }]
  })
}

/**
 * Moving mass per cone area [kg/m²] of drivers for low frequencies; a slip in Vas or Sd leaves this range at once.
 * Engineering choice of this service: paper cones of 5 in lie near 1, heavy 15 in cones near 6.
 */
const usualSurfaceDensityKgPerM2 = [0.6, 12] as const

export function surfaceDensityIsUnusual({ mmsKg, sdM2 }: PartialSmallSignalSet): boolean {
  if (mmsKg === undefined || sdM2 === undefined) return false
  const density = mmsKg / sdM2
  return !(density >= usualSurfaceDensityKgPerM2[0] && density <= usualSurfaceDensityKgPerM2[1])
}
