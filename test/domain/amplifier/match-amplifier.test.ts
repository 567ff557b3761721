import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { AmplifierMatchRequest } from '../../../src/contract/amplifiers/amplifier-matching.ts'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { expectPrinted } from '../../support/printed.ts'

const monoBlock = {
  ratings: [
    { loadOhm: 4, powerW: 320 },
    { loadOhm: 2, powerW: 540 },
    { loadOhm: 1, powerW: 820 }
  ],
  minimumOhm: 1,
  channels: 1
}
const fourChannel = {
  ratings: [
    { loadOhm: 4, powerW: 150 },
    { loadOhm: 2, powerW: 300 }
  ],
  minimumOhm: 2,
  channels: 4
}
const driver = { powerW: 500, coils: 2, coilOhm: 4 }
const one = { amplifier: monoBlock, driver, driverCount: 1 }

const codes = (request: AmplifierMatchRequest) => matchAmplifier(request).cautions.map(({ code }) => code)

function refusal(request: AmplifierMatchRequest): DesignError {
  try {
    matchAmplifier(request)
  } catch (error) {
    if (error instanceof DesignError) return error
    throw error
  }
  throw new Error('was not refused')
}

describe('amplifier matching', () => {
  it('compares RMS with RMS at the wired load: 2 × 4 Ω in parallel make 2 Ω, where 540 W are published', () => {
    const { result } = matchAmplifier(one)
    expect(result.best).toMatchObject({ loadOhm: 2, outputPowerW: 540, powerRatio: 1.08, verdict: 'good' })
    // √(500 W · 2 Ω): the drivers end first.
    expectPrinted(result.gain?.targetVoltageV ?? 0, '31.62')
    expect(result.gain?.limitedBy).toBe('drivers')
  })

  it('aims at the sum of the drivers: 300 W and 300 W want 600 W (common practice, no source)', () => {
    const { result } = matchAmplifier({
      amplifier: { ratings: [{ loadOhm: 2, powerW: 600 }], minimumOhm: 2, channels: 1 },
      driver: { powerW: 300, coils: 1, coilOhm: 4 },
      driverCount: 2
    })
    expect(result.best).toMatchObject({ powerRatio: 1, driverPowerW: 300, totalPowerW: 600 })
    expect(result.gain?.limitedBy).toBe('amplifier')
  })

  it('never scales power to a lower load than a published one', () => {
    const request = { ...one, amplifier: { ratings: [{ loadOhm: 16, powerW: 320 }], minimumOhm: 1, channels: 1 } }
    const { result, cautions } = matchAmplifier(request)
    expect(result.best).toBeUndefined()
    expect(result.gain).toBeUndefined()
    expect(result.options.map(({ verdict }) => verdict)).toEqual(['power-unknown', 'power-unknown'])
    expect(result.options.every(({ outputPowerW }) => outputPowerW === undefined)).toBe(true)
    expect(cautions.map(({ code }) => code)).toEqual(['power-unknown'])
  })

  it('bridges by the rules: each channel sees half, so 300 W at 2 Ω make 600 W at 4 Ω, and 4 Ω is the least', () => {
    const { result } = matchAmplifier({
      amplifier: fourChannel,
      driver: { powerW: 600, coils: 1, coilOhm: 4 },
      driverCount: 1
    })
    expect(result.best).toMatchObject({ bridged: true, outputPowerW: 600, powerFrom: 'two-channels', lowestOhm: 4 })
    expect(result.gain).toMatchObject({ channelLoadOhm: 2 })
    const low = matchAmplifier({
      amplifier: fourChannel,
      driver: { powerW: 600, coils: 1, coilOhm: 2 },
      driverCount: 1
    })
    expect(low.result.options.find(({ bridged }) => bridged)?.verdict).toBe('below-minimum')
    expect(low.result.best?.bridged).toBe(false)
  })

  it('takes a published bridged power before twice a channel, and warns that both terminals are live', () => {
    const amplifier = { ...fourChannel, ratings: [...fourChannel.ratings, { loadOhm: 4, powerW: 560, bridged: true }] }
    const request = { amplifier, driver: { powerW: 600, coils: 1, coilOhm: 4 }, driverCount: 1 }
    expect(matchAmplifier(request).result.best).toMatchObject({ outputPowerW: 560, powerFrom: 'published' })
    expect(codes(request)).toContain('bridged-terminals')
    expect(codes(request)).not.toContain('bridged-power-derived')
  })

  it('never lets a single-channel power stand for a bridged one of the same load', () => {
    const amplifier = { ratings: [{ loadOhm: 4, powerW: 150 }], minimumOhm: 2, channels: 2 }
    const { result } = matchAmplifier({ amplifier, driver: { powerW: 150, coils: 1, coilOhm: 4 }, driverCount: 1 })
    expect(result.options.find(({ bridged }) => bridged)?.verdict).toBe('power-unknown')
    expect(result.best?.bridged).toBe(false)
  })

  // Common practice, no source: 0.75 to 1.5 is accepted.
  for (const [powerW, verdict] of [
    [374, 'under-powered'],
    [376, 'good'],
    [749, 'good'],
    [751, 'over-powered']
  ] as const) {
    it(`calls ${powerW} W on a 500 W driver ${verdict}`, () => {
      const amplifier = { ratings: [{ loadOhm: 2, powerW }], minimumOhm: 2, channels: 1 }
      expect(matchAmplifier({ ...one, amplifier }).result.best?.verdict).toBe(verdict)
    })
  }

  it('grades under-power by what a square wave could do: harmless up to half, to be watched above', () => {
    const level = (powerW: number) =>
      matchAmplifier({
        ...one,
        amplifier: { ratings: [{ loadOhm: 2, powerW }], minimumOhm: 2, channels: 1 }
      }).cautions.find(({ code }) => code === 'under-powered')?.level
    expect(level(240)).toBe('note')
    expect(level(260)).toBe('care')
    expect(level(400)).toBeUndefined()
  })

  it('limits the gain to the drivers when the amplifier could do more', () => {
    const amplifier = { ratings: [{ loadOhm: 2, powerW: 2000 }], minimumOhm: 2, channels: 1 }
    const { result, cautions } = matchAmplifier({ ...one, amplifier })
    expectPrinted(result.gain?.targetVoltageV ?? 0, '31.62')
    expect(cautions.map(({ code }) => code)).toContain('over-powered')
  })

  it('uses one mono-block a driver only when that many are offered', () => {
    const two = { ...one, driverCount: 2 }
    expect(matchAmplifier(two).result.best).toMatchObject({ outputs: 1, loadOhm: 1, outputPowerW: 820 })
    const { result } = matchAmplifier({ ...two, amplifierCount: 2 })
    expect(result.best).toMatchObject({ outputs: 2, amplifiersNeeded: 2, loadOhm: 2, totalPowerW: 1080 })
    expect(codes({ ...two, amplifierCount: 2 })).toContain('equal-gains')
  })

  it('takes no way as best that needs more amplifiers than there are, even when it is the only one with a published power', () => {
    const amplifier = { ratings: [{ loadOhm: 2, powerW: 540 }], minimumOhm: 1, channels: 1 }
    const { result } = matchAmplifier({ ...one, amplifier, driverCount: 2 })
    expect(result.options[0]).toMatchObject({ outputs: 2, powerFrom: 'published' })
    expect(result.best).toMatchObject({ outputs: 1, powerFrom: 'voltage-bound', loadOhm: 4 })
    expect(matchAmplifier({ ...one, amplifier, driverCount: 2, amplifierCount: 2 }).result.best?.outputs).toBe(2)
  })

  it('stops when every load is too low', () => {
    const { result, cautions } = matchAmplifier({
      amplifier: { ratings: [{ loadOhm: 4, powerW: 300 }], minimumOhm: 4, channels: 1 },
      driver: { powerW: 300, coils: 1, coilOhm: 2 },
      driverCount: 1
    })
    expect(result.best).toBeUndefined()
    expect(cautions[0]).toMatchObject({ code: 'no-allowed-load', level: 'stop' })
  })

  it('never offers as best a load below the minimum, whatever is published for it', () => {
    for (const minimumOhm of [0.5, 1, 1.5, 2, 3, 4]) {
      for (const driverCount of [1, 2, 3, 4]) {
        const request = { amplifier: { ...monoBlock, minimumOhm }, driver, driverCount }
        const { best } = matchAmplifier(request).result
        if (best !== undefined) expect(best.loadOhm).toBeGreaterThanOrEqual(minimumOhm)
      }
    }
    expect(codes({ ...one, amplifier: { ...monoBlock, minimumOhm: 2 } })).toContain('rating-below-minimum')
  })

  it('takes three coils of 1.2 Ω in series for 3.6 Ω, as a person does, not for 3.5999999999999996', () => {
    const amplifier = { ratings: [{ loadOhm: 3.6, powerW: 300 }], minimumOhm: 3.6, channels: 1 }
    const { result } = matchAmplifier({ amplifier, driver: { powerW: 100, coils: 1, coilOhm: 1.2 }, driverCount: 3 })
    expect(result.best).toMatchObject({ loadOhm: 3.6, verdict: 'good' })
  })

  it('ranks by price or size among those that fit, and only when every amplifier states it', () => {
    const cheap = { ...monoBlock, name: 'cheap', ratings: [{ loadOhm: 2, powerW: 420 }], price: 90, footprintM2: 0.09 }
    const overPriced = {
      ...monoBlock,
      name: 'dear',
      ratings: [{ loadOhm: 2, powerW: 500 }],
      price: 300,
      footprintM2: 0.04
    }
    const weak = { ...monoBlock, name: 'weak', ratings: [{ loadOhm: 2, powerW: 100 }], price: 20, footprintM2: 0.01 }
    const request = { ...one, amplifier: overPriced, otherAmplifiers: [cheap, weak] }
    expect(matchAmplifier(request).result.best?.amplifier).toBe('dear')
    expect(matchAmplifier({ ...request, rankBy: 'price' }).result.best?.amplifier).toBe('cheap')
    expect(matchAmplifier({ ...request, rankBy: 'size' }).result.best?.amplifier).toBe('dear')
    const error = refusal({ ...request, otherAmplifiers: [monoBlock], rankBy: 'price' })
    expect([error.code, error.faults[0]?.field]).toEqual(['missing-input', 'otherAmplifiers[0].price'])
  })

  for (const kind of ['peak', 'max', 'total'] as const) {
    it(`refuses ${kind} figures of amplifier and driver, both at once, and says why`, () => {
      const error = refusal({
        ...one,
        amplifier: { ...monoBlock, ratingKind: kind },
        driver: { ...driver, ratingKind: kind }
      })
      expect(error.code).toBe('undefined-rating')
      expect(error.faults.map(({ field }) => field)).toEqual(['amplifier.ratingKind', 'driver.ratingKind'])
      expect(error.message).toMatch(/continuous RMS/)
    })
  }

  it('reads the meter for the tone that is played: -12 dB with 4 dB for quiet recordings on 40 V are 15.92 V (hand calculation)', () => {
    const amplifier = {
      ratings: [{ loadOhm: 4, powerW: 400, bridged: true }],
      minimumOhm: 2,
      minimumBridgedOhm: 4,
      channels: 2
    }
    const request = { amplifier, driver: { powerW: 400, coils: 1, coilOhm: 4 }, driverCount: 1 }
    const { gain } = matchAmplifier({ ...request, tone: { levelDb: -12, quietRecordingDb: 4 } }).result
    expectPrinted(gain?.meterVoltageV ?? 0, '15.92')
    expectPrinted(gain?.channelMeterVoltageV ?? 0, '7.962')
    expect(matchAmplifier(request).result.gain?.meterVoltageV).toBe(gain?.targetVoltageV)
  })

  it('never sets a gain past the amplifier or the drivers, nor a best past its limit, whatever is published', () => {
    const rating = fc.record({
      loadOhm: fc.constantFrom(0.5, 1, 2, 2.67, 4, 8),
      powerW: fc.integer({ min: 1, max: 3000 }),
      bridged: fc.boolean()
    })
    fc.assert(
      fc.property(
        // one power a load, and nothing bridged on one channel: the rest is refused
        fc.uniqueArray(rating, { minLength: 1, maxLength: 6, selector: each => `${each.loadOhm} ${each.bridged}` }),
        fc.constantFrom(0.5, 1, 2, 4),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom(1, 2, 4),
        fc.integer({ min: 20, max: 2000 }),
        (ratings, minimumOhm, channels, driverCount, coils, powerW) => {
          const { best, gain, options } = matchAmplifier({
            amplifier: {
              ratings: channels === 1 ? ratings.map(each => ({ ...each, bridged: false })).slice(0, 1) : ratings,
              minimumOhm,
              channels
            },
            driver: { powerW, coils, coilOhm: 2 },
            driverCount
          }).result
          expect(options.length).toBeGreaterThan(0)
          if (best === undefined || gain === undefined) return
          expect(best.loadOhm).toBeGreaterThanOrEqual(best.bridged ? 2 * minimumOhm : minimumOhm)
          expect(gain.powerW).toBeLessThanOrEqual(Math.min(best.outputPowerW ?? 0, powerW * best.driversPerOutput))
          expect(gain.targetVoltageV ** 2 / best.loadOhm).toBeCloseTo(gain.powerW, 6)
          expect(best.outputs * (best.bridged ? 2 : 1)).toBeLessThanOrEqual(channels)
          expect(best.outputs * best.driversPerOutput).toBe(driverCount)
        }
      ),
      { seed: 8, numRuns: 300 }
    )
  })

  it('echoes every default', () => {
    const { assumed } = matchAmplifier({ ...one, amplifier: fourChannel })
    expect(assumed.map(({ field, value }) => [field, value])).toEqual([
      ['driver.ratingKind', 'rms'],
      ['amplifierCount', 1],
      ['rankBy', 'power'],
      ['amplifier.ratingKind', 'rms'],
      ['amplifier.minimumBridgedOhm', 4],
      ['tone.levelDb', 0],
      ['tone.quietRecordingDb', 0]
    ])
  })

  it('doubts a power that the on-board fuses could not feed: 2 × 30 A, class D, 14.4 V pass 734.4 W (hand calculation)', () => {
    const claims = (powerW: number) => ({
      ...one,
      amplifier: {
        ratings: [{ loadOhm: 2, powerW }],
        minimumOhm: 2,
        channels: 1,
        class: 'D' as const,
        onboardFusesA: [30, 30]
      }
    })
    const found = matchAmplifier(claims(735)).cautions.find(({ code }) => code === 'rating-implausible')
    expectPrinted(found?.figures?.plausibleW ?? 0, '734.4')
    expect(codes(claims(734))).not.toContain('rating-implausible')
  })

  it('counts the heat: 640 W at efficiency 0.85 leave 112.9 W, and music of one eighth its share of it', () => {
    const amplifier = {
      ratings: [{ loadOhm: 2, powerW: 640 }],
      minimumOhm: 2,
      channels: 1,
      efficiency: 0.85,
      quiescentW: 15
    }
    const { heat } = matchAmplifier({ ...one, driver: { ...one.driver, powerW: 640 }, amplifier }).result
    expectPrinted(heat?.fullSineW ?? 0, '112.9')
    // Linear law of class D: 15 + (752.94 − 15)/8 − 80 W.
    expectPrinted(heat?.averageW ?? 0, '27.24')
    expect(matchAmplifier(one).result.heat).toBeUndefined()
  })

  it('hands on a cable for the current of the output', () => {
    // √(540 W / 2 Ω) = 16.4 A, below the 20 A of 16 AWG at 80 °C (33 CFR 183.425 Table 5).
    const { cable } = matchAmplifier({ ...one, cable: { lengthM: 2 } }).result
    expect(cable).toMatchObject({ designation: '16 AWG', ampacityA: 20 })
    expectPrinted(cable?.currentA ?? 0, '16.43')
  })
})
