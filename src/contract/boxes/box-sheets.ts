/** Request and answer of a cut plan. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { panelGrains } from './words.ts'

const thicknessMm = quantity('mm', 'Nominal thickness of the board', { above: 0, to: 100 })
export const SheetPanel = component('SheetPanel', 'Equal panels to be cut.', {
  name: label('Name of the panel, as it shall stand on the cut sheet', 60),
  quantity: count('How many', 1, 500),
  lengthMm: quantity('mm', 'Length of the blank', { from: 5, to: 4000 }),
  widthMm: quantity('mm', 'Width of the blank', { from: 5, to: 4000 }),
  thicknessMm,
  material: Type.Optional(label('Material, as the sheets name it', 60)),
  grain: Type.Optional(
    choice('Side of the panel that the grain follows; `any` (the default) lets it turn', panelGrains)
  )
})
export interface SheetPanel extends Si<Static<typeof SheetPanel>> {}

export const SheetStock = component('SheetStock', 'Equal sheets to cut from.', {
  name: label('Name of the sheet', 60),
  lengthMm: quantity('mm', 'Length of the raw sheet', { from: 100, to: 6000 }),
  widthMm: quantity('mm', 'Width of the raw sheet', { from: 100, to: 6000 }),
  thicknessMm,
  material: Type.Optional(label('Material', 60)),
  grain: Type.Optional(
    choice('Side of the sheet that the grain follows, `length` by default; `none` for board without grain', [
      'length',
      'width',
      'none'
    ])
  ),
  quantity: Type.Optional(count('Sheets to be had; as many as needed when absent', 1, 1000)),
  price: Type.Optional(quantity('1', 'Price of one sheet, in one currency for all', { from: 0, to: 1e6 }))
})
export interface SheetStock extends Si<Static<typeof SheetStock>> {}

export const SheetPlanRequest = component('SheetPlanRequest', 'Panels to be cut, and the sheets to be had.', {
  panels: list('Panels', ref(SheetPanel), 1, 250),
  sheets: list('Sheets', ref(SheetStock), 1, 20),
  kerfMm: Type.Optional(quantity('mm', 'Width of the saw cut', { from: 0, to: 12 })),
  trimMm: Type.Optional(quantity('mm', 'Cut off every edge of a raw sheet first, kerf included', { from: 0, to: 50 })),
  keepOffcutMm: Type.Optional(quantity('mm', 'Shorter side of an offcut worth keeping', { from: 20, to: 2000 }))
})
export interface SheetPlanRequest extends Si<Static<typeof SheetPlanRequest>> {}

export const LaidPiece = component('LaidPiece', 'A panel where it lies on its sheet.', {
  panel: Type.String({ description: 'Name of the panel' }),
  copy: Type.Integer({ description: 'Which of its copies, from 1' }),
  xMm: quantity('mm', 'From the corner of the raw sheet along its length'),
  yMm: quantity('mm', 'From the corner of the raw sheet along its width'),
  lengthMm: quantity('mm', 'Size along the length of the sheet'),
  widthMm: quantity('mm', 'Size along the width of the sheet'),
  turned: Type.Boolean({ description: "True when the panel's own length runs along the width of the sheet" })
})
export interface LaidPiece extends Si<Static<typeof LaidPiece>> {}

const SheetOffcut = component('SheetOffcut', 'A part that is left over.', {
  xMm: quantity('mm', 'From the corner of the raw sheet along its length'),
  yMm: quantity('mm', 'From the corner of the raw sheet along its width'),
  lengthMm: quantity('mm', 'Size along the length of the sheet'),
  widthMm: quantity('mm', 'Size along the width of the sheet'),
  reusable: Type.Boolean({ description: 'Both sides reach `keepOffcutMm`' })
})
export interface Offcut extends Si<Static<typeof SheetOffcut>> {}

export const FreedPart = component('FreedPart', 'What a cut sets free.', {
  is: choice('A part to be cut further, a finished panel, or an offcut', ['part', 'panel', 'offcut']),
  part: Type.Optional(Type.Integer({ description: 'Number of a part to be cut further' })),
  panel: Type.Optional(Type.String({ description: 'Name of a finished panel' })),
  copy: Type.Optional(Type.Integer({ description: 'Which of several copies' })),
  lengthMm: quantity('mm', 'Size along the length of the sheet'),
  widthMm: quantity('mm', 'Size along the width of the sheet')
})
export interface FreedPart extends Si<Static<typeof FreedPart>> {}

export const SheetCut = component(
  'SheetCut',
  'One cut from edge to edge of a part. Do them in the order of their steps.',
  {
    step: Type.Integer({ description: 'Order of sawing on this sheet, from 1, after trimming' }),
    part: Type.Integer({ description: 'Number of the part to cut; 1 is the trimmed sheet' }),
    along: choice('Direction in which the saw runs on the sheet', ['length', 'width']),
    distanceMm: quantity('mm', 'Fence setting: size of the near part; the kerf lies beyond it'),
    cutLengthM: quantity('m', 'Length of the cut'),
    atMm: quantity('mm', 'Near side of the kerf, from the corner of the raw sheet'),
    fromMm: quantity('mm', 'Start of the cut, from the corner of the raw sheet'),
    toMm: quantity('mm', 'End of the cut, from the corner of the raw sheet'),
    near: ref(FreedPart, 'The part between fence and blade'),
    far: Type.Optional(ref(FreedPart, 'The part beyond the blade; absent when only dust is left'))
  }
)
export interface SheetCut extends Si<Static<typeof SheetCut>> {}

export const SheetLayout = component('SheetLayout', 'One sheet with what is cut from it.', {
  number: Type.Integer({ description: 'Number of the sheet in the plan, from 1' }),
  sheet: Type.String({ description: 'Name of the sheet' }),
  material: Type.Optional(Type.String({ description: 'Material' })),
  thicknessMm: quantity('mm', 'Thickness'),
  lengthMm: quantity('mm', 'Length of the raw sheet, along the grain where it has one'),
  widthMm: quantity('mm', 'Width of the raw sheet'),
  trimMm: quantity('mm', 'Trimmed off every edge'),
  usedPercent: quantity('%', 'Share of the raw sheet that becomes panels'),
  pieces: Type.Array(ref(LaidPiece), { description: 'Panels on this sheet' }),
  cuts: Type.Array(ref(SheetCut), { description: 'Cuts in order' }),
  offcuts: Type.Array(ref(SheetOffcut), { description: 'What is left over, the largest first' })
})
export interface SheetLayout extends Si<Static<typeof SheetLayout>> {}

export const BoardSummary = component('BoardSummary', 'All sheets of one board, and how good the plan is.', {
  thicknessMm: quantity('mm', 'Thickness'),
  material: Type.Optional(Type.String({ description: 'Material' })),
  panelCount: Type.Integer({ description: 'Panels' }),
  sheetCount: Type.Integer({ description: 'Sheets used' }),
  panelAreaM2: quantity('m²', 'Area of the panels'),
  sheetAreaM2: quantity('m²', 'Area of the sheets used'),
  leastSheetCount: Type.Integer({ description: 'No plan can use fewer sheets' }),
  provedBy: choice('What proves the least number', ['area', 'large-pieces', 'densest-sheet']),
  areaBoundSheets: quantity('1', 'The bound by area alone, before it is rounded up to whole sheets'),
  aboveLeastPercent: quantity('%', 'Sheets used above the least number'),
  why: Type.String({ description: 'What stands between the plan and the bound' })
})
export interface BoardSummary extends Si<Static<typeof BoardSummary>> {}

export const SheetPlanTotal = component('SheetPlanTotal', 'The whole plan in figures.', {
  panelCount: Type.Integer({ description: 'Panels' }),
  sheetCount: Type.Integer({ description: 'Sheets' }),
  panelAreaM2: quantity('m²', 'Area of the panels'),
  sheetAreaM2: quantity('m²', 'Area of the sheets'),
  yieldPercent: quantity('%', 'Panels as a share of the sheets'),
  wastePercent: quantity('%', 'The rest'),
  wasteAfterOffcutsPercent: quantity('%', 'The rest when offcuts worth keeping are not counted as lost'),
  cutCount: Type.Integer({ description: 'Cuts, without trimming' }),
  cutLengthM: quantity('m', 'Length of all cuts, without trimming'),
  price: Type.Optional(quantity('1', 'Price of the sheets; absent when a sheet used has none'))
})
export interface SheetPlanTotal extends Si<Static<typeof SheetPlanTotal>> {}

export const SheetPlanResult = component('SheetPlanResult', 'A cut plan.', {
  total: ref(SheetPlanTotal),
  boards: Type.Array(ref(BoardSummary), { description: 'One entry for each material and thickness' }),
  layouts: Type.Array(ref(SheetLayout), { description: 'The sheets in the order of their numbers' })
})
export interface SheetPlan extends Si<Static<typeof SheetPlanResult>> {}
