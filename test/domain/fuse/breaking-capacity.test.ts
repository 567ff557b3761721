/** What a fuse may have to break: the strong end of the battery, the cold fuse and the way to it, worked by hand. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FuseRequest } from '../../../src/contract/supply/supply-fuses.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { batteryOhm, lowestBatteryOhm } from '../../../src/domain/circuit/fuse/battery-source.ts'
import { rateFuse } from '../../../src/domain/circuit/fuse/rate-fuse.ts'
import { supplyFuses } from '../../../src/http/operations/supply/supply-fuses.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(supplyFuses)

const cool = { insulationC: 105, ambientC: 50 } as const
const base: FuseRequest = { currentA: 46.5, systemVoltageV: 12, cable: { designation: '4 AWG', ...cool } }
const breakingOf = (request: FuseRequest) => rateFuse(request).cautions.find(({ code }) => code === 'breaking-capacity')
const small = (currentA: number, source: FuseRequest['source'] = {}): FuseRequest => ({
  ...base,
  currentA,
  heavyCurrentA: currentA / 3,
  cable: { designation: '12 AWG', ...cool },
  source
})

describe('the largest fault a fuse must break', () => {
  it('takes the strong end of an undescribed battery: 12.8 V over 3 mΩ and 1.14 mΩ of a cold 50 A link, 3092 A', () => {
    const { result, assumed } = rateFuse(base)
    expectPrinted(result.prospectiveA, '3092')
    expect(result.prospectiveA).toBeCloseTo(12.8 / (0.003 + 0.057 / 50), 6)
    expect(assumed.find(({ field }) => field === 'source.resistanceOhm')?.value).toBe(0.003)
    expect(breakingOf(base)?.level).toBe('care')
    // a guess of the battery chooses no other family; it names one
    expect(result.fuse.type).toBe('SF30')
    expect(breakingOf(base)?.message).toContain('breaks 6000 A')
  })

  it('gives both ends of a battery of 640 A cold cranking: 3.125 mΩ to break, 8.4375 mΩ to clear', () => {
    const ask = [{ coldCrankingA: 640 }, 12, assumptions()] as const
    expect(lowestBatteryOhm(...ask)).toBeCloseTo(0.003125, 12)
    expect(batteryOhm(ask[0], 12, ask[2], '')).toBeCloseTo(0.0084375, 12)
  })

  it('never takes a starter battery for weaker than the boat standard: ABYC E-11 asks 1500, 3000 and 5000 A by cold cranking current (second-hand)', () => {
    for (const [coldCrankingA, askedA] of [
      [650, 1500],
      [1100, 3000],
      [1101, 5000]
    ] as const) {
      const main = { ...base, currentA: 190, cable: { designation: '4/0 AWG', ...cool } }
      expect(rateFuse({ ...main, source: { coldCrankingA } }).result.prospectiveA).toBeGreaterThan(askedA)
    }
  })

  it('counts the way to the fuse: 12.8 V, 3 mΩ, 0.5 mΩ and the link give 2759 A', () => {
    const source = { openCircuitV: 12.8, resistanceOhm: 0.003, leadOhm: 0.0005 }
    expectPrinted(rateFuse({ ...base, source }).result.prospectiveA, '2759')
    // 300 mm of 4 AWG copper at 0.8315 mΩ/m with 2 % for the strands: 0.249 mΩ
    const planned = rateFuse({ ...base, source: { openCircuitV: 12.8, resistanceOhm: 0.003 }, distanceM: 0.3 })
    expect(planned.result.prospectiveA).toBeCloseTo(12.8 / (0.003 + 0.00114 + 0.3 * 0.000_831_5), -1)
  })

  it('gives small loads their small blade: 1, 3 and 3.5 A take 2 to 5 A links that limit the fault below 1000 A', async () => {
    for (const [currentA, ratingA] of [
      [1, 1],
      [3, 3],
      [3.5, 4],
      [5, 5]
    ] as const) {
      const { body } = await post('/v1/supply/fuses', small(currentA))
      expect(body.result.fuse, `${currentA} A`).toMatchObject({ ratingA, form: 'regular blade' })
      expect(body.result.prospectiveA).toBeLessThan(1000)
      expect(body.cautions.map(({ code }: { code: string }) => code)).not.toContain('breaking-capacity')
    }
  })

  it('leaves 10 A a 10 A blade and says what it cannot break: 12.8 V over 8.7 mΩ, 1471 A', () => {
    const { result } = rateFuse(small(9.5))
    expect(result.fuse).toMatchObject({ ratingA: 10, breakingA: 1000 })
    expectPrinted(result.prospectiveA, '1471')
    expect(breakingOf(small(9.5))?.level).toBe('care')
    // 30 mΩ of cable before it, as behind a distribution block, and it breaks
    expect(breakingOf(small(9.5, { leadOhm: 0.03 }))).toBeUndefined()
  })

  it('tells the truth of lithium: 100 Ah may be 0.6 mΩ, 13.4 V over 1.74 mΩ are 7.7 kA, a starter battery is not', () => {
    const lithium = { ...base, source: { chemistry: 'lithium', capacityAh: 100 } } as const
    expectPrinted(rateFuse(lithium).result.prospectiveA, '7701')
    // a battery that is described gets a fuse that breaks it
    expect(rateFuse(lithium).result.fuse).toMatchObject({ type: 'class-t', ratingA: 50, breakingA: 20_000 })
    expect(breakingOf(lithium)).toBeUndefined()
    const strips = { ...lithium, types: ['SF30'] } as const
    expect(breakingOf(strips)).toMatchObject({ level: 'care', figures: { breakingA: 2000 } })
    expect(breakingOf(strips)?.message).toContain('breaks 20000 A')
    // no family of the list: 12.8 V over 0.1 and 0.38 mΩ
    const bank = { ...base, currentA: 140, heavyCurrentA: 50, cable: { designation: '1/0 AWG', ...cool } }
    const huge = { ...bank, types: ['SF51'], source: { resistanceOhm: 1e-4 } } as const
    expect(breakingOf(huge)?.message).toContain('None of the families listed here breaks that')
    // 2 V over 320 A are 6.25 mΩ: 1732 A
    expect(breakingOf({ ...base, source: { coldCrankingA: 320 } })).toBeUndefined()
  })

  it('stops only on a given resistance for which a listed family would do, and asks for the kind of a capacity', async () => {
    const blade = { ...base, types: ['E'], source: { resistanceOhm: 0.0062 } } as const
    expect(breakingOf(blade)).toMatchObject({ level: 'stop' })
    expect(breakingOf(blade)?.message).toContain('ISO 8820-5')
    expect(breakingOf({ ...blade, types: ['SF30'] })).toBeUndefined()
    const { status, body } = await post('/v1/supply/fuses', { ...base, source: { capacityAh: 90 } })
    expect([status, body.errors[0].pointer]).toEqual([422, '/source/chemistry'])
  })

  it('never says less than a plain division and never calls a link safe that is not', () => {
    const requests = fc.record({
      currentA: fc.double({ min: 0.5, max: 90, noNaN: true }),
      resistanceOhm: fc.double({ min: 0.0005, max: 0.02, noNaN: true }),
      leadOhm: fc.double({ min: 0, max: 0.02, noNaN: true })
    })
    fc.assert(
      fc.property(requests, ({ currentA, ...source }) => {
        const request = { ...small(currentA, source), cable: { designation: '1/0 AWG', ...cool } }
        const { fuse } = rateFuse(request).result
        const faultA = 12.8 / (source.resistanceOhm + source.leadOhm + 0.057 / fuse.ratingA)
        expect(breakingOf(request) === undefined).toBe(faultA <= fuse.breakingA)
        expect(fuse.ratingA).toBeLessThanOrEqual(Math.max(2 * currentA * 2, 60))
      }),
      { seed: 14, numRuns: 300 }
    )
  })
})
