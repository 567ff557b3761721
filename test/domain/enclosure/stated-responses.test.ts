/** The figures that formulas of a response name as their checks, by textbook forms worked beside them. */
import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { EnclosureRequest } from '../../../src/domain/enclosure/model/request.ts'
import { expectPrinted } from '../../support/printed.ts'

const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }
const stiffnessPa = 1.2041 * 343.2 ** 2
const driver = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.049, reOhm: 3.4 }
const ask = (enclosure: EnclosureRequest, more: object = {}, sheet: object = {}) =>
  computeResponse({ driver: { ...driver, ...sheet }, enclosure, air, source: { voltageV: 1 }, ...more })

describe('a closed box (closedScalars)', () => {
  it('of fs 30, Qts 0.412844 and Vas 60 L in 30 L: α 2, fc 51.96 Hz, Qtc 0.7151 (Small 1972, from memory)', () => {
    const { scalars } = ask({ kind: 'closed', rear: { netVolumeM3: 0.03 } }).result
    expectPrinted((5 * 0.45) / 5.45, '0.412844')
    expect(scalars.alpha).toBeCloseTo(2, 9)
    expectPrinted(scalars.fcHz ?? 0, '51.96')
    expectPrinted(scalars.qtc ?? 0, '0.7151')
  })

  it('of Qtc 1 has half power at 0.786151 of fc (halfPower): x = √(½·(√5 − 1)) solves x⁴ = ½·((1 − x²)² + x²)', () => {
    // Qts = 1/√3, so that α = 2 lifts it to 1
    const qes = 1 / (Math.sqrt(3) - 1 / 5)
    const { scalars } = ask({ kind: 'closed', rear: { netVolumeM3: 0.03 } }, {}, { qes }).result
    expectPrinted((scalars.f3Hz ?? 0) / (scalars.fcHz ?? 1), '0.786151')
    expect(Math.sqrt((Math.sqrt(5) - 1) / 2)).toBeCloseTo(0.786151, 6)
  })
})

describe('passive radiators (radiatorsOf)', () => {
  it('of 18 Hz and Vap 2.5 times the box are tuned by √3.5 to 33.67 Hz, one or two of them (Small 1974, from memory)', () => {
    for (const count of [1, 2]) {
      const areaM2 = 0.049
      const complianceMPerN = (2.5 * 0.05) / (count * stiffnessPa * areaM2 ** 2)
      const massKg = 1 / ((2 * Math.PI * 18) ** 2 * complianceMPerN)
      const passiveRadiators = { count, areaM2, massKg, complianceMPerN }
      const { scalars } = ask({ kind: 'passive-radiator', rear: { netVolumeM3: 0.05, passiveRadiators } }).result
      expectPrinted(scalars.tuningHz ?? 0, '33.67')
    }
  })
})

describe('the air behind a cone (chamberSwings, springCautions)', () => {
  const rear = { netVolumeM3: 0.012 }
  const at = (voltageV: number) => {
    const { result, cautions } = ask({ kind: 'closed', rear }, { source: { voltageV }, frequenciesHz: [20] })
    const excursionM = result.curves.coneExcursionM?.[0] ?? 0
    return { excursionM, told: cautions.find(({ code }) => code === 'air-spring-stiffens') }
  }

  it('squeezed by Sd·x/V of 0.08 has 4.8 % of second harmonic, (γ + 1)/4 of it, under 0.08·ρc²/√2', () => {
    const volts = (0.08 * rear.netVolumeM3) / (0.049 * at(1).excursionM)
    const { figures, level } = at(volts * 1.0001).told ?? expect.unreachable()
    expect(level).toBe('note')
    expect(figures?.sharePercent).toBeCloseTo(8, 1)
    expectPrinted(figures?.harmonicPercent ?? 0, '4.8')
    expect(figures?.pressureKpa).toBeCloseTo((0.08 * stiffnessPa) / Math.SQRT2 / 1e3, 1)
    expect(figures?.frequencyHz).toBe(20)
    // a twelfth of a swept volume is where it is told, a sixth where it is grave: Xmax is read at 10 % (IEC 62458, from memory)
    expect(at(volts * 0.9999).told).toBeUndefined()
    expect(at(volts * 1.9999).told?.level).toBe('note')
    expect(at(volts * 2.0001).told?.level).toBe('care')
  })
})
