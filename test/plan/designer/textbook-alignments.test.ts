/** Where nothing but flatness is asked, the closed forms of the designer lead to the alignments of the textbooks. */
import { describe, expect, it } from 'vitest'
import { standardAir } from '../../../src/domain/air/air.ts'
import { driverOf } from '../../../src/domain/driver/driver.ts'
import { boxCurves, solveBox } from '../../../src/plan/designer/evaluate/box-response.ts'
import { driverTables } from '../../../src/plan/designer/evaluate/driver-tables.ts'

const FS_HZ = 30
const VAS_M3 = 0.06
/** 0.4 to 6 times the resonance, then far above, where only the mass counts. */
const frequenciesHz = Float64Array.from([
  ...Array.from({ length: 260 }, (_, k) => 0.4 * FS_HZ * 15 ** (k / 259)),
  300 * FS_HZ
])

/** Without losses of suspension, coil or leak: the driver of the derivations. */
function tablesFor(qts: number) {
  const sheet = { fsHz: FS_HZ, qms: 1e6, qes: qts, vasM3: VAS_M3, sdM2: 0.05, reOhm: 4 }
  const driver = driverOf({ ...sheet, vasAir: 'request' }, standardAir)
  return driverTables({ driver, count: 1, inSeries: 1, seriesOhm: 0, air: standardAir }, frequenciesHz)
}

const curves = boxCurves(frequenciesHz.length)

/** Lowest frequency from which the level never strays from the plateau by more; none where it peaks. */
function flatFromHz(tables: ReturnType<typeof tablesFor>, alpha: number, tuning: number | undefined, withinDb: number) {
  const tuned = tuning === undefined ? {} : { tuningHz: tuning * FS_HZ }
  solveBox(tables, { netVolumeM3: VAS_M3 / alpha, ...tuned }, { duty: 1 }, curves)
  const last = frequenciesHz.length - 1
  const plateau2 = curves.level2[last] as number
  let lowest = Infinity
  for (let k = last - 1; k >= 0; k--) {
    const overDb = 10 * Math.log10((curves.level2[k] as number) / plateau2)
    if (overDb > withinDb) return Infinity
    if (overDb < -withinDb) break
    lowest = frequenciesHz[k] as number
  }
  return lowest
}

const steps = (from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, k) => from + ((to - from) * k) / (count - 1))

function flattest(qts: number, alphas: readonly number[], tunings: readonly (number | undefined)[]) {
  const tables = tablesFor(qts)
  const boxes = alphas.flatMap(alpha =>
    tunings.map(tuning => ({ alpha, tuning, fromHz: flatFromHz(tables, alpha, tuning, 0.03) }))
  )
  return boxes.reduce((best, each) => (each.fromHz < best.fromHz ? each : best))
}

describe('the flattest box with the least fall', () => {
  it('is near the fourth-order Butterworth for Qts 0.383 (Thiele 1971: Vas/V 1.414, fb/fs 1, from memory)', () => {
    const { alpha, tuning = 0 } = flattest(0.383, steps(0.8, 2.2, 71), steps(0.85, 1.2, 71))
    expect(alpha).toBeGreaterThan(Math.SQRT2 * 0.93)
    expect(alpha).toBeLessThan(Math.SQRT2 * 1.05)
    expect(Math.abs(tuning - 1)).toBeLessThan(0.02)
  })

  it('goes the way of the quasi-Butterworth for a lower Qts: smaller and tuned above fs (Thiele 1971, from memory)', () => {
    const { alpha, tuning = 0 } = flattest(0.3, steps(1.4, 4, 66), steps(0.95, 1.6, 66))
    expect(alpha).toBeGreaterThan(2.3)
    expect(tuning).toBeGreaterThan(1.15)
  })

  it('has a Qtc of 0.71 where it is closed (second-order Butterworth; Small 1972, from memory)', () => {
    const { alpha } = flattest(0.4, steps(1, 4, 301), [undefined])
    const qtc = 0.4 * Math.sqrt(1 + alpha)
    expect(qtc).toBeGreaterThan(Math.SQRT1_2 - 0.005)
    // a peak of 0.03 dB, which is let pass, belongs to 0.7387: Q²/√(Q² − 1/4) = 1.00346, worked by hand
    expect(qtc).toBeLessThan(0.7387 + 0.005)
  })
})
