/** Plans of one or two sheets that a pencil finds too: what fits, what the saw takes, what is left. */
import { describe, expect, it } from 'vitest'
import type { SheetPanel, SheetPlanRequest } from '../../../src/contract/boxes/box-sheets.ts'
import { nestPanels } from '../../../src/domain/sheet/nest-panels.ts'

/** Trimmed by 10 mm all round it is 2420 × 1200 mm. */
const sheet = { name: 'full', lengthM: 2.44, widthM: 1.22, thicknessM: 0.018, grain: 'none', price: 45 } as const
const panel = (lengthM: number, widthM: number, quantity = 1): SheetPanel => ({
  name: 'board',
  quantity,
  lengthM,
  widthM,
  thicknessM: 0.018
})
const plan = (panels: readonly SheetPanel[], more: Partial<SheetPlanRequest> = {}) =>
  nestPanels({ panels, sheets: [sheet], kerfM: 0.0032, trimM: 0.01, ...more } as SheetPlanRequest)

describe('four boards on a sheet of 2440 × 1220 mm', () => {
  // (2420 − 3.2)/2 = 1208.4 and (1200 − 3.2)/2 = 598.4
  it('fit with a cut between them each way, and not when they are 1 mm longer', () => {
    const { total } = plan([panel(1.2084, 0.5984, 4)]).result
    expect([total.sheetCount, total.cutCount, total.price]).toEqual([1, 3, 45])
    expect(total.cutLengthM).toBeCloseTo(2.42 + 2 * 0.5984, 9)
    const longer = plan([panel(1.2094, 0.5984, 4)]).result.total
    expect([longer.sheetCount, longer.price]).toEqual([2, 90])
  })

  it('fill 97 % of it, and the rest is waste', () => {
    const { total } = plan([panel(1.2084, 0.5984, 4)]).result
    const yieldPercent = (100 * 4 * 1.2084 * 0.5984) / (2.44 * 1.22)
    expect(total.yieldPercent).toBeCloseTo(yieldPercent, 9)
    expect(total.wastePercent).toBeCloseTo(100 - yieldPercent, 9)
    expect(total.wasteAfterOffcutsPercent).toBeCloseTo(100 - yieldPercent, 9)
  })

  it('of 1210 × 600 mm fit a knife, which takes no wood; of what a saw leaves each takes a sheet', () => {
    expect(plan([panel(1.21, 0.6, 4)], { kerfM: 0 }).result.total.sheetCount).toBe(1)
    expect(plan([panel(1.21, 0.6, 4)]).result.total.sheetCount).toBe(4)
  })
})

it('keeps what a board of 1200 × 1200 mm leaves of a sheet: 1216.8 × 1200 mm, so 2.6 % is lost', () => {
  const { total, layouts } = plan([panel(1.2, 1.2)]).result
  expect(layouts[0]?.offcuts.filter(({ reusable }) => reusable).map(({ lengthM, widthM }) => lengthM * widthM)).toEqual(
    [expect.closeTo(1.2168 * 1.2, 9)]
  )
  expect(total.wasteAfterOffcutsPercent).toBeCloseTo(100 - (100 * (1.44 + 1.46016)) / (2.44 * 1.22), 6)
})

it('says how full the least number of sheets would have to be where it finds no such plan', () => {
  // Three of 1300 × 650 mm do not go on one sheet, of which they are 2.535 m² of 2.9768 before kerfs.
  const [board] = plan([panel(1.3, 0.65, 3)]).result.boards
  expect([board?.sheetCount, board?.panelCount]).toEqual([3, 3])
  expect(board?.leastSheetCount).toBeGreaterThanOrEqual(1)
  const share = Number(/ ([\d.]+) % full/.exec(board?.why ?? '')?.[1] ?? 100)
  expect(share).toBeLessThanOrEqual(100)
})

it('turns a board of 1000 × 1300 mm on a sheet 1200 mm wide, but not where its grain runs along', () => {
  expect(plan([panel(1, 1.3)]).result.total.sheetCount).toBe(1)
  const grained = { panels: [{ ...panel(1, 1.3), grain: 'length' as const }] }
  expect(() => plan(grained.panels, { sheets: [{ ...sheet, grain: 'length' }] })).toThrow()
})

it('warns of strips narrower than 60 mm, which no hand holds at a saw (common practice, no source)', () => {
  const codes = (widthM: number) => plan([panel(0.5, widthM)]).cautions.map(({ code }) => code)
  expect([codes(0.059), codes(0.061)]).toEqual([['narrow-strip'], []])
})

it('numbers the copies of a board from one on, over all its sheets, and places none beyond the trimmed edge', () => {
  const { layouts } = plan([panel(1.3, 0.65, 3), { ...panel(0.4, 0.3, 2), name: 'shelf' }]).result
  const pieces = layouts.flatMap(layout => layout.pieces)
  const copiesOf = (name: string) => pieces.filter(piece => piece.panel === name).map(({ copy }) => copy)
  expect(copiesOf('board').toSorted()).toEqual([1, 2, 3])
  expect(copiesOf('shelf').toSorted()).toEqual([1, 2])
  for (const { xM, yM, lengthM, widthM } of pieces) {
    expect(Math.min(xM, yM)).toBeGreaterThanOrEqual(0.01 - 1e-9)
    expect(xM + lengthM).toBeLessThanOrEqual(2.43 + 1e-9)
    expect(yM + widthM).toBeLessThanOrEqual(1.21 + 1e-9)
  }
})
