import { describe, expect, it } from 'vitest'
import type { PortSizingRequest } from '../../../src/contract/ports/port-sizing.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { sizePort } from '../../../src/domain/port/sizing/size-port.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const driver = {
  fsHz: 29,
  qms: 5.8,
  qes: 0.44,
  vasM3: 0.058,
  sdM2: 0.049,
  reOhm: 3.4,
  leH: 0.0016,
  xmaxM: 0.014,
  powerW: 600
}
const base: PortSizingRequest = {
  netVolumeM3: 0.055,
  tuningHz: 33,
  driver,
  source: { powerW: 400, loadOhm: 4 },
  leakQ: 7,
  port: { kind: 'round' },
  space: { straightM: 0.42 }
}
const size = (request: Partial<PortSizingRequest> = {}) => sizePort({ ...base, ...request })
/** The air speed that the response of the finished box gives, by its own route through the network. */
function heard(request: PortSizingRequest, frequenciesHz: readonly number[]): readonly number[] {
  const { recommended } = sizePort(request).result
  const { count, areaM2, lengthM, endFactor } = recommended
  return (
    computeResponse({
      driver,
      enclosure: {
        kind: 'vented',
        rear: { netVolumeM3: request.netVolumeM3, leakQ: 7, port: { count, areaM2, lengthM, endFactor } }
      },
      source: request.source ?? {},
      frequenciesHz
    }).result.curves.rearPortAirSpeedMPerS ?? []
  )
}

describe('sizing a port', () => {
  it('has the length of the Helmholtz formula (c 343.2, 60 L, d 0.1 m, 30 Hz, ends 1.463 r: 0.360791 m by hand)', () => {
    // 0.433941 effective less 1.463 × 0.05
    const { recommended } = sizePort({
      netVolumeM3: 0.06,
      tuningHz: 30,
      air: { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 },
      port: { kind: 'round', count: 1, diameterM: 0.1 }
    }).result
    expect(recommended.effectiveLengthM).toBeCloseTo(0.433_941, 6)
    expect(recommended.lengthM).toBeCloseTo(0.360_791, 6)
    // The exact ends, 1.4349 r, ask for more pipe.
    expect(recommended.otherEnds.lengthM - recommended.lengthM).toBeCloseTo((1.463 - 1.4349) * 0.05, 9)
  })

  it('counts the radius of one port, not of all together', () => {
    const four = sizePort({
      netVolumeM3: 0.06,
      tuningHz: 30,
      port: { kind: 'round', count: 4, diameterM: 0.05 }
    }).result
    expect(four.recommended.effectiveLengthM - four.recommended.lengthM).toBeCloseTo(1.463 * 0.025, 12)
  })

  it('goes from length to tuning and back', () => {
    const random = randomStream(33)
    for (let round = 0; round < 30; round++) {
      const tuningHz = 25 + 30 * random.uniform()
      const bends = round % 3
      const slot = round % 2 === 1
      const shape = slot
        ? ({ kind: 'slot', count: 1, widthM: 0.3, heightM: 0.02 + 0.02 * random.uniform() } as const)
        : ({ kind: 'round', count: 1 + (round % 4), diameterM: 0.06 + 0.03 * random.uniform() } as const)
      const endModel = round % 5 === 0 ? 'by-shape' : 'convention'
      const { recommended } = sizePort({ netVolumeM3: 0.05, tuningHz, port: shape, bends, endModel }).result
      if (recommended.lengthM < 0.02) continue
      const back = sizePort({
        netVolumeM3: 0.05,
        port: { ...shape, lengthM: recommended.lengthM },
        bends,
        endModel
      }).result
      expect(back.tuningHz / tuningHz).toBeCloseTo(1, 9)
      expect(back.recommended.lengthM).toBeCloseTo(recommended.lengthM, 9)
    }
  })

  it('keeps the air-speed limit where it says so, by the response of the finished box', () => {
    const request = { ...base, source: { powerW: 120, loadOhm: 4 }, mouth: 'flared' } as const
    const { result } = sizePort(request)
    expect(result.fits).toBe(true)
    const grid = Array.from({ length: 200 }, (_, index) => 26.4 + index)
    const speeds = heard(request, [33, result.demand?.peakFlowHz ?? 0, ...grid])
    const { airSpeedAtTuningMPerS = 0, airSpeedMPerS = 0 } = result.recommended
    expect((speeds[0] ?? 0) / airSpeedAtTuningMPerS).toBeCloseTo(1, 9)
    expect((speeds[1] ?? 0) / airSpeedMPerS).toBeCloseTo(1, 9)
    expect(Math.max(...speeds)).toBeLessThanOrEqual(airSpeedMPerS * (1 + 1e-9))
    expect(airSpeedMPerS).toBeLessThanOrEqual(25)
  })

  it('holds the flow back to Xmax for a second figure: all cones still within it', () => {
    const { demand } = size({ source: { powerW: 3000, loadOhm: 4 } }).result
    expect(demand?.excursionLimitedAreaM2).toBeLessThan(demand?.areaM2 ?? 0)
    const gentle = size({ source: { powerW: 20, loadOhm: 4 } }).result.demand
    expect(gentle?.excursionLimitedAreaM2).toBeCloseTo(gentle?.areaM2 ?? 0, 12)
  })

  it('gives 17 to 24 m/s in the area of the rule at displacement-limited drive (Small 1973 from memory; network, derived)', () => {
    // Voltage at which the largest excursion from the tuning up is Xmax; Qts 0.409 is close to B4 at QL 7.
    const ideal = { ...driver, leH: 0 }
    const areaM2 = 0.01
    const lengthM = (areaM2 * 343.21 ** 2) / (0.055 * (2 * Math.PI * 29) ** 2)
    const { coneExcursionM } = computeResponse({
      driver: ideal,
      enclosure: { kind: 'vented', rear: { netVolumeM3: 0.055, leakQ: 7, port: { areaM2, lengthM, endFactor: 0 } } },
      source: { voltageV: 1 },
      frequenciesHz: Array.from({ length: 300 }, (_, index) => 29 + index / 2)
    }).result.curves
    const voltageV = driver.xmaxM / Math.max(...coneExcursionM)
    const { demand } = size({ driver: ideal, source: { voltageV }, tuningHz: 29, highPassHz: 29 }).result
    const speed = (demand?.peakFlowM3PerS ?? 0) / (demand?.ruleAreaM2 ?? 1)
    expect(speed).toBeGreaterThan(17)
    expect(speed).toBeLessThan(24)
  })

  it('takes a swept volume by the rule and a flow as it is', () => {
    const { driver: _d, source: _s, leakQ: _q, ...rest } = base
    const swept = sizePort({ ...rest, sweptVolumeM3: 0.000_7 }).result.demand
    // 0.8 × 33 × 0.7 L = 184.8 cm² at 17.16 m/s, so 186.5 cm² at 17 m/s.
    expect((swept?.ruleAreaM2 ?? 0) * 1e4).toBeCloseTo(184.8, 6)
    expect((swept?.areaM2 ?? 0) * 1e4).toBeCloseTo((184.8 * 0.05 * 343.21) / 17, 6)
    expect(sizePort({ ...rest, peakFlowM3PerS: 0.17 }).result.demand?.areaM2).toBeCloseTo(0.01, 12)
  })

  it('says honestly that nothing fits and computes what would', () => {
    const { result, cautions } = size()
    expect(result.fits).toBe(false)
    expect(cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(['port-does-not-fit', 'port-air-speed']))
    const byChange = Object.fromEntries(result.waysOut.map(way => [way.change, way]))
    const larger = byChange['larger-box']
    // A port of the wanted area in the larger box is as long as the room.
    const wanted = result.candidates.find(({ withinLimit }) => withinLimit)
    const again = size({
      netVolumeM3: larger?.netVolumeM3 ?? 0,
      port: { kind: 'round', count: wanted?.count ?? 1, diameterM: wanted?.diameterM ?? 0 }
    })
    expect(again.result.recommended.lengthM).toBeCloseTo(0.42, 9)
    const higher = size({
      tuningHz: byChange['higher-tuning']?.tuningHz ?? 0,
      port: { kind: 'round', count: wanted?.count ?? 1, diameterM: wanted?.diameterM ?? 0 }
    })
    expect(higher.result.recommended.lengthM).toBeCloseTo(0.42, 9)
    const less = byChange['smaller-area']
    expect(less?.airSpeedMPerS).toBeGreaterThan(17)
  })

  it('offers passive radiators of the same acoustic mass: same tuning by the response', () => {
    const { result } = size()
    const way = result.waysOut.find(({ change }) => change === 'passive-radiator')
    const { radiatorAreaM2 = 0, radiatorMassKg = 0 } = way ?? {}
    const { scalars } = computeResponse({
      driver,
      enclosure: {
        kind: 'passive-radiator',
        rear: {
          netVolumeM3: 0.055,
          passiveRadiators: { areaM2: radiatorAreaM2, massKg: radiatorMassKg, complianceMPerN: 1 }
        }
      },
      source: { voltageV: 2.83 },
      frequenciesHz: [33]
    }).result
    expect(scalars.tuningHz).toBeCloseTo(33, 2)
  })

  it('asks a flared pipe to be longer for the same tuning, and finds that tuning again', () => {
    const pipe = { kind: 'round', count: 1, diameterM: 0.1 } as const
    const plain = size({ port: pipe }).result.recommended.lengthM
    const flared = size({ port: { ...pipe, flareRadiusM: 0.03 } }).result.recommended.lengthM
    expect(flared - plain).toBeGreaterThan(0.01)
    expect(flared - plain).toBeLessThan(0.06)
    const { tuningHz: _t, ...untuned } = base
    const back = sizePort({ ...untuned, port: { ...pipe, flareRadiusM: 0.03, lengthM: flared } }).result
    expect(back.tuningHz).toBeCloseTo(33, 9)
  })

  it('lengthens the centre line by what a mitred bend takes away, 0.441 of its width', () => {
    const slot = { kind: 'slot', count: 1, widthM: 0.4, heightM: 0.04 } as const
    const straight = size({ port: slot }).result.recommended.lengthM
    expect(size({ port: slot, bends: 1 }).result.recommended.lengthM - straight).toBeCloseTo(0.017_65, 5)
  })

  it('shows what the walls of a slot do to its tuning', () => {
    const slot = { kind: 'slot', widthM: 0.4, heightM: 0.04, chamberHeightM: 0.35 } as const
    const { recommended } = size({ port: slot }).result
    // By shape: inner end 0.0455 m, outer 0.045 m (derived; ν = 0.04/0.35), against 1.463 r = 0.1044 m.
    const ends = recommended.effectiveLengthM - recommended.otherEnds.lengthM
    expect(Math.abs(ends - 0.0905)).toBeLessThan(0.0006)
    expect(size({ port: { ...slot, walls: 'own' } }).result.recommended.otherEnds.lengthM).not.toBe(
      recommended.otherEnds.lengthM
    )
  })

  it('warns of a pipe that sings in the range the box plays', () => {
    const long = size({ netVolumeM3: 0.02, port: { kind: 'round', count: 1, diameterM: 0.11 } })
    expect(long.result.recommended.pipeResonanceHz).toBeLessThan(320)
    expect(long.cautions.map(({ code }) => code)).toContain('port-pipe-resonance')
    expect(long.cautions.map(({ code }) => code)).toContain('port-large-for-box')
  })

  it('refuses what tells too little or too much', () => {
    const code = (request: PortSizingRequest) => {
      try {
        sizePort(request)
      } catch (error) {
        return (error as { code: string }).code
      }
      return 'answered'
    }
    const { tuningHz: _t, ...untuned } = base
    expect(code(untuned)).toBe('missing-input')
    expect(code({ netVolumeM3: 0.05, tuningHz: 30 })).toBe('missing-input')
    expect(code({ ...base, sweptVolumeM3: 0.001 })).toBe('conflicting-input')
    expect(code({ ...base, source: { voltageV: 20, powerW: 100 } })).toBe('conflicting-input')
    expect(code({ ...base, tuningHz: 33, port: { kind: 'round', count: 1, diameterM: 0.1, lengthM: 0.2 } })).toBe(
      'conflicting-input'
    )
    expect(code({ ...base, highPassHz: 300, tuningHz: 20 })).toBe('out-of-range')
    const { powerW: _p, ...unrated } = driver
    const { source: _s, ...undriven } = base
    expect(code({ ...undriven, driver: unrated })).toBe('missing-input')
    expect(code({ ...base, drivers: { count: 3, inSeries: 2 } })).toBe('conflicting-input')
  })
})
