import { describe, expect, it } from 'vitest'
import { sixteenths } from '../../src/documents/draw/number-text.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Any = any
const planned = (request: unknown): Any => JSON.parse(planSystem.answerText(request, { digits: 'full', basis: false }))
const paper = { units: 'imperial', inches: 'sixteenths' }

/** A printed size in thirty-seconds: `14 5/16` is 458. */
const parts = (text: string): number =>
  text.split(' ').reduce((sum, part) => {
    const [top = 0, bottom = 1] = part.split('/').map(Number)
    return sum + (32 * top) / bottom
  }, 0)
const printed = (mm: number) => parts(sixteenths(mm / 1000))
const isOnGrid = (mm: number, of: number) => Math.abs((mm / 25.4) * of - Math.round((mm / 25.4) * of)) < 1e-3

describe('a size as printed', () => {
  it('keeps thirty-seconds where it lies on one, and goes to the nearest sixteenth where it does not (worked by hand)', () => {
    expect(sixteenths((23 / 32) * 0.0254)).toBe('23/32')
    expect(sixteenths(0.018)).toBe('11/16')
    expect(sixteenths(14.3125 * 0.0254)).toBe('14 5/16')
    expect(parts('14 5/16')).toBe(458)
    expect(parts('23/32')).toBe(23)
    expect(parts('7')).toBe(224)
  })
})

describe.each([
  ['estate', estatePlan],
  ['hatchback', hatchbackPlan],
  ['leaning', leaningPlan]
])('the %s in sixteenths', (_, request) => {
  const plan = planned({ ...request, paper })
  const { outer, inner, panels, volume } = plan.result.parts.box.answer.result
  const panel = (role: string) => panels.find((each: Any) => each.role === role)
  const board = printed(panel('top').thicknessMm)

  it('has outer sizes on sixteenths and boards on thirty-seconds', () => {
    for (const size of [outer.widthMm, outer.heightMm, outer.depthMm]) expect(isOnGrid(size, 16)).toBe(true)
    expect(isOnGrid(panel('top').thicknessMm, 32)).toBe(true)
    const said = plan.assumed.find(({ pointer }: Any) => pointer === '/board/thicknessMm')
    if (request.board.thicknessMm === 18) expect(said.value).toBeCloseTo((23 / 32) * 25.4, 4)
  })

  it('adds up as printed: what is between two boards and the boards are the outside', () => {
    expect(printed(inner.widthMm) + 2 * board).toBe(printed(outer.widthMm))
    expect(printed(inner.heightMm) + 2 * board).toBe(printed(outer.heightMm))
    if (outer.topDepthMm === undefined) {
      const fronts = panels
        .filter(({ role }: Any) => role === 'front')
        .reduce((sum: number, { quantity }: Any) => sum + quantity, 0)
      expect(printed(inner.depthMm) + (1 + fronts) * board).toBe(printed(outer.depthMm))
    }
    const back = panel('back')
    expect([printed(back.lengthMm), printed(back.widthMm)]).toContain(
      printed(inner.widthMm) + (back.lengthMm > inner.widthMm + 1 ? 2 * board : 0)
    )
  })

  it('holds the air of the sizes printed', () => {
    if (outer.topDepthMm !== undefined) return
    const litres = [inner.widthMm, inner.heightMm, inner.depthMm].reduce(
      (product, mm) => product * (printed(mm) / 32) * 0.254,
      1
    )
    expect(volume.grossL).toBeCloseTo(litres, 3)
    expect(Math.abs(volume.errorPercent)).toBeLessThan(0.5)
  })

  it('is cut from the sheet of that market, unless another was named', () => {
    const [layout] = plan.result.parts.sheets.answer.result.layouts
    const named = request.board as { sheet?: { lengthMm: number } }
    expect(layout.lengthMm).toBeCloseTo(named.sheet?.lengthMm ?? 2438.4, 6)
  })
})

it('stays on the millimetre where inches are decimal', () => {
  const { outer } = planned({ ...hatchbackPlan, paper: { units: 'imperial', inches: 'decimal' } }).result.parts.box
    .answer.result
  expect(Number.isInteger(Math.round(outer.widthMm * 1e6) / 1e6)).toBe(true)
})
