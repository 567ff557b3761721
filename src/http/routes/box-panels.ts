/** POST /v1/boxes/panels */
import Type from 'typebox'
import { panelRows } from '../../documents/list-rows.ts'
import { boxShapes } from '../../domain/box/box-layout.ts'
import { strategies } from '../../domain/box/box-request.ts'
import { layOutBox as compute } from '../../domain/box/lay-out-box.ts'
import { csvOfRecords } from '../csv-form.ts'
import { defineOperation } from '../operation.ts'
import { AirBody } from '../schemas/air.ts'
import { BoardBody } from '../schemas/board.ts'
import { BoxDriverBody, BoxPortBody, DisplacementBody, FittingsBody } from '../schemas/box-hardware.ts'
import { BoxLayoutBody } from '../schemas/box-result.ts'
import { component, ref } from '../schemas/component.ts'
import { choice, count, list, quantity } from '../schemas/quantities.ts'

const size = (what: string) => Type.Optional(quantity('mm', what, { from: 50, to: 3000 }))

const OuterBody = component('BoxOuterWish', 'Outer sizes that are fixed; the others are solved for `netVolumeL`.', {
  widthMm: size('Width'),
  heightMm: size('Height'),
  depthMm: size('Depth, of a wedge at its floor'),
  topDepthMm: size('Depth of a wedge at its lid')
})

const OpeningBody = component('BootOpening', 'What the box has to pass to get in.', {
  widthMm: quantity('mm', 'Clear width', { from: 100, to: 3000 }),
  heightMm: quantity('mm', 'Clear height', { from: 100, to: 3000 })
})

const KeepOutBody = component(
  'KeepOut',
  'A block on the floor of the boot, whose floor is as wide and deep as the limits.',
  {
    xMm: quantity('mm', 'Left edge, from the left wall', { from: 0, to: 3000 }),
    yMm: quantity('mm', 'Near edge, from the seat or sill the box is pushed against', { from: 0, to: 3000 }),
    zMm: quantity('mm', 'Underside, above the floor', { from: 0, to: 3000 }),
    widthMm: quantity('mm', 'Width', { above: 0, to: 3000 }),
    depthMm: quantity('mm', 'Depth', { above: 0, to: 3000 }),
    heightMm: quantity('mm', 'Height', { above: 0, to: 3000 })
  }
)

const DividerBody = component(
  'Divider',
  'Board between the chambers of a band-pass box, parallel to the front; drivers may stand on it.',
  {
    fromFrontMm: Type.Optional(quantity('mm', 'Clear depth of the front chamber', { from: 10, to: 3000 })),
    frontNetVolumeL: Type.Optional(quantity('l', 'Instead: net volume of the front chamber', { above: 0, to: 1000 }))
  }
)

export const LimitsBody = component('BoxLimits', 'The space the box may take.', {
  widthMm: size('Widest'),
  heightMm: size('Highest'),
  depthMm: size('Deepest, at the floor'),
  seatSlopeDeg: Type.Optional(
    quantity('°', 'Lean of the seat back from the vertical, into the boot', { from: 0, to: 60 })
  ),
  clearanceMm: Type.Optional(quantity('mm', 'Play on every side', { from: 0, to: 100 })),
  coveringMm: Type.Optional(quantity('mm', 'Carpet on every face', { from: 0, to: 30 })),
  opening: Type.Optional(ref(OpeningBody)),
  keepOuts: Type.Optional(list('Wheel arches and other blocks in the way', ref(KeepOutBody), 1, 12))
})

const CornerBody = component('FootprintCorner', 'A corner of a footprint seen from above.', {
  xMm: quantity('mm', 'To the right', { from: -3000, to: 3000 }),
  yMm: quantity('mm', 'To the rear', { from: -3000, to: 3000 })
})

const PrismBody = component('Prism', 'An upright box over a free polygon.', {
  footprint: list('Outer corners in order, either way round', ref(CornerBody), 3, 16),
  baffleEdge: Type.Optional(count('Edge with the front: 1 runs from the first corner to the second', 1, 16))
})

const JointsBody = component('Joints', 'How the panels meet.', {
  sides: Type.Optional(
    choice('Sides (of a prism: lid and floor) between the walls, or over their ends', ['between', 'over'])
  ),
  corners: Type.Optional(choice('Butt joints, or mitres round the profile', ['butt', 'mitre']))
})

const BracingBody = component('BracingWish', 'Present, even empty: braces are placed until every panel passes.', {
  upperHz: Type.Optional(quantity('Hz', 'Top of the band the box plays; 120 Hz when absent', { from: 20, to: 500 })),
  pressurePa: Type.Optional(
    quantity('Pa', 'Peak pressure inside, e.g. from the response; that of a closed box at full excursion when absent', {
      above: 0,
      to: 20_000
    })
  )
})

export const BoxBody = component('BoxRequest', 'A box by its outer sizes, or by the net volume it shall hold.', {
  shape: Type.Optional(choice('Shape; rectangular when absent', boxShapes)),
  outer: Type.Optional(ref(OuterBody)),
  netVolumeL: Type.Optional(quantity('l', 'Air wanted inside, everything taken off', { above: 0, to: 2000 })),
  limits: Type.Optional(ref(LimitsBody)),
  strategy: Type.Optional(
    choice('Which way the box grows: in balanced proportions, or low, shallow or narrow first', strategies)
  ),
  sawStepMm: Type.Optional(quantity('mm', 'Step the saw is set by', { from: 0.1, to: 10 })),
  slopedFace: Type.Optional(choice('Of a wedge', ['front', 'back'])),
  slopeDeg: Type.Optional(quantity('°', 'Lean of that face from the vertical', { from: -60, to: 60 })),
  prism: Type.Optional(ref(PrismBody)),
  thicknessMm: quantity('mm', 'Board of all panels, as measured', { from: 3, to: 60 }),
  frontLayers: Type.Optional(count('Boards of the front', 1, 3)),
  recessMm: Type.Optional(quantity('mm', 'Front set back behind the edges round it', { from: 0, to: 200 })),
  board: Type.Optional(ref(BoardBody)),
  joints: Type.Optional(ref(JointsBody)),
  drivers: Type.Optional(list('Drivers', ref(BoxDriverBody), 1, 4)),
  port: Type.Optional(ref(BoxPortBody)),
  divider: Type.Optional(ref(DividerBody)),
  bracing: Type.Optional(ref(BracingBody)),
  displacement: Type.Optional(ref(DisplacementBody)),
  fittings: Type.Optional(ref(FittingsBody)),
  air: Type.Optional(ref(AirBody))
})

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
    'Gives the panels with their cut-outs, every litre that something takes from the inside, clearances and mass, from outer sizes or from a net volume. Butt joints: lid and floor are the full width by the full depth; front and back stand between them; the sides stand between all four. `Accept: text/csv` gives the cut list alone.',
  heavy: true,
  body: BoxBody,
  result: BoxLayoutBody,
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
