/** The figures that formulas of wire, fuse and supply name as their checks, each worked by hand beside it. */
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import { ambientFactor, ampacity } from '../../../src/domain/circuit/cable/ampacity.ts'
import { awgArea, awgDiameter } from '../../../src/domain/circuit/cable/awg-astm-b258.ts'
import { cableSize } from '../../../src/domain/circuit/cable/cable-size.ts'
import { currentForTemperature } from '../../../src/domain/circuit/cable/conductor-temperature.ts'
import { shortCircuitK, withstandA2s } from '../../../src/domain/circuit/cable/short-circuit.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { groundOf } from '../../../src/domain/circuit/choice/ground.ts'
import { breakingCurrent, coldFuseOhm, fuseOhm } from '../../../src/domain/circuit/fuse/battery-source.ts'
import { cableFault } from '../../../src/domain/circuit/fuse/cable-fault.ts'
import { fuseFamily } from '../../../src/domain/circuit/fuse/fuse-families-iso-8820.ts'
import { highestFuse } from '../../../src/domain/circuit/fuse/protected-cable.ts'
import { collapseFactor } from '../../../src/domain/circuit/graph/shared-trunk.ts'
import { disproved, plausiblePower } from '../../../src/domain/circuit/load/amplifier-draw.ts'
import {
  nominalVoltage,
  suitsSupply,
  usualRatedVoltageV,
  voltageClassCautions
} from '../../../src/domain/circuit/load/voltage-class.ts'
import { solvePoints } from '../../../src/domain/circuit/points/solve-points.ts'
import { capacitorEffect, prechargeRatingW, usualPrechargeOhm } from '../../../src/domain/circuit/source/capacitor.ts'
import { engineOff } from '../../../src/domain/circuit/source/engine-off.ts'
import { expectPrinted } from '../../support/printed.ts'

const eight = cableSize('8 AWG', 'awg', '')
const four = cableSize('4 AWG', 'awg', '')
const free = { insulationC: 105, ambientC: 30, bundledConductors: 1 } as const

describe('sizes of wire', () => {
  it('follow 0.005 in·92^((36 − n)/39) (ASTM B258): 10 AWG 2.5882 mm, 4/0 11.684 mm, 4 AWG 21.151 mm²', () => {
    expectPrinted(awgDiameter(10) * 1000, '2.5882')
    expectPrinted(awgDiameter(-3) * 1000, '11.684')
    expectPrinted(awgArea(4) * 1e6, '21.151')
    // the ends of the law are the two sizes it is drawn through: 36 and 4/0, 0.005 and 0.46 in
    expect(awgDiameter(36)).toBeCloseTo(0.005 * 0.0254, 15)
    expect(awgDiameter(-3)).toBeCloseTo(0.46 * 0.0254, 12)
  })

  it('end where the law was drawn: 40 and 4/0, not 41, not 5/0, not between two numbers', () => {
    expect(awgDiameter(40)).toBeLessThan(awgDiameter(39))
    for (const gauge of [41, -4, 4.5]) expect(() => awgDiameter(gauge)).toThrow(/gauge/)
  })

  it('differ by series: cableSize reads 4 AWG as 21.151 mm², SAE 4 as 18.931 mm²', () => {
    expectPrinted(four.areaM2 * 1e6, '21.151')
    expectPrinted(cableSize('SAE 4', undefined, '').areaM2 * 1e6, '18.931')
  })
})

describe('a chosen wire', () => {
  it('has the diameter and the area of its size, and the ohms of its loop: 4 AWG, 5.1894 mm, 21.151 mm² (ASTM B258)', () => {
    const { cable } = chooseCable({
      currentA: 50,
      systemVoltageV: 12,
      positiveLengthM: 5,
      return: { kind: 'cable', lengthM: 5 },
      conductor: 'copper',
      gaugeSystem: 'awg',
      insulationC: 105,
      ambientC: 30,
      contactOhm: 0.0004,
      sizes: ['4'],
      checks: ['ampacity']
    }).result
    expectPrinted((cable?.diameterM ?? 0) * 1000, '5.1894')
    expectPrinted((cable?.areaM2 ?? 0) * 1e6, '21.151')
    // twice 5 m and the contacts
    expect((cable?.loopOhm ?? 0) - 10 * (cable?.ohmPerM ?? 0)).toBeCloseTo(0.0004, 9)
  })
})

describe('what a wire carries', () => {
  it('goes with √((Tins − T)/(Tins − 30)): 60 °C at 50 °C 0.58, 105 °C at 60 °C 0.77 (33 CFR 183.425 Table 5, note 1)', () => {
    expectPrinted(ambientFactor(60, 50, 'f'), '0.58')
    expectPrinted(ambientFactor(105, 60, 'f'), '0.77')
    expect(() => ambientFactor(60, 60, 'f')).toThrow(/60/)
    // 0.1 K below its class it still carries a little: √(0.1/30)
    expect(ambientFactor(60, 59.9, 'f')).toBeCloseTo(0.0577, 4)
  })

  it('falls in a bundle (bundleFactor): 3 → 0.7, 4 to 6 → 0.6, 7 to 24 → 0.5 (33 CFR 183.425, note to Table 5)', () => {
    const share = (bundledConductors: number) => ampacity(eight, 'copper', { ...free, bundledConductors }).bundleFactor
    expect([1, 2, 3, 4, 6, 7, 24].map(share)).toEqual([1, 1, 0.7, 0.6, 0.6, 0.5, 0.5])
  })

  it('goes with the root of the conductivity (metalFactor): 62.9 % of copper-clad-10 leave 0.793', () =>
    expectPrinted(ampacity(eight, 'copper-clad-10', free).metalFactor, '0.793'))

  it('is 137.0 A for 4 AWG of 105 °C in 50 °C: 160 A·√(55/75); three in a bundle at 30 °C 112 A, clad 126.9 A (by the factor 0.85 of note 1: 136 A)', () => {
    expectPrinted(ampacity(four, 'copper', { ...free, ambientC: 50 }).ampacityA ?? 0, '137.0')
    expectPrinted(ampacity(four, 'copper', { ...free, bundledConductors: 3 }).ampacityA ?? 0, '112')
    expectPrinted(ampacity(four, 'copper-clad-10', free).ampacityA ?? 0, '126.9')
  })

  it('by a heat balance of its own: 4 AWG, wall 1.3 mm, reaches 105 °C in 30 °C at 170.6 A, above the 160 of the table (currentForTemperature)', () => {
    const copper = { areaM2: 21.151e-6, ohmPerM20: 0.8315e-3, perK: 0.00393, ambientC: 30, wallM: 0.0013 }
    expectPrinted(currentForTemperature(copper, 105), '170.6')
    expect(currentForTemperature(copper, 30)).toBe(0)
    // twice the resistance, the root of half the current (the heat is the same)
    expect(
      currentForTemperature({ ...copper, ohmPerM20: 2 * 0.8315e-3 }, 105) / currentForTemperature(copper, 105)
    ).toBeCloseTo(Math.SQRT1_2, 12)
  })

  it('raises nothing in a place colder than the 30 °C of the table', () =>
    expect(ampacity(four, 'copper', { ...free, ambientC: 10 }).ampacityA).toBe(160))

  it('may be fused (highestFuse) at 80 A strictly and at 120 A by 150 %, 8 AWG of 105 °C at 30 °C; from 50 V on at 80 A', () => {
    const carries = ampacity(eight, 'copper', free)
    expect(highestFuse('strict', carries, 12)).toBe(80)
    expect(highestFuse('cfr-150', carries, 12)).toBe(120)
    expect(highestFuse('cfr-150', carries, 49.9)).toBe(120)
    expect(highestFuse('cfr-150', carries, 50)).toBe(80)
  })
})

describe('a fault', () => {
  it('is withstood by k (IEC 60364-5-54, Table A.54.2): copper 115 and 143, aluminium 76', () => {
    expectPrinted(shortCircuitK('copper', 70, 160), '115')
    expectPrinted(shortCircuitK('copper', 90, 250), '143')
    expectPrinted(shortCircuitK('aluminium', 70, 160), '76')
  })

  it('of 180 A leaves 16 AWG whole behind a 30 A blade: 22661 A²s by k = 115 against 4860', () => {
    // (115·1.309 mm²)² = 22661
    expectPrinted(withstandA2s(115, 1.309e-6), '22661')
    const link = { family: fuseFamily('C') ?? expect.unreachable(), ratingA: 30 }
    const fault = cableFault(link, 180, { areaM2: 1.309e-6, material: 'copper', startC: 70, endC: 160 })
    expect(fault.letThroughA2s).toBeCloseTo(4860, 6)
    expect(fault.survives).toBe(true)
  })

  it('through a cold link (coldFuseOhm, 57 mV over its rating): 40 A 1.425 mΩ; warm 90 mV, 2.25 mΩ', () => {
    expectPrinted(coldFuseOhm(40) * 1000, '1.425')
    expectPrinted(fuseOhm(40) * 1000, '2.25')
    // 75 mV at 40 A, 1.875 mΩ by one sheet, 96 mV by another: the rule lies between
    expect(fuseOhm(40) * 1000).toBeGreaterThan(1.875)
    // a data sheet (second-hand) has 1.4 mΩ
    expect(Math.abs(coldFuseOhm(40) * 1000 - 1.4)).toBeLessThan(0.05)
  })

  it('of 12.8 V and 3 mΩ to break (breakingCurrent): 889 A behind 5 A, 2612 A behind 30 A, 3585 A behind 100 A', () => {
    const breaking = { openCircuitV: 12.8, loopOhm: 0.003, stated: true, described: true }
    for (const [ratingA, printed] of [
      [5, '889'],
      [30, '2612'],
      [100, '3585']
    ] as const)
      expectPrinted(breakingCurrent(breaking, ratingA), printed)
  })
})

describe('what the ground should read (groundOf)', () => {
  it('over 5 m of 2 AWG at 0.5229 mΩ/m and two lugs of 0.2 mΩ: 3.014 mΩ cold, 301 mV at 100 A; limit 1.3 times hot', () => {
    const path = { coldOhm: 5 * 0.5229e-3, hotOhm: 5 * 0.6e-3, restOhm: 0.4e-3 }
    const ground = groundOf({ kind: 'cable', lengthM: 5 }, '2 AWG', path, { fullSineA: 100, heavyA: 30 })
    expectPrinted((ground.expectedOhm ?? 0) * 1000, '3.014')
    expectPrinted((ground.fullSine?.expectedV ?? 0) * 1000, '301')
    expectPrinted((ground.heavy?.expectedV ?? 0) * 1000, '90.4')
    // 1.3·(3.0 + 0.4) mΩ at 100 A
    expect(ground.fullSine?.acceptanceV).toBeCloseTo(0.442, 9)
  })
})

describe('a supply', () => {
  it('of one load collapses at Vs²/(4·R·P) (collapseFactor): 12 V, 20 mΩ and 600 W stand three times as much', () => {
    const branch = { ohm: 0.005, load: { kind: 'power', amount: 600 } } as const
    expect(collapseFactor(12, 0.015, [branch])).toBeCloseTo(144 / (4 * 0.02 * 600), 12)
    // two halves behind one trunk, none of it their own, collapse where the whole does
    const half = { ohm: 1e-9, load: { kind: 'power', amount: 300 } } as const
    expect(collapseFactor(12, 0.02, [half, half])).toBeCloseTo(3, 5)
  })

  it('is of the nearest class (nominalVoltage): 13.6 V of 12 V, 27.6 V of 24 V, 52 V of 48 V', () =>
    expect([13.6, 27.6, 52].map(nominalVoltage)).toEqual([12, 24, 48]))

  it('rates an amplifier at 14.4 V for each 12 V (usualRatedVoltageV, ANSI/CTA-2006): 28.8 V at 24 V', () =>
    expect([12, 24].map(usualRatedVoltageV)).toEqual([14.4, 28.8]))

  it('suits an amplifier from 0.8 to 1.35 of its class (suitsSupply): 14.4 V at 12 V 1.2, at 24 V 0.6; 28.8 V at 12 V 2.4', () => {
    expect(suitsSupply({ ratedVoltageV: 14.4 }, 12)).toBe(true)
    expect(suitsSupply({ ratedVoltageV: 14.4 }, 24)).toBe(false)
    expect(suitsSupply({ ratedVoltageV: 28.8 }, 24)).toBe(true)
    expect(suitsSupply({ ratedVoltageV: 28.8 }, 12)).toBe(false)
    expect(suitsSupply({ ratedVoltageV: 9.5 }, 12)).toBe(false)
    expect(suitsSupply({ ratedVoltageV: 16.3 }, 12)).toBe(false)
    expect(suitsSupply({}, 12)).toBe(true)
  })

  it('of the wrong class asks for a converter to the class of the amplifier: 240 W are 10 A at 24 V, 20 A at 12 V, 5 A at 48 V', () => {
    const converterA = (ratedVoltageV: number, systemVoltageV: number) =>
      voltageClassCautions({ ratedVoltageV }, systemVoltageV, 240, '')[0]?.figures?.converterA
    expect(converterA(28.8, 12)).toBeCloseTo(10, 12)
    expect(converterA(14.4, 24)).toBeCloseTo(20, 12)
    expect(converterA(57.6, 12)).toBeCloseTo(5, 12)
    // an old rating of 12 V or 13.8 V is of the same class
    expect(converterA(13.8, 24)).toBeCloseTo(20, 12)
    expect(converterA(14.4, 12)).toBeUndefined()
  })

  it('is believed to give just what its fuses pass, to six digits', () => {
    // 2 × 30 A at 14.4 V and 0.85: 734.4 W
    expect(plausiblePower(0.85, 14.4, [30, 30])).toBeCloseTo(734.4, 9)
    expect([734.4, 734.4 * 1.000009, 734.4 * 1.000012, 735].map(claimedW => disproved(claimedW, 734.4))).toEqual([
      false,
      false,
      true,
      true
    ])
  })

  it('of two batteries, 12.7 V/6 mΩ and 12.5 V/9 mΩ, gives 740 W at 4 mΩ 12.1574 V', () => {
    // one battery of 12.62 V and 3.6 mΩ; v = (12.62 + √(12.62² − 4·7.6 mΩ·740))/2
    const byHandV = (12.62 + Math.sqrt(12.62 ** 2 - 4 * 0.0076 * 740)) / 2
    expectPrinted(byHandV, '12.1574')
    const v = solvePoints(
      [
        {
          id: 'a',
          from: 'plus',
          to: 'minus',
          law: { kind: 'battery', emfV: 12.7, givingOhm: 0.006, takingOhm: 0.006 }
        },
        {
          id: 'b',
          from: 'plus',
          to: 'minus',
          law: { kind: 'battery', emfV: 12.5, givingOhm: 0.009, takingOhm: 0.009 }
        },
        { id: 'wire', from: 'plus', to: 'load', law: { kind: 'conductor', ohm: 0.004 } },
        { id: 'amp', from: 'load', to: 'minus', law: { kind: 'power', powerW: 740 } }
      ],
      'minus'
    )
    expect(v?.get('load')).toBeCloseTo(byHandV, 6)
  })
})

describe('what is stored', () => {
  it('in 1 F from 14.4 to 12 V is 31.68 J, 31.7 ms of 1 kW; 20 mΩ 7.958 Hz; 30 Ω 138 s and 6.9 W; 2 mΩ 0.2 V at 100 A', () => {
    const given = { capacitanceF: 1, esrOhm: 0.002, sourceOhm: 0.02, prechargeOhm: 30 }
    const effect = capacitorEffect(given as never, 14.4, 12, 1000, 100)
    expectPrinted(effect.usableJ, '31.68')
    expectPrinted(effect.storedJ, '103.68')
    expectPrinted(effect.holdUpS * 1000, '31.7')
    expectPrinted(effect.cornerHz ?? 0, '7.958')
    expectPrinted(effect.precharge99S ?? 0, '138')
    expectPrinted(effect.prechargePeakW ?? 0, '6.9')
    expect(effect.esrStepV).toBeCloseTo(0.2, 12)
    const big = capacitorEffect({ capacitanceF: 4, prechargeOhm: 10 } as never, 14.4, 12, 1000, 100)
    expectPrinted(big.storedJ, '414.7')
    // 40 s·ln(14.4 V/1 V)
    expectPrinted(big.prechargeDoneS ?? 0, '106.7')
    expect(big.prechargeTimeConstantS).toBeCloseTo(40, 12)
  })

  it('is let in at 20.7 W at first (usualPrechargeOhm): 14.4 V on 10 Ω, 28.8 V on 40 Ω; a 25 W part', () => {
    for (const twelves of [1, 2, 4]) expectPrinted((14.4 * twelves) ** 2 / usualPrechargeOhm(twelves), '20.7')
    expect([5, 5.1, 20.7, 100, 100.5].map(prechargeRatingW)).toEqual([5, 10, 25, 100, 101])
  })

  it('in 70 Ah of exponent 1.13 at 15 A lasts 3.86 h, to one half 1.93 h; 100 A through 10 mΩ sag 1.0 V', () => {
    // 20 h·(70/(15·20))^1.13
    const battery = { capacityAh: 70, peukertExponent: 1.13, usableFraction: 0.5, resistanceOhm: 0.01 } as never
    const off = engineOff(battery, 15, 100, 12, assumptions(), '')
    expectPrinted(off.hoursToEmpty, '3.86')
    expectPrinted(off.usableHours, '1.93')
    expect(off.fullSineSagV).toBeCloseTo(1, 12)
    expect(off.sagV).toBeCloseTo(0.15, 12)
  })
})
