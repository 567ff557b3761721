import { describe, expect, it } from 'vitest'
import { airOf, dryAir, standardAir } from '../../../src/domain/air/air.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { DesignError } from '../../../src/domain/design-error.ts'

describe('air', () => {
  it('is 1.2250 kg/m³ and 340.29 m/s at 15 °C (ISO 2533, second-hand), within the rounding of its own reference', () => {
    const { densityKgPerM3, soundSpeedMPerS } = dryAir(15, 101_325)
    expect(Math.abs(densityKgPerM3 / 1.225 - 1)).toBeLessThan(1e-4)
    expect(Math.abs(soundSpeedMPerS / 340.294 - 1)).toBeLessThan(2e-4)
  })

  it('follows c = 343.2·√(T/293.15) from −20 to 40 °C (ISO 9613-1 formula A.5, second-hand)', () => {
    for (const [celsius, speed] of [
      [-20, 318.927],
      [0, 331.286],
      [20, 343.2],
      [40, 354.714]
    ] as const) {
      expect(Math.abs(dryAir(celsius, 101_325).soundSpeedMPerS / speed - 1)).toBeLessThan(1e-4)
    }
  })

  it('is as stiff at every temperature, and in proportion to the pressure (ρc² = γp)', () => {
    for (const celsius of [-10, 20, 50]) {
      expect(dryAir(celsius, 101_325).stiffnessPa / standardAir.stiffnessPa).toBeCloseTo(1, 12)
    }
    expect(dryAir(20, 50_662.5).stiffnessPa / standardAir.stiffnessPa).toBeCloseTo(0.5, 12)
  })

  it('says what it assumed, takes the two properties as given, and refuses halves and both', () => {
    const assume = assumptions()
    expect(airOf(undefined, assume)).toEqual(standardAir)
    expect(assume.list.map(({ field }) => field)).toEqual(['air.temperatureC', 'air.pressurePa'])
    expect(airOf({ densityKgPerM3: 1.1, soundSpeedMPerS: 350 }, assume).stiffnessPa).toBeCloseTo(1.1 * 350 ** 2, 9)
    expect(() => airOf({ densityKgPerM3: 1.1 }, assume)).toThrow(DesignError)
    expect(() => airOf({ densityKgPerM3: 1.1, soundSpeedMPerS: 350, temperatureC: 20 }, assume)).toThrow(DesignError)
  })
})
