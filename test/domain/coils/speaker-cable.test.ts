import { describe, expect, it } from 'vitest'
import type { SpeakerCableRequest } from '../../../src/contract/supply/speaker-cable.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { cableLossDb, dampingFactorAtLoad } from '../../../src/domain/coils/cable-effects.ts'
import { chooseSpeakerCable } from '../../../src/domain/coils/speaker-cable.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { qesFactor } from '../../../src/domain/driver/series-resistance.ts'
import { expectPrinted } from '../../support/printed.ts'

const choose = (powerW: number, loadOhm: number, request: SpeakerCableRequest) =>
  chooseSpeakerCable(request, loadOhm, powerW, assumptions())

// Resistance of annealed copper by hand: 0.0172414 Ω·mm²/m × 1.02 / area, areas of ASTM B258 as printed to four figures.
const areas = { '16 AWG': 1.309, '14 AWG': 2.081, '12 AWG': 3.309, '10 AWG': 5.261, '8 AWG': 8.366 } as const

describe('loudspeaker cable', () => {
  it('loses what a voltage divider loses (hand calculation)', () => {
    expectPrinted(cableLossDb(4, 0.08063), '-0.173')
    expectPrinted(cableLossDb(1, 0.08063), '-0.6735')
    expectPrinted(cableLossDb(1, 0.03189), '-0.2727')
  })

  it('damps and raises Qes as the loop resistance says (hand calculation)', () => {
    expectPrinted(dampingFactorAtLoad(4, 200, 0.0806), '39.76')
    expectPrinted(qesFactor(0.1, 3.2), '1.03125')
  })

  for (const [designation, areaMm2] of Object.entries(areas)) {
    it(`takes 3 m of ${designation} both ways (ASTM B258 area, copper of IEC 60028)`, () => {
      const { cable } = choose(1, 4, { lengthM: 3, designation })
      expect(cable?.loopOhm).toBeCloseTo((6 * 0.0172414 * 1.02) / areaMm2, 4)
      expect(cable?.areaM2).toBeCloseTo(areaMm2 / 1e6, 9)
    })
  }

  // Common practice, no source: 12 to 16 AWG cover ordinary loads; 80 °C insulation, 5 % of the load.
  for (const [powerW, ohm, lengthM, expected] of [
    [75, 4, 3, '16 AWG'],
    [300, 4, 3, '16 AWG'],
    [500, 2, 3, '16 AWG'],
    [500, 1, 2, '14 AWG'],
    [1000, 1, 5, '10 AWG']
  ] as const) {
    it(`runs ${powerW} W into ${ohm} Ω over ${lengthM} m through ${expected}`, () => {
      expect(choose(powerW, ohm, { lengthM }).cable?.designation).toBe(expected)
    })
  }

  it('says which limit governed', () => {
    // 31.6 A: 16 AWG (20 A at 80 °C) and 14 AWG (25 A) are too hot, 12 AWG (35 A) holds (33 CFR 183.425 Table 5).
    const { cable, candidates } = choose(1000, 1, { lengthM: 1 })
    expect(cable).toMatchObject({ designation: '12 AWG', governedBy: 'ampacity', ampacityA: 35 })
    expect(candidates.slice(0, 3).map(({ fails }) => fails)).toEqual(['ampacity', 'ampacity', undefined])
    expect(choose(1000, 1, { lengthM: 5 }).cable?.governedBy).toBe('resistance')
    expect(choose(10, 8, { lengthM: 1 }).cable?.governedBy).toBe('smallest-size')
  })

  it('never gets thinner when the way, the power or the heat grows', () => {
    const order = Object.keys(areas)
    const sizeOf = (powerW: number, lengthM: number, ambientC: number) =>
      order.indexOf(choose(powerW, 1, { lengthM, ambientC }).cable?.designation ?? '8 AWG')
    for (const powerW of [50, 200, 400, 800]) {
      for (const lengthM of [0.5, 1, 2, 4]) {
        const size = sizeOf(powerW, lengthM, 30)
        expect(sizeOf(powerW * 2, lengthM, 30)).toBeGreaterThanOrEqual(size)
        expect(sizeOf(powerW, lengthM * 2, 30)).toBeGreaterThanOrEqual(size)
        expect(sizeOf(powerW, lengthM, 60)).toBeGreaterThanOrEqual(size)
      }
    }
  })

  it('gives no cable and says why when none is thick enough', () => {
    const { cable, candidates, cautions } = choose(10_000, 0.5, { lengthM: 5 })
    expect(cable).toBeUndefined()
    expect(candidates.every(({ fails }) => fails !== undefined)).toBe(true)
    expect(cautions.map(({ code }) => code)).toEqual(['no-speaker-cable'])
  })

  it('judges the cable that is there, and copper-clad aluminium as what it is', () => {
    const thin = choose(500, 1, { lengthM: 4, designation: '16 AWG' })
    expect(thin.cable?.fails).toBe('ampacity')
    expect(thin.cautions.map(({ code }) => code)).toEqual(['speaker-cable-too-thin'])
    const copper = choose(1, 4, { lengthM: 3, designation: '14 AWG' }).cable?.loopOhm ?? 0
    const clad = choose(1, 4, { lengthM: 3, designation: '14 AWG', conductor: 'unknown' }).cable?.loopOhm ?? 0
    expectPrinted(clad / copper, '1.590')
  })

  it('gives the acoustic calculation its series resistance and says what it does to Qes', () => {
    const { cable } = choose(500, 1, { lengthM: 2, reOhm: 0.8, qes: 0.5, amplifierDampingFactor: 100 })
    // 1 Ω over a damping factor of 100 is 10 mΩ in the amplifier
    expect(cable?.sourceSeriesOhm).toBeCloseTo((cable?.loopOhm ?? 0) + 0.01, 12)
    expect(cable?.qes).toBeCloseTo(0.5 * (1 + ((cable?.loopOhm ?? 0) + 0.01) / 0.8), 12)
  })

  it('refuses insulation below its surroundings, unknown sizes, and qes without reOhm', () => {
    const refused = (request: SpeakerCableRequest) => {
      try {
        choose(10, 4, request)
      } catch (error) {
        if (error instanceof DesignError) return [error.code, error.faults[0]?.field]
      }
      return undefined
    }
    expect(refused({ lengthM: 1, insulationC: 60, ambientC: 70 })).toEqual([
      'insulation-below-ambient',
      'cable.insulationC'
    ])
    expect(refused({ lengthM: 1, designation: '14' })).toEqual(['missing-input', 'cable.designation'])
    expect(refused({ lengthM: 1, designation: '77 AWG' })).toEqual(['unknown-designation', 'cable.designation'])
    expect(refused({ lengthM: 1, qes: 0.5 })).toEqual(['missing-input', 'cable.reOhm'])
  })
})
