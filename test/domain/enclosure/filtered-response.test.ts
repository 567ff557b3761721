import { describe, expect, it } from 'vitest'
import type { Filter } from '../../../src/contract/enclosures/filter.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { ResponseRequest } from '../../../src/domain/enclosure/model/request.ts'
import { filterSections } from '../../../src/domain/filter/filter-sections.ts'
import { chainTransfer } from '../../../src/domain/filter/filter-transfer.ts'

const driver = { fsHz: 31, qms: 5.2, qes: 0.47, vasM3: 0.055, sdM2: 0.048, reOhm: 3.3, leH: 1.4e-3, xmaxM: 0.012 }
const vented: ResponseRequest = {
  driver,
  enclosure: { kind: 'vented', rear: { netVolumeM3: 0.06, leakQ: 7, port: { areaM2: 0.009, lengthM: 0.28 } } },
  source: { voltageV: 20, seriesOhm: 0.05 },
  frequenciesHz: [12, 20, 27, 33, 45, 70, 120]
}
const filters: readonly Filter[] = [
  { kind: 'high-pass', family: 'bessel', order: 3, cornerHz: 26 },
  { kind: 'low-pass', family: 'linkwitz-riley', order: 4, cornerHz: 80 },
  { kind: 'peaking', centreHz: 50, gainDb: -5, q: 1.2 }
]
const plain = computeResponse(vented).result
const filtered = computeResponse({ ...vented, filters }).result
const transfers = (vented.frequenciesHz as readonly number[]).map(f => chainTransfer(filterSections(filters, 'f'), f))
const gains = transfers.map(({ re, im }) => Math.hypot(re, im))

describe('a response behind filters', () => {
  for (const name of [
    'coneExcursionM',
    'coneVelocityMPerS',
    'currentA',
    'rearChamberPressurePa',
    'rearPortAirSpeedMPerS'
  ] as const) {
    it(`has each ${name} times the gain of the chain`, () => {
      for (const [k, gain] of gains.entries()) {
        expect(filtered.curves[name]?.[k] as number).toBeCloseTo((plain.curves[name]?.[k] as number) * gain, 12)
      }
    })
  }

  it('has the level, group delay and power of network and chain together, and the impedance of the network', () => {
    for (const [k, gain] of gains.entries()) {
      const at = <Name extends 'levelDb' | 'groupDelayS' | 'impedanceOhm' | 'apparentPowerVa'>(name: Name) => [
        filtered.curves[name][k] as number,
        plain.curves[name][k] as number
      ]
      const [level = 0, bareLevel = 0] = at('levelDb')
      expect(level).toBeCloseTo(bareLevel + 20 * Math.log10(gain), 10)
      const [delay = 0, bareDelay = 0] = at('groupDelayS')
      expect(delay).toBeCloseTo(bareDelay + (transfers[k]?.groupDelayS as number), 13)
      const [power = 0, barePower = 0] = at('apparentPowerVa')
      expect(power).toBeCloseTo(barePower * gain ** 2, 9)
      const [ohm = 0, bareOhm = 0] = at('impedanceOhm')
      expect(ohm).toBeCloseTo(bareOhm, 11)
    }
  })

  it('shows the chain alone beside it', () => {
    for (const [k, gain] of gains.entries()) {
      expect(filtered.curves.filterGainDb?.[k]).toBeCloseTo(20 * Math.log10(gain), 12)
      expect(filtered.curves.filterGroupDelayS?.[k]).toBe(transfers[k]?.groupDelayS)
    }
    expect(plain.curves.filterGainDb).toBeUndefined()
  })

  it('has its half-power frequency where the filtered level is 3.01 dB below the plateau', () => {
    const highPass = filters.slice(0, 1)
    const { f3Hz = 0, referenceLevelDb = 0 } = computeResponse({ ...vented, filters: highPass }).result.scalars
    const there = computeResponse({ ...vented, filters: highPass, frequenciesHz: [f3Hz] }).result
    expect(there.curves.levelDb[0]).toBeCloseTo(referenceLevelDb - 10 * Math.log10(2), 8)
    expect(f3Hz).toBeGreaterThan(plain.scalars.f3Hz as number)
  })

  // Closed box of Qtc 1/√2 behind a Butterworth high-pass of the same corner: |G| = x⁴/(1 + x⁴); half power at x⁴ = 1/(√2 − 1)
  it('agrees with the closed form of a maximally flat closed box behind its equal', () => {
    const qts = 0.4
    const fsHz = 30
    const alpha = 0.5 / qts ** 2 - 1
    const { result } = computeResponse({
      driver: { fsHz, qms: 8, qts, vasM3: 0.06, sdM2: 0.05, reOhm: 4 },
      enclosure: { kind: 'closed', rear: { netVolumeM3: 0.06 / alpha } },
      source: { voltageV: 2 },
      filters: [{ kind: 'high-pass', family: 'butterworth', order: 2, cornerHz: fsHz * Math.sqrt(1 + alpha) }]
    })
    expect((result.scalars.f3Hz as number) / (fsHz * Math.sqrt(1 + alpha))).toBeCloseTo((Math.SQRT2 - 1) ** -0.25, 9)
  })

  it('leaves the seat to a curve of its own', () => {
    const { result } = computeResponse({ ...vented, cabin: { volumeM3: 3 } })
    expect(result.curves.levelDb).toEqual(plain.curves.levelDb)
    for (const [k, level] of plain.curves.levelDb.entries()) {
      expect(result.curves.seatLevelDb?.[k]).toBe(level + (result.curves.cabinGainDb?.[k] as number))
    }
    expect(result.cabin?.model).toBe('pressure-vessel')
  })
})
