import { describe, expect, it } from 'vitest'
import type { SheetPanel, SheetPlanRequest } from '../../../src/contract/boxes/box-sheets.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { nestPanels } from '../../../src/domain/sheet/nest-panels.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'
import { complaintsAbout, guillotine } from '../../support/sheet-checker.ts'

const sheet = { name: 'full', lengthM: 2.44, widthM: 1.22, thicknessM: 0.018, grain: 'none' } as const

function panelsOf(
  seed: number,
  count: number,
  longest: number,
  quantity = 1,
  grain?: SheetPanel['grain']
): SheetPanel[] {
  const { uniform } = randomStream(seed)
  const size = (from: number, to: number) => Math.round((from + (to - from) * uniform()) * 1000) / 1000
  return Array.from({ length: count }, (_, index) => ({
    name: `panel ${index}`,
    quantity,
    lengthM: size(0.2, longest),
    widthM: size(0.12, longest / 1.5),
    thicknessM: 0.018,
    ...(grain === undefined ? {} : { grain })
  }))
}

function refusal(request: SheetPlanRequest): DesignError {
  try {
    nestPanels(request)
  } catch (error) {
    if (error instanceof DesignError) return error
  }
  throw new Error('was not refused')
}

describe('sheet plan', () => {
  const requests: Record<string, SheetPlanRequest> = {
    '200 panels that may turn': { panels: panelsOf(1, 200, 0.9), sheets: [sheet], kerfM: 0.0032 },
    '200 panels with grain': {
      panels: panelsOf(2, 200, 0.8, 1, 'length'),
      sheets: [{ ...sheet, grain: 'length' }],
      kerfM: 0.004
    },
    'grain across': { panels: panelsOf(3, 30, 0.7, 2, 'width'), sheets: [{ ...sheet, grain: 'length' }], kerfM: 0.003 },
    'a sheet whose grain follows its width': {
      panels: panelsOf(9, 12, 0.7, 1, 'length'),
      sheets: [{ ...sheet, lengthM: 1.22, widthM: 2.44, grain: 'width' }],
      kerfM: 0.003
    },
    'a knife without kerf, no trim': { panels: panelsOf(4, 40, 0.6), sheets: [sheet], kerfM: 0, trimM: 0 },
    'several sizes and short stock': {
      panels: panelsOf(5, 40, 0.7),
      sheets: [
        { ...sheet, quantity: 1, price: 50 },
        { ...sheet, name: 'square', lengthM: 1.525, widthM: 1.525, price: 40, quantity: 4 }
      ],
      kerfM: 0.0032
    }
  }
  for (const [name, request] of Object.entries(requests)) {
    it(`can be sawn as it says: ${name}`, () => {
      const { result } = nestPanels(request)
      expect(complaintsAbout(request, result, request.kerfM ?? 0)).toEqual([])
    })
  }

  it('stays within 5 % of the bound for 200 panels, or says why not', () => {
    for (const request of [requests['200 panels that may turn'], requests['200 panels with grain']]) {
      const { result, cautions } = nestPanels(request as SheetPlanRequest)
      const [board] = result.boards
      expect(board?.sheetCount).toBeLessThanOrEqual((board?.leastSheetCount ?? 0) + 1)
      const told = cautions.some(({ code }) => code === 'sheet-plan-above-bound')
      expect(told).toBe((board?.aboveLeastPercent ?? 0) > 5)
      expect(board?.why).toMatch(/No plan uses fewer|bound by/)
    }
  })

  it('gives the same plan for the same request', () => {
    const request = requests['several sizes and short stock'] as SheetPlanRequest
    expect(nestPanels(request)).toEqual(nestPanels(request))
  })

  it('accounts for every square metre: panels, offcuts and kerf make up the trimmed sheet', () => {
    const request = requests['200 panels that may turn'] as SheetPlanRequest
    for (const { pieces, offcuts, cuts, trimM, lengthM, widthM } of nestPanels(request).result.layouts) {
      const area = [...pieces, ...offcuts].reduce((sum, part) => sum + part.lengthM * part.widthM, 0)
      const dust = cuts.reduce((sum, { cutLengthM, far, distanceM, near, along }) => {
        const whole = along === 'length' ? near.widthM : near.lengthM
        expect(whole).toBeCloseTo(distanceM, 9)
        return sum + cutLengthM * (far === undefined ? 0 : 0.0032)
      }, 0)
      const shavings = cuts.filter(cut => cut.far === undefined).length
      const trimmed = (lengthM - 2 * trimM) * (widthM - 2 * trimM)
      expect(trimmed - area - dust).toBeGreaterThanOrEqual(-1e-9)
      expect(trimmed - area - dust).toBeLessThanOrEqual(shavings * 2.44 * 0.0032 + 1e-9)
    }
  })

  it('takes four quarters from a sheet only where the kerfs leave room', () => {
    const quarter = {
      name: 'quarter',
      quantity: 4,
      lengthM: 1.21,
      widthM: 0.6,
      thicknessM: 0.018,
      grain: 'length'
    } as const
    const plan = (kerfM: number) =>
      nestPanels({ panels: [quarter], sheets: [{ ...sheet, grain: 'length' }], kerfM, trimM: 0.01 }).result
    expect(plan(0).total.sheetCount).toBe(1)
    expect(plan(0.0001).total.sheetCount).toBe(4)
    expect(plan(0.0001).boards[0]).toMatchObject({ leastSheetCount: 4, provedBy: 'large-pieces' })
  })

  it('prefers the sheets that cost less', () => {
    const panels = [{ name: 'lid', quantity: 2, lengthM: 0.5, widthM: 0.5, thicknessM: 0.018 }]
    const small = { ...sheet, name: 'small', lengthM: 1.1, widthM: 0.6, price: 12 }
    const overPriced = nestPanels({ panels, sheets: [{ ...sheet, price: 40 }, small], kerfM: 0.003 }).result
    expect(overPriced.total.price).toBe(12)
    const cheap = nestPanels({ panels, sheets: [{ ...sheet, price: 10 }, small], kerfM: 0.003 }).result
    expect(cheap.total.price).toBe(10)
  })

  it('refuses what no sheet can give, naming the panel', () => {
    const large = { name: 'wall', quantity: 1, lengthM: 2.43, widthM: 0.3, thicknessM: 0.018 }
    expect(refusal({ panels: [large], sheets: [sheet] })).toMatchObject({
      code: 'no-solution',
      faults: [{ field: 'panels[0].lengthM' }]
    })
    const thin = { ...large, lengthM: 1, thicknessM: 0.012 }
    expect(refusal({ panels: [thin], sheets: [sheet] }).faults[0]?.field).toBe('panels[0].thicknessM')
    const twice = [
      { ...sheet, material: 'mdf' },
      { ...sheet, material: 'birch' }
    ]
    expect(refusal({ panels: [{ ...large, lengthM: 1 }], sheets: twice })).toMatchObject({ code: 'missing-input' })
    const many = { ...large, lengthM: 1.2, widthM: 0.6, quantity: 9 }
    expect(refusal({ panels: [many], sheets: [{ ...sheet, quantity: 2 }] })).toMatchObject({
      code: 'no-solution',
      faults: [{ field: 'sheets', value: 2, minimum: 3 }]
    })
  })
})

describe('the independent checker', () => {
  it('knows the five-piece pinwheel for what no saw can cut', () => {
    const pinwheel = [
      { x: 0, y: 0, l: 2, w: 1 },
      { x: 2, y: 0, l: 1, w: 2 },
      { x: 1, y: 2, l: 2, w: 1 },
      { x: 0, y: 1, l: 1, w: 2 },
      { x: 1, y: 1, l: 1, w: 1 }
    ]
    expect(guillotine(pinwheel, 0)).toBe(false)
    expect(guillotine(pinwheel.slice(0, 2), 0)).toBe(true)
  })

  it('notices a moved piece, a missing one and a wrong cut', () => {
    const request: SheetPlanRequest = { panels: panelsOf(7, 12, 0.7), sheets: [sheet], kerfM: 0.003 }
    const { result } = nestPanels(request)
    const [first] = result.layouts
    if (first === undefined) throw new Error('no sheet')
    const { pieces, cuts } = first
    const changed = [
      { ...first, pieces: pieces.map((piece, index) => (index === 1 ? { ...piece, xM: piece.xM + 0.002 } : piece)) },
      { ...first, pieces: pieces.slice(1) },
      { ...first, cuts: cuts.map((cut, index) => (index === 0 ? { ...cut, distanceM: cut.distanceM + 0.001 } : cut)) },
      { ...first, cuts: cuts.slice(0, -1) }
    ]
    for (const layout of changed) {
      expect(complaintsAbout(request, { ...result, layouts: [layout, ...result.layouts.slice(1)] }, 0.003)).not.toEqual(
        []
      )
    }
  })
})

describe('the order of the cuts', () => {
  it('leaves a setting of the fence only when no free part wants it (read from the answer)', () => {
    const { result } = nestPanels({ panels: panelsOf(21, 12, 0.7, 3), sheets: [sheet], kerfM: 0.0032 })
    let kept = 0
    for (const { cuts } of result.layouts) {
      const settingOf = new Map(cuts.map(({ part, along, distanceM }) => [part, `${along} ${distanceM}`]))
      const free = new Set([1])
      cuts.forEach(({ part, near, far }, i) => {
        expect(free.delete(part)).toBe(true)
        for (const freed of [near, far]) if (freed?.is === 'part' && freed.part !== undefined) free.add(freed.part)
        const next = cuts[i + 1]
        if (next === undefined) return
        const [now, then] = [settingOf.get(part), settingOf.get(next.part)]
        if (now === then) kept++
        else expect([...free].map(each => settingOf.get(each))).not.toContain(now)
      })
    }
    expect(kept).toBeGreaterThan(5)
  })
})
