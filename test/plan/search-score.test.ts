/** The order of designs: exchange rates worked out by hand, and no design above one that is better in everything. */
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { scoreBasis } from '../../src/plan/designer/score-basis.ts'
import { broken, readLimits } from '../../src/plan/designer/search-limits.ts'
import { criteria, pointsOf, type ScoredFigures } from '../../src/plan/designer/search-score.ts'
import { seeded } from '../support/random-requests.ts'

const even = { level: 1, reach: 1, box: 1, price: 1, current: 1 }
const figures = { levelDb: 110, f3Hz: 30, outerVolumeM3: 0.1, price: 1000, fullSineA: 50 }
const total = (changed: Partial<ScoredFigures>, weights = even) => pointsOf({ ...figures, ...changed }, weights).total

describe('the score of a design', () => {
  it('is the level alone where every other figure stands at its zero', () => expect(total({})).toBeCloseTo(110, 12))

  // 30·log10 2 = 9.0309, 10·log10 2 = 3.0103: any table of logarithms.
  it('counts nine decibels an octave of f3 and three a doubling of box, price and current', () => {
    expect(total({ f3Hz: 60 })).toBeCloseTo(110 - 9.0309, 4)
    expect(total({ outerVolumeM3: 0.2 })).toBeCloseTo(110 - 3.0103, 4)
    expect(total({ price: 2000 })).toBeCloseTo(110 - 3.0103, 4)
    expect(total({ fullSineA: 25 })).toBeCloseTo(110 + 3.0103, 4)
  })

  it('takes free parts and no current without falling to infinity', () => {
    expect(Number.isFinite(total({ price: 0, fullSineA: 0 }))).toBe(true)
  })

  it('never puts a design above one that is at least as good in everything', () => {
    const random = seeded(11)
    for (let n = 0; n < 500; n++) {
      const one = {
        levelDb: 90 + 40 * random(),
        f3Hz: 15 + 60 * random(),
        outerVolumeM3: 0.02 + random(),
        price: 2000 * random(),
        fullSineA: 200 * random()
      }
      const worse = {
        levelDb: one.levelDb - random(),
        f3Hz: one.f3Hz + random(),
        outerVolumeM3: one.outerVolumeM3 + random() / 10,
        price: one.price + 10 * random(),
        fullSineA: one.fullSineA + random()
      }
      const weights = Object.fromEntries(criteria.map(name => [name, random()])) as typeof even
      expect(pointsOf(worse, weights).total).toBeLessThan(pointsOf(one, weights).total)
    }
  })

  it('is explained by arithmetic that gives it', () => {
    const random = seeded(12)
    const weights = { level: random(), reach: random(), box: random(), price: random(), current: random() }
    for (const each of [figures, { levelDb: 101, f3Hz: 44, outerVolumeM3: 0.07, fullSineA: 31 }]) {
      const said = pointsOf(each, weights).total
      const { formula, inputs } = scoreBasis('designs[0].score', each, weights, said)
      const scope = Object.fromEntries(inputs.map(({ symbol, value }) => [symbol, value]))
      expect(evaluate(formula, scope)).toBeCloseTo(said, 10)
    }
  })
})

describe('limits', () => {
  it('are broken beyond the bound only, upper and lower, in the unit people read', () => {
    const limits = { outerVolumeM3: 0.06, levelAtLeastDb: 100 }
    expect(broken(readLimits(limits, { outerVolumeM3: 0.06, levelDb: 100 }))).toEqual([])
    const [size, level] = broken(readLimits(limits, { outerVolumeM3: 0.0615, levelDb: 98.5 }))
    expect(size).toMatchObject({ limit: 'box-size', bound: 60, unit: 'L' })
    expect(size?.left).toBeCloseTo(-1.5, 9)
    expect(level).toMatchObject({ limit: 'level', value: 98.5, left: -1.5 })
  })
})
