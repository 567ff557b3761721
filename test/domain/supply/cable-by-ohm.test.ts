/** A chosen cable against Ohm’s law alone: what it drops, loses and leaves, and the size that just misses. */
import { describe, expect, it } from 'vitest'
import type { CableChoiceRequest } from '../../../src/contract/supply/supply-cables.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { expectPrinted } from '../../support/printed.ts'

const base: CableChoiceRequest = {
  currentA: 60,
  systemVoltageV: 12,
  positiveLengthM: 4,
  return: { kind: 'cable', lengthM: 4 },
  conductor: 'copper',
  gaugeSystem: 'awg',
  insulationC: 105,
  ambientC: 30,
  contactOhm: 0,
  dropLimitV: 0.36,
  checks: ['drop']
}

describe('each size of a choice', () => {
  it('drops I·R, loses I²·R, and is told in per cent of the 12 V', () => {
    for (const { loopOhm, dropV, dropPercent, lossW, endVoltageV, currentA } of chooseCable(base).result.candidates) {
      expect(currentA).toBe(60)
      expect(dropV).toBeCloseTo(60 * loopOhm, 9)
      expect(lossW).toBeCloseTo(3600 * loopOhm, 9)
      expect(dropPercent).toBeCloseTo((6000 * loopOhm) / 12, 9)
      expect(endVoltageV).toBeCloseTo(12 - 60 * loopOhm, 9)
    }
  })

  it('loses more once it is hot, by no more than copper gains to 105 °C: 0.393 % a kelvin, a third', () => {
    const { cable } = chooseCable(base).result
    const hotter = (cable?.hotLossW ?? 0) / (cable?.lossW ?? 0)
    expect(hotter).toBeGreaterThan(0.85)
    expect(hotter).toBeLessThan(1.34)
  })

  it('gives a constant power its watts at the far end: V·I = P with I = (12 V − V)/R', () => {
    const { currentA: _, ...rest } = base
    const { candidates } = chooseCable({ ...rest, loadPowerW: 600, loadModel: 'constant-power' }).result
    const fed = candidates.filter(({ endVoltageV }) => endVoltageV !== undefined)
    expect(fed.length).toBeGreaterThan(3)
    for (const { endVoltageV = 0, currentA = 0, loopOhm, lossW } of fed) {
      expect(endVoltageV * currentA).toBeCloseTo(600, 6)
      expect(currentA).toBeCloseTo((12 - endVoltageV) / loopOhm, 6)
      expect(lossW).toBeCloseTo(currentA ** 2 * loopOhm, 6)
    }
  })

  it('refuses a drop from which a constant power has no way back: half of 12 V, where a current may lose up to all', () => {
    const { currentA: _, ...rest } = base
    const power = { ...rest, loadPowerW: 300, loadModel: 'constant-power' } as const
    expect(() => chooseCable({ ...power, dropLimitV: 6 })).toThrow(/half/)
    expect(() => chooseCable({ ...power, dropLimitV: 5.9 })).not.toThrow()
    expect(() => chooseCable({ ...base, dropLimitV: 6 })).not.toThrow()
    expect(() => chooseCable({ ...base, dropLimitV: 12 })).toThrow(/reaches/)
  })
})

describe('the size that just misses', () => {
  const least = (request: CableChoiceRequest) => (chooseCable(request).result.minimumAreaM2 ?? 0) * 1e6
  const miss = (request: CableChoiceRequest) => chooseCable(request).cautions.find(({ code }) => code === 'near-miss')
  /** Both ways as long as makes 6 AWG, 13.302 mm², too thin by so much: the least area goes with the length. */
  const thinBy = (percent: number): CableChoiceRequest => {
    const lengthM = (4 * 13.302 * (1 + percent / 100)) / least(base)
    return { ...base, positiveLengthM: lengthM, return: { kind: 'cable', lengthM } }
  }

  it('is told up to a tenth of its section', () => {
    expectPrinted(miss(thinBy(5))?.figures?.missPercent as number, '5.0')
    expect(miss(thinBy(9.8))).toBeDefined()
    expect(miss(thinBy(10.2))).toBeUndefined()
    expect(miss(thinBy(14))).toBeUndefined()
  })

  it('drops by so much more than the limit, and would do on a run shorter by its own share: both ways 100/105', () => {
    const near = thinBy(5)
    const said = miss(near)
    // the drop goes with 1/A: 0.36 V·1.05
    expect(said?.figures?.dropV).toBeCloseTo(0.36 * 1.05, 3)
    expect(said?.figures?.dropLimitV).toBe(0.36)
    const bothM = 2 * near.positiveLengthM
    expect(said?.message).toContain((bothM / 1.05).toFixed(2))
    expect(said?.message).toContain(bothM.toFixed(2))
    // and there it is chosen
    const shorterM = near.positiveLengthM / 1.0501
    const shorter = { ...near, positiveLengthM: shorterM, return: { kind: 'cable', lengthM: shorterM } } as const
    expect(chooseCable(shorter).result.cable?.designation).toBe('6 AWG')
  })
})

describe('what is to come', () => {
  it('is sized like the sum of both: 300 W now and 300 W later take the cable of 600 W, nothing later takes none', () => {
    const { currentA: _, ...rest } = { ...base, checks: ['ampacity', 'drop', 'fuse'] as const }
    const now = { ...rest, checks: [...rest.checks], loadPowerW: 300 }
    const { upsized } = chooseCable({ ...now, futureLoadPowerW: 300 }).result
    const whole = chooseCable({ ...now, loadPowerW: 600 }).result
    expect(upsized).toEqual({ designation: whole.cable?.designation, fuseRatingA: whole.fuse?.ratingA })
    expect(chooseCable(now).result.upsized).toBeUndefined()
    // a load given by its current counts at the nominal voltage: 25 A are 300 W at 12 V
    const byCurrent = { ...base, checks: [...rest.checks], currentA: 25, futureLoadPowerW: 300 }
    expect(chooseCable(byCurrent).result.upsized).toEqual(upsized)
  })
})
