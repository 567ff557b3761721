/** A load above every published one: the voltage that was reached is reached again. */
import { describe, expect, it } from 'vitest'
import type { AmplifierMatchRequest } from '../../../src/contract/amplifiers/amplifier-matching.ts'
import { matchAmplifier } from '../../../src/domain/amplifier/match-amplifier.ts'
import { estatePlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { post } from '../../support/call.ts'
import { expectPrinted } from '../../support/printed.ts'

const fourOhmOnly = { name: 'Four', ratings: [{ loadOhm: 4, powerW: 600 }], minimumOhm: 4, channels: 1 }
const dualTwo = { powerW: 300, coils: 2, coilOhm: 2 }
const request: AmplifierMatchRequest = { amplifier: fourOhmOnly, driver: dualTwo, driverCount: 2 }
const told = (outcome: ReturnType<typeof matchAmplifier>) =>
  outcome.cautions.find(({ code }) => code === 'power-bounded')

describe('a load above the lowest that is rated', () => {
  it('has a bound: √(600 W · 4 Ω) = 49.0 V are 300 W at 8 Ω', () => {
    const { best, gain } = matchAmplifier(request).result
    expect(best).toMatchObject({ loadOhm: 8, outputPowerW: 300, powerFrom: 'voltage-bound', verdict: 'under-powered' })
    expect(best).toMatchObject({ ratedOhm: 4, ratedPowerW: 600 })
    expectPrinted(gain?.targetVoltageV ?? 0, '49.0')
  })

  it('is said to be a bound, with the coils that would give it all: dual 4 Ω make 4 Ω', () => {
    const found = told(matchAmplifier(request))
    expect(found?.message).toMatch(/at least 300 W/)
    expect(found?.message).toMatch(/dual 4 Ω coils.*4 Ω.*600 W/)
    expect(found?.figures).toMatchObject({ boundW: 300, ratedPowerW: 600, ratedOhm: 4, loadOhm: 8 })
  })

  it('takes the nearest rated load below, and none above: power is never scaled to a lower load', () => {
    const amplifier = {
      ratings: [
        { loadOhm: 1, powerW: 820 },
        { loadOhm: 2, powerW: 540 }
      ],
      minimumOhm: 1,
      channels: 1
    }
    const one = matchAmplifier({ amplifier, driver: { powerW: 250, coils: 1, coilOhm: 4 }, driverCount: 1 }).result
    expect(one.best).toMatchObject({ outputPowerW: 270, ratedOhm: 2, powerFrom: 'voltage-bound' }) // 540·2/4
    const low = matchAmplifier({ ...request, amplifier: { ...fourOhmOnly, minimumOhm: 1 } }).result
    expect(low.options.find(({ loadOhm }) => loadOhm === 2)?.verdict).toBe('power-unknown')
  })

  it('never comes before a published power, however close', () => {
    const amplifier = { ratings: [{ loadOhm: 2, powerW: 900 }], minimumOhm: 2, channels: 1 }
    const { options } = matchAmplifier({
      amplifier,
      driver: { powerW: 225, coils: 2, coilOhm: 4 },
      driverCount: 1
    }).result
    expect(options.map(({ loadOhm, powerFrom }) => [loadOhm, powerFrom])).toEqual([
      [2, 'published'],
      [8, 'voltage-bound']
    ])
  })

  it('bounds a bridged pair by its channels: 160 W at 2 Ω are 320 W at 4 Ω, so 160 W at 8 Ω', () => {
    const amplifier = { ratings: [{ loadOhm: 2, powerW: 160 }], minimumOhm: 2, channels: 2 }
    const { options } = matchAmplifier({
      amplifier,
      driver: { powerW: 160, coils: 1, coilOhm: 8 },
      driverCount: 1
    }).result
    expect(options.find(({ bridged }) => bridged)).toMatchObject({
      outputPowerW: 160,
      ratedOhm: 4,
      ratedPowerW: 320,
      powerFrom: 'voltage-bound'
    })
  })

  it('is never above what a lossless stage of the same voltage gives, for any load', () => {
    for (const coilOhm of [4.5, 6, 8, 16]) {
      const { best } = matchAmplifier({ ...request, driver: { powerW: 300, coils: 1, coilOhm }, driverCount: 1 }).result
      expect(best?.outputPowerW).toBeCloseTo(Math.sqrt(600 * 4) ** 2 / coilOhm, 9)
    }
  })
})

describe('a plan at a higher load', () => {
  it('is made: box, gain of 300 W, and a supply for the 600 W the amplifier may draw', async () => {
    const { body } = await post('/v1/plans', {
      ...estatePlan,
      enclosure: { kind: 'closed' },
      driver: { ...estatePlan.driver, coils: { count: 2, ratedOhm: 2, statedFor: 'series' } },
      amplifier: { ...estatePlan.amplifier, ratings: fourOhmOnly.ratings, minimumOhm: 4 }
    })
    const { parts, summary } = body.result
    expect(parts.matching.answer.result.best).toMatchObject({ loadOhm: 8, outputPowerW: 300 })
    expect(parts.box.answer).toBeDefined()
    expect(summary.lines[0]).toMatch(/8 Ω; 300 W/)
    expectPrinted(parts.current.answer.result.currents.fullSineA, '58.8') // 600/0.85/12
    expect(body.cautions.map(({ code }: { code: string }) => code)).toContain('power-bounded')
  })
})
