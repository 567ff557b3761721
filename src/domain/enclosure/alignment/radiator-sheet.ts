/** A passive radiator as its sheet gives it, and loaded for a box. */
import type { RadiatorSheet } from '../../../contract/systems/plan-radiators.ts'
import { STANDARD_GRAVITY_M_PER_S2 } from '../../constants.ts'
import { DesignError } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'

/** One unit, nothing added. */
export interface RadiatorUnit {
  readonly areaM2: number
  readonly massKg: number
  readonly complianceMPerN: number
  /** Mechanical resistance of the suspension; 0 where none is known. */
  readonly rmsKgPerS: number
  readonly travelM: number
  readonly mostAddedKg: number
}

/** Sheets are rounded and units spread: figures that differ by more are of two things. Common practice, no source. */
const SAME_COMPLIANCE = 1.3
/** Weight that a suspension carries where no maker says, over its own moving mass. Ours. */
const MOST_ADDED = 2

/**
 * Compliance from whatever the sheet gives.
 *
 *   C = 1/((2π·fs)²·m)    C = Vas/(ρc²·S²)
 *
 * @param sheet  at least one of compliance, resonance, Vas; all above 0
 * @param stiffnessPa  ρc² of the air
 * @throws DesignError `missing-input` without any of them, `conflicting-input` where two differ by over 30 %
 * @source Small, "Passive-radiator loudspeaker systems", JAES 22(8), 1974 (opening read, formulas from memory): definitions
 * @check  300 g, 1 mm/N ↔ fs 9.18881 Hz, by hand
 */
export function radiatorUnit(sheet: RadiatorSheet, stiffnessPa: number): RadiatorUnit {
  const { areaM2, massKg, fsHz, vasM3, qm, xmaxM, mostAddedKg = MOST_ADDED * massKg } = sheet
  const told = [
    ['complianceMPerN', sheet.complianceMPerN],
    ['fsHz', fsHz && 1 / ((2 * Math.PI * fsHz) ** 2 * massKg)],
    ['vasM3', vasM3 && vasM3 / (stiffnessPa * areaM2 ** 2)]
  ] as const
  const known = told.flatMap(([field, value]) => (value === undefined ? [] : [{ field, value }]))
  const [first, ...others] = known
  if (first === undefined) {
    const field = 'passiveRadiators.sheet.complianceMPerN'
    throw new DesignError('missing-input', { field, detail: say('refused.a-radiator-needs-its-compliance') })
  }
  const complianceMPerN = first.value
  const strange = others.find(
    ({ value }) => Math.max(value / complianceMPerN, complianceMPerN / value) > SAME_COMPLIANCE
  )
  if (strange !== undefined) {
    const detail = say('refused.the-sheet-of-the-radiator-contradicts', {
      first: toDigits(complianceMPerN * 1e3, 3),
      other: toDigits(strange.value * 1e3, 3)
    })
    throw new DesignError('conflicting-input', { field: `passiveRadiators.sheet.${strange.field}`, detail })
  }
  const rmsKgPerS = qm === undefined ? 0 : Math.sqrt(massKg / complianceMPerN) / qm
  return { areaM2, massKg, complianceMPerN, rmsKgPerS, travelM: xmaxM, mostAddedKg }
}

/** A unit that carries a weight, as an enclosure is told of it: the suspension keeps its resistance, the Q follows the mass. */
export function loadedRadiator({ areaM2, massKg, complianceMPerN, rmsKgPerS }: RadiatorUnit, addedKg: number) {
  const loadedKg = massKg + addedKg
  const qm = rmsKgPerS === 0 ? undefined : Math.sqrt(loadedKg / complianceMPerN) / rmsKgPerS
  return { areaM2, massKg: loadedKg, complianceMPerN, ...present({ qm }) }
}

/**
 * How far a cone that lies flat hangs through by its own weight; that much less it may travel.
 *
 *   x = m·g·C
 *
 * @param massKg  with what is added
 * @source derived: Hooke's law; g of ISO 80000-3 (from memory)
 * @check  400 g on 0.5 mm/N: 1.96133 mm
 */
export const radiatorSagM = ({ complianceMPerN }: Pick<RadiatorUnit, 'complianceMPerN'>, massKg: number): number =>
  massKg * STANDARD_GRAVITY_M_PER_S2 * complianceMPerN

/** What is left of the travel. */
export const travelLeftM = (
  unit: Pick<RadiatorUnit, 'complianceMPerN' | 'travelM'>,
  massKg: number,
  isFlat: boolean
): number => (isFlat ? Math.max(0, unit.travelM - radiatorSagM(unit, massKg)) : unit.travelM)
