/** POST /v1/boxes/drawings */
import Type from 'typebox'
import { type BoxDrawings, drawBox as compute, drawingSubjects } from '../../documents/draw-box.ts'
import { drawingBook } from '../../documents/drawing-book.ts'
import { drawingsPdf } from '../../documents/drawings-pdf.ts'
import { inchStyles, paperUnits } from '../../documents/number-text.ts'
import { panelsDxf, sheetsDxf } from '../../documents/panel-dxf.ts'
import { defineOperation } from '../operation.ts'
import { BoxLayoutBody } from '../schemas/box-result.ts'
import { component, ref } from '../schemas/component.ts'
import { choice, label, list, quantity } from '../schemas/quantities.ts'
import { BoxBody } from './box-panels.ts'
import { SheetPlanResult, StockBody } from './box-sheets.ts'

const Body = component('BoxDrawingRequest', 'A box to be drawn.', {
  box: ref(BoxBody),
  show: Type.Optional(choice('What to draw; `both` when absent', drawingSubjects)),
  sheets: Type.Optional(list('Sheets to cut from; the usual sheet of the board when absent', ref(StockBody), 1, 20)),
  kerfMm: Type.Optional(quantity('mm', 'Width of the saw cut', { from: 0, to: 12 })),
  trimMm: Type.Optional(quantity('mm', 'Cut off every edge of a raw sheet first, kerf included', { from: 0, to: 50 })),
  units: Type.Optional(choice('Units on paper; figures of the JSON answer are metric always', paperUnits)),
  inches: Type.Optional(choice('How inches are written on paper', inchStyles)),
  title: Type.Optional(label('Title of the set of drawings', 80))
})

const DrawingBody = component('BoxDrawing', 'One drawing.', {
  subject: choice('A panel, or a sheet with what is cut from it', ['panel', 'cut-sheet']),
  name: Type.String({ description: 'Name of the panel or sheet' }),
  scale: quantity('1', 'The drawing is 1 to this when printed at its size'),
  widthMm: quantity('mm', 'Width on paper'),
  heightMm: quantity('mm', 'Height on paper'),
  svg: Type.String({ description: 'The drawing as SVG text' })
})

const Result = component('BoxDrawings', 'A box with its drawings.', {
  title: Type.String({ description: 'Title of the set' }),
  units: choice('Units on paper', paperUnits),
  inches: choice('How inches are written', inchStyles),
  box: ref(BoxLayoutBody),
  cutPlan: Type.Optional(ref(SheetPlanResult)),
  drawings: Type.Array(ref(DrawingBody), { description: 'Panels first, then cut sheets' })
})

const dxf = ({ box, cutPlan }: BoxDrawings) =>
  cutPlan === undefined ? panelsDxf(box.panels) : sheetsDxf(box.panels, cutPlan)

export const drawBox = defineOperation({
  path: '/v1/boxes/drawings',
  operationId: 'drawBox',
  tag: 'Box',
  summary: 'Panel drawings and cut sheets',
  description:
    'Draws the panels of a box with their dimensions, holes, saw tilts and grain, and the sheets they are cut from. By `Accept`: `image/svg+xml` (all drawings one below the other), `image/vnd.dxf` (millimetres, layers SHEET CUT HOLES POCKET DRILL TEXT, closed contours, true circles; the sheets with everything in place, or with `show: panels` each panel once), `application/pdf` (one A4 page a drawing, to scale), or `application/json` with the layout, the cut plan and each drawing as SVG text.',
  heavy: true,
  body: Body,
  result: Result,
  compute,
  forms: [
    {
      mediaType: 'image/svg+xml',
      description: 'All drawings, one below the other',
      render: ({ result }) => drawingBook(result.drawings, result.title)
    },
    {
      mediaType: 'image/vnd.dxf',
      description: 'Contours for a router or cutting service',
      render: ({ result }) => dxf(result)
    },
    {
      mediaType: 'application/pdf',
      description: 'One page a drawing, to scale',
      render: ({ result }) => drawingsPdf(result.drawings, result.title)
    }
  ],
  examples: {
    panelsOnly: {
      summary: 'Panels of a closed box, metric',
      request: {
        box: {
          outer: { widthMm: 640, heightMm: 400, depthMm: 380 },
          thicknessMm: 18,
          displacement: { driversL: 2 },
          drivers: [{ cutOutDiameterMm: 282, mountingDepthMm: 165, screwCircleDiameterMm: 297, screwCount: 8 }]
        },
        show: 'panels'
      }
    },
    wedgeInInches: {
      summary: 'A wedge and its cut sheet, in inches and sixteenths',
      request: {
        box: {
          shape: 'wedge',
          outer: { widthMm: 640, heightMm: 400, depthMm: 380, topDepthMm: 250 },
          slopedFace: 'back',
          thicknessMm: 18,
          displacement: { driversL: 2 }
        },
        kerfMm: 3.2,
        units: 'imperial',
        inches: 'sixteenths',
        title: 'Boot wedge'
      }
    }
  }
})
