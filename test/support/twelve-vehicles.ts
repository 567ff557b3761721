/**
 * Vehicles of everyday work, as a master installer would wire them: sizes and fuses by common practice (no source). Where the
 * plan differs, the row says why.
 */
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { alder, alderPlan as car, doors } from './alder-plan.ts'

const byCable = { return: { kind: 'cable', lengthM: 5.4 } }
const agm = {
  battery: { capacityAh: 92, chemistry: 'agm' },
  secondBattery: { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm', coldCrankingA: 860 }
}

/** Two pairs, each bridged into the 4 Ω of one driver. */
const fourChannels = {
  class: 'AB',
  channels: 4,
  ratings: [
    { loadOhm: 4, powerW: 80 },
    { loadOhm: 2, powerW: 130 },
    { loadOhm: 4, powerW: 260, bridged: true }
  ],
  minimumOhm: 2,
  minimumBridgedOhm: 4
}

export interface Vehicle {
  readonly plan: object
  readonly trunk: string
  readonly fuseA: number
  readonly runs?: number
}

export const vehicles: Readonly<Record<string, Vehicle>> = {
  // the trade table: 8 AWG, 30 to 40 A; strips that break 3 kA begin at 35 A
  'hatchback, 300 W': { plan: car(300, { positiveLengthM: 4.6 }), trunk: '8 AWG', fuseA: 35 },
  // the trade table: 4 AWG, 50 A; a cable that prints 105 °C carries it one size thinner within 3 % of drop
  'hatchback, 500 W': { plan: car(500, { positiveLengthM: 5 }), trunk: '6 AWG', fuseA: 50 },
  // the trade table: 1/0 AWG, 150 A; practice takes a strip of 2 kA, and 3.3 kA may flow behind the post
  'estate, 1500 W on copper': { plan: car(1500), trunk: '1/0 AWG', fuseA: 150 },
  // clad aluminium: a third less conductance, so one or two sizes up
  'estate, 1500 W on clad aluminium': {
    plan: car(1500, { conductor: 'copper-clad-10' }),
    trunk: '2/0 AWG',
    fuseA: 150
  },
  // practice fuses the long cable at the battery alone; the second battery feeds a fault in it too, so its far end has one as well
  'off-road, 3000 W on two amplifiers, battery beside them': {
    plan: car(2200, { otherAmplifiers: [doors], branchLengthM: 1.2, ...agm }),
    trunk: '4/0 AWG',
    fuseA: 300
  },
  // 650 W/0.85/12 V = 64 A: 70 A of output, 45 A from 24 V; practice lays the same 50 A out and 70 A behind
  'lorry of 24 V, 650 W behind a converter': {
    plan: car(650, {
      systemVoltageV: 24,
      source: { chemistry: 'agm', capacityAh: 170 },
      converter: {},
      ...{ positiveLengthM: 3.4, branchLengthM: 2.4 },
      return: { kind: 'cable', lengthM: 3.4 }
    }),
    trunk: '8 AWG',
    fuseA: 50
  },
  // practice refuses 8 Ω on it; four coils in series are allowed and give half: cable and fuse are those of its 600 W
  'amplifier for 4 Ω alone, two drivers of two 2 Ω coils': {
    plan: car(
      600,
      { positiveLengthM: 4.8 },
      {
        driver: { ...estatePlan.driver, coils: { count: 2, ratedOhm: 2 } },
        amplifier: alder(600, { ratings: [{ loadOhm: 4, powerW: 600 }], minimumOhm: 4 })
      }
    ),
    trunk: '4 AWG',
    fuseA: 60
  },
  // practice lays 2 AWG; the drop of 3 % over out and back asks for the next size. The return ends before the sensor
  'start-stop, 950 W, back by cable': {
    plan: car(950, { ...byCable, batterySensor: true, charging: { kind: 'alternator', ratedA: 180 } }),
    trunk: '1/0 AWG',
    fuseA: 100
  },
  // practice fuses like a lead battery; lithium drives up to 13 kA into a short, so a cartridge. Return by cable to the 12 V battery
  'electric, 1000 W, lithium, converter': {
    plan: car(
      1000,
      {
        ...byCable,
        source: { chemistry: 'lithium', capacityAh: 60 },
        battery: { capacityAh: 60, chemistry: 'lithium' },
        charging: { kind: 'converter', ratedA: 150, baseLoadA: 30 }
      },
      { car: { ...estatePlan.car, drive: 'electric' } }
    ),
    trunk: '1/0 AWG',
    fuseA: 100
  },
  // 420 W/0.85/12 V = 41 A: the next rating; no turn-on wire, the amplifier senses its signal
  'factory radio, loudspeaker level': { plan: hatchbackPlan, trunk: '6 AWG', fuseA: 50 },
  // 520 W/0.6/12 V = 72 A: practice reckons class D and lays 60 A
  'bridged four-channel, class AB, 520 W': {
    plan: car(520, {}, { amplifier: alder(520, fourChannels) }),
    trunk: '4 AWG',
    fuseA: 80
  },
  // practice lays a thick cable to a relay between unlike batteries; here the trunk feeds a charger alone,
  // 27 A for hours at 70 °C, which a strip of 40 A does not carry for good
  'van, 1100 W on a lithium second battery': {
    plan: car(1100, {
      battery: { capacityAh: 95, chemistry: 'agm' },
      secondBattery: { arrangement: 'isolated', capacityAh: 100, chemistry: 'lithium' }
    }),
    trunk: '6 AWG',
    fuseA: 50
  }
}
