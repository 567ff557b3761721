/**
 * A family with an estate car wants the low end of their music, not a contest. Two twelve-inch drivers of 450 W, 700 W of class D,
 * half the boot. Common practice, no source, but for the arithmetic.
 */
import { describe, expect, it } from 'vitest'
import { estate, planned } from './workshop.ts'

describe('a family estate with two drivers and 700 W', () => {
  it('gets a box that goes into its boot, opened, tuned to the low twenties to high thirties, and reaches below 35 Hz', async () => {
    const { outerMm, part, stops, verdict } = await planned(estate)
    const { widthMm, heightMm, depthMm } = estate.car.space
    const [width, height, depth] = outerMm
    expect([width > 200, height > 200, depth > 200]).toEqual([true, true, true])
    expect([width <= widthMm, height <= heightMm, depth <= depthMm]).toEqual([true, true, true])
    expect(part('box').volume.netL / 2).toBeGreaterThan(35)
    expect(part('box').volume.netL / 2).toBeLessThan(95)
    expect(part('port').recommended.airSpeedMPerS).toBeLessThan(34)
    expect(part('port').recommended.tuningHz).toBeGreaterThan(22)
    expect(part('port').recommended.tuningHz).toBeLessThan(38)
    expect(part('response').scalars.f3Hz).toBeLessThan(35)
    expect(stops).toEqual([])
    expect(verdict).toBe('take-care')
  })

  it('needs 4 AWG and 60 to 80 A: 700 W at 85 % off 12 V is 68.6 A, 3 % of 12 V over 5.9 m is 21 mm² (ρ·l·I/ΔU, both arithmetic)', async () => {
    const { cableMm2, fuseA, part } = await planned(estate)
    expect(part('current').currents.fullSineA).toBeCloseTo(68.6, 0)
    expect(cableMm2).toBeGreaterThan(20)
    expect(cableMm2).toBeLessThan(35)
    expect(fuseA).toBeGreaterThanOrEqual(60)
    expect(fuseA).toBeLessThanOrEqual(80)
  })

  it('is told to strap down a box of this weight and to mind its ears', async () => {
    const { cares } = await planned(estate)
    expect(cares).toEqual(
      expect.arrayContaining(['heavy-box', 'box-restraint', 'hearing-exposure', 'wood-dust', 'fuse-last'])
    )
  })

  it('has two-core wire of 16 AWG or thicker to its loudspeakers: 2 m of it are under 5 % of 2 Ω (common practice; ρ·l/A = 0.054 Ω)', async () => {
    const { speakerMm2 } = await planned(estate)
    expect(speakerMm2).toBeGreaterThanOrEqual(1.3)
    expect(speakerMm2).toBeLessThan(6)
  })

  it('is carried by two: 40 to 50 kg, boards of 18 mm at 700 to 750 kg/m³ and two drivers of 8.2 kg', async () => {
    const { part } = await planned(estate)
    const { massKg, volume } = part('box')
    expect(massKg).toBeGreaterThan(16.4 + 0.7 * volume.boardL - 1)
    expect(massKg).toBeLessThan(16.4 + 0.75 * volume.boardL + 1)
  })
})
