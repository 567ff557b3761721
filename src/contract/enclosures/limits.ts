/** Schema of what a system must not exceed. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { thermalReadings } from './words.ts'

const some = (unit: string, description: string, from: number, to: number) =>
  Type.Optional(quantity(unit, description, { from, to }))

const HeatingBody = component(
  'CoilHeatingRequest',
  'The way of the heat: coil to magnet, magnet to air. Without `coilKPerW` a rise of 180 K at the rated power of the driver is assumed.',
  {
    coilKPerW: some('K/W', 'Thermal resistance from one coil to its magnet', 0.001, 50),
    coilTimeConstantS: some('s', 'Time constant of the coil; with it the warming over time is given', 0.1, 600),
    magnetKPerW: some('K/W', 'Thermal resistance from the magnet to the air; 0 when absent', 0, 50),
    magnetTimeConstantS: some('s', 'Time constant of the magnet', 1, 100_000),
    ambientC: some('°C', 'Temperature around the driver', -40, 90),
    maximumCoilC: some('°C', 'What the coil stands', 60, 400),
    metal: Type.Optional(choice('What the coil is wound of', ['copper', 'aluminium']))
  }
)
export interface HeatingRequest extends Si<Static<typeof HeatingBody>> {}

export const LimitsBody = component(
  'Limits',
  'What the system must not exceed, beside `xmaxMm` and `powerW` of the driver. May be empty.',
  {
    passiveRadiatorXmaxMm: some('mm', 'Travel of a passive radiator, one way, peak', 0.1, 200),
    airSpeedMPerS: some('m/s', 'Air speed in any port, peak', 1, 100),
    ratedOhm: some('Ω', 'Rated impedance of the drivers as they are joined', 0.05, 1000),
    thermalReading: Type.Optional(
      choice(
        'How `powerW` of the driver is read. `coil-heat`: |i|²·Re. `rated-voltage`: U²/ratedOhm. `lower`: whichever allows less',
        thermalReadings
      )
    ),
    dutyFactor: some('1', 'Mean power over that of a full sine', 0.001, 1),
    amplifierVoltageV: some('V', 'What the amplifier gives at most, RMS', 0.1, 1000),
    amplifierPowerW: some('W', 'In place of its voltage: its power into `amplifierLoadOhm`', 0.1, 1e5),
    amplifierLoadOhm: some('Ω', 'Load at which that power is meant', 0.05, 1000),
    amplifierCurrentA: some('A', 'What the amplifier gives at most, RMS', 0.1, 1000),
    portLossFactor: some(
      '1',
      'K of the jets at both ends of a port together: about 1.5 sharp, 0.2 to 0.5 flared',
      0,
      10
    ),
    heating: Type.Optional(ref(HeatingBody)),
    programmeFromHz: some('Hz', 'Lowest frequency of what is played', 1, 1000),
    programmeToHz: some('Hz', 'Highest frequency of what is played', 2, 2000)
  }
)
export interface LimitsRequest extends Si<Static<typeof LimitsBody>> {}
