/** Edges of what a cut plan takes, each from both sides, and figures that a pencil finds. */
import { describe, expect, it } from 'vitest'
import type { SheetPanel, SheetPlanRequest, SheetStock } from '../../../src/contract/boxes/box-sheets.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { nestPanels } from '../../../src/domain/sheet/nest-panels.ts'
import { quickSheetCount } from '../../../src/domain/sheet/quick-count.ts'

/** Trimmed by 10 mm all round it is 2420 × 1200 mm. */
const sheet: SheetStock = { name: 'full', lengthM: 2.44, widthM: 1.22, thicknessM: 0.018, grain: 'none' }
const panel = (lengthM: number, widthM: number, more: Partial<SheetPanel> = {}): SheetPanel => ({
  name: 'board',
  quantity: 1,
  lengthM,
  widthM,
  thicknessM: 0.018,
  ...more
})
const asked = (panels: readonly SheetPanel[], more: Partial<SheetPlanRequest> = {}): SheetPlanRequest =>
  ({ panels, sheets: [sheet], kerfM: 0.0032, trimM: 0.01, ...more }) as SheetPlanRequest
const plan = (panels: readonly SheetPanel[], more: Partial<SheetPlanRequest> = {}) => nestPanels(asked(panels, more))

function refused(panels: readonly SheetPanel[], more: Partial<SheetPlanRequest> = {}) {
  try {
    plan(panels, more)
  } catch (error) {
    if (error instanceof DesignError) return { code: error.code, ...error.faults[0], message: error.message }
  }
  throw new Error('was not refused')
}

describe('a board as large as the trimmed sheet', () => {
  it('is cut without a cut, lying either way; a hundredth of a millimetre more is none', () => {
    for (const [l, w] of [
      [2.42, 1.2],
      [1.2, 2.42]
    ] as const) {
      const { total, layouts } = plan([panel(l, w)]).result
      expect([total.sheetCount, total.cutCount, layouts[0]?.pieces[0]?.turned]).toEqual([1, 0, l < w])
      expect(layouts[0]?.usedPercent).toBeCloseTo((100 * 2.42 * 1.2) / (2.44 * 1.22), 9)
    }
    expect(refused([panel(2.42001, 1.2)])).toMatchObject({ code: 'no-solution', field: 'panels[0].lengthM' })
    expect(refused([panel(2.42, 1.20001)]).code).toBe('no-solution')
    expect(refused([panel(1.2, 2.42001)]).code).toBe('no-solution')
    expect(refused([panel(1.20001, 2.42)]).code).toBe('no-solution')
  })

  it('that no sheet gives is told the size that the largest offers, trimmed: 2420 × 1200 mm', () => {
    const small = { ...sheet, name: 'small', lengthM: 1, widthM: 1 }
    for (const sheets of [
      [sheet, small],
      [small, sheet]
    ]) {
      const { message } = refused([panel(2.5, 0.5)], { sheets })
      for (const figure of ['2500', '500', '2420', '1200']) expect(message.replaceAll(/[\s,]/g, '')).toContain(figure)
    }
  })
})

describe('grain', () => {
  // A board of 1300 × 600 mm: along the sheet it lies on 2420 × 1200, across it does not.
  const lies = (ofPanel: SheetPanel['grain'], ofSheet: SheetStock['grain'], lengthM = 1.3) => {
    const own = ofSheet === 'width' ? { lengthM: 1.22, widthM: 2.44 } : {}
    const sheets = [{ ...sheet, ...own, grain: ofSheet } as SheetStock]
    try {
      return plan([panel(lengthM, 0.6, ofPanel && { grain: ofPanel })], { sheets }).result.layouts[0]?.pieces[0]?.turned
    } catch {
      return 'not'
    }
  }
  it('runs along the board and the sheet alike, and turns a board that has it across', () => {
    expect(lies('length', 'length')).toBe(false)
    expect(lies('width', 'length')).toBe('not')
    expect(lies('width', 'length', 1.1)).toBe(true)
    expect(lies('length', 'length', 1.1)).toBe(false)
    // A sheet whose grain follows its width is laid with that along.
    expect(lies('length', 'width')).toBe(false)
    expect(lies('width', 'width')).toBe('not')
    // A sheet is told to have it along unless said otherwise; a board takes any.
    expect(lies('width', undefined)).toBe('not')
    expect(lies(undefined, 'length')).toBe(false)
    expect(lies('any', 'length')).toBe(false)
    for (const grain of ['length', 'width', 'any'] as const) expect(lies(grain, 'none')).toBe(false)
  })
})

describe('what is too much', () => {
  it('is more than 1000 boards, or a sheet as narrow as its trim', () => {
    // A thousand go on to be refused for another reason.
    expect(refused([panel(3, 1, { quantity: 1000 })]).code).toBe('no-solution')
    expect(refused([panel(3, 1, { quantity: 600 }), panel(3, 1, { quantity: 401 })])).toMatchObject({
      code: 'out-of-range',
      value: 1001,
      maximum: 1000
    })
    const narrow = (widthM: number) => refused([panel(0.5, 0.1)], { sheets: [{ ...sheet, widthM }], trimM: 0.05 })
    expect(narrow(0.1)).toMatchObject({ code: 'out-of-range', field: 'sheets[0].widthM', value: 0.1, minimum: 0.1 })
    expect(narrow(0.101).code).toBe('no-solution')
  })

  it('is more than twelve kinds of board', () => {
    const kinds = (count: number) => {
      const thicknesses = Array.from({ length: count }, (_, k) => 0.009 + k * 1e-3)
      const sheets = thicknesses.map(thicknessM => ({ ...sheet, thicknessM, quantity: 0 }))
      return refused(
        thicknesses.map(thicknessM => panel(0.5, 0.5, { thicknessM })),
        { sheets }
      )
    }
    expect(kinds(13)).toMatchObject({ code: 'out-of-range', value: 13, maximum: 12 })
    expect(kinds(12)).toMatchObject({ code: 'no-solution', field: 'sheets' })
  })

  it('is more than the stock holds: the least that would do, or one more than there are', () => {
    // Four of 1300 × 650 mm, each alone on a sheet.
    const of = (quantity: number) => refused([panel(1.3, 0.65, { quantity: 4 })], { sheets: [{ ...sheet, quantity }] })
    expect(of(1)).toMatchObject({ code: 'no-solution', value: 1, minimum: 4 })
    expect(of(3)).toMatchObject({ value: 3, minimum: 4 })
    expect(of(1).message).toContain('3 × "board"')
    expect(of(3).message).toContain('1 × "board"')
    // Nine lengths of a whole sheet each, one sheet: eight are named and that there are more.
    const names = 'abcdefghij'.split('')
    const { message } = refused(
      names.map((name, i) => panel(2.3 - i / 100, 1.1, { name })),
      { sheets: [{ ...sheet, quantity: 1 }] }
    )
    expect(message.match(/1 × "/g)).toHaveLength(8)
    const fewer = refused(
      names.slice(0, 9).map((name, i) => panel(2.3 - i / 100, 1.1, { name })),
      { sheets: [{ ...sheet, quantity: 1 }] }
    )
    expect(fewer.message.match(/1 × "/g)).toHaveLength(8)
    expect(fewer.message.length).toBeLessThan(message.length)
  })
})

describe('figures of a plan', () => {
  it('a strip is narrow below 60 mm, the first one is told, with its width to a tenth', () => {
    const narrow = (widthM: number) =>
      plan([panel(0.5, 0.3), panel(0.5, widthM), panel(0.02, 0.4)]).cautions.find(({ code }) => code === 'narrow-strip')
    expect(narrow(0.05996)).toMatchObject({ at: 'panels[1].widthM', figures: { widthMm: expect.closeTo(59.96, 9) } })
    expect(narrow(0.05123)?.message).toContain('51.2')
    expect(narrow(0.06)?.at).toBe('panels[2].widthM')
  })

  it('a price needs that of every sheet that is used', () => {
    const two = [panel(2.4, 1.1), panel(2.3, 1.1)]
    const sheets = (price?: number) =>
      [
        { ...sheet, price: 45, quantity: 1 },
        { ...sheet, name: 'other', quantity: 1, ...(price === undefined ? {} : { price }) }
      ] as SheetStock[]
    expect(plan(two, { sheets: sheets(50) }).result.total.price).toBe(95)
    expect(plan(two, { sheets: sheets() }).result.total).not.toHaveProperty('price')
  })

  it('without a price of each the smaller sheet is taken', () => {
    const small = { ...sheet, name: 'small', lengthM: 1.22 }
    const used = (large?: number, little?: number) =>
      plan([panel(1, 1)], {
        sheets: [
          { ...sheet, ...(large === undefined ? {} : { price: large }) },
          { ...small, ...(little === undefined ? {} : { price: little }) }
        ]
      }).result.layouts[0]?.sheet
    expect([used(), used(10), used(10, 20), used(10, 0)]).toEqual(['small', 'small', 'full', 'small'])
  })

  it('sheets of two boards are numbered through, and what each board needs is told by itself', () => {
    const thin = { ...sheet, name: 'thin', thicknessM: 0.012 }
    const panels = [panel(1.3, 0.65, { quantity: 2 }), panel(1, 1, { thicknessM: 0.012 })]
    const { boards, layouts, total } = plan(panels, { sheets: [sheet, thin] }).result
    expect(layouts.map(({ number, thicknessM }) => [number, thicknessM])).toEqual([
      [1, 0.018],
      [2, 0.018],
      [3, 0.012]
    ])
    expect(boards.map(({ panelCount, sheetCount }) => [panelCount, sheetCount])).toEqual([
      [2, 2],
      [1, 1]
    ])
    expect(boards[0]?.panelAreaM2).toBeCloseTo(2 * 1.3 * 0.65, 9)
    expect(boards[0]?.sheetAreaM2).toBeCloseTo(2 * 2.44 * 1.22, 9)
    expect(total.panelAreaM2).toBeCloseTo(2 * 1.3 * 0.65 + 1, 9)
  })

  it('says what the least sheets would have to hold: 2000 mm long, two of 700 and 590 mm are wider than it', () => {
    const grain = { grain: 'length' } as const
    const { result, cautions } = plan([panel(2, 0.7, grain), panel(2, 0.59, grain), panel(0.4, 0.59, grain)], {
      sheets: [{ ...sheet, ...grain }]
    })
    const [board] = result.boards
    const area = (2.0032 * (0.7032 + 0.5932) + 0.4032 * 0.5932) / (2.4232 * 1.2032)
    expect(board?.areaBoundSheets).toBeCloseTo(area, 9)
    expect([board?.sheetCount, board?.leastSheetCount, board?.aboveLeastPercent]).toEqual([2, 1, 100])
    expect(board?.why).toContain(`${Math.round(area * 1000) / 10} % full`)
    expect(board?.why).toContain('need 2 sheets. One sheet would')
    expect(cautions.map(({ code, figures }) => [code, figures])).toEqual([
      ['sheet-plan-above-bound', { sheetCount: 2, leastSheetCount: 1 }]
    ])
  })

  it('an offcut is kept from the side that is asked for on, the largest first', () => {
    // 2420 − 2000 − 3.2 = 416.8 beside it, 1200 − 900 − 3.2 = 296.8 above it: one of the two runs through.
    const kept = (keepOffcutM: number) =>
      plan([panel(2, 0.9, { grain: 'length' })], { keepOffcutM, sheets: [{ ...sheet, grain: 'length' }] }).result
        .layouts[0]?.offcuts
    const [all] = [kept(0.2968)]
    expect(all?.map(({ reusable }) => reusable)).toEqual([true, true])
    expect(kept(0.2969)?.filter(({ reusable }) => reusable)).toHaveLength(1)
    expect(kept(0.42)?.filter(({ reusable }) => reusable)).toHaveLength(0)
    const areas = all?.map(({ lengthM, widthM }) => lengthM * widthM) ?? []
    expect(areas).toEqual(areas.toSorted((a, b) => b - a))
    expect(Math.max(...areas)).toBeCloseTo(Math.max(0.4168 * 1.2, 0.2968 * 2.42), 9)
  })
})

describe('a count for choosing between boxes', () => {
  // (2420 − 3.2)/2 = 1208.4 and (1200 − 3.2)/2 = 598.4: four fill a sheet but for its kerfs.
  const four = panel(1.2084, 0.5984, { quantity: 4 })
  const thin = [panel(1.2, 1.2, { thicknessM: 0.012 })]
  const sheets = [sheet, { ...sheet, name: 'thin', thicknessM: 0.012 }]

  it('adds up the sheets of its boards, with the emptiest and the area alone', () => {
    for (const care of [
      { work: 'glance', evenly: false },
      { work: 'look', evenly: true }
    ] as const) {
      const one = quickSheetCount(asked([four]), care)
      expect(one.sheetCount).toBe(1)
      expect(one.areaSheets).toBeCloseTo(1, 9)
      expect(one.leastUsedShare).toBeCloseTo((4 * 1.2084 * 0.5984) / (2.42 * 1.2), 9)
      const both = quickSheetCount(asked([four, ...thin], { sheets }), care)
      expect(both.sheetCount).toBe(2)
      expect(both.areaSheets).toBeCloseTo(1 + 1.2032 ** 2 / (2.4232 * 1.2032), 9)
      expect(both.leastUsedShare).toBeCloseTo(1.44 / (2.42 * 1.2), 9)
    }
  })

  it('takes the kerf and the trim that are usual where none is given', () => {
    const { kerfM: _, trimM: _trim, ...bare } = asked([four])
    expect(quickSheetCount(bare, { work: 'glance', evenly: false }).areaSheets).toBeCloseTo(1, 9)
  })

  it('is infinite where the stock is too small', () => {
    const short = asked([panel(1.3, 0.65, { quantity: 2 })], { sheets: [{ ...sheet, quantity: 1 }] })
    expect(quickSheetCount(short, { work: 'glance', evenly: false }).sheetCount).toBe(Number.POSITIVE_INFINITY)
  })
})
