/** The order of ways of matching: each reason on its own, and none of them the place in a list. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { MatchOption } from '../../../src/contract/amplifiers/amplifier-matching.ts'
import type { Ranking } from '../../../src/contract/amplifiers/words.ts'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import { ranked } from '../../../src/domain/amplifier/rank-options.ts'

const plain: MatchOption = {
  amplifier: 'plain',
  bridged: false,
  outputs: 1,
  driversPerOutput: 1,
  amplifiersNeeded: 1,
  loadOhm: 4,
  lowestOhm: 2,
  join: 'one coil',
  verdict: 'good',
  advice: '',
  powerRatio: 1,
  totalPowerW: 270,
  price: 100,
  footprintM2: 0.1
}

/** Both orders of the list give the same order of options. */
function expectBefore(first: Partial<MatchOption>, second: Partial<MatchOption>, by: Ranking = 'power', atHand = 2) {
  const [a, b] = [
    { ...plain, ...first },
    { ...plain, ...second }
  ]
  expect(ranked([a, b], by, atHand)).toEqual([a, b])
  expect(ranked([b, a], by, atHand)).toEqual([a, b])
}

describe('order of options', () => {
  it('usable before unknown before forbidden, however well the power fits', () => {
    expectBefore({ verdict: 'over-powered', powerRatio: 3 }, { verdict: 'power-unknown' })
    expectBefore({ verdict: 'power-unknown' }, { verdict: 'below-minimum' })
    expectBefore({ powerRatio: 0.3 }, { powerRatio: 1, powerFrom: 'voltage-bound' })
    expectBefore({ powerRatio: 0.3, powerFrom: 'voltage-bound' }, { verdict: 'power-unknown' })
    expectBefore({ verdict: 'under-powered', powerRatio: 0.3 }, { verdict: 'below-minimum' }, 'price')
  })

  it('what is at hand before what must be bought', () => {
    expectBefore({ amplifiersNeeded: 2, powerRatio: 0.8 }, { amplifiersNeeded: 3 })
  })

  it('by power: nearest in ratio, above or below alike', () => {
    expectBefore({ powerRatio: 1.1 }, { powerRatio: 1.3 })
    expectBefore({ powerRatio: 0.9 }, { powerRatio: 0.8 })
    expectBefore({ powerRatio: 0.9 }, { powerRatio: 1.3 })
  })

  it('by price: the cheaper of those in the band, the band before the price, price nothing to the power', () => {
    expectBefore({ price: 90, powerRatio: 1.4 }, { price: 100, powerRatio: 1 }, 'price')
    expectBefore({ price: 190 }, { price: 20, powerRatio: 1.6 }, 'price')
    expectBefore({ price: 190 }, { price: 20, powerRatio: 1.4 }, 'power')
  })

  it('by size: the smaller of those in the band', () => {
    expectBefore({ footprintM2: 0.05, powerRatio: 1.4 }, { footprintM2: 0.1, powerRatio: 1 }, 'size')
    expectBefore({ footprintM2: 0.2 }, { footprintM2: 0.1, powerRatio: 0.7 }, 'size')
  })

  it('of equals: fewer boxes, fewer outputs, the higher load, not bridged', () => {
    expectBefore({ amplifiersNeeded: 1, outputs: 2 }, { amplifiersNeeded: 2, outputs: 1 })
    expectBefore({ outputs: 1, loadOhm: 2 }, { outputs: 2, loadOhm: 8 })
    expectBefore({ loadOhm: 4, bridged: true }, { loadOhm: 2, bridged: false })
    expectBefore({ bridged: false }, { bridged: true })
  })

  it('ratios within a step of each other leave the word to the lesser reasons, then the exact distance has it', () => {
    expectBefore({ powerRatio: 1.065, outputs: 1 }, { powerRatio: 0.942, outputs: 2 })
    expectBefore({ powerRatio: 0.942 }, { powerRatio: 1.065 })
    expectBefore({ amplifier: 'a' }, { amplifier: 'b' })
  })
})

describe('the order of the amplifiers', () => {
  it('decides nothing: 241.7 W is nearer to 256.7 W than 273.6 W is, listed first or last', () => {
    // ln(256.7/241.7) = 0.0602, ln(273.6/256.7) = 0.0638.
    const amplifier = (powerW: number) => ({
      name: `${powerW} W`,
      ratings: [{ loadOhm: 4, powerW }],
      minimumOhm: 4,
      channels: 1
    })
    const best = (first: number, second: number) =>
      matchAmplifier({
        amplifier: amplifier(first),
        otherAmplifiers: [amplifier(second)],
        driver: { powerW: 256.7, coils: 1, coilOhm: 4 },
        driverCount: 1
      }).result.best?.amplifier
    expect([best(273.6, 241.7), best(241.7, 273.6)]).toEqual(['241.7 W', '241.7 W'])
  })

  it('never matters, whatever they are and however they are ranked', () => {
    const sheet = fc.record({
      ratings: fc.uniqueArray(
        fc.record({ loadOhm: fc.constantFrom(1, 2, 4, 8), powerW: fc.integer({ min: 240, max: 280 }) }),
        {
          minLength: 1,
          maxLength: 3,
          selector: ({ loadOhm }) => loadOhm
        }
      ),
      minimumOhm: fc.constantFrom(1, 2, 4),
      channels: fc.constantFrom(1, 2, 4),
      price: fc.constantFrom(100, 200),
      footprintM2: fc.constantFrom(0.05, 0.1)
    })
    const question = fc.record({
      sheets: fc.array(sheet, { minLength: 2, maxLength: 4 }),
      rankBy: fc.constantFrom<Ranking>('power', 'price', 'size'),
      driver: fc.record({ powerW: fc.constant(260), coils: fc.constantFrom(1, 2), coilOhm: fc.constantFrom(2, 4) }),
      driverCount: fc.constantFrom(1, 2, 4)
    })
    fc.assert(
      fc.property(question, fc.infiniteStream(fc.nat()), ({ sheets, ...rest }, picks) => {
        // A rating below the least load would be refused.
        const named = sheets.map((each, index) => ({
          ...each,
          ratings: each.ratings.map(rating => ({ ...rating, loadOhm: Math.max(rating.loadOhm, each.minimumOhm) })),
          name: `amplifier ${'abcd'[index]}`
        }))
        const usable = named.map(each => ({ ...each, ratings: each.ratings.slice(0, 1) }))
        const left = [...usable]
        const shuffled = usable.map(
          () => left.splice((picks.next().value ?? 0) % left.length, 1)[0] as (typeof usable)[number]
        )
        const ask = ([amplifier, ...otherAmplifiers]: typeof usable) =>
          matchAmplifier({ amplifier: amplifier as (typeof usable)[number], otherAmplifiers, ...rest }).result
        expect(ask(shuffled)).toEqual(ask(usable))
      }),
      { seed: 20261126, numRuns: 300 }
    )
  })
})
