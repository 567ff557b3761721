/** The figures that formulas of alignments name as their checks, by the roots of the response itself. */
import { describe, expect, it } from 'vitest'
import { flatBoxFit } from '../../../src/domain/enclosure/alignment/power-law-fits.ts'
import { ventedBoxFor, ventedCoefficients } from '../../../src/domain/enclosure/alignment/vented-box.ts'
import {
  butterworth4,
  familyBox,
  flatTotalQ,
  poleEllipse
} from '../../../src/domain/enclosure/alignment/vented-families.ts'
import { leastAirReason } from '../../../src/domain/enclosure/sizing/suitability.ts'
import { expectPrinted } from '../../support/printed.ts'

const loss = 1 / 7

/** |G|² of s⁴/(s⁴ + a1s³ + a2s² + a3s + 1) at s = jw. */
const square = ({ a1, a2, a3 }: { a1: number; a2: number; a3: number }, w: number) =>
  w ** 8 / ((w ** 4 - a2 * w ** 2 + 1) ** 2 + (a3 * w - a1 * w ** 3) ** 2)

describe('a vented box', () => {
  it('of maximal flatness, QL 7, asks for QT 0.40481, h 1 and α 1.0613 (ventedBoxFor)', () => {
    const box = ventedBoxFor(butterworth4, loss)
    expectPrinted(box?.qt ?? 0, '0.40481')
    expectPrinted(box?.alpha ?? 0, '1.0613')
    expect(box?.h).toBeCloseTo(1, 9)
    expectPrinted(flatTotalQ(0), '0.38268')
    // |G|² of a Butterworth high-pass: w⁸/(1 + w⁸)
    for (const w of [0.5, 1, 2]) expect(square(butterworth4, w)).toBeCloseTo(w ** 8 / (1 + w ** 8), 9)
  })

  it('of QB3 (quasiThirdOrder), QT 0.3 and QL 7: h 1.3145, α 2.8452, and its response lacks w² and w⁴ (Thiele 1961)', () => {
    const box = familyBox('qb3', 0.3, loss) ?? expect.unreachable()
    expectPrinted(box.h, '1.3145')
    expectPrinted(box.alpha, '2.8452')
    const { a1, a2, a3 } = ventedCoefficients(box, loss)
    expect(a1 ** 2 - 2 * a2).toBeCloseTo(0, 6)
    expect(a2 ** 2 - 2 * a1 * a3 + 2).toBeCloseTo(0, 6)
  })

  it('on the ellipse (poleEllipse), QT 0.45 and QL 7: k 0.7608, h 0.89925, α 0.68677, ripple 0.00592 dB', () => {
    const box = familyBox('c4', 0.45, loss) ?? expect.unreachable()
    expectPrinted(box.h, '0.89925')
    expectPrinted(box.alpha, '0.68677')
    expect(ventedBoxFor(poleEllipse(0.7608), loss)?.qt).toBeCloseTo(0.45, 4)
    const coefficients = ventedCoefficients(box, loss)
    const top = Math.max(...Array.from({ length: 4000 }, (_, n) => square(coefficients, 0.5 + n / 400)))
    expectPrinted(10 * Math.log10(top), '0.00592')
  })

  it('with coincident poles (coincidentPoles), QT 0.3 and QL 7: tuned to fs, α 2.5448 = ¼·(1/QT + 1/QL)² − 1/(QL·QT)', () => {
    const box = familyBox('sbb4', 0.3, loss)
    expect(box?.h).toBe(1)
    expectPrinted(box?.alpha ?? 0, '2.5448')
  })

  it('by the flat fit: Qts 0.3 → Vb/Vas 0.3763 = 20·0.3^3.3 (flatBoxFit)', () => {
    const fit = flatBoxFit({ fsHz: 30, qts: 0.3, vasM3: 0.06 })
    expectPrinted(fit.netVolumeM3 / 0.06, '0.3763')
    expect(fit.tuningHz).toBeCloseTo(30 * 0.3763 ** -0.31, 2)
    expect(fit.f3Hz).toBeCloseTo(0.28 * 30 * 0.3 ** -1.4, 9)
  })
})

describe('the least air behind a cone (leastAirReason)', () => {
  const against = (airM3: number, xmaxM: number, count = 1) =>
    leastAirReason(airM3, { sdM2: 0.049, xmaxM, count }).map(reason => reason.text.includes('sweeps'))

  it('of 490 cm² and 14 mm is six times the sweep, 4.12 L; with less travel the half sphere of its motor, 4.08 L', () => {
    expect(against(0.0041, 0.014)).toEqual([true])
    expect(against(0.00412, 0.014)).toEqual([])
    expect(against(0.00407, 0.01)).toEqual([false])
    expect(against(0.00409, 0.01)).toEqual([])
    // two of them, twice of both
    expect(against(0.0082, 0.014, 2)).toEqual([true])
    expect(against(0.0081, 0.01, 2)).toEqual([false])
  })
})
