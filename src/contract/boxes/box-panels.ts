/** Request of a box: sizes, space, drivers, port, joints, bracing. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { BoardBody } from './board.ts'
import { BoxDriverBody, BoxPortBody, DisplacementBody, FittingsBody } from './box-hardware.ts'
import { boxShapes, cornerJoints, innerJoints, strategies } from './words.ts'

const size = (what: string) => Type.Optional(quantity('mm', what, { from: 50, to: 3000 }))
const BoxOuterWish = component('BoxOuterWish', 'Outer sizes that are fixed; the others are solved for `netVolumeL`.', {
  widthMm: size('Width'),
  heightMm: size('Height, of a sloping lid at its highest'),
  depthMm: size('Depth, of a wedge at its floor'),
  topDepthMm: size('Depth of a wedge at its lid')
})
const BootOpening = component('BootOpening', 'What the box has to pass to get in.', {
  widthMm: quantity('mm', 'Clear width', { from: 100, to: 3000 }),
  heightMm: quantity('mm', 'Clear height', { from: 100, to: 3000 })
})
export interface BootOpening extends Si<Static<typeof BootOpening>> {}
const KeepOut = component(
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
export interface Block extends Si<Static<typeof KeepOut>> {}

const Divider = component(
  'Divider',
  'Board between the chambers of a band-pass box, parallel to the front; drivers may stand on it.',
  {
    fromFrontMm: Type.Optional(quantity('mm', 'Clear depth of the front chamber', { from: 10, to: 3000 })),
    frontNetVolumeL: Type.Optional(quantity('L', 'Instead: net volume of the front chamber', { above: 0, to: 1000 })),
    screwedFront: Type.Optional(Type.Boolean({ description: 'The front is screwed on over a gasket and comes off' }))
  }
)

export const BoxLimits = component('BoxLimits', 'The space the box may take.', {
  widthMm: size('Widest'),
  heightMm: size('Highest'),
  depthMm: size('Deepest, at the floor'),
  seatSlopeDeg: Type.Optional(
    quantity('°', 'Lean of the seat back from the vertical, into the boot', { from: 0, to: 60 })
  ),
  clearanceMm: Type.Optional(quantity('mm', 'Play on every side', { from: 0, to: 100 })),
  coveringMm: Type.Optional(quantity('mm', 'Carpet on every face', { from: 0, to: 30 })),
  opening: Type.Optional(ref(BootOpening)),
  keepOuts: Type.Optional(list('Wheel arches and other blocks in the way', ref(KeepOut), 1, 12))
})
export interface BoxLimits extends Si<Static<typeof BoxLimits>> {}

export const FootprintCorner = component('FootprintCorner', 'A corner of a footprint seen from above.', {
  xMm: quantity('mm', 'To the right', { from: -3000, to: 3000 }),
  yMm: quantity('mm', 'To the rear', { from: -3000, to: 3000 })
})
const Prism = component('Prism', 'An upright box over a free polygon.', {
  footprint: list('Outer corners in order, either way round', ref(FootprintCorner), 3, 16),
  baffleEdge: Type.Optional(count('Edge with the front: 1 runs from the first corner to the second', 1, 16))
})
const Joints = component('Joints', 'How the panels meet.', {
  sides: Type.Optional(
    choice('Sides (of a prism: lid and floor) between the walls, or over their ends', ['between', 'over'])
  ),
  corners: Type.Optional(
    choice('Of a rectangular box any; of others butt joints, or mitres round the profile', cornerJoints)
  ),
  inner: Type.Optional(choice('How divider and frames meet the walls; aslant they are butted', innerJoints))
})
const BracingWish = component('BracingWish', 'Present, even empty: braces are placed until every panel passes.', {
  upperHz: Type.Optional(quantity('Hz', 'Top of the band the box plays; 120 Hz when absent', { from: 20, to: 500 })),
  pressurePa: Type.Optional(
    quantity('Pa', 'Peak pressure inside, e.g. from the response; that of a closed box at full excursion when absent', {
      above: 0,
      to: 20_000
    })
  )
})

export const BoxRequest = component('BoxRequest', 'A box by its outer sizes, or by the net volume it shall hold.', {
  shape: Type.Optional(choice('Shape; rectangular when absent', boxShapes)),
  outer: Type.Optional(ref(BoxOuterWish)),
  netVolumeL: Type.Optional(quantity('L', 'Air wanted inside, everything taken off', { above: 0, to: 2000 })),
  limits: Type.Optional(ref(BoxLimits)),
  strategy: Type.Optional(
    choice('Which way the box grows: in balanced proportions, or low, shallow or narrow first', strategies)
  ),
  sawStepMm: Type.Optional(quantity('mm', 'Step the saw is set by', { from: 0.1, to: 10 })),
  slopedFace: Type.Optional(choice('Of a wedge', ['front', 'back'])),
  slopeDeg: Type.Optional(quantity('°', 'Lean of that face from the vertical', { from: -60, to: 60 })),
  acrossSlopeDeg: Type.Optional(
    quantity('°', 'Of a wedge by its slope: lean of the face across from the sloped one, into the box', {
      from: -60,
      to: 60
    })
  ),
  lidSlopeDeg: Type.Optional(
    quantity('°', 'Of a wedge by its slope: fall of the lid to the rear; negative to the front', { from: -45, to: 45 })
  ),
  prism: Type.Optional(ref(Prism)),
  thicknessMm: quantity('mm', 'Board of all panels, as measured', { from: 3, to: 60 }),
  frontLayers: Type.Optional(
    count(
      'Boards of the front; one when absent, or two where it is braced, sized by its volume, and one falls short',
      1,
      3
    )
  ),
  recessMm: Type.Optional(quantity('mm', 'Front set back behind the edges round it', { from: 0, to: 200 })),
  board: Type.Optional(ref(BoardBody)),
  joints: Type.Optional(ref(Joints)),
  drivers: Type.Optional(list('Drivers', ref(BoxDriverBody), 1, 4)),
  port: Type.Optional(ref(BoxPortBody)),
  divider: Type.Optional(ref(Divider)),
  bracing: Type.Optional(ref(BracingWish)),
  displacement: Type.Optional(ref(DisplacementBody)),
  fittings: Type.Optional(ref(FittingsBody)),
  air: Type.Optional(ref(AirBody))
})
export interface BoxRequest extends Si<Static<typeof BoxRequest>> {}
