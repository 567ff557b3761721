/** Batteries of unlike chemistry tied together are no bank. */
import { describe, expect, it } from 'vitest'
import type { BatteryChemistry } from '../../../src/contract/supply/words.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { expectPrinted } from '../../support/printed.ts'

const amplifiers = [{ powerW: 300, class: 'D', regulation: 'regulated' }] as const
const pair = (
  first: BatteryChemistry | undefined,
  second: BatteryChemistry | undefined,
  arrangement: 'parallel' | 'isolated' = 'parallel',
  systemVoltageV = 12
) =>
  supplyCurrent({
    amplifiers,
    systemVoltageV,
    battery: { capacityAh: 70, resistanceOhm: 0.0095, ...(first === undefined ? {} : { chemistry: first }) },
    secondBattery: {
      capacityAh: 100,
      resistanceOhm: 0.005,
      arrangement,
      ...(second === undefined ? {} : { chemistry: second })
    }
  })
const told = (outcome: ReturnType<typeof pair>) =>
  outcome.cautions.find(({ code }) => code === 'unlike-batteries-parallel')

describe('two batteries in parallel', () => {
  it('are a stop when one is lead and one lithium, with the current that flows between them at rest', () => {
    const outcome = pair('flooded', 'lithium')
    expect(told(outcome)).toMatchObject({ level: 'stop', at: 'secondBattery.chemistry' })
    // (13.3 − 12.6) V over 9.5 + 5 mΩ; two of each in series have twice the voltage over the same bank resistance
    expectPrinted(told(outcome)?.figures?.equalisingA ?? 0, '48.28')
    expectPrinted(told(pair('flooded', 'lithium', 'parallel', 24))?.figures?.equalisingA ?? 0, '96.55')
    expect(told(outcome)?.message).toMatch(/DC-DC/)
  })

  it('are never reckoned as one battery then', () => {
    expect(pair('flooded', 'lithium').result.engineOff).toBeUndefined()
    expect(pair('lithium', 'agm').result.engineOff).toBeUndefined()
    expect(pair('lithium', undefined).result.engineOff).toBeUndefined()
    expect(pair('flooded', 'lithium').cautions.map(({ code }) => code)).not.toContain('engine-off-time')
  })

  it('are a stop among unlike lead batteries too: they want other charging voltages', () => {
    expect(told(pair('flooded', 'agm'))?.level).toBe('stop')
    expect(told(pair('gel', 'agm'))?.level).toBe('stop')
  })

  it('are cleared by a charger between them, and the second feeds the amplifiers alone', () => {
    const apart = pair('flooded', 'lithium', 'isolated')
    expect(told(apart)).toBeUndefined()
    // Peukert: 20·(100/(20·I))^1.05 h at the average current of the music alone
    const { averageA } = apart.result.currents
    expect(apart.result.engineOff?.hoursToEmpty).toBeCloseTo(20 * (100 / (20 * averageA)) ** 1.05, 9)
  })

  it('are asked for a chemistry that is not said, and like ones add up', () => {
    const unsaid = told(pair(undefined, 'lithium'))
    expect(unsaid).toMatchObject({ level: 'care', at: 'battery.chemistry' })
    expect(told(pair('lithium', undefined))).toMatchObject({ level: 'care', at: 'secondBattery.chemistry' })
    for (const [first, second] of [
      ['agm', 'agm'],
      ['lithium', 'lithium'],
      [undefined, undefined]
    ] as const) {
      expect(told(pair(first, second))).toBeUndefined()
      expect(pair(first, second).result.engineOff?.hoursToEmpty).toBeGreaterThan(0)
    }
  })
})
