/** POST /v1/boxes/drawings */

import type { BoxDrawings as Drawings } from '../../../contract/boxes/box-drawings.ts'
import { BoxDrawingRequest, BoxDrawings } from '../../../contract/boxes/box-drawings.ts'
import { drawBox as compute } from '../../../documents/box/draw-box.ts'
import { drawingBook } from '../../../documents/box/drawing-book.ts'
import { drawingsPdf } from '../../../documents/box/drawings-pdf.ts'
import { panelsDxf, sheetsDxf } from '../../../documents/panels/panel-dxf.ts'
import { languages } from '../../../domain/languages.ts'
import { defineOperation } from '../../wire/operation.ts'

const dxf = ({ box, cutPlan, routing }: Drawings) =>
  cutPlan === undefined ? panelsDxf(box.panels, routing) : sheetsDxf(box.panels, cutPlan, routing)

export const drawBox = defineOperation({
  path: '/v1/boxes/drawings',
  operationId: 'drawBox',
  tag: 'Box',
  summary: 'Panel drawings and cut sheets',
  description:
    'Draws the panels of a box with their dimensions, holes, saw tilts, screws, grain and what stands against them, and the sheets they are cut from; or, with `show: assembly`, a picture for each step of putting it together, with `show: templates` its round holes as large as life, in pages that A4 and Letter print. By `Accept`: `image/svg+xml` (all drawings one below the other), `image/vnd.dxf` (millimetres, closed contours and true circles on layers CUT and HOLES, POCKET_6.0 by depth, TURNED_6.0 from the other face, DRILL_3.0 by diameter; BEVEL_17.7 by the tilt of an edge, MARK where other parts stand, SHEET and TEXT are not cut; with `router` inside corners are relieved for its cutter, parts are spaced for it, and TABS crosses the outline where a bridge stays; the sheets with everything in place, or with `show: panels` each panel once), `application/pdf` (one A4 page a drawing, to scale), or `application/json` with the layout, the cut plan and each drawing as SVG text.',
  heavy: true,
  body: BoxDrawingRequest,
  result: BoxDrawings,
  costMs: ({ show }) => (show === 'panels' ? 2.5 : 15),
  compute,
  forms: [
    {
      mediaType: 'image/svg+xml',
      description: 'All drawings, one below the other',
      render: ({ result }, _request, { language = 'en' }) =>
        drawingBook(result.drawings, result.title, languages[language])
    },
    {
      mediaType: 'image/vnd.dxf',
      description: 'Contours for a router or cutting service',
      render: ({ result }) => dxf(result)
    },
    {
      mediaType: 'application/pdf',
      description: 'One page a drawing, to scale',
      moreMs: 300,
      render: ({ result }, _request, { language = 'en' }) =>
        drawingsPdf(result.drawings, result.title, languages[language])
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
    assemblySteps: {
      summary: 'The steps of assembly of a braced box with a slot',
      request: {
        box: {
          outer: { widthMm: 960, heightMm: 420, depthMm: 420 },
          thicknessMm: 18,
          displacement: { driversL: 4 },
          drivers: [{ cutOutDiameterMm: 282, flangeDiameterMm: 312, mountingDepthMm: 165, count: 2 }],
          port: { kind: 'slot', widthMm: 400, heightMm: 40, lengthMm: 600 },
          bracing: { upperHz: 120 }
        },
        show: 'assembly'
      }
    },
    forARouter: {
      summary: 'The sheets of a box with a slot for a router with a cutter of 6 mm',
      request: {
        box: {
          outer: { widthMm: 640, heightMm: 400, depthMm: 400 },
          thicknessMm: 18,
          displacement: { driversL: 2 },
          drivers: [{ cutOutDiameterMm: 282, flangeDiameterMm: 312, mountingDepthMm: 165, screwCircleDiameterMm: 297 }],
          port: { kind: 'slot', widthMm: 300, heightMm: 40, lengthMm: 300 },
          fittings: { terminal: { cutOutWidthMm: 100, cutOutHeightMm: 60 } }
        },
        show: 'cut-sheets',
        router: { cutterMm: 6 }
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
