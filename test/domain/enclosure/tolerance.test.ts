import { describe, expect, it } from 'vitest'
import type { Spread } from '../../../src/contract/enclosures/tolerance.ts'
import { standardAir } from '../../../src/domain/air/air.ts'
import { driverOf } from '../../../src/domain/driver/driver.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { computeTolerance } from '../../../src/domain/enclosure/tolerance/compute-tolerance.ts'
import { spreadDefaults } from '../../../src/domain/enclosure/tolerance/defaults.ts'
import { variedRequest } from '../../../src/domain/enclosure/tolerance/tolerance-parameters.ts'
import type { ToleranceRequest } from '../../../src/domain/enclosure/tolerance/tolerance-request.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const none: Required<Spread> = Object.fromEntries(Object.keys(spreadDefaults).map(name => [name, 0])) as never
const vented: ToleranceRequest = {
  driver: { fsHz: 31, qms: 5.2, qes: 0.47, vasM3: 0.055, sdM2: 0.048, reOhm: 3.3, leH: 1.4e-3, xmaxM: 0.012 },
  enclosure: { kind: 'vented', rear: { netVolumeM3: 0.06, leakQ: 7, port: { areaM2: 0.009, lengthM: 0.28 } } },
  source: { voltageV: 12, seriesOhm: 0.05 },
  frequenciesHz: [16, 22, 30, 40, 60, 100],
  samples: 200,
  seed: 5
}
const closed: ToleranceRequest = { ...vented, enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } } }
const bandPass: ToleranceRequest = {
  ...vented,
  enclosure: {
    kind: 'band-pass-4',
    rear: { netVolumeM3: 0.03 },
    front: { netVolumeM3: 0.03, port: { areaM2: 0.012, lengthM: 0.2 } }
  }
}
const run = (request: ToleranceRequest) => computeTolerance(request).result

describe('a tolerance run', () => {
  it('repeats itself for a seed, and differs for another', () => {
    expect(run(vented)).toEqual(run(vented))
    expect(run({ ...vented, seed: 6 }).bands).not.toEqual(run(vented).bands)
  })

  it('gives the nominal response at every percentile when nothing varies', () => {
    for (const request of [vented, closed, bandPass]) {
      const { bands, figures, sensitivities } = run({ ...request, spread: none, samples: 20 })
      const { frequenciesHz, driver, enclosure, source } = request
      const { curves, scalars } = computeResponse({
        driver,
        enclosure,
        source,
        ...(frequenciesHz === undefined ? {} : { frequenciesHz })
      }).result
      for (const band of bands) {
        for (const k of curves.frequencyHz.keys()) {
          expect(band.levelDb[k]).toBeCloseTo(curves.levelDb[k] as number, 9)
          expect(band.coneExcursionM[k]).toBeCloseTo(curves.coneExcursionM[k] as number, 12)
          expect(band.impedanceOhm[k]).toBeCloseTo(curves.impedanceOhm[k] as number, 9)
        }
      }
      expect(figures.f3?.nominalHz).toBeCloseTo(scalars.f3Hz as number, 7)
      expect(figures.f3?.standardDeviationHz).toBeLessThan(1e-9)
      if (scalars.f3UpperHz !== undefined) expect(figures.f3Upper?.nominalHz).toBeCloseTo(scalars.f3UpperHz, 6)
      expect(sensitivities.length).toBeGreaterThan(20)
    }
  })

  // Tuning f = c/(2π)·√(S/((L + k√(S/π))·V)): differentiated by hand
  it('knows how a tuning depends on volume, length, area and temperature (elasticities; closed form)', () => {
    const { sensitivities, figures } = run(vented)
    const of = (parameter: string) =>
      sensitivities.find(row => row.figure === 'tuning' && row.parameter === parameter)?.elasticity ?? 0
    const radius = Math.sqrt(0.009 / Math.PI)
    const effective = 0.28 + 1.463 * radius
    expect(of('rear-volume')).toBeCloseTo(-0.5, 6)
    expect(of('air-temperature')).toBeCloseTo(0.5, 6)
    expect(of('rear-port-length')).toBeCloseTo((-0.5 * 0.28) / effective, 5)
    expect(of('rear-port-area')).toBeCloseTo(0.5 - (0.25 * 1.463 * radius) / effective, 5)
    expect(of('moving-mass')).toBe(0)
    expect(figures.tuning?.nominalHz).toBeCloseTo((343.21 / (2 * Math.PI)) * Math.sqrt(0.009 / (effective * 0.06)), 9)
  })

  // fs = 1/(2π√(MC)): −½ and −½; the temperature does not reach the driver
  it('knows how a resonance depends on mass and compliance (closed form)', () => {
    const rows = run(closed).sensitivities.filter(({ figure }) => figure === 'driver-resonance')
    expect(rows.map(({ parameter, elasticity }) => [parameter, Number(elasticity.toFixed(6))])).toEqual([
      ['suspension-compliance', -0.5],
      ['moving-mass', -0.5]
    ])
    expect(rows.reduce((sum, { sharePercent }) => sum + sharePercent, 0)).toBeCloseTo(100, 9)
    // 8 % and 2 %: √(16 + 1) = 4.123 %, of which 16/17
    expect(rows[0]?.sharePercent).toBeCloseTo((100 * 16) / 17, 6)
  })

  it('scatters as far as the sensitivities say when the spreads are small', () => {
    const spread = Object.fromEntries(Object.entries(spreadDefaults).map(([name, { value }]) => [name, value / 10]))
    const request = { ...vented, spread, samples: 3000, frequenciesHz: [16, 30, 60] }
    const { figures, sensitivities } = run(request)
    const linear = (figure: string) =>
      Math.hypot(...sensitivities.filter(row => row.figure === figure).map(row => row.effectPercent / 100))
    for (const [name, spreadHz] of [
      ['f3', figures.f3],
      ['tuning', figures.tuning],
      ['driver-resonance', figures.driverResonance]
    ] as const) {
      const sampled = (spreadHz?.standardDeviationHz as number) / (spreadHz?.nominalHz as number)
      expect(sampled / linear(name), name).toBeGreaterThan(0.94)
      expect(sampled / linear(name), name).toBeLessThan(1.06)
    }
    const excursion = figures.peakExcursion
    const sampled = (excursion?.standardDeviationM as number) / (excursion?.nominalM as number)
    expect(sampled / linear('peak-excursion')).toBeGreaterThan(0.94)
    expect(sampled / linear('peak-excursion')).toBeLessThan(1.06)
  })

  it('orders its percentiles, and puts the nominal near the middle', () => {
    const { bands, figures } = run({ ...vented, samples: 600, percentiles: [5, 50, 95] })
    const [low, middle, high] = bands
    for (const k of low?.levelDb.keys() ?? []) {
      expect(low?.levelDb[k]).toBeLessThan(middle?.levelDb[k] as number)
      expect(high?.levelDb[k]).toBeGreaterThan(middle?.levelDb[k] as number)
    }
    const { nominalHz = 0, standardDeviationHz = 0, percentilesHz = [] } = figures.tuning ?? {}
    expect(Math.abs((percentilesHz[1] as number) - nominalHz)).toBeLessThan(0.2 * standardDeviationHz)
    // normal: 5 % and 95 % lie 1.645 standard deviations out
    expect(((percentilesHz[2] as number) - (percentilesHz[0] as number)) / standardDeviationHz).toBeCloseTo(3.29, 0)
  })

  it('counts how many keep to Xmax', () => {
    expect(run({ ...vented, source: { voltageV: 0.1 } }).withinXmaxPercent).toBe(100)
    const { withinXmaxPercent = 0, figures } = run({ ...vented, samples: 400 })
    const voltageV = (12 * 0.012) / (figures.peakExcursion?.percentilesM[1] as number)
    const half = computeTolerance({ ...vented, samples: 400, source: { voltageV, seriesOhm: 0.05 } })
    expect(half.result.withinXmaxPercent).toBeCloseTo(50, -1)
    expect(half.cautions.map(({ code }) => code)).toEqual(['excursion-by-chance'])
    expect(withinXmaxPercent).toBeGreaterThanOrEqual(0)
  })

  it('moves fs and Vas together: correlation −32/√(17·68) = −0.941 for 8, 2 and 1 % (derived)', () => {
    const nominal = driverOf(vented.driver, standardAir)
    const { normal } = randomStream(11)
    const draws = Array.from({ length: 4000 }, () => {
      const factor = new Map([
        ['suspension-compliance', Math.exp(0.08 * normal())],
        ['moving-mass', Math.exp(0.02 * normal())],
        ['cone-area', Math.exp(0.01 * normal())]
      ])
      const varied = driverOf(variedRequest(vented, nominal, name => factor.get(name) ?? 1).driver, standardAir)
      return [Math.log(varied.fsHz), Math.log(varied.vasM3)] as const
    })
    const mean = (index: 0 | 1) => draws.reduce((sum, row) => sum + row[index], 0) / draws.length
    const [m0, m1] = [mean(0), mean(1)]
    const product = (i: 0 | 1, j: 0 | 1) =>
      draws.reduce((sum, row) => sum + (row[i] - (i === 0 ? m0 : m1)) * (row[j] - (j === 0 ? m0 : m1)), 0)
    expect(product(0, 1) / Math.sqrt(product(0, 0) * product(1, 1))).toBeCloseTo(-0.941, 2)
    expect(Math.sqrt(product(0, 0) / draws.length)).toBeCloseTo(Math.sqrt(17) / 100, 2)
  })

  it('keeps the amplifier as it is: a stated power is a voltage that does not follow the coil', () => {
    const powered = { ...closed, source: { powerW: 50 }, spread: { ...none, rePercent: 5 } }
    const voltageV = Math.sqrt(50 * 3.3)
    expect(run(powered).bands).toEqual(run({ ...powered, source: { voltageV } }).bands)
  })

  it('holds the dimensions of a custom enclosure, and says so', () => {
    const enclosure = {
      kind: 'custom',
      chambers: [{ name: 'box', netVolumeM3: 0.03 }],
      driverGroups: [{ name: 'one', front: 'outside', rear: 'box' }]
    } as const
    const { cautions, result } = computeTolerance({ ...vented, enclosure, samples: 50 })
    expect(cautions.map(({ code }) => code)).toContain('dimensions-held')
    expect(result.sensitivities.some(({ parameter }) => parameter === 'rear-volume')).toBe(false)
  })

  for (const [name, change, code, field] of [
    [
      'a run of too many points',
      { samples: 4000, frequenciesHz: { fromHz: 10, toHz: 100, points: 101 } },
      'out-of-range',
      'samples'
    ],
    [
      'a temperature of air that has none',
      { air: { densityKgPerM3: 1.18, soundSpeedMPerS: 345 }, spread: { temperatureK: 5 } },
      'conflicting-input',
      'spread.temperatureK'
    ]
  ] as const) {
    it(`refuses ${name}`, () => {
      const refusal = (() => {
        try {
          return run({ ...vented, ...change })
        } catch (error) {
          return error
        }
      })()
      expect(refusal).toMatchObject({ code, faults: [{ field }] })
    })
  }
})
