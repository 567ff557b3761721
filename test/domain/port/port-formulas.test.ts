import { describe, expect, it } from 'vitest'
import { mitreExtraM, mitreShortening } from '../../../src/domain/port/bends.ts'
import {
  conventionalEndFactor,
  exactEndFactor,
  fullWidthSlotEndM,
  rectangularPistonEndM,
  slotEndM
} from '../../../src/domain/port/end-correction.ts'
import { flaredEndM, flareLengthM, flareRingM3, roundMouth, slotMouth } from '../../../src/domain/port/flare.ts'
import {
  effectiveLengthM,
  pipeResonanceHz,
  tuningHz,
  waveguideTuningRatio
} from '../../../src/domain/port/port-length.ts'
import { displacementRuleAreaM2 } from '../../../src/domain/port/sizing/displacement-rule.ts'
import { goldenMaximum } from '../../../src/numeric/golden-maximum.ts'
import { expectPrinted } from '../../support/printed.ts'

const tube = { count: 1, areaM2: Math.PI * 0.05 ** 2 }

describe('end of a port', () => {
  it('lies at published constants (Levine & Schwinger 1948 and Dalmont 2001, read; Rayleigh 8/3π, from memory)', () => {
    expect(Math.abs(exactEndFactor.free - 0.6133)).toBeLessThan(1e-4)
    expect(Math.abs(exactEndFactor.flanged - 0.8216)).toBeLessThan(1e-4)
    expect(Math.abs(conventionalEndFactor.flanged - 8 / (3 * Math.PI))).toBeLessThan(0.002)
    expect(conventionalEndFactor.flanged + conventionalEndFactor.free).toBeCloseTo(1.463, 12)
  })

  /** Closed form of the double integral of 1/r, the square confirmed by two million samples (derived). */
  for (const [a, b, printed] of [
    [0.05, 0.05, '0.0236601'],
    [0.1, 0.05, '0.0325101'],
    [0.25, 0.05, '0.0456391'],
    [0.5, 0.05, '0.0561602']
  ] as const) {
    it(`of a flush rectangle of ${a} by ${b} m is ${printed} m`, () => {
      expectPrinted(rectangularPistonEndM(a, b), printed)
      expect(rectangularPistonEndM(b, a)).toBeCloseTo(rectangularPistonEndM(a, b), 12)
    })
  }

  it('of a rectangle agrees with a seeded double integral of 1/(2π·distance)', () => {
    // Mean over the opening of the potential of a uniform source: δ = (1/S)∬∬ 1/(2π r) dS dS'.
    const cells = 60
    const [a, b] = [0.2, 0.05]
    let sum = 0
    for (let i = -cells + 1; i < cells; i++) {
      for (let j = -cells + 1; j < cells; j++) {
        if (i === 0 && j === 0) continue
        const weight = (cells - Math.abs(i)) * (cells - Math.abs(j))
        sum += weight / Math.hypot((i * a) / cells, (j * b) / cells)
      }
    }
    const cell = (a * b) / cells ** 2
    const [w, h] = [a / cells, b / cells]
    const self = 2 * (w * Math.asinh(h / w) + h * Math.asinh(w / h))
    const delta = (sum * cell * cell + cells ** 2 * cell * self) / (2 * Math.PI * a * b)
    expect(Math.abs(rectangularPistonEndM(a, b) / delta - 1)).toBeLessThan(0.01)
  })

  /** Kergomard & Garcia 1987, from memory; 800-mode matching agrees. */
  for (const [ratio, printed] of [
    [0.05, '1.66175'],
    [0.1, '1.22207'],
    [0.2, '0.7872'],
    [0.25, '0.649967'],
    [0.5, '0.249833']
  ] as const) {
    it(`of a slot as wide as the box, ${ratio} of its height, is ${printed} slot heights`, () => {
      expect(Math.abs(fullWidthSlotEndM(0.04, 0.04 / ratio) / 0.04 / Number(printed) - 1)).toBeLessThan(1e-3)
    })
  }

  it('grows along a wall as the mirror image does, and is smaller when free', () => {
    const end = { widthM: 0.3, heightM: 0.04 }
    const flush = slotEndM({ ...end, situation: 'flanged', alongWall: false })
    expect(slotEndM({ ...end, situation: 'flanged', alongWall: true })).toBeCloseTo(
      rectangularPistonEndM(0.3, 0.08),
      12
    )
    expect(slotEndM({ ...end, situation: 'free', alongWall: false }) / flush).toBeCloseTo(0.6133 / 0.8216, 12)
  })
})

describe('length and tuning of a port', () => {
  it('follow each other (Helmholtz; c 343.2, 60 L, d 0.1 m)', () => {
    expectPrinted(tuningHz(0.37175, 0.06, tube, 343.2), '32.4124')
    expectPrinted(effectiveLengthM(30, 0.06, tube, 343.2) - 1.435 * 0.05, '0.362191')
    for (const f of [18, 33, 61]) {
      const opening = { count: 3, areaM2: 0.006 }
      expect(tuningHz(effectiveLengthM(f, 0.08, opening, 340), 0.08, opening, 340)).toBeCloseTo(f, 12)
    }
  })

  it('count a mitred bend as 0.559 of its corner square (from memory, finite differences agree)', () => {
    expect(Math.abs(1 - mitreExtraM(1) - 0.559)).toBeLessThan(0.003)
    expect(mitreExtraM(0.04)).toBeCloseTo(0.017_65, 5)
    expect(mitreExtraM(1)).toBeCloseTo(mitreShortening(Math.PI / 2), 6)
  })

  it('end where the pipe itself resonates', () => expectPrinted(pipeResonanceHz(0.37175, 343.2), '461.601'))

  it('part from a waveguide as the port grows (roots of x·tan x = r)', () => {
    expectPrinted(waveguideTuningRatio(0.05), '0.991743')
    expectPrinted(waveguideTuningRatio(0.2), '0.967861')
    expectPrinted(waveguideTuningRatio(0.48), '0.926651')
    const x = waveguideTuningRatio(0.3) * Math.sqrt(0.3)
    expect(x * Math.tan(x)).toBeCloseTo(0.3, 12)
  })

  it('have the area rule 0.8·fB·VD (Small 1973, from memory): 30 Hz, 0.58 L → 139 cm²', () => {
    expectPrinted(displacementRuleAreaM2(30, 0.000_58) * 1e4, '139')
  })
})

describe('flare of a port', () => {
  const end = (factor: number, a: number, R: number) => flaredEndM(factor * a, roundMouth(a), R)

  it('is as heavy as a fine midpoint sum of ∫(a/r)² dx says', () => {
    const [a, R] = [0.05, 0.03]
    const steps = 200_000
    let sum = 0
    for (let step = 0; step < steps; step++) {
      const x = ((step + 0.5) / steps) * R
      sum += (a / (a + R - Math.sqrt(2 * R * x - x * x))) ** 2
    }
    expect(flareLengthM(roundMouth(a), R)).toBeCloseTo((sum * R) / steps, 7)
  })

  it('of a slot is the integral in closed form, h·(2H/√(H²−R²)·atan√((H+R)/(H−R)) − π/2), whatever its width', () => {
    for (const [h, R] of [
      [0.04, 0.012],
      [0.03, 0.018],
      [0.1, 0.002]
    ] as const) {
      const H = h + R
      const closed =
        h * (((2 * H) / Math.sqrt(H ** 2 - R ** 2)) * Math.atan(Math.sqrt((H + R) / (H - R))) - Math.PI / 2)
      for (const width of [0.1, 0.9]) expect(flareLengthM(slotMouth(width, h), R)).toBeCloseTo(closed, 9)
    }
  })

  it('tends to the plain end as it vanishes, and to first order as the doc says', () => {
    expect(end(0.85, 0.05, 0)).toBeCloseTo(0.85 * 0.05, 12)
    const R = 1e-5
    expect(flareLengthM(roundMouth(0.05), R) / R).toBeCloseTo(1 - 2 * (1 - Math.PI / 4) * (R / 0.05), 7)
  })

  it('carries its end correction at the mouth, as mass: k·r over the area of the mouth', () => {
    // Two end factors differ by Δk·rm of pipe of the mouth's area, seen from the straight pipe (a/rm)² as long.
    const [a, R] = [0.05, 0.03]
    const mouth = a + R
    expect(end(0.85, a, R) - end(0.613, a, R)).toBeCloseTo((0.85 - 0.613) * mouth * (a / mouth) ** 2, 12)
  })

  it('makes the end lighter the wider it opens', () => {
    const ends = [0, 0.01, 0.02, 0.05].map(flare => end(0.85, 0.05, flare))
    expect([...ends].sort((x, y) => y - x)).toEqual(ends)
  })

  it('takes π·R²·(2·r·(1 − π/4) + R·(5/3 − π/2)) round its tube, and a part of it by a fine midpoint sum', () => {
    const [r, R] = [0.053, 0.02]
    const whole = Math.PI * R ** 2 * (2 * r * (1 - Math.PI / 4) + R * (5 / 3 - Math.PI / 2))
    expect(flareRingM3(r, R, R)).toBeCloseTo(whole, 12)
    const [steps, part] = [100_000, 0.012]
    let sum = 0
    for (let step = 0; step < steps; step++) {
      const u = ((step + 0.5) / steps) * part
      const g = R - Math.sqrt(R ** 2 - u ** 2)
      sum += Math.PI * ((r + g) ** 2 - r ** 2)
    }
    expect(flareRingM3(r, R, part)).toBeCloseTo((sum * part) / steps, 12)
    expect(flareRingM3(r, R, -0.01)).toBe(0)
  })
})

describe('golden section', () => {
  it('finds a maximum', () => expect(goldenMaximum(x => -((x - 2) ** 2), 0, 5)).toBeCloseTo(2, 6))
})
