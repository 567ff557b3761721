/** The figures that formulas of driver, air, filter, port and network name as their checks, each worked by hand beside it. */
import { describe, expect, it } from 'vitest'
import { dryAir, standardAir } from '../../../src/domain/air/air.ts'
import { coilFactors } from '../../../src/domain/driver/coil-connection.ts'
import { driverOf } from '../../../src/domain/driver/driver.ts'
import { halfSpaceLevelDb, referenceEfficiency } from '../../../src/domain/driver/efficiency.ts'
import { freeConeAirLoadKg } from '../../../src/domain/driver/sheet/air-load.ts'
import { looseSlips } from '../../../src/domain/driver/sheet/unprinted-slips.ts'
import { besselPoles } from '../../../src/domain/filter/bessel.ts'
import { chainTransfer } from '../../../src/domain/filter/filter-transfer.ts'
import { groupTotals } from '../../../src/domain/network/driver-columns.ts'
import { hydraulicDiameterM, lossFactor } from '../../../src/domain/port/port-friction.ts'
import { slot } from '../../../src/domain/port/sizing/port-design.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('air', () => {
  it('carries sound at 331.3 m/s at 0 °C (331.29 by the form of ISO 9613-1), and is as stiff at any temperature', () => {
    const [cold, warm] = [dryAir(0, 101_325), dryAir(40, 101_325)]
    expectPrinted(cold.soundSpeedMPerS, '331.3')
    expect(Math.abs(cold.soundSpeedMPerS - 331.29)).toBeLessThan(0.05)
    expect(warm.stiffnessPa / cold.stiffnessPa).toBeCloseTo(1, 12)
    // half the pressure, half the density and stiffness, the same speed (ideal gas)
    expect(dryAir(0, 50_662.5).densityKgPerM3 / cold.densityKgPerM3).toBeCloseTo(0.5, 12)
    expect(dryAir(0, 50_662.5).soundSpeedMPerS).toBeCloseTo(cold.soundSpeedMPerS, 12)
  })
})

describe('coils', () => {
  // one coil of 2 Ω and 9 T·m on 150 g and 0.18 mm/N: Qes = ω·M·R/(Bl)², ω = 1/√(0.15·0.18e-3)
  const omega = 1 / Math.sqrt(0.15 * 0.18e-3)
  const qesOf = (count: number, connection: 'series' | 'parallel' | 'one-coil' | 'series-parallel') => {
    const { resistance, forceFactor } = coilFactors(count, connection, 'c')
    return (omega * 0.15 * 2 * resistance) / (9 * forceFactor) ** 2
  }

  it('of a double coil: Qes 0.356389 in series and in parallel, 0.712778 for one (coilFactors)', () => {
    expectPrinted(qesOf(2, 'series'), '0.356389')
    expectPrinted(qesOf(2, 'parallel'), '0.356389')
    expectPrinted(qesOf(2, 'one-coil'), '0.712778')
    expect(qesOf(4, 'series-parallel')).toBeCloseTo(qesOf(4, 'series'), 12)
  })

  it('say the same of Qes by their share of it, and of Le by turns squared', () => {
    for (const connection of ['series', 'parallel', 'one-coil'] as const)
      expect(coilFactors(2, connection, 'c').electricalQ).toBeCloseTo(qesOf(2, connection) / qesOf(2, 'one-coil'), 12)
    expect([coilFactors(2, 'series', 'c').inductance, coilFactors(2, 'parallel', 'c').inductance]).toEqual([4, 1])
    expect(coilFactors(4, 'series-parallel', 'c')).toMatchObject({ resistance: 1, inductance: 4 })
    expect(() => coilFactors(2, 'series-parallel', 'c')).toThrow(/four/)
  })
})

describe('a driver', () => {
  const request = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4 }

  it('of fs 30 Hz, Qms 5, Qes 0.45, Vas 60 L, 483 cm², 3.4 Ω moves 155.2 g by 14.87 T·m (driverOf, driverIdentities)', () => {
    const driver = driverOf(request as never, standardAir)
    expectPrinted(driver.mmsKg * 1000, '155.2')
    expectPrinted(driver.blTm, '14.87')
    // 155.202 g, 0.181343 mm/N, 5.85099 and 14.8673 by hand with ρc² = 141827 Pa
    const cms = 0.06 / (1.2041 * 343.2 ** 2 * 0.0483 ** 2)
    expectPrinted(cms * 1000, '0.181343')
    const mms = 1 / ((2 * Math.PI * 30) ** 2 * cms)
    expectPrinted(mms * 1000, '155.202')
    expectPrinted((2 * Math.PI * 30 * mms) / 5, '5.85099')
    expectPrinted(Math.sqrt((2 * Math.PI * 30 * mms * 3.4) / 0.45), '14.8673')
    expect(driver.mmsKg / mms).toBeCloseTo(1, 3)
    expect(driver.rmsKgPerS).toBeCloseTo((2 * Math.PI * 30 * mms) / 5, 3)
  })

  it('turns 0.00351577 of its power into sound: fs 30, Qes 0.45, Vas 60 L, c 343.2 (referenceEfficiency)', () => {
    expectPrinted(referenceEfficiency(30, 0.45, 0.06, 343.2), '0.00351577')
  })

  it('would reach 112.095 dB in half space by 1 W of sound: ρ 1.18, c 345 (halfSpaceLevelDb)', () => {
    expectPrinted(halfSpaceLevelDb(1, 1.18 * 345), '112.095')
    expect(halfSpaceLevelDb(10, 407) - halfSpaceLevelDb(1, 407)).toBeCloseTo(10, 12)
  })

  it('of 0.124 m radius drags 0.006122 kg of air, free on both sides (freeConeAirLoadKg; 8/3·ρ·a³)', () => {
    expectPrinted(freeConeAirLoadKg(Math.PI * 0.124 ** 2, 1.2041), '0.006122')
  })

  it('of 300 cm² with Xmax 28 mm prints it from peak to peak: 14 mm (looseSlips)', () => {
    const [slip] = looseSlips({ xmaxM: 0.028, sdM2: 0.03 } as never)
    expect(slip?.id).toBe('xmax-peak-to-peak')
    expect(slip?.mended).toMatchObject({ xmaxM: 0.014 })
    expect(looseSlips({ xmaxM: 0.014, sdM2: 0.03 } as never)).toEqual([])
  })

  it('four times, two in series: Re as one, Bl twice that of one, moved mass and area four times (groupTotals)', () => {
    const driver = driverOf(request as never, standardAir)
    const group = groupTotals({ driver, count: 4, inSeries: 2, polarity: 1 } as never)
    expect(group.coilScale).toBe(1)
    expect(group.bl).toBeCloseTo(2 * driver.blTm, 12)
    expect(group.sd).toBeCloseTo(4 * driver.sdM2, 12)
    expect(group.mass).toBeCloseTo(4 * driver.mmsKg, 12)
    expect(group.stiffness * driver.cmsMPerN).toBeCloseTo(4, 12)
    // Qes of the whole is that of one: ω·M·R/(Bl)²
    expect((group.mass * group.coilScale) / group.bl ** 2).toBeCloseTo(driver.mmsKg / driver.blTm ** 2, 12)
  })
})

describe('a filter', () => {
  it('of Bessel, order 4, has pairs of Q 0.5219 and 0.8055 (Zverev, from memory; besselPoles)', () => {
    const [first, second] = besselPoles(4)
    expectPrinted(first?.q ?? 0, '0.5219')
    expectPrinted(second?.q ?? 0, '0.8055')
  })

  it('of Butterworth, order 2, at its corner: −3.0103 dB, −90°, ω_c·τ = √2 (chainTransfer)', () => {
    const section = { cornerHz: 80, numerator: [1, 0, 0], denominator: [1, Math.SQRT2, 1] } as const
    const { re, im, groupDelayS, logSlopeS } = chainTransfer([section], 80)
    expectPrinted(20 * Math.log10(Math.hypot(re, im)), '-3.0103')
    expect(Math.atan2(im, re)).toBeCloseTo(-Math.PI / 2, 12)
    expect(2 * Math.PI * 80 * groupDelayS).toBeCloseTo(Math.SQRT2, 12)
    // |H|² = 1/(1 + x⁴): d ln|H|/d ln x = −2x⁴/(1 + x⁴) = −1
    expect(2 * Math.PI * 80 * logSlopeS).toBeCloseTo(-1, 12)
  })
})

describe('a slot of 856 × 15 mm', () => {
  it('is as wide as a tube of 29.5 mm (hydraulicDiameterM), and 587 mm of it cost 1.898 (lossFactor)', () => {
    expectPrinted(hydraulicDiameterM(slot(1, 0.856, 0.015)) * 1000, '29.5')
    expectPrinted(lossFactor(slot(1, 0.856, 0.015), 0.587, 'sharp', 0), '1.898')
  })
})
