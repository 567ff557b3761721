/** What a plan says of its limits and of small changes, against whole responses of the service for the boxes it speaks of. */

import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/http/operations/enclosures/enclosure-response.ts'
import { planSystem } from '../../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, radiatorPlan } from '../../../src/http/operations/systems/plans-examples.ts'
import { risesToHz } from '../../../src/plan/designer/evaluate/crossing.ts'
import { sweepRequests } from '../../support/sweep-requests.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any
const planned = (request: unknown): Answer =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false })).result
const heard = (request: unknown): Answer =>
  JSON.parse(computeResponse.answerText(request, { digits: 'six', basis: false })).result

const COMPARED_HZ = [25, 31.5, 40, 50, 63]
const closed55 = { ...hatchbackPlan, enclosure: { kind: 'closed', netVolumeL: 55 } }
const car = { space: { widthMm: 900, heightMm: 430, depthMm: 450 }, cabin: { lengthM: 2.4 } }
const plans = {
  'two drivers in a vented box': planned(estatePlan),
  'a closed box larger than its power likes': planned({ ...closed55, car }),
  'a small driver held below its rating': planned(sweepRequests[0]?.request),
  'a box with passive radiators': planned(radiatorPlan)
}

/** The request of the response part, changed. */
function changed(plan: Answer, { rear = {}, power = 1, highPassHz }: Answer): Answer {
  const { enclosure, source, filters, ...rest } = plan.parts.response.request
  const others = filters.filter(({ kind }: Answer) => kind === 'low-pass')
  const set = { kind: 'high-pass', family: 'butterworth', order: 2, cornerHz: highPassHz }
  return {
    ...rest,
    enclosure: { ...enclosure, rear: { ...enclosure.rear, ...rear } },
    source: { ...source, voltageV: source.voltageV * Math.sqrt(power) },
    filters: highPassHz === undefined ? others : [...others, set],
    frequenciesHz: COMPARED_HZ
  }
}

const cornerOf = (plan: Answer): number | undefined =>
  plan.parts.response.request.filters.find(({ kind }: Answer) => kind === 'high-pass')?.cornerHz

function levelsOf({ curves }: Answer): readonly number[] {
  const [levels, most] = [curves.seatLevelDb ?? curves.levelDb, curves.maximumSeatLevelDb ?? curves.maximumLevelDb]
  return levels.map((level: number, k: number) => Math.min(level, most[k]))
}

function changesOf(plan: Answer, { change, factor, netVolumeL }: Answer): Answer {
  const { port } = plan.parts.response.request.enclosure.rear
  const highPassHz = cornerOf(plan)
  if (change === 'volume') return { rear: { netVolumeL }, highPassHz }
  if (change === 'power') return { power: factor, highPassHz }
  if (change === 'port-length') return { rear: { port: { ...port, lengthMm: factor * port.lengthMm } }, highPassHz }
  if (change === 'port-area') return { rear: { port: { ...port, areaCm2: factor * port.areaCm2 } }, highPassHz }
  return { highPassHz }
}

describe.each(Object.entries(plans))('the margins of %s', (_name, plan) => {
  it('move as whole responses of the changed boxes do', () => {
    const rows = plan.whatIf.filter(({ change }: Answer) => change !== 'tuning')
    expect(rows[0]).toMatchObject({ change: 'none', factor: 1, againstPlanDb: 0 })
    for (const row of rows) {
      const { curves, scalars, limits } = heard(changed(plan, changesOf(plan, row)))
      for (const [k, level] of levelsOf({ curves }).entries()) {
        expect(Math.abs(row.levelDb[k] - level), `${row.change} ${row.factor} ${COMPARED_HZ[k]} Hz`).toBeLessThan(0.2)
      }
      expect(row.coneOfXmax / limits.atDrive.coneExcursionOfXmax).toBeCloseTo(1, 1)
      if (row.f3Hz !== undefined) expect(row.f3Hz / scalars.f3Hz).toBeCloseTo(1, 1)
      if (row.tuningHz !== undefined) expect(row.tuningHz / scalars.tuningHz).toBeCloseTo(1, 3)
      if (row.airSpeedMPerS !== undefined) {
        expect(row.airSpeedMPerS / limits.atDrive.portAirSpeedMPerS).toBeCloseTo(1, 1)
      }
    }
  })

  it('hold the tuning a tenth up and down with the volume it has', () => {
    const tuned = plan.whatIf.filter(({ change }: Answer) => change === 'tuning')
    const isOpened = ['vented', 'passive-radiator'].includes(plan.choice?.figures.kind)
    expect(tuned).toHaveLength(isOpened ? 2 : 0)
    for (const { tuningHz, factor, netVolumeL } of tuned) {
      expect(tuningHz / plan.whatIf[0].tuningHz).toBeCloseTo(factor, 5)
      expect(netVolumeL).toBe(plan.whatIf[0].netVolumeL)
    }
  })

  it('say the power at which the cone reaches its travel without a high-pass', () => {
    const cone = plan.headroom.limits.find(({ limit }: Answer) => limit === 'cone-excursion')
    const { powerW } = plan.headroom.ways[0]
    const { limits } = heard(changed(plan, { power: cone.powerW / powerW }))
    expect(limits.atDrive.coneExcursionOfXmax).toBeCloseTo(1, 1)
    expect(limits.atDrive.coneExcursionHz / cone.atHz).toBeCloseTo(1, 1)
  })

  it('name ways that keep the cone within its travel, and what each costs', () => {
    const [first, ...others] = plan.headroom.ways
    expect(first).toMatchObject({ way: 'as-planned', againstPlanDb: 0 })
    expect(others.length).toBeGreaterThan(0)
    for (const { way, powerW, highPassHz, netVolumeL, levelDb, againstPlanDb } of others) {
      const rear = netVolumeL === undefined ? {} : { netVolumeL }
      const { limits } = heard(changed(plan, { rear, power: powerW / first.powerW, highPassHz }))
      expect(limits.atDrive.coneExcursionOfXmax, way).toBeLessThan(1.02)
      const mean = (levels: readonly number[]) => levels.reduce((sum, level) => sum + level, 0) / levels.length
      expect(mean(levelDb) - mean(first.levelDb)).toBeCloseTo(againstPlanDb, 3)
    }
  })
})

describe('what the limits cost', () => {
  it('finds the smaller closed box that bears all the power', () => {
    const { headroom } = plans['a closed box larger than its power likes']
    const smaller = headroom.ways.find(({ way }: Answer) => way === 'smaller-box')
    // V = Vas/(r − 1), r = √2·Bl·E·Cms/(Re·Xmax): the volume whose spring holds the cone at DC (Small 1972, from memory; worked by hand)
    expect(smaller.netVolumeL).toBeGreaterThan(24)
    expect(smaller.netVolumeL).toBeLessThan(33)
    expect(headroom.text).toContain('L hold 420 W without a high-pass')
  })

  it('says what all the power would need where the gain is held below', () => {
    const { headroom } = plans['a small driver held below its rating']
    const higher = headroom.ways.find(({ way }: Answer) => way === 'higher-filter')
    expect(higher.powerW).toBeCloseTo(200, 1)
    expect(higher.highPassHz).toBeGreaterThan(30)
    expect(headroom.text).toContain('All 200 W need a high-pass at')
  })

  it('has nothing to say where no box fits', () => {
    const tiny = { space: { widthMm: 200, heightMm: 200, depthMm: 200 } }
    expect(planned({ ...hatchbackPlan, car: tiny })).not.toHaveProperty('headroom')
  })
})

it('finds a crossing between neighbours on logarithms (crossingHz): 10 at 20 Hz and 40 at 80 Hz pass 20 at 40 Hz', () =>
  expect(risesToHz(Float64Array.of(20, 80), Float64Array.of(10, 40), 20)).toBeCloseTo(40, 9))
