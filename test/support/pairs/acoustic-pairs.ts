/** Pairs about boxes, ports and drivers as they are heard. */
import { pick, type Random } from '../random-requests.ts'
import { type Answer, between, driverSheet, type Pair } from './pair.ts'

const air = { densityKgPerM3: 1.19, soundSpeedMPerS: 344.5 }

/** A lumped port of the mass that a tuning asks for; its own size does not matter to the sound. */
function portFor(netVolumeL: number, tuningHz: number) {
  const areaM2 = 0.01
  const lengthM = (areaM2 * air.soundSpeedMPerS ** 2) / ((netVolumeL / 1e3) * (2 * Math.PI * tuningHz) ** 2)
  return { areaCm2: areaM2 * 1e4, lengthMm: lengthM * 1e3, endFactor: 0 }
}

/** The box of a sizing as a caller describes it to the response. */
function boxOf({ kind, netVolumeL, tuningHz, frontVolumeL, frontTuningHz, passiveRadiators }: Answer, leakQ: number) {
  const rear = { netVolumeL, leakQ }
  if (kind === 'closed') return { kind, rear }
  if (kind === 'vented') return { kind, rear: { ...rear, port: portFor(netVolumeL, tuningHz) } }
  if (kind === 'band-pass-4') {
    return { kind, rear, front: { netVolumeL: frontVolumeL, leakQ, port: portFor(frontVolumeL, frontTuningHz) } }
  }
  const { count, areaCm2, massG, complianceMmPerN } = passiveRadiators
  return { kind, rear: { ...rear, passiveRadiators: { count, areaCm2, massG, complianceMmPerN } } }
}

const groups = (random: Random) =>
  pick(random, [
    { count: 1 },
    { count: 2 },
    { count: 4, inSeries: 2 },
    { count: 2, isobaric: { couplingVolumeL: between(random, 2, 10) } }
  ])

const sizingAndResponse: Pair = {
  asked: ['sizeEnclosure', 'computeResponse'],
  question: random => ({
    driver: driverSheet(random),
    drivers: groups(random),
    source: { seriesOhm: between(random, 0.01, 0.3) },
    air,
    kinds: [pick(random, ['closed', 'vented', 'passive-radiator', 'band-pass-4'])],
    wanted: { qtc: [between(random, 0.8, 1.1)] },
    losses: { leakQ: between(random, 6, 20) }
  }),
  same: ({ driver, drivers, source, losses }, { candidates }, random) => {
    if (candidates.length === 0) return undefined
    const candidate = pick(random, candidates as readonly Answer[])
    const { kind, tuningHz, response } = candidate
    const isClosed = kind === 'closed'
    return {
      question: {
        driver,
        drivers,
        source: { ...source, voltageV: 1 },
        air,
        enclosure: boxOf(candidate, losses.leakQ),
        frequenciesHz: [30]
      },
      said: { ...(isClosed ? { fcHz: candidate.fcHz, qtc: candidate.qtc } : { tuningHz }), f3Hz: response.f3Hz },
      heard: ({ scalars }) => ({
        ...(isClosed ? { fcHz: scalars.fcHz, qtc: scalars.qtc } : { tuningHz: scalars.tuningHz }),
        f3Hz: scalars.f3Hz
      })
    }
  },
  // half power is looked for on a grid and refined
  within: 1e-6
}

const portsAndResponse: Pair = {
  asked: ['sizePort', 'computeResponse'],
  question: random => ({
    netVolumeL: between(random, 25, 120),
    tuningHz: between(random, 24, 45),
    air,
    driver: driverSheet(random),
    drivers: groups(random),
    source: { powerW: between(random, 100, 600), loadOhm: 4 },
    leakQ: between(random, 6, 20),
    port: { kind: 'round' },
    endModel: pick(random, ['convention', 'by-shape'])
  }),
  same: ({ netVolumeL, driver, drivers, source, leakQ }, { candidates }, random) => {
    const { count, areaCm2, lengthMm, endFactor, ...port } = pick(random, candidates as readonly Answer[])
    if (lengthMm < 5) return undefined
    const { tuningHz, airSpeedHz, airSpeedMPerS, airSpeedAtTuningMPerS } = port
    const enclosure = {
      kind: 'vented',
      rear: { netVolumeL, leakQ, port: { count, areaCm2, lengthMm, endFactor } }
    }
    const [low = 0, high = 0] = [airSpeedHz, tuningHz].toSorted((a, b) => a - b)
    return {
      question: { driver, drivers, source, air, enclosure, frequenciesHz: [low, high + 1e-6] },
      said: { tuningHz, airSpeedMPerS, airSpeedAtTuningMPerS },
      heard: ({ scalars, curves: { rearPortAirSpeedMPerS: speeds } }) => ({
        tuningHz: scalars.tuningHz,
        airSpeedMPerS: speeds[airSpeedHz === low ? 0 : 1],
        airSpeedAtTuningMPerS: speeds[airSpeedHz === low ? 1 : 0]
      })
    }
  },
  within: 1e-5
}

const sheetAndSizing: Pair = {
  asked: ['completeDriverParameters', 'sizeEnclosure'],
  question: random => {
    const { fsHz, qms, qes, vasL, ...rest } = driverSheet(random)
    const byMechanics = { mmsG: between(random, 60, 200), cmsMmPerN: between(random, 0.1, 0.4), rmsKgPerS: 5, blTm: 14 }
    return { driver: { ...rest, ...(random() < 0.5 ? { fsHz, qms, qes, vasL } : byMechanics) } }
  },
  same: ({ driver }, { driver: { fsHz, qts, vasL }, figures: { ebpHz } }) => ({
    question: { driver, kinds: ['closed'] },
    said: { fsHz, qts, vasL, ebpHz },
    heard: ({ drivers }) => ({ fsHz: drivers.fsHz, qts: drivers.qts, vasL: drivers.vasL, ebpHz: drivers.ebpHz })
  })
}

const LEVELS_HZ = [25, 31.5, 40, 50, 63]

const toleranceAndResponse: Pair = {
  asked: ['computeTolerance', 'computeResponse'],
  question: random => {
    const netVolumeL = between(random, 25, 120)
    const port = { count: 1, areaCm2: between(random, 60, 200), lengthMm: between(random, 150, 500) }
    const enclosure = pick(random, [
      { kind: 'closed', rear: { netVolumeL } },
      { kind: 'vented', rear: { netVolumeL, leakQ: 8, port } }
    ])
    const source = { voltageV: between(random, 5, 40), seriesOhm: 0.05 }
    return { driver: driverSheet(random), enclosure, source, frequenciesHz: LEVELS_HZ, samples: 20, seed: 1 }
  },
  same: ({ samples: _, seed: __, ...question }, { nominal, figures }) => ({
    question,
    said: {
      ...listed('levelDb', nominal.levelDb),
      ...listed('coneExcursionMm', nominal.coneExcursionMm),
      ...listed('impedanceOhm', nominal.impedanceOhm),
      f3Hz: figures.f3?.nominalHz,
      tuningHz: figures.tuning?.nominalHz
    },
    heard: ({ curves, scalars }) => ({
      ...listed('levelDb', curves.levelDb),
      ...listed('coneExcursionMm', curves.coneExcursionMm),
      ...listed('impedanceOhm', curves.impedanceOhm),
      f3Hz: scalars.f3Hz,
      tuningHz: scalars.tuningHz
    })
  }),
  within: 1e-6
}

const listed = (name: string, values: readonly number[]) =>
  Object.fromEntries(values.map((value, k) => [`${name} ${k}`, value]))

export const acousticPairs = [sizingAndResponse, portsAndResponse, sheetAndSizing, toleranceAndResponse]
