/** POST /v1/boxes/sheets */
import { SheetPlanRequest, SheetPlanResult } from '../../../contract/boxes/box-sheets.ts'
import { cutRows } from '../../../documents/panels/list-rows.ts'
import { nestPanels as compute } from '../../../domain/sheet/nest-panels.ts'
import { csvOfRecords } from '../../wire/answer/csv-form.ts'
import { defineOperation } from '../../wire/operation.ts'
import { sheetLaws } from './sheet-laws.ts'

const mdf = { name: 'full sheet', lengthMm: 2440, widthMm: 1220, thicknessMm: 18, material: 'mdf', grain: 'none' }

const cutColumns = [
  'sheetNumber',
  'sheet',
  'material',
  'thicknessMm',
  'trimMm',
  'step',
  'part',
  'along',
  'distanceMm',
  'cutLengthMm',
  'nearIs',
  'nearName',
  'nearLengthMm',
  'nearWidthMm',
  'farIs',
  'farName',
  'farLengthMm',
  'farWidthMm'
]

export const nestPanels = defineOperation({
  path: '/v1/boxes/sheets',
  operationId: 'nestPanels',
  tag: 'Box',
  summary: 'Cut plan of panels on sheets',
  description:
    'Lays panels on sheets with edge-to-edge cuts (a panel saw makes no others): kerf, trim, grain, several sheet sizes, stock and prices. Gives every cut in order with its fence setting, the offcuts, and a proved lower bound with the distance to it. `Accept: text/csv` gives the cuts alone, in the order of work.',
  heavy: true,
  body: SheetPlanRequest,
  result: SheetPlanResult,
  costMs: ({ sheets }) => 10 * sheets.length,
  laws: sheetLaws,
  compute,
  forms: [
    {
      mediaType: 'text/csv',
      description: 'The cuts in the order of work: which part, which way, the fence, and what comes off near and far',
      render: ({ result }, _request, { digits }) => csvOfRecords(cutRows(result.layouts), cutColumns, digits)
    }
  ],
  examples: {
    sealedBox: {
      summary: 'Seven panels of a plain box on one sheet',
      request: {
        panels: [
          { name: 'top and bottom', quantity: 2, lengthMm: 640, widthMm: 380, thicknessMm: 18 },
          { name: 'front and back', quantity: 2, lengthMm: 640, widthMm: 364, thicknessMm: 18 },
          { name: 'side', quantity: 2, lengthMm: 364, widthMm: 344, thicknessMm: 18 },
          { name: 'brace', quantity: 1, lengthMm: 364, widthMm: 344, thicknessMm: 18 }
        ],
        sheets: [mdf],
        kerfMm: 3.2
      }
    },
    twoSizes: {
      summary: 'Grained plywood, two sheet sizes with prices and limited stock',
      request: {
        panels: [
          {
            name: 'baffle',
            quantity: 4,
            lengthMm: 700,
            widthMm: 420,
            thicknessMm: 18,
            material: 'birch',
            grain: 'length'
          },
          {
            name: 'wall',
            quantity: 8,
            lengthMm: 420,
            widthMm: 384,
            thicknessMm: 18,
            material: 'birch',
            grain: 'width'
          },
          { name: 'batten', quantity: 6, lengthMm: 384, widthMm: 60, thicknessMm: 18, material: 'birch' }
        ],
        sheets: [
          { name: 'large', lengthMm: 2500, widthMm: 1250, thicknessMm: 18, material: 'birch', price: 96, quantity: 3 },
          { name: 'square', lengthMm: 1525, widthMm: 1525, thicknessMm: 18, material: 'birch', price: 68, quantity: 1 }
        ],
        kerfMm: 2.8,
        trimMm: 12
      }
    }
  }
})
