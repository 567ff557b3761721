/** A laid-out box on the wire. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { DirectionBody, PanelBody, Point3Body } from './panel.ts'
import { boxShapes, displacedItems } from './words.ts'

const OuterBody = component('BoxOuterSize', 'Outer size of the box.', {
  widthMm: quantity('mm', 'Width'),
  heightMm: quantity('mm', 'Height'),
  depthMm: quantity('mm', 'Depth, of a wedge at its floor'),
  topDepthMm: Type.Optional(quantity('mm', 'Depth of a wedge at its lid')),
  slopeDeg: Type.Optional(quantity('°', 'Lean of the sloped face of a wedge from the vertical')),
  acrossSlopeDeg: Type.Optional(quantity('°', 'Lean of the face across from it')),
  lidSlopeDeg: Type.Optional(quantity('°', 'Fall of its lid to the rear'))
})

const InnerBody = component('BoxInnerSize', 'The smallest block round the air inside.', {
  widthMm: quantity('mm', 'Width'),
  heightMm: quantity('mm', 'Height'),
  depthMm: quantity('mm', 'Depth')
})

const DisplacedBody = component('Displaced', 'Air that each thing takes.', {
  driversL: quantity('L', 'Drivers'),
  portsL: quantity('L', 'Ports, their walls and the air in them, which is mass and not spring'),
  bracesL: quantity('L', 'Braces'),
  amplifierL: quantity('L', 'Amplifier'),
  terminalL: quantity('L', 'Terminal cup'),
  liningL: quantity('L', 'Solid part of the lining'),
  baffleRingsL: quantity('L', 'Rings behind the drivers'),
  cleatsL: quantity('L', 'Cleats'),
  dividerL: quantity('L', 'Board between two chambers'),
  otherL: quantity('L', 'Anything else given'),
  totalL: quantity('L', 'All of them')
})
export interface Displaced extends Si<Static<typeof DisplacedBody>> {}

const VolumeRowBody = component('VolumeRow', 'One line of the subtraction.', {
  item: choice('What takes it', displacedItems),
  volumeL: quantity('L', 'Volume'),
  known: choice('How the volume is known', ['given', 'computed', 'estimated']),
  how: Type.String({ description: 'How it was reached' })
})
export interface VolumeRow extends Si<Static<typeof VolumeRowBody>> {}

const VolumeBody = component('VolumeBalance', 'From the outer envelope to the air that acts as the spring.', {
  externalL: quantity('L', 'Outer envelope'),
  boardL: quantity('L', 'Wood of the shell'),
  recessL: quantity('L', 'Hollow before a recessed front'),
  grossL: quantity('L', 'Inside of the panels, empty'),
  displaced: ref(DisplacedBody),
  rows: Type.Array(ref(VolumeRowBody), { description: 'Every line of the subtraction' }),
  netL: quantity('L', 'Air that acts as the spring'),
  targetL: Type.Optional(quantity('L', 'The net volume asked for')),
  errorPercent: Type.Optional(quantity('%', 'How far the box is from it'))
})

const ChamberBody = component('Chamber', 'One chamber of a box with an inner divider.', {
  name: choice('Which', ['rear', 'front']),
  grossL: quantity('L', 'Empty'),
  displacedL: quantity('L', 'Taken by what stands in it'),
  netL: quantity('L', 'Air that acts as the spring')
})
export interface Chamber extends Si<Static<typeof ChamberBody>> {}

const ClearanceBody = component('Clearance', 'A distance that was checked.', {
  between: Type.String({ description: 'What to what' }),
  availableMm: quantity('mm', 'What there is; negative when they overlap'),
  neededMm: quantity('mm', 'What there should be'),
  passes: Type.Boolean({ description: 'Whether there is enough' }),
  why: Type.String({ description: 'The rule' })
})

const CornerFillBody = component('CornerFill', 'Quarter rounds in the outer corners of a slot, about the inner ones.', {
  count: count('How many', 1, 2),
  radiusMm: quantity('mm', 'Of the hollow'),
  lengthMm: quantity('mm', 'Of one, across the channel')
})

const PortBody = component('PortLayout', 'The port as built.', {
  kind: choice('Tubes or a slot', ['round', 'slot']),
  count: count('How many', 1, 8),
  areaCm2: quantity('cm²', 'Of one'),
  lengthMm: quantity('mm', 'Outer face to inner mouth along the centre line'),
  acousticLengthMm: quantity('mm', 'The same less what the air cuts off at its bends'),
  insideLengthMm: quantity('mm', 'The part behind the inner face of the panel'),
  legs: count('Straight parts along the walls', 1, 3),
  turnsDeg: Type.Array(quantity('°', 'Turn of the flow'), { description: 'At each bend' }),
  cornerFill: Type.Optional(ref(CornerFillBody)),
  displacedL: quantity('L', 'Air it takes from the box, walls included'),
  flareRadiusMm: Type.Optional(quantity('mm', 'To which both mouths open')),
  endFactor: quantity('1', 'Both ends over the radius of the circle of equal area, flares in it'),
  mouthGapMm: Type.Optional(quantity('mm', 'Of a slot: clear before its inner mouth')),
  tuningHz: quantity('Hz', 'With end factors of the circle of equal area'),
  wantedTuningHz: Type.Optional(quantity('Hz', 'The tuning asked for')),
  tuningErrorPercent: Type.Optional(quantity('%', 'How far it is from that, after rounding to a millimetre')),
  placedTuningHz: Type.Optional(
    quantity(
      'Hz',
      'Of a slot over the full width: with the end its walls and the facing wall give it, within some 10 %'
    )
  ),
  pipeResonanceHz: quantity('Hz', 'First resonance of the port as a pipe')
})
export interface PortLayout extends Si<Static<typeof PortBody>> {}

const FaceVibrationBody = component('FaceVibration', 'One face as a plate between the other panels.', {
  face: Type.String({ description: 'Which' }),
  lengthMm: quantity('mm', 'Free length'),
  widthMm: quantity('mm', 'Free width'),
  thicknessMm: quantity('mm', 'All its boards'),
  supportedHz: quantity('Hz', 'Bare, edges free to turn'),
  clampedHz: quantity('Hz', 'Bare, edges held'),
  frames: count('Frames and cheeks that cross it', 0, 8),
  battens: count('Battens in each span', 0, 8),
  builtHz: quantity('Hz', 'Edges free to turn, with its braces and the drivers of given mass'),
  wantedHz: quantity('Hz', 'What keeps it out of the band'),
  passes: Type.Boolean({ description: 'Whether frequency and bending do' }),
  largestBendingMm: Type.Optional(quantity('mm', 'Under the pressure of the box, between free and held edges')),
  displacedL: Type.Optional(quantity('L', 'Volume it moves by'))
})
export interface FaceVibration extends Si<Static<typeof FaceVibrationBody>> {}

const VibrationBody = component('BoxVibration', 'How stiff the box is.', {
  wantedHz: quantity('Hz', '1.5 times the top of the band'),
  pressurePa: Type.Optional(
    quantity('Pa', 'Peak pressure: given, or that of a closed box at full excursion of its drivers')
  ),
  faces: Type.Array(ref(FaceVibrationBody), { description: 'Every face' }),
  movedSharePercent: Type.Optional(quantity('%', 'What all faces move over what the cones move'))
})
export interface BoxVibration extends Si<Static<typeof VibrationBody>> {}

const StandingWaveBody = component('BoxStandingWave', 'Lowest standing wave along one inside size.', {
  along: choice('Which size', ['width', 'height', 'depth']),
  insideMm: quantity('mm', 'Inside'),
  frequencyHz: quantity('Hz', 'c/(2L)')
})
export interface StandingWave extends Si<Static<typeof StandingWaveBody>> {}

const SpareBody = component('BoxSpare', 'One outer size against its limit.', {
  axis: choice('Which size', ['width', 'height', 'depth']),
  sizeMm: quantity('mm', 'Box with covering and play'),
  limitMm: quantity('mm', 'Limit, less what a leaning seat takes at the lid'),
  spareMm: quantity('mm', 'What is left; negative when it does not fit')
})
export interface Spare extends Si<Static<typeof SpareBody>> {}

const OpeningFitBody = component(
  'BoxThroughOpening',
  'Pushed straight through, or tilted in the plane of the opening.',
  {
    passes: Type.Boolean({ description: 'Whether a face passes' }),
    face: choice('Which goes through', ['front', 'side', 'lid', 'none']),
    tilted: Type.Boolean({ description: 'Whether it has to be tilted' })
  }
)
export interface OpeningFit extends Si<Static<typeof OpeningFitBody>> {}

const FloorPlaceBody = component('BoxPlace', 'Where the box stands on the floor of the boot.', {
  xMm: quantity('mm', 'From the left'),
  yMm: quantity('mm', 'From the seat or the sill')
})

const FitBody = component('BoxFit', 'The box in its place.', {
  spare: Type.Array(ref(SpareBody), { description: 'Every limit given' }),
  opening: Type.Optional(ref(OpeningFitBody)),
  place: Type.Optional(ref(FloorPlaceBody)),
  clearOfKeepOuts: Type.Optional(Type.Boolean({ description: 'Whether there is a place clear of every block' }))
})
export interface BoxFit extends Si<Static<typeof FitBody>> {}

const AssemblyStepBody = component('AssemblyStep', 'What is moved into its place at once.', {
  parts: Type.Array(Type.String(), {
    description:
      'Names as in the model, the second layer of a board with a 2 behind its name; layers and battens are glued to their board beforehand'
  }),
  towards: ref(DirectionBody, 'The way it is moved')
})

const ReachBody = component('BoxReach', 'A thing inside that is fastened, wired or sealed by hand.', {
  part: Type.String({ description: 'Name as in the model' }),
  through: Type.Optional(
    Type.String({ description: 'Driver through whose hole a straight arm reaches it; absent where none lets one in' })
  ),
  lengthMm: Type.Optional(quantity('mm', 'From that hole'))
})

const AssemblyBody = component(
  'BoxAssembly',
  'The order in which the box goes together: taken apart along straight ways, and that turned round.',
  {
    steps: Type.Array(ref(AssemblyStepBody), { description: 'From the first board to the last driver' }),
    reach: Type.Array(ref(ReachBody), {
      description: 'What a hand still reaches when the box is closed and its drivers are out'
    }),
    stuck: Type.Array(Type.String(), {
      description: 'What no straight way leads to, whatever is put on before; empty for a box that goes together'
    })
  }
)

export const BoxLayoutBody = component('BoxLayoutResult', 'The box, ready to be sawn.', {
  shape: choice('Shape', boxShapes),
  outer: ref(OuterBody),
  inner: ref(InnerBody),
  volume: ref(VolumeBody),
  chambers: Type.Optional(list('Chambers of a band-pass box', ref(ChamberBody), 2, 2)),
  panels: list('Parts; equal ones in one row', ref(PanelBody), 3, 80),
  boardAreaM2: quantity('m²', 'Blanks of all parts, cut-outs not taken off'),
  port: Type.Optional(ref(PortBody)),
  vibration: ref(VibrationBody),
  standingWaves: Type.Array(ref(StandingWaveBody), { description: 'The first along each inside size' }),
  fit: Type.Optional(ref(FitBody)),
  clearances: Type.Array(ref(ClearanceBody), { description: 'Distances that were checked' }),
  assembly: ref(AssemblyBody),
  massKg: quantity('kg', 'Boards, and drivers and amplifier of given mass'),
  boardMassKg: quantity('kg', 'Boards alone, cut-outs taken off'),
  centreOfGravity: ref(Point3Body, 'Of boards and drivers')
})
export interface BoxLayout extends Si<Static<typeof BoxLayoutBody>> {}
