import { describe, expect, it } from 'vitest'
import type { AmplifierOnSupply, CurrentRequest } from '../../../src/contract/supply/supply-current.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { batteryOhmFromCranking } from '../../../src/domain/circuit/fuse/battery-source.ts'
import { rippleOf, unregulatedShare } from '../../../src/domain/circuit/load/amplifier-currents.ts'
import { amplifierDraw, inputPower, plausiblePower } from '../../../src/domain/circuit/load/amplifier-draw.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { capacitorEffect } from '../../../src/domain/circuit/source/capacitor.ts'
import { chargingBalance } from '../../../src/domain/circuit/source/charging-balance.ts'
import { engineOff, peukertExponent, peukertHours } from '../../../src/domain/circuit/source/engine-off.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { supplyCurrent as currentOperation } from '../../../src/http/operations/supply/supply-current.ts'
import { classBEfficiency, crestFactorDb } from '../../support/electrical-forms.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(currentOperation)

const currents = (amplifiers: readonly AmplifierOnSupply[], systemVoltageV = 12) =>
  supplyCurrent({ amplifiers, systemVoltageV }).result.currents
const codes = (request: CurrentRequest) => supplyCurrent(request).cautions.map(({ code }) => code)
const refusal = (request: CurrentRequest): string => {
  try {
    supplyCurrent(request)
  } catch (error) {
    if (error instanceof DesignError) return `${error.code} ${error.faults[0]?.field}`
    throw error
  }
  return 'accepted'
}

describe('current draw', () => {
  it('draws 62.7 A for 640 W of class D at 12 V (hand calculation: 640 W/0.85/12 V)', () => {
    expectPrinted(currents([{ powerW: 640, class: 'D' }]).fullSineA, '62.7')
    expectPrinted(currents([{ powerW: 640, efficiency: 0.85 }], 13.8).fullSineA, '54.561')
    expectPrinted(currents([{ powerW: 640, efficiency: 0.85 }], 14.4).fullSineA, '52.29')
    expectPrinted(currents([{ powerW: 400, class: 'AB' }], 13.8).fullSineA, '48.309')
  })

  it('draws at 24 and 48 V what half and a quarter of the power draw at 12 V', () => {
    expectPrinted(currents([{ powerW: 2560, class: 'D' }], 48).fullSineA, '62.75')
    expectPrinted(currents([{ powerW: 1280, class: 'D' }], 24).fullSineA, '62.75')
  })

  it('follows the straight law of class D: 160.18 W at 1/8, 402.16 W at 1/3, 1176.47 W at rated output', () => {
    const draw = amplifierDraw({ powerW: 1000, class: 'D', quiescentW: 15 }, 12, assumptions(), '')
    expectPrinted(inputPower(draw, 1 / 8), '160.18')
    expectPrinted(inputPower(draw, 1 / 3), '402.16')
    expectPrinted(inputPower(draw, 1), '1176.47')
    expectPrinted(inputPower(draw, 1 / 8) / 13.8, '11.61')
    expect(inputPower(draw, 0)).toBe(15)
  })

  it('never scales class AB by the duty: its stage follows the square root (class B theory)', () => {
    for (const [share, printed] of [
      [1, '0.7854'],
      [1 / 8, '0.2777'],
      [1 / 3, '0.4534']
    ] as const)
      expectPrinted(classBEfficiency(share, 'sine'), printed)
    expectPrinted(classBEfficiency(1 / 8, 'noise'), '0.3133')
    const draw = amplifierDraw({ powerW: 400, class: 'AB', quiescentW: 0 }, 12, assumptions(), '')
    // the efficiency the law implies, over the rated one, is the theory's own ratio
    for (const share of [1 / 8, 1 / 3, 0.7]) {
      const implied = (share * 400) / inputPower(draw, share) / draw.efficiency
      expect(implied).toBeCloseTo(classBEfficiency(share, 'sine') / classBEfficiency(1, 'sine'), 12)
    }
    const { averageA, fullSineA } = currents([{ powerW: 400, class: 'AB' }])
    expect(averageA).toBeGreaterThan((fullSineA / 8) * 2.5)
  })

  it('sizes fuse and cable of an unregulated amplifier at charging voltage: 1600/(0.85·14.4) = 130.7 A, not 108.9 A (thirstiestVoltage: 12 and 14.4 V, at 24 V 24 and 28.8 V)', () => {
    const unregulated = { powerW: 1600, class: 'D', regulation: 'unregulated', ratedVoltageV: 14.4 } as const
    const regulated = { powerW: 1600, class: 'D', regulation: 'regulated', ratedVoltageV: 14.4 } as const
    const asked = (amplifiers: readonly AmplifierOnSupply[], systemVoltageV = 12) =>
      supplyCurrent({ amplifiers, systemVoltageV })
    // rails at 12 V leave (12/14.4)² of the input power: 1600/0.85·0.6944/12
    expectPrinted(asked([unregulated]).result.currents.fullSineA, '108.93')
    expectPrinted(asked([unregulated]).result.sizing.fullSineA, '130.72')
    expectPrinted(asked([regulated]).result.sizing.fullSineA, '156.86')
    // each at its own worst voltage: 1600/0.85·(1/14.4 + 1/12)
    expectPrinted(asked([unregulated, regulated]).result.sizing.fullSineA, '287.58')
    const heavyA = (amplifiers: readonly AmplifierOnSupply[]) => asked(amplifiers).result.sizing.heavyA
    expect(heavyA([unregulated, regulated])).toBeCloseTo(heavyA([unregulated]) + heavyA([regulated]), 9)
    expectPrinted(asked([{ ...unregulated, ratedVoltageV: 28.8 }], 24).result.sizing.fullSineA, '65.36')
    expect(asked([unregulated]).cautions.find(({ code }) => code === 'unregulated-sizing')?.message).toMatch(
      /131 A at 14\.4 V against 109 A/
    )
    expect(codes({ amplifiers: [regulated], systemVoltageV: 12 })).not.toContain('unregulated-sizing')
  })

  it('has the crest factors of the duties: 12.04 and 7.78 dB', () => {
    expectPrinted(crestFactorDb(1 / 8), '12.04')
    expectPrinted(crestFactorDb(1 / 3), '7.78')
  })

  it('ripples to twice the mean, 1.2247 of it in RMS, as an integration of 1 − cos shows', () => {
    expectPrinted(rippleOf(50).rippleRmsA, '61.237')
    expect(rippleOf(50).peakNoStorageA).toBe(100)
    const samples = Array.from({ length: 3600 }, (_, index) => 50 * (1 - Math.cos((index / 3600) * 2 * Math.PI)))
    expect(Math.sqrt(samples.reduce((sum, i) => sum + i * i, 0) / 3600)).toBeCloseTo(rippleOf(50).rippleRmsA, 9)
    expect(Math.max(...samples)).toBeCloseTo(100, 6)
  })

  it('lets an unregulated amplifier follow the supply: 765.6 W at 12.6 V, 694.4 W at 12 V of 1000', () => {
    expectPrinted(1000 * unregulatedShare(12.6, 14.4), '765.6')
    expectPrinted(1000 * unregulatedShare(12, 14.4), '694.4')
    const amplifier = { powerW: 1000, class: 'D', regulation: 'unregulated', ratedVoltageV: 14.4 } as const
    const { currents: at12, amplifiers } = supplyCurrent({ amplifiers: [amplifier], systemVoltageV: 12 }).result
    expect(at12.fullSineA).toBeCloseTo((1000 / 0.85 / 14.4) * (12 / 14.4), 9)
    expectPrinted(amplifiers[0]?.unregulatedPowerW ?? 0, '694.4')
    expectPrinted(amplifiers[0]?.fullSineHeatW ?? 0, '122.5') // 694.4/0.85 − 694.4
  })

  it('believes at most 734.4 W of two 30 A fuses, and says so', () => {
    expectPrinted(plausiblePower(0.85, 14.4, [30, 30]), '734.4')
    const amplifier = { class: 'D', onboardFusesA: [30, 30], regulation: 'regulated' } as const
    expect(codes({ amplifiers: [{ ...amplifier, powerW: 735 }], systemVoltageV: 12 })).toContain('rating-implausible')
    expect(codes({ amplifiers: [{ ...amplifier, powerW: 734 }], systemVoltageV: 12 })).not.toContain(
      'rating-implausible'
    )
  })

  it('turns into heat what does not come out: 112.94 W of 640 W at 0.85', () => {
    const [amplifier] = supplyCurrent({ amplifiers: [{ powerW: 640, class: 'D' }], systemVoltageV: 12 }).result
      .amplifiers
    expectPrinted(amplifier?.fullSineHeatW ?? 0, '112.94')
  })

  it('lets the data sheet win: input current before class', () => {
    const [amplifier] = supplyCurrent({
      amplifiers: [{ powerW: 600, class: 'D', inputCurrentA: 55, inputVoltageV: 14.4 }],
      systemVoltageV: 12
    }).result.amplifiers
    expect(amplifier?.efficiency).toBeCloseTo(600 / (55 * 14.4), 12)
    expect(amplifier?.fullSineA).toBeCloseTo((55 * 14.4) / 12, 9)
  })

  it('adds amplifiers up', () => {
    const both = [
      { powerW: 800, class: 'D' },
      { powerW: 400, class: 'AB' }
    ] as const
    const sum = currents(both)
    for (const key of ['quiescentA', 'averageA', 'heavyA', 'fullSineA'] as const)
      expect(sum[key]).toBeCloseTo(currents([both[0]])[key] + currents([both[1]])[key], 9)
    expectPrinted(sum.fullSineA, '133.99')
  })

  it('orders quiescent ≤ average ≤ heavy ≤ full sine for every class and size', () => {
    for (const amplifierClass of ['A', 'AB', 'B', 'D', 'G', 'H'] as const) {
      for (const powerW of [0.01, 5, 50, 500, 5000]) {
        const { quiescentA, averageA, heavyA, fullSineA } = currents([{ powerW, class: amplifierClass }])
        expect(quiescentA).toBeLessThanOrEqual(averageA)
        expect(averageA).toBeLessThanOrEqual(heavyA)
        expect(heavyA).toBeLessThanOrEqual(fullSineA)
      }
    }
  })

  it('takes a published rating at the wired load and never scales one to a lower load', () => {
    const ratings = [
      { loadOhm: 4, powerW: 300 },
      { loadOhm: 2, powerW: 640 }
    ]
    expectPrinted(currents([{ class: 'D', ratings, loadOhm: 2 }]).fullSineA, '62.7')
    expect(refusal({ amplifiers: [{ class: 'D', ratings, loadOhm: 1 }], systemVoltageV: 12 })).toBe(
      'missing-input amplifiers[0].ratings'
    )
  })

  it('draws at most what the nearest lower load draws: 540 W at 2 Ω bound what 3 Ω takes', () => {
    const ratings = [
      { loadOhm: 4, powerW: 300 },
      { loadOhm: 2, powerW: 540 }
    ]
    const request = (loadOhm: number) => ({
      amplifiers: [{ class: 'D', regulation: 'regulated', ratings, loadOhm } as const],
      systemVoltageV: 12
    })
    expectPrinted(supplyCurrent(request(3)).result.currents.fullSineA, '52.9') // 540/0.85/12
    expectPrinted(supplyCurrent(request(8)).result.currents.fullSineA, '29.4') // 300/0.85/12
    expect(codes(request(3))).toContain('power-bounded')
    expect(codes(request(2))).not.toContain('power-bounded')
  })

  it('refuses peak powers, double statements and impossible sheets', () => {
    const of = (amplifier: AmplifierOnSupply) => refusal({ amplifiers: [amplifier], systemVoltageV: 12 })
    expect(of({ powerW: 500, class: 'D', ratedAs: 'peak' })).toBe('conflicting-input amplifiers[0].ratedAs')
    expect(of({ powerW: 500 })).toBe('missing-input amplifiers[0].class')
    expect(of({ class: 'D' })).toBe('missing-input amplifiers[0].powerW')
    expect(of({ powerW: 500, efficiency: 0.8, inputCurrentA: 50 })).toBe('conflicting-input amplifiers[0].efficiency')
    expect(of({ powerW: 500, inputCurrentA: 30, inputVoltageV: 14.4 })).toBe(
      'conflicting-input amplifiers[0].inputCurrentA'
    )
    expect(of({ powerW: 5, class: 'D', quiescentW: 50 })).toBe('out-of-range amplifiers[0].quiescentW')
  })

  it('warns of standby drain and of an efficiency no amplifier reaches', () => {
    const amplifier = { powerW: 500, class: 'AB', regulation: 'regulated' } as const
    expect(codes({ amplifiers: [{ ...amplifier, standbyA: 0.0011 }], systemVoltageV: 12 })).toContain('parasitic-drain')
    expect(codes({ amplifiers: [{ ...amplifier, standbyA: 0.001 }], systemVoltageV: 12 })).not.toContain(
      'parasitic-drain'
    )
    expect(codes({ amplifiers: [{ ...amplifier, efficiency: 0.9 }], systemVoltageV: 12 })).toContain(
      'efficiency-implausible'
    )
  })
})

describe('charging', () => {
  it('balances idle −14 A and cruise +37 A: 120 A unit, base 35 A, music 30 A', () => {
    const balance = chargingBalance(
      { kind: 'alternator', ratedA: 120, idleFraction: 0.5, hotFactor: 0.85, baseLoadA: 35 },
      30,
      60,
      assumptions(),
      ''
    )
    expectPrinted(balance.idleAvailableA, '51')
    expectPrinted(balance.idleAverageSurplusA, '-14', { coarsest: 0.05 })
    expectPrinted(balance.cruiseAvailableA, '102')
    expectPrinted(balance.cruiseAverageSurplusA, '37')
  })

  it('takes a converter at its rating at any speed', () => {
    const balance = chargingBalance({ kind: 'converter', ratedA: 150, baseLoadA: 40 }, 30, 60, assumptions(), '')
    expect([balance.idleAvailableA, balance.cruiseHeavySurplusA]).toEqual([150, 50])
  })

  it('says idle, heavy and cruise deficits apart, each only when it is there', () => {
    const of = (ratedA: number) =>
      codes({
        amplifiers: [{ powerW: 2000, class: 'D', regulation: 'regulated' }],
        systemVoltageV: 12,
        charging: { kind: 'alternator', ratedA, hotFactor: 1, idleFraction: 0.5, baseLoadA: 30 }
      }).filter(code => code.startsWith('charge'))
    expect(of(200)).toEqual([])
    expect(of(100)).toEqual(['charge-deficit-idle'])
    expect(of(90)).toEqual(['charge-deficit-idle', 'charge-deficit-heavy'])
    expect(of(50)).toEqual(['charge-deficit-cruise', 'charge-deficit-idle'])
  })
})

describe('battery and capacitor', () => {
  for (const [capacityAh, minutes, printed] of [
    [86, 167, '1.12'],
    [70, 130, '1.13'],
    [95, 188, '1.12'],
    [85, 135, '1.23'],
    [130, 225, '1.24'],
    [216, 450, '1.17'],
    [225, 500, '1.10']
  ] as const) {
    it(`finds the exponent ${printed} a battery monitor’s manual prints for ${capacityAh} Ah, ${minutes} min`, () =>
      expectPrinted(peukertExponent(capacityAh, 20, minutes) ?? 0, printed))
  }

  it('plays 3.8623 h on 70 Ah at 15 A with exponent 1.13, half of it to one half', () => {
    expectPrinted(peukertHours(70, 20, 1.13, 15), '3.8623')
    const off = engineOff(
      { capacityAh: 70, peukertExponent: 1.13, resistanceOhm: 0.01 },
      15,
      100,
      12,
      assumptions(),
      ''
    )
    expectPrinted(off.usableHours, '1.9311')
    expectPrinted(off.fullSineSagV, '1.0', { coarsest: 0.06 })
    expect(peukertHours(70, 20, 1.13, 3.5)).toBeCloseTo(20, 12)
  })

  it('takes 9 mΩ from 600 A of cold cranking', () => expectPrinted(batteryOhmFromCranking(600) * 1000, '9.0'))

  it('joins two like batteries in parallel: twice the capacity, half the resistance; or plays on the second alone', () => {
    const base = { amplifiers: [{ powerW: 500, class: 'D' }], systemVoltageV: 12 } as const
    const battery = { capacityAh: 70, chemistry: 'agm', resistanceOhm: 0.01, parkedLoadA: 3 } as const
    const one = supplyCurrent({ ...base, battery }).result.engineOff
    const second = { capacityAh: 70, chemistry: 'agm', resistanceOhm: 0.01 } as const
    const two = supplyCurrent({ ...base, battery, secondBattery: { ...second, arrangement: 'parallel' } }).result
      .engineOff
    expect((two?.hoursToEmpty ?? 0) / (one?.hoursToEmpty ?? 1)).toBeCloseTo(2 ** 1.12, 9)
    expect(two?.sagV).toBeCloseTo((one?.sagV ?? 0) / 2, 12)
    const alone = supplyCurrent({ ...base, battery, secondBattery: { ...second, arrangement: 'isolated' } })
    expect(alone.result.engineOff?.currentA).toBeCloseTo((one?.currentA ?? 0) - 3, 9)
    expect(alone.cautions.map(({ code }) => code)).toContain('second-battery')
    expect(refusal({ ...base, secondBattery: { ...second, arrangement: 'isolated' } })).toBe('missing-input battery')
    expect(refusal({ ...base, battery: { capacityAh: 70, reserveMinutes: 1 } })).toBe(
      'conflicting-input battery.reserveMinutes'
    )
  })

  it('buys 31.68 ms at 1 kW with one farad; corner 7.958 Hz; precharge 138.2 s and 6.91 W', () => {
    const effect = capacitorEffect(
      { capacitanceF: 1, esrOhm: 0.002, sourceOhm: 0.02, prechargeOhm: 30 },
      14.4,
      12,
      1000,
      100
    )
    expectPrinted(effect.usableJ, '31.68')
    expectPrinted(effect.holdUpS * 1000, '31.68')
    expectPrinted(effect.storedJ, '103.68')
    expectPrinted(effect.cornerHz ?? 0, '7.958')
    expectPrinted(effect.esrStepV ?? 0, '0.2', { coarsest: 0.3 })
    expect(effect.esrStepV).toBeCloseTo(0.2, 12)
    expectPrinted(effect.precharge99S ?? 0, '138.2')
    expectPrinted(effect.prechargePeakW ?? 0, '6.91')
  })
})

describe('POST /v1/supply/current', () => {
  it('answers in public units and echoes every default', async () => {
    const { status, body } = await post('/v1/supply/current?digits=full&basis=true', {
      amplifiers: [{ powerW: 640, class: 'D' }],
      systemVoltageV: 12,
      capacitor: { capacitanceF: 1 }
    })
    expect(status).toBe(200)
    expectPrinted(body.result.currents.fullSineA, '62.75')
    expectPrinted(body.result.capacitor.holdUpMs, '42.08')
    expect(body.assumed.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
      '/amplifiers/0/ratedVoltageV',
      '/amplifiers/0/efficiency',
      '/amplifiers/0/quiescentW',
      '/capacitor/fromV',
      '/capacitor/toV',
      '/capacitor/prechargeOhm'
    ])
  })

  it('points at the field of a refusal', async () => {
    const { status, body } = await post('/v1/supply/current', {
      amplifiers: [{ powerW: 500, class: 'D' }, { powerW: 500 }],
      systemVoltageV: 12
    })
    expect(status).toBe(422)
    expect(body.errors[0].pointer).toBe('/amplifiers/1/class')
  })
})
