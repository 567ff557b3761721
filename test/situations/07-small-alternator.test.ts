/** An old van with 55 A at rated speed and a kilowatt of class AB: parked with the engine idling the lights go dim. Common practice, no source. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a kilowatt behind 55 A', () => {
  const van = {
    ...estate,
    amplifier: {
      ...estate.amplifier,
      class: 'AB',
      ratings: [
        { loadOhm: 2, powerW: 1000 },
        { loadOhm: 1, powerW: 1000 }
      ]
    },
    supply: { ...estate.supply, charging: { kind: 'alternator', ratedA: 55 } }
  }

  it('is short at idle even on average bass, and is told so', async () => {
    const { part, cares, stops } = await planned(van)
    expect(part('current').charging.idleHeavySurplusA).toBeLessThan(-20)
    expect([...cares, ...stops].join(' ')).toMatch(/charg|alternator|battery-/)
  })
})
