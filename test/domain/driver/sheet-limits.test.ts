/**
 * From where on a figure of a sheet is doubted. The bounds are ours (common practice, no source): each is met from both sides, so
 * that one that moves is seen, with what a driver at it would be.
 */
import { describe, expect, it } from 'vitest'
import { completeDriverParameters } from '../../../src/domain/driver/complete-driver-parameters.ts'
import {
  agreementLimits,
  identityChecks,
  surfaceDensityIsUnusual,
  unusualValues
} from '../../../src/domain/driver/sheet/consistency.ts'
import { disagreements } from '../../../src/domain/driver/sheet/disagreement.ts'
import { oddFigures } from '../../../src/domain/driver/sheet/odd-figures.ts'
import { relativeRounding, roundingsOf } from '../../../src/domain/driver/sheet/printed-rounding.ts'
import {
  type SmallSignalQuantity,
  smallSignalQuantities
} from '../../../src/domain/driver/sheet/small-signal-quantities.ts'
import { explainsGrossly, faultsOf, suspectedSlips } from '../../../src/domain/driver/sheet/unit-slips.ts'
import { looseSlips } from '../../../src/domain/driver/sheet/unprinted-slips.ts'

/** Ends that are believed, and neighbours that are not. */
const ends: readonly (readonly [SmallSignalQuantity, number, number, string])[] = [
  ['fsHz', 10, 200, 'below no ear hears it, above it is no driver for bass'],
  ['qms', 0.8, 30, 'a suspension that damps more than the motor, or hardly at all'],
  ['qes', 0.1, 5, 'the strongest motor, and next to none'],
  ['qts', 0.08, 4, 'as Qes, with the suspension beside it'],
  ['vasM3', 0.000_5, 1, 'half a litre to a cubic metre: 5 to 21 in'],
  ['sdM2', 0.004, 0.3, '40 to 3000 cm²'],
  ['reOhm', 0.2, 32, 'four coils of 0.7 Ω in parallel, four of 8 Ω in series'],
  ['blTm', 1, 80, 'a weak motor of 5 in, the strongest of 21 in'],
  ['mmsKg', 0.005, 2, '5 g of paper to 2 kg'],
  ['cmsMPerN', 2e-5, 5e-3, '0.02 to 5 mm/N'],
  ['rmsKgPerS', 0.2, 60, 'from hardly damped to rubber']
]

describe('the usual range', () => {
  for (const [name, low, high, why] of ends)
    it(`of ${name} ends where a driver for bass does: ${why}`, () => {
      const isUnusual = (value: number) => unusualValues({ [name]: value }).length === 1
      expect([low * 0.99, low, high, high * 1.01].map(isUnusual)).toEqual([true, false, false, true])
    })

  it('of moving mass over area is 0.6 to 12 kg/m²: paper of 5 in near 1, heavy 15 in near 6', () => {
    const at = (kgPerM2: number) => surfaceDensityIsUnusual({ sdM2: 0.05, mmsKg: 0.05 * kgPerM2 })
    expect([0.59, 0.61, 6, 11.9, 12.1].map(at)).toEqual([true, false, false, false, true])
    expect(surfaceDensityIsUnusual({ sdM2: 0.05 })).toBe(false)
  })
})

describe('what rounding in print explains', () => {
  it('is half the last digit, but no coarser than sheets print: Qes 0.38, Vas 60 L and 62 L, Qts 0.4, Qms 5, Mms 155 g', () => {
    expect(relativeRounding('qes', 0.38)).toBeCloseTo(0.005 / 0.38, 12)
    // 60 and 62 L are both printed to the litre, 0.4 may have been 0.40
    expect(relativeRounding('vasM3', 0.06)).toBeCloseTo(0.5 / 60, 12)
    expect(relativeRounding('vasM3', 0.062)).toBeCloseTo(0.5 / 62, 12)
    expect(relativeRounding('qts', 0.4)).toBeCloseTo(0.005 / 0.4, 12)
    expect(relativeRounding('qms', 5)).toBeCloseTo(0.05 / 5, 12)
    expect(relativeRounding('mmsKg', 0.155)).toBeCloseTo(0.5 / 155, 9)
    expect(relativeRounding('fsHz', 30)).toBeCloseTo(0.5 / 30, 12)
    expect(relativeRounding('sdM2', 0.048)).toBeCloseTo(0.5 / 480, 9)
    expect(relativeRounding('reOhm', 4)).toBeCloseTo(0.05 / 4, 12)
    expect(relativeRounding('blTm', 15)).toBeCloseTo(0.05 / 15, 12)
    expect(relativeRounding('cmsMPerN', 0.0002)).toBeCloseTo(0.005 / 0.2, 9)
    expect(relativeRounding('rmsKgPerS', 6)).toBeCloseTo(0.05 / 6, 12)
    // printed finer, it counts finer
    expect(relativeRounding('qes', 0.4512)).toBeCloseTo(0.00005 / 0.4512, 9)
  })

  it('leaves Qms between 3.6 and 6 beside Qts 0.41 and Qes 0.45, so that 5.9 does not contradict them (disagreements)', () => {
    // 1/(1/0.405 − 1/0.455) = 3.69, 1/(1/0.415 − 1/0.445) = 6.16: half a unit either way
    expect(1 / (1 / 0.405 - 1 / 0.455)).toBeLessThan(3.7)
    expect(1 / (1 / 0.415 - 1 / 0.445)).toBeGreaterThan(5.9)
    const given = { qts: 0.41, qes: 0.45, qms: 5.9 }
    const [found] = disagreements({ given, roundings: roundingsOf(given) }, 141_827)
    expect(found?.identity.id).toBe('total-q')
    expect(found?.beyond).toBe(0)
    const [far] = disagreements(
      { given: { ...given, qms: 12 }, roundings: roundingsOf({ ...given, qms: 12 }) },
      141_827
    )
    expect(far?.beyond).toBeGreaterThan(0)
    // Qts above Qes excludes any Qms
    const odd = { qts: 0.5, qes: 0.45, fsHz: 30, mmsKg: 0.15, rmsKgPerS: 5 }
    expect(disagreements({ given: odd, roundings: {} }, 141_827).some(({ whole }) => !(whole < 100))).toBe(true)
  })
})

describe('a contradiction', () => {
  const verdict = (beyond: number) =>
    identityChecks([
      {
        identity: { id: 'total-q', relation: '', members: ['qts', 'qms', 'qes'] },
        ...{ member: 'qts', stated: 1, computed: 1, whole: beyond, byRounding: 0, beyond }
      } as never
    ])[0]?.verdict

  it('is told from 3 % on, seriously from 10 %, and stops from 25 %', () => {
    expect([0.029, 0.031, 0.099, 0.101, 0.249, 0.251].map(verdict)).toEqual([
      'agrees',
      'note',
      'note',
      'care',
      'care',
      'stop'
    ])
    expect(Object.values(agreementLimits).map(verdict)).toEqual(['agrees', 'note', 'care'])
  })

  it('is explained by a slip that leaves less than 6 % of it, and no figure more unusual than before', () => {
    const of = (worst: number, unusual: number) => ({ worst, unusual })
    expect(explainsGrossly(of(0.5, 0), of(0.059, 0))).toBe(true)
    expect(explainsGrossly(of(0.5, 0), of(0.061, 0))).toBe(false)
    expect(explainsGrossly(of(0.5, 0), of(0.01, 1))).toBe(false)
    // below a tenth only an unusual figure speaks for a slip
    expect(explainsGrossly(of(0.09, 0), of(0.01, 0))).toBe(false)
    expect(explainsGrossly(of(0.09, 1), of(0.01, 0))).toBe(true)
    expect(explainsGrossly(of(0.11, 0), of(0.01, 0))).toBe(true)
  })
})

describe('a slip of unit (suspectedSlips)', () => {
  const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }
  const sheet = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4, vasAir: 'request' as const }
  const full = completeDriverParameters({ driver: sheet, air }).result.driver
  const named = (name: SmallSignalQuantity, factor: number) => {
    const printed = { given: { ...full, [name]: full[name] * factor }, roundings: {} }
    const stiffnessPa = 1.2041 * 343.2 ** 2
    return suspectedSlips(printed, faultsOf(printed, stiffnessPa), stiffnessPa, 1.2041).map(
      ({ slip, mended }) => [slip.id, mended / full[name]] as const
    )
  }

  it('of Vas 2.1189 "L" among figures that agree is cubic feet, 60.0 L (1 ft³ = 28.316846592 L)', () => {
    const [[id, ratio] = []] = named('vasM3', 2.1189 / 60)
    expect(id).toBe('vas-in-cubic-feet')
    expect(60 * (ratio ?? 0)).toBeCloseTo(60.0, 2)
  })

  it('that no unit explains is the figure itself: fs 38.5 among figures of 28.3 Hz, Qes 4.8 for 0.48 (oddFigures)', () => {
    const stiffnessPa = 1.2041 * 343.2 ** 2
    const { driver } = completeDriverParameters({ driver: { ...sheet, fsHz: 28.3, qes: 0.48 }, air }).result
    const set = Object.fromEntries(smallSignalQuantities.map(name => [name, driver[name]]))
    const odd = (changed: object) => {
      const printed = { given: { ...set, ...changed }, roundings: {} }
      return oddFigures(printed, faultsOf(printed, stiffnessPa), stiffnessPa).map(({ id, mended }) => [id, mended])
    }
    expect(odd({ fsHz: 38.5 })).toEqual([['odd-figure', { fsHz: expect.closeTo(28.3, 6) }]])
    expect(odd({ qes: 4.8 })).toEqual([['decimal-place', { qes: expect.closeTo(0.48, 6) }]])
    // a factor of 9.5 is near a power of ten, one of 9 is not
    expect(odd({ qes: 0.48 * 9.5 })[0]?.[0]).toBe('decimal-place')
    expect(odd({ qes: 0.48 * 9 })[0]?.[0]).toBe('odd-figure')
  })

  for (const [id, name, factor] of [
    ['sd-in-square-metres', 'sdM2', 1e-4],
    ['sd-in-square-decimetres', 'sdM2', 1e-2],
    ['vas-in-cubic-metres', 'vasM3', 1e-3],
    ['cms-in-metres', 'cmsMPerN', 1e-3],
    ['re-in-series-others-in-parallel', 'reOhm', 4],
    ['re-in-parallel-others-in-series', 'reOhm', 1 / 4]
  ] as const)
    it(`is named: ${id}, and undone`, () => {
      const found = named(name, factor).find(([found]) => found === id)
      expect(found?.[1]).toBeCloseTo(1, 9)
    })
})

describe('figures that no relation ties down', () => {
  const slip = (figures: Partial<Parameters<typeof looseSlips>[0]>) =>
    looseSlips({ sdM2: 0.049, ...figures }).map(({ id, mended }) => [id, ...Object.values(mended)])

  it('doubts a travel of more than 40 mm, or of a quarter of the radius of the cone: 31.2 mm of 490 cm²', () => {
    expect(slip({ xmaxM: 0.031 })).toEqual([])
    expect(slip({ xmaxM: 0.0314 })).toEqual([['xmax-peak-to-peak', 0.0157]])
    // a cone of 21 in has a radius of 229 mm: there 40 mm decide
    expect(slip({ sdM2: 0.165, xmaxM: 0.0399 })).toEqual([])
    expect(slip({ sdM2: 0.165, xmaxM: 0.0402 })).toEqual([['xmax-peak-to-peak', 0.0201]])
    // an area that is no area of a cone proves nothing
    expect(slip({ sdM2: 0.0005, xmaxM: 0.03 })).toEqual([])
  })

  it('takes less than a millimetre for inches: 0.55 "mm" are 13.97 mm', () => {
    expect(slip({ xmaxM: 0.00055 })).toEqual([['xmax-in-inches', expect.closeTo(0.01397, 9)]])
    expect(slip({ xmaxM: 0.00101 })).toEqual([])
  })

  it('takes more than 30 mH for µH and less than 0.02 mH for H', () => {
    expect(slip({ leH: 0.0301 })).toEqual([['inductance-in-microhenry', expect.closeTo(30.1e-6, 12)]])
    expect(slip({ leH: 0.0299 })).toEqual([])
    expect(slip({ leH: 1.9e-5 })).toEqual([['inductance-in-henry', expect.closeTo(0.019, 9)]])
    expect(slip({ leH: 2.1e-5 })).toEqual([])
    expect(slip({ leH: 0 })).toEqual([])
  })

  it('takes 0.9 to 1.1 of the circle of 12 in for that circle: 0.82 of its diameter moves, 490.6 cm² and not 729.7', () => {
    const circle = (Math.PI / 4) * 0.3048 ** 2
    const at = (share: number) => slip({ statedSdM2: share * circle, nominalDiameterM: 0.3048 })
    expect(at(1)).toEqual([['sd-from-nominal-diameter', expect.closeTo(0.04906, 5)]])
    expect([0.89, 0.91, 1.09, 1.11].map(share => at(share).length)).toEqual([0, 1, 1, 0])
  })
})
