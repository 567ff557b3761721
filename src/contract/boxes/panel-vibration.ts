/** Request and answer of the vibration of one panel. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { count, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { BoardBody } from './board.ts'

const PanelSpans = component('PanelSpans', 'Equal parts that braces divide a panel into.', {
  ofLength: Type.Optional(count('Parts of the length', 1, 20)),
  ofWidth: Type.Optional(count('Parts of the width', 1, 20))
})
const DriverOnPanel = component('DriverOnPanel', 'A driver that hangs on the panel by a circle of screws.', {
  massKg: quantity('kg', 'Mass', { above: 0, to: 100 }),
  screwCircleDiameterMm: quantity('mm', 'Circle of the screws', { above: 0, to: 1500 }),
  fromEndMm: Type.Optional(quantity('mm', 'Centre along the length; the middle when absent', { from: 0, to: 5000 })),
  fromSideMm: Type.Optional(quantity('mm', 'Centre along the width; the middle when absent', { from: 0, to: 5000 }))
})
export const PanelVibrationRequest = component('PanelVibrationRequest', 'One flat panel held along its four edges.', {
  lengthMm: quantity('mm', 'Free between its edges, along the face grain', { from: 20, to: 20_000 }),
  widthMm: quantity('mm', 'Free between its edges, across the face grain', { from: 20, to: 20_000 }),
  thicknessMm: quantity('mm', 'One board', { from: 1, to: 200 }),
  layers: Type.Optional(count('Boards glued face to face', 1, 4)),
  board: Type.Optional(ref(BoardBody)),
  spans: Type.Optional(ref(PanelSpans)),
  driver: Type.Optional(ref(DriverOnPanel)),
  pressurePa: Type.Optional(quantity('Pa', 'Even pressure inside, peak', { from: 0, to: 1e6 })),
  upperHz: Type.Optional(quantity('Hz', 'Top of the band the box plays', { from: 10, to: 2000 }))
})
export interface PanelVibrationRequest extends Si<Static<typeof PanelVibrationRequest>> {}

const PanelFrequencies = component('PanelFrequencies', 'The panel of a glued box lies between the two.', {
  supportedHz: quantity('Hz', 'Edges free to turn'),
  clampedHz: quantity('Hz', 'Edges held from turning')
})
export interface EdgePair extends Si<Static<typeof PanelFrequencies>> {}

const PanelBendingFigures = component('PanelBendingFigures', 'Bending under the pressure given.', {
  largestMm: quantity('mm', 'In the middle'),
  meanMm: quantity('mm', 'Mean over the area'),
  displacedL: quantity('L', 'Volume it moves by')
})
export interface Bending extends Si<Static<typeof PanelBendingFigures>> {}

const PanelBending = component('PanelBending', 'Bending of the panel, or of one span when braced.', {
  supported: ref(PanelBendingFigures, 'Edges free to turn'),
  clamped: ref(PanelBendingFigures, 'Edges held from turning')
})
const PanelRigidity = component('PanelRigidity', 'Bending stiffness per metre.', {
  alongNm: quantity('N·m', 'Along the length'),
  acrossNm: quantity('N·m', 'Along the width'),
  twistNm: quantity('N·m', 'Of twist, with the coupling of the two')
})
export const PanelVibrationResult = component('PanelVibrationResult', 'Where the panel rings and how far it bends.', {
  massPerAreaKgPerM2: quantity('kg/m²', 'Mass of the board'),
  rigidity: ref(PanelRigidity),
  plain: ref(PanelFrequencies, 'Without a brace'),
  halved: ref(PanelFrequencies, 'The longer side halved by a stiff brace'),
  braced: Type.Optional(ref(PanelFrequencies, 'One of the spans given')),
  withDriverHz: Type.Optional(quantity('Hz', 'Without a brace, edges free to turn, with the driver')),
  wantedHz: quantity('Hz', 'What keeps it out of the band'),
  passes: Type.Boolean({ description: 'Whether it does, with edges free to turn' }),
  spansToPass: count('Equal parts of the longer side from which it passes; 20 stands for 20 or more', 1, 20),
  bending: Type.Optional(ref(PanelBending))
})
export interface PanelVibration extends Si<Static<typeof PanelVibrationResult>> {}
