/** Ratings that contradict each other, and a claim that the amplifier's own fuses disprove. */
import { describe, expect, it } from 'vitest'
import type { AmplifierSheet } from '../../../src/contract/amplifiers/amplifier-matching.ts'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import { computeFeeder } from '../../../src/domain/circuit/graph/compute-feeder.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { estatePlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { post } from '../../support/call.ts'
import { expectPrinted } from '../../support/printed.ts'

const driver = { powerW: 300, coils: 1, coilOhm: 4 }
const match = (amplifier: AmplifierSheet, others: readonly AmplifierSheet[] = []) =>
  matchAmplifier({ amplifier, driver, driverCount: 1, ...(others.length === 0 ? {} : { otherAmplifiers: others }) })
const codes = (amplifier: AmplifierSheet) => match(amplifier).cautions.map(({ code }) => code)

function refusal(ask: () => unknown) {
  try {
    ask()
  } catch (error) {
    if (error instanceof DesignError) return `${error.code} ${error.faults.map(({ field }) => field).join(' ')}`
    throw error
  }
  return 'accepted'
}

describe('ratings of one amplifier', () => {
  it('with a bridged minimum that gives each channel half its own: the channels are obeyed, and it is said', () => {
    const amplifier = { ratings: [{ loadOhm: 4, powerW: 150 }], minimumOhm: 4, minimumBridgedOhm: 4, channels: 2 }
    const { result, cautions } = match(amplifier)
    expect(cautions.find(({ code }) => code === 'bridged-minimum-low')).toMatchObject({
      level: 'care',
      at: 'amplifier.minimumBridgedOhm',
      figures: { minimumBridgedOhm: 4, channelOhm: 2, minimumOhm: 4 }
    })
    expect(result.options.find(({ bridged }) => bridged)).toMatchObject({ verdict: 'below-minimum', lowestOhm: 8 })
    expect(codes({ ...amplifier, minimumOhm: 2 })).not.toContain('bridged-minimum-low')
    expect(codes({ ...amplifier, minimumOhm: 1.33, minimumBridgedOhm: 2.67 })).not.toContain('bridged-minimum-low')
  })

  it('with two powers at one load are refused; the same power twice is no contradiction', () => {
    const twice = (powerW: number) => ({
      ratings: [
        { loadOhm: 4, powerW: 300 },
        { loadOhm: 4, powerW }
      ],
      minimumOhm: 4,
      channels: 1
    })
    expect(refusal(() => match(twice(900)))).toBe(
      'conflicting-input amplifier.ratings[0].powerW amplifier.ratings[1].powerW'
    )
    expect(refusal(() => match(twice(300)))).toBe('accepted')
  })

  it('with more than double the power at half the load are doubted: the voltage cannot rise with the load', () => {
    const sheet = (powerW: number) => ({
      ratings: [
        { loadOhm: 4, powerW: 300 },
        { loadOhm: 2, powerW }
      ],
      minimumOhm: 2,
      channels: 1
    })
    // √(900·2) = 42.4 V above √(300·4) = 34.6 V; 600 W is the doubling of an ideal source
    const found = match(sheet(900)).cautions.find(({ code }) => code === 'ratings-contradict')
    expect(found).toMatchObject({
      level: 'care',
      at: 'amplifier.ratings[1].powerW',
      figures: { powerW: 900, mostW: 600 }
    })
    for (const powerW of [600, 620, 480]) expect(codes(sheet(powerW))).not.toContain('ratings-contradict')
    const third = { ratings: [...sheet(500).ratings, { loadOhm: 1, powerW: 1300 }], minimumOhm: 1, channels: 1 }
    expect(codes(third)).toContain('ratings-contradict')
  })

  it('with a bridged figure on one channel are refused, not ignored', () => {
    const mono = { ratings: [{ loadOhm: 4, powerW: 300 }], minimumOhm: 2, channels: 1 }
    expect(
      refusal(() => match({ ...mono, ratings: [...mono.ratings, { loadOhm: 4, powerW: 600, bridged: true }] }))
    ).toBe('conflicting-input amplifier.ratings[1].bridged')
    expect(refusal(() => match({ ...mono, minimumBridgedOhm: 4 }))).toBe(
      'conflicting-input amplifier.minimumBridgedOhm'
    )
  })

  it('of two amplifiers called the same are refused: the answer could not tell whose heat it gives', () => {
    const same = { name: 'Twin', ratings: [{ loadOhm: 4, powerW: 300 }], minimumOhm: 2, channels: 1 }
    expect(refusal(() => match(same, [{ ...same, efficiency: 0.6 }]))).toBe('conflicting-input otherAmplifiers[0].name')
  })
})

/** 0.85 · 14.4 V · 2 · 30 A = 734.4 W. */
const claim = { class: 'D', onboardFusesA: [30, 30], regulation: 'regulated' } as const

describe('a claim that the fuses on board disprove', () => {
  it('is given beside what they pass, and the supply is sized for the latter: 734 W draw 72 A at 12 V', () => {
    const { result, cautions } = supplyCurrent({ amplifiers: [{ ...claim, powerW: 2000 }], systemVoltageV: 12 })
    expectPrinted(result.currents.fullSineA, '72.0') // 60 A · 14.4 V / 12 V
    expectPrinted(result.amplifiers[0]?.powerW ?? 0, '734.4')
    expect(result.amplifiers[0]?.claimedPowerW).toBe(2000)
    const found = cautions.find(({ code }) => code === 'rating-implausible')
    expect(found?.message).toMatch(/2000 W.*734 W.*calculated/)
    expect(found?.figures).toMatchObject({ claimedW: 2000 })
  })

  it('is not sized as given in a feeder either', () => {
    const feeder = computeFeeder({
      systemVoltageV: 12,
      source: { voltageV: 12 },
      amplifiers: [{ ...claim, powerW: 2000 }]
    })
    expectPrinted(feeder.result.amplifiers[0]?.currentA ?? 0, '72.0')
    expect(feeder.cautions.map(({ code }) => code)).toContain('rating-implausible')
  })

  it('believes a claim below them as it stands', () => {
    const { result } = supplyCurrent({ amplifiers: [{ ...claim, powerW: 700 }], systemVoltageV: 12 })
    expect(result.amplifiers[0]?.powerW).toBe(700)
    expect(result.amplifiers[0]).not.toHaveProperty('claimedPowerW')
  })

  it('does not set a gain that cannot be reached: √(734.4 W · 4 Ω) = 54.2 V, not the 63.2 V of 1000 W', () => {
    const amplifier = {
      ratings: [{ loadOhm: 4, powerW: 2000 }],
      minimumOhm: 4,
      channels: 1,
      class: 'D',
      onboardFusesA: [30, 30]
    } as const
    const { best, gain } = matchAmplifier({ amplifier, driver: { ...driver, powerW: 1000 }, driverCount: 1 }).result
    expectPrinted(best?.outputPowerW ?? 0, '734.4')
    expect(best?.claimedPowerW).toBe(2000)
    expectPrinted(gain?.targetVoltageV ?? 0, '54.2')
    expect(gain?.limitedBy).toBe('amplifier')
  })

  it('counts the fuses at the voltage of the rating: at 28.8 V they pass 1469 W', () => {
    const amplifier = {
      ratings: [{ loadOhm: 4, powerW: 1400 }],
      minimumOhm: 4,
      channels: 1,
      class: 'D',
      onboardFusesA: [30, 30]
    } as const
    expect(match({ ...amplifier, ratedVoltageV: 28.8 }).result.best?.outputPowerW).toBe(1400)
    expectPrinted(
      match({ ...amplifier, ratings: [{ loadOhm: 4, powerW: 1600 }], ratedVoltageV: 28.8 }).result.best?.outputPowerW ??
        0,
      '1469'
    )
  })

  it('in a plan gives the small cable and fuse: 72 A, 80 A, not 196 A and 200 A', async () => {
    const { body } = await post('/v1/plans', {
      ...estatePlan,
      enclosure: { kind: 'closed' },
      amplifier: {
        ...estatePlan.amplifier,
        ratings: [{ loadOhm: 2, powerW: 2000 }],
        minimumOhm: 2,
        onboardFusesA: [30, 30]
      }
    })
    const { current, fuse } = body.result.parts
    expectPrinted(current.answer.result.currents.fullSineA, '72.0')
    expect(fuse.answer.result.fuse.ratingA).toBe(80)
    const found = body.cautions.filter(({ code }: { code: string }) => code === 'rating-implausible')
    expect(found).toHaveLength(1)
    expect(found[0].figures.claimedW).toBe(2000)
  })
})

describe('a power of unknown kind', () => {
  it('is mentioned in current and feeder', () => {
    const amplifiers = [{ powerW: 400, class: 'D', regulation: 'regulated', ratedAs: 'unknown' }] as const
    const current = supplyCurrent({ amplifiers, systemVoltageV: 12 }).cautions
    const feeder = computeFeeder({ systemVoltageV: 12, source: { voltageV: 12 }, amplifiers }).cautions
    for (const cautions of [current, feeder])
      expect(cautions.find(({ code }) => code === 'rating-kind-unknown')).toMatchObject({ at: 'amplifiers[0].ratedAs' })
  })
})
