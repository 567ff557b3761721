/** Room for the box of a plan, on the wire. */
import Type from 'typebox'
import { BoxLimits, FootprintCorner } from '../boxes/box-panels.ts'
import { strategies } from '../boxes/words.ts'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity } from '../field/quantities.ts'
import { plannedShapes } from './words.ts'

export const RoomForBox = component('PlanSpace', 'Room for the box in the car.', {
  ...BoxLimits.properties,
  shape: Type.Optional(
    choice(
      'Shape of the box; a wedge leans with the seat, a prism stands over `footprint`, a round box of twelve staves in a well of `diameterMm`',
      plannedShapes
    )
  ),
  footprint: Type.Optional(
    list(
      'Corners of the room seen from above, in order; the front stands on its longest edge',
      ref(FootprintCorner),
      3,
      16
    )
  ),
  diameterMm: Type.Optional(quantity('mm', 'Of a round well, as that of a spare wheel', { from: 200, to: 1500 })),
  acrossSlopeDeg: Type.Optional(
    quantity('°', 'Of a wedge: lean of the wall across from the seat, into the room', { from: -60, to: 60 })
  ),
  lidSlopeDeg: Type.Optional(
    quantity('°', 'Of a wedge: fall of what is above the room, towards the seat; negative away from it', {
      from: -45,
      to: 45
    })
  ),
  strategy: Type.Optional(choice('Which way the box grows where there is a choice', strategies))
})
