/** Schemas of the result of sizing a port. */
import Type from 'typebox'
import { endModels, wayOutChanges } from '../../domain/port/port-sizing.ts'
import { component, ref } from './component.ts'
import { choice, list, quantity } from './quantities.ts'

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
