import { describe, expect, it } from 'vitest'
import { coilWarming, resistanceRatio, steadyCoilC } from '../../../src/domain/enclosure/limits/coil-heating.ts'
import { expectPrinted } from '../../support/printed.ts'

const path = { coilKPerW: 1.1, coilTimeConstantS: 8, magnetKPerW: 0.4, magnetTimeConstantS: 1500 }

describe('coil heating', () => {
  // IEC 60028 (from memory): 0.00393 per kelvin at 20 °C
  it('raises the resistance of copper to 1.7074 and of aluminium to 1.7254 at 200 °C', () => {
    expectPrinted(resistanceRatio('copper', 200), '1.7074')
    expectPrinted(resistanceRatio('aluminium', 200), '1.7254')
    expect(resistanceRatio('copper', 20)).toBe(1)
    expectPrinted(20 * Math.log10(resistanceRatio('copper', 200)), '4.6467')
  })

  it('settles where heat made and heat led away are equal', () => {
    expect(steadyCoilC(() => 100, path, 25)).toBeCloseTo(175, 9)
    const heat = (coilC: number) => 400 / resistanceRatio('copper', coilC)
    const settled = steadyCoilC(heat, path, 25)
    expect((settled - 25) / 1.5).toBeCloseTo(heat(settled), 8)
    // second path: T - 25 = 600/(1 + a(T - 20)) is a quadratic in T
    const a = 0.00393
    const [linear, constant] = [1 - a * 20 - a * 25, -25 * (1 - a * 20) - 600]
    expect(settled).toBeCloseTo((-linear + Math.sqrt(linear ** 2 - 4 * a * constant)) / (2 * a), 8)
  })

  it('follows the exponential of each stage for constant heat', () => {
    const times = [1, 8, 60, 600, 3600]
    for (const { timeS, coilC } of coilWarming(() => 80, path, 20, times)) {
      const expected = 20 + 88 * (1 - Math.exp(-timeS / 8)) + 32 * (1 - Math.exp(-timeS / 1500))
      expect(coilC).toBeCloseTo(expected, 9)
    }
  })

  it('approaches the steady temperature, and never falls on the way when the heat falls with warmth', () => {
    const heat = (coilC: number) => 300 / resistanceRatio('copper', coilC)
    const moments = coilWarming(heat, path, 25, [10, 60, 300, 1800, 36_000])
    expect(moments.at(-1)?.coilC).toBeCloseTo(steadyCoilC(heat, path, 25), 4)
    const temperatures = moments.map(({ coilC }) => coilC)
    expect([...temperatures].sort((a, b) => a - b)).toEqual(temperatures)
  })

  it('stops at 1000 °C instead of running away', () => {
    expect(steadyCoilC(() => 1e9, path, 25)).toBeCloseTo(1000, 9)
    expect(coilWarming(() => 1e9, path, 25, [60])[0]?.coilC).toBe(1000)
  })
})
