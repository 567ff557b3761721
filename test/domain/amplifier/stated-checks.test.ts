/** The figures that formulas of the amplifier room name as their checks, each worked by hand beside it. */
import { describe, expect, it } from 'vitest'
import type { AmplifierSheet } from '../../../src/contract/amplifiers/amplifier-matching.ts'
import { claimedPower, outputPower, resolveAmplifier } from '../../../src/domain/amplifier/amplifier-sheet.ts'
import { coilAdvice } from '../../../src/domain/amplifier/coil-advice.ts'
import { amplifierHeat } from '../../../src/domain/amplifier/heat.ts'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import {
  contradictionCautions,
  lowestBridged,
  requireOneStory
} from '../../../src/domain/amplifier/rating-contradictions.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { toneFrequency } from '../../../src/domain/signal/crossover.ts'
import { expectPrinted } from '../../support/printed.ts'

const powerAt = (sheet: AmplifierSheet, loadOhm: number, bridged = false) =>
  outputPower(resolveAmplifier(sheet, assumptions(), ''), loadOhm, bridged)
const stereo: AmplifierSheet = { ratings: [{ loadOhm: 2, powerW: 300 }], minimumOhm: 2, channels: 2 }

describe('the power of an output (outputPower)', () => {
  it('of a bridged pair is that of its two channels at half the load: 300 W at 2 Ω make 600 W at 4 Ω', () => {
    expect(powerAt(stereo, 4, true)).toMatchObject({ powerW: 600, powerFrom: 'two-channels' })
    expect(powerAt(stereo, 2)).toEqual({ powerW: 300, powerFrom: 'published' })
  })

  it('above every rating has a lower bound by the same voltage (boundAbove): 600 W at 4 Ω, at least 300 W at 8 Ω', () => {
    const mono: AmplifierSheet = { ratings: [{ loadOhm: 4, powerW: 600 }], minimumOhm: 2, channels: 1 }
    expect(powerAt(mono, 8)).toEqual({ powerW: 300, powerFrom: 'voltage-bound', ratedOhm: 4, ratedPowerW: 600 })
    // never downwards: what 2 Ω give only the maker has measured
    expect(powerAt(mono, 2)).toBeUndefined()
  })

  it('takes the nearest rating below, and of a pair the channels at half the load', () => {
    const two = { ...stereo, ratings: [...stereo.ratings, { loadOhm: 4, powerW: 180 }] }
    // 180 W·4/6 and not 300 W·2/6
    expect(powerAt(two, 6)?.powerW).toBeCloseTo(120, 12)
    // two channels of 180 W at 4 Ω are 360 W at 8 Ω; 12 Ω leave 240 W
    expect(powerAt(two, 12, true)?.powerW).toBeCloseTo(240, 12)
  })

  it('is bounded by a rating at the very lowest load as well: 300 W at 2 Ω leave 150 W at 4 Ω', () =>
    expect(powerAt(stereo, 4)).toMatchObject({ powerW: 150, powerFrom: 'voltage-bound', ratedOhm: 2 }))

  it('of all channels together counts pairs where it is bridged: 4 × 150 W or 2 × 400 W', () => {
    const four: AmplifierSheet = {
      ratings: [
        { loadOhm: 4, powerW: 150 },
        { loadOhm: 4, powerW: 400, bridged: true }
      ],
      minimumOhm: 2,
      channels: 4
    }
    const claimed = (channels: number) => claimedPower(resolveAmplifier({ ...four, channels }, assumptions(), ''))
    expect([claimed(4), claimed(5), claimed(2)]).toEqual([800, 800, 400])
  })

  it('takes no rating below the load it may drive for a bound', () => {
    const low: AmplifierSheet = { ratings: [{ loadOhm: 1, powerW: 800 }], minimumOhm: 2, channels: 1 }
    expect(powerAt(low, 4)).toBeUndefined()
  })
})

describe('figures that exclude each other', () => {
  const codes = (ratings: AmplifierSheet['ratings'], more: Partial<AmplifierSheet> = {}) =>
    contradictionCautions({ ratings, minimumOhm: 2, channels: 1, ...more }, '')

  it('are more than twice the power at half the load (moreThanDouble): 300 W at 4 Ω allow 600 W at 2 Ω, not 900', () => {
    const at2 = (powerW: number) =>
      codes([
        { loadOhm: 4, powerW: 300 },
        { loadOhm: 2, powerW }
      ])
    expect(at2(600)).toEqual([])
    // printed powers are rounded and measured one by one: 5 % are let pass (ours)
    expect([at2(629).length, at2(631).length]).toEqual([0, 1])
    // a bridged pair is another output: its power says nothing of a channel
    expect(
      codes(
        [
          { loadOhm: 4, powerW: 300 },
          { loadOhm: 2, powerW: 900, bridged: true }
        ],
        { channels: 2 }
      )
    ).toEqual([])
    expect(at2(900).map(({ code, figures }) => [code, figures?.mostW])).toEqual([['ratings-contradict', 600]])
  })

  it('are a bridge of 4 Ω on channels of 4 Ω, which see 2 Ω: 8 Ω (lowestBridged)', () => {
    const sheet: AmplifierSheet = {
      ratings: [{ loadOhm: 4, powerW: 200 }],
      minimumOhm: 4,
      minimumBridgedOhm: 4,
      channels: 2
    }
    expect(lowestBridged(sheet, 4)).toBe(8)
    expect(lowestBridged({ ...sheet, minimumBridgedOhm: 8 }, 8)).toBe(8)
    const said = (minimumBridgedOhm: number) => contradictionCautions({ ...sheet, minimumBridgedOhm }, '').length
    expect([4, 7.9, 8].map(said)).toEqual([1, 1, 0])
    expect(lowestBridged({ ...sheet, minimumOhm: 2 }, 4)).toBe(4)
  })
})

describe('a sheet', () => {
  const story = (ratings: AmplifierSheet['ratings'], channels = 2) =>
    requireOneStory({ ratings, minimumOhm: 2, channels }, '')

  it('has one power at a load of one output, a channel or a pair', () => {
    const at4 = { loadOhm: 4, powerW: 300 }
    expect(() => story([at4, { loadOhm: 4, powerW: 320 }])).toThrow(/320/)
    expect(() => story([at4, { loadOhm: 4, powerW: 900, bridged: true }])).not.toThrow()
    expect(() => story([at4, at4])).not.toThrow()
    expect(() => story([at4, { loadOhm: 8, powerW: 160 }])).not.toThrow()
  })

  it('that rates a load below the least it may drive is told, by the least of that very output', () => {
    const codes = (rating: AmplifierSheet['ratings'][number]) =>
      matchAmplifier({
        amplifier: {
          ratings: [{ loadOhm: 4, powerW: 300 }, rating],
          minimumOhm: 2,
          minimumBridgedOhm: 4,
          channels: 2
        },
        driver: { powerW: 300, coils: 1, coilOhm: 4 },
        driverCount: 1
      }).cautions.filter(({ code }) => code === 'rating-below-minimum').length
    expect(codes({ loadOhm: 2, powerW: 500 })).toBe(0)
    expect(codes({ loadOhm: 1, powerW: 800 })).toBe(1)
    expect(codes({ loadOhm: 4, powerW: 600, bridged: true })).toBe(0)
    expect(codes({ loadOhm: 3, powerW: 700, bridged: true })).toBe(1)
  })
})

describe('the coils that would do', () => {
  const advice = (at: number, coilOhm: number) =>
    JSON.stringify(
      coilAdvice(
        resolveAmplifier({ ratings: [{ loadOhm: at, powerW: 500 }], minimumOhm: 1, channels: 1 }, assumptions(), ''),
        'A',
        { driver: { powerW: 500, coils: 1, coilOhm }, driverCount: 1, amplifierCount: 1 }
      )
    )

  it('are those sold, of 1, 2, 4 or 8 Ω, that meet a published power (common practice, no source)', () => {
    for (const [at, has] of [
      [1, 2],
      [2, 4],
      [4, 2],
      [8, 4]
    ] as const)
      expect(advice(at, has), `${at} Ω`).toContain(`"loadOhm":${at}`)
    expect(advice(3, 4)).toBeUndefined()
  })
})

describe('heat (amplifierHeat)', () => {
  const heatOf = (efficiency: number, quiescentW: number, ratedW: number, playedW: number) =>
    amplifierHeat({ class: 'D', efficiency, quiescentW }, ratedW, playedW, assumptions(), '')?.fullSineW ?? 0

  it('is input less output: 640 W at 0.85 lose 112.9 W', () => {
    // 640/0.85 − 640; what idles is a part of the input, not on top
    expectPrinted(heatOf(0.85, 10, 640, 640), '112.9')
  })

  it('of 300 W out of 2400 W, idling at 15 W, is 66.1 W', () => {
    // class D: 15 + (2400/0.85 − 15)·300/2400 = 366.1 W in
    expectPrinted(heatOf(0.85, 15, 2400, 300), '66.1')
  })

  it('at an eighth of the power (IEC 60065) of 640 W: 10 + (752.94 − 10)/8 − 80 = 22.9 W', () => {
    const heat = amplifierHeat({ class: 'D', efficiency: 0.85, quiescentW: 10 }, 640, 640, assumptions(), '')
    expectPrinted(heat?.averageW ?? 0, '22.9')
  })
})

describe('what is set', () => {
  it('is √(500 W·4 Ω) = 44.72 V for 500 W at 4 Ω on one driver of 2 × 2 Ω and 500 W (matchAmplifier)', () => {
    const { result } = matchAmplifier({
      amplifier: { ratings: [{ loadOhm: 4, powerW: 500 }], minimumOhm: 2, channels: 1 },
      driver: { powerW: 500, coils: 2, coilOhm: 2 },
      driverCount: 1
    })
    expect(result.best).toMatchObject({ loadOhm: 4, powerRatio: 1 })
    expectPrinted(result.gain?.targetVoltageV ?? 0, '44.72')
  })

  it('with a tone of 50 Hz where it lies half an octave inside, else the middle: 20 and 60 Hz → 34.64 Hz (toneFrequency)', () => {
    const corner = (cornerHz: number) => ({ cornerHz, order: 4, family: 'butterworth' }) as never
    const between = (low: number, high: number) =>
      toneFrequency({ highPass: corner(low), lowPass: corner(high) } as never)
    expectPrinted(between(20, 60), '34.64')
    expect(between(20, 80)).toBe(50)
    expect(toneFrequency({ lowPass: corner(80) } as never)).toBe(50)
    expect(toneFrequency({ lowPass: corner(60) } as never)).toBeCloseTo(60 / Math.SQRT2, 1)
  })
})
