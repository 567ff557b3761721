/** Three kilowatts of class D off one 12 V starter battery: 294 A. A seasoned installer asks for copper as thick as a thumb and more alternator. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('three kilowatts off a 12 V car', () => {
  const loud = {
    ...estate,
    driver: { ...estate.driver, sheet: { ...estate.driver.sheet, powerW: 1500 } },
    amplifier: {
      ...estate.amplifier,
      onboardFusesA: [100, 100, 100],
      ratings: [
        { loadOhm: 2, powerW: 3000 },
        { loadOhm: 1, powerW: 3000 }
      ]
    }
  }

  it('never run through less than 95 mm² in all: 3 % of 12 V over 5.9 m at 294 A (ρ·l·I/ΔU = 85 mm², arithmetic)', async () => {
    const { cableMm2, part, stops } = await planned(loud)
    const { parallel } = part('cable')
    expect(cableMm2 === undefined ? parallel !== undefined || stops.length > 0 : cableMm2 > 84).toBe(true)
  })

  it('are more than the alternator gives: the listener is told that dense bass empties the battery', async () => {
    const { part, stops, cares } = await planned(loud)
    expect(part('current').charging.idleHeavySurplusA).toBeLessThan(0)
    expect([...stops, ...cares].join(' ')).toMatch(/alternator|charging|battery/)
  })
})
