/** The figures that formulas of a plan name as their checks, each worked by hand beside it. */
import { describe, expect, it } from 'vitest'
import { openingText, pilotText } from '../../src/documents/draw/number-text.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { rectanglePasses } from '../../src/domain/box/boot/pass-opening.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { plateRigidity } from '../../src/domain/box/stiffness/plate.ts'
import { exposureTimeS } from '../../src/domain/cabin/exposure.ts'
import { spokenTime } from '../../src/domain/cabin/hearing.ts'
import { bisect } from '../../src/numeric/bisect.ts'
import { signedArea } from '../../src/numeric/geometry/polygon.ts'
import { insetPolygon } from '../../src/numeric/geometry/polygon-inset.ts'
import { notched, withoutRectangles } from '../../src/numeric/geometry/polygon-window.ts'
import { sixDigitsThroughout } from '../../src/numeric/six-digits.ts'
import { boxJoints } from '../../src/plan/bill/joints.ts'
import { closedHz, closedQ } from '../../src/plan/designer/evaluate/driver-tables.ts'
import { cornerFor, leastGain } from '../../src/plan/designer/evaluate/held-level.ts'
import { typicalDriver } from '../../src/plan/designer/region/typical-driver.ts'
import { insideM3 } from '../../src/plan/designer/room/box-sides.ts'
import { pointsOf } from '../../src/plan/designer/search-score.ts'
import { starterOf } from '../../src/plan/electric/graph/vehicle-habits.ts'
import { withInductance, withRating } from '../../src/plan/request/plan-ratings.ts'
import { withTravel } from '../../src/plan/request/plan-travel.ts'
import { boxError } from '../../src/plan/work/box-error.ts'
import { expectPrinted } from '../support/printed.ts'

const rectangle = (x: number, y: number) => [
  { x: 0, y: 0 },
  { x, y: 0 },
  { x, y },
  { x: 0, y }
]

describe('figures of the box', () => {
  const box = layOutBox({
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
    thicknessM: 0.018,
    board: { densityKgPerM3: 750 }
  } as never).result

  it('640 × 400 × 380 mm of 18 mm board holds 604 × 364 × 344 mm = 75.630464 L; its boards weigh 16.24 kg at 750 kg/m³ (layOutBox)', () => {
    expectPrinted(box.volume.grossM3 * 1000, '75.630464')
    // (97.28 − 75.630464) L of board
    expectPrinted(box.massKg, '16.24')
  })

  it('has joints of 4·(640 + 364 + 344) mm = 5.392 m in all (boxJoints)', () =>
    expectPrinted(
      boxJoints(box as never).reduce((sum, { lengthM }) => sum + lengthM, 0),
      '5.392'
    ))

  it('of 700 × 120 mm passes an opening of 650 × 486.34 mm, tilted, and not 650 × 486.33 (rectanglePasses)', () => {
    expect(rectanglePasses(0.7, 0.12, 0.65, 0.48634)).toBe('tilted')
    expect(rectanglePasses(0.7, 0.12, 0.65, 0.48633)).toBe('no')
    expect(rectanglePasses(0.12, 0.7, 0.48634, 0.65)).toBe('tilted')
    expect(rectanglePasses(0.65, 0.12, 0.65, 0.12)).toBe('straight')
  })

  it('of 1000 × 400 × 500 mm holds 964 × 364 × 464 mm = 162.8 L (insideM3); leaning by 45° its depth is shorter', () => {
    const walls = { boardM: 0.018, recessM: 0, frontM: 0.018, leanRad: 0 }
    expectPrinted(insideM3(walls)({ width: 1, height: 0.4, depth: 0.5 }) * 1000, '162.8')
    // back board 18 mm·√2 along the depth, and half the height
    const leant = insideM3({ ...walls, leanRad: Math.PI / 4 })({ width: 1, height: 0.4, depth: 0.5 })
    expect(leant).toBeCloseTo(0.964 * 0.364 * (0.5 - 0.018 - 0.018 * Math.SQRT2 - 0.2), 12)
  })

  it('errs by 0.85 % of air for a millimetre at 500 × 400 × 250 mm, by 1.88 % of tuning with its slot (boxError)', () => {
    const inner = { widthM: 0.5, heightM: 0.4, depthM: 0.25 }
    const port = { areaM2: 0.4 * 0.04, lengthM: 0.6 }
    const error = boxError(0.001, { inner, port } as never, 0.04)
    expectPrinted(error.netVolumePercent, '0.85')
    // ½·(2.75 + 0.85 + 0.167)
    expectPrinted(error.tuningPercent ?? 0, '1.88')
    expectPrinted(boxError(0.001, { inner, port } as never).tuningPercent ?? 0, '0.508')
    expect(boxError(0.001, { inner } as never).tuningPercent).toBeUndefined()
  })

  it('of 18 mm board, E 2.2 GPa and ν 0.25, is stiff by 1140.5 N·m (plateRigidity; E·t³/12/(1 − ν²))', () => {
    const board = { alongPa: 2.2e9, acrossPa: 2.2e9, poisson: 0.25, shearPa: 0.88e9, grained: false }
    const { x, y, twist } = plateRigidity(board as never, 0.018)
    for (const each of [x, y, twist]) expectPrinted(each, '1140.5')
  })

  it('is cut by the next larger opening and drilled by the next smaller pilot (openingText, pilotText)', () => {
    const inches = { units: 'imperial', inches: 'fraction' } as never
    // 9 1/8 in would be 231.8 mm, 1/8 in 3.18 mm; 7/64 in is 2.78 mm
    expect(openingText(0.232, inches)).toContain('3/16')
    expect(pilotText(0.003, inches)).toContain('7/64')
  })
})

describe('figures of the ear', () => {
  it('are spent in 8 h at 85 dB, 4 h at 88, 60 min at 94 and 15 min at 100 dB (exposureTimeS; ISO 1999, 3 dB a halving)', () => {
    expect(exposureTimeS(85)).toBe(8 * 3600)
    expect(exposureTimeS(88)).toBeCloseTo(4 * 3600, 9)
    expect(exposureTimeS(94)).toBeCloseTo(60 * 60, 9)
    expect(exposureTimeS(100)).toBeCloseTo(15 * 60, 9)
  })
})

describe('a time as a person says it', () => {
  it('is in minutes from one to two hours', () => {
    const said = (seconds: number) => JSON.stringify(spokenTime(seconds))
    expect([59, 60, 7199, 7200].map(seconds => said(seconds).match(/time\.[a-z-]+/)?.[0])).toEqual([
      'time.under-a-minute',
      'time.minutes',
      'time.minutes',
      'time.hours'
    ])
    expect(said(900)).toContain('15')
    expect(said(9000)).toContain('2.5')
  })
})

describe('figures of the designer', () => {
  it('doubles Qts in a third of Vas (closedQ)', () =>
    expect(closedQ({ qts: 0.4, vasM3: 0.09 } as never, 0.03)).toBeCloseTo(0.8, 12))

  it('doubles fs in a third of Vas (closedHz)', () =>
    expect(closedHz({ fsHz: 31, vasM3: 0.09 } as never, 0.03)).toBeCloseTo(62, 12))

  it('holds twice the limit at 30 Hz by a corner of 39.48 Hz = 30·3^(1/4) (cornerFor)', () => {
    const programme = { fourthHz4: new Float64Array([30 ** 4]) } as never
    expectPrinted(cornerFor(programme, new Float64Array([25]), 100), '39.48')
    // what is within its limit needs none
    expect(cornerFor(programme, new Float64Array([100]), 100)).toBe(0)
  })

  it('lets that corner of 39.48 Hz hold 20 V where 10 V are allowed at 30 Hz (leastGain)', () => {
    const held = leastGain(new Float64Array([30]), new Float64Array([100]), 30 * 3 ** 0.25)
    expectPrinted(Math.sqrt(held.gain2), '20.0')
    // the lowest of several decides, and says where
    expect(leastGain(new Float64Array([30, 60]), new Float64Array([100, 50]), 0)).toEqual({ gain2: 50, at: 1 })
  })

  it('gives 9.03 for an octave of f3 and −3.01 for twice the volume, price or current (pointsOf)', () => {
    const even = { level: 1, reach: 1, box: 1, price: 1, current: 1 }
    const at = { levelDb: 110, f3Hz: 30, outerVolumeM3: 0.1, price: 1000, fullSineA: 50 }
    const gain = (more: Partial<typeof at>) => pointsOf({ ...at, ...more }, even).total - pointsOf(at, even).total
    expectPrinted(pointsOf(at, even).total - pointsOf({ ...at, f3Hz: 60 }, even).total, '9.03')
    for (const more of [{ outerVolumeM3: 0.2 }, { price: 2000 }, { fullSineA: 100 }]) expectPrinted(gain(more), '-3.01')
  })
})

describe('what a plan takes where nothing is said', () => {
  const driver = (sheet: object) => ({ sheet, coils: { statedFor: 1 }, count: 1 }) as never

  it('is 245 W on 490 cm² (withRating), 1.7 mH behind 3.4 Ω (withInductance), 5.0 mm on d 249.8 mm (withTravel)', () => {
    // a printed rating of 250 W would be taken as it is
    expect(withRating(driver({ sdM2: 0.049 }), assumptions()).sheet.powerW).toBe(250)
    expect(withRating(driver({ sdM2: 0.049, powerW: 300 }), assumptions()).sheet.powerW).toBe(300)
    expect(withInductance(driver({ reOhm: 3.4 }), assumptions()).sheet.leH).toBeCloseTo(0.0017, 12)
    expect(withTravel(driver({ sdM2: 0.049 }), assumptions()).sheet.xmaxM).toBeCloseTo(0.005, 12)
  })

  it('is of a driver of 300 mm: d 246 mm, Sd 475 cm², Xmax a twentieth, 12 mm, the power shared (typicalDriver)', () => {
    const typical = typicalDriver({ nominalM: 0.3 } as never, { powerW: 600, driverCount: 2 } as never)
    expect(typical.sdM2).toBeCloseTo(0.0475, 12)
    expect(typical.xmaxM).toBeCloseTo(0.012, 12)
    expect(typical.powerW).toBe(300)
  })

  it('is a starter of half the cold cranking current: 680 A, 340 A, 9.6 V/340 A = 28.2 mΩ (starterOf)', () => {
    const brief = { supply: { systemVoltageV: 12 }, starter: { coldCrankingA: 680 } } as never
    expectPrinted((starterOf(brief, 'minus')?.resistanceOhm ?? 0) * 1000, '28.2')
    expect(
      starterOf({ supply: { systemVoltageV: 12 }, starter: {}, drive: 'electric' } as never, 'minus')
    ).toBeUndefined()
  })
})

describe('figures of numbers', () => {
  it('1.41421356237 squares to 2 (bisect)', () =>
    expectPrinted(
      bisect(x => x * x - 2, 0, 2),
      '1.41421356237'
    ))

  it('keep six digits: 0.123456789 → 0.123457, 41666.6667 → 41666.7 (sixDigits)', () =>
    expect(sixDigitsThroughout({ a: [0.123456789], b: 41666.6667 })).toEqual({ a: [0.123457], b: 41666.7 }))

  it('a rectangle of 400 × 380 mm with 18 all round leaves 364 × 344 (insetPolygon)', () => {
    const inset = insetPolygon(rectangle(400, 380), [18, 18, 18, 18])
    expect('polygon' in inset && inset.polygon[2]).toEqual({ x: 382, y: 362 })
    expect('polygon' in inset && signedArea(inset.polygon)).toBeCloseTo(364 * 344, 6)
  })

  it('a square less 0.4 × 0.2 in the middle of its foot has eight corners and 0.92 (notched)', () => {
    const left = notched(rectangle(1, 1), [{ x: 0.5, y: 0.1, width: 0.4, height: 0.2 }]) ?? []
    expect(left).toHaveLength(8)
    expect(signedArea(left)).toBeCloseTo(0.92, 12)
  })

  it('a square less a strip through its middle falls in two; less a window it keeps a hole (withoutRectangles)', () => {
    const areas = (height: number) =>
      withoutRectangles(rectangle(1, 1), [{ x: 0.5, y: 0.5, width: 0.2, height }]).map(signedArea)
    expect(areas(1)).toEqual([expect.closeTo(0.4, 12), expect.closeTo(0.4, 12)])
    const [outline, hole] = areas(0.2).toSorted((a, b) => b - a)
    expect([outline, hole]).toEqual([expect.closeTo(1, 12), expect.closeTo(-0.04, 12)])
  })
})
