import { describe, expect, it } from 'vitest'
import { aWeightingDb, cWeightingDb, exposureTimeS, peakLevelDb } from '../../../src/domain/cabin/exposure.ts'
import { hearingCautions, spokenTime } from '../../../src/domain/cabin/hearing.ts'
import { inEnglish } from '../../../src/domain/say.ts'
import { expectPrinted } from '../../support/printed.ts'

describe('hearing', () => {
  // IEC 61672-1, table of A weighting at the exact base-ten frequencies: from memory
  for (const [power, printed] of [
    [1.0, '-70.4'],
    [1.3, '-50.5'],
    [1.5, '-39.4'],
    [1.6, '-34.6'],
    [1.7, '-30.2'],
    [1.8, '-26.2'],
    [1.9, '-22.5'],
    [2.0, '-19.1']
  ] as const) {
    it(`weights ${(10 ** power).toFixed(1)} Hz by ${printed} dB`, () =>
      expectPrinted(aWeightingDb(10 ** power), printed))
  }
  it('does not weight 1 kHz', () => expect(aWeightingDb(1000)).toBeCloseTo(0, 3))

  // NIOSH: time to reach the full daily dose, as its noise pages print it
  for (const [level, hours] of [
    [85, 8],
    [88, 4],
    [91, 2],
    [94, 1],
    [97, 0.5],
    [100, 0.25]
  ] as const) {
    it(`allows ${hours} h at ${level} dB A-weighted`, () => expect(exposureTimeS(level)).toBeCloseTo(hours * 3600, 9))
  }

  // IEC 61672-1, table of C weighting: from memory
  for (const [power, printed] of [
    [1.0, '-14.3'],
    [1.3, '-6.2'],
    [1.5, '-3.0']
  ] as const) {
    it(`weights ${(10 ** power).toFixed(1)} Hz by ${printed} dB, C`, () =>
      expectPrinted(cWeightingDb(10 ** power), printed))
  }
  it('weights 63.1 Hz by -0.8 dB and 1 kHz by nothing, C', () => {
    expect(Math.abs(cWeightingDb(10 ** 1.8) + 0.8)).toBeLessThan(0.05)
    expect(cWeightingDb(1000)).toBeCloseTo(0, 3)
  })
  it('peaks 3.01 dB above the level of a sine: 137 dB at 1 kHz are 140.01 dB (hand calculation)', () =>
    expect(peakLevelDb(1000, 137)).toBeCloseTo(140.01, 2))

  it('names the highest level of the curve, and beside it the dose of the loudest frequency for the ear', () => {
    const [said, ...more] = hearingCautions(Float64Array.of(31.623, 100), Float64Array.of(130, 120), 'seat')
    expect(said).toMatchObject({
      code: 'hearing-exposure',
      level: 'care',
      figures: { frequencyHz: 31.623, seatLevelDb: 130, weightedFrequencyHz: 100 }
    })
    expect(said?.message).toContain('130 dB at the seat (32 Hz)')
    // 120 − 19.1 = 100.9 dB: 8 h/2^5.3 = 12.2 min
    expect(said?.message).toContain('101 dB A-weighted at 100 Hz')
    expect(said?.message).toContain('12 min;')
    expect(more).toEqual([])
  })

  it('falls back on the level in half space at 1 m, and says that the car is louder', () => {
    const [said] = hearingCautions(Float64Array.of(50), Float64Array.of(121), 'half-space')
    expect(said?.message).toContain('121 dB in half space at 1 m, and more in the car')
    expect(said?.message).toContain('or less')
    expect(said?.figures).toMatchObject({ levelDb: 121 })
  })

  // 135 dB + 3.01 dB of crest − 3.0 dB of C weighting at 31.6 Hz = 135 dB(C)
  it('lets nobody sit inside from 134 dB, and stays at care: the seat is a model', () => {
    const said = hearingCautions(Float64Array.of(31.623), Float64Array.of(135), 'seat')
    expect(said.map(({ code, level }) => `${code}: ${level}`)).toEqual([
      'hearing-exposure: care',
      'hearing-extreme: care'
    ])
    expect(said[1]?.message).toContain('135 dB(C)')
    expect(hearingCautions(Float64Array.of(31.623), Float64Array.of(133.9), 'seat')).toHaveLength(1)
  })

  it('is silent where a sine does not reach the limit in eight hours', () =>
    expect(hearingCautions(Float64Array.of(31.623), Float64Array.of(124), 'seat')).toEqual([]))

  it('speaks of time as a person does', () =>
    expect([0.2, 45, 900, 10_800].map(seconds => inEnglish(spokenTime(seconds)))).toEqual([
      'under a minute',
      'under a minute',
      '15 min',
      '3.0 h'
    ]))
})
