/** Random whole plans as a caller sends them: sensible drivers, amplifiers, boots and supplies of no maker; the same for the same seed. */
import { type Draw, draws } from './random-systems.ts'

const round = (value: number, step: number) => Number((Math.round(value / step) * step).toPrecision(9))

const sizes = [
  { cutOut: 182, flange: 210, depth: 100, magnet: 120, sdCm2: 215, vasL: 22, fsHz: 38, xmaxMm: 8, massKg: 3.8 },
  { cutOut: 232, flange: 262, depth: 135, magnet: 150, sdCm2: 330, vasL: 34, fsHz: 32, xmaxMm: 11, massKg: 5.6 },
  { cutOut: 281, flange: 312, depth: 152, magnet: 174, sdCm2: 487, vasL: 66, fsHz: 28, xmaxMm: 13, massKg: 7.9 },
  { cutOut: 352, flange: 388, depth: 180, magnet: 196, sdCm2: 815, vasL: 165, fsHz: 23, xmaxMm: 15, massKg: 10.8 }
] as const

function driver(draw: Draw) {
  const size = draw.pick(sizes)
  const near = (value: number, spread = 0.12) => draw.between(value * (1 - spread), value * (1 + spread))
  const qes = draw.between(0.36, 0.62)
  const count = draw.pick([1, 2])
  const ratedOhm = draw.pick([2, 4])
  const reOhm = ratedOhm * 0.85
  return {
    name: 'Tarn driver',
    sheet: {
      fsHz: round(near(size.fsHz), 0.1),
      qms: round(draw.between(3.5, 7), 0.01),
      qes: round(qes, 0.001),
      vasL: round(near(size.vasL, 0.25), 0.1),
      sdCm2: size.sdCm2,
      reOhm: round(count === 2 ? reOhm * 2 : reOhm, 0.01),
      leMh: round(draw.between(0.8, 2.6), 0.01),
      xmaxMm: round(near(size.xmaxMm, 0.3), 0.1),
      powerW: round(draw.between(180, 700), 10)
    },
    coils: { count, ratedOhm, ...(count === 2 ? { statedFor: 'series' } : {}) },
    mounting: {
      cutOutDiameterMm: size.cutOut,
      flangeDiameterMm: size.flange,
      mountingDepthMm: round(near(size.depth), 1),
      magnetDiameterMm: size.magnet,
      magnetHeightMm: 50,
      ventDiameterMm: draw.pick([0, 25, 30]),
      displacementL: round(draw.between(1, 3), 0.1),
      massKg: size.massKg,
      screwCircleDiameterMm: size.flange - 14,
      screwCount: 8
    }
  }
}

function amplifier(draw: Draw) {
  const at4 = round(draw.between(180, 700), 10)
  return {
    name: 'Tarn amplifier',
    ratings: [
      { loadOhm: 8, powerW: round(at4 * 0.55, 10) },
      { loadOhm: 4, powerW: at4 },
      { loadOhm: 2, powerW: round(at4 * 1.7, 10) },
      { loadOhm: 1, powerW: round(at4 * 2.6, 10) }
    ],
    minimumOhm: 1,
    channels: 1,
    class: draw.pick(['D', 'AB']),
    quiescentW: draw.whole(8, 25),
    regulation: draw.pick(['regulated', 'unregulated']),
    ratedVoltageV: draw.pick([13.8, 14.4]),
    onboardFusesA: draw.pick([[40, 40], [30, 30, 30], [80]]),
    footprintCm2: draw.whole(300, 900)
  }
}

function enclosure(draw: Draw) {
  return draw.pick([
    undefined,
    { kind: 'closed' },
    { kind: 'closed', qtc: round(draw.between(0.65, 1), 0.01) },
    { kind: 'closed', netVolumeL: draw.whole(18, 70) },
    { kind: 'vented' },
    { kind: 'vented', netVolumeL: draw.whole(30, 110), tuningHz: draw.whole(29, 38) },
    { kind: 'vented', tuningHz: draw.whole(29, 38), portShape: draw.pick(['round', 'slot']) },
    { kind: 'vented', airSpeedMPerS: draw.pick([17, 22, 28]) }
  ])
}

function car(draw: Draw) {
  const cabin = draw.maybe(0.5, () => ({ lengthM: round(draw.between(2, 3.2), 0.1) }))
  const speakerCableLengthM = draw.maybe(0.5, () => round(draw.between(0.6, 5), 0.1))
  const massKg = draw.maybe(0.5, () => draw.whole(950, 2400))
  const strategy = draw.maybe(0.15, () => draw.pick(['balanced', 'lowest', 'shallowest', 'narrowest']))
  const seatSlopeDeg = draw.maybe(0.2, () => draw.whole(8, 24))
  return {
    space: {
      widthMm: draw.whole(600, 1150),
      heightMm: draw.whole(330, 520),
      depthMm: draw.whole(300, 620),
      ...(strategy === undefined ? {} : { strategy }),
      ...(seatSlopeDeg === undefined ? {} : { seatSlopeDeg }),
      ...draw.pick([{}, { clearanceMm: 5 }, { coveringMm: 3 }])
    },
    ...(cabin === undefined ? {} : { cabin }),
    ...(speakerCableLengthM === undefined ? {} : { speakerCableLengthM }),
    ...(massKg === undefined ? {} : { massKg })
  }
}

function supply(draw: Draw) {
  const others = draw.maybe(0.2, () => ({
    otherAmplifiers: [{ name: 'doors', powerW: draw.whole(80, 300), class: 'AB', regulation: 'regulated' }],
    ...draw.pick([{}, { branchLengthM: 0.8 }])
  }))
  return {
    systemVoltageV: 12,
    positiveLengthM: round(draw.between(3.5, 6.5), 0.1),
    return: draw.pick([
      { kind: 'chassis', body: 'steel' },
      { kind: 'chassis', leadLengthM: 0.4, body: 'steel' },
      { kind: 'cable', lengthM: 5 }
    ]),
    insulationC: draw.pick([90, 105]),
    source: { coldCrankingA: draw.whole(450, 850) },
    fuseDistanceMm: draw.whole(100, 400),
    sheathed: true,
    charging: { kind: 'alternator', ratedA: draw.whole(90, 180) },
    battery: { capacityAh: draw.whole(55, 95), chemistry: draw.pick(['flooded', 'agm']) },
    ...(others ?? {})
  }
}

function signal(draw: Draw) {
  const mainsLowHz = draw.maybe(0.5, () => draw.whole(60, 120))
  const mains = mainsLowHz === undefined ? {} : { mainsLowHz }
  const input = { lowestV: 0.2, highestV: 6, inputOhm: 20_000 }
  if (draw.whole(0, 2) === 0) {
    return {
      source: { kind: 'speaker-level', powerW: draw.whole(15, 25), loadOhm: 4, bridgeTied: true, factory: true },
      input: draw.pick([{ ...input, speakerLevelV: 12 }, input]),
      ...draw.pick([{}, { converterLineV: 2.5 }]),
      turnOn: { remoteOutput: false, amplifierSenses: true },
      ...mains
    }
  }
  return {
    source: { kind: 'line-level', levelV: draw.pick([2, 4, 5]), outputOhm: 200 },
    input,
    ...draw.pick([{}, { inputsInParallel: 2 }]),
    turnOn: { remoteOutput: true, limitA: 0.25, loadsA: [0.02] },
    ...mains
  }
}

/** @returns a request of POST /v1/plans; most fit, some are too tight, too loud or contradict their sheet */
export function randomPlan(seed: number) {
  const draw = draws(seed)
  const wish = enclosure(draw)
  const finish = draw.pick([undefined, { lined: false }, { covered: false }, { lined: true, covered: true }])
  return {
    name: `plan ${seed}`,
    driver: driver(draw),
    driverCount: draw.pick([1, 1, 2]),
    amplifier: amplifier(draw),
    ...(wish === undefined ? {} : { enclosure: wish }),
    board: {
      material: draw.pick(['mdf', 'birch-plywood']),
      thicknessMm: draw.pick([16, 18, 19]),
      frontLayers: draw.pick([1, 2]),
      sheet: { lengthMm: 2440, widthMm: 1220, kerfMm: draw.pick([2.4, 3.2]), price: 45 }
    },
    car: car(draw),
    supply: supply(draw),
    signal: signal(draw),
    ...(finish === undefined ? {} : { finish }),
    air: { temperatureC: draw.whole(0, 35) }
  }
}
