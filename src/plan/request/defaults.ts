/** What a plan takes where the caller is silent, each once; every use is recorded as assumed. */

import { goalMeanings, type WorkWay } from '../../contract/systems/words.ts'
import type { Default, DefaultTable } from '../../domain/default.ts'
import { portSpeeds } from '../../domain/port/air-speed.ts'

export interface Accuracy {
  /** A length comes out long or short by as much, with care [m]. */
  readonly cutM: number
  /** The same of the edge of a hole [m]. */
  readonly holeM: number
  /** What lies between the lines of two parts: the cut, and what is planed off [m]; that of a cut plan where absent. */
  readonly kerfM?: number
}

export const planDefaults = {
  speakerCableM: { value: 2, unit: 'm', why: 'amplifier and box side by side in the boot', source: 'practice' },
  mainsLowHz: {
    value: 80,
    unit: 'Hz',
    why: 'most front loudspeakers play down to about 80 Hz; the crossover follows them',
    source: 'practice'
  },
  highestHandOverHz: { value: 120, unit: 'Hz', why: 'above it the ear finds the box', source: 'practice' },
  lowestHandOverHz: { value: 50, unit: 'Hz', why: 'below it front loudspeakers strain', source: 'practice' },
  crossoverOrder: { value: 4, unit: '1', why: '24 dB an octave, as most amplifiers offer', source: 'practice' },
  branchM: { value: 1, unit: 'm', why: 'distribution block and amplifiers stand together', source: 'practice' },
  groundLeadM: { value: 0.5, unit: 'm', why: 'ground lead of half a metre', source: 'practice' },
  secondLeadM: {
    value: 0.5,
    unit: 'm',
    why: 'metres of lead from the second battery to the block, and to its ground point',
    source: 'practice'
  },
  converterLeadM: {
    value: 0.5,
    unit: 'm',
    why: 'metres of lead from the converter to the block, and to its ground point',
    source: 'practice'
  },
  capacitorLeadM: {
    value: 0.3,
    unit: 'm',
    why: 'metres of lead from the block or the amplifier to the capacitor',
    source: 'practice'
  },
  goal: {
    value: 'everyday',
    unit: 'word',
    why: `${goalMeanings.everyday}; another wish gives another box`,
    source: 'ours'
  },
  workWay: {
    value: 'saw-and-router',
    unit: 'word',
    why: 'a saw along a fence and a router; a cutting service, or jigsaw and drill, have steps of their own',
    source: 'practice'
  },
  travelShare: {
    value: 0.02,
    unit: '1',
    why: 'the sheet gives no Xmax: a fiftieth of the diameter of the piston, one way, is low for a bass driver and spares the cone',
    source: 'ours'
  },
  portTravelShare: {
    value: 0.05,
    unit: '1',
    why: 'the leaflet gives no Xmax: for the port alone a twentieth of the diameter of the piston, one way, is high, so that its air stays slow',
    source: 'ours'
  },
  ratingWPerM2: {
    value: 5000,
    unit: 'W/m²',
    why: 'the sheet gives no power rating: half a watt for each square centimetre of cone is low for a bass driver and spares the coil',
    source: 'ours'
  },
  coilTimeS: {
    value: 5e-4,
    unit: 's',
    why: 'the sheet gives no Le: half a millihenry for each ohm of Re is usual; it moves the level at 80 Hz by a few tenths of a decibel',
    source: 'practice'
  },
  airSpeedMPerS: {
    value: portSpeeds.flared,
    unit: 'm/s',
    why: 'm/s of air in the port up to which levels are held and boxes are searched: from there flared ends are heard too',
    source: 'ours'
  },
  stiffA: {
    value: 1000,
    unit: 'A',
    why: 'amperes of a charging system that is not described: it gives whatever is asked',
    source: 'ours'
  },
  stiffOhm: { value: 1e-4, unit: 'Ω', why: 'and holds its voltage', source: 'ours' },
  runningOverNominal: {
    value: 13.8 / 12,
    unit: '1',
    why: 'volts at the battery while the engine runs: 13.8 for each 12',
    source: 'practice'
  },
  starterA: { value: 250, unit: 'A', why: 'amperes of the starter in a cold start: 150 to 400', source: 'practice' },
  starterOfCranking: {
    value: 0.5,
    unit: '1',
    why: 'a starter takes half the cold cranking current',
    source: 'practice'
  },
  starterVPer12V: {
    value: 9.6,
    unit: 'V',
    why: 'what the usual load test of a battery leaves, for each 12 V: from memory',
    source: 'practice'
  },
  governedLowestV: {
    value: 12.2,
    unit: 'V',
    why: 'volts for each 12 that a vehicle with a battery sensor lets its charging fall to',
    source: 'practice'
  },
  governedHighestV: {
    value: 15,
    unit: 'V',
    why: 'volts for each 12 that it raises its charging to',
    source: 'practice'
  },
  lowestCornerHz: {
    value: 10,
    unit: 'Hz',
    why: 'the least corner most dials reach, and below the lowest music',
    source: 'practice'
  },
  lined: {
    value: true,
    unit: 'word',
    why: 'walls lined with 25 mm of wadding, as is usual; it damps standing waves',
    source: 'practice'
  },
  liningM: { value: 0.025, unit: 'm', why: 'a pad of polyester wadding on the walls', source: 'practice' },
  liningKgPerM3: { value: 20, unit: 'kg/m³', why: 'a pad of polyester wadding as it is sold', source: 'practice' },
  liningFibre: {
    value: 'polyester',
    unit: 'word',
    why: 'the wadding that is sold everywhere, and does not itch',
    source: 'practice'
  },
  covered: {
    value: true,
    unit: 'word',
    why: 'covered with boot carpet; 4 mm a face are taken off the space',
    source: 'practice'
  },
  coveringM: { value: 0.004, unit: 'm', why: 'boot carpet on one face of the box', source: 'practice' },
  roundShape: { why: 'the room is a round well', source: 'derived' },
  prismShape: { why: 'the room has a footprint of its own', source: 'derived' },
  slopingShape: { why: 'the room slopes', source: 'derived' },
  wedgeShape: { why: 'a wedge fills the room under a leaning seat back', source: 'ours' },
  plainShape: { why: 'the simplest to saw', source: 'practice' },
  wedgeFromDeg: {
    value: 10,
    unit: '°',
    why: 'from this lean on a box with upright faces wastes more of the boot than a wedge costs in sawing',
    source: 'ours'
  },
  faceOfStaves: {
    value: 'top',
    unit: 'word',
    why: 'a stave of a round box is narrower than a driver',
    source: 'derived'
  },
  inchesAddUp: { why: 'so that sums in inches add up', source: 'derived' },
  sheetFt: { value: [8, 4], unit: 'ft', why: 'sheets of 4 × 8 ft, as that market sells them', source: 'practice' },
  sawStepM: { value: 1e-3, unit: 'm', why: 'a saw is set by the millimetre', source: 'practice' },
  sawStepIn: { value: 1 / 16, unit: 'in', why: 'outer sizes lie on sixteenths', source: 'practice' },
  boardStepIn: {
    value: 1 / 32,
    unit: 'in',
    why: 'a board of whole thirty-seconds keeps inner sizes on sixteenths, since two of them come off',
    source: 'derived'
  },
  sameBoardM: { value: 5e-5, unit: 'm', why: 'half a tenth of a millimetre is no other board', source: 'ours' },
  labelLetters: { value: 40, unit: '1', why: 'a longer name does not stand on a drawing', source: 'ours' }
} as const satisfies DefaultTable

/** How exact each way of working is, and how much it cuts away; what nobody gave is noted. */
export const accuracyOf = {
  'saw-and-router': {
    value: { cutM: 0.0005, holeM: 0.0005 },
    unit: 'm',
    why: 'a saw along a fence or rail, a router round a disc',
    source: 'practice'
  },
  'cutting-service': {
    value: { cutM: 0.001, holeM: 0.0015, kerfM: 0.0045 },
    unit: 'm',
    why: 'm: the blade of a panel saw in a shop, 4 to 5 mm',
    source: 'practice'
  },
  'jigsaw-and-drill': {
    value: { cutM: 0.0015, holeM: 0.0015, kerfM: 0.004 },
    unit: 'm',
    why: 'm: two lines with a jigsaw between them, planed to on both sides',
    source: 'practice'
  }
} as const satisfies Readonly<Record<WorkWay, Default<Accuracy>>>
