import { describe, expect, it } from 'vitest'
import { searchLayout } from '../../../src/domain/sheet/search-layout.ts'
import { densestSheet, exclusivePieces, sheetBound } from '../../../src/domain/sheet/sheet-bound.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

/** OR-Library instance gcut1 (J. E. Beasley, J. Oper. Res. Soc. 36 (1985) 297-306): sizes in a 250 × 250 sheet, value = area. */
const gcut1 = [
  [167, 184],
  [114, 118],
  [167, 152],
  [83, 140],
  [70, 86],
  [143, 166],
  [120, 160],
  [66, 148],
  [87, 141],
  [69, 165]
] as const

/** OR-Library instance cgcut1 (Christofides & Whitlock, Oper. Res. 25 (1977) 30-44): length, width, value in a 15 × 10 sheet. */
const cgcut1 = [
  [8, 4, 66],
  [3, 7, 35],
  [8, 2, 24],
  [3, 4, 17],
  [3, 3, 11],
  [3, 2, 8],
  [2, 1, 2]
] as const

const kindsOf = (turned: boolean, copies = 1) =>
  gcut1.map(([length, width]) => ({ length, width, copies, straight: true, turned }))

describe('densest sheet', () => {
  it('finds the published optimum 56460 of gcut1 (table by G. Cintra)', () => {
    const pieces = gcut1.map(([length, width]) => ({ length, width, value: length * width }))
    expect(densestSheet(pieces, 250, 250)).toBe(56_460)
  })

  it('finds the published optimum 58136 of gcut1 with turning (table by G. Cintra, rows r)', () => {
    const pieces = gcut1.flatMap(([length, width]) => [
      { length, width, value: length * width },
      { length: width, width: length, value: length * width }
    ])
    expect(densestSheet(pieces, 250, 250)).toBe(58_136)
  })

  it('finds 249 for cgcut1 with unlimited copies (Hifi & Zissimopoulos, Eur. J. Oper. Res. 91 (1996) 553-564)', () => {
    const pieces = cgcut1.map(([length, width, value]) => ({ length, width, value }))
    expect(densestSheet(pieces, 15, 10)).toBe(249)
  })

  it('agrees with counting where one size tiles a sheet', () => {
    expect(densestSheet([{ length: 7, width: 3, value: 1 }], 29, 10)).toBe(4 * 3)
  })

  it('gives up rather than guess when there are too many places to cut', () => {
    const many = Array.from({ length: 30 }, (_, index) => ({ length: 101 + index, width: 97 + index, value: 1 }))
    expect(densestSheet(many, 5000, 5000)).toBeUndefined()
  })
})

describe('lower bound', () => {
  it('counts pieces that cannot share a sheet', () => {
    const copies = { copies: 3, straight: true, turned: true }
    expect(exclusivePieces([{ length: 60, width: 55, ...copies }], 100, 100, 1)).toBe(3)
    expect(exclusivePieces([{ length: 60, width: 49, ...copies }], 100, 100, 1)).toBe(0)
    expect(exclusivePieces([{ length: 60, width: 49.6, ...copies }], 100, 100, 1)).toBe(3)
  })

  it('never exceeds what a plan achieves, and every plan holds it (gcut1 one and four times over)', () => {
    for (const copies of [1, 4]) {
      for (const turned of [false, true]) {
        const sheets = [{ length: 250, width: 250, cost: 1, stock: 1000 }]
        const kinds = kindsOf(turned, copies)
        const bound = sheetBound(kinds, sheets, 0)
        const layout = searchLayout(
          { kinds, sheets, kerf: 0, random: randomStream(1), work: 3e6, evenly: true },
          bound.leastCost
        )
        expect(layout.sheets.length).toBeGreaterThanOrEqual(bound.leastSheets)
        expect(layout.sheets.length).toBeLessThanOrEqual(5 * copies)
        expect(layout.missing.every(count => count === 0)).toBe(true)
      }
    }
  })

  it('is raised by the kerf', () => {
    const kinds = [{ length: 100, width: 100, copies: 25, straight: true, turned: true }]
    const sheets = [{ length: 500, width: 500, cost: 1, stock: 10 }]
    expect(sheetBound(kinds, sheets, 0).leastSheets).toBe(1)
    expect(sheetBound(kinds, sheets, 1).leastSheets).toBe(2)
  })
})

describe('the least cost', () => {
  // three pieces of 50 × 100; a sheet of 100 × 100 for 10, of which there is one, and sheets of 200 × 100 for 30
  const pieces = [{ length: 50, width: 100, copies: 3, straight: true, turned: false }]
  const sheets = (stock: number) =>
    [
      { length: 200, width: 100, cost: 30, stock: 9 },
      { length: 100, width: 100, cost: 10, stock }
    ] as never

  it('takes the cheapest square metre first, as far as it is in stock: 10 for two pieces, a quarter of 30 for the third', () => {
    expect(sheetBound(pieces, sheets(1), 0).leastCost).toBeCloseTo(17.5, 9)
    expect(sheetBound(pieces, sheets(2), 0).leastCost).toBeCloseTo(15, 9)
    expect(sheetBound(pieces, sheets(0), 0).leastCost).toBeCloseTo(22.5, 9)
  })

  it('is never below the dearest of what has to stand alone: three pieces of 60 × 55 on 100 × 100 are three sheets', () => {
    const alone = [{ length: 60, width: 55, copies: 3, straight: true, turned: false }]
    const one = [{ length: 100, width: 100, cost: 10, stock: 9 }] as never
    expect(sheetBound(alone, one, 1)).toMatchObject({ leastSheets: 3, leastCost: 30, proof: 'large-pieces' })
    const [areaSheets] = [(3 * 61 * 56) / 101 ** 2]
    expect(sheetBound(alone, one, 1).areaSheets).toBeCloseTo(areaSheets, 9)
  })
})
