/** A lithium battery gives thousands of amperes into a short: a small blade cannot break them. Common practice, no source. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a lithium battery of 100 A·h', () => {
  const lithium = {
    ...estate,
    supply: {
      ...estate.supply,
      source: { chemistry: 'lithium', capacityAh: 100 },
      battery: { capacityAh: 100, chemistry: 'lithium' }
    }
  }

  it('asks for a fuse that breaks kiloamperes, or says that this one does not', async () => {
    const { part, cares, stops } = await planned(lithium)
    const { fuse, prospectiveA } = part('fuse')
    expect(prospectiveA).toBeGreaterThan(2000)
    // 700 W of class D: 57 A at 14.4 V, 69 A at 12 V; a larger fuse would not guard 4 AWG
    expect(fuse.ratingA).toBeGreaterThanOrEqual(60)
    expect(fuse.ratingA).toBeLessThanOrEqual(100)
    expect(fuse.breakingA >= prospectiveA || [...cares, ...stops].includes('breaking-capacity')).toBe(true)
  })

  it('changes the fuse, not the wire and not the box: 4 AWG or one thicker, 35 to 95 L for each driver', async () => {
    const { cableMm2, netL, cares } = await planned(lithium)
    expect(cableMm2).toBeGreaterThan(20)
    expect(cableMm2).toBeLessThan(35)
    expect((netL ?? 0) / 2).toBeGreaterThan(35)
    expect((netL ?? 0) / 2).toBeLessThan(95)
    expect(cares).toContain('lithium-battery')
  })
})
