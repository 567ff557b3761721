/**
 * Rounded sheets of invented drivers. What rounding can do is bounded: half a printed unit each, followed through
 * Vas = ρc²·Sd²·Cms, fs = 1/(2π·√(Mms·Cms)), Qes = 2π·fs·Mms·Re/Bl², Qms = 2π·fs·Mms/Rms, 1/Qts = 1/Qms + 1/Qes.
 */
import { describe, expect, it } from 'vitest'
import type { DriverSheet } from '../../../src/contract/drivers/driver-parameters.ts'
import { completeDriverParameters } from '../../../src/domain/driver/complete-driver-parameters.ts'
import { relativeRounding } from '../../../src/domain/driver/sheet/printed-rounding.ts'
import { type PrintedName, printedSheets, sheetOf } from '../../support/printed-sheets.ts'

const sheets = printedSheets(41, 60)
const judged = (driver: DriverSheet) => completeDriverParameters({ driver }).result
const isDoubted = (driver: DriverSheet) => judged(driver).checks.some(({ verdict }) => verdict !== 'agrees')
const four = (value: number) => Number(value.toPrecision(4))

describe('the rounding of a printed figure', () => {
  it('is half a unit of its last digit, lost noughts given back as far as sheets print them', () => {
    expect(relativeRounding('qes', 0.38)).toBeCloseTo(0.005 / 0.38, 12)
    expect(relativeRounding('qts', 0.4)).toBeCloseTo(0.005 / 0.4, 12)
    expect(relativeRounding('vasM3', 0.06)).toBeCloseTo(0.5 / 60, 12)
    expect(relativeRounding('vasM3', 0.001836)).toBeCloseTo(0.0005 / 1.836, 12)
    expect(relativeRounding('mmsKg', 0.1552)).toBeCloseTo(0.05 / 155.2, 12)
  })
})

describe('a sheet that differs from its driver by rounding alone', () => {
  const kinds: readonly (readonly [string, readonly PrintedName[]])[] = [
    ['in full', []],
    ['with Qts and Bl', ['qms', 'qes']],
    ['with Qts and Qes', ['qms']],
    ['without Cms and Rms', ['cmsMmPerN', 'rmsKgPerS']]
  ]
  for (const [kind, without] of kinds) {
    it(`${kind} is believed`, () => {
      const doubted = sheets.filter(sheet => isDoubted(sheetOf(sheet, without)))
      expect(doubted.length).toBeLessThanOrEqual(0.03 * sheets.length)
      expect(sheets.flatMap(sheet => judged(sheetOf(sheet, without)).slips)).toEqual([])
    })
  }
})

describe('a rounded sheet with one slip', () => {
  const slips: readonly (readonly [string, PrintedName, number])[] = [
    ['Vas in cubic inches', 'vasL', 61.0237],
    ['Sd in mm²', 'sdCm2', 100],
    ['Mms in kilograms', 'mmsG', 1e-3],
    ['fs a decimal place too high', 'fsHz', 10],
    ['fs a third too high', 'fsHz', 1.35],
    ['Bl a tenth too high', 'blTm', 1.1],
    ['Qes a fifth too high', 'qes', 1.2]
  ]
  for (const [what, name, factor] of slips) {
    it(`is doubted, and the right figure named: ${what}`, () => {
      for (const sheet of sheets.slice(0, 15)) {
        const right = sheetOf({ ...sheet }) as Record<string, number>
        const [field = ''] = Object.keys(sheetOf({ [name]: 1 } as never))
        const found = judged(sheetOf({ ...sheet, [name]: four(sheet[name] * factor) }))
        expect(found.checks.some(({ verdict }) => verdict === 'care' || verdict === 'stop')).toBe(true)
        const mended = found.slips.map(slip => (slip.mended as Record<string, number>)[field]).find(value => value)
        expect(Math.abs(Math.log((mended ?? 0) / (right[field] ?? 1)))).toBeLessThan(0.06)
      }
    })
  }
})
