import { describe, expect, it } from 'vitest'
import type { Filter } from '../../../src/contract/enclosures/filter.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { besselHalfPower, besselPoles, besselPolynomial } from '../../../src/domain/filter/bessel.ts'
import { butterworthPoles, linkwitzRileyPoles } from '../../../src/domain/filter/butterworth.ts'
import { filterSections } from '../../../src/domain/filter/filter-sections.ts'
import { chainGain, chainTransfer } from '../../../src/domain/filter/filter-transfer.ts'
import { expectPrinted } from '../../support/printed.ts'

const decibel = (filters: readonly Filter[], frequencyHz: number) =>
  20 * Math.log10(chainGain(filterSections(filters, 'filters'), frequencyHz))
const pass = (kind: 'high-pass' | 'low-pass', family: 'butterworth' | 'linkwitz-riley' | 'bessel', order: number) =>
  ({ kind, family, order, cornerHz: 40 }) as const
const both = ['high-pass', 'low-pass'] as const

describe('pole pairs', () => {
  // Zverev, Handbook of Filter Synthesis, 1967: from memory
  for (const [order, printed] of [
    [2, ['0.7071']],
    [3, ['1.0000']],
    [4, ['0.5412', '1.3066']],
    [5, ['0.6180', '1.6180']],
    [6, ['0.5176', '0.7071', '1.9319']],
    [8, ['0.5098', '0.6013', '0.9000', '2.5629']]
  ] as const) {
    it(`prints the Q of a Butterworth of order ${order}`, () => {
      const q = butterworthPoles(order).flatMap(pole => (pole.q === undefined ? [] : [pole.q]))
      expect(q).toHaveLength(printed.length)
      for (const [index, text] of printed.entries()) expectPrinted(q[index] ?? 0, text)
    })
  }

  it('makes Linkwitz-Riley of Butterworth twice (Linkwitz 1976, from memory)', () => {
    expect(linkwitzRileyPoles(2)).toEqual([{ corner: 1, q: 0.5 }])
    expect(linkwitzRileyPoles(4).map(pole => pole.q?.toFixed(4))).toEqual(['0.7071', '0.7071'])
    expect(linkwitzRileyPoles(6).map(pole => pole.q?.toFixed(4))).toEqual(['0.5000', '1.0000', '1.0000'])
  })

  // Reverse Bessel polynomials: 3, 3, 1; 15, 15, 6, 1; 105, 105, 45, 10, 1 (any handbook; from memory)
  it('has the coefficients of the reverse Bessel polynomials', () => {
    expect(besselPolynomial(2)).toEqual([3, 3, 1])
    expect(besselPolynomial(3)).toEqual([15, 15, 6, 1])
    expect(besselPolynomial(4)).toEqual([105, 105, 45, 10, 1])
  })

  it('has half power where handbooks print it for unit delay (order 4: 2.1139, from memory)', () =>
    expectPrinted(besselHalfPower(4), '2.1139'))

  // Place and Q of each pair for a half-power corner of 1, from SciPy 1.17.1, signal.besselap(n, norm='mag')
  for (const [order, rows] of [
    [1, [['1.0000000000']]],
    [2, [['1.2720196495', '0.5773502692']]],
    [3, [['1.3226757999'], ['1.4476171331', '0.6910466258']]],
    [
      4,
      [
        ['1.4301715600', '0.5219345817'],
        ['1.6033575162', '0.8055382818']
      ]
    ],
    [5, [['1.5023162714'], ['1.5563471223', '0.5635356209'], ['1.7553777766', '0.9164773739']]],
    [
      8,
      [
        ['1.7784659118', '0.5059910694'],
        ['1.8320926012', '0.5596091648'],
        ['1.9531957590', '0.7108520744'],
        ['2.1887262305', '1.2256694254']
      ]
    ]
  ] as const) {
    it(`agrees with a general-purpose library on the Bessel poles of order ${order}`, () => {
      const poles = besselPoles(order)
      expect(poles).toHaveLength(rows.length)
      for (const [index, [corner, q]] of rows.entries()) {
        expectPrinted(poles[index]?.corner ?? 0, corner)
        if (q === undefined) expect(poles[index]?.q).toBeUndefined()
        else expectPrinted(poles[index]?.q ?? 0, q)
      }
    })
  }
})

describe('filters', () => {
  for (const family of ['butterworth', 'bessel'] as const) {
    for (const order of [1, 2, 3, 4, 5, 6, 7, 8]) {
      it(`has half power at the corner: ${family} ${order}`, () => {
        for (const kind of both) expect(decibel([pass(kind, family, order)], 40)).toBeCloseTo(-10 * Math.log10(2), 9)
      })
    }
  }

  for (const order of [2, 4, 6, 8]) {
    it(`Linkwitz-Riley ${order}: −6.02 dB at the corner, and both ways add up to an all-pass`, () => {
      const low = filterSections([pass('low-pass', 'linkwitz-riley', order)], 'f')
      const high = filterSections([pass('high-pass', 'linkwitz-riley', order)], 'f')
      expect(chainGain(low, 40)).toBeCloseTo(0.5, 12)
      expect(chainGain(high, 40)).toBeCloseTo(0.5, 12)
      const sign = order % 4 === 0 ? 1 : -1
      for (const frequencyHz of [7, 25, 40, 51, 170]) {
        const one = chainTransfer(low, frequencyHz)
        const other = chainTransfer(high, frequencyHz)
        expect(Math.hypot(one.re + sign * other.re, one.im + sign * other.im)).toBeCloseTo(1, 12)
        expect(one.groupDelayS).toBeCloseTo(other.groupDelayS, 15)
      }
    })
  }

  it('follows |H|⁻² = 1 + x²ⁿ (Butterworth), an identity that does not know the poles', () => {
    for (const order of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const sections = filterSections([pass('low-pass', 'butterworth', order)], 'f')
      for (const x of [0.2, 0.9, 1.3, 4]) {
        expect(chainGain(sections, 40 * x) ** -2 / (1 + x ** (2 * order))).toBeCloseTo(1, 12)
      }
    }
  })

  // SciPy 1.17.1: freqs of zpk2tf(besselap(5, norm='mag')), corner 1 rad/s; group delay there by a phase ratio
  it('agrees with a general-purpose library on response and group delay of a Bessel of order 5', () => {
    const sections = filterSections([{ ...pass('low-pass', 'bessel', 5), cornerHz: 1 / (2 * Math.PI) }], 'f')
    for (const [omega, re, im, delay] of [
      [0.3, 0.72459864, -0.64614114, 2.42741],
      [1, -0.53385372, -0.46368114, 2.41776],
      [2.5, 0.04430775, 0.07231718, 1.103]
    ] as const) {
      const transfer = chainTransfer(sections, omega / (2 * Math.PI))
      expect(transfer.re).toBeCloseTo(re, 7)
      expect(transfer.im).toBeCloseTo(im, 7)
      expect(transfer.groupDelayS).toBeCloseTo(delay, 4)
    }
  })

  it('has the group delay and the slope of its own phase and magnitude, for every kind in one chain', () => {
    const chain = filterSections(
      [
        pass('high-pass', 'butterworth', 3),
        pass('low-pass', 'bessel', 4),
        { kind: 'high-pass', family: 'chosen-q', order: 2, cornerHz: 30, q: 2 },
        { kind: 'low-shelf', cornerHz: 60, gainDb: 6 },
        { kind: 'high-shelf', cornerHz: 90, gainDb: -4, q: 0.6 },
        { kind: 'peaking', centreHz: 45, gainDb: -8, q: 3 }
      ],
      'filters'
    )
    for (const frequencyHz of [12, 30, 44, 45, 80, 300]) {
      const step = frequencyHz * 1e-5
      const before = chainTransfer(chain, frequencyHz - step)
      const after = chainTransfer(chain, frequencyHz + step)
      const turn = Math.atan2(after.im * before.re - after.re * before.im, after.re * before.re + after.im * before.im)
      const rise = Math.log(Math.hypot(after.re, after.im) / Math.hypot(before.re, before.im))
      expect(chainTransfer(chain, frequencyHz).groupDelayS).toBeCloseTo(-turn / (4 * Math.PI * step), 8)
      expect(chainTransfer(chain, frequencyHz).logSlopeS).toBeCloseTo(rise / (4 * Math.PI * step), 8)
    }
  })

  it('turns by 90° and delays by √2/ω at the corner of a Butterworth low-pass of order 2 (H = 1/(1 − x² + j√2x))', () => {
    const { re, im, groupDelayS } = chainTransfer(filterSections([pass('low-pass', 'butterworth', 2)], 'f'), 40)
    expect(re).toBeCloseTo(0, 15)
    expect(im).toBeCloseTo(-Math.SQRT1_2, 15)
    expect(groupDelayS * 2 * Math.PI * 40).toBeCloseTo(Math.SQRT2, 12)
  })

  it('gives an equaliser its gain where it says, and nothing far away', () => {
    expect(decibel([{ kind: 'peaking', centreHz: 45, gainDb: 7, q: 2 }], 45)).toBeCloseTo(7, 12)
    expect(decibel([{ kind: 'peaking', centreHz: 45, gainDb: 7, q: 2 }], 4500)).toBeCloseTo(0, 2)
    expect(decibel([{ kind: 'low-shelf', cornerHz: 50, gainDb: -9 }], 50)).toBeCloseTo(-4.5, 12)
    expect(decibel([{ kind: 'low-shelf', cornerHz: 50, gainDb: -9 }], 0.5)).toBeCloseTo(-9, 3)
    expect(decibel([{ kind: 'high-shelf', cornerHz: 50, gainDb: 5 }], 50)).toBeCloseTo(2.5, 12)
    expect(decibel([{ kind: 'high-shelf', cornerHz: 50, gainDb: 5 }], 5000)).toBeCloseTo(5, 3)
  })

  it('takes back a boost by the equal cut', () => {
    for (const kind of ['low-shelf', 'high-shelf'] as const) {
      const there = { kind, cornerHz: 50, gainDb: 6, q: 0.9 } as const
      for (const f of [20, 50, 130]) expect(decibel([there, { ...there, gainDb: -6 }], f)).toBeCloseTo(0, 12)
    }
  })

  it('peaks by its Q at the corner of a second-order high-pass of chosen Q', () =>
    expect(decibel([{ kind: 'high-pass', family: 'chosen-q', order: 2, cornerHz: 28, q: 2 }], 28)).toBeCloseTo(
      20 * Math.log10(2),
      12
    ))

  for (const [name, filter, code, field] of [
    ['an odd Linkwitz-Riley', pass('low-pass', 'linkwitz-riley', 3), 'conflicting-input', 'filters[0].order'],
    [
      'a Q beside a family that fixes it',
      { ...pass('low-pass', 'bessel', 3), q: 1 },
      'conflicting-input',
      'filters[0].q'
    ],
    [
      'a chosen Q without a Q',
      { ...pass('low-pass', 'bessel', 2), family: 'chosen-q' },
      'missing-input',
      'filters[0].q'
    ],
    [
      'a chosen Q of order 4',
      { ...pass('low-pass', 'bessel', 4), family: 'chosen-q', q: 1 },
      'conflicting-input',
      'filters[0].order'
    ]
  ] as const) {
    it(`refuses ${name}`, () => {
      const refusal = (() => {
        try {
          return filterSections([filter as Filter], 'filters')
        } catch (error) {
          return error
        }
      })()
      expect(refusal).toBeInstanceOf(DesignError)
      expect(refusal).toMatchObject({ code, faults: [{ field }] })
    })
  }
})
