/** The port room and the response are two roads to one air speed: the finished box must carry what the port was sized for. */
import { describe, expect, it } from 'vitest'
import type { DriversRequest } from '../../../src/contract/enclosures/enclosure.ts'
import type { Filter } from '../../../src/contract/enclosures/filter.ts'
import type { PortSizingRequest } from '../../../src/contract/ports/port-sizing.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { sizePort } from '../../../src/domain/port/sizing/size-port.ts'
import { draws } from '../../support/random-systems.ts'

const driver = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4, xmaxM: 0.012, powerW: 500 }
const tube = { kind: 'round', count: 1, diameterM: 0.12, lengthM: 0.3 } as const

/** Air speed of the box built with the port that was recommended. */
function heard(request: PortSizingRequest, frequenciesHz: readonly number[]): readonly number[] {
  const { count, areaM2, lengthM, endFactor } = sizePort(request).result.recommended
  const port = { count, areaM2, lengthM, endFactor }
  return (
    computeResponse({
      driver: request.driver ?? driver,
      ...(request.drivers === undefined ? {} : { drivers: request.drivers }),
      ...(request.filters === undefined ? {} : { filters: request.filters }),
      enclosure: { kind: 'vented', rear: { netVolumeM3: request.netVolumeM3, leakQ: request.leakQ ?? 7, port } },
      source: request.source ?? {},
      frequenciesHz
    }).result.curves.rearPortAirSpeedMPerS ?? []
  )
}

const highPass = (cornerHz: number, order = 2): Filter => ({
  kind: 'high-pass',
  family: 'butterworth',
  order,
  cornerHz
})
const lowPass: Filter = { kind: 'low-pass', family: 'linkwitz-riley', order: 4, cornerHz: 80 }
const boost = (centreHz: number): Filter => ({ kind: 'peaking', centreHz, gainDb: 6, q: 3 })

describe('sizing a port and hearing it', () => {
  it('agree for seeded drivers, groups, isobaric pairs and filters', () => {
    const draw = draws(71)
    for (let round = 0; round < 40; round++) {
      const { between, pick } = draw
      const couplingVolumeM3 = between(0.002, 0.01)
      const drivers = pick<DriversRequest>([
        { count: 1 },
        { count: 2, inSeries: 2 },
        { isobaric: { couplingVolumeM3 } },
        { count: 4, inSeries: 2, isobaric: { couplingVolumeM3, connection: 'series' } }
      ])
      const request: PortSizingRequest = {
        driver: {
          fsHz: between(20, 45),
          qms: between(3, 9),
          qes: between(0.3, 0.6),
          vasM3: between(0.03, 0.15),
          sdM2: between(0.02, 0.09),
          reOhm: between(1, 6),
          leH: between(2e-4, 2e-3)
        },
        drivers,
        netVolumeM3: between(0.02, 0.12),
        leakQ: between(5, 20),
        source: { voltageV: between(10, 50), seriesOhm: between(0.01, 0.3) },
        filters: pick<readonly Filter[]>([
          [highPass(between(18, 40))],
          [highPass(25, 4), lowPass],
          [boost(between(25, 60)), lowPass]
        ]),
        port: { ...tube, diameterM: between(0.06, 0.16), lengthM: between(0.1, 0.5) }
      }
      const { demand, recommended } = sizePort(request).result
      const at = demand?.peakFlowHz ?? 0
      const grid = Array.from({ length: 300 }, (_, k) => Math.max(15, 0.8 * recommended.tuningHz) * 1.006 ** k)
      const [there = 0, ...others] = heard(request, [at, ...grid.filter(hz => hz < 6 * recommended.tuningHz)])
      expect(there / (recommended.airSpeedMPerS ?? 1)).toBeCloseTo(1, 9)
      expect(Math.max(...others)).toBeLessThan(there * (1 + 1e-5))
    }
  })

  it('move the air of an isobaric pair as one cone of twice the mass and half the compliance does', () => {
    const source = { voltageV: 30 }
    const drivers = { isobaric: { couplingVolumeM3: 1e-6, connection: 'parallel' } } as const
    const asked = {
      driver,
      netVolumeM3: 0.04,
      leakQ: 1e6,
      source,
      highPassHz: 30,
      tuningHz: 36,
      port: { kind: 'round' }
    } as const
    const one = sizePort(asked).result.demand?.peakFlowM3PerS ?? 0
    const pair = sizePort({ ...asked, drivers }).result.demand
    // The second road: one cone of twice the mass and half the compliance, two coils of Re in parallel, that is fs, Qs and Re/2, Vas/2.
    const cone = { ...driver, vasM3: driver.vasM3 / 2, reOhm: driver.reOhm / 2 }
    const same = sizePort({ ...asked, driver: cone }).result.demand
    expect((pair?.peakFlowM3PerS ?? 0) / (same?.peakFlowM3PerS ?? 1)).toBeCloseTo(1, 4)
    expect((pair?.peakFlowM3PerS ?? 0) / one).toBeGreaterThan(1.5)
    expect(pair?.ruleAreaM2).toBeCloseTo(0.8 * 36 * driver.sdM2 * driver.xmaxM, 12)
  })

  it('weigh the flow with the gain of the high-pass, 1/√(1 + (fc/f)⁴), instead of cutting the range at its corner', () => {
    const asked: PortSizingRequest = {
      driver,
      netVolumeM3: 0.05,
      leakQ: 7,
      source: { powerW: 400, loadOhm: 4 },
      port: { ...tube, lengthM: 0.32 }
    }
    const grid = Array.from({ length: 3000 }, (_, k) => 15 + k / 20)
    const unfiltered = heard(asked, grid)
    const cornerHz = 33
    const byHand = Math.max(...unfiltered.map((speed, k) => speed / Math.sqrt(1 + (cornerHz / (grid[k] ?? 1)) ** 4)))
    const { recommended } = sizePort({ ...asked, filters: [highPass(cornerHz)] }).result
    expect((recommended.airSpeedMPerS ?? 0) / byHand).toBeCloseTo(1, 4)
    // Cut off at the corner, where the filter is half power down, the same drive looked up to √2 times as fast.
    const cut = sizePort({ ...asked, highPassHz: cornerHz }).result.recommended.airSpeedMPerS ?? 0
    expect(cut / byHand).toBeGreaterThan(1.15)
    expect(cut / byHand).toBeLessThan(Math.SQRT2 * (1 + 1e-6))
  })

  it('say from where the flow was looked at, and take the low-pass of the filters as the end of the range', () => {
    const asked = { driver, netVolumeM3: 0.05, tuningHz: 31, port: { kind: 'round' } } as const
    const field = (name: string, request: PortSizingRequest) =>
      sizePort(request).assumed.find(one => one.field === name)
    expect(field('highPassHz', asked)?.value).toBeCloseTo(0.8 * 31, 12)
    expect(field('highPassHz', { ...asked, filters: [highPass(26)] })?.value).toBe(15)
    expect(field('highPassHz', { ...asked, filters: [lowPass] })?.value).toBeCloseTo(0.8 * 31, 12)
    expect(field('lowPassHz', asked)?.value).toBe(80)
    const filters: readonly Filter[] = [
      highPass(26),
      { kind: 'low-pass', family: 'butterworth', order: 4, cornerHz: 120 }
    ]
    expect(field('lowPassHz', { ...asked, filters })).toMatchObject({ value: 120 })
    expect(field('source.seriesOhm', asked)?.value).toBe(0)
  })

  it('refuse a pair that is no pair, and filters without a drive', () => {
    const asked = { driver, netVolumeM3: 0.05, tuningHz: 31, port: { kind: 'round' } } as const
    const isobaric = { couplingVolumeM3: 0.004 }
    expect(() => sizePort({ ...asked, drivers: { count: 3, isobaric } })).toThrow('even')
    const { driver: _, ...undriven } = asked
    for (const extra of [
      { filters: [highPass(26)] },
      { drivers: { count: 2 } },
      { source: { voltageV: 20 } },
      { leakQ: 7 }
    ]) {
      expect(() => sizePort({ ...undriven, peakFlowM3PerS: 0.2, ...extra })).toThrow(/driver/)
    }
  })
})
