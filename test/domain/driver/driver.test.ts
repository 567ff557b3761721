import { describe, expect, it } from 'vitest'
import type { DriverRequest } from '../../../src/contract/drivers/driver.ts'
import { coilImpedance } from '../../../src/domain/driver/coil-impedance.ts'
import { driverOf } from '../../../src/domain/driver/driver.ts'
import { complexColumn } from '../../../src/numeric/linear/complex-column.ts'

const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2, stiffnessPa: 1.2041 * 343.2 ** 2, stated: true }
const sheet = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, vasAir: 'request' as const, sdM2: 0.0483, reOhm: 3.4 }

const code = (request: DriverRequest) => {
  try {
    driverOf(request, air)
    return 'accepted'
  } catch (error) {
    return (error as { code?: string }).code
  }
}

describe('driver', () => {
  it('turns the small-signal set into the mechanical one (Small 1972 from memory, recomputed apart)', () => {
    const driver = driverOf(sheet, air)
    expect(driver.mmsKg).toBeCloseTo(0.155202, 6)
    expect(driver.cmsMPerN * 1e3).toBeCloseTo(0.181343, 6)
    expect(driver.rmsKgPerS).toBeCloseTo(5.85099, 5)
    expect(driver.blTm).toBeCloseTo(14.8673, 4)
    expect(driver.qts).toBeCloseTo(0.412844, 6)
  })

  it('comes back from the mechanical set, and from any pair of the three Q', () => {
    const { mmsKg, cmsMPerN, rmsKgPerS, blTm, qts } = driverOf(sheet, air)
    const back = driverOf({ sdM2: sheet.sdM2, reOhm: sheet.reOhm, mmsKg, cmsMPerN, rmsKgPerS, blTm }, air)
    for (const name of ['fsHz', 'qms', 'qes', 'vasM3'] as const) expect(back[name] / sheet[name]).toBeCloseTo(1, 12)
    const { qms, qes, ...rest } = sheet
    expect(driverOf({ ...rest, qms, qts }, air).qes).toBeCloseTo(qes, 12)
    expect(driverOf({ ...rest, qes, qts }, air).qms).toBeCloseTo(qms, 10)
  })

  it('refuses what does not determine the driver, or contradicts itself', () => {
    const { vasM3: _, ...loose } = sheet
    const { qms: __, ...undamped } = sheet
    expect(code(loose)).toBe('missing-input')
    expect(code(undamped)).toBe('missing-input')
    expect(code({ ...undamped, qts: 0.45 })).toBe('conflicting-input')
    expect(code({ ...sheet, leParallelOhm: 9 })).toBe('missing-input')
    expect(code({ ...sheet, leFactor: 0.05 })).toBe('missing-input')
    expect(code({ ...sheet, leH: 0.001, leFactor: 0.05, leExponent: 0.7 })).toBe('conflicting-input')
  })

  it('of a lossy coil is K·(jω)^n above Re (Leach 2002, abstract read): 1.2273 + j1.6892 Ω at 80 Hz', () => {
    const at = (coil: Partial<DriverRequest>) => {
      const column = complexColumn(1)
      coilImpedance(column, Float64Array.of(2 * Math.PI * 80), 1, driverOf({ ...sheet, ...coil }, air).coil, 1)
      return [(column.re[0] as number) - sheet.reOhm, column.im[0] as number]
    }
    const [r, x] = at({ leFactor: 0.05, leExponent: 0.6 })
    expect(r).toBeCloseTo(1.2273, 4)
    expect(x).toBeCloseTo(1.6892, 4)
    const half = at({ leFactor: 0.05, leExponent: 0.5 })
    expect(half[0]).toBeCloseTo(half[1] as number, 12)
    expect(at({ leFactor: 0.0015, leExponent: 1 })[1]).toBeCloseTo(0.75398, 5)
    // Far above its corner a shunted inductance is the resistance, far below it the inductance.
    expect(at({ leH: 10, leParallelOhm: 7 })[0]).toBeCloseTo(7, 3)
    expect(at({ leH: 0.0015, leParallelOhm: 1e9 })[1]).toBeCloseTo(0.75398, 5)
  })
})
