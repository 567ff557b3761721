import { describe, expect, it } from 'vitest'
import { type FuseType, fuseTypes } from '../../../src/contract/supply/words.ts'
import { batteryOhmFromCranking, faultCurrent, fuseOhm } from '../../../src/domain/circuit/fuse/battery-source.ts'
import { cableFault } from '../../../src/domain/circuit/fuse/cable-fault.ts'
import { fuseFamilies } from '../../../src/domain/circuit/fuse/fuse-families-iso-8820.ts'
import { fuseTemperatureFactor, nextRating, thermalRating } from '../../../src/domain/circuit/fuse/fuse-rating.ts'
import { letThroughA2s, timeBand } from '../../../src/domain/circuit/fuse/fuse-time-current.ts'
import { selectivity } from '../../../src/domain/circuit/fuse/selectivity.ts'
import {
  deratingAsQuoted,
  fuseFamiliesAsListed,
  fuseFamiliesRecalled,
  timeLimitsAsQuoted,
  timeLimitsRecalled
} from '../../published/fuse-tables.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('fuse tables', () => {
  it('hold each family that may be asked for once', () =>
    expect(fuseFamilies.map(({ type }) => type).toSorted()).toEqual(fuseTypes.toSorted()))

  const familyOf = (type: string) => {
    const { voltagesV, breakingA, ratingsA } = fuseFamilies.find(family => family.type === type) ?? expect.unreachable()
    return [type, voltagesV.join(' '), String(breakingA), ratingsA.join(' ')]
  }
  for (const row of fuseFamiliesAsListed)
    it(`holds type ${row[0]} as listed`, () => expect(familyOf(row[0])).toEqual(row))
  for (const row of fuseFamiliesRecalled)
    it(`holds type ${row[0]} as remembered twice: no source, a slip of one hand shows`, () =>
      expect(familyOf(row[0])).toEqual(row))

  const bandsOf = (type: string, quoted: string, isWhole: boolean) => {
    for (const row of quoted.split('|')) {
      const [percent = 0, least, most] = row.split(' ').map(text => (text === '-' ? undefined : Number(text)))
      const band = timeBand(type as FuseType, 40, (40 * percent) / 100)
      // between rows that have one bound the other is read off the rows around
      if (isWhole || least !== undefined) expect(band.minimumS).toBe(least)
      if (isWhole || most !== undefined) expect(band.maximumS).toBe(most)
    }
  }
  for (const [type, quoted] of Object.entries(timeLimitsAsQuoted))
    it(`opens type ${type} within its quoted limits`, () => bandsOf(type, quoted, true))
  for (const [type, quoted] of Object.entries(timeLimitsRecalled))
    it(`opens type ${type} within limits remembered twice: no source`, () => bandsOf(type, quoted, type === 'SF30'))

  it('opens sooner the higher the current, and promises nothing below the first row', () => {
    for (const type of fuseTypes) {
      expect(timeBand(type, 100, 110).maximumS).toBeUndefined()
      let last = Number.POSITIVE_INFINITY
      for (let percent = 200; percent <= 1000; percent += 20) {
        const { maximumS = Number.NaN, minimumS = 0 } = timeBand(type, 100, percent)
        expect(maximumS).toBeLessThanOrEqual(last)
        expect(minimumS).toBeLessThanOrEqual(maximumS)
        last = maximumS
      }
    }
  })

  it('carries the quoted share at each temperature and straight between', () => {
    for (const row of deratingAsQuoted.split('|')) {
      const [celsius = 0, share = 0] = row.split(' ').map(Number)
      expect(fuseTemperatureFactor(celsius, 'f')).toBeCloseTo(share, 12)
    }
    expect(fuseTemperatureFactor(75, 'f')).toBeCloseTo(0.8, 12)
    expect(fuseTemperatureFactor(-20, 'f')).toBe(1)
    expect(() => fuseTemperatureFactor(126, 'f')).toThrow()
  })

  it('asks 31.37 A for 20 A at 65 °C, the next rating of type E is 40 A', () => {
    expectPrinted(thermalRating(20, 0.75, 0.85), '31.37')
    expect(nextRating({ lowestA: 31.37, systemVoltageV: 12, types: ['E'] }, 't')?.ratingA).toBe(40)
  })

  for (const [load, rating] of [
    [48.31, 50],
    [62, 70],
    [133.99, 150],
    [78.43, 80],
    [55.56, 60],
    [50, 50],
    [500, 500]
  ] as const) {
    it(`rounds ${load} A up to ${rating} A`, () =>
      expect(
        nextRating(
          {
            lowestA: load,
            systemVoltageV: 12,
            breaking: { openCircuitV: 12.6, loopOhm: 0.01, stated: false, described: false }
          },
          't'
        )?.ratingA
      ).toBe(rating))
  }

  it('has nothing above 500 A at 12 V and 300 A at 48 V, and prefers a family that breaks the fault', () => {
    expect(nextRating({ lowestA: 501, systemVoltageV: 12 }, 't')).toBeUndefined()
    expect(nextRating({ lowestA: 301, systemVoltageV: 48 }, 't')).toBeUndefined()
    // 30 A cold is 0.057 V/30 A = 1.9 mΩ: a source of 12 V and 10.1 mΩ drives exactly 1000 A through it
    const behind = (loopOhm: number) => ({ openCircuitV: 12, loopOhm, stated: true, described: false })
    const type = (loopOhm: number) =>
      nextRating({ lowestA: 30, systemVoltageV: 12, breaking: behind(loopOhm) }, 't')?.family.type
    expect(type(0.0101 * (1 + 1e-9))).toBe('C')
    expect(type(0.01009)).toBe('SF30')
    const at48 = { lowestA: 120, systemVoltageV: 48, breaking: behind(0.03) }
    expect(nextRating(at48, 't')?.family.type).toBe('single-bolt')
  })

  it('takes a family that breaks more behind a battery that was described, and the usual one where nobody knows', () => {
    const link = (loopOhm: number, described: boolean, lowestA = 100, systemVoltageV = 12) => {
      const breaking = { openCircuitV: 12.8, loopOhm, stated: false, described }
      const { family, ratingA } = nextRating({ lowestA, systemVoltageV, breaking }, 't') ?? {}
      return `${family?.type} ${ratingA}`
    }
    // 12.8 V over 3 + 0.57 mΩ are 3585 A, over 0.6 + 0.57 mΩ 10 940 A, over 0.1 + 0.143 mΩ 52 600 A
    expect(link(0.003, false)).toBe('SF30 100')
    expect(link(0.003, true)).toBe('marine-strip 100')
    expect(link(0.003, true, 120)).toBe('marine-strip 130')
    expect(link(0.0006, true)).toBe('class-t 100')
    expect(link(0.0001, true, 400)).toBe('SF51 400')
    expect(link(0.0001, true, 100, 48)).toBe('class-t 100')
    expect(link(0.02, true)).toBe('E 100')
    // a family that is asked for is obeyed
    const breaking = { openCircuitV: 12.8, loopOhm: 0.003, stated: true, described: true }
    const asked = nextRating({ lowestA: 100, systemVoltageV: 12, breaking, types: ['SF30'] }, 't')
    expect(asked?.family.type).toBe('SF30')
  })

  it('reckons faults: 708.3 A clears a 100 A fuse seven times over, 3657 A is beyond 2000', () => {
    expectPrinted(faultCurrent(12.6, 0.01, 0.00499 + 0.0018 + 0.001), '708.3')
    expectPrinted(faultCurrent(12.8, 0.003, 0.0005), '3657')
    expectPrinted(batteryOhmFromCranking(600) * 1000, '9.0')
    // two data-sheet points at 40 A, 75 mV and 96 mV, bracket the rule
    expect(fuseOhm(40)).toBeGreaterThan(0.075 / 40)
    expect(fuseOhm(40)).toBeLessThan(0.096 / 40)
  })

  it('lets 4860 A²s through a 30 A type C fuse at 600 %: 16 AWG with k 115 survives', () => {
    expect(letThroughA2s('C', 30, 180)).toBeCloseTo(4860, 6)
    expect(letThroughA2s('C', 30, 1000)).toBeCloseTo(4860, 6)
    expect(letThroughA2s('C', 30, 35)).toBeUndefined()
    const c30 = { family: fuseFamilies[0], ratingA: 30 }
    const copper16 = { areaM2: 1.309e-6, material: 'copper', startC: 70, endC: 160 } as const
    expect(cableFault(c30, 180, copper16)).toMatchObject({ survives: true, clearsQuickly: true, multiple: 6 })
    expect(cableFault(c30, 35, copper16)).toMatchObject({ survives: false, clearsQuickly: false })
  })

  it('is selective at 150 over 80 A, not at 100 over 80', () => {
    expectPrinted(selectivity(150, 80).ratio, '1.875')
    expect(selectivity(150, 80).selective).toBe(true)
    expect(selectivity(160, 100).selective).toBe(true)
    expect(selectivity(100, 80).selective).toBe(false)
  })
})
