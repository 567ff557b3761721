/** Request and answer of drawings. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { BoxRequest } from './box-panels.ts'
import { BoxLayoutBody } from './box-result.ts'
import { SheetPlanResult, SheetStock } from './box-sheets.ts'
import { drawingSubjects, inchStyles, paperUnits } from './words.ts'

const Router = component('RouterCut', 'Writes the drawing exchange file for a router; for a saw when absent.', {
  cutterMm: quantity('mm', 'Diameter of the cutter', { from: 1, to: 20 }),
  dogBones: Type.Optional(
    Type.Boolean({ description: 'Whether inside corners are cut past their point, so that a square part goes in' })
  ),
  tabs: Type.Optional(Type.Boolean({ description: 'Whether bridges that hold the parts in the sheet are marked' }))
})
export interface RouterCut extends Si<Static<typeof Router>> {}

export const BoxDrawingRequest = component('BoxDrawingRequest', 'A box to be drawn.', {
  box: ref(BoxRequest),
  show: Type.Optional(
    choice(
      'What to draw: `both` is panels and cut sheets, when absent; `assembly` is a picture for each step; `templates` are round holes as large as life, for A4 and Letter',
      drawingSubjects
    )
  ),
  sheets: Type.Optional(list('Sheets to cut from; the usual sheet of the board when absent', ref(SheetStock), 1, 20)),
  kerfMm: Type.Optional(quantity('mm', 'Width of the saw cut', { from: 0, to: 12 })),
  trimMm: Type.Optional(quantity('mm', 'Cut off every edge of a raw sheet first, kerf included', { from: 0, to: 50 })),
  router: Type.Optional(ref(Router)),
  units: Type.Optional(choice('Units on paper; figures of the JSON answer are metric always', paperUnits)),
  inches: Type.Optional(choice('How inches are written on paper', inchStyles)),
  title: Type.Optional(label('Title of the set of drawings', 80))
})
export interface BoxDrawingRequest extends Si<Static<typeof BoxDrawingRequest>> {}

const BoxDrawing = component('BoxDrawing', 'One drawing.', {
  subject: choice('A panel, a sheet with what is cut from it, a step of assembly, or a page of a template', [
    'panel',
    'cut-sheet',
    'assembly-step',
    'template'
  ]),
  name: Type.String({ description: 'Name of the panel or sheet' }),
  scale: quantity('1', 'The drawing is 1 to this when printed at its size'),
  widthMm: quantity('mm', 'Width on paper'),
  heightMm: quantity('mm', 'Height on paper'),
  svg: Type.String({ description: 'The drawing as SVG text' })
})
const Routing = component('Routing', 'How the drawing exchange file is written for a router.', {
  radiusMm: quantity('mm', 'Arcs of inside corners: that of the cutter, eased a little'),
  dogBones: Type.Boolean({ description: 'Whether sharp inside corners are cut past their point' }),
  tabs: Type.Boolean({ description: 'Whether bridges are marked' })
})
export interface Routing extends Si<Static<typeof Routing>> {}

export const BoxDrawings = component('BoxDrawings', 'A box with its drawings.', {
  title: Type.String({ description: 'Title of the set' }),
  units: choice('Units on paper', paperUnits),
  inches: choice('How inches are written', inchStyles),
  box: ref(BoxLayoutBody),
  cutPlan: Type.Optional(ref(SheetPlanResult)),
  routing: Type.Optional(ref(Routing)),
  drawings: Type.Array(ref(BoxDrawing), {
    description: 'Panels first, then cut sheets; or the steps of assembly in order; or templates, hole by hole'
  })
})
export interface BoxDrawings extends Si<Static<typeof BoxDrawings>> {}
