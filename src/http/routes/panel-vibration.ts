/** POST /v1/boxes/panel-vibration */
import Type from 'typebox'
import { checkPanelVibration as compute } from '../../domain/box/panel-vibration.ts'
import { defineOperation } from '../operation.ts'
import { BoardBody } from '../schemas/board.ts'
import { component, ref } from '../schemas/component.ts'
import { count, quantity } from '../schemas/quantities.ts'

const SpansBody = component('PanelSpans', 'Equal parts that braces divide a panel into.', {
  ofLength: Type.Optional(count('Parts of the length', 1, 20)),
  ofWidth: Type.Optional(count('Parts of the width', 1, 20))
})

const DriverBody = component('DriverOnPanel', 'A driver that hangs on the panel by a circle of screws.', {
  massKg: quantity('kg', 'Mass', { above: 0, to: 100 }),
  screwCircleDiameterMm: quantity('mm', 'Circle of the screws', { above: 0, to: 1500 }),
  fromEndMm: Type.Optional(quantity('mm', 'Centre along the length; the middle when absent', { from: 0, to: 5000 })),
  fromSideMm: Type.Optional(quantity('mm', 'Centre along the width; the middle when absent', { from: 0, to: 5000 }))
})

const Body = component('PanelVibrationRequest', 'One flat panel held along its four edges.', {
  lengthMm: quantity('mm', 'Free between its edges, along the face grain', { from: 20, to: 20_000 }),
  widthMm: quantity('mm', 'Free between its edges, across the face grain', { from: 20, to: 20_000 }),
  thicknessMm: quantity('mm', 'One board', { from: 1, to: 200 }),
  layers: Type.Optional(count('Boards glued face to face', 1, 4)),
  board: Type.Optional(ref(BoardBody)),
  spans: Type.Optional(ref(SpansBody)),
  driver: Type.Optional(ref(DriverBody)),
  pressurePa: Type.Optional(quantity('Pa', 'Even pressure inside, peak', { from: 0, to: 1e6 })),
  upperHz: Type.Optional(quantity('Hz', 'Top of the band the box plays', { from: 10, to: 2000 }))
})

const PairBody = component('PanelFrequencies', 'The panel of a glued box lies between the two.', {
  supportedHz: quantity('Hz', 'Edges free to turn'),
  clampedHz: quantity('Hz', 'Edges held from turning')
})

const BendingBody = component('PanelBendingFigures', 'Bending under the pressure given.', {
  largestMm: quantity('mm', 'In the middle'),
  meanMm: quantity('mm', 'Mean over the area'),
  displacedL: quantity('l', 'Volume it moves by')
})

const BendingPairBody = component('PanelBending', 'Bending of the panel, or of one span when braced.', {
  supported: ref(BendingBody, 'Edges free to turn'),
  clamped: ref(BendingBody, 'Edges held from turning')
})

const RigidityBody = component('PanelRigidity', 'Bending stiffness per metre.', {
  alongNm: quantity('N·m', 'Along the length'),
  acrossNm: quantity('N·m', 'Along the width'),
  twistNm: quantity('N·m', 'Of twist, with the coupling of the two')
})

const Result = component('PanelVibrationResult', 'Where the panel rings and how far it bends.', {
  massPerAreaKgPerM2: quantity('kg/m²', 'Mass of the board'),
  rigidity: ref(RigidityBody),
  plain: ref(PairBody, 'Without a brace'),
  halved: ref(PairBody, 'The longer side halved by a stiff brace'),
  braced: Type.Optional(ref(PairBody, 'One of the spans given')),
  withDriverHz: Type.Optional(quantity('Hz', 'Without a brace, edges free to turn, with the driver')),
  wantedHz: quantity('Hz', 'What keeps it out of the band'),
  passes: Type.Boolean({ description: 'Whether it does, with edges free to turn' }),
  spansToPass: count('Equal parts of the longer side from which it passes; 20 stands for 20 or more', 1, 20),
  bending: Type.Optional(ref(BendingPairBody))
})

export const checkPanelVibration = defineOperation({
  path: '/v1/boxes/panel-vibration',
  operationId: 'checkPanelVibration',
  tag: 'Box',
  summary: 'Fundamental frequency and bending of one panel',
  description:
    'Thin-plate figures of a flat panel with edges free to turn and with edges held: frequency, with a brace halving the longer side or with the spans given, with a driver on it, and bending under a pressure.',
  body: Body,
  result: Result,
  compute,
  examples: {
    side: {
      summary: 'A large MDF panel under the pressure of a closed box',
      request: { lengthMm: 604, widthMm: 364, thicknessMm: 18, pressurePa: 1702, upperHz: 120 }
    },
    baffle: {
      summary: 'A double plywood front that carries a heavy driver, with one brace',
      request: {
        lengthMm: 604,
        widthMm: 364,
        thicknessMm: 17.7,
        layers: 2,
        board: { material: 'birch-plywood' },
        spans: { ofLength: 2 },
        driver: { massKg: 9, screwCircleDiameterMm: 300 }
      }
    }
  }
})
