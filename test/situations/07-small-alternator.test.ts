/** An old van with 55 A at rated speed and a kilowatt of class AB: parked with the engine idling the lights go dim. Common practice, no source. */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a kilowatt behind 55 A', () => {
  const van = {
    ...estate,
    amplifier: {
      ...estate.amplifier,
      class: 'AB',
      onboardFusesA: [50, 50, 50],
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

  it('is wired like any kilowatt of that class: 139 A at 60 % off 12 V want 39 mm² for 3 % over 5.9 m, so 1/0 AWG, and 125 to 200 A (ρ·l·I/ΔU, Ohm’s law)', async () => {
    const { part, cableMm2, fuseA } = await planned(van)
    expect(part('current').currents.fullSineA).toBeCloseTo(138.9, 0)
    expect(cableMm2).toBeGreaterThan(39)
    expect(cableMm2).toBeLessThan(90)
    expect(fuseA).toBeGreaterThanOrEqual(125)
    expect(fuseA).toBeLessThanOrEqual(200)
  })

  it('stands in the box of its two drivers: 35 to 95 L each, tuned to the low twenties to high thirties', async () => {
    const { netL, part } = await planned(van)
    expect((netL ?? 0) / 2).toBeGreaterThan(35)
    expect((netL ?? 0) / 2).toBeLessThan(95)
    expect(part('port').recommended.tuningHz).toBeGreaterThan(22)
    expect(part('port').recommended.tuningHz).toBeLessThan(38)
  })
})
