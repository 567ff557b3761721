/** Slots that nobody should cut, what walls take from the flow, one policy of speeds, and the ways out of a port that does not fit. */
import { describe, expect, it } from 'vitest'
import type { PortSizingRequest } from '../../../src/contract/ports/port-sizing.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { airSpeedLevel, portSpeeds } from '../../../src/domain/port/air-speed.ts'
import { hydraulicDiameterM, lossFactor, wallFrictionQ } from '../../../src/domain/port/port-friction.ts'
import { round, slot } from '../../../src/domain/port/sizing/port-design.ts'
import { sizePort } from '../../../src/domain/port/sizing/size-port.ts'

const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2, stiffnessPa: 141_827, stated: false }
const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4, leH: 0.0016, powerW: 600 }
const flat = slot(1, 0.856, 0.015)

describe('friction of a port', () => {
  it('has the hydraulic diameter of four areas over the perimeter: 856 × 15 mm → 4·12840/1742 = 29.48 mm', () => {
    expect(hydraulicDiameterM(flat) * 1e3).toBeCloseTo(29.48, 2)
    expect(hydraulicDiameterM(round(2, 0.1))).toBeCloseTo(0.1, 12)
  })

  it('adds 0.02·L/d to the jets: 587 mm of that slot → 1.5 + 0.398, and a mitred bend costs 1.1', () => {
    expect(lossFactor(flat, 0.587, 'sharp', 0)).toBeCloseTo(1.5 + 0.398, 3)
    expect(lossFactor(flat, 0.587, 'sharp', 1) - lossFactor(flat, 0.587, 'sharp', 0)).toBeCloseTo(1.1, 12)
    expect(lossFactor(round(1, 0.1), 0.3, 'flared', 0)).toBeCloseTo(0.56, 12)
  })

  /** Second road: between wide plates the Q of the layer is the height over its thickness √(2μ/ωρ). */
  it('has a Q of the wall layer of height over thickness between wide plates, and of about 33 in that slot at 24 Hz', () => {
    const thickness = (hz: number) => Math.sqrt((2 * 1.81e-5) / (2 * Math.PI * hz * 1.2041))
    expect(wallFrictionQ(slot(1, 1000, 0.03), 1, 1, 24, air) / (0.03 / thickness(24))).toBeCloseTo(1, 3)
    expect(Math.abs(wallFrictionQ(flat, 0.587, 0.587, 24, air) - 33)).toBeLessThan(0.5)
    // A tube of 0.1 m, 0.36 m long and 0.434 m with its ends: about 160 at 32 Hz (rounded, from memory).
    expect(Math.abs(wallFrictionQ(round(1, 0.1), 0.3608, 0.4339, 32, air) - 160)).toBeLessThan(8)
  })

  it('stands in every design, so that the response can take it', () => {
    const { recommended } = sizePort({
      netVolumeM3: 0.06,
      tuningHz: 31,
      port: { kind: 'slot', count: 1, widthM: 0.4, heightM: 0.05 }
    }).result
    const shape = slot(1, 0.4, 0.05)
    expect(recommended.hydraulicDiameterM).toBeCloseTo((4 * 0.02) / 0.9, 12)
    expect(recommended.lossFactor).toBeCloseTo(1.5 + (0.02 * recommended.lengthM * 0.9) / 0.08, 9)
    expect(recommended.lossQ).toBeCloseTo(
      wallFrictionQ(shape, recommended.lengthM, recommended.effectiveLengthM, 31, { ...air, densityKgPerM3: 1.2041 }),
      6
    )
  })
})

describe('a slot', () => {
  const ask = (port: PortSizingRequest['port'], extra: Partial<PortSizingRequest> = {}) =>
    sizePort({ netVolumeM3: 0.1, tuningHz: 31, peakFlowM3PerS: 0.2, port: port ?? { kind: 'round' }, ...extra }).result

  it('of 856 × 15 mm, 57 times as wide as high, has that against it, and so has one of 35 mm', () => {
    const { recommended, fits } = ask(
      { kind: 'slot', count: 1, widthM: 0.856, heightM: 0.015 },
      { space: { straightM: 2 } }
    )
    expect(fits).toBe(false)
    expect(recommended.why.join()).toContain('57 times as wide as high')
    expect(
      ask({ kind: 'slot', count: 1, widthM: 0.3, heightM: 0.035 }, { space: { straightM: 3 } }).recommended.why.join()
    ).toContain('below 40 mm')
    expect(
      ask({ kind: 'slot', count: 1, widthM: 0.4, heightM: 0.04 }, { space: { straightM: 3 } }).recommended.why[0]
    ).not.toContain('walls brake')
  })

  it('is chosen sturdy where there is room for the length its area takes', () => {
    const { recommended, fits } = ask({ kind: 'slot', widthM: 0.5 }, { space: { straightM: 3 }, lowPassHz: 40 })
    expect(fits).toBe(true)
    expect((recommended.widthM ?? 0) / (recommended.heightM ?? 1)).toBeLessThanOrEqual(10 + 1e-9)
    expect(recommended.heightM).toBeCloseTo(0.05, 9)
  })

  it('that is too flat is offered closed in with a cheek: the same area, six times as wide as high', () => {
    const way = ask({ kind: 'slot', count: 1, widthM: 0.856, heightM: 0.015 }).waysOut.find(
      ({ change }) => change === 'narrower-slot'
    )
    // √(128.4 cm²/6) = 46.3 mm, six times that 277.6 mm.
    expect(way?.detail).toContain('278 mm × 46 mm')
    expect((way?.totalAreaM2 ?? 0) * 1e4).toBeCloseTo(128.4, 9)
  })
})

describe('the speed of the air', () => {
  it('is judged alike by port and response: 17, 25 and 34 m/s', () => {
    expect([16.9, 17.1, 25.1, 34.1].map(airSpeedLevel)).toEqual([undefined, 'note', 'care', 'stop'])
    expect(portSpeeds.highest).toBeCloseTo(0.1 * 343.2, 0)
    const tube = { kind: 'round', count: 1, diameterM: 0.1, lengthM: 0.3 } as const
    for (const voltageV of [12, 18, 26, 40]) {
      const request = {
        driver,
        netVolumeM3: 0.06,
        leakQ: 7,
        source: { voltageV },
        port: tube,
        airSpeedLimitMPerS: 60,
        highPassHz: 15
      }
      const port = sizePort(request)
      const { areaM2, lengthM, endFactor, airSpeedMPerS = 0, airSpeedHz = 0 } = port.result.recommended
      const response = computeResponse({
        driver,
        source: { voltageV },
        enclosure: { kind: 'vented', rear: { netVolumeM3: 0.06, leakQ: 7, port: { areaM2, lengthM, endFactor } } },
        frequenciesHz: [airSpeedHz]
      })
      const level = ({ cautions }: Pick<typeof port, 'cautions'>) =>
        cautions.find(({ code }) => code === 'port-air-speed')?.level
      expect(level(response)).toBe(airSpeedLevel(airSpeedMPerS))
      // The note of the response is what the limit of the port room already says.
      expect(level(port)).toBe(airSpeedMPerS > portSpeeds.flared ? airSpeedLevel(airSpeedMPerS) : undefined)
    }
  })
})

describe('ways out of a port that does not fit', () => {
  const base: PortSizingRequest = {
    netVolumeM3: 0.055,
    tuningHz: 36,
    driver,
    source: { powerW: 400, loadOhm: 4 },
    leakQ: 7,
    port: { kind: 'round' },
    space: { straightM: 0.42 }
  }
  const ways = (request: Partial<PortSizingRequest> = {}) =>
    Object.fromEntries(sizePort({ ...base, ...request }).result.waysOut.map(way => [way.change, way]))

  it('name a smaller box with a higher tuning, which takes the wanted area in the room there is', () => {
    const { netVolumeM3 = 0, tuningHz = 0 } = ways()['smaller-box-higher-tuning'] ?? {}
    expect(netVolumeM3).toBeLessThan(base.netVolumeM3)
    expect(tuningHz).toBeGreaterThan(36)
    const wanted = sizePort(base).result.candidates.find(({ withinLimit }) => withinLimit)
    const port = { kind: 'round', count: wanted?.count ?? 0, diameterM: wanted?.diameterM ?? 0 } as const
    expect(sizePort({ ...base, netVolumeM3, tuningHz, port }).result.recommended.lengthM).toBeCloseTo(0.42, 9)
  })

  it('name the power at which the area that fits is quiet enough: driven so, it is', () => {
    const { powerShare = 0, totalAreaM2 = 0 } = ways()['less-drive'] ?? {}
    expect(powerShare).toBeGreaterThan(0)
    const { demand } = sizePort({ ...base, source: { powerW: 400 * powerShare, loadOhm: 4 } }).result
    expect((demand?.peakFlowM3PerS ?? 0) / totalAreaM2).toBeCloseTo(17, 9)
  })

  it('name flares where the lesser area they need fits', () => {
    const found = ways({ source: { powerW: 130, loadOhm: 4 }, space: { straightM: 0.3 } })['flared-mouths']
    const { demand } = sizePort({ ...base, source: { powerW: 130, loadOhm: 4 } }).result
    expect((found?.totalAreaM2 ?? 0) * 25).toBeCloseTo(demand?.peakFlowM3PerS ?? 0, 9)
    expect(found?.lengthM).toBeLessThanOrEqual(0.3)
    expect(
      ways({ mouth: 'flared', source: { powerW: 300, loadOhm: 4 }, space: { straightM: 0.3 } })['flared-mouths']
    ).toBeUndefined()
  })
})
