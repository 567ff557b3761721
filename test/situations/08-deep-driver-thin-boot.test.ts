/** A driver of 200 mm depth against 150 mm of room: no cabinet maker takes the order. Geometry. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a driver deeper than its boot', () => {
  it('is not called ready, and has no shopping list of boards', async () => {
    const { verdict, part } = await planned({
      ...estate,
      driver: { ...estate.driver, mounting: { ...estate.driver.mounting, mountingDepthMm: 200 } },
      car: { ...estate.car, space: { widthMm: 980, heightMm: 460, depthMm: 150 } }
    })
    expect(['stop', 'incomplete']).toContain(verdict)
    expect(part('sheets')).toBeUndefined()
  })
})
