/** The amplifier burns below 2 Ω, the two drivers could be wired to 1 Ω: nobody wires them so. Maker's limit, no judgement. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('two drivers of twice 2 Ω on an amplifier that takes no less than 2 Ω', () => {
  const twoOhm = {
    ...estate,
    amplifier: {
      ...estate.amplifier,
      minimumOhm: 2,
      ratings: estate.amplifier.ratings.filter(({ loadOhm }) => loadOhm >= 2)
    }
  }

  it('are wired to 2 Ω or more', async () => {
    const { part, stops } = await planned(twoOhm)
    const { best } = part('matching')
    expect(best.loadOhm).toBeGreaterThanOrEqual(2)
    expect(best.verdict).not.toBe('below-minimum')
    expect(stops).toEqual([])
  })

  it('have nothing to connect to where the amplifier takes no less than 8 Ω and only 1.3 Ω and less can be wired', async () => {
    const coils = { count: 1, ratedOhm: 1 } as const
    const { verdict } = await planned({
      ...twoOhm,
      driver: { ...estate.driver, coils, sheet: { ...estate.driver.sheet, reOhm: 0.85 } },
      driverCount: 1,
      amplifier: { ...twoOhm.amplifier, minimumOhm: 8, ratings: [{ loadOhm: 8, powerW: 300 }] }
    })
    expect(['stop', 'incomplete']).toContain(verdict)
  })

  it('have the wire, the fuse and the box of 700 W: what the amplifier bears below 2 Ω changes neither copper nor wood', async () => {
    const { cableMm2, fuseA, netL, speakerMm2 } = await planned(twoOhm)
    expect(cableMm2).toBeGreaterThan(20)
    expect(cableMm2).toBeLessThan(35)
    expect(fuseA).toBeGreaterThanOrEqual(60)
    expect(fuseA).toBeLessThanOrEqual(80)
    // 35 to 95 L for each twelve-inch driver in a vented box, common practice, no source
    expect((netL ?? 0) / 2).toBeGreaterThan(35)
    expect((netL ?? 0) / 2).toBeLessThan(95)
    expect(speakerMm2).toBeGreaterThanOrEqual(1.3)
  })
})
