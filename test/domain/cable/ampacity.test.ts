import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ambientFactor, ampacity, tableAmpacity } from '../../../src/domain/circuit/cable/ampacity.ts'
import { ampacity33Cfr183425 } from '../../../src/domain/circuit/cable/ampacity-33-cfr-183-425.ts'
import { cableSize } from '../../../src/domain/circuit/cable/cable-size.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { ambientFactorsAsPrinted, nfpa70Table400As, table5AsPrinted } from '../../published/33-cfr-183-425-table-5.ts'
import { cordFactors, flexibleCords } from '../../published/bs-7671-table-4f3a.ts'
import { expectPrinted } from '../../support/printed.ts'

const cool = { insulationC: 105, ambientC: 30, bundledConductors: 1 }
const size = (designation: string) => cableSize(designation, undefined, 'd')

describe('ampacity', () => {
  it('holds every row of 33 CFR 183.425 Table 5 as printed', () => {
    const printed = table5AsPrinted
      .trim()
      .split('\n')
      .map(line => line.split(' '))
    expect(printed).toHaveLength(15)
    for (const [index, [gauge = '', ...amperes]] of printed.entries()) {
      const row = ampacity33Cfr183425.rows[index]
      expect(size(`${row?.[0]} AWG`)).toEqual(size(`${gauge} AWG`))
      expect(row?.[1]).toEqual(amperes.map(Number))
    }
  })

  it('rises with the class, and with the size', () => {
    const { rows } = ampacity33Cfr183425
    for (const [index, [, amperes]] of rows.entries()) {
      for (let column = 1; column < amperes.length; column++) {
        expect(amperes[column]).toBeGreaterThanOrEqual(amperes[column - 1] ?? 0)
        if (index > 0) expect(amperes[column]).toBeGreaterThan(rows[index - 1]?.[1][column] ?? 0)
      }
    }
  })

  it('agrees with NFPA 70 Table 400.5 for portable single cable from 6 AWG up (60 and 75 °C)', () => {
    for (const [awg, at60, at75, at90] of nfpa70Table400As) {
      const of = (column: number) => tableAmpacity(size(`${awg} AWG`).areaM2, column)
      if (at60 !== undefined) expect(of(60)).toBe(Number(at60))
      expect(of(75)).toBe(Number(at75))
      expect(of(90)).toBeLessThanOrEqual(Number(at90))
    }
  })

  for (const [ambient, ...factors] of ambientFactorsAsPrinted) {
    it(`derates for ${ambient} °C as NFPA 70 prints it`, () => {
      for (const [index, printed] of factors.entries()) {
        // the table is given for 5 K bands by their upper edge and rounds; the square root stays within 0.01
        if (printed !== '')
          expect(
            Math.abs(ambientFactor([60, 75, 90, 105][index] ?? 0, Number(ambient), 'f') - Number(printed))
          ).toBeLessThan(0.01)
      }
    })
  }

  it('meets the engine-space note as reprinted, 4 AWG, 105 °C, 50 °C → 136 A, within its rounded factor', () => {
    // the note prints 0.85, the square root gives 0.856: one ampere
    expect(Math.abs((ampacity(size('4 AWG'), 'copper', { ...cool, ambientC: 50 }).ampacityA ?? 0) - 136)).toBeLessThan(
      1.05
    )
  })

  it('bundles as a seller of UL 1426 cable prints it: 4 AWG 112, 96, 80 A', () => {
    for (const [conductors, printed] of [
      [3, '112'],
      [4, '96'],
      [6, '96'],
      [7, '80'],
      [24, '80'],
      [25, '64']
    ] as const) {
      expectPrinted(
        ampacity(size('4 AWG'), 'copper', { ...cool, bundledConductors: conductors }).ampacityA ?? 0,
        printed
      )
    }
    expect(ampacity(size('4 AWG'), 'copper', { ...cool, bundledConductors: 2 }).ampacityA).toBe(160)
  })

  it('gives 10 % clad aluminium 126.9 A where copper has 160 (equal heat)', () => {
    expectPrinted(ampacity(size('4 AWG'), 'copper-clad-10', cool).ampacityA ?? 0, '126.9')
  })

  it('interpolates metric and SAE sizes between the rows, rounded down', () => {
    expect(ampacity(size('25 mm2'), 'copper', cool).ampacityA).toBe(174)
    expect(ampacity(size('SAE 4'), 'copper', cool).ampacityA).toBeLessThan(160)
    expect(ampacity(size('120 mm2'), 'copper', cool).ampacityA).toBeUndefined()
    expect(ampacity(size('18 AWG'), 'copper', cool).ampacityA).toBe(20)
  })

  it('takes what is thinner than 18 AWG as a cord: 0.5 mm² 3 A, 0.75 mm² 6 A, less by 0.91 to 0.41 in the heat (BS 7671 Table 4F3A)', () => {
    const warm = (ambientC: number) => ({ ...cool, insulationC: 60, ambientC })
    for (const [mm2, printedA] of flexibleCords) {
      const inC = (ambientC: number) => ampacity(size(`${mm2} mm2`), 'copper', warm(ambientC)).ampacityA ?? 0
      expect(inC(30)).toBe(Number(printedA))
      for (const [ambientC, factor] of cordFactors)
        expect(Math.abs(inC(Number(ambientC)) / inC(30) - Number(factor))).toBeLessThan(0.006)
    }
    expect(ampacity(size('0.75 mm2'), 'copper', cool).ampacityA).toBe(6)
    expect(ampacity(size('20 AWG'), 'copper', cool).ampacityA).toBe(3)
    expect(ampacity(size('0.35 mm2'), 'copper', cool).ampacityA).toBeUndefined()
  })

  it('never gives a larger section less, nor a hotter place more', () => {
    const column = fc.constantFrom(60, 75, 80, 90, 105, 125, 200)
    const section = fc.double({ min: 0.3e-6, max: 107e-6, noNaN: true })
    fc.assert(
      fc.property(section, section, column, (a, b, c) => {
        expect(tableAmpacity(Math.max(a, b), c) ?? 0).toBeGreaterThanOrEqual(tableAmpacity(Math.min(a, b), c) ?? 0)
      }),
      { seed: 1 }
    )
    fc.assert(
      fc.property(
        column,
        fc.double({ min: -20, max: 59, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (c, t, step) => {
          expect(ambientFactor(c, t + step, 'f')).toBeLessThan(ambientFactor(c, t, 'f'))
        }
      ),
      { seed: 1 }
    )
  })

  it('uses the next lower class between columns, and refuses what no column covers', () => {
    expect(ampacity(size('4 AWG'), 'copper', { ...cool, insulationC: 104 }).ampacityA).toBe(135)
    const refused = (insulationC: number, ambientC: number) => {
      try {
        ampacity(size('4 AWG'), 'copper', { ...cool, insulationC, ambientC })
      } catch (error) {
        return error instanceof DesignError ? error.code : error
      }
      return 'accepted'
    }
    expect(refused(59, 30)).toBe('out-of-range')
    expect(refused(60, 60)).toBe('insulation-below-ambient')
    expect(refused(85, 82)).toBe('insulation-below-ambient')
    expect(refused(60, 59.9)).toBe('accepted')
  })
})

describe('surroundings colder than the table', () => {
  it('raise nothing above its 30 °C value: 4 AWG, 105 °C carries 160 A at −40, 0 and 30 °C', () => {
    for (const ambientC of [-40, 0, 30]) {
      expect(ampacity(cableSize('4 AWG', undefined, 'd'), 'copper', { ...cool, ambientC }).ampacityA).toBe(160)
    }
    expect(ampacity(cableSize('4 AWG', undefined, 'd'), 'copper', { ...cool, ambientC: 31 }).ampacityA).toBeLessThan(
      160
    )
  })
})
