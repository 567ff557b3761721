import { describe, expect, it } from 'vitest'
import { aWeightingDb, exposureTimeS } from '../../../src/domain/cabin/exposure.ts'
import { hearingCautions, spokenTime } from '../../../src/domain/cabin/hearing.ts'
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

  it('warns of the frequency that is loudest for the ear, not of the highest level', () => {
    const [said] = hearingCautions(Float64Array.of(31.623, 100), Float64Array.of(130, 120))
    expect(said).toMatchObject({
      code: 'hearing-exposure',
      level: 'care',
      figures: { frequencyHz: 100, seatLevelDb: 120 }
    })
    // 120 − 19.1 = 100.9 dB: 8 h/2^5.3 = 12.2 min
    expect(said?.message).toContain('12 min')
  })

  it('is silent where a sine does not reach the limit in eight hours', () =>
    expect(hearingCautions(Float64Array.of(31.623), Float64Array.of(124))).toEqual([]))

  it('speaks of time as a person does', () =>
    expect([0.2, 45, 900, 10_800].map(spokenTime)).toEqual(['1 s', '45 s', '15 min', '3.0 h']))
})
