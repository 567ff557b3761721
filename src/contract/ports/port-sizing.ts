/** Schemas of the result of sizing a port. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { DriverBody } from '../drivers/driver.ts'
import { DriversBody, SourceBody } from '../enclosures/enclosure.ts'
import { filterChain } from '../enclosures/filter.ts'
import { byTag, component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { endModels, endSituations, portMouths, slotWalls, wayOutChanges } from './words.ts'

const Demand = component('PortDemand', 'The air the ports carry at full drive and the area that asks for.', {
  by: choice('What it rests on', ['network', 'swept-volume', 'given-flow']),
  peakFlowM3PerS: quantity('m³/s', 'Highest flow through all ports, peak'),
  peakFlowHz: Type.Optional(quantity('Hz', 'Where it is highest, from the high-pass corner up')),
  flowAtTuningM3PerS: Type.Optional(quantity('m³/s', 'Flow at the tuning, peak')),
  limitMPerS: quantity('m/s', 'Air-speed limit, peak'),
  areaCm2: quantity('cm²', 'Area of all ports together that keeps the limit'),
  excursionLimitedAreaCm2: Type.Optional(
    quantity('cm²', 'The same with the drive held back to Xmax at each frequency')
  ),
  ruleAreaCm2: Type.Optional(quantity('cm²', 'Second opinion: 0.8·fB·VD, for 5 % of the speed of sound at Xmax'))
})
export interface PortDemand extends Si<Static<typeof Demand>> {}

const OtherEnds = component('PortOtherEnds', 'The same port by the other way of counting its ends.', {
  model: choice('The other way', endModels),
  lengthMm: quantity('mm', 'Length it would ask for'),
  tuningHz: quantity('Hz', 'Tuning of the length given here, if the other way is right')
})

const Design = component('PortDesign', 'One port, or several equal ones.', {
  kind: choice('Shape', ['round', 'slot']),
  name: Type.String({ description: 'Name for people' }),
  count: Type.Integer({ description: 'Equal ports' }),
  diameterMm: Type.Optional(quantity('mm', 'Clear diameter')),
  widthMm: Type.Optional(quantity('mm', 'Clear width of a slot')),
  heightMm: Type.Optional(quantity('mm', 'Clear height of a slot')),
  areaCm2: quantity('cm²', 'Clear area of one'),
  totalAreaCm2: quantity('cm²', 'Clear area of all'),
  lengthMm: quantity('mm', 'Physical length along the centre line; zero or less: the area is too small for the tuning'),
  effectiveLengthMm: quantity('mm', 'Length the air sees, both ends in it'),
  endFactor: quantity('1', 'Both ends over the radius of one port; /v1/enclosures/response takes it'),
  bends: Type.Integer({ description: 'Mitred right-angle bends' }),
  hydraulicDiameterMm: quantity('mm', 'Four times the area of one over its perimeter'),
  lossFactor: quantity('1', 'K of ends, walls and bends; `limits.portLossFactor` of /v1/enclosures/response takes it'),
  lossQ: quantity('1', 'Q of the friction along the walls; `port.lossQ` of /v1/enclosures/response takes it'),
  tuningHz: quantity('Hz', 'Tuning'),
  airSpeedAtTuningMPerS: Type.Optional(quantity('m/s', 'Peak air speed at the tuning, full drive')),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Highest peak air speed, full drive')),
  airSpeedHz: Type.Optional(quantity('Hz', 'Where it is highest')),
  withinLimit: Type.Optional(Type.Boolean({ description: 'Keeps the air-speed limit' })),
  pipeResonanceHz: quantity('Hz', 'First resonance as an open pipe'),
  waveguideTuningHz: quantity('Hz', 'Tuning with the port as a waveguide instead of a lump'),
  airVolumeL: quantity('L', 'Air inside all ports; their walls come on top'),
  otherEnds: ref(OtherEnds),
  fits: Type.Boolean({ description: 'Nothing is against it' }),
  why: Type.Array(Type.String(), { description: 'Reasons with figures, those against first' })
})
export interface PortDesign extends Si<Static<typeof Design>> {}

const WayOut = component('PortWayOut', 'A change with which a port would fit.', {
  change: choice('What to change', wayOutChanges),
  detail: Type.String({ description: 'The change with its figures' }),
  totalAreaCm2: Type.Optional(quantity('cm²', 'Area of all ports')),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Peak air speed, full drive')),
  lengthMm: Type.Optional(quantity('mm', 'Physical length')),
  count: Type.Optional(Type.Integer({ description: 'Ports' })),
  netVolumeL: Type.Optional(quantity('L', 'Net volume')),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning')),
  powerShare: Type.Optional(quantity('1', 'Share of the power of the drive')),
  radiatorAreaCm2: Type.Optional(quantity('cm²', 'Area of all passive radiators')),
  radiatorMassG: Type.Optional(quantity('g', 'Moving mass of all of them, very soft suspension'))
})
export interface PortWayOut extends Si<Static<typeof WayOut>> {}

export const PortSizingResultBody = component(
  'PortSizingResult',
  'Ports for the box, the one to build, and what else would fit.',
  {
    tuningHz: quantity('Hz', 'Tuning the ports are for, or that of the port given whole'),
    demand: Type.Optional(ref(Demand)),
    fits: Type.Boolean({ description: 'The recommended port keeps tuning, air speed and space' }),
    recommended: ref(Design, 'The port to build, or the one nearest to it'),
    candidates: list('Every port looked at', ref(Design), 1, 16),
    waysOut: list('What would fit where the recommended port does not', ref(WayOut), 0, 12)
  }
)
export interface PortSizing extends Si<Static<typeof PortSizingResultBody>> {}

const ports = Type.Optional(count('Equal ports; weighed when absent', 1, 16))
const length = Type.Optional(
  quantity('mm', 'Physical length, to learn the tuning of a port given whole', { from: 1, to: 10_000 })
)
export const RoundPortWish = component('RoundPortWish', 'Round ports; what is absent is chosen.', {
  kind: Type.Literal('round', { description: 'Shape' }),
  count: ports,
  diameterMm: Type.Optional(quantity('mm', 'Clear diameter of one', { from: 10, to: 1000 })),
  lengthMm: length,
  flareRadiusMm: Type.Optional(
    quantity('mm', 'Radius of a rounding at both mouths, part of the length', { from: 0, to: 200 })
  )
})
export interface RoundPortWish extends Si<Static<typeof RoundPortWish>> {}

export const SlotPortWish = component('SlotPortWish', 'Slots; what is absent is chosen.', {
  kind: Type.Literal('slot', { description: 'Shape' }),
  count: ports,
  widthMm: quantity('mm', 'Clear width of one: the inner width of the box for a full-width slot', {
    from: 20,
    to: 3000
  }),
  heightMm: Type.Optional(quantity('mm', 'Clear height', { from: 5, to: 1000 })),
  lengthMm: length,
  flareRadiusMm: Type.Optional(
    quantity('mm', 'Radius to which the board across from its wall is rounded at both mouths, part of the length', {
      from: 0,
      to: 60
    })
  ),
  walls: Type.Optional(
    choice(
      '`own` walls all round, `one-shared` with the box, or `full-width`: three of the walls are the box',
      slotWalls
    )
  ),
  chamberHeightMm: Type.Optional(
    quantity('mm', 'Clear height of the box where a full-width slot ends, the slot in it', { from: 20, to: 3000 })
  )
})
export interface SlotPortWish extends Si<Static<typeof SlotPortWish>> {}

const PortEnds = component('PortEnds', 'How the ends stand.', {
  inner: Type.Optional(choice('Inner end: `flanged` flush in a panel, `free` standing in the box', endSituations)),
  outer: Type.Optional(choice('Outer end', endSituations))
})
const PortSpace = component('PortSpace', 'Room for the port.', {
  straightMm: Type.Optional(
    quantity('mm', 'Longest straight run from the outer face, clearance behind the mouth taken off', {
      from: 10,
      to: 10_000
    })
  ),
  bentMm: Type.Optional(quantity('mm', 'Longest centre line with bends', { from: 10, to: 20_000 }))
})
export const PortSizingRequest = component('PortSizingRequest', 'A vented box looking for its port.', {
  netVolumeL: quantity('L', 'Net volume of its chamber, port and driver taken off', { from: 0.5, to: 5000 }),
  rearVolumeL: Type.Optional(
    quantity('L', 'Of a band-pass: closed chamber behind the drivers', { from: 0.5, to: 5000 })
  ),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning; follows from a port given whole', { from: 5, to: 300 })),
  air: Type.Optional(ref(AirBody)),
  driver: Type.Optional(ref(DriverBody)),
  drivers: Type.Optional(ref(DriversBody)),
  source: Type.Optional(ref(SourceBody, 'Full drive; the rated power of the drivers when absent')),
  filters: Type.Optional(filterChain),
  leakQ: Type.Optional(quantity('1', 'Leak of the box as a Q at the tuning', { from: 0.5, to: 1e6 })),
  sweptVolumeL: Type.Optional(
    quantity('L', 'In place of the driver: area times one-way excursion of all cones', { from: 0.001, to: 100 })
  ),
  peakFlowM3PerS: Type.Optional(quantity('m³/s', 'In place of the driver: peak flow', { from: 1e-5, to: 100 })),
  airSpeedLimitMPerS: Type.Optional(
    quantity(
      'm/s',
      'Peak; 17 for sharp ends, 25 for flares when absent; above 34, 10 % of the speed of sound, none is built',
      { from: 3, to: 60 }
    )
  ),
  mouth: Type.Optional(choice('Ends `sharp`, or `flared` at both sides', portMouths)),
  highPassHz: Type.Optional(
    quantity(
      'Hz',
      'Lowest frequency at which the flow is looked at. Absent: 15 where the filters hold a high-pass, otherwise 0.8 of the tuning',
      { from: 1, to: 300 }
    )
  ),
  lowPassHz: Type.Optional(quantity('Hz', 'Upper end of the range the box plays', { from: 20, to: 500 })),
  port: Type.Optional(
    ref(
      byTag('PortWish', 'The kind of port, and whatever of its size is fixed.', 'kind', [RoundPortWish, SlotPortWish])
    )
  ),
  ends: Type.Optional(ref(PortEnds)),
  endModel: Type.Optional(
    choice(
      '`convention`: 0.85 flanged, 0.613 free, times the radius of equal area. `by-shape`: exact pipe ends, slots by shape and wall.',
      endModels
    )
  ),
  bends: Type.Optional(count('Mitred right-angle bends', 0, 4)),
  space: Type.Optional(ref(PortSpace))
})
export interface PortSizingRequest extends Si<Static<typeof PortSizingRequest>> {}
