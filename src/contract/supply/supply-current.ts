/** Request and answer of what amplifiers draw. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { amplifierOnSupply, drive, systemVoltageV } from './electrical.ts'
import { amplifierClasses, batteryChemistries } from './words.ts'

export const SupplyAmplifier = component(
  'SupplyAmplifier',
  'An amplifier as the supply sees it. Needs a power, and its class, efficiency or input current.',
  amplifierOnSupply
)
export interface AmplifierOnSupply extends Si<Static<typeof SupplyAmplifier>> {}

export const ChargingRequest = component('ChargingRequest', 'What charges the vehicle while it runs.', {
  kind: choice('Alternator, or a DC-DC converter: from 24 V of a truck, 48 V or the traction battery', [
    'alternator',
    'converter'
  ]),
  ratedA: quantity('A', 'Rated output current at system voltage', { above: 0, to: 1000 }),
  idleA: Type.Optional(
    quantity('A', 'Output of an alternator at idle from the rating line, cold; or idleFraction', { above: 0, to: 1000 })
  ),
  idleFraction: Type.Optional(
    quantity('1', 'Output of an alternator at idle over rated output; or idleA', { above: 0, to: 1 })
  ),
  idleShaftPerMin: Type.Optional(
    quantity(
      '1/min',
      'Speed of its shaft at idle, engine speed times pulley ratio; its curve then gives the output, hot',
      {
        from: 500,
        to: 20_000
      }
    )
  ),
  drivingShaftPerMin: Type.Optional(
    quantity('1/min', 'The same while driving; that of its rating, 6000, when absent', { from: 500, to: 20_000 })
  ),
  hotFactor: Type.Optional(quantity('1', 'Output of an alternator hot over cold', { from: 0.3, to: 1 })),
  baseLoadA: Type.Optional(quantity('A', 'What the vehicle itself draws while it runs', { from: 0, to: 500 }))
})
export interface ChargingRequest extends Si<Static<typeof ChargingRequest>> {}

const batteryFields = {
  capacityAh: quantity('A·h', 'Capacity of the bank at the rated hours', { from: 1, to: 2000 }),
  ratedHours: Type.Optional(quantity('h', 'Hours the capacity is printed for', { from: 1, to: 100 })),
  chemistry: Type.Optional(choice('Kind of battery', batteryChemistries)),
  peukertExponent: Type.Optional(quantity('1', 'Peukert exponent', { from: 1, to: 2 })),
  reserveMinutes: Type.Optional(
    quantity('min', 'Reserve capacity: minutes at 25 A to 10.5 V; gives the exponent', { from: 1, to: 6000 })
  ),
  usableFraction: Type.Optional(quantity('1', 'Share of the time to empty that may be used', { above: 0, to: 1 })),
  resistanceOhm: Type.Optional(quantity('Ω', 'Internal resistance of the bank', { above: 0, to: 1 })),
  coldCrankingA: Type.Optional(quantity('A', 'Cold cranking current at −18 °C', { from: 10, to: 5000 }))
}
export const BatteryRequest = component('BatteryRequest', 'The battery that plays with the engine off.', {
  ...batteryFields,
  parkedLoadA: Type.Optional(quantity('A', 'What the parked car draws beside the amplifiers', { from: 0, to: 100 }))
})

export interface BatteryRequest extends Si<Static<typeof BatteryRequest>> {}
export const SecondBatteryRequest = component('SecondBatteryRequest', 'A further battery for the music.', {
  arrangement: choice(
    '`isolated` feeds the amplifiers alone when the engine is off; `parallel` joins the first, of the same chemistry',
    ['isolated', 'parallel']
  ),
  ...batteryFields
})

export const ConverterRequest = component(
  'ConverterRequest',
  'A converter from the voltage of the vehicle to that of the amplifiers, as in a lorry of 24 V; it stands beside them.',
  {
    outputV: Type.Optional(quantity('V', 'Voltage it holds', { from: 11, to: 30 })),
    ratedA: Type.Optional(quantity('A', 'Most it gives for good', { above: 0, to: 500 })),
    efficiency: Type.Optional(quantity('1', 'Output over input', { from: 0.3, to: 1 })),
    lowestInputV: Type.Optional(quantity('V', 'Input below which it stops', { from: 5, to: 58 })),
    highestInputV: Type.Optional(quantity('V', 'Input that its maker allows', { from: 5, to: 100 }))
  }
)
export interface ConverterRequest extends Si<Static<typeof ConverterRequest>> {}

export const CapacitorRequest = component('CapacitorRequest', 'A stiffening capacitor at the amplifiers.', {
  capacitanceF: quantity('F', 'Capacitance', { above: 0, to: 1000 }),
  esrOhm: Type.Optional(quantity('Ω', 'Series resistance of the capacitor', { above: 0, to: 1 })),
  sourceOhm: Type.Optional(quantity('Ω', 'Resistance between source and capacitor', { from: 1e-5, to: 10 })),
  fromV: Type.Optional(quantity('V', 'Voltage it is charged to', { above: 0, to: 60 })),
  toV: Type.Optional(quantity('V', 'Voltage it may fall to', { from: 0, to: 60 })),
  prechargeOhm: Type.Optional(quantity('Ω', 'Resistor it is charged through at first', { from: 0.01, to: 10_000 }))
})
export interface CapacitorRequest extends Si<Static<typeof CapacitorRequest>> {}

export const SupplyCurrentRequest = component('SupplyCurrentRequest', 'Amplifiers on one supply.', {
  amplifiers: list('Amplifiers fed from this supply', ref(SupplyAmplifier), 1, 32),
  systemVoltageV,
  drive: Type.Optional(drive),
  converter: Type.Optional(ref(ConverterRequest)),
  charging: Type.Optional(ref(ChargingRequest)),
  battery: Type.Optional(ref(BatteryRequest)),
  secondBattery: Type.Optional(ref(SecondBatteryRequest)),
  capacitor: Type.Optional(ref(CapacitorRequest))
})
export interface CurrentRequest extends Si<Static<typeof SupplyCurrentRequest>> {}

const currentFields = {
  quiescentA: quantity('A', 'At silence, switched on'),
  averageA: quantity('A', 'Ordinary music, 1/8 of rated output: battery and alternator'),
  heavyA: quantity('A', 'Dense bass, 1/3 of rated output: battery, alternator, fuse heating'),
  fullSineA: quantity('A', 'Test tone at rated output: fuse, cable, collapse'),
  peakNoStorageA: quantity('A', 'Ripple peak of the full sine without energy storage'),
  rippleRmsA: quantity('A', 'RMS of that ripple')
}
const SupplyCurrents = component(
  'SupplyCurrents',
  'The four currents at system voltage, and the ripple.',
  currentFields
)
export interface Currents extends Si<Static<typeof SupplyCurrents>> {}

const sizingFields = {
  fullSineA: quantity('A', 'Test tone at rated output'),
  heavyA: quantity('A', 'Dense bass, 1/3 of rated output')
}
const AmplifierSizing = component('AmplifierSizing', 'What fuse and cable of one amplifier are sized for.', {
  voltageV: quantity('V', 'Supply at which it draws most: nominal where it regulates, charging where it does not'),
  ...sizingFields
})
export const SizingCurrents = component(
  'SizingCurrents',
  'What fuse and cable are sized for: every amplifier at the voltage at which it draws most.',
  sizingFields
)
export interface SizingCurrents extends Si<Static<typeof SizingCurrents>> {}

export const AmplifierCurrents = component('AmplifierCurrents', 'One amplifier’s share.', {
  name: Type.Optional(Type.String({ description: 'Name from the request' })),
  class: choice('Class used', amplifierClasses),
  powerW: quantity('W', 'Continuous RMS output used: the one claimed, or what the fuses on board pass'),
  claimedPowerW: Type.Optional(quantity('W', 'Output claimed, where the fuses on board pass less')),
  efficiency: quantity('1', 'Efficiency used'),
  inputPowerW: quantity('W', 'Input at full sine'),
  unregulatedPowerW: quantity('W', 'Output left at system voltage if the amplifier does not regulate'),
  ...currentFields,
  sizing: ref(AmplifierSizing),
  averageHeatW: quantity('W', 'Heat at ordinary music'),
  fullSineHeatW: quantity('W', 'Heat at full sine'),
  onboardFuseSumA: Type.Optional(quantity('A', 'Sum of its own fuses')),
  plausiblePowerW: Type.Optional(quantity('W', 'Highest continuous output those fuses make believable'))
})
export interface AmplifierCurrents extends Si<Static<typeof AmplifierCurrents>> {}

export const ChargingBalance = component(
  'ChargingBalance',
  'Charging balance; a negative surplus comes out of the battery.',
  {
    idleAvailableA: quantity('A', 'Output at idle, hot'),
    cruiseAvailableA: quantity('A', 'Output when driving, hot'),
    baseLoadA: quantity('A', 'What the vehicle draws'),
    idleAverageSurplusA: quantity('A', 'Surplus at idle, ordinary music'),
    idleHeavySurplusA: quantity('A', 'Surplus at idle, dense bass'),
    cruiseAverageSurplusA: quantity('A', 'Surplus when driving, ordinary music'),
    cruiseHeavySurplusA: quantity('A', 'Surplus when driving, dense bass')
  }
)
export interface ChargingBalance extends Si<Static<typeof ChargingBalance>> {}

export const EngineOff = component('EngineOff', 'Playing with the engine off.', {
  currentA: quantity('A', 'Ordinary music and the parked car’s own load'),
  peukertExponent: quantity('1', 'Exponent used'),
  hoursToEmpty: quantity('h', 'Time to empty'),
  usableHours: quantity('h', 'Time until the usable share is gone'),
  restV: quantity('V', 'Rest voltage of the full battery'),
  sagV: quantity('V', 'Fall of its voltage at this current'),
  fullSineSagV: quantity('V', 'Fall of its voltage at a full sine')
})
export interface EngineOff extends Si<Static<typeof EngineOff>> {}

const ConverterLoad = component('ConverterLoad', 'The converter between vehicle and amplifiers.', {
  nominalV: quantity('V', 'What the amplifiers behind it are made for'),
  outputV: quantity('V', 'Voltage it holds'),
  ratedA: quantity('A', 'Its rating: as given, or the next that is sold above the full sine'),
  efficiency: quantity('1', 'Efficiency used'),
  ratedInputA: quantity('A', 'What it draws at its rating; its cable and fuse follow that'),
  averageInputA: quantity('A', 'What it draws for ordinary music'),
  heavyInputA: quantity('A', 'What it draws for dense bass'),
  fullSineInputA: quantity('A', 'What it draws for the test tone')
})
export interface ConverterLoad extends Si<Static<typeof ConverterLoad>> {}

export const CapacitorEffect = component('CapacitorEffect', 'What the capacitor does.', {
  storedJ: quantity('J', 'Energy stored'),
  usableJ: quantity('J', 'Energy between the two voltages'),
  holdUpMs: quantity('ms', 'Time it alone carries the full sine'),
  esrStepV: Type.Optional(quantity('V', 'Step over its own resistance at full sine')),
  cornerHz: Type.Optional(quantity('Hz', 'Ripple above this frequency is smoothed')),
  prechargeTimeConstantS: Type.Optional(quantity('s', 'Time constant of the first charge')),
  precharge99S: Type.Optional(quantity('s', 'Time to 99 %')),
  prechargePeakW: Type.Optional(quantity('W', 'Power in the resistor at the start')),
  prechargeOhm: Type.Optional(quantity('Ω', 'Resistor for the first charge and for the discharge')),
  prechargeDoneS: Type.Optional(quantity('s', 'Time until less than 1 V is left across the resistor'))
})
export interface CapacitorEffect extends Si<Static<typeof CapacitorEffect>> {}

export const SupplyCurrentResult = component('SupplyCurrentResult', 'Currents and what they ask of the vehicle.', {
  currents: ref(SupplyCurrents),
  sizing: ref(SizingCurrents),
  amplifiers: list('Each amplifier in the order of the request', ref(AmplifierCurrents), 1, 32),
  converter: Type.Optional(ref(ConverterLoad, 'With it the currents above are those at the voltage of the amplifiers')),
  charging: Type.Optional(ref(ChargingBalance)),
  engineOff: Type.Optional(ref(EngineOff, 'Absent for batteries of unlike chemistry in parallel: they are no bank')),
  capacitor: Type.Optional(ref(CapacitorEffect))
})
export interface SupplyCurrent extends Si<Static<typeof SupplyCurrentResult>> {}
