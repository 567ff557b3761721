/** Searches in the same scenario of our own: what an invented dealer has on the shelf, for the invented estate and hatchback. */
import { estatePlan, hatchbackPlan } from './plans-examples.ts'

const { driver: fenlark30, amplifier: osier700, board, car, supply, signal } = estatePlan

/** Ten inches, stiff and cheap. */
const fenlark25 = {
  name: 'Fenlark 25',
  price: 140,
  sheet: { fsHz: 33, qms: 6, qes: 0.52, vasL: 28, sdCm2: 330, reOhm: 3.5, leMh: 1.6, xmaxMm: 11, powerW: 300 },
  coils: { count: 2, ratedOhm: 2, statedFor: 'series' },
  mounting: {
    cutOutDiameterMm: 232,
    flangeDiameterMm: 262,
    mountingDepthMm: 140,
    magnetDiameterMm: 156,
    magnetHeightMm: 50,
    ventDiameterMm: 25,
    displacementL: 1.4,
    massKg: 5.6,
    screwCircleDiameterMm: 248,
    screwCount: 8
  }
} as const

/** Twelve inches with one coil. */
const reedling30 = {
  name: 'Reedling 30',
  price: 190,
  sheet: { fsHz: 27, qms: 4.8, qes: 0.42, vasL: 74, sdCm2: 480, reOhm: 3.6, leMh: 1.9, xmaxMm: 10, powerW: 350 },
  coils: { count: 1, ratedOhm: 4 },
  mounting: {
    cutOutDiameterMm: 280,
    flangeDiameterMm: 310,
    mountingDepthMm: 146,
    magnetDiameterMm: 170,
    magnetHeightMm: 48,
    displacementL: 1.8,
    massKg: 6.4,
    screwCircleDiameterMm: 295,
    screwCount: 8
  }
} as const

const osier400 = {
  name: 'Osier 400',
  price: 210,
  ratings: [
    { loadOhm: 4, powerW: 260 },
    { loadOhm: 2, powerW: 400 }
  ],
  minimumOhm: 2,
  channels: 1,
  class: 'D',
  regulation: 'regulated',
  ratedVoltageV: 14.4,
  onboardFusesA: [40]
} as const

const shelf = {
  drivers: [{ ...fenlark30, price: 260 }, fenlark25, reedling30],
  amplifiers: [{ ...osier700, price: 340 }, osier400]
} as const

/** Anything that goes into the estate car for 700, on 70 A. */
export const estateSearch = {
  drivers: shelf.drivers.slice(0, 2),
  driverCounts: [1, 2],
  amplifiers: shelf.amplifiers,
  board,
  car,
  supply,
  signal,
  limits: { pricePerSystem: 700, fullSineA: 70, airSpeedMPerS: 25, f3AtMostHz: 50 },
  show: 4
} as const

/** The loudest closed box under a hatchback's shelf. */
export const hatchbackSearch = {
  drivers: shelf.drivers,
  driverCounts: [1],
  amplifiers: shelf.amplifiers,
  kinds: ['closed'],
  board: hatchbackPlan.board,
  car: hatchbackPlan.car,
  supply: hatchbackPlan.supply,
  signal: hatchbackPlan.signal,
  limits: { outerVolumeL: 60, massKg: 25, averageA: 20 },
  rankBy: 'level',
  levelHz: 45,
  show: 5
} as const
