/** Request and answer of a whole circuit: sources, ways and loads between named points. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { amplifierOnSupply, conductorFields, systemVoltageV } from './electrical.ts'
import { batterySourceFields, designation, gaugeSystem, insulationFields } from './fuse.ts'
import { circuitLevels, engineStates, fuseTypes } from './words.ts'

const id = label('Name of this part, once in the circuit', 40)
const poles = { plus: label('Point of its plus pole', 40), minus: label('Point of its minus pole', 40) }
const ends = { from: label('Point it starts at', 40), to: label('Point it ends at', 40) }

export const CircuitBattery = component('CircuitBattery', 'A battery; what is left out is taken from its safe end.', {
  id,
  ...poles,
  ...batterySourceFields,
  chargingOhm: Type.Optional(quantity('Ω', 'Its resistance while it takes current', { from: 1e-4, to: 10 }))
})
export interface CircuitBattery extends Si<Static<typeof CircuitBattery>> {}

const CircuitAlternator = component(
  'CircuitAlternator',
  'An alternator with its regulator, or a charger from the mains or the traction battery.',
  {
    id,
    ...poles,
    setV: quantity('V', 'Voltage it holds', { from: 5, to: 60 }),
    idleA: quantity('A', 'Most it gives at idle, hot', { from: 0, to: 1000 }),
    drivingA: quantity('A', 'Most it gives when driving, hot', { above: 0, to: 1000 }),
    lowestSetV: Type.Optional(quantity('V', 'Lowest it may hold, where the vehicle governs it', { from: 5, to: 60 })),
    highestSetV: Type.Optional(quantity('V', 'Highest it may hold', { from: 5, to: 60 })),
    slopeOhm: Type.Optional(quantity('Ω', 'Fall of its voltage with its current', { from: 1e-4, to: 0.1 }))
  }
)

const CircuitConverter = component(
  'CircuitConverter',
  'A converter or charger from one voltage to another: what it gives is limited, what it takes follows from that.',
  {
    id,
    inPlus: label('Point of its input', 40),
    inMinus: label('Point of the minus of its input', 40),
    outPlus: label('Point of its output', 40),
    outMinus: label('Point of the minus of its output; the same as that of the input where they are one', 40),
    setV: quantity('V', 'Voltage it holds at its output', { from: 5, to: 60 }),
    ratedA: quantity('A', 'Most it gives at its output', { above: 0, to: 1000 }),
    efficiency: Type.Optional(quantity('1', 'Output over input', { from: 0.3, to: 1 })),
    idleW: Type.Optional(quantity('W', 'What it takes with nothing at its output', { from: 0, to: 200 })),
    lowestInputV: Type.Optional(quantity('V', 'Input below which it stops', { from: 5, to: 60 })),
    highestInputV: Type.Optional(quantity('V', 'Input that its maker allows', { from: 5, to: 100 })),
    highestInputA: Type.Optional(quantity('A', 'Most it draws; what it gives is held to that', { above: 0, to: 1000 })),
    slopeOhm: Type.Optional(quantity('Ω', 'Fall of its voltage with its current', { from: 1e-4, to: 0.1 })),
    onlyWithEngine: Type.Optional(Type.Boolean({ description: 'Whether it rests while the engine stands' }))
  }
)
export interface CircuitConverter extends Si<Static<typeof CircuitConverter>> {}

export const CircuitCable = component('CircuitCable', 'One cable; runs side by side are cables side by side.', {
  id,
  ...ends,
  designation,
  gaugeSystem: Type.Optional(gaugeSystem),
  lengthM: quantity('m', 'Conductor length', { from: 0.01, to: 50 }),
  joints: Type.Optional(count('Lugs and contacts on it', 0, 20)),
  jointOhm: Type.Optional(quantity('Ω', 'One of them', { from: 0, to: 0.1 })),
  sheathed: Type.Optional(Type.Boolean({ description: 'Whether it lies in a conduit all the way' })),
  ...conductorFields,
  ...insulationFields
})
export interface CircuitCable extends Si<Static<typeof CircuitCable>> {}

export const CircuitFuse = component('CircuitFuse', 'A fuse between two points; it belongs to no cable.', {
  id,
  ...ends,
  ratingA: quantity('A', 'Rating', { above: 0, to: 1000 }),
  type: Type.Optional(choice('Family; gives its breaking capacity', fuseTypes)),
  breakingA: Type.Optional(quantity('A', 'What its maker says it breaks', { above: 0, to: 200_000 })),
  ratedVoltageV: Type.Optional(quantity('V', 'Voltage its maker rates it for', { above: 0, to: 1000 })),
  resistanceOhm: Type.Optional(quantity('Ω', 'Its resistance; else 0.09 V over its rating', { from: 1e-6, to: 1 }))
})
export interface CircuitFuse extends Si<Static<typeof CircuitFuse>> {}

const CircuitLink = component(
  'CircuitLink',
  'Anything else that conducts: body, engine strap, relay, battery sensor, a cable of the vehicle. Never judged.',
  {
    id,
    ...ends,
    resistanceOhm: quantity('Ω', 'Its resistance', { from: 1e-6, to: 100 }),
    assumed: Type.Optional(Type.Boolean({ description: 'Whether that figure is a guess: no stop rests on it' })),
    limitA: Type.Optional(
      quantity('A', 'Most it lets through by itself, into a fault too: the switched output of a source', {
        above: 0,
        to: 10
      })
    ),
    opensWithoutEngine: Type.Optional(Type.Boolean({ description: 'A relay that opens while the engine stands' }))
  }
)

const CircuitAmplifier = component('CircuitAmplifier', 'An amplifier between two points.', {
  id,
  ...poles,
  ...amplifierOnSupply,
  gainPowerW: Type.Optional(
    quantity('W', 'RMS output its gain is set for, where that is less than it can give: what flows follows it', {
      from: 0.1,
      to: 100_000
    })
  ),
  dropOutV: Type.Optional(quantity('V', 'Voltage at which its converter stops', { from: 0, to: 60 }))
})

const CircuitAccessory = component('CircuitAccessory', 'The vehicle’s own load, or another with a steady current.', {
  id,
  ...poles,
  currentA: quantity('A', 'While the engine runs', { from: 0, to: 1000 }),
  parkedA: Type.Optional(quantity('A', 'While it stands; else nothing', { from: 0, to: 1000 }))
})

const CircuitStarter = component('CircuitStarter', 'The starter; with it a cold start is worked out.', {
  ...poles,
  resistanceOhm: quantity('Ω', 'Its resistance while it turns the cold engine', { from: 1e-3, to: 1 })
})

const CircuitCapacitor = component(
  'CircuitCapacitor',
  'A stiffening capacitor: no current flows in it while nothing changes, the fault current when it is joined empty.',
  {
    id,
    ...poles,
    capacitanceF: quantity('F', 'Capacitance', { above: 0, to: 1000 }),
    esrOhm: Type.Optional(quantity('Ω', 'Its series resistance; else none', { above: 0, to: 1 })),
    prechargeOhm: Type.Optional(quantity('Ω', 'Resistor it is charged through', { from: 0.01, to: 10_000 })),
    ratedVoltageV: Type.Optional(quantity('V', 'Voltage its maker rates it for', { above: 0, to: 1000 }))
  }
)

export const CircuitRequest = component('CircuitRequest', 'A circuit; the minus pole of the first battery is 0 V.', {
  systemVoltageV,
  batteries: list('Batteries', ref(CircuitBattery), 1, 8),
  alternators: Type.Optional(list('Alternators and chargers', ref(CircuitAlternator), 1, 8)),
  converters: Type.Optional(list('Converters and chargers from one voltage to another', ref(CircuitConverter), 1, 8)),
  cables: Type.Optional(list('Cables', ref(CircuitCable), 1, 64)),
  fuses: Type.Optional(list('Fuses', ref(CircuitFuse), 1, 64)),
  links: Type.Optional(list('Other conductors', ref(CircuitLink), 1, 64)),
  amplifiers: list('Amplifiers', ref(CircuitAmplifier), 1, 16),
  accessories: Type.Optional(list('Other loads', ref(CircuitAccessory), 1, 16)),
  capacitors: Type.Optional(list('Capacitors', ref(CircuitCapacitor), 1, 8)),
  starter: Type.Optional(ref(CircuitStarter)),
  conductorTemperatureC: Type.Optional(
    quantity('°C', 'Of the cables while the voltages are read', { from: -40, to: 150 })
  )
})
export interface CircuitRequest extends Si<Static<typeof CircuitRequest>> {}

const PointVoltage = component('PointVoltage', 'A point of the circuit.', {
  point: Type.String({ description: 'Its name' }),
  voltageV: quantity('V', 'Against the minus pole of the first battery')
})
const PartCurrent = component('PartCurrent', 'A part of the circuit.', {
  id: Type.String({ description: 'Its name' }),
  voltageV: quantity('V', 'From its first point, or plus, to its second'),
  currentA: quantity('A', 'Through it that way; of a battery or alternator what it gives')
})
export const CircuitState = component('CircuitState', 'The circuit at one level of the music and the engine.', {
  level: choice('Level of the music', circuitLevels),
  engine: choice('What the engine does', engineStates),
  stands: Type.Boolean({ description: 'Whether there is a steady state at all' }),
  sustainableShare: Type.Optional(quantity('1', 'Where it does not stand: share of the regulated power that would')),
  points: list('Every point with a supply; empty where it does not stand', ref(PointVoltage), 0, 600),
  parts: list('Every part with a supply', ref(PartCurrent), 0, 300),
  withoutSupply: list('Amplifiers and accessories that nothing feeds', Type.String({ description: 'Name' }), 0, 64),
  stopped: Type.Optional(
    list('Converters that stop because their input is too low', Type.String({ description: 'Name' }), 1, 8)
  )
})
export interface CircuitState extends Si<Static<typeof CircuitState>> {}

const CircuitCableGuard = component('CircuitCableGuard', 'What can flow in a cable of the plus side for good.', {
  id: Type.String({ description: 'Its name' }),
  ampacityA: Type.Optional(quantity('A', 'What it carries in its surroundings')),
  loadA: Type.Optional(quantity('A', 'Most that flows at full sine')),
  fromStartA: Type.Optional(
    quantity('A', 'Into a fault, from its first point, every fuse whole; absent without limit')
  ),
  fromEndA: Type.Optional(quantity('A', 'The same from its second point')),
  guarded: Type.Boolean({ description: 'Neither of them above its ampacity' })
})
export interface CircuitCableGuard extends Si<Static<typeof CircuitCableGuard>> {}

const CircuitFuseGuard = component('CircuitFuseGuard', 'What a fuse has to carry and to break.', {
  id: Type.String({ description: 'Its name' }),
  loadA: Type.Optional(quantity('A', 'Most that flows through it at full sine')),
  heavyA: Type.Optional(quantity('A', 'Most that flows through it with dense bass')),
  prospectiveA: quantity('A', 'Dead short behind it, strong batteries, cold fuses'),
  breakingA: Type.Optional(quantity('A', 'What it breaks, where known'))
})
export interface CircuitFuseGuard extends Si<Static<typeof CircuitFuseGuard>> {}

const FarFault = component('FarFault', 'A dead short at the terminals of an amplifier, weak batteries, warm cables.', {
  amplifier: Type.String({ description: 'Name of the amplifier' }),
  fuse: Type.Optional(Type.String({ description: 'The fuse that is driven hardest; absent without one' })),
  currentA: quantity('A', 'Through it'),
  multiple: quantity('1', 'Current over its rating'),
  limitedBy: Type.Optional(
    Type.String({ description: 'The converter that alone feeds it and limits the current: no fuse has to open' })
  )
})
export interface FarFault extends Si<Static<typeof FarFault>> {}

const FuseSeries = component('FuseSeries', 'Two fuses, the second fed by nothing but the first.', {
  before: Type.String({ description: 'The fuse nearer to the source' }),
  behind: Type.String({ description: 'The fuse behind it' }),
  ratio: quantity('1', 'Rating of the first over that of the second')
})
export interface FuseSeries extends Si<Static<typeof FuseSeries>> {}

const CapacitorGuard = component('CapacitorGuard', 'What joining a capacitor takes.', {
  id: Type.String({ description: 'Its name' }),
  voltageV: quantity('V', 'Most across it in any state'),
  storedJ: quantity('J', 'Energy in it then'),
  inrushA: quantity('A', 'Through it, joined empty without a resistor, strong batteries'),
  prechargeOhm: quantity('Ω', 'Resistor it is charged and emptied through'),
  prechargeDoneS: quantity('s', 'Until 1 V is left over the resistor')
})
export interface CapacitorGuard extends Si<Static<typeof CapacitorGuard>> {}

export const CircuitResult = component('CircuitResult', 'The circuit solved and judged.', {
  states: list('From silence upwards', ref(CircuitState), 1, 16),
  bareSources: list('Batteries without a fuse at their end', Type.String({ description: 'Name' }), 0, 8),
  cables: list('Cables of the plus side', ref(CircuitCableGuard), 0, 64),
  fuses: list('Fuses', ref(CircuitFuseGuard), 0, 64),
  farFaults: list('Faults at the amplifiers', ref(FarFault), 0, 16),
  capacitors: Type.Optional(list('Capacitors', ref(CapacitorGuard), 1, 8)),
  series: list('Fuses one behind the other', ref(FuseSeries), 0, 600),
  collapseMargin: Type.Optional(
    quantity('1', 'Times the power of the full sine that still stands, driving; absent from twice upwards')
  )
})
export interface Circuit extends Si<Static<typeof CircuitResult>> {}
