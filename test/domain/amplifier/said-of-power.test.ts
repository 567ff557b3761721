/** What is said of the power offered: its percentage, its bounds, and what a pair of channels and a row of fuses make of it. */
import { describe, expect, it } from 'vitest'
import type { AmplifierMatchRequest } from '../../../src/contract/amplifiers/amplifier-matching.ts'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'

const asked = (amplifier: object, powerW = 500, more: object = {}) =>
  matchAmplifier({
    amplifier: { minimumOhm: 2, channels: 1, ...amplifier },
    driver: { powerW, coils: 1, coilOhm: 4 },
    driverCount: 1,
    ...more
  } as AmplifierMatchRequest)
const at4 = (powerW: number) => ({ ratings: [{ loadOhm: 4, powerW }] })
const advice = (powerW: number) => asked(at4(powerW)).result.best?.advice ?? ''

describe('the advice beside a power', () => {
  it('names the share of the drivers’ rating in per cent', () => {
    for (const powerW of [150, 245, 430, 480, 560, 640]) {
      const { best } = asked(at4(powerW)).result
      expect(best?.powerRatio).toBeCloseTo(powerW / 500, 12)
      expect(best?.advice).toMatch(
        new RegExp(`\\b(${Math.round(powerW / 5)} %|${Number((powerW / 500).toPrecision(3))}\\b)`)
      )
    }
  })

  it('calls equal what is within a per cent, which no meter of power tells apart', () => {
    expect(advice(500)).toBe(advice(496))
    expect(advice(500)).toBe(advice(504))
    expect(advice(494)).not.toBe(advice(500))
    expect(advice(506)).not.toBe(advice(500))
    expect(advice(494)).toMatch(/99 %/)
    expect(advice(506)).toMatch(/101 %/)
  })

  it('warns of clipping from half the rating on: a square wave has twice the power of the sine of its peak (derived)', () => {
    expect(advice(249)).not.toMatch(/overheat/)
    expect(advice(250)).not.toMatch(/overheat/)
    expect(advice(252)).toMatch(/overheat/)
  })
})

describe('a row of fuses', () => {
  const rated = { ratings: [{ loadOhm: 4, powerW: 1000 }], class: 'D', ratedVoltageV: 14.4 }

  it('bounds all outputs of an amplifier together: η·14.4 V·ΣI, shared by those in use', () => {
    // 0.85 · 14.4 V · 30 A = 367.2 W
    expect(asked({ ...rated, onboardFusesA: [30] }).result.best?.outputPowerW).toBeCloseTo(367.2, 9)
    const ways = [1, 2].flatMap(
      amplifierCount =>
        asked({ ...rated, channels: 2, minimumOhm: 4, onboardFusesA: [30] }, 500, { driverCount: 2, amplifierCount })
          .result.options
    )
    const bound = ways.filter(({ claimedPowerW }) => claimedPowerW !== undefined)
    expect(bound.some(({ outputs }) => outputs === 2)).toBe(true)
    for (const { outputs, outputPowerW = 0, amplifiersNeeded } of bound)
      expect(outputPowerW * outputs).toBeCloseTo(367.2 * amplifiersNeeded, 6)
  })

  it('that feeds the claim leaves it alone', () => {
    const { best } = asked({ ...rated, onboardFusesA: [40, 45] }).result
    expect(best?.outputPowerW).toBe(1000)
    expect(best?.claimedPowerW).toBeUndefined()
  })
})

describe('the heat of an amplifier', () => {
  it('idles never above a fifth of its full draw, and is input less output (energy)', () => {
    // 10 W of class AB: 40 W of idle would be more than all it draws; a fifth of 10/0.6
    const small = asked({ ratings: [{ loadOhm: 4, powerW: 10 }], class: 'AB' }, 10).result.heat
    const inputW = 10 / 0.6
    expect(small?.fullSineW).toBeCloseTo(inputW - 10, 9)
    // square-root law from the idle draw
    const idleW = inputW / 5
    expect(small?.averageW).toBeCloseTo(idleW + (inputW - idleW) * Math.sqrt(1 / 8) - 10 / 8, 9)
  })
})

describe('two channels bridged', () => {
  it('give into a load what each gives into half of it, twice: the figure and the half load are told', () => {
    const { result, cautions } = asked({
      ratings: [
        { loadOhm: 4, powerW: 150 },
        { loadOhm: 2, powerW: 250 }
      ],
      channels: 2
    })
    const told = cautions.find(({ code }) => code === 'bridged-power-derived')
    const bridged = result.options.find(each => each.bridged && each.loadOhm === 4)
    expect(bridged?.outputPowerW).toBe(500)
    expect(told?.figures).toEqual({ outputPowerW: 500, channelLoadOhm: 2 })
    expect(told?.message).toMatch(/\b2 Ω/)
  })
})

describe('the order of amplifiers', () => {
  it('that are the same does not rest on how they are listed', () => {
    const named = (names: readonly string[]) => {
      const [first = '', ...others] = names
      const sheet = (name: string) => ({ name, ...at4(500), minimumOhm: 2, channels: 1 })
      const { options } = asked(sheet(first), 500, { otherAmplifiers: others.map(sheet) }).result
      return options.map(({ amplifier }) => amplifier)
    }
    expect(named(['b', 'a', 'c'])).toEqual(named(['c', 'b', 'a']))
    expect(named(['b', 'a', 'c'])[0]).toBe('a')
  })
})
