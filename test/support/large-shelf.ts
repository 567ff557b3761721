/** A large shelf of invented drivers and amplifiers, the same for the same counts: for benches and for searches in parts. */
import { estateSearch } from '../../src/http/operations/systems/design-search-examples.ts'
import { type Random, seeded } from './random-requests.ts'

/** Of a nominal size: cone area, flange, motor. */
const sizes = [
  { inches: 8, sdCm2: 215, flangeMm: 212, depthMm: 125, magnetMm: 130 },
  { inches: 10, sdCm2: 330, flangeMm: 262, depthMm: 140, magnetMm: 156 },
  { inches: 12, sdCm2: 490, flangeMm: 312, depthMm: 155, magnetMm: 170 },
  { inches: 15, sdCm2: 810, flangeMm: 390, depthMm: 175, magnetMm: 190 }
] as const

const between = (random: Random, from: number, to: number) => from + random() * (to - from)
const round = (value: number, digits = 3) => Number(value.toPrecision(digits))

function driver(random: Random, index: number) {
  const { inches, sdCm2, flangeMm, depthMm, magnetMm } = sizes[index % sizes.length] ?? sizes[0]
  const powerW = round(between(random, 150, 900), 2)
  return {
    name: `Fenlark ${inches} no. ${index}`,
    price: round(between(random, 60, 500)),
    sheet: {
      fsHz: round(between(random, 22, 40)),
      qms: round(between(random, 3.5, 8)),
      qes: round(between(random, 0.34, 0.65)),
      vasL: round((sdCm2 / 480) ** 2 * between(random, 25, 90)),
      sdCm2,
      reOhm: round(between(random, 3.2, 3.8)),
      leMh: round(between(random, 1, 2.5)),
      xmaxMm: round(between(random, 8, 18)),
      powerW
    },
    coils: random() < 0.5 ? { count: 1, ratedOhm: 4 } : { count: 2, ratedOhm: 2, statedFor: 'series' },
    mounting: {
      cutOutDiameterMm: flangeMm - 30,
      flangeDiameterMm: flangeMm,
      mountingDepthMm: depthMm,
      magnetDiameterMm: magnetMm,
      magnetHeightMm: 50,
      displacementL: round(0.006 * inches ** 2.4, 2),
      massKg: round(between(random, 4, 12), 2),
      screwCircleDiameterMm: flangeMm - 14,
      screwCount: 8
    }
  }
}

function amplifier(random: Random, index: number) {
  const powerW = round(between(random, 100, 600), 2)
  return {
    name: `Osier no. ${index}`,
    price: round(powerW * between(random, 0.4, 0.8)),
    ratings: [
      { loadOhm: 4, powerW },
      { loadOhm: 2, powerW: round(powerW * between(random, 1.5, 1.9), 2) }
    ],
    minimumOhm: 2,
    channels: 1,
    class: 'D',
    regulation: 'regulated',
    ratedVoltageV: 14.4,
    onboardFusesA: [Math.max(20, 10 * Math.ceil((powerW * 1.9) / 100))]
  }
}

export function largeShelf(drivers: number, amplifiers: number) {
  const random = seeded(12)
  const { limits: _, show: __, ...request } = estateSearch
  return {
    ...request,
    drivers: Array.from({ length: drivers }, (_each, index) => driver(random, index)),
    driverCounts: [1],
    amplifiers: Array.from({ length: amplifiers }, (_each, index) => amplifier(random, index)),
    show: 10
  }
}
