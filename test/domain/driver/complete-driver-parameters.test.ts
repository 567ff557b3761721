import { describe, expect, it } from 'vitest'
import type { DriverSheet } from '../../../src/contract/drivers/driver-parameters.ts'
import { completeDriverParameters } from '../../../src/domain/driver/complete-driver-parameters.ts'
import {
  type SmallSignalQuantity,
  type SmallSignalSet,
  smallSignalQuantities
} from '../../../src/domain/driver/sheet/small-signal-quantities.ts'
import { expectPrinted } from '../../support/printed.ts'

/** Air of the worked figures. */
const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }
const electrical = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, vasAir: 'request' as const, sdM2: 0.0483, reOhm: 3.4 }
const complete = (driver: DriverSheet, rest = {}) => completeDriverParameters({ driver, air, ...rest })
const refusal = (driver: DriverSheet, rest = {}) => {
  try {
    complete(driver, rest)
  } catch (error) {
    return error as { code: string; message: string; faults: readonly { field: string; detail: string }[] }
  }
  throw new Error('was not refused')
}
const full: SmallSignalSet = complete(electrical).result.driver

describe('completing a driver', () => {
  it('gives the mechanical set of a worked example (Small 1972 relations from memory, recomputed in 30 digits)', () => {
    expectPrinted(full.mmsKg, '0.155202')
    expectPrinted(full.cmsMPerN, '0.000181343')
    expectPrinted(full.rmsKgPerS, '5.85099')
    expectPrinted(full.blTm, '14.8673')
    expectPrinted(full.qts, '0.412844')
  })

  it('gives its efficiency and levels (second form ρBl²Sd²/(2πcReMms²); derived)', () => {
    const { figures } = complete(electrical).result
    expectPrinted(figures.efficiencyPercent / 100, '0.00351577')
    const { blTm, sdM2, reOhm, mmsKg } = full
    const secondForm = (1.2041 * blTm ** 2 * sdM2 ** 2) / (2 * Math.PI * 343.2 * reOhm * mmsKg ** 2)
    expect(figures.efficiencyPercent / 100 / secondForm).toBeCloseTo(1, 12)
    expect(Math.abs(figures.level1WDb - 87.6199)).toBeLessThan(0.01)
    expect(Math.abs(figures.level2V83Db - 91.336)).toBeLessThan(0.01)
    expectPrinted(figures.impedancePeakOhm, '41.1778')
    expectPrinted(figures.ebpHz, '66.6667')
  })

  it('comes back to the full set from every six quantities that determine it', () => {
    let tried = 0
    for (let mask = 0; mask < 2 ** 11; mask++) {
      const names = smallSignalQuantities.filter((_, bit) => mask & (1 << bit))
      if (names.length !== 6) continue
      const sheet: DriverSheet = { ...Object.fromEntries(names.map(name => [name, full[name]])), vasAir: 'request' }
      let driver: SmallSignalSet
      try {
        driver = complete(sheet).result.driver
      } catch {
        continue
      }
      if (complete(sheet).assumed.length > 0) continue
      tried++
      for (const name of smallSignalQuantities) expect(driver[name] / full[name]).toBeCloseTo(1, 9)
    }
    expect(tried).toBeGreaterThan(100)
  })

  it('marks each value given, derived or assumed', () => {
    const { origins } = complete(electrical).result
    expect(origins.fsHz).toEqual({ origin: 'given' })
    expect(origins.blTm).toEqual({ origin: 'derived', rule: 'Bl = sqrt(2*pi*fs*Mms*Re/Qes)' })
    const { result, assumed } = complete({ fsHz: 30, qts: 0.4, vasM3: 0.06, sdM2: 0.0483, ratedImpedanceOhm: 4 })
    expect(result.origins.qms.origin).toBe('assumed')
    expect(result.origins.reOhm.origin).toBe('assumed')
    expect(assumed.map(({ field, value }) => [field, value])).toEqual([
      ['driver.reOhm', 3.4],
      ['driver.qms', 5]
    ])
    expect(result.driver.qes).toBeCloseTo(1 / (1 / 0.4 - 1 / 5), 12)
  })

  it('takes Sd from a nominal diameter only where nothing else gives it (12 in is about 490 cm², common practice)', () => {
    const { sdM2: _, ...rest } = electrical
    const { result } = complete({ ...rest, nominalDiameterM: 0.3048 })
    expect(result.origins.sdM2.origin).toBe('assumed')
    expect(Math.abs(result.driver.sdM2 - 0.049)).toBeLessThan(0.08 * 0.049)
    expect(complete({ ...electrical, nominalDiameterM: 0.3048 }).result.driver.sdM2).toBe(0.0483)
  })

  /** Half of the 12.244 g of the same cone in a baffle (Beranek & Mellow from memory): no wall keeps the sides apart. */
  it('adds the air load of a free cone to a bare moving mass: 6.122 g at a = 124 mm', () => {
    const sdM2 = Math.PI * 0.124 ** 2
    const sheet = { fsHz: 30, qms: 5, qes: 0.45, reOhm: 3.4, sdM2, mmdKg: 0.14, vasAir: 'request' as const }
    expectPrinted(complete(sheet).result.driver.mmsKg, '0.146122')
  })
})

describe('a driver sheet that is short of something', () => {
  it('is told every single quantity that would complete it', () => {
    const { vasM3: _, ...rest } = electrical
    const { code, message } = refusal(rest)
    expect(code).toBe('missing-input')
    for (const symbol of ['Vas', 'Cms', 'Mms', 'Rms', 'Bl']) expect(message).toContain(symbol)
    expect(message).not.toContain('fs is')
  })

  it('is told one thing at a time, each with its field', () => {
    const { code, message, faults } = refusal({ fsHz: 30, qms: 5, qes: 0.45 })
    expect(code).toBe('missing-input')
    expect(message).toContain('usually gives fs, Qms, Qes (or Qts), Vas, Sd and Re; this one gives fs, Qms and Qes.')
    expect(faults.map(({ field }) => field)).toEqual(['driver', 'driver.vasM3', 'driver.sdM2', 'driver.reOhm'])
    for (const { detail } of faults) expect(detail).toMatch(/^[A-Z].*\.$/)
    expect(message.length).toBeLessThan(400)
  })

  it('is refused where no positive value fits', () => {
    const { code, message } = refusal({ fsHz: 30, qms: 0.4, qts: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4 })
    expect(code).toBe('conflicting-input')
    expect(message).toContain('Qes')
    expect(refusal({ ...electrical, mmsKg: 0.15, mmdKg: 0.14 }).code).toBe('conflicting-input')
  })
})

describe('a driver sheet that contradicts itself', () => {
  const sheet = { ...full, leH: 0.002, vasAir: 'request' as const }
  const odd = (changed: DriverSheet) => complete({ ...sheet, ...changed })
  const levels = (changed: DriverSheet) =>
    odd(changed)
      .cautions.filter(({ code }) => code === 'driver-figures-disagree')
      .map(({ level }) => level)

  it('passes without remark when it does not', () => {
    const { result, cautions } = complete(sheet)
    expect(result.checks.map(({ verdict }) => verdict)).toEqual(['agrees', 'agrees', 'agrees', 'agrees', 'agrees'])
    expect(result.slips).toEqual([])
    expect(cautions).toEqual([])
  })

  it('is given a note, care or stop by how far it is off', () => {
    expect(levels({ cmsMPerN: full.cmsMPerN * 1.02 })).toEqual([])
    expect(new Set(levels({ cmsMPerN: full.cmsMPerN * 1.07 }))).toEqual(new Set(['note']))
    expect(levels({ qes: full.qes * 1.15, qts: full.qts })).toContain('care')
    expect(levels({ qes: full.qes * 1.4 })).toContain('stop')
  })

  /** Exact unit factors: 1 ft³ = 28.316846592 L, 1 in² = 6.4516 cm². */
  const planted: readonly [string, SmallSignalQuantity, number][] = [
    ['vas-in-cubic-feet', 'vasM3', 1 / 28.316846592],
    ['vas-in-cubic-inches', 'vasM3', 1e3 / 16.387064],
    ['sd-in-square-millimetres', 'sdM2', 100],
    ['sd-in-square-inches', 'sdM2', 1 / 6.4516],
    ['mms-in-kilograms', 'mmsKg', 1e-3],
    ['cms-in-micrometres', 'cmsMPerN', 1e3],
    ['re-of-one-coil-others-in-series', 'reOhm', 0.5],
    ['re-of-one-coil-others-in-parallel', 'reOhm', 2],
    ['sd-from-diameter-as-radius', 'sdM2', 4],
    ['rms-in-grams', 'rmsKgPerS', 1e3],
    ['qes-of-one-coil', 'qes', 2]
  ]
  for (const [id, name, factor] of planted) {
    it(`names ${id}, keeps the figure and says the right one`, () => {
      const { result, cautions } = odd({ [name]: full[name] * factor })
      const found = result.slips.find(slip => slip.id === id)
      expect((found?.mended as SmallSignalSet | undefined)?.[name]).toBeCloseTo(full[name], 9)
      expect(result.driver[name]).toBe(full[name] * factor)
      expect(cautions.map(({ code }) => code)).toContain('driver-unit-slip')
    })
  }

  it('does not blame what the relations clear', () => {
    const { result } = odd({ vasM3: full.vasM3 / 28.316846592 })
    expect(result.slips.map(({ id }) => id)).toEqual(['vas-in-cubic-feet'])
  })

  it('names a slip of a bare set by the driver it would make', () => {
    const { result } = complete({ ...electrical, vasM3: 0.06 / 28.316846592, leH: 0.002 })
    expect(result.checks).toEqual([])
    expect(result.slips.map(({ id }) => id)).toContain('vas-in-cubic-feet')
  })

  it('names a mass without the air load of a free cone, 8/3·ρ·a³, where the digits printed can tell', () => {
    const fine = { fsHz: 29.87, qms: 5.13, qes: 0.4512, vasM3: 0.06013, sdM2: 0.04832, reOhm: 3.42 }
    const { vasAir: _, ...set } = complete({ ...fine, vasAir: 'request' }).result.driver
    const load = (8 / 3) * 1.2041 * (fine.sdM2 / Math.PI) ** 1.5
    const slips = (mmsKg: number) => complete({ ...set, mmsKg, leH: 0.002, vasAir: 'request' }).result.slips
    expect(slips(set.mmsKg - load).map(({ id }) => id)).toEqual(['mass-without-air-load'])
    expect(slips(set.mmsKg)).toEqual([])
    // fs printed as 30 Hz leaves 3.3 % of mass open by itself.
    expect(odd({ mmsKg: full.mmsKg - load }).result.slips).toEqual([])
  })

  it('finds the one figure that the others do not bear out, and says what it should be', () => {
    const found = (changed: DriverSheet) => odd(changed).result.slips.map(({ id, mended }) => [id, mended])
    const near = (id: string, name: SmallSignalQuantity) => [[id, { [name]: expect.closeTo(full[name], 6) }]]
    expect(found({ fsHz: full.fsHz * 1.36 })).toEqual(near('odd-figure', 'fsHz'))
    expect(found({ fsHz: full.fsHz * 10 })).toEqual(near('decimal-place', 'fsHz'))
    expect(found({ qes: full.qes * 10 })).toEqual(near('decimal-place', 'qes'))
    expect(found({ mmsKg: full.mmsKg / 100 })).toEqual(near('decimal-place', 'mmsKg'))
    expect(found({ cmsMPerN: full.cmsMPerN * 1.5 })).toEqual(near('odd-figure', 'cmsMPerN'))
  })

  it('names both where two figures would explain it alike: Re and Bl meet in one relation only', () => {
    const { slips } = odd({ blTm: full.blTm * 1.12 }).result
    expect(slips.map(({ mended }) => Object.keys(mended))).toEqual([['reOhm'], ['blTm']])
    expect(slips[1]?.mended.blTm).toBeCloseTo(full.blTm, 6)
  })

  it('sees two figures that changed places', () => {
    const { slips } = odd({ qms: full.qes, qes: full.qms }).result
    expect(slips).toMatchObject([{ id: 'figures-swapped', mended: { qms: full.qms, qes: full.qes } }])
  })

  it('names nothing where one spare relation leaves every member of it suspect', () => {
    const { qts, rmsKgPerS: _, blTm: __, cmsMPerN: ___, mmsKg: ____, ...few } = full
    const { result } = complete({ ...few, qts: qts * 1.5 })
    expect(result.checks.map(({ verdict }) => verdict)).toEqual(['stop'])
    expect(result.slips).toEqual([])
  })

  it('does not doubt Xmax by a cone area that is itself a slip', () => {
    for (const factor of [100, 1e-2, 1e-4, 1 / 6.4516]) {
      const { slips } = odd({ sdM2: full.sdM2 * factor, xmaxM: 0.018 }).result
      expect(
        slips.map(({ mended }) => Object.keys(mended)),
        `Sd × ${factor}`
      ).toEqual([['sdM2']])
    }
  })

  it('sees an area reckoned from the nominal diameter: π/4·(305 mm)² = 730.6 cm²', () => {
    const ids = (sdM2: number) =>
      complete({ ...electrical, sdM2, nominalDiameterM: 0.305 }).result.slips.map(({ id }) => id)
    expect(ids(0.073)).toContain('sd-from-nominal-diameter')
    expect(ids(0.049)).toEqual([])
  })

  it('asks about excursion and inductance that nothing else ties down', () => {
    const ids = (changed: DriverSheet) => odd(changed).result.slips.map(({ id }) => id)
    expect(ids({ xmaxM: 0.014 })).toEqual([])
    expect(ids({ xmaxM: 0.036 })).toEqual(['xmax-peak-to-peak'])
    expect(ids({ xmaxM: 0.0005 })).toEqual(['xmax-in-inches'])
    expect(ids({ leH: 2 })).toEqual(['inductance-in-microhenry'])
    expect(ids({ leH: 2e-6 })).toEqual(['inductance-in-henry'])
  })

  it('asks about a rated impedance and a sensitivity that do not fit', () => {
    const codes = (changed: DriverSheet) => odd(changed).cautions.map(({ code }) => code)
    expect(codes({ ratedImpedanceOhm: 4, level1WDb: 88, level2V83Db: 91 })).toEqual([])
    expect(codes({ ratedImpedanceOhm: 2 })).toEqual(['rated-impedance-odd'])
    expect(codes({ ratedImpedanceOhm: 8 })).toEqual(['rated-impedance-odd'])
    expect(codes({ level1WDb: 92 })).toEqual(['sensitivity-disagrees'])
  })
})

describe('the coils of a driver', () => {
  /** Relations of turns in a shared field (derived): 2 Ω and 9 T·m a coil, Mms 150 g, Cms 0.18 mm/N. */
  const oneCoil = { mmsKg: 0.15, cmsMPerN: 0.00018, rmsKgPerS: 5, sdM2: 0.0483, reOhm: 2, blTm: 9, leH: 0.001 }
  const wired = (wanted: 'series' | 'parallel') =>
    complete(oneCoil, { coils: { count: 2, statedFor: 'one-coil', wanted } }).result.driver

  it('share every Q in series and in parallel', () => {
    expectPrinted(complete(oneCoil).result.driver.qes, '0.712778')
    expectPrinted(wired('series').qes, '0.356389')
    expectPrinted(wired('parallel').qes, '0.356389')
    const { qts, qms, qes } = wired('series')
    expect(1 / qts).toBeCloseTo(1 / qms + 1 / qes, 12)
  })

  it('divide Re and Le by four and Bl by two from series to parallel', () => {
    const [series, parallel] = [wired('series'), wired('parallel')]
    expect([series.reOhm, series.blTm, series.leH]).toEqual([4, 18, 0.004])
    expect([parallel.reOhm, parallel.blTm, parallel.leH]).toEqual([1, 9, 0.001])
  })

  it('may have their resistance stated for each and the rest for the pair', () => {
    const stated = { ...wired('series'), reOhm: 2 }
    const coils = { count: 2, statedFor: 'series', resistanceStatedFor: 'one-coil', wanted: 'parallel' }
    const { result } = complete(stated, { coils })
    expect(result.driver.reOhm).toBe(1)
    expect(result.checks.every(({ verdict }) => verdict === 'agrees')).toBe(true)
    expect(result.origins.reOhm.origin).toBe('derived')
  })

  it('keep efficiency and level for equal power', () => {
    const series = completeDriverParameters({ driver: wired('series') }).result.figures
    const parallel = completeDriverParameters({ driver: wired('parallel') }).result.figures
    expect(parallel.level1WDb).toBeCloseTo(series.level1WDb, 10)
    expect(parallel.level2V83Db - series.level2V83Db).toBeCloseTo(10 * Math.log10(4), 10)
  })

  it('refuse a connection the driver cannot have', () => {
    expect(refusal(oneCoil, { coils: { count: 2, wanted: 'series-parallel' } }).code).toBe('conflicting-input')
  })
})
