/** The current a cable may carry for good: table value at 30 °C, then ambient, bundling and metal. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { KnownConductor } from '../../../contract/supply/words.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { bundling33Cfr183425, ampacity33Cfr183425 as table5 } from './ampacity-33-cfr-183-425.ts'
import { flexibleCordsBs7671 } from './ampacity-bs-7671.ts'
import { awgArea, awgNumber } from './awg-astm-b258.ts'
import type { CableSize } from './cable-size.ts'
import { conductorMaterials } from './conductor-materials.ts'

export interface Surroundings {
  readonly insulationC: number
  readonly ambientC: number
  /** Current-carrying power conductors in the same loom, this one included. */
  readonly bundledConductors: number
}

export interface Ampacity {
  /** Absent where no table has such a size: below 0.5 mm² or above 4/0. */
  readonly ampacityA?: number
  readonly tableA?: number
  /** Column of the table used: the highest class not above the insulation. */
  readonly columnC: number
  readonly ambientFactor: number
  readonly bundleFactor: number
  readonly metalFactor: number
}

const rows = table5.rows.map(([awg, amperes]) => ({ areaM2: awgArea(awgNumber(awg) ?? Number.NaN), amperes }))

/** @throws DesignError `out-of-range` below the lowest class of the table */
function insulationColumn(insulationC: number, field: string): number {
  const columns = table5.insulationC.filter(column => column <= insulationC)
  const highest = columns.at(-1)
  if (highest === undefined) {
    const [minimum] = table5.insulationC
    throw new DesignError('out-of-range', { field, value: insulationC, minimum, unit: '°C' })
  }
  return highest
}

/** The table that a section is looked up in. */
export const ampacitySource = (areaM2: number): SourceId =>
  areaM2 < (rows[0]?.areaM2 ?? 0) * (1 - 1e-9) ? flexibleCordsBs7671.source : table5.source

/** Below the smallest gauge of Table 5: the cord that is no thicker, for insulation of 60 °C, whatever the class. */
const cordAmpacity = (areaM2: number): number | undefined =>
  flexibleCordsBs7671.rows.findLast(([mm2]) => mm2 / 1e6 <= areaM2 * (1 + 1e-9))?.[1]

/**
 * Table 5 at any conductor area: straight between rows on logarithmic axes, rounded down to whole amperes; below it that of a cord.
 *
 * @param areaM2  conductor area [m²]
 * @param columnC  insulation class, one of the table's columns
 * @returns [A] at 30 °C, copper; undefined outside 0.5 mm² … 4/0
 * @source 33 CFR 183.425 Table 5; below 18 AWG BS 7671 Table 4F3A; the interpolation is derived
 * @check  25 mm², 105 °C → 174 A; 4 AWG, 105 °C → 160 A; 0.75 mm² → 6 A, 0.5 mm² → 3 A in every class
 */
export function tableAmpacity(areaM2: number, columnC: number): number | undefined {
  const column = (table5.insulationC as readonly number[]).indexOf(columnC)
  const upper = rows.findIndex(row => row.areaM2 >= areaM2 * (1 - 1e-9))
  const above = rows[upper]?.amperes[column]
  if (above === undefined) return undefined
  if (Math.abs((rows[upper]?.areaM2 ?? 0) / areaM2 - 1) < 1e-9) return above
  const [lowRow, highRow] = [rows[upper - 1], rows[upper]]
  const below = lowRow?.amperes[column]
  if (lowRow === undefined || highRow === undefined || below === undefined) return cordAmpacity(areaM2)
  const share = Math.log(areaM2 / lowRow.areaM2) / Math.log(highRow.areaM2 / lowRow.areaM2)
  return Math.floor(below * (above / below) ** share)
}

/**
 * Share of the 30 °C current at another ambient temperature.
 *
 *   F = √((Tins − Tamb)/(Tins − 30))
 *
 * @throws DesignError `insulation-below-ambient` unless Tamb < Tins
 * @validity Heat loss taken proportional to the rise; within 0.006 of the NFPA 70 table.
 * @source derived; compared with NFPA 70 Table 310.15(B)(1)
 * @check  60 °C at 50 °C → 0.58; 105 °C at 60 °C → 0.77
 */
export function ambientFactor(insulationC: number, ambientC: number, field: string): number {
  if (ambientC >= insulationC) {
    throw new DesignError('insulation-below-ambient', {
      field,
      value: insulationC,
      minimum: ambientC,
      unit: '°C',
      detail: say('refused.insulation-of-class-c-cannot-carry', { insulationC, ambientC })
    })
  }
  return Math.sqrt((insulationC - ambientC) / (insulationC - table5.ambientC))
}

/** Share left in a bundle of n current-carrying conductors. @check 3 → 0.7; 4 … 6 → 0.6 */
function bundleFactor(conductors: number): number {
  return bundling33Cfr183425.rows.findLast(([from]) => conductors >= from)?.[1] ?? 1
}

/** Share of the copper current at equal size and equal heat: √conductivity. @check copper-clad-10 → 0.793 */
function metalFactor(material: KnownConductor): number {
  return Math.sqrt(conductorMaterials[material].iacsPercent / 100)
}

/**
 * Current-carrying capacity Iz.
 *
 *   Iz = Table5(A, Tins)·F_ambient·F_bundle·√(conductivity/100 %)
 *
 * @param size  area A [m²]
 * @param material  the metal
 * @param surroundings  insulation class ≥ 60 °C, ambient below it, conductors in the loom ≥ 1
 * @returns Iz [A] with its factors
 * @throws DesignError `insulation-below-ambient`, `out-of-range`
 * @validity Still air, not in foam or under carpet; 0.5 mm² … 4/0.
 * @source 33 CFR 183.425 Table 5 and note 2; below 18 AWG BS 7671 Table 4F3A
 * @check  4 AWG, 105 °C, 50 °C → 137.0 A (note 1 as reprinted, factor 0.85: 136); three in a bundle at 30 °C → 112 A; 10 % clad → 126.9 A
 */
export function ampacity(size: CableSize, material: KnownConductor, surroundings: Surroundings, at = ''): Ampacity {
  const { insulationC, ambientC, bundledConductors } = surroundings
  const columnC = insulationColumn(insulationC, `${at}insulationC`)
  const factors = {
    columnC,
    // the table is for 30 °C: a colder place raises nothing, the run warms the air around it
    ambientFactor: Math.min(1, ambientFactor(columnC, ambientC, `${at}insulationC`)),
    bundleFactor: bundleFactor(bundledConductors),
    metalFactor: metalFactor(material)
  }
  const tableA = tableAmpacity(size.areaM2, columnC)
  if (tableA === undefined) return factors
  const ampacityA = tableA * factors.ambientFactor * factors.bundleFactor * factors.metalFactor
  return { ampacityA, tableA, ...factors }
}
