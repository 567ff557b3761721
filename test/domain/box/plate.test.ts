/** Plates against printed coefficients, closed forms and laws of similarity. */
import { describe, expect, it } from 'vitest'
import { frequencyWithDrivers, ringShare } from '../../../src/domain/box/stiffness/driver-on-plate.ts'
import { checkPanelVibration } from '../../../src/domain/box/stiffness/panel-vibration.ts'
import {
  clamped,
  type Plate,
  type PlateEdges,
  plateDeflection,
  plateFrequency,
  supported
} from '../../../src/domain/box/stiffness/plate.ts'
import { boards } from '../../../src/domain/material/boards.ts'

const unit = (xM: number, yM: number): Plate => ({
  xM,
  yM,
  rigidity: { x: 1, y: 1, twist: 1 },
  massPerAreaKgPerM2: 1
})
/** ω·a²·sqrt(ρh/D). */
const parameter = (ratio: number, edges: PlateEdges) => plateFrequency(unit(ratio, 1), edges) * 2 * Math.PI * ratio ** 2

/** The Ritz values lie below the printed upper bounds, by less than 0.05 %. */
function expectJustBelow(value: number, printed: number): void {
  expect(value).toBeLessThan(printed * 1.00001)
  expect(value).toBeGreaterThan(printed * 0.9995)
}

describe('plate frequency', () => {
  // A. W. Leissa, J. Sound Vib. 31(3) (1973) 257-293, all edges clamped; from memory.
  for (const [ratio, printed] of [
    [0.4, 23.648],
    [2 / 3, 27.01],
    [1, 35.992],
    [1.5, 60.772],
    [2.5, 147.8]
  ] as const) {
    it(`is ${printed} with clamped edges at a/b = ${ratio.toPrecision(3)}`, () =>
      expectJustBelow(parameter(ratio, clamped), printed))
  }

  // Leissa 1973, square plates with mixed edges; from memory.
  const C = 'clamped'
  const S = 'supported'
  for (const [name, x, y, printed] of [
    ['C-SS-C-SS', [C, C], [S, S], 28.951],
    ['C-SS-SS-SS', [C, S], [S, S], 23.646],
    ['C-C-SS-SS', [C, S], [C, S], 27.056],
    ['C-C-C-SS', [C, C], [C, S], 31.829]
  ] as const) {
    it(`is ${printed} for a square with ${name}`, () => {
      const value = parameter(1, { x, y } as PlateEdges)
      expect(Math.abs(value / printed - 1)).toBeLessThan(5e-4)
    })
  }

  it('is π²(1 + (a/b)²) with supported edges (closed form)', () => {
    for (const ratio of [0.1, 0.4, 1, 2.5, 8]) {
      expect(parameter(ratio, supported) / (Math.PI ** 2 * (1 + ratio ** 2))).toBeCloseTo(1, 8)
    }
  })

  it('is the closed form of an orthotropic plate with supported edges (Hearmon 1959, Leissa 1969, from memory)', () => {
    const plate = { xM: 0.604, yM: 0.364, rigidity: { x: 4600, y: 3440, twist: 620 }, massPerAreaKgPerM2: 12.1 }
    const { rigidity: d, xM: a, yM: b, massPerAreaKgPerM2: m } = plate
    const exact = (Math.PI / 2) * Math.sqrt((d.x / a ** 4 + (2 * d.twist) / (a * b) ** 2 + d.y / b ** 4) / m)
    expect(plateFrequency(plate, supported) / exact).toBeCloseTo(1, 8)
  })

  it('lies below the one-term figure of a clamped plate by less than 1 % (Hearmon 1959, K 500.564, C 12.302, from memory)', () => {
    for (const [x, y] of [
      [4600, 3440],
      [1000, 1000],
      [2000, 6000]
    ] as const) {
      const plate = { xM: 0.5, yM: 0.364, rigidity: { x, y, twist: 700 }, massPerAreaKgPerM2: 12.1 }
      const { xM: a, yM: b } = plate
      const r = a / b
      const one =
        Math.sqrt((500.564 * (x + y * r ** 4) + 2 * 12.302 ** 2 * 700 * r ** 2) / 12.1) / (2 * Math.PI * a * a)
      const share = plateFrequency(plate, clamped) / one
      expect(share).toBeLessThan(1)
      expect(share).toBeGreaterThan(0.99)
    }
  })

  it('is 2.377 Hz for the 10 m steel square (NAFEMS FV13, 1990, from memory)', () => {
    const { result } = checkPanelVibration({
      lengthM: 10,
      widthM: 10,
      thicknessM: 0.05,
      board: { elasticModulusPa: 200e9, poisson: 0.3, densityKgPerM3: 8000 }
    })
    expect(Math.abs(result.plain.supportedHz / 2.377 - 1)).toBeLessThan(1e-3)
  })

  it('falls with the square of the size and rises with the thickness', () => {
    const at = (k: number, t: number) =>
      checkPanelVibration({ lengthM: 0.6 * k, widthM: 0.4 * k, thicknessM: t, board: { elasticModulusPa: 3e9 } }).result
        .plain
    expect(at(2, 0.018).clampedHz / at(1, 0.018).clampedHz).toBeCloseTo(0.25, 9)
    expect(at(1, 0.019).supportedHz / at(1, 0.018).supportedHz).toBeCloseTo(19 / 18, 9)
  })
})

describe('plate deflection', () => {
  // Roark's Formulas for Stress and Strain, 7th ed., Table 11.4: y = α·q·b⁴/(E·t³), ν 0.3, b the short side.
  // Case 1a (supported): text seen. Case 8a (clamped): from memory.
  for (const [ratio, simple, fixed] of [
    [1, 0.0444, 0.0138],
    [1.2, 0.0616, 0.0188],
    [1.4, 0.077, 0.0226],
    [1.6, 0.0906, 0.0251],
    [1.8, 0.1017, 0.0267],
    [2, 0.111, 0.0277]
  ] as const) {
    it(`has Roark's coefficients at a/b = ${ratio}`, () => {
      const alpha = (edges: PlateEdges) => plateDeflection(unit(ratio, 1), edges).largestMPerPa * 12 * (1 - 0.3 ** 2)
      expect(Math.abs(alpha(supported) / simple - 1)).toBeLessThan(0.005)
      expect(Math.abs(alpha(clamped) / fixed - 1)).toBeLessThan(0.007)
    })
  }

  it('has the mean of the Navier series for a supported square', () => {
    let mean = 0
    for (let m = 1; m < 60; m += 2) {
      for (let n = 1; n < 60; n += 2) mean += 64 / (Math.PI ** 8 * m * m * n * n * (m * m + n * n) ** 2)
    }
    expect(plateDeflection(unit(1, 1), supported).meanMPerPa / mean).toBeCloseTo(1, 5)
  })
})

describe('a panel by itself', () => {
  const panel = { lengthM: 0.604, widthM: 0.364, thicknessM: 0.018 }
  const { result } = checkPanelVibration({ ...panel, pressurePa: 1702 })

  it('rings at 148.5 Hz, halved at 267.3 Hz (closed form, E 2.2 GPa, ν 0.25, 750 kg/m³)', () => {
    const d = (2.2e9 * 0.018 ** 3) / (12 * (1 - 0.25 ** 2))
    const f = (n: number) => (Math.PI / 2) * Math.sqrt(d / (750 * 0.018)) * (1 / 0.364 ** 2 + n ** 2 / 0.604 ** 2)
    expect(result.plain.supportedHz).toBeCloseTo(f(1), 6)
    expect(result.halved.supportedHz).toBeCloseTo(f(2), 6)
    expect(result.plain.supportedHz).toBeCloseTo(148.5, 1)
    expect(result.halved.supportedHz).toBeCloseTo(267.3, 1)
  })

  it('does not pass 180 Hz plain and does with two spans', () => {
    expect(result.passes).toBe(false)
    expect(result.spansToPass).toBe(2)
    expect(checkPanelVibration({ ...panel, spans: { ofLength: 2 } }).result.passes).toBe(true)
    expect(checkPanelVibration({ ...panel, upperHz: 90 }).result.passes).toBe(true)
  })

  it('bends 0.226 mm supported and 0.062 mm clamped under 1702 Pa (Roark coefficients between b/a 1.6 and 1.8)', () => {
    expect((result.bending?.supported.largestM ?? 0) * 1e3).toBeCloseTo(0.226, 2)
    expect((result.bending?.clamped.largestM ?? 0) * 1e3).toBeCloseTo(0.062, 2)
  })

  it('is a third lower in plywood than an average modulus in the isotropic formula would say', () => {
    const ply = checkPanelVibration({
      ...panel,
      widthM: 0.364,
      thicknessM: 0.0177,
      board: { material: 'birch-plywood' }
    })
    const even = checkPanelVibration({
      ...panel,
      thicknessM: 0.0177,
      board: { elasticModulusPa: 8.75e9, poisson: 0.03, densityKgPerM3: 685 }
    })
    expect(ply.result.plain.supportedHz).toBeLessThan(even.result.plain.supportedHz * 0.85)
  })

  it('takes part in the mode by the mean over its screws (numerical average over the circle)', () => {
    const plate = { xM: 0.364, yM: 0.604 }
    let sum = 0
    for (let i = 0; i < 720; i++) {
      const angle = (i * Math.PI) / 360
      const [x, y] = [0.2 + 0.1 * Math.cos(angle), 0.25 + 0.1 * Math.sin(angle)]
      sum += Math.sin((Math.PI * x) / 0.364) * Math.sin((Math.PI * y) / 0.604)
    }
    expect(ringShare(plate, { xM: 0.2, yM: 0.25, radiusM: 0.1 })).toBeCloseTo(sum / 720, 9)
    expect(ringShare(plate, { xM: 0.182, yM: 0.302, radiusM: 0.15 })).toBeCloseTo(0.505384, 6)
  })

  it('falls to half with 9 kg on its screws, and a board twice as thick brings it back (derived)', () => {
    const of = (layers: number) =>
      checkPanelVibration({ ...panel, layers, driver: { massKg: 9, screwCircleDiameterM: 0.3 } }).result.withDriverHz
    expect(of(1)).toBeCloseTo(73, 0)
    expect(of(2)).toBeCloseTo(186, 0)
    expect(frequencyWithDrivers(unit(1, 1), [])).toBeCloseTo(Math.PI, 9)
  })
})

describe('boards', () => {
  it('are equal veneers of 17 500 N/mm² in birch (Handbook of Finnish Plywood 2002, as reprinted): both ways add up', () => {
    for (const { alongNPerMm2, acrossNPerMm2 } of boards['birch-plywood'].rows) {
      expect(alongNPerMm2 + acrossNPerMm2).toBe(17_500)
    }
  })

  it('follow the lay-up within 2 %: equal 1.4 mm veneers, 0.25 mm sanded off the faces', () => {
    const plies: Record<number, number> = { 9: 7, 12: 9, 15: 11, 18: 13, 21: 15, 24: 17 }
    for (const { nominalMm, alongNPerMm2 } of boards['birch-plywood'].rows) {
      const n = plies[nominalMm] ?? 0
      const half = (n * 1.4) / 2 - 0.25
      let parallel = 0
      for (let ply = 0; ply < n; ply += 2) {
        const from = Math.max(-half, -(n * 1.4) / 2 + ply * 1.4)
        const to = Math.min(half, -(n * 1.4) / 2 + (ply + 1) * 1.4)
        parallel += (to ** 3 - from ** 3) / 3
      }
      const whole = (2 * half ** 3) / 3
      expect(Math.abs((17_500 * parallel) / whole / alongNPerMm2 - 1)).toBeLessThan(0.02)
    }
  })

  it('grow in order of thickness', () => {
    for (const { rows } of Object.values(boards)) {
      const nominal = rows.map(({ nominalMm }) => nominalMm)
      expect(nominal).toEqual(nominal.toSorted((a, b) => a - b))
    }
  })
})
