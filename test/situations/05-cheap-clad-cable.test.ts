/** Cable of unknown metal from a bargain bin is copper-clad aluminium until shown otherwise. Resistivity from IEC 60028 and 60889, the habit common practice. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('cable of a metal nobody states', () => {
  it('is bought thicker than copper for the same load, about one and a half times', async () => {
    const copper = await planned({ ...estate, supply: { ...estate.supply, conductor: 'copper' } })
    const unknown = await planned({ ...estate, supply: { ...estate.supply, conductor: 'unknown' } })
    expect((unknown.cableMm2 ?? 0) / (copper.cableMm2 ?? 1)).toBeGreaterThan(1.2)
    expect((unknown.cableMm2 ?? 0) / (copper.cableMm2 ?? 1)).toBeLessThan(3)
  })

  it('has the fuse of its load all the same, 60 to 80 A for 700 W: the thicker cable is for the drop (common practice, no source)', async () => {
    const { fuseA } = await planned({ ...estate, supply: { ...estate.supply, conductor: 'unknown' } })
    expect(fuseA).toBeGreaterThanOrEqual(60)
    expect(fuseA).toBeLessThanOrEqual(80)
  })

  it('is laid to the very box that copper is laid to', async () => {
    const copper = await planned({ ...estate, supply: { ...estate.supply, conductor: 'copper' } })
    const unknown = await planned({ ...estate, supply: { ...estate.supply, conductor: 'unknown' } })
    expect(unknown.netL).toBeCloseTo(copper.netL ?? 0, 6)
    expect(unknown.outerMm).toEqual(copper.outerMm)
    expect((unknown.netL ?? 0) / 2).toBeGreaterThan(35)
    expect((unknown.netL ?? 0) / 2).toBeLessThan(95)
  })
})
