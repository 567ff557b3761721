/** The fuse two metres from the battery: the cable before it burns in a crash. 33 CFR 183.455: 7 in, 40 in if sheathed. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a fuse far from the battery', () => {
  const at = (fuseDistanceMm: number, sheathed: boolean) =>
    planned({ ...estate, supply: { ...estate.supply, fuseDistanceMm, sheathed } })
  const told = ({ notes, cares, stops }: Awaited<ReturnType<typeof at>>) =>
    stops.includes('fuse-too-far') ? 3 : cares.includes('fuse-too-far') ? 2 : Number(notes.includes('fuse-too-far'))

  it('is silent at 150 mm and graver the further it is', async () => {
    const levels = [await at(150, false), await at(400, false), await at(2500, false)].map(told)
    expect(levels[0]).toBe(0)
    expect(levels[2]).toBeGreaterThanOrEqual(2)
    expect(levels.toSorted()).toEqual(levels)
  })

  it('is of the right size in the wrong place: wire, fuse and box are those of 700 W, and nothing is called ready', async () => {
    const { cableMm2, fuseA, netL, verdict } = await at(2500, false)
    expect(cableMm2).toBeGreaterThan(20)
    expect(cableMm2).toBeLessThan(35)
    expect(fuseA).toBeGreaterThanOrEqual(60)
    expect(fuseA).toBeLessThanOrEqual(80)
    expect((netL ?? 0) / 2).toBeGreaterThan(35)
    expect((netL ?? 0) / 2).toBeLessThan(95)
    expect(verdict).toBe('stop')
  })
})
