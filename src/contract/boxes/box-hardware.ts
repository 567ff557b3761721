/** What is set into a box, on the wire: drivers, ports, fittings, volumes given. */
import Type, { type Static } from 'typebox'
import { byTag, component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { coneKinds, faceNames } from './words.ts'

const face = (what: string) => Type.Optional(choice(`Face that carries ${what}; the front when absent`, faceNames))

const PlaceOnPanelBody = component('PlaceOnPanel', 'A centre on the outer face of a panel, in its own frame.', {
  uMm: quantity('mm', 'To the right of the lower left corner', { from: 0, to: 3000 }),
  vMm: quantity('mm', 'Above the lower left corner', { from: 0, to: 3000 })
})
export interface PlaceOnPanel extends Si<Static<typeof PlaceOnPanelBody>> {}
export interface PanelPoint extends Si<Static<typeof PlaceOnPanelBody>> {}

const RingBody = component('BaffleRing', 'A ring behind the cut-out that screws can bite into.', {
  outerDiameterMm: quantity('mm', 'Outer diameter', { above: 0, to: 1500 }),
  thicknessMm: quantity('mm', 'Thickness', { above: 0, to: 100 })
})

export const BoxDriverBody = component(
  'BoxDriver',
  'Equal drivers to be set into the box; one when `count` is absent.',
  {
    kind: Type.Optional(choice('Driver, or cone without a motor that plays as a port does', coneKinds)),
    label: Type.Optional(label('Name on the drawing', 40)),
    count: Type.Optional(count('Drivers of this kind', 1, 8)),
    cutOutDiameterMm: Type.Optional(quantity('mm', 'Hole', { from: 40, to: 1000 })),
    flangeDiameterMm: Type.Optional(quantity('mm', 'Outer diameter', { from: 40, to: 1100 })),
    mountingDepthMm: Type.Optional(
      quantity('mm', 'Outer face of the baffle to the rear of the motor', { from: 10, to: 1000 })
    ),
    magnetDiameterMm: Type.Optional(quantity('mm', 'Diameter of the motor', { from: 10, to: 600 })),
    magnetHeightMm: Type.Optional(quantity('mm', 'Height of the motor', { from: 5, to: 500 })),
    voiceCoilDiameterMm: Type.Optional(quantity('mm', 'Diameter of the voice coil', { from: 10, to: 300 })),
    ventDiameterMm: Type.Optional(quantity('mm', 'Hole through the pole piece', { from: 0, to: 150 })),
    sdCm2: Type.Optional(quantity('cm²', 'Cone area', { from: 10, to: 5000 })),
    xmaxMm: Type.Optional(quantity('mm', 'Excursion one way', { above: 0, to: 100 })),
    displacementL: Type.Optional(
      quantity('L', 'Air one driver takes from the box, as sheets give it for a magnet inside; negative adds air', {
        from: -20,
        to: 50
      })
    ),
    mount: Type.Optional(choice('`reversed` puts the magnet outside', ['front', 'reversed'])),
    massKg: Type.Optional(quantity('kg', 'Mass of one driver', { above: 0, to: 100 })),
    screwCircleDiameterMm: Type.Optional(quantity('mm', 'Circle of the fixing screws', { from: 40, to: 1100 })),
    screwCount: Type.Optional(count('Fixing screws', 3, 24)),
    rebateDepthMm: Type.Optional(quantity('mm', 'Rebate that lets the flange in', { above: 0, to: 40 })),
    face: face('the driver'),
    centres: Type.Optional(list('Centre of each driver; arranged evenly when absent', ref(PlaceOnPanelBody), 1, 8)),
    ring: Type.Optional(ref(RingBody))
  }
)
export interface BoxDriver extends Si<Static<typeof BoxDriverBody>> {}

const chamber = Type.Optional(choice('Chamber of a band-pass box it opens from', ['rear', 'front']))

const RoundPortBody = component('RoundPort', 'Equal tubes.', {
  kind: Type.Literal('round', { description: 'Tubes' }),
  count: Type.Optional(count('Tubes', 1, 8)),
  innerDiameterMm: quantity('mm', 'Bore', { from: 10, to: 600 }),
  outerDiameterMm: Type.Optional(
    quantity('mm', 'Outside of the tube; 3 mm of wall when absent', { from: 10, to: 700 })
  ),
  lengthMm: Type.Optional(
    quantity('mm', 'Outer face of the panel to the inner mouth, along the centre line', { above: 0, to: 3000 })
  ),
  tuningHz: Type.Optional(quantity('Hz', 'Instead of a length: the tuning it shall give', { from: 5, to: 500 })),
  endFactor: Type.Optional(
    quantity('1', 'Sum of both end factors, in radii of the circle of equal area; 1.463 when absent', {
      from: 0,
      to: 4
    })
  ),
  insideLengthMm: Type.Optional(
    quantity('mm', 'The part behind the inner face of the panel, instead of the whole length', { from: 0, to: 3000 })
  ),
  elbowRadiusMm: Type.Optional(
    quantity('mm', 'Centre line of one elbow of 90°; straight when absent', { from: 10, to: 600 })
  ),
  flareRadiusMm: Type.Optional(
    quantity('mm', 'Radius to which both mouths open, within the length; the hole then takes the flare', {
      from: 1,
      to: 200
    })
  ),
  flangeDiameterMm: Type.Optional(quantity('mm', 'Flange at the inner mouth', { from: 10, to: 1000 })),
  flangeThicknessMm: Type.Optional(quantity('mm', 'Thickness of that flange', { from: 0, to: 100 })),
  face: face('the tubes'),
  centres: Type.Optional(list('Centre of each tube; arranged evenly when absent', ref(PlaceOnPanelBody), 1, 8)),
  chamber
})
export interface RoundPort extends Si<Static<typeof RoundPortBody>> {}

const SlotPortBody = component('SlotPort', 'A slot along the walls of the box.', {
  kind: Type.Literal('slot', { description: 'Slot' }),
  widthMm: Type.Optional(
    quantity('mm', 'Across the opening; the clear width of the box when absent', { from: 20, to: 3000 })
  ),
  heightMm: quantity('mm', 'Smaller side of the opening', { from: 5, to: 500 }),
  lengthMm: Type.Optional(
    quantity('mm', 'Outer face of the front to the inner mouth, along the centre line', { above: 0, to: 6000 })
  ),
  tuningHz: Type.Optional(quantity('Hz', 'Instead of a length: the tuning it shall give', { from: 5, to: 500 })),
  endFactor: Type.Optional(
    quantity('1', 'Sum of both end factors, in radii of the circle of equal area; 1.463 when absent', {
      from: 0,
      to: 4
    })
  ),
  wallThicknessMm: Type.Optional(
    quantity('mm', 'Board of its own walls; that of the box when absent', { from: 3, to: 60 })
  ),
  flareRadiusMm: Type.Optional(
    quantity('mm', 'Radius to which the board across from its wall is rounded at both mouths, within the length', {
      from: 1,
      to: 60
    })
  ),
  roundCorners: Type.Optional(
    Type.Boolean({ description: 'Outer corners of its bends filled to a quarter round of its height, in a square box' })
  ),
  along: Type.Optional(
    choice('Wall it starts on, folding on round the box as its length needs; the floor when absent', [
      'bottom',
      'top',
      'left',
      'right'
    ])
  )
})

export interface SlotPort extends Si<Static<typeof SlotPortBody>> {}

export const BoxPortBody = byTag('BoxPort', 'A port as it is to be built.', 'kind', [RoundPortBody, SlotPortBody])

const taken = (what: string) =>
  Type.Optional(quantity('L', `${what}, instead of what would be computed`, { from: -20, to: 500 }))

export const DisplacementBody = component(
  'GivenDisplacement',
  'Volumes the caller knows; each replaces the computed one.',
  {
    driversL: taken('All drivers'),
    portsL: taken('All ports with their walls'),
    bracesL: taken('All braces'),
    amplifierL: taken('Amplifier'),
    terminalL: taken('Terminal cup'),
    liningL: taken('Lining'),
    otherL: taken('Anything else')
  }
)

export const TerminalBody = component(
  'TerminalCup',
  'The cup for the wires; a round hole of 76 mm when no size is given.',
  {
    cutOutWidthMm: Type.Optional(quantity('mm', 'Of a rectangular cut-out', { from: 5, to: 400 })),
    cutOutHeightMm: Type.Optional(quantity('mm', 'Of a rectangular cut-out', { from: 5, to: 400 })),
    cutOutDiameterMm: Type.Optional(quantity('mm', 'Of a round cut-out', { from: 5, to: 400 })),
    volumeL: Type.Optional(quantity('L', 'Behind the inner face of its panel', { from: 0, to: 5 })),
    face: Type.Optional(choice('Face that carries it; the back when absent', faceNames)),
    centre: Type.Optional(ref(PlaceOnPanelBody))
  }
)

const AmplifierBody = component('InsideAmplifier', 'An amplifier in the air of the box.', {
  widthMm: quantity('mm', 'Width', { from: 5, to: 1000 }),
  heightMm: quantity('mm', 'Height', { from: 5, to: 1000 }),
  depthMm: quantity('mm', 'Behind the inner face of its panel', { from: 5, to: 500 }),
  massKg: Type.Optional(quantity('kg', 'Mass', { above: 0, to: 50 }))
})

const LiningBody = component('Lining', 'Absorbent pads on the inner faces.', {
  thicknessMm: quantity('mm', 'Thickness of the pad', { above: 0, to: 300 }),
  densityKgPerM3: quantity('kg/m³', 'Density of the pad', { above: 0, to: 2000 }),
  fibre: choice('What it is made of; `dense` counts in full', ['polyester', 'wool', 'glass', 'dense']),
  areaM2: Type.Optional(quantity('m²', 'Covered area; all faces but the front when absent', { above: 0, to: 50 }))
})

const CleatsBody = component('Cleats', 'Square rod glued along inner edges.', {
  sideMm: quantity('mm', 'Side of the rod', { above: 0, to: 100 }),
  lengthMm: quantity('mm', 'Length of all rods together', { above: 0, to: 50_000 })
})

export const FittingsBody = component('BoxFittings', 'Things in the box beside drivers and ports.', {
  terminal: Type.Optional(ref(TerminalBody)),
  amplifier: Type.Optional(ref(AmplifierBody)),
  lining: Type.Optional(ref(LiningBody)),
  cleats: Type.Optional(ref(CleatsBody))
})
export interface BoxFittings extends Si<Static<typeof FittingsBody>> {}
