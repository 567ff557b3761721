import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { sizeEnclosure } from '../../../src/domain/enclosure/sizing/size-enclosure.ts'

const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4, leH: 0.0016 }
const searched = (
  kind: 'band-pass-6-parallel' | 'band-pass-6-series',
  lowHz: number,
  highHz: number,
  spaceM3: number
) => sizeEnclosure({ driver, kinds: [kind], wanted: { lowHz, highHz }, space: { netVolumeM3: spaceM3 } })

for (const kind of ['band-pass-6-parallel', 'band-pass-6-series'] as const) {
  describe(`search for a ${kind}`, () => {
    for (const [lowHz, highHz, spaceM3] of [
      [32, 90, 0.07],
      [25, 60, 0.12]
    ] as const) {
      it(`spans ${lowHz} to ${highHz} Hz in ${spaceM3 * 1e3} L, by the response of the finished box`, () => {
        const [found] = searched(kind, lowHz, highHz, spaceM3).result.candidates
        if (found === undefined) throw new Error('nothing found')
        const { netVolumeM3, frontVolumeM3 = 0, tuningHz = 0, frontTuningHz = 0 } = found
        expect(netVolumeM3 + frontVolumeM3).toBeLessThanOrEqual(spaceM3)
        const chamber = (volume: number, tuning: number) => {
          const areaM2 = 0.012
          const lengthM = (areaM2 * 343.21 ** 2) / (volume * (2 * Math.PI * tuning) ** 2)
          return { netVolumeM3: volume, leakQ: 7, port: { areaM2, lengthM, endFactor: 0 } }
        }
        const { scalars } = computeResponse({
          driver,
          enclosure: { kind, rear: chamber(netVolumeM3, tuningHz), front: chamber(frontVolumeM3, frontTuningHz) },
          source: { voltageV: 2.83 },
          frequenciesHz: [40]
        }).result
        expect(scalars.f3Hz ?? 0).toBeLessThan(lowHz * 1.1)
        expect(scalars.f3UpperHz ?? 0).toBeGreaterThan(highHz / 1.1)
        expect((scalars.f3Hz ?? 0) / (found.response.f3Hz ?? 1)).toBeCloseTo(1, 6)
        expect(scalars.upwardCrossings).toBe(1)
        expect(found.suits).toBe(true)
      })
    }

    it('says so where the space is far too small', () => {
      const [found] = searched(kind, 25, 60, 0.012).result.candidates
      expect(found?.suits).toBe(false)
    })
  })
}

describe('search for a sixth-order band-pass', () => {
  it('refuses a band without width', () => {
    expect(() => searched('band-pass-6-series', 50, 52, 0.1)).toThrowError(
      expect.objectContaining({ code: 'conflicting-input' })
    )
  })
})
