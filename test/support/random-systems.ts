/** Random but buildable systems of every kind, the same for the same seed. */
import type { DriverRequest } from '../../src/contract/drivers/driver.ts'
import type {
  ChamberRequest,
  CustomEnclosureRequest,
  DriversRequest,
  PassiveRadiatorRequest,
  PortRequest
} from '../../src/contract/enclosures/enclosure.ts'
import type { PresetKind } from '../../src/contract/enclosures/words.ts'
import type { EnclosureRequest, SystemRequest } from '../../src/domain/enclosure/model/request.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

export type SystemKind = PresetKind | 'custom' | 'isobaric'

export interface Draw {
  readonly between: (low: number, high: number) => number
  readonly whole: (low: number, high: number) => number
  readonly maybe: <T>(share: number, value: () => T) => T | undefined
  readonly pick: <T>(values: readonly T[]) => T
}

export function draws(seed: number): Draw {
  const { uniform } = randomStream(seed)
  const whole = (low: number, high: number) => low + Math.floor(uniform() * (high - low + 1))
  return {
    between: (low, high) => low * (high / low) ** uniform(),
    whole,
    maybe: (share, value) => (uniform() < share ? value() : undefined),
    pick: values => values[whole(0, values.length - 1)] as (typeof values)[number]
  }
}

type Given<T> = { [Key in keyof T]: Exclude<T[Key], undefined> }
/** Leaves out what is undefined. */
const given = <T extends object>(fields: T) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<Given<T>>

function coil({ between, pick }: Draw) {
  const leH = between(2e-4, 4e-3)
  return pick([
    {},
    { leH },
    { leH, leParallelOhm: between(2, 30) },
    { leH, leParallelOhm: between(2, 30), le2H: between(1e-4, 2e-3), le2ParallelOhm: between(2, 30) },
    { leFactor: between(0.01, 0.1), leExponent: between(0.5, 0.9) }
  ])
}

export function randomDriver(draw: Draw): DriverRequest {
  const { between, pick } = draw
  const sdM2 = between(0.012, 0.12)
  const shared = { sdM2, reOhm: between(0.7, 7), ...coil(draw) }
  const smallSignal = {
    fsHz: between(18, 60),
    qms: between(2, 12),
    qes: between(0.25, 1.1),
    vasM3: between(0.01, 0.2),
    vasAir: 'request' as const
  }
  const mechanical = {
    mmsKg: between(0.04, 0.5),
    cmsMPerN: between(5e-5, 5e-4),
    rmsKgPerS: between(1, 12),
    blTm: between(6, 30)
  }
  return { ...shared, ...pick([smallSignal, mechanical]) }
}

function port({ between, whole, maybe }: Draw): PortRequest {
  return {
    count: whole(1, 3),
    areaM2: between(0.002, 0.02),
    lengthM: between(0.05, 0.5),
    ...given({
      endFactor: maybe(0.5, () => between(0.8, 1.9)),
      lossQ: maybe(0.5, () => between(15, 120))
    })
  }
}

function radiators({ between, whole, maybe }: Draw): PassiveRadiatorRequest {
  return {
    count: whole(1, 2),
    areaM2: between(0.02, 0.08),
    massKg: between(0.1, 1.2),
    complianceMPerN: between(1e-4, 8e-4),
    ...given({ qm: maybe(0.7, () => between(3, 20)) })
  }
}

function volume({ between, maybe }: Draw) {
  return {
    netVolumeM3: between(0.012, 0.15),
    ...given({
      leakQ: maybe(0.6, () => between(5, 50)),
      absorptionQ: maybe(0.5, () => between(5, 120))
    })
  }
}

const vented = (draw: Draw): ChamberRequest => ({ ...volume(draw), port: port(draw) })
const radiating = (draw: Draw): ChamberRequest => ({ ...volume(draw), passiveRadiators: radiators(draw) })
const open = (draw: Draw): ChamberRequest => draw.pick([vented, vented, radiating])(draw)

const presetEnclosures: Readonly<Record<PresetKind, (draw: Draw) => EnclosureRequest>> = {
  'infinite-baffle': () => ({ kind: 'infinite-baffle' }),
  closed: draw => ({ kind: 'closed', rear: volume(draw) }),
  vented: draw => ({ kind: 'vented', rear: vented(draw) }),
  'passive-radiator': draw => ({ kind: 'passive-radiator', rear: radiating(draw) }),
  'band-pass-4': draw => ({ kind: 'band-pass-4', rear: volume(draw), front: open(draw) }),
  'band-pass-6-parallel': draw => ({ kind: 'band-pass-6-parallel', rear: open(draw), front: open(draw) }),
  'band-pass-6-series': draw => ({ kind: 'band-pass-6-series', rear: open(draw), front: open(draw) })
}

/** A chain of chambers with everything that may lie between two places. */
function customEnclosure(draw: Draw): CustomEnclosureRequest {
  const { whole, pick, maybe, between } = draw
  const names = Array.from({ length: whole(1, 5) }, (_, index) => `room ${index + 1}`.replace(' ', ''))
  const places = [...names, 'outside']
  const chambers = names.map(name => {
    const air = volume(draw)
    const lossHz = between(20, 80)
    return { name, ...air, ...given({ lossHz: (air.leakQ ?? air.absorptionQ) ? lossHz : undefined }) }
  })
  const links = names.map((from, index) => ({ from, to: places[index + 1] as string }))
  const ports = links
    .filter(() => maybe(0.8, () => true))
    .map((link, index) => ({ name: `port${index}`, ...link, ...port(draw), lossHz: between(20, 80) }))
  const extra = maybe(0.5, () => ({ name: 'unit', from: pick(names), to: 'outside', ...radiators(draw) }))
  const cross = maybe(0.4, () => ({
    from: names[0] as string,
    to: places[places.length - 1] as string,
    resistancePaSPerM3: between(1e4, 1e6)
  }))
  const driverGroups = Array.from({ length: whole(1, 3) }, (_, index) => {
    const rear = pick(names)
    const front = pick([...places, 'behind'].filter(place => place !== rear))
    return {
      name: `group${index}`,
      front,
      rear,
      ...pick([{}, { count: 2, inSeries: pick([1, 2]) }, { inverted: true }])
    }
  })
  return {
    kind: 'custom',
    chambers,
    driverGroups,
    ...given({
      ports: ports.length > 0 ? ports : undefined,
      passiveRadiators: extra && [extra],
      leaks: cross && [cross],
      connection: maybe(0.8, () => pick(['parallel', 'series'] as const))
    })
  }
}

function manyDrivers({ pick }: Draw): DriversRequest {
  const [count, inSeries] = pick([
    [1, 1],
    [1, 1],
    [2, 1],
    [2, 2],
    [4, 2],
    [3, 1]
  ] as const)
  return { count, inSeries }
}

function pairs({ between, pick }: Draw): DriversRequest {
  const [count, inSeries] = pick([
    [2, 1],
    [4, 1],
    [4, 2]
  ] as const)
  return {
    count,
    inSeries,
    isobaric: { couplingVolumeM3: between(0.002, 0.02), connection: pick(['parallel', 'series']) }
  }
}

const presetNames = Object.keys(presetEnclosures) as PresetKind[]

export function randomSystem(kind: SystemKind, draw: Draw): SystemRequest {
  const { between, maybe, pick } = draw
  const enclosure =
    kind === 'custom' ? customEnclosure(draw) : presetEnclosures[kind === 'isobaric' ? pick(presetNames) : kind](draw)
  const drivers = kind === 'custom' ? undefined : kind === 'isobaric' ? pairs(draw) : manyDrivers(draw)
  return {
    driver: randomDriver(draw),
    ...(drivers === undefined ? {} : { drivers }),
    enclosure,
    source: { voltageV: between(1, 60), ...given({ seriesOhm: maybe(0.5, () => between(0.01, 0.5)) }) },
    air: { densityKgPerM3: between(1, 1.3), soundSpeedMPerS: between(330, 355) }
  }
}
