import { describe, expect, it } from 'vitest'
import {
  bandPass4,
  bandPass4ForEdges,
  prototypeHalfPower
} from '../../../src/domain/enclosure/alignment/band-pass-4.ts'
import { radiatorComplianceMPerN, radiatorTuning } from '../../../src/domain/enclosure/alignment/passive-radiator.ts'
import { levelDb } from '../../../src/domain/enclosure/alignment/rational-response.ts'
import { usualLining } from '../../../src/domain/enclosure/model/lining.ts'
import { passBandOf } from '../../../src/domain/enclosure/model/pass-band.ts'
import { bandPass4Response, fibreAir, ISOTHERMAL_FACTOR, passiveRadiatorResponse } from '../../support/closed-forms.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('passive radiator', () => {
  it('has the response of its circuit (Small 1974, from memory, rederived symbolically)', () => {
    const response = passiveRadiatorResponse({ alpha: 1.2, delta: 2.5, ratio: 0.6, qt: 0.35 }, 30)
    expectPrinted(10 ** (levelDb(response, 24) / 20), '0.126053')
  })

  it('has its notch at the free resonance of the radiator', () => {
    const response = passiveRadiatorResponse({ alpha: 1.2, delta: 2.5, ratio: 0.6, qt: 0.35 }, 30)
    expect(levelDb(response, 18)).toBeLessThan(-250)
  })

  it('is tuned by mass and compliance to what it came from (δ 2.5, fP 18 Hz ↔ fB 33.6749 Hz)', () => {
    const size = { count: 2, areaM2: 0.035 }
    const compliance = radiatorComplianceMPerN(2.5, 0.05, size, 141_830)
    const { delta, resonanceHz, massKg } = radiatorTuning(33.6749, 0.05, size, compliance, 141_830)
    expect(delta).toBeCloseTo(2.5, 12)
    expectPrinted(resonanceHz, '18.0000', { coarsest: 1e-4 })
    expect(1 / (2 * Math.PI * Math.sqrt(massKg * compliance)) / resonanceHz).toBeCloseTo(1, 12)
  })

  it('tends to a port of the same mass as its compliance grows', () => {
    const size = { count: 1, areaM2: 0.05 }
    const mass = (delta: number) =>
      radiatorTuning(30, 0.06, size, radiatorComplianceMPerN(delta, 0.06, size, 141_830), 141_830).massKg
    const portMass = (141_830 * 0.05 ** 2) / (0.06 * (2 * Math.PI * 30) ** 2)
    expect(mass(1e6) / portMass).toBeCloseTo(1, 5)
    expect(mass(2) / portMass).toBeCloseTo(1.5, 9)
  })
})

describe('band-pass of fourth order', () => {
  /** Fincham 1979 / Geddes 1989, from memory, recomputed. */
  for (const [s, x3, ripple] of [
    [0.5, '1.27202', '1.249'],
    [0.6, '1.14824', '0.3546'],
    [Math.SQRT1_2, '1.00000', '0']
  ] as const) {
    it(`has the prototype of S ${s.toPrecision(3)}`, () => {
      expectPrinted(prototypeHalfPower(s), x3)
      const { rippleDb } = bandPass4({ fsHz: 32, qts: 0.39, vasM3: 0.055 }, s, 0.75)
      expect(Math.abs(rippleDb - Number(ripple))).toBeLessThan(5e-4)
    })
  }

  it('gives the chambers and edges of a worked example (from memory, network agrees)', () => {
    const box = bandPass4({ fsHz: 32, qts: 0.392_523_36, vasM3: 0.055 }, 0.6, 0.75)
    expectPrinted(box.frontVolumeM3, '0.0122027')
    expectPrinted(box.rearVolumeM3, '0.0207482')
    expectPrinted(box.centreHz, '61.1429')
    expectPrinted(box.lowHz, '33.5203')
    expectPrinted(box.highHz, '111.528')
    expectPrinted(box.gainDb, '-1.8303')
  })

  it('is half power down at its edges, which mirror at the centre', () => {
    const box = bandPass4({ fsHz: 32, qts: 0.39, vasM3: 0.055 }, 0.6, 0.75)
    const response = bandPass4Response(box)
    const at = (f: number) => levelDb(response, f)
    expect(at(box.centreHz)).toBeCloseTo(box.gainDb, 9)
    expect(at(box.lowHz) - at(box.centreHz)).toBeCloseTo(10 * Math.log10(0.5), 9)
    expect(box.lowHz * box.highHz).toBeCloseTo(box.centreHz ** 2, 9)
    const { f3Hz, f3UpperHz } = passBandOf(f => at(f) - box.gainDb, 5, 1000)
    expect(f3Hz).toBeCloseTo(box.lowHz, 9)
    expect(f3UpperHz).toBeCloseTo(box.highHz, 9)
  })

  it('comes back from its edges', () => {
    const driver = { fsHz: 32, qts: 0.39, vasM3: 0.055 }
    for (const s of [0.4, 0.6, 0.9]) {
      const box = bandPass4(driver, s, 0.7)
      const back = bandPass4ForEdges(driver, box.lowHz, box.highHz)
      expect(back?.s).toBeCloseTo(s, 9)
      expect((back?.frontVolumeM3 ?? 0) / box.frontVolumeM3).toBeCloseTo(1, 9)
    }
    expect(bandPass4ForEdges(driver, 20, 40)).toBeUndefined()
    expect(bandPass4ForEdges(driver, 30, 3000)).toBeUndefined()
  })
})

describe('lining', () => {
  it('lies between adiabatic and isothermal air and loses most in between', () => {
    expect(fibreAir(30, 1e-9).volumeFactor).toBeCloseTo(ISOTHERMAL_FACTOR, 9)
    expect(fibreAir(30, 1e6).volumeFactor).toBeCloseTo(1, 9)
    expect(fibreAir(30, 1e-9).absorptionQ).toBeGreaterThan(1e5)
    const { volumeFactor, absorptionQ } = fibreAir(30, 1 / (2 * Math.PI * 30))
    expect(volumeFactor).toBeCloseTo(1.2, 12)
    expect(absorptionQ).toBeCloseTo(6, 12)
  })

  it('keeps to its physical bound in practice', () => {
    for (const { volumeFactor, range } of Object.values(usualLining)) {
      expect(volumeFactor).toBeGreaterThanOrEqual(range[0])
      expect(volumeFactor).toBeLessThanOrEqual(range[1])
      expect(range[1]).toBeLessThan(ISOTHERMAL_FACTOR)
    }
  })
})
