/** Sheet materials for boxes: thickness as sold and as measured, density, stiffness, sheet sizes. */
import type { BoardId } from '../../contract/boxes/words.ts'
import type { SourceId } from '../../contract/sources/source.ts'

export interface BoardThickness {
  readonly nominalMm: number
  /** Mean of a real sheet [mm], where it differs from the name. */
  readonly realMm: number
  readonly densityKgPerM3: number
  /** Modulus in bending along and across the face grain [N/mm²]. */
  readonly alongNPerMm2: number
  readonly acrossNPerMm2: number
}

type SheetMm = readonly [number, number]

export interface Board {
  readonly title: string
  readonly rows: readonly BoardThickness[]
  /** Ratio of Poisson (of the strain along for stress across, for plywood). */
  readonly poisson: number
  /** Shear modulus in the plane [N/mm²]; absent for boards equal in all directions, where it follows from E and ν. */
  readonly shearNPerMm2?: number
  /** Length along the grain × width [mm]; the usual one first. */
  readonly sheetsMm: readonly [SheetMm, ...(readonly SheetMm[])]
  readonly grained: boolean
  readonly source: SourceId
  readonly note: string
}

const even = (nominalMm: number, densityKgPerM3: number, e: number): BoardThickness => ({
  nominalMm,
  realMm: nominalMm,
  densityKgPerM3,
  alongNPerMm2: e,
  acrossNPerMm2: e
})

const ply = (
  nominalMm: number,
  realMm: number,
  densityKgPerM3: number,
  alongNPerMm2: number,
  acrossNPerMm2: number
): BoardThickness => ({ nominalMm, realMm, densityKgPerM3, alongNPerMm2, acrossNPerMm2 })

/** Printed units and values; minimum values of a standard where the note says so. */
export const boards = {
  mdf: {
    title: 'Medium density fibreboard, general purpose, dry',
    rows: [
      even(9, 750, 2700),
      even(12, 750, 2500),
      even(15, 750, 2200),
      even(16, 750, 2200),
      even(18, 750, 2200),
      even(19, 750, 2200),
      even(22, 750, 2100),
      even(25, 750, 2100),
      even(30, 750, 2100),
      even(38, 750, 1900)
    ],
    poisson: 0.25,
    sheetsMm: [
      [2440, 1220],
      [2800, 2070],
      [3050, 1220]
    ],
    grained: false,
    source: 'en-622-5-mdf',
    note: 'Smallest modulus that EN 622-5 allows in each thickness class; typical boards reach 3000 to 3600 N/mm².'
  },
  'birch-plywood': {
    title: 'Birch plywood',
    rows: [
      ply(9, 9.2, 710, 11395, 6105),
      ply(12, 12.0, 695, 10719, 6781),
      ply(15, 14.9, 690, 10316, 7184),
      ply(18, 17.7, 685, 10048, 7452),
      ply(21, 20.5, 680, 9858, 7642),
      ply(24, 23.4, 680, 9717, 7783)
    ],
    poisson: 0.03,
    shearNPerMm2: 620,
    sheetsMm: [
      [2440, 1220],
      [2500, 1250],
      [3050, 1525],
      [1525, 1525]
    ],
    grained: true,
    source: 'finnish-plywood-2002',
    note: 'Means. The 24 mm moduli follow from equal veneers of 17 500 N/mm² along the grain, not from the table.'
  },
  'poplar-plywood': {
    title: 'Poplar plywood',
    rows: [
      ply(10, 10, 480, 6000, 4000),
      ply(12, 12, 480, 6000, 4000),
      ply(15, 15, 480, 6000, 4000),
      ply(18, 18, 480, 6000, 4000)
    ],
    poisson: 0.03,
    shearNPerMm2: 350,
    sheetsMm: [
      [2440, 1220],
      [2500, 1220]
    ],
    grained: true,
    source: 'board-practice',
    note: 'Weakly sourced; treat as an estimate.'
  },
  particleboard: {
    title: 'Particleboard P2',
    rows: [
      even(12, 690, 1800),
      even(16, 660, 1600),
      even(18, 650, 1600),
      even(19, 650, 1600),
      even(22, 640, 1500),
      even(25, 640, 1500)
    ],
    poisson: 0.25,
    sheetsMm: [
      [2800, 2070],
      [2620, 2070]
    ],
    grained: false,
    source: 'en-312-particleboard',
    note: 'Density from a data sheet; the moduli are the smallest of EN 312 P2 as remembered.'
  }
} as const satisfies Record<BoardId, Board>
