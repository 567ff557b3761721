/** Quantities of a bill counted on a drawing or worked by hand; rules of thumb behind them are common practice, no source. */
import { describe, expect, it } from 'vitest'
import type { BoxLayout } from '../../src/contract/boxes/box-result.ts'
import type { Panel } from '../../src/contract/boxes/panel.ts'
import { say } from '../../src/domain/say.ts'
import { driverRows, joiningRows, panelRows, sheetRows } from '../../src/plan/bill/bill-box.ts'
import { carpetNeed, coveringRows, liningRows, surfaceRows } from '../../src/plan/bill/bill-finish.ts'
import { billRow, namedRows } from '../../src/plan/bill/bill-row.ts'
import { laminatedAreaM2, shellOutline } from '../../src/plan/bill/joints.ts'
import { bought, needs } from '../support/bill-sums.ts'

const panel = (given: object): Panel =>
  ({ name: 'board', role: 'side', quantity: 1, lengthM: 0.6, widthM: 0.4, thicknessM: 0.018, ...given }) as never

describe('a row', () => {
  const words = { group: 'wiring', part: 'clip', item: say('bill.charger'), basis: say('bill.charger') } as const
  const quantity = (given: object) => billRow({ ...words, need: 1, unit: 'piece', ...given })[0]?.quantity

  it('is bought in whole steps, never under the need with its spare, and no step more where it comes out even', () => {
    expect(quantity({ need: 10, sparePercent: 10 })).toBe(11)
    expect(quantity({ need: 11, sparePercent: 10 })).toBe(13)
    expect(quantity({ need: 0.51, step: 0.1 })).toBe(0.6)
    expect(quantity({ need: 0.3, step: 0.1 })).toBe(0.3)
    expect(quantity({ need: 5, step: 0.5, sparePercent: 10 })).toBe(5.5)
    expect(quantity({ need: 0 })).toBeUndefined()
  })

  it('is named by its part, and by a number from the second of the part on', () => {
    const rows = namedRows([1, 2, 3].flatMap(need => billRow({ ...words, need, unit: 'piece' })))
    expect(rows.map(({ id }) => id)).toEqual(['clip', 'clip-2', 'clip-3'])
  })
})

describe('carpet of a box of 640 × 400 × 380 mm', () => {
  // Wrap 2·(400 + 380) + 60 = 1620 mm long, 640 + 80 = 720 mm across; ends 460 × 440 mm.
  const outline = { sidesM: [0.4, 0.38, 0.4, 0.38], spanM: 0.64 }
  const of = (rollM: number) => {
    const { lengthM, seams } = carpetNeed(outline, rollM)
    return [Number(lengthM.toFixed(9)), seams]
  }

  it('cuts the ends beside the wrap where the roll leaves 440 mm, else behind it, two abreast where they go', () => {
    expect(of(1.37)).toEqual([1.62, 1])
    expect(of(1.17)).toEqual([1.62, 1])
    expect(of(1.15)).toEqual([1.62 + 0.46, 1])
    expect(of(0.89)).toEqual([1.62 + 0.46, 1])
    expect(of(0.87)).toEqual([1.62 + 2 * 0.46, 1])
    expect(of(0.72)).toEqual([1.62 + 2 * 0.46, 1])
  })

  it('pieces the wrap of two lanes on a narrower roll; what the second leaves takes the ends', () => {
    // 2 × 600 − 720 = 480 mm beside the second lane; 2 × 570 − 720 = 420 mm are too little.
    expect(of(0.6)).toEqual([3.24, 2])
    expect(of(0.57)).toEqual([3.24 + 2 * 0.46, 2])
  })

  it('is glued on both faces, a can to 3 m² of one side: 2 × 1.5712 m², 1.05 cans, two with what drifts past', () => {
    const rows = coveringRows(outline, {})
    expect(rows.find(({ part }) => part === 'carpet-adhesive')?.need).toBeCloseTo((2 * 1.5712) / 3, 6)
    expect(bought(rows)).toEqual({ carpet: 1.8, 'carpet-adhesive': 2 })
  })
})

describe('the outline that carpet goes round', () => {
  const of = (layout: object) => shellOutline({ panels: [], ...layout } as unknown as BoxLayout)

  it('of a wedge is floor, back, lid and the slope over them: 400 mm high, 500 to 200 mm deep, 500 mm by Pythagoras', () => {
    const wedge = of({ shape: 'wedge', outer: { widthM: 0.7, heightM: 0.4, depthM: 0.5, topDepthM: 0.2 } })
    expect(wedge.spanM).toBe(0.7)
    expect(wedge.sidesM.toSorted()).toEqual([0.2, 0.4, 0.5, expect.closeTo(0.5, 12)].toSorted())
  })

  it('of a prism is its cap, each side by Pythagoras, pushed along its height', () => {
    const corners = [
      [0, 0],
      [0.3, 0],
      [0.3, 0.4]
    ].map(([uM, vM]) => ({ uM, vM }))
    const prism = of({
      shape: 'prism',
      outer: { widthM: 0.3, heightM: 0.35, depthM: 0.4 },
      panels: [panel({ role: 'side' }), panel({ role: 'bottom', outline: corners })]
    })
    expect(prism).toEqual({ sidesM: [0.3, 0.4, expect.closeTo(0.5, 12)], spanM: 0.35 })
  })

  it('of a plain box is what is seen from the side', () => {
    const plain = of({ shape: 'rectangular', outer: { widthM: 0.6, heightM: 0.3, depthM: 0.4 } })
    expect(plain).toEqual({ sidesM: [0.3, 0.4, 0.3, 0.4], spanM: 0.6 })
  })
})

describe('what is glued flat', () => {
  const front = (quantity: number) => panel({ role: 'front', quantity })
  it('is each board of the front beyond the first, 0.24 m² each, and every ring', () => {
    const ring = panel({ role: 'baffle-ring', quantity: 2, lengthM: 0.3, widthM: 0.3 })
    expect(laminatedAreaM2([front(1), panel({})])).toBe(0)
    expect(laminatedAreaM2([front(2)])).toBeCloseTo(0.24, 12)
    expect(laminatedAreaM2([front(1), front(2)])).toBeCloseTo(0.48, 12)
    expect(laminatedAreaM2([front(1), ring])).toBeCloseTo(0.18, 12)
    expect(laminatedAreaM2([front(1), front(1), ring])).toBeCloseTo(0.42, 12)
  })

  it('takes 150 g/m², edges 195: 1 m of 18 mm edge and 0.24 m² are 39.5 g', () => {
    const joint = { name: 'side', lengthM: 1, faceM: 0.018, screwCount: 3, sealed: true }
    const rows = joiningRows([joint, { ...joint, screwCount: 0, sealed: false }], 0.24, [panel({})])
    const { glue, sealant, 'wood-screw': screws } = needs(rows)
    expect(glue).toBeCloseTo(0.15 * (0.036 * 1.3 + 0.24), 9)
    // one sealed metre of a triangle of 6 × 6 mm
    expect(sealant).toBeCloseTo(18e-6 / 310e-6, 9)
    expect(screws).toBe(3)
  })
})

describe('surface and lining', () => {
  it('seals 0.072 m² of sawn edge with 0.1 L/m² and sands outer faces alone, 0.5 m² a sheet, twice', () => {
    const rows = surfaceRows([panel({ quantity: 2 }), panel({ role: 'brace', widthM: 0.1 })])
    // 2 boards: 2 × 2·(0.6 + 0.4)·0.018; the brace has edges too: 2·(0.6 + 0.1)·0.018
    expect(needs(rows)['edge-sealer']).toBeCloseTo((0.072 + 0.0252) * 0.1, 9)
    expect(rows.filter(({ part }) => part === 'abrasive').map(({ need }) => need)).toEqual([0.96, 0.96])
    expect(rows.find(({ part }) => part === 'foot')).toMatchObject({ quantity: 4, needed: false })
  })

  it('buys mats of half a square metre: 1.2 m² and a twentieth are three, on two fifths of a can', () => {
    const rows = liningRows({ thicknessM: 0.025, areaM2: 1.2 })
    expect(bought(rows)).toEqual({ lining: 1.5, 'lining-adhesive': 1 })
    expect(needs(rows)['lining-adhesive']).toBeCloseTo(0.4, 12)
  })
})

describe('a driver', () => {
  const base = { count: 1, massKg: 9, cutOutDiameterM: 0.28, screwCount: 8, baffleThicknessM: 0.036 }
  const lengthMm = (baffleThicknessM: number) =>
    Math.round((driverRows({ ...base, baffleThicknessM })[0]?.specification?.lengthM ?? 0) * 1e3)

  it('has screws 15 mm longer than its baffle, of the lengths sold, beyond them in tens', () => {
    expect([0.035, 0.036, 0.045, 0.105, 0.106, 0.116].map(lengthMm)).toEqual([50, 55, 60, 120, 130, 140])
  })

  it('has a gasket on a flange 8 % wider than its hole where none is given', () => {
    const gasket = needs(driverRows({ ...base, count: 2 })).gasket
    expect(gasket).toBeCloseTo(2 * (Math.PI * 0.28 * 1.04 + 0.02), 8)
  })
})

describe('board', () => {
  it('is one row for each kind of sheet with as many as the cut plan fills, and panels are no second purchase', () => {
    const sheet = { sheet: 'full', lengthM: 2.44, widthM: 1.22, thicknessM: 0.018 }
    const plan = { layouts: [sheet, { ...sheet, lengthM: 1.2 }, sheet], total: { yieldPercent: 70 } }
    expect(sheetRows(plan as never).map(({ need, specification }) => [need, specification?.lengthM])).toEqual([
      [2, 2.44],
      [1, 1.2]
    ])
    const cut = (fromSheets: boolean) => panelRows([panel({ quantity: 2, material: 'mdf' })], fromSheets)[0]
    expect([cut(true)?.needed, cut(false)?.needed, cut(false)?.need]).toEqual([false, true, 2])
    expect([cut(true)?.insteadOf, cut(false)?.insteadOf]).toEqual(['sheet', undefined])
  })
})
