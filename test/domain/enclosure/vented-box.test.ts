import { describe, expect, it } from 'vitest'
import { levelDb } from '../../../src/domain/enclosure/alignment/rational-response.ts'
import {
  type VentedBox,
  ventedBoxFor,
  ventedCoefficients,
  ventedHalfPowerRatio,
  ventedResponse
} from '../../../src/domain/enclosure/alignment/vented-box.ts'
import {
  bessel4,
  butterworth4,
  familyBox,
  flatTotalQ,
  poleEllipse,
  type VentedFamily
} from '../../../src/domain/enclosure/alignment/vented-families.ts'
import { passBandOf } from '../../../src/domain/enclosure/model/pass-band.ts'
import {
  b4Rows,
  c4Rows,
  qb3Rows,
  type Row,
  sbb4Rows,
  sc4Rows,
  thieleRecalled
} from '../../published/vented-alignments.ts'
import { chebyshevRippleDb, groupDelayS } from '../../support/closed-forms.ts'
import { expectPrinted } from '../../support/printed.ts'

const f3OverFs = (box: VentedBox, lossPerQ: number) =>
  ventedHalfPowerRatio(ventedCoefficients(box, lossPerQ)) * Math.sqrt(box.h)

const solved = (family: VentedFamily, qt: number, ql: number): VentedBox => {
  const box = familyBox(family, qt, 1 / ql)
  if (box === undefined) throw new Error(`${family} has no member for ${qt}`)
  return box
}

function agrees(family: VentedFamily, [qt, ql, h, alpha, f3]: Row | readonly [...Row, number]): void {
  const box = solved(family, qt, ql)
  const near = (actual: number, printed: string) =>
    expect(Math.abs(actual / Number(printed) - 1), `${actual} against ${printed}`).toBeLessThan(1e-4)
  near(box.h, h)
  near(box.alpha, alpha)
  near(f3OverFs(box, 1 / ql), f3)
}

describe('vented response', () => {
  it('has the coefficients of the circuit (Small 1973 from memory, rederived symbolically)', () => {
    const { a1, a2, a3 } = ventedCoefficients({ qt: 0.35, alpha: 1.5, h: 1.1 }, 1 / 7)
    expectPrinted(a1, '2.87401')
    expectPrinted(a2, '3.78089')
    expectPrinted(a3, '3.13281')
  })

  it('comes back from its coefficients to the box, with and without losses', () => {
    for (const lossPerQ of [0, 1 / 20, 1 / 7, 1 / 3]) {
      for (const box of [
        { h: 0.7, alpha: 0.3, qt: 0.55 },
        { h: 1, alpha: 1.2, qt: 0.4 },
        { h: 1.9, alpha: 7, qt: 0.2 }
      ]) {
        const back = ventedBoxFor(ventedCoefficients(box, lossPerQ), lossPerQ)
        for (const name of ['h', 'alpha', 'qt'] as const) expect((back?.[name] ?? 0) / box[name]).toBeCloseTo(1, 10)
      }
    }
  })

  it('has its half-power point where the sampled response has it', () => {
    for (const [qt, ql] of [
      [0.25, 7],
      [0.4, 5],
      [0.6, 7]
    ] as const) {
      const family = qt < flatTotalQ(1 / ql) ? 'qb3' : 'c4'
      const box = solved(family, qt, ql)
      const response = ventedResponse(ventedCoefficients(box, 1 / ql), 30, 30 * box.h)
      const { f3Hz = 0 } = passBandOf(f => levelDb(response, f), 3, 3000)
      expect(f3Hz / 30).toBeCloseTo(f3OverFs(box, 1 / ql), 9)
    }
  })

  it('has the group delay of a fourth-order Butterworth high-pass: ω0τ(f0) 3.69552, greatest 3.90941 (derived)', () => {
    const response = ventedResponse(butterworth4, 30, 30)
    const omega = 2 * Math.PI * 30
    expectPrinted(omega * groupDelayS(response, 30), '3.69552')
    const greatest = Math.max(...Array.from({ length: 400 }, (_, index) => groupDelayS(response, 20 + index * 0.05)))
    expect(Math.abs(omega * greatest - 3.90941)).toBeLessThan(4e-5)
  })

  it('falls 10 dB at 0.759836 f3 when maximally flat (1 + x⁻⁸ = 10)', () => {
    const { f3Hz = 0, f10Hz = 0, rippleDb } = passBandOf(f => levelDb(ventedResponse(butterworth4, 30, 30), f), 3, 3000)
    expectPrinted(f10Hz / f3Hz, '0.759836')
    expect(rippleDb).toBeLessThan(1e-9)
  })
})

describe('vented alignments', () => {
  for (const row of qb3Rows) it(`QB3 QT ${row[0]} QL ${row[1]}`, () => agrees('qb3', row))
  for (const row of sc4Rows) it(`SC4 QT ${row[0]} QL ${row[1]}`, () => agrees('sc4', row))
  for (const row of sbb4Rows) it(`SBB4 QT ${row[0]} QL ${row[1]}`, () => agrees('sbb4', row))
  for (const row of c4Rows) {
    it(`C4 QT ${row[0]} QL ${row[1]}, its ripple confirmed on the sampled response`, () => {
      agrees('c4', row)
      const box = solved('c4', row[0], row[1])
      const response = ventedResponse(ventedCoefficients(box, 1 / row[1]), 30, 30 * box.h)
      const { rippleDb } = passBandOf(f => levelDb(response, f), 3, 3000)
      expect(Math.abs(rippleDb / row[5] - 1)).toBeLessThan(0.01)
      expect(box.h).toBeLessThan(1)
    })
  }

  for (const [ql, qt, alpha] of b4Rows) {
    it(`B4 asks for QT ${qt} at QL ${ql}`, () => {
      const box = ventedBoxFor(butterworth4, 1 / ql)
      expectPrinted(box?.qt ?? 0, qt)
      expect(box?.h).toBeCloseTo(1, 12)
      expectPrinted(box?.alpha ?? 0, alpha)
    })
  }

  for (const [qt, f3, h, volume] of thieleRecalled) {
    it(`agrees with the table of 1961, as remembered, within 1 % at QT ${qt}`, () => {
      const family = qt < 0.3827 ? 'qb3' : qt < 0.384 ? 'b4' : 'c4'
      const box = solved(family, qt, Number.POSITIVE_INFINITY)
      for (const [actual, printed] of [
        [f3OverFs(box, 0), f3],
        [box.h, h],
        [1 / box.alpha, volume]
      ] as const) {
        expect(Math.abs(actual / Number(printed) - 1)).toBeLessThan(0.01)
      }
    })
  }

  it('has the closed-form Bessel box: QT 1/√10, α 7/3 when lossless, f3/fs 1.4959; QL 7 0.33119, 0.97354, 1.9076', () => {
    const lossless = ventedBoxFor(bessel4, 0)
    expect(lossless?.qt).toBeCloseTo(1 / Math.sqrt(10), 12)
    expect(lossless?.alpha).toBeCloseTo(7 / 3, 12)
    expectPrinted(lossless?.h ?? 0, '0.9759')
    expectPrinted(f3OverFs(lossless as VentedBox, 0), '1.4959')
    const lossy = ventedBoxFor(bessel4, 1 / 7)
    expectPrinted(lossy?.qt ?? 0, '0.33119')
    expectPrinted(lossy?.h ?? 0, '0.97354')
    expectPrinted(lossy?.alpha ?? 0, '1.9076')
  })

  it('joins its families where they meet at B4', () => {
    const qt = flatTotalQ(1 / 7)
    for (const family of ['qb3', 'sc4'] as const) {
      expect(solved(family, qt * 0.99999, 7).h).toBeCloseTo(1, 3)
    }
    expect(solved('c4', qt * 1.00001, 7).h).toBeCloseTo(1, 3)
    expect(poleEllipse(1)).toEqual({
      a1: expect.closeTo(butterworth4.a1, 12),
      a2: expect.closeTo(butterworth4.a2, 12),
      a3: expect.closeTo(butterworth4.a3, 12)
    })
  })

  it('is monotonic above f3 for QB3 and ripples as the ellipse says for C4', () => {
    expect(chebyshevRippleDb(0.597)).toBeCloseTo(0.0704, 3)
    for (const qt of [0.2, 0.3, 0.4]) {
      const box = solved('qb3', qt, 7)
      const response = ventedResponse(ventedCoefficients(box, 1 / 7), 30, 30 * box.h)
      expect(passBandOf(f => levelDb(response, f), 3, 3000).rippleDb).toBeLessThan(1e-6)
    }
  })

  it('bounds the efficiency of lossless C4 boxes (Small 1973, from memory: 3.9e-6)', () => {
    // η0 = 4π²/c³ fs³ Vas/Qes with Qes = QT: kη = 4π²/c³ α/(QT (f3/fs)³)
    const values = Array.from({ length: 60 }, (_, index) => 0.385 + index * 0.004).map(qt => {
      const box = solved('c4', qt, Number.POSITIVE_INFINITY)
      return ((4 * Math.PI ** 2) / 345 ** 3) * (box.alpha / (qt * f3OverFs(box, 0) ** 3))
    })
    expect(Math.abs(Math.max(...values) / 3.9e-6 - 1)).toBeLessThan(0.02)
  })

  it('has no member where a family ends', () => {
    expect(familyBox('qb3', 0.6, 1 / 7)).toBeUndefined()
    expect(familyBox('c4', 0.3, 1 / 7)).toBeUndefined()
    expect(familyBox('sc4', 0.15, 1 / 7)).toBeUndefined()
    expect(familyBox('b4', 0.35, 1 / 7)).toBeUndefined()
  })
})
