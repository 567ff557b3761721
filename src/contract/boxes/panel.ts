/** Parts of a box on the wire. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { boardIds, cutOutPurposes, panelRoles } from './words.ts'

const PanelPointBody = component('PanelPoint', 'A point on the outer face of a part.', {
  uMm: quantity('mm', 'To the right of the lower left corner'),
  vMm: quantity('mm', 'Above the lower left corner')
})

export const Point3Body = component(
  'BoxPoint',
  'A point in the box: x from left to right and z upwards seen from the front, y from front to rear, from the outer bottom front left corner.',
  {
    xMm: quantity('mm', 'From the left'),
    yMm: quantity('mm', 'From the front'),
    zMm: quantity('mm', 'From the floor')
  }
)
export interface Point3 extends Si<Static<typeof Point3Body>> {}

export const DirectionBody = component('BoxDirection', 'A unit vector in the axes of the box.', {
  x: quantity('1', 'Share to the right'),
  y: quantity('1', 'Share to the rear'),
  z: quantity('1', 'Share upwards')
})

const ScrewCircleBody = component('ScrewCircle', 'Holes evenly on a circle.', {
  diameterMm: quantity('mm', 'Circle through the centres of the holes', { above: 0 }),
  count: count('Holes', 1, 48),
  startAngleDeg: quantity('°', 'First hole, anticlockwise from u', { from: 0, to: 360 }),
  holeDiameterMm: quantity('mm', 'Diameter of the pilots for that screw; a T-nut has them opened to its barrel', {
    above: 0
  }),
  screw: Type.String({ description: 'What goes into the holes, by the mass of the driver; a plan buys the same' })
})

const CutOutBody = component('CutOut', 'A hole, or a rebate when it has a depth.', {
  kind: choice('Outline', ['circle', 'rectangle']),
  purpose: choice('What it is for', cutOutPurposes),
  label: Type.String({ description: 'What goes into it' }),
  uMm: quantity('mm', 'Centre, to the right of the lower left corner of the outer face'),
  vMm: quantity('mm', 'Centre, above the lower left corner of the outer face'),
  diameterMm: Type.Optional(quantity('mm', 'Of a circle', { above: 0 })),
  widthMm: Type.Optional(quantity('mm', 'Of a rectangle, along u', { above: 0 })),
  heightMm: Type.Optional(quantity('mm', 'Of a rectangle, along v', { above: 0 })),
  cornerRadiusMm: Type.Optional(quantity('mm', 'Inside corners of a rectangle', { from: 0 })),
  roundingRadiusMm: Type.Optional(
    quantity('mm', 'The outer arris of its long side is rounded to this radius after assembly: mouth of a slot', {
      above: 0
    })
  ),
  rebateDepthMm: Type.Optional(quantity('mm', 'Depth; right through when absent', { above: 0 })),
  face: Type.Optional(choice('Face it is sunk into; the outer one when absent', ['inner'])),
  screwCircle: Type.Optional(ref(ScrewCircleBody))
})
export interface CutOut extends Si<Static<typeof CutOutBody>> {}

const PanelEdgeBody = component('PanelEdge', 'An edge that is not simply sawn square and left sharp.', {
  edge: count('Edge from this point of the outline to the next', 0, 63),
  tiltDeg: quantity('°', 'Tilt of the saw from a square cut', { from: 0, to: 90 }),
  longFace: choice('The face on which the part is longer at this edge', ['outer', 'inner', 'equal']),
  roundingRadiusMm: Type.Optional(
    quantity(
      'mm',
      'The outer arris may be rounded to this radius after assembly, of the outermost board where several lie on one another; edges without it stay sharp',
      { above: 0 }
    )
  )
})
export interface PanelEdge extends Si<Static<typeof PanelEdgeBody>> {}

const PanelPlaceBody = component('PanelPlace', 'Where the frame of a part lies in the box.', {
  origin: ref(Point3Body),
  uAxis: ref(DirectionBody),
  vAxis: ref(DirectionBody)
})
export interface PanelPlace extends Si<Static<typeof PanelPlaceBody>> {}

const PanelMarkBody = component(
  'PanelMark',
  'A strip of a face on which the edge of another part stands, by its middle line; to be marked before assembly.',
  {
    part: Type.String({ description: 'What stands there' }),
    face: choice('On which face of this part', ['outer', 'inner']),
    from: ref(PanelPointBody, 'One end of the middle line, in the frame of the outer face'),
    to: ref(PanelPointBody, 'The other end'),
    widthMm: quantity('mm', 'Across the strip: board of what stands there', { from: 0 }),
    screws: Type.Array(ref(PanelPointBody), {
      description: 'Where screws go in from outside until the glue has set; none where it is glued only'
    })
  }
)
export interface PanelMark extends Si<Static<typeof PanelMarkBody>> {}

const PanelCopyBody = component('PanelCopy', 'One of equal parts, in its place.', {
  name: Type.String({ description: 'As the order of assembly and the model name it' }),
  place: ref(PanelPlaceBody),
  marks: Type.Array(ref(PanelMarkBody), { description: 'What stands against it' })
})

export const PanelBody = component(
  'Panel',
  'A part as it leaves the saw. Its frame lies on the outer face: origin at the lower left corner of the blank, u to the right, v up, seen from outside.',
  {
    name: Type.String({ description: 'Name of the part' }),
    role: choice('What it does', panelRoles),
    quantity: count('How many alike', 1, 64),
    material: choice('Board, as in the table of materials', boardIds),
    lengthMm: quantity('mm', 'Larger side of the blank', { above: 0 }),
    widthMm: quantity('mm', 'Smaller side of the blank', { above: 0 }),
    thicknessMm: quantity('mm', 'Board', { above: 0 }),
    lengthAlong: choice('Direction of the larger side in the frame', ['u', 'v']),
    grain: choice('Direction of the face grain on the sheet', ['length', 'width', 'any']),
    outline: list('Corners of the blank, anticlockwise', ref(PanelPointBody), 3, 64),
    edges: Type.Array(ref(PanelEdgeBody), {
      description: 'Edges that need more than a square cut, or that may be rounded'
    }),
    cutOuts: Type.Array(ref(CutOutBody), { description: 'Holes and rebates' }),
    massKg: quantity('kg', 'One part, cut-outs taken off', { from: 0 }),
    place: Type.Optional(ref(PanelPlaceBody, 'Of the first of them')),
    copies: Type.Optional(list('Each of them in its place', ref(PanelCopyBody), 1, 64))
  }
)
export interface Panel extends Si<Static<typeof PanelBody>> {}
