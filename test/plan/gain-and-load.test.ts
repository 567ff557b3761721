/** How the drivers of a plan are joined and how loud they are set, by Ohm's law: what is wrong here burns a coil. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { computeResponse } from '../../src/domain/enclosure/answer/compute-response.ts'
import type { ResponseRequest } from '../../src/domain/enclosure/model/request.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { closedHighPass } from '../../src/plan/enclosure/parts/plan-high-pass.ts'
import type { JoinedDrivers } from '../../src/plan/load/joined-drivers.ts'
import { planLoad } from '../../src/plan/load/plan-load.ts'
import { gainPowerAt, withGainFor } from '../../src/plan/load/set-gain.ts'
import { partRunner } from '../../src/plan/request/part.ts'
import { resolvedPlan } from '../../src/plan/request/resolved-plan.ts'

const loadOf = (more: object) =>
  planLoad(resolvedPlan(toSi({ ...estatePlan, ...more }) as PlanRequest, assumptions(), partRunner()))
const coils = (count: number, ratedOhm: number) => ({
  ...estatePlan.driver,
  coils: { count, ratedOhm, ...(count > 1 ? { statedFor: 'series' } : {}) }
})
const amplifier = (loadOhm: number, powerW: number, channels = 1) => ({
  ...estatePlan.amplifier,
  ratings: [{ loadOhm, powerW }],
  minimumOhm: loadOhm,
  channels
})

/** Drivers and load of one output for which the amplifier is rated. */
const cases = [
  { driverCount: 1, count: 1, ratedOhm: 4, loadOhm: 4 },
  { driverCount: 1, count: 2, ratedOhm: 2, loadOhm: 1 },
  { driverCount: 1, count: 2, ratedOhm: 2, loadOhm: 4 },
  { driverCount: 2, count: 1, ratedOhm: 4, loadOhm: 2 },
  { driverCount: 2, count: 1, ratedOhm: 2, loadOhm: 4 },
  { driverCount: 2, count: 2, ratedOhm: 2, loadOhm: 2 },
  { driverCount: 3, count: 1, ratedOhm: 4, loadOhm: 4 / 3 },
  { driverCount: 4, count: 1, ratedOhm: 4, loadOhm: 4 },
  { driverCount: 4, count: 2, ratedOhm: 4, loadOhm: 2 }
] as const

describe('drivers of a plan', () => {
  it.each(cases)('$driverCount with $count × $ratedOhm Ω come to $loadOhm Ω by the way they are joined', each => {
    const { driverCount, count, ratedOhm, loadOhm } = each
    const { joined } = loadOf({ driver: coils(count, ratedOhm), driverCount, amplifier: amplifier(loadOhm, 400) })
    if (joined === undefined) throw new Error('not joined')
    const driverOhm =
      joined.connection === 'series' ? count * ratedOhm : joined.connection === 'parallel' ? ratedOhm / count : ratedOhm
    const strings = driverCount / joined.outputs / joined.driversInSeries
    expect((driverOhm * joined.driversInSeries) / strings).toBeCloseTo(joined.loadOhm, 9)
    expect(joined.loadOhm).toBeCloseTo(loadOhm, 2)
    expect(joined.driversPowerW).toBe((450 * driverCount) / joined.outputs)
    expect(joined.amplifierVoltageV ** 2 / joined.loadOhm).toBeCloseTo(joined.amplifierPowerW / joined.outputs, 6)
    expect(joined.powerW).toBeCloseTo((joined.outputs * joined.targetVoltageV ** 2) / joined.loadOhm, 6)
    expect(joined.powerW).toBeLessThanOrEqual(Math.min(joined.amplifierPowerW, 450 * driverCount) + 1e-9)
  })

  it('one on each of three outputs of 300 W are 900 W, and the supply is asked for 900 W', () => {
    const { joined } = loadOf({ driver: coils(1, 4), driverCount: 3, amplifier: amplifier(4, 300, 3) })
    expect(joined).toMatchObject({
      outputs: 3,
      driversPowerW: 450,
      amplifierPowerW: 900,
      supplyPowerW: 900,
      powerW: 900
    })
    expect(joined?.amplifierVoltageV).toBeCloseTo(Math.sqrt(300 * 4), 9)
  })

  it('hear the resistance of 2 m of 16 AWG both ways, 13.2 mΩ/m (ASTM B258), up to what it warms', () => {
    const { seriesOhm = 0 } = loadOf({}).joined ?? {}
    expect(seriesOhm).toBeGreaterThan(0.99 * 4 * 0.0132)
    expect(seriesOhm).toBeLessThan(1.1 * 4 * 0.0132)
    expect(loadOf({ car: { ...estatePlan.car, speakerCableLengthM: 6 } }).joined?.seriesOhm).toBeLessThan(0.12)
  })

  it('that no rating suits are told all loads they can make, one or both to an output, the least first', () => {
    const { wiring } = loadOf({ driver: coils(2, 1), driverCount: 2, amplifier: amplifier(8, 300) })
    const said = wiring.done ? '' : wiring.refusal.message
    const loads = (/present ([\d. or]+) Ω/.exec(said)?.[1] ?? '').split(' or ').map(Number)
    expect(loads).toEqual([0.25, 0.5, 1, 2, 4])
  })
})

describe('a gain', () => {
  const joined: JoinedDrivers = {
    connection: 'series',
    driversInSeries: 1,
    loadOhm: 4,
    outputs: 2,
    driversPowerW: 500,
    bridged: false,
    targetVoltageV: 40,
    amplifierVoltageV: 44,
    amplifierPowerW: 968,
    supplyPowerW: 968,
    powerW: 800,
    usablePowerW: 800,
    seriesOhm: 0.05
  }

  it('of 20 V on two outputs of 4 Ω is 200 W (P = n·V²/R), and 200 W are 20 V again', () => {
    expect(gainPowerAt(joined, 20)).toBe(200)
    expect(withGainFor(joined, 200)).toMatchObject({ powerW: 200, targetVoltageV: 20, gainPowerW: 100 })
  })

  it('is read to three digits and never up: 502.4 W are 502, 1236.5 W are 1230', () => {
    expect(gainPowerAt(joined, 31.7)).toBe(502)
    expect(gainPowerAt({ ...joined, targetVoltageV: 60 }, 49.73)).toBe(1230)
  })

  it('within 1 % of what is borne is that: 39.7 of 40 V is no other gain, 39.5 V is', () => {
    expect(gainPowerAt(joined, 39.7)).toBeUndefined()
    expect(gainPowerAt(joined, 39.5)).toBe(780)
  })

  it('for more than is borne is left as it was', () => {
    expect(withGainFor(joined, 800)).toBe(joined)
    expect(withGainFor(joined, 900)).toBe(joined)
    expect(withGainFor(joined, undefined)).toBe(joined)
  })
})

describe('the protective high-pass of a closed box', () => {
  const run = partRunner()
  const { fsHz, qms, qes, vasL, sdCm2, reOhm, xmaxMm } = estatePlan.driver.sheet
  const driver = { fsHz, qms, qes, vasM3: vasL / 1e3, sdM2: sdCm2 / 1e4, reOhm, xmaxM: xmaxMm / 1e3, powerW: 450 }
  const asked = (voltageV: number, cornerHz: number | undefined): ResponseRequest => ({
    driver,
    enclosure: { kind: 'closed', rear: { netVolumeM3: 0.05 } },
    source: { voltageV },
    filters: cornerHz === undefined ? [] : [{ kind: 'high-pass', family: 'butterworth', order: 2, cornerHz }],
    limits: { amplifierVoltageV: voltageV, ratedOhm: 4 }
  })
  const said = (cornerHz: number) => closedHighPass(run, run(asked(60, cornerHz), computeResponse), { powerW: 900 })[0]

  it('tells the power at which none is needed: there the bare cone just reaches Xmax', () => {
    const { unfilteredPowerW = 0 } = said(20)?.figures ?? {}
    const bare = computeResponse(asked(60 * Math.sqrt(unfilteredPowerW / 900), undefined)).result.limits?.atDrive
    expect(unfilteredPowerW).toBeGreaterThan(10)
    expect(bare?.coneExcursionOfXmax).toBeCloseTo(1, 2)
  })

  it('is a note far below the resonance, a care where it takes the bass', () => {
    const fcHz = said(20)?.figures?.fcHz ?? 0
    expect(fcHz).toBeGreaterThan(40)
    expect([said(0.48 * fcHz)?.level, said(0.52 * fcHz)?.level]).toEqual(['note', 'care'])
  })

  it('is not spoken of where there is none, or where the box is open', () => {
    expect(closedHighPass(run, run(asked(60, undefined), computeResponse), { powerW: 900 })).toEqual([])
  })
})
