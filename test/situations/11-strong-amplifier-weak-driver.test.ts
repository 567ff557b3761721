/** A driver of 150 W on an amplifier of 700 W: the gain is set to the driver, √(P·R), not to the amplifier. Ohm's law. */
import { describe, expect, it } from 'vitest'
import { hatchback, planned } from './workshop.ts'

describe('a driver of 150 W on 700 W', () => {
  const gentle = {
    ...hatchback,
    driver: { ...hatchback.driver, sheet: { ...hatchback.driver.sheet, powerW: 150 }, coils: { count: 1, ratedOhm: 4 } }
  }

  it('has the gain of 150 W into 4 Ω, 24.5 V at most, and is told that the amplifier can burn it', async () => {
    const { text } = await planned(gentle)
    const gainV = Number(/gain set to ([\d.]+) V/.exec(text)?.[1])
    expect(gainV).toBeGreaterThan(15)
    expect(gainV).toBeLessThanOrEqual(24.6)
  })

  it('stands in the closed box of its size, 20 to 45 L: the power changes the gain, not the air (common practice, no source)', async () => {
    const { part } = await planned(gentle)
    expect(part('box').volume.netL).toBeGreaterThan(20)
    expect(part('box').volume.netL).toBeLessThan(45)
  })

  it('is fused for what the amplifier can draw, not for what the driver takes', async () => {
    const { fuseA } = await planned(gentle)
    expect(fuseA).toBeGreaterThanOrEqual(420 / 0.85 / 14.4)
  })

  it('has the wire of the amplifier too: 6 AWG or one thicker', async () => {
    const { cableMm2 } = await planned(gentle)
    expect(cableMm2).toBeGreaterThan(12)
    expect(cableMm2).toBeLessThan(25)
  })
})
