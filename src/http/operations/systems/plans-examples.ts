/** A scenario of our own: an invented estate car, invented drivers and amplifiers. The demo and the contract use it. */

const driver = {
  name: 'Fenlark 30',
  sheet: { fsHz: 29.5, qms: 5.4, qes: 0.47, vasL: 62, sdCm2: 490, reOhm: 3.4, leMh: 2.2, xmaxMm: 14, powerW: 450 },
  coils: { count: 2, ratedOhm: 2, statedFor: 'series' },
  mounting: {
    cutOutDiameterMm: 282,
    flangeDiameterMm: 312,
    mountingDepthMm: 158,
    magnetDiameterMm: 180,
    magnetHeightMm: 55,
    ventDiameterMm: 30,
    displacementL: 2.1,
    massKg: 8.2,
    screwCircleDiameterMm: 297,
    screwCount: 8
  }
} as const

const amplifier = {
  name: 'Osier 700',
  ratings: [
    { loadOhm: 4, powerW: 420 },
    { loadOhm: 2, powerW: 700 },
    { loadOhm: 1, powerW: 1000 }
  ],
  minimumOhm: 1,
  channels: 1,
  class: 'D',
  regulation: 'regulated',
  ratedVoltageV: 14.4,
  onboardFusesA: [50, 50]
} as const

const supply = {
  systemVoltageV: 12,
  positiveLengthM: 5.5,
  return: { kind: 'chassis', leadLengthM: 0.4, body: 'steel' },
  insulationC: 105,
  source: { coldCrankingA: 680 },
  fuseDistanceMm: 250,
  sheathed: true,
  charging: { kind: 'alternator', ratedA: 140 },
  battery: { capacityAh: 70, chemistry: 'flooded' }
} as const

/** Two drivers in the boot of an estate car, line-level source. */
export const estatePlan = {
  name: 'Two Fenlarks for the Brackwater estate',
  driver,
  driverCount: 2,
  amplifier,
  board: { material: 'mdf', thicknessMm: 18, frontLayers: 2, sheet: { lengthMm: 2440, widthMm: 1220 } },
  car: { space: { widthMm: 980, heightMm: 460, depthMm: 520 }, cabin: { lengthM: 2.9 }, massKg: 1560 },
  supply,
  signal: {
    source: { kind: 'line-level', levelV: 4 },
    input: { lowestV: 0.2, highestV: 6, inputOhm: 22_000 },
    turnOn: { remoteOutput: true, limitA: 0.25, loadsA: [0.02] },
    mainsLowHz: 80
  }
} as const

/** One driver in a small closed box, on the speaker outputs of a factory radio. */
export const hatchbackPlan = {
  name: 'One Fenlark for the Brackwater hatchback',
  driver,
  driverCount: 1,
  amplifier: { ...amplifier, name: 'Osier 420' },
  enclosure: { kind: 'closed', qtc: 0.75 },
  board: { material: 'birch-plywood', thicknessMm: 17.7 },
  car: { space: { widthMm: 700, heightMm: 420, depthMm: 420 } },
  supply: { ...supply, positiveLengthM: 4.6 },
  signal: {
    source: { kind: 'speaker-level', powerW: 20, loadOhm: 4, bridgeTied: true, factory: true },
    input: { lowestV: 0.2, highestV: 6, speakerLevelV: 12 },
    turnOn: { remoteOutput: false, amplifierSenses: true }
  },
  finish: { lined: false, covered: true }
} as const

/** Two drivers against a seat back that leans by 20°: a wedge with a folded slot, tuned as asked. */
export const leaningPlan = {
  ...estatePlan,
  name: 'A wedge under the leaning seat of the Brackwater hatchback',
  enclosure: { kind: 'vented', netVolumeL: 85, tuningHz: 31, portShape: 'slot' },
  car: { space: { widthMm: 1060, heightMm: 470, depthMm: 560, seatSlopeDeg: 20 }, cabin: { lengthM: 2.5 } }
} as const

/** One driver and two passive radiators on opposite sides, whose forces cancel: deep bass where no port finds its length. */
export const radiatorPlan = {
  ...estatePlan,
  name: 'Two radiators beside a Fenlark for the Brackwater estate',
  driverCount: 1,
  enclosure: { kind: 'passive-radiator', goal: 'everyday' },
  passiveRadiators: {
    name: 'Thistle 30',
    sheet: { areaCm2: 490, massG: 180, complianceMmPerN: 0.55, qm: 9, xmaxMm: 22, mostAddedG: 500 },
    mounting: {
      cutOutDiameterMm: 282,
      flangeDiameterMm: 312,
      mountingDepthMm: 95,
      massKg: 1.6,
      screwCircleDiameterMm: 297,
      screwCount: 8
    }
  }
} as const
