/** An amplifier made for another supply: nothing may call it fit, wherever both voltages are known. */
import { describe, expect, it } from 'vitest'
import type { Caution } from '../../../src/domain/caution.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { computeFeeder } from '../../../src/domain/circuit/graph/compute-feeder.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { estateSearch } from '../../../src/http/operations/systems/design-search-examples.ts'
import { estatePlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { post } from '../../support/call.ts'
import { expectPrinted } from '../../support/printed.ts'

const amplifier = { powerW: 650, class: 'D', regulation: 'regulated' } as const
const told = (cautions: readonly Caution[]) => cautions.find(({ code }) => code === 'amplifier-voltage-class')
const current = (ratedVoltageV: number | undefined, systemVoltageV: number) =>
  supplyCurrent({
    amplifiers: [{ ...amplifier, ...(ratedVoltageV === undefined ? {} : { ratedVoltageV }) }],
    systemVoltageV
  })
const closed = { ...estatePlan, enclosure: { kind: 'closed' } }
const on24 = (plan: object) => ({
  ...plan,
  supply: { ...estatePlan.supply, systemVoltageV: 24 }
})

describe('an amplifier on a supply of another class', () => {
  // rated over nominal: 14.4/24 = 0.6, 14.4/48 = 0.3, 28.8/12 = 2.4; 14.4/12 = 28.8/24 = 1.2
  for (const [ratedV, systemV, level] of [
    [14.4, 24, 'stop'],
    [14.4, 48, 'stop'],
    [13.8, 27.6, 'stop'],
    [28.8, 12, 'stop'],
    [14.4, 12, undefined],
    [12, 13.8, undefined],
    [28.8, 24, undefined],
    [57.6, 48, undefined]
  ] as const)
    it(`of ${ratedV} V on ${systemV} V: ${level ?? 'nothing to say'}`, () => {
      expect(told(current(ratedV, systemV).cautions)?.level).toBe(level)
    })

  it('is told the converter it needs: 650 W at 0.85 are 63.7 A at 12 V, and 38.9 A at 24 V when 0.82 of it comes out', () => {
    const found = told(current(14.4, 24).cautions)
    expectPrinted(found?.figures?.converterA ?? 0, '63.73') // 650/0.85/12
    expectPrinted(found?.figures?.converterInputA ?? 0, '38.86') // 650/0.85/0.82/24
    expect(found?.message).toMatch(/converter.*fuse/)
    expect(found?.at).toBe('amplifiers[0].ratedVoltageV')
  })

  it('is never given (24/14.4)² of its power', () => {
    const unregulated = { ...amplifier, regulation: 'unregulated', ratedVoltageV: 14.4 } as const
    const { result } = supplyCurrent({ amplifiers: [unregulated], systemVoltageV: 24 })
    // what a converter would have to hand on: 650/0.85 W at 24 V
    expectPrinted(result.currents.fullSineA, '31.86')
    expect(result.amplifiers[0]?.unregulatedPowerW).toBeLessThanOrEqual(650)
    const feeder = computeFeeder({ systemVoltageV: 24, source: { voltageV: 24 }, amplifiers: [unregulated] })
    expectPrinted(feeder.result.amplifiers[0]?.currentA ?? 0, '31.86')
  })

  it('stops in a feeder, by power drawn or by class', () => {
    const feeder = (each: object) =>
      computeFeeder({ systemVoltageV: 24, source: { voltageV: 27.6 }, amplifiers: [{ ratedVoltageV: 14.4, ...each }] })
    for (const each of [amplifier, { inputPowerW: 764.7 }, { currentA: 31.86 }]) {
      const found = told(feeder(each).cautions)
      expect(found).toMatchObject({ level: 'stop', at: 'amplifiers[0].ratedVoltageV' })
      expectPrinted(found?.figures?.converterA ?? 0, '63.7')
    }
  })

  it('stops where a cable is chosen for it', () => {
    const ask = {
      currentA: 31.86,
      systemVoltageV: 24,
      positiveLengthM: 7,
      return: { kind: 'cable', lengthM: 7 }
    } as const
    expect(told(chooseCable({ ...ask, ratedVoltageV: 14.4 }).cautions)).toMatchObject({
      level: 'stop',
      at: 'ratedVoltageV'
    })
    expect(told(chooseCable({ ...ask, ratedVoltageV: 28.8 }).cautions)).toBeUndefined()
    expect(told(chooseCable(ask).cautions)).toBeUndefined()
  })

  it('is asked for the reading that settles it when its sheet says nothing, on 24 and 48 V only', () => {
    const asked = (systemVoltageV: number) =>
      current(undefined, systemVoltageV).cautions.find(({ code }) => code === 'amplifier-voltage-unknown')
    expect(asked(24)).toMatchObject({ level: 'care', at: 'amplifiers[0].ratedVoltageV' })
    expect(asked(48)?.message).toMatch(/rating plate|data sheet/)
    expect(asked(12)).toBeUndefined()
  })
})

describe('a 14.4 V amplifier in a vehicle of 24 V', () => {
  it('makes a plan a stop that names the converter, whatever else the plan lacks', async () => {
    const { body } = await post('/v1/plans', on24(closed))
    expect(body.result.summary.verdict).toBe('stop')
    expect(body.result.summary.reasons.map(({ detail }: { detail: string }) => detail).join(' ')).toMatch(
      /14\.4 V.*converter/
    )
    const { powerW: _, ...sheet } = estatePlan.driver.sheet
    const bare = await post('/v1/plans', on24({ ...closed, driver: { ...estatePlan.driver, sheet } }))
    expect(bare.body.result.summary.verdict).toBe('stop')
    expect(told(bare.body.cautions)?.level).toBe('stop')
  })

  it('is rejected by a search, with the reason', async () => {
    const { body } = await post('/v1/designs/search', {
      ...on24(estateSearch),
      drivers: estateSearch.drivers.slice(0, 1),
      driverCounts: [1],
      amplifiers: estateSearch.amplifiers.slice(1),
      kinds: ['closed'],
      limits: {}
    })
    expect(body.result.designs).toEqual([])
    expect(body.result.rejected[0]).toMatchObject({ rule: 'stop-caution' })
    expect(body.result.rejected[0].detail).toMatch(/converter/)
  })
})
