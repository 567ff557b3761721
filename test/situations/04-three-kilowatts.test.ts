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

  it('have one fuse of 300 to 350 A, what the three of 100 A in the amplifier come to, and no blade', async () => {
    const { fuseA, part } = await planned(loud)
    expect(fuseA).toBeGreaterThanOrEqual(300)
    expect(fuseA).toBeLessThanOrEqual(350)
    expect(part('cable').fuse.type).not.toMatch(/^[A-F]$/)
  })

  it('want loudspeaker wire of 12 AWG or thicker: 34 A in each core at 2240 W and 2 Ω (P = I²·R)', async () => {
    const { speakerMm2 } = await planned(loud)
    expect(speakerMm2).toBeGreaterThan(3.2)
  })

  it('are offered the box a builder would cut for loudness, 45 to 70 L for each driver of twelve inches', async () => {
    const { body } = await planned(loud)
    const louder = body.result.choice.alternatives.find(({ goal }: { goal: string }) => goal === 'loud')
    expect(louder.figures.netVolumeL / 2).toBeGreaterThan(45)
    expect(louder.figures.netVolumeL / 2).toBeLessThan(70)
    // more air than the box of everyday listening, and louder for it where the bass is felt
    expect(louder.figures.netVolumeL).toBeGreaterThan(body.result.choice.figures.netVolumeL)
    expect(louder.figures.levelDb[2]).toBeGreaterThan(body.result.choice.figures.levelDb[2])
  })
})
