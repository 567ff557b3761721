/** The network against closed forms of the literature: a second path, to 1e-9. Published forms from memory, rederived. */
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import { plateauPressure } from '../../../src/domain/enclosure/model/plateau.ts'
import type { EnclosureRequest, SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { responseSystem } from '../../../src/domain/enclosure/model/response-system.ts'
import { responseScalars } from '../../../src/domain/enclosure/response/scalars.ts'
import type { ComplexColumn } from '../../../src/numeric/linear/complex-column.ts'
import { add, apart, type Complex, complex, divide, multiply, scale } from '../../support/complex.ts'
import { solved } from '../../support/solved.ts'

const driver = { fsHz: 31, qms: 4.7, qes: 0.43, vasM3: 0.066, sdM2: 0.047, reOhm: 3.3 }
const qts = 1 / (1 / driver.qms + 1 / driver.qes)
const speed = 343.21
const frequenciesHz = [3, 9, 17, 28, 31, 33, 40, 55, 80, 130, 300]
const voltageV = 9

const request = (enclosure: EnclosureRequest, more: Partial<SystemRequest> = {}): SystemRequest => ({
  driver,
  enclosure,
  source: { voltageV },
  air: { densityKgPerM3: 1.2041, soundSpeedMPerS: speed },
  ...more
})

/** A port without end correction for a tuning. */
const port = (netVolumeM3: number, tuningHz: number, areaM2 = 0.008) => ({
  areaM2,
  endFactor: 0,
  lengthM: (areaM2 * speed ** 2) / ((2 * Math.PI * tuningHz) ** 2 * netVolumeM3)
})

/** c0 + c1·s + c2·s² + … at s = jx */
function polynomial(coefficients: readonly number[], x: number): Complex {
  return coefficients.reduceRight((sum, c) => add(multiply(sum, complex(0, x)), complex(c, 0)), complex(0, 0))
}

/** Sound pressure over that of the plateau, and one driver's displacement over its static value, and the impedance. */
function normalised(enclosure: EnclosureRequest) {
  const run = solved(request(enclosure), frequenciesHz)
  const { system, solution, at } = run
  const scaleOfPressure = (k: number) =>
    ((solution.omegas[k] as number) * 1.2041 * voltageV) / (2 * Math.PI * plateauPressure(system))
  const still = (system.driver.cmsMPerN * system.driver.blTm) / driver.reOhm
  return frequenciesHz.map((frequency, k) => ({
    frequency,
    pressure: multiply(at(solution.radiated, k), complex(0, scaleOfPressure(k))),
    displacement: divide(
      at(solution.velocities[0] as ComplexColumn, k),
      complex(0, (solution.omegas[k] as number) * still)
    ),
    ohm: divide(complex(1, 0), at(solution.current, k))
  }))
}

const agree = (ours: Complex, theirs: Complex, what: string) => expect(apart(ours, theirs), what).toBeLessThan(1e-9)

describe('closed box (Small 1972)', () => {
  const volume = 0.028
  const rise = Math.sqrt(1 + driver.vasM3 / volume)
  const [fc, qtc, qmc] = [driver.fsHz * rise, qts * rise, driver.qms * rise]

  it('G = s²/(s² + s/Qtc + 1), displacement 1/(…), impedance Re + Res·(s/Qmc)/(s² + s/Qmc + 1)', () => {
    for (const { frequency, pressure, displacement, ohm } of normalised({
      kind: 'closed',
      rear: { netVolumeM3: volume }
    })) {
      const x = frequency / fc
      const denominator = polynomial([1, 1 / qtc, 1], x)
      agree(pressure, divide(polynomial([0, 0, 1], x), denominator), `pressure at ${frequency} Hz`)
      agree(displacement, divide(complex(1 / rise ** 2, 0), denominator), `displacement at ${frequency} Hz`)
      const motional = divide(polynomial([0, 1 / qmc], x), polynomial([1, 1 / qmc, 1], x))
      const res = (driver.reOhm * driver.qms) / driver.qes
      agree(ohm, add(complex(driver.reOhm, 0), scale(motional, res)), `impedance at ${frequency} Hz`)
    }
  })

  it('figures: f3, peak level, impedance peak and excursion peak by their formulas', () => {
    for (const volumeM3 of [0.008, 0.02, 0.05, 0.3]) {
      const closed = responseScalars(
        responseSystem(request({ kind: 'closed', rear: { netVolumeM3: volumeM3 } }), assumptions())
      )
      const factor = Math.sqrt(1 + driver.vasM3 / volumeM3)
      const [f, q] = [driver.fsHz * factor, qts * factor]
      const b = 1 / q ** 2 - 2
      expect(closed.fcHz).toBeCloseTo(f, 9)
      expect(closed.qtc).toBeCloseTo(q, 12)
      expect((closed.f3Hz as number) / f / Math.sqrt((b + Math.sqrt(b * b + 4)) / 2)).toBeCloseTo(1, 9)
      expect(closed.impedancePeaks).toHaveLength(1)
      expect((closed.impedancePeaks[0]?.frequencyHz as number) / f).toBeCloseTo(1, 8)
      expect(closed.impedancePeaks[0]?.ohm).toBeCloseTo(driver.reOhm * (1 + driver.qms / driver.qes), 8)
      const peaked = q > Math.SQRT1_2
      expect(closed.excursionPeaks).toHaveLength(peaked ? 1 : 0)
      if (!peaked) continue
      const gain = q ** 2 / Math.sqrt(q ** 2 - 0.25)
      expect((closed.excursionPeaks[0]?.frequencyHz as number) / (f * Math.sqrt(1 - 1 / (2 * q * q)))).toBeCloseTo(1, 7)
      expect(closed.peakLevelDb - (closed.referenceLevelDb as number)).toBeCloseTo(20 * Math.log10(gain), 8)
      expect(closed.peakLevelHz / (f / Math.sqrt(1 - 1 / (2 * q * q)))).toBeCloseTo(1, 7)
    }
  })
})

describe('infinite baffle (Small 1972)', () => {
  it('is the closed box of the driver alone', () => {
    for (const { frequency, pressure } of normalised({ kind: 'infinite-baffle' })) {
      const x = frequency / driver.fsHz
      agree(pressure, divide(polynomial([0, 0, 1], x), polynomial([1, 1 / qts, 1], x)), `at ${frequency} Hz`)
    }
  })
})

describe('vented box with leakage (Small 1973)', () => {
  it('G = s⁴/(s⁴ + a1·s³ + a2·s² + a3·s + 1), displacement and impedance', () => {
    for (const [volume, fb, ql] of [
      [0.07, 29, 7],
      [0.03, 42, 15],
      [0.12, 20, 4]
    ] as const) {
      const [alpha, h] = [driver.vasM3 / volume, fb / driver.fsHz]
      const f0 = Math.sqrt(fb * driver.fsHz)
      const root = Math.sqrt(h)
      const denominator = (q: number) => [
        1,
        (h * ql + q) / (root * ql * q),
        (h + (alpha + 1 + h * h) * ql * q) / (h * ql * q),
        (ql + h * q) / (root * ql * q),
        1
      ]
      const box = [1, 1 / (ql * root), 1 / h]
      for (const { frequency, pressure, displacement, ohm } of normalised({
        kind: 'vented',
        rear: { netVolumeM3: volume, leakQ: ql, port: port(volume, fb) }
      })) {
        const x = frequency / f0
        const below = polynomial(denominator(qts), x)
        agree(pressure, divide(polynomial([0, 0, 0, 0, 1], x), below), `pressure at ${frequency} Hz`)
        agree(displacement, divide(polynomial(box, x), below), `displacement at ${frequency} Hz`)
        const motional = divide(
          multiply(polynomial([0, root / driver.qms], x), polynomial(box, x)),
          polynomial(denominator(driver.qms), x)
        )
        const res = (driver.reOhm * driver.qms) / driver.qes
        agree(ohm, add(complex(driver.reOhm, 0), scale(motional, res)), `impedance at ${frequency} Hz`)
      }
    }
  })

  it('lossless: the two impedance peaks give back the compliance ratio, and their product is fs·fb', () => {
    const system = responseSystem(
      request(
        { kind: 'vented', rear: { netVolumeM3: 0.05, port: port(0.05, 32) } },
        { driver: { ...driver, qms: 900 } }
      ),
      assumptions()
    )
    const [low, high] = responseScalars(system).impedancePeaks.map(peak => peak.frequencyHz)
    const [fl, fh, fb] = [(low as number) ** 2, (high as number) ** 2, 32 ** 2]
    expect(Math.sqrt(fl * fh) / (driver.fsHz * 32)).toBeCloseTo(1, 5)
    expect(((fh - fb) * (fb - fl)) / (fh * fl)).toBeCloseTo(driver.vasM3 / 0.05, 4)
  })
})

describe('passive radiator, lossless (Small 1974)', () => {
  it('has the notch at the radiator alone and the polynomial of the paper', () => {
    const [volume, fp, delta] = [0.055, 17, 2.4]
    const areaM2 = 0.06
    const complianceMPerN = (delta * volume) / (1.2041 * speed ** 2 * areaM2 ** 2)
    const massKg = 1 / ((2 * Math.PI * fp) ** 2 * complianceMPerN)
    const alpha = driver.vasM3 / volume
    const y = fp / driver.fsHz
    const denominator = [
      y * y * (1 + alpha + delta),
      (y * y * (1 + delta)) / qts,
      alpha + (1 + delta) * y * y + 1,
      1 / qts,
      1
    ]
    for (const { frequency, pressure } of normalised({
      kind: 'passive-radiator',
      rear: { netVolumeM3: volume, passiveRadiators: { areaM2, complianceMPerN, massKg } }
    })) {
      const x = frequency / driver.fsHz
      const theirs = divide(polynomial([0, 0, y * y, 0, 1], x), polynomial(denominator, x))
      expect(Math.hypot(pressure.re - theirs.re, pressure.im - theirs.im)).toBeLessThan(1e-9)
    }
  })
})

describe('band-pass of fourth order, lossless and tuned to fc (derived from the network)', () => {
  it('G = s²/[(s² + s/Qtc + 1)(s² + 1) + α_f·s²], edges around fc', () => {
    const rear = 0.03
    const rise = Math.sqrt(1 + driver.vasM3 / rear)
    const [fc, qtc] = [driver.fsHz * rise, qts * rise]
    const front = (2 * 0.6 * qts) ** 2 * driver.vasM3
    const alpha = driver.vasM3 / (rise ** 2 * front)
    const enclosure: EnclosureRequest = {
      kind: 'band-pass-4',
      rear: { netVolumeM3: rear },
      front: { netVolumeM3: front, port: port(front, fc) }
    }
    for (const { frequency, pressure } of normalised(enclosure)) {
      const x = frequency / fc
      const denominator = add(
        multiply(polynomial([1, 1 / qtc, 1], x), polynomial([1, 0, 1], x)),
        polynomial([0, 0, alpha], x)
      )
      agree(pressure, divide(polynomial([0, 0, 1], x), denominator), `at ${frequency} Hz`)
    }
    const scalars = responseScalars(responseSystem(request(enclosure), assumptions()))
    // S = 0.6: ripple 0.354 dB above the centre, half power below the centre at x3 = 1.14824 (Fincham 1979, from memory).
    const edge = 1.148243 * Math.sqrt(alpha)
    const below = fc * (Math.sqrt(edge ** 2 / 4 + 1) - edge / 2)
    expect((scalars.f3Hz as number) * (scalars.f3UpperHz as number)).toBeCloseTo(fc ** 2, 5)
    expect(scalars.f3Hz).toBeGreaterThan(below)
    expect([scalars.upwardCrossings, scalars.downwardCrossings]).toEqual([1, 1])
  })
})

describe('band-pass of sixth order, series-tuned and lossless (derived)', () => {
  it('holds the cone still at ω⁴ − ω²(ω1²(1 + V1/V2) + ω2²) + ω1²ω2² = 0, not at the isolated tunings', () => {
    const enclosure: EnclosureRequest = {
      kind: 'band-pass-6-series',
      rear: { netVolumeM3: 0.05, port: port(0.05, 30) },
      front: { netVolumeM3: 0.03, port: port(0.03, 70) }
    }
    const dips = responseScalars(responseSystem(request(enclosure), assumptions())).excursionMinima
    const middle = 30 ** 2 * (1 + 5 / 3) + 70 ** 2
    const root = Math.sqrt(middle ** 2 - 4 * 30 ** 2 * 70 ** 2)
    expect(dips.map(({ frequencyHz }) => frequencyHz)).toEqual([
      expect.closeTo(Math.sqrt((middle - root) / 2), 6),
      expect.closeTo(Math.sqrt((middle + root) / 2), 6)
    ])
    for (const { excursionM } of dips) expect(excursionM).toBeLessThan(1e-9)
  })
})
