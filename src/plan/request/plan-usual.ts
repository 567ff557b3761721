import { goalMeanings } from '../../contract/systems/words.ts'
import { portSpeeds } from '../../domain/port/air-speed.ts'

/** What a plan takes where the caller is silent, each once; every use is recorded as assumed. Common practice, no source. */
export const usual = {
  speakerCableM: { value: 2, why: 'amplifier and box side by side in the boot' },
  mainsLowHz: { value: 80, why: 'most front loudspeakers play down to about 80 Hz; the crossover follows them' },
  branchM: { value: 1, why: 'distribution block and amplifiers stand together' },
  groundLeadM: { value: 0.5, why: 'ground lead of half a metre' },
  secondLeadM: { value: 0.5, why: 'metres of lead from the second battery to the block, and to its ground point' },
  converterLeadM: { value: 0.5, why: 'metres of lead from the converter to the block, and to its ground point' },
  capacitorLeadM: { value: 0.3, why: 'metres of lead from the block or the amplifier to the capacitor' },
  goal: {
    value: 'everyday',
    why: `${goalMeanings.everyday}; another wish gives another box`
  },
  workWay: {
    value: 'saw-and-router',
    why: 'a saw along a fence and a router; a cutting service, or jigsaw and drill, have steps of their own'
  },
  travelShare: {
    value: 0.02,
    why: 'the sheet gives no Xmax: a fiftieth of the diameter of the piston, one way, is low for a bass driver and spares the cone'
  },
  portTravelShare: {
    value: 0.05,
    why: 'the leaflet gives no Xmax: for the port alone a twentieth of the diameter of the piston, one way, is high, so that its air stays slow'
  },
  ratingWPerM2: {
    value: 5000,
    why: 'the sheet gives no power rating: half a watt for each square centimetre of cone is low for a bass driver and spares the coil'
  },
  coilTimeS: {
    value: 5e-4,
    why: 'the sheet gives no Le: half a millihenry for each ohm of Re is usual; it moves the level at 80 Hz by a few tenths of a decibel'
  },
  airSpeedMPerS: {
    value: portSpeeds.flared,
    why: 'm/s of air in the port up to which levels are held and boxes are searched: from there flared ends are heard too'
  },
  stiffA: { value: 1000, why: 'amperes of a charging system that is not described: it gives whatever is asked' },
  stiffOhm: { value: 1e-4, why: 'and holds its voltage' },
  starterA: { value: 250, why: 'amperes of the starter in a cold start: 150 to 400' },
  governedLowestV: {
    value: 12.2,
    why: 'volts for each 12 that a vehicle with a battery sensor lets its charging fall to'
  },
  governedHighestV: { value: 15, why: 'volts for each 12 that it raises its charging to' },
  lowestCornerHz: { value: 10, why: 'the least corner most dials reach, and below the lowest music' }
} as const

/** A regulated alternator holds 13.8 V for each 12 V. Common practice, no source. */
export const RUNNING_OVER_NOMINAL = 13.8 / 12
