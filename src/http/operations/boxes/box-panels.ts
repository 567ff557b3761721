/** POST /v1/boxes/panels */
import { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { BoxLayoutBody } from '../../../contract/boxes/box-result.ts'
import { panelRows } from '../../../documents/panels/list-rows.ts'
import { layOutBox as compute } from '../../../domain/box/layout/lay-out-box.ts'
import { csvOfRecords } from '../../wire/answer/csv-form.ts'
import { defineOperation } from '../../wire/operation.ts'
import { boxCostMs } from './box-cost.ts'
import { boxLaws } from './box-laws.ts'

const driver = {
  cutOutDiameterMm: 282,
  flangeDiameterMm: 312,
  mountingDepthMm: 165,
  magnetDiameterMm: 200,
  magnetHeightMm: 60,
  sdCm2: 480,
  massKg: 9,
  screwCircleDiameterMm: 297,
  screwCount: 8
}

const cutListColumns = [
  'name',
  'role',
  'quantity',
  'material',
  'thicknessMm',
  'lengthMm',
  'widthMm',
  'grain',
  'holes',
  'edges',
  'massKg'
]

export const layOutBox = defineOperation({
  path: '/v1/boxes/panels',
  operationId: 'layOutBox',
  tag: 'Box',
  summary: 'Panels, volume balance and clearances of a box',
  description:
    'Gives the panels with their cut-outs, every litre that something takes from the inside, clearances and mass, from outer sizes or from a net volume. Lid and floor are the full width by the full depth; front and back stand between them; the sides between all four; with `joints`, boards grow by what is let into another. `Accept: text/csv` gives the cut list alone.',
  heavy: true,
  body: BoxRequest,
  result: BoxLayoutBody,
  costMs: boxCostMs,
  laws: boxLaws,
  compute,
  forms: [
    {
      mediaType: 'text/csv',
      description: 'The cut list, a row a kind of panel; length and width of the blank, mass of one',
      render: ({ result }, _request, { digits }) => csvOfRecords(panelRows(result.panels), cutListColumns, digits)
    }
  ],
  examples: {
    plain: {
      summary: 'A closed box by its outer sizes',
      request: { outer: { widthMm: 640, heightMm: 400, depthMm: 380 }, thicknessMm: 18, drivers: [driver] }
    },
    byVolume: {
      summary: 'Two drivers and a tube in 90 litres that must pass under a shelf',
      request: {
        netVolumeL: 90,
        limits: { widthMm: 1000, heightMm: 420, depthMm: 500 },
        thicknessMm: 18,
        frontLayers: 2,
        drivers: [{ ...driver, count: 2 }],
        port: { kind: 'round', innerDiameterMm: 104, outerDiameterMm: 110, lengthMm: 240 }
      }
    },
    foldedSlot: {
      summary: 'Two drivers and a folded slot in a wedge that leans as the seat does',
      request: {
        shape: 'wedge',
        slopeDeg: 20,
        slopedFace: 'back',
        netVolumeL: 85,
        limits: { widthMm: 1050, heightMm: 460, depthMm: 550 },
        thicknessMm: 18,
        frontLayers: 2,
        drivers: [{ ...driver, count: 2 }],
        port: { kind: 'slot', widthMm: 400, heightMm: 45, tuningHz: 36 },
        bracing: { upperHz: 100 }
      }
    },
    bandPass: {
      summary: 'Two chambers with the driver on the board between them and a tube from the front one',
      request: {
        netVolumeL: 80,
        divider: { frontNetVolumeL: 30 },
        limits: { widthMm: 900, heightMm: 420, depthMm: 650, opening: { widthMm: 950, heightMm: 600 } },
        thicknessMm: 18,
        drivers: [{ ...driver, face: 'divider' }],
        port: { kind: 'round', chamber: 'front', innerDiameterMm: 144, outerDiameterMm: 150, insideLengthMm: 70 }
      }
    },
    wedge: {
      summary: 'A wedge against a seat back',
      request: {
        shape: 'wedge',
        outer: { widthMm: 640, heightMm: 400, depthMm: 380, topDepthMm: 250 },
        slopedFace: 'back',
        thicknessMm: 18,
        displacement: { driversL: 2, bracesL: 0.5 }
      }
    }
  }
})
