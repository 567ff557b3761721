import { describe, expect, it } from 'vitest'
import { governingLimit } from '../../../src/domain/enclosure/limits/governing-limit.ts'
import { jetResistance } from '../../../src/domain/enclosure/limits/jet-resistance.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('the governing limit', () => {
  const frequencies = Float64Array.of(20, 30, 40, 50)
  const curves = [
    { limit: 'cone-excursion', voltageV: Float64Array.of(5, 12, 30, 60) },
    { limit: 'coil-heat', voltageV: Float64Array.of(50, 40, 28, 35) },
    { limit: 'amplifier-voltage', voltageV: Float64Array.of(30, 30, 30, 30) }
  ] as const

  it('is the lowest at each frequency, in segments that share no frequency', () => {
    const { voltageV, limit, segments } = governingLimit(frequencies, curves)
    expect([...voltageV]).toEqual([5, 12, 28, 30])
    expect(limit).toEqual(['cone-excursion', 'cone-excursion', 'coil-heat', 'amplifier-voltage'])
    expect(segments).toEqual([
      { limit: 'cone-excursion', fromHz: 20, toHz: 30 },
      { limit: 'coil-heat', fromHz: 40, toHz: 40 },
      { limit: 'amplifier-voltage', fromHz: 50, toHz: 50 }
    ])
  })

  it('does not depend on the order of the limits', () =>
    expect(governingLimit(frequencies, [...curves].reverse())).toEqual(governingLimit(frequencies, curves)))
})

describe('jet resistance', () => {
  // Ingard & Ising 1967, from memory, recomputed
  for (const [lossFactor, speed, printed] of [
    [1.5, 17, '1659.2'],
    [1.5, 34, '3318.4'],
    [0.5, 17, '553.07']
  ] as const) {
    it(`is ${printed} Pa·s/m³ for K ${lossFactor} at ${speed} m/s`, () =>
      expectPrinted(jetResistance(1.2041, 0.00785398, lossFactor, speed), printed))
  }

  it('is the first harmonic of the jet loss, by projection of sin|sin| on a sine', () => {
    const [density, area, lossFactor, speed] = [1.2, 0.01, 0.8, 12]
    const steps = 20_000
    let projected = 0
    for (let k = 0; k < steps; k++) {
      const v = speed * Math.sin((2 * Math.PI * (k + 0.5)) / steps)
      projected += (density / 2) * lossFactor * v * Math.abs(v) * (v / speed) * (2 / steps)
    }
    expect(jetResistance(density, area, lossFactor, speed)).toBeCloseTo(projected / (speed * area), 4)
  })
})
