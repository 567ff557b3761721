import { describe, expect, it } from 'vitest'
import { gainTarget, meterVoltage, voltageGainDb } from '../../../src/domain/amplifier/gain-target.ts'
import { powerOfVoltage } from '../../support/electrical-forms.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('gain target', () => {
  // Ohm's law, by hand.
  for (const [powerW, ohm, printed] of [
    [500, 4, '44.72'],
    [500, 1, '22.36'],
    [1000, 1, '31.62'],
    [300, 2, '24.49'],
    [75, 4, '17.32']
  ] as const) {
    it(`of ${powerW} W into ${ohm} Ω is ${printed} V`, () => {
      const { targetVoltageV, currentA } = gainTarget(powerW, ohm, false)
      expectPrinted(targetVoltageV, printed)
      expect(targetVoltageV * currentA).toBeCloseTo(powerW, 9)
      expect(powerOfVoltage(targetVoltageV, ohm)).toBeCloseTo(powerW, 9)
    })
  }

  it('splits over a bridge: half the voltage into half the load, half the power each', () => {
    const { channelVoltageV = 0, channelLoadOhm = 1, targetVoltageV } = gainTarget(600, 4, true)
    expect([channelVoltageV, channelLoadOhm]).toEqual([targetVoltageV / 2, 2])
    expect(powerOfVoltage(channelVoltageV, channelLoadOhm)).toBeCloseTo(300, 9)
    expect(gainTarget(600, 4, false).channelLoadOhm).toBeUndefined()
  })

  it('reads less by the level of the tone, more by the allowance, and never past the target', () => {
    const target = gainTarget(640, 2.5, false).targetVoltageV
    expectPrinted(meterVoltage(target, -12, 4), '15.92')
    expect(meterVoltage(target, 0, 0)).toBe(target)
    expect(meterVoltage(target, -5, 10)).toBe(target)
    expect(meterVoltage(target, -20, 0)).toBeCloseTo(target / 10, 12)
  })

  it('gains 26.02 dB from 2 V to 40 V (hand calculation)', () => {
    expectPrinted(voltageGainDb(40, 2), '26.02')
  })
})
