/** Where an efficiency stops being one of its class, and a converter one that will do: both sides of each bound. */
import { describe, expect, it } from 'vitest'
import type { AmplifierOnSupply, CurrentRequest } from '../../../src/contract/supply/supply-current.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'

const told = (request: CurrentRequest, code: string) =>
  supplyCurrent(request).cautions.find(caution => caution.code === code)
const alone = (amplifier: Omit<AmplifierOnSupply, 'powerW'>): CurrentRequest => ({
  amplifiers: [{ powerW: 600, ...amplifier }],
  systemVoltageV: 12
})

describe('a stated efficiency', () => {
  // Output over input at full sine, converter included; common practice, no source. A class B stage ends at π/4.
  for (const [name, low, high] of [
    ['A', 0.15, 0.25],
    ['AB', 0.45, 0.65],
    ['B', 0.5, 0.785],
    ['D', 0.75, 0.92],
    ['G', 0.55, 0.75],
    ['H', 0.6, 0.75]
  ] as const)
    it(`of class ${name} is doubted above ${high} and below half of ${low}`, () => {
      const at = (efficiency: number) => told(alone({ class: name, efficiency }), 'efficiency-implausible')
      expect(at(high + 0.005)?.figures).toMatchObject({ lowest: low, highest: high })
      expect(at(high - 0.005)).toBeUndefined()
      expect(at(low / 2 + 0.005)).toBeUndefined()
      expect(at(low / 2 - 0.005)).toBeDefined()
    })

  it('of class B ends where a sine at clipping ends: π/4 (derived)', () => {
    expect(told(alone({ class: 'B', efficiency: 0.7854 }), 'efficiency-implausible')?.figures?.highest).toBe(0.785)
    expect(Math.PI / 4).toBeCloseTo(0.785, 3)
  })

  it('without a class is a switching one where no class B stage behind a converter of 92 % gets: 0.72', () => {
    const of = (efficiency: number) => supplyCurrent(alone({ efficiency })).result.amplifiers[0]
    const classB = (Math.PI / 4) * 0.92
    // a linear law takes one eighth of the full draw at one eighth of the output, a class B stage its square root
    const share = (efficiency: number) => (of(efficiency)?.averageA ?? 0) / (of(efficiency)?.fullSineA ?? 1)
    expect(share(classB + 0.005)).toBeLessThan(0.25)
    expect(share(classB - 0.01)).toBeGreaterThan(Math.sqrt(1 / 8) * 0.95)
  })
})

describe('a standby current', () => {
  it('empties a battery in weeks above a milliampere (60 Ah over 1 mA are seven years, over 50 mA seven weeks)', () => {
    expect(told(alone({ class: 'D', standbyA: 0.001 }), 'parasitic-drain')).toBeUndefined()
    expect(told(alone({ class: 'D', standbyA: 0.0015 }), 'parasitic-drain')?.figures?.standbyMa).toBeCloseTo(1.5, 9)
  })
})

describe('a sizing voltage', () => {
  it('above the nominal one asks for less current than there will be: 13.8 over 12 V is 15 %', () => {
    const { cautions } = supplyCurrent({ ...alone({ class: 'D' }), systemVoltageV: 13.8 })
    const said = cautions.find(({ code }) => code === 'sizing-above-nominal')
    expect(said?.message).toMatch(/\b15 %/)
    expect(told(alone({ class: 'D' }), 'sizing-above-nominal')).toBeUndefined()
  })
})

describe('a converter between 24 and 12 V', () => {
  const on24 = (ratedA: number): CurrentRequest => ({
    amplifiers: [{ powerW: 600, class: 'D', ratedVoltageV: 14.4 }],
    systemVoltageV: 24,
    converter: { outputV: 13.8, ratedA }
  })
  // 600 W at 0.85 are 705.9 W in, 51.2 A at 13.8 V; dense bass a third of the output by the straight law
  const mostA = 600 / 0.85 / 13.8
  const heavyW = 15 + (600 / 0.85 - 15) / 3

  it('is enough where it gives the full sine, and is told of just below', () => {
    expect(told(on24(mostA * 1.001), 'converter-too-small')).toBeUndefined()
    const small = told(on24(mostA * 0.999), 'converter-too-small')
    expect(small?.level).toBe('care')
    expect(small?.figures?.fullSineA).toBeCloseTo(mostA, 6)
  })

  it('is a stop where dense bass alone is more than it gives', () => {
    expect(told(on24((heavyW / 13.8) * 1.001), 'converter-too-small')?.level).toBe('care')
    const stop = told(on24((heavyW / 13.8) * 0.999), 'converter-too-small')
    expect(stop?.level).toBe('stop')
    expect(stop?.message).toContain(`${Number((heavyW / 13.8).toPrecision(3))} A`)
  })
})
