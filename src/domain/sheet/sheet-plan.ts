/** What the sheet plan is asked and what it answers, in SI. */
import type { panelGrains } from '../../contract/boxes/words.ts'
import type { BoundProof } from './sheet-bound.ts'

type PanelGrain = (typeof panelGrains)[number]

export interface SheetPanel {
  readonly name: string
  readonly quantity: number
  readonly lengthM: number
  readonly widthM: number
  readonly thicknessM: number
  readonly material?: string
  /** Which side of the panel the grain follows; `any` lets it turn. */
  readonly grain?: PanelGrain
}

export interface SheetStock {
  readonly name: string
  readonly lengthM: number
  readonly widthM: number
  readonly thicknessM: number
  readonly material?: string
  /** Which side of the sheet the grain follows; `none` for board without grain. */
  readonly grain?: 'length' | 'width' | 'none'
  /** Sheets to be had; as many as needed when absent. */
  readonly quantity?: number
  readonly price?: number
}

export interface SheetPlanRequest {
  readonly panels: readonly SheetPanel[]
  readonly sheets: readonly SheetStock[]
  readonly kerfM?: number
  /** Cut off each edge of a raw sheet first, kerf included. */
  readonly trimM?: number
  /** Shorter side of an offcut worth keeping. */
  readonly keepOffcutM?: number
}

export interface LaidPiece {
  readonly panel: string
  /** 1 for the first of its name. */
  readonly copy: number
  /** From the corner of the raw sheet, along its length and its width. */
  readonly xM: number
  readonly yM: number
  /** As it lies: along the sheet's length and width. */
  readonly lengthM: number
  readonly widthM: number
  /** The panel's own length runs along the sheet's width. */
  readonly turned: boolean
}

export interface Offcut {
  readonly xM: number
  readonly yM: number
  readonly lengthM: number
  readonly widthM: number
  readonly reusable: boolean
}

/** What a cut frees: a part to be cut further, a finished panel, or an offcut. */
export interface FreedPart {
  readonly is: 'part' | 'panel' | 'offcut'
  /** Number of a part that is cut further. */
  readonly part?: number
  readonly panel?: string
  readonly copy?: number
  readonly lengthM: number
  readonly widthM: number
}

export interface SheetCut {
  readonly step: number
  /** The part that is cut; 1 is the trimmed sheet. */
  readonly part: number
  /** `length`: the saw runs along the sheet's length. */
  readonly along: 'length' | 'width'
  /** Fence setting: size of the near part; the kerf lies beyond it. */
  readonly distanceM: number
  readonly cutLengthM: number
  /** Near edge of the kerf on the raw sheet: y for a cut along the length, x for one along the width. */
  readonly atM: number
  readonly fromM: number
  readonly toM: number
  readonly near: FreedPart
  /** Absent when the saw turns all that is left to dust. */
  readonly far?: FreedPart
}

export interface SheetLayout {
  readonly number: number
  readonly sheet: string
  readonly material?: string
  readonly thicknessM: number
  readonly lengthM: number
  readonly widthM: number
  readonly trimM: number
  readonly usedPercent: number
  readonly pieces: readonly LaidPiece[]
  readonly cuts: readonly SheetCut[]
  readonly offcuts: readonly Offcut[]
}

export interface BoardSummary {
  readonly thicknessM: number
  readonly material?: string
  readonly panelCount: number
  readonly sheetCount: number
  readonly panelAreaM2: number
  readonly sheetAreaM2: number
  /** No plan whatever can use fewer sheets of the largest size. */
  readonly leastSheetCount: number
  readonly provedBy: BoundProof
  /** Panels and kerf as a share of the sheets' area: the bound before it is rounded up to whole sheets. */
  readonly areaBoundSheets: number
  /** Sheets above the least number, in percent of it. */
  readonly aboveLeastPercent: number
  readonly why: string
}

export interface SheetPlanTotal {
  readonly panelCount: number
  readonly sheetCount: number
  readonly panelAreaM2: number
  readonly sheetAreaM2: number
  readonly yieldPercent: number
  readonly wastePercent: number
  /** Waste when the offcuts worth keeping are not counted as lost. */
  readonly wasteAfterOffcutsPercent: number
  readonly cutCount: number
  readonly cutLengthM: number
  /** In the currency of the prices given; absent when a sheet used has none. */
  readonly price?: number
}

export interface SheetPlan {
  readonly total: SheetPlanTotal
  readonly boards: readonly BoardSummary[]
  readonly layouts: readonly SheetLayout[]
}
