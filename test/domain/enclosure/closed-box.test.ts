import { describe, expect, it } from 'vitest'
import {
  closedBox,
  closedBoxVolumeM3,
  closedHalfPowerRatio,
  closedPeakDb
} from '../../../src/domain/enclosure/alignment/closed-box.ts'
import { levelDb } from '../../../src/domain/enclosure/alignment/rational-response.ts'
import { passBandOf } from '../../../src/domain/enclosure/model/pass-band.ts'
import { closedResponse, groupDelayS } from '../../support/closed-forms.ts'
import { expectPrinted } from '../../support/printed.ts'

/** Small 1972/73, from memory, recomputed and substituted back into the response. */
const shapes: readonly [number, string, string][] = [
  [0.5, '1.55377', '0'],
  [0.57735, '1.27202', '0'],
  [Math.SQRT1_2, '1.00000', '0'],
  [0.8, '0.89716', '0.21295'],
  [1, '0.786151', '1.2494'],
  [1.1, '0.756747', '1.8330'],
  [1.2, '0.735815', '2.4118'],
  [1.5, '0.699345', '4.0334']
]

describe('closed box', () => {
  for (const [qtc, ratio, peak] of shapes) {
    it(`reaches half power at ${ratio} fc and peaks ${peak} dB for Qtc ${qtc}`, () => {
      expect(Math.abs(closedHalfPowerRatio(qtc) - Number(ratio))).toBeLessThan(2e-5)
      expect(Math.abs(closedPeakDb(qtc) - Number(peak))).toBeLessThan(1e-4)
      const response = closedResponse({ alpha: 1, fcHz: 50, qtc })
      const band = passBandOf(f => levelDb(response, f), 5, 5000)
      expect((band.f3Hz ?? 0) / 50).toBeCloseTo(closedHalfPowerRatio(qtc), 9)
      expect(band.peakDb).toBeCloseTo(closedPeakDb(qtc), 6)
    })
  }

  it('raises resonance and damping alike (worked example, Small 1972 from memory, recomputed)', () => {
    const { alpha, fcHz, qtc } = closedBox({ fsHz: 30, qts: 0.412844, vasM3: 0.06 }, 0.03)
    expect(alpha).toBe(2)
    expectPrinted(fcHz, '51.9615')
    expectPrinted(qtc, '0.715067')
    expectPrinted(closedBoxVolumeM3({ qts: 0.412844, vasM3: 0.06 }, Math.SQRT1_2), '0.0310305')
  })

  it('returns to the volume it came from', () => {
    for (const qts of [0.2, 0.41, 0.9]) {
      for (const volume of [0.004, 0.03, 0.3]) {
        const driver = { fsHz: 33, qts, vasM3: 0.07 }
        expect(closedBoxVolumeM3(driver, closedBox(driver, volume).qtc) / volume).toBeCloseTo(1, 12)
      }
    }
  })

  it('has the group delay of a second-order high-pass: ωcτ(fc) = 2Q, ωcτ(0) = 1/Q (derived)', () => {
    for (const qtc of [0.5, Math.SQRT1_2, 1.1]) {
      const response = closedResponse({ alpha: 1, fcHz: 45, qtc })
      const omega = 2 * Math.PI * 45
      expect(omega * groupDelayS(response, 45)).toBeCloseTo(2 * qtc, 12)
      expect(omega * groupDelayS(response, 1e-6)).toBeCloseTo(1 / qtc, 9)
    }
  })

  it('bounds efficiency by volume and corner (Small 1972, from memory: 2.0e-6, recomputed 2.019e-6 near Qtc 1.13)', () => {
    // η0 = kη f3³ Vb with all compliance in the box and Qtc = Qes·fc/fs: kη = 4π²/c³ · α/(1+α) /(Qtc (f3/fc)³), α → ∞.
    const k = (qtc: number) => (4 * Math.PI ** 2) / 345 ** 3 / (qtc * closedHalfPowerRatio(qtc) ** 3)
    const best = Math.max(...Array.from({ length: 200 }, (_, index) => k(0.6 + index * 0.005)))
    expect(Math.abs(best / 2e-6 - 1)).toBeLessThan(0.02)
  })

  it('refuses to lower the Q of a driver, and a volume that is none', () => {
    const driver = { fsHz: 30, qts: 0.8, vasM3: 0.06 }
    expect(() => closedBoxVolumeM3(driver, 0.7)).toThrowError(expect.objectContaining({ code: 'out-of-range' }))
    expect(() => closedBoxVolumeM3(driver, 0.8)).toThrowError(expect.objectContaining({ code: 'out-of-range' }))
    expect(() => closedBox(driver, 0)).toThrowError(expect.objectContaining({ code: 'not-positive' }))
  })
})
