import { describe, expect, it } from 'vitest'
import type { Cabin } from '../../../src/contract/acoustics/cabin.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { cabinGain, measuredGainDb } from '../../../src/domain/cabin/cabin-gain.ts'
import {
  lowestModeHz,
  pressureVesselCornerHz,
  pressureVesselGainDb
} from '../../../src/domain/cabin/pressure-vessel.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { expectPrinted } from '../../support/printed.ts'

const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }
const gain = (cabin: Cabin, ...frequencies: number[]) =>
  cabinGain(cabin, air.soundSpeedMPerS, Float64Array.from(frequencies), assumptions())

describe('the cabin as a pressure vessel', () => {
  // derived: rho c² U/(omega V) = rho omega U/(2 pi r), worked by hand
  for (const [volumeM3, corner] of [
    [2.5, '86.594'],
    [3, '79.049'],
    [4, '68.4585']
  ] as const) {
    it(`has its corner at ${corner} Hz in ${volumeM3} m³`, () =>
      expectPrinted(pressureVesselCornerHz(volumeM3, air.soundSpeedMPerS), corner))
  }

  it('has the half-space level at its corner, by both pressures written out', () => {
    const volumeM3 = 3.3
    const omega = 2 * Math.PI * pressureVesselCornerHz(volumeM3, air.soundSpeedMPerS)
    const vessel = (air.densityKgPerM3 * air.soundSpeedMPerS ** 2) / (omega * volumeM3)
    expect(vessel).toBeCloseTo((air.densityKgPerM3 * omega) / (2 * Math.PI), 12)
  })

  it('has its lowest mode at c/2L (2.5 m: 68.64 Hz; Morse & Ingard, from memory)', () =>
    expectPrinted(lowestModeHz(2.5, air.soundSpeedMPerS), '68.64'))

  it('gives the level of a sealed cabin well below its corner: 105.49 dB for 0.01 m³/s, 20 Hz, 3 m³ (derived)', () => {
    const cornerHz = pressureVesselCornerHz(3, air.soundSpeedMPerS)
    const tight = { cornerHz, cornerQ: Math.SQRT1_2, leakCornerHz: 0.2, leakQ: Math.SQRT1_2 }
    const halfSpace = 20 * Math.log10((air.densityKgPerM3 * 20 * 0.01) / 20e-6)
    expect(Math.abs(halfSpace + pressureVesselGainDb(tight, 20) - 105.49)).toBeLessThan(0.02)
  })

  it('rises 12 dB an octave between leak and corner, and is level outside', () => {
    const vessel = { cornerHz: 400, cornerQ: 0.7, leakCornerHz: 0.5, leakQ: 0.7 }
    expect(pressureVesselGainDb(vessel, 10) - pressureVesselGainDb(vessel, 20)).toBeCloseTo(12.04, 1)
    expect(pressureVesselGainDb(vessel, 0.001)).toBeCloseTo(40 * Math.log10(800), 4)
    expect(pressureVesselGainDb(vessel, 1e6)).toBeCloseTo(0, 4)
  })

  it('holds the gain to 20 dB by the default leak, and says so', () => {
    const assume = assumptions()
    const { gainDb, model } = cabinGain({ volumeM3: 2.5 }, 343.21, Float64Array.of(0.01), assume)
    expect(gainDb[0]).toBeCloseTo(20, 6)
    expect(assume.list.map(({ field }) => field)).toEqual(['cabin.cornerQ', 'cabin.leakQ', 'cabin.leakCornerHz'])
    expect(model).toMatchObject({ model: 'pressure-vessel', uncertaintyDb: 6 })
    expect(gain({ volumeM3: 2.5 }, 30).cautions.map(({ code }) => code)).toEqual(['cabin-model'])
  })

  it('takes the corner from the volume and the mode from the length', () => {
    const both = gain({ volumeM3: 3, lengthM: 2.5 }, 30, 100)
    expect(both.model.cornerHz).toBeCloseTo(79.049, 2)
    expect(both.model.lowestModeHz).toBeCloseTo(68.64, 2)
    expect(both.cautions.map(({ code }) => code)).toEqual(['cabin-modes'])
    expect(gain({ lengthM: 2.5 }, 30).model.cornerHz).toBeCloseTo(68.64, 2)
  })
})

describe('a measured curve', () => {
  const measured = { frequencyHz: [10, 40, 160], gainDb: [18, 6, -2] }

  it('passes through its points, is linear over the logarithm between them and held beyond', () => {
    expect([10, 40, 160].map(f => measuredGainDb(measured, f))).toEqual([18, 6, -2])
    expect(measuredGainDb(measured, 20)).toBeCloseTo(12, 12)
    expect(measuredGainDb(measured, 80)).toBeCloseTo(2, 12)
    expect([5, 300].map(f => measuredGainDb(measured, f))).toEqual([18, -2])
  })

  it('is used as it is, and says where it had to be held', () => {
    expect(gain({ measured }, 20, 80)).toMatchObject({ model: { model: 'measured' }, cautions: [] })
    expect(gain({ measured }, 5).cautions.map(({ code }) => code)).toEqual(['cabin-curve-held'])
  })

  for (const [name, cabin, code, field] of [
    ['beside a model', { measured, volumeM3: 3 }, 'conflicting-input', 'cabin.volumeM3'],
    [
      'whose frequencies fall',
      { measured: { frequencyHz: [40, 20], gainDb: [1, 2] } },
      'conflicting-input',
      'cabin.measured.frequencyHz[1]'
    ],
    [
      'with a gain missing',
      { measured: { frequencyHz: [20, 40], gainDb: [1] } },
      'conflicting-input',
      'cabin.measured.gainDb'
    ],
    ['nor a model given', {}, 'missing-input', 'cabin'],
    ['of a leak above the corner', { volumeM3: 3, leakCornerHz: 90 }, 'out-of-range', 'cabin.leakCornerHz']
  ] as const) {
    it(`is refused ${name}`, () => {
      const refusal = (() => {
        try {
          return gain(cabin, 30)
        } catch (error) {
          return error
        }
      })()
      expect(refusal).toBeInstanceOf(DesignError)
      expect(refusal).toMatchObject({ code, faults: [{ field }] })
    })
  }
})
