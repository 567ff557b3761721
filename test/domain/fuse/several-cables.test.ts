/** One fuse before several cables, and the ends of what it may be: equal is allowed, the weakest decides, each is named. */
import { describe, expect, it } from 'vitest'
import type { FuseRequest } from '../../../src/contract/supply/supply-fuses.ts'
import { rateFuse } from '../../../src/domain/circuit/fuse/rate-fuse.ts'

/** In the air of the table: 8 AWG carries 80 A, 4 AWG 160 A, 1/0 AWG 285 A (33 CFR 183.425 Table 5, 105 °C). */
const cable = (designation: string) => ({ designation, insulationC: 105, ambientC: 30 }) as const
const base: FuseRequest = { currentA: 60, systemVoltageV: 12, cable: cable('1/0 AWG') }

describe('a fuse before several cables', () => {
  it('may be what the weakest carries, in whatever order they are named', () => {
    const highest = (first: string, second: string) =>
      rateFuse({ ...base, cable: cable(first), alsoProtects: [cable(second)] }).result.bounds.highestA
    expect(highest('1/0 AWG', '8 AWG')).toBe(80)
    expect(highest('8 AWG', '1/0 AWG')).toBe(80)
    expect(highest('4 AWG', '1/0 AWG')).toBe(160)
  })

  it('lists them in the order of the request', () => {
    const { cables } = rateFuse({ ...base, alsoProtects: [cable('8 AWG'), cable('4 AWG')] }).result
    expect(cables.map(({ designation, ampacityA }) => [designation, ampacityA])).toEqual([
      ['1/0 AWG', 285],
      ['8 AWG', 80],
      ['4 AWG', 160]
    ])
  })

  it('names the one whose metal nobody knows', () => {
    const unknown = { ...cable('4 AWG'), conductor: 'unknown' } as const
    const places = (request: FuseRequest) =>
      rateFuse(request)
        .cautions.filter(({ code }) => code === 'composition-unknown')
        .map(({ at }) => at)
    expect(places({ ...base, cable: unknown })).toEqual(['cable'])
    expect(places({ ...base, alsoProtects: [cable('4 AWG'), unknown] })).toEqual(['alsoProtects[1]'])
    expect(places({ ...base, alsoProtects: [cable('4 AWG')] })).toEqual([])
  })

  it('may be just the rating the cable carries, for a load of just so much: 80 A on 8 AWG (In ≤ Iz)', () => {
    const { fuse, bounds } = rateFuse({ ...base, currentA: 80, heavyCurrentA: 50, cable: cable('8 AWG') }).result
    expect([fuse.ratingA, bounds.highestA]).toEqual([80, 80])
    const more = { ...base, currentA: 80.01, heavyCurrentA: 50, cable: cable('8 AWG') }
    expect(() => rateFuse(more)).toThrow(/8 AWG/)
  })

  it('advises the cable that carries just the load and its fuse: 80 A on 10 AWG is sent to 8 AWG, 80 A', () => {
    expect(() => rateFuse({ ...base, currentA: 80, heavyCurrentA: 50, cable: cable('10 AWG') })).toThrow(/use 8 AWG/)
    expect(() => rateFuse({ ...base, currentA: 80.5, heavyCurrentA: 50, cable: cable('10 AWG') })).toThrow(/use 6 AWG/)
  })

  it('counts 20 °C copper before it once out, and says what it took', () => {
    const lead = (distanceM?: number) =>
      rateFuse({ ...base, ...(distanceM === undefined ? {} : { distanceM }) }).assumed.find(
        ({ field }) => field === 'source.leadOhm'
      )
    expect(lead()?.value).toBe(0)
    expect(lead()?.why).toContain('battery post')
    // 1/0 AWG: 53.475 mm², 17.241 nΩ·m and 2 % for the strands: 0.32886 mΩ/m
    expect(lead(0.5)?.value).toBeCloseTo(0.5 * 0.32886e-3, 8)
    expect(lead(0.5)?.why).toContain('piece of cable')
  })
})
