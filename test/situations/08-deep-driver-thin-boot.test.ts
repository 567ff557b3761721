/** A driver of 200 mm depth against 150 mm of room: no cabinet maker takes the order. Geometry. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a driver deeper than its boot', () => {
  const deep = {
    ...estate,
    driver: { ...estate.driver, mounting: { ...estate.driver.mounting, mountingDepthMm: 200 } },
    car: { ...estate.car, space: { widthMm: 980, heightMm: 460, depthMm: 150 } }
  }

  it('is not called ready, and has no shopping list of boards', async () => {
    const { verdict, part } = await planned(deep)
    expect(['stop', 'incomplete']).toContain(verdict)
    expect(part('sheets')).toBeUndefined()
  })

  it('is told the depth a rule shows: 200 mm of driver, 20 mm behind it (common practice), a board of 18 mm, 4 mm of carpet twice', async () => {
    const { reasons } = await planned(deep)
    expect(reasons).toContain(`at least ${200 + 20 + 18} mm in depth`)
    expect(reasons).toContain(`the limit is ${150 - 2 * 4} mm`)
    expect(reasons).toContain('100 mm deeper')
  })

  it('leaves the electrician his work: wire and fuse of 700 W stand', async () => {
    const { cableMm2, fuseA, netL } = await planned(deep)
    expect(netL).toBeUndefined()
    expect(cableMm2).toBeGreaterThan(20)
    expect(cableMm2).toBeLessThan(35)
    expect(fuseA).toBeGreaterThanOrEqual(60)
    expect(fuseA).toBeLessThanOrEqual(80)
  })
})
