/** The points and pieces that a plan makes its circuit of, counted on a drawing; what the vehicle does to it. */
import { describe, expect, it } from 'vitest'
import type { PowerRun } from '../../src/contract/systems/plan-circuit.ts'
import { cable, type Hub, minusOf, points, powerPieces } from '../../src/plan/electric/graph/graph-pieces.ts'
import { chargingEnds, endsAssumed, starterAssumed, starterOf } from '../../src/plan/electric/graph/vehicle-habits.ts'
import { brief } from '../support/supply-briefs.ts'

describe('the vehicle', () => {
  const starter = (supply: object = {}, more: object = {}) => starterOf(brief(supply, more), 'm')?.resistanceOhm

  it('starts by half the cold cranking current at 9.6 V of 12 V: 680 A are 28.2 mΩ; 250 A where nobody says', () => {
    expect(starter({}, { starter: { coldCrankingA: 680 } })).toBeCloseTo(9.6 / 340, 12)
    expect(starter({}, { starter: { coldCrankingA: 681 } })).toBeCloseTo(9.6 / 341, 12)
    expect(starter()).toBeCloseTo(9.6 / 250, 12)
    expect(starter({ systemVoltageV: 24 })).toBeCloseTo(19.2 / 250, 12)
    expect(starter({ starterA: 400 })).toBeCloseTo(9.6 / 400, 12)
    expect(starterAssumed(brief({ starterA: 400 }))).toEqual([])
    expect(starterAssumed(brief()).map(({ value }) => value)).toEqual([250])
  })

  it('that orange cables turn has no starter', () => {
    for (const drive of ['hybrid', 'electric']) {
      expect(starter({}, { drive })).toBeUndefined()
      expect(starterAssumed(brief({}, { drive }))).toEqual([])
    }
    expect(starter({ charging: { kind: 'converter' } })).toBeUndefined()
    expect(starter({}, { drive: 'mild-hybrid' })).toBeDefined()
  })

  it('governs its alternator from 12.2 to 15 V by a sensor, twice that at 24 V; no other charging', () => {
    const ends = (supply: object) => chargingEnds(brief(supply))
    const alternator = { batterySensor: true, charging: { kind: 'alternator' } }
    expect(ends(alternator)).toEqual({ lowestSetV: 12.2, highestSetV: 15 })
    expect(ends({ ...alternator, systemVoltageV: 24 })).toEqual({ lowestSetV: 24.4, highestSetV: 30 })
    for (const other of [
      {},
      { ...alternator, batterySensor: false },
      { batterySensor: true, charging: { kind: 'converter' } }
    ]) {
      expect(ends(other)).toEqual({})
      expect(endsAssumed(brief(other))).toEqual([])
    }
    expect(endsAssumed(brief(alternator)).map(({ value }) => value)).toEqual([12.2, 15])
  })
})

describe('the pieces of a run', () => {
  const fuse = { ratingA: 80, type: 'SF30', breakingA: 2000, voltageV: 32 }
  const run = (more: object = {}) =>
    ({
      designation: '4 AWG',
      runs: 1,
      positiveLengthM: 5,
      returnBy: 'body',
      returnLengthM: 0.5,
      fuse,
      ...more
    }) as unknown as PowerRun
  const hub: Hub = { plus: points.block, returns: points.returns, minus: points.batteryMinus }
  const pieces = (trunk: PowerRun, supply: object = {}, branches: readonly object[] = []) =>
    powerPieces(brief(supply), trunk, branches as never, branches.length > 0 ? hub.plus : 'amplifier 1 plus', hub)
  const lengths = (all: ReturnType<typeof pieces>) => all.cables.map(({ id, lengthM }) => [id, lengthM])

  it('are as long together as the run, with the fuse where the caller puts it and never beyond the middle', () => {
    expect(lengths(pieces(run()))).toEqual([
      ['main', 5],
      ['ground lead', 0.5]
    ])
    expect(lengths(pieces(run(), { fuseDistanceM: 0.3 }))).toEqual([
      ['main tail', 0.3],
      ['main', 4.7],
      ['ground lead', 0.5]
    ])
    expect(lengths(pieces(run({ positiveLengthM: 0.4 }), { fuseDistanceM: 0.3 })).slice(0, 2)).toEqual([
      ['main tail', 0.2],
      ['main', 0.2]
    ])
    expect(cable('short', ['a', 'b'], 0.001, { designation: '4 AWG' }).lengthM).toBe(0.01)
  })

  it('are fused at their source, and at the far end where that is one', () => {
    const places = (trunk: PowerRun, supply: object = {}) =>
      pieces(trunk, supply).fuses.map(({ id, from, to }) => [id, from, to])
    expect(places(run())).toEqual([['main fuse', points.batteryPlus, 'main behind its fuse']])
    expect(places(run(), { fuseDistanceM: 0.3 })).toEqual([
      ['main fuse', 'main before its fuse', 'main behind its fuse']
    ])
    expect(places(run({ endFuse: fuse }))[1]).toEqual(['main end fuse', 'main before its end fuse', 'amplifier 1 plus'])
    expect(places(run({ fuse: undefined }))).toEqual([])
  })

  it('are laid once for each cable side by side, return and fuse with it', () => {
    const two = pieces(run({ runs: 2 }))
    expect(two.cables.map(({ id }) => id)).toEqual(['main 1', 'main 2', 'ground lead 1', 'ground lead 2'])
    expect(two.fuses).toHaveLength(2)
  })

  it('go back through a body of 2 mΩ where nobody measured it, or by a cable that needs none', () => {
    expect(pieces(run()).links).toMatchObject([
      { id: 'body', to: points.batteryMinus, resistanceOhm: 0.002, assumed: true }
    ])
    const measured = pieces(run(), { return: { kind: 'chassis', resistanceOhm: 0.0006 } })
    expect([measured.links[0]?.resistanceOhm, measured.assumed]).toEqual([0.0006, []])
    const back = pieces(run({ returnBy: 'cable', returnLengthM: 4 }), { return: { kind: 'cable', lengthM: 4 } })
    expect(back.links).toEqual([])
    expect(back.cables.at(-1)).toMatchObject({ id: 'return cable', to: points.batteryMinus, lengthM: 4 })
  })

  it('meet at the body side of a battery sensor', () => {
    expect([minusOf(brief()), minusOf(brief({ batterySensor: true }))]).toEqual([points.batteryMinus, points.sensor])
    expect(pieces(run(), { batterySensor: true }).links.at(-1)).toMatchObject({
      from: points.sensor,
      to: points.batteryMinus,
      resistanceOhm: 1e-4
    })
  })

  it('of branches begin at the block and end at the body or the block of the returns', () => {
    const branch = { ...run({ positiveLengthM: 1 }), amplifier: 'bass' }
    const ends = (returnBy: string) =>
      pieces(run({ returnLengthM: 0 }), {}, [branch, { ...branch, returnBy }]).cables.map(({ id, to }) => [id, to])
    expect(ends('cable')).toEqual([
      ['main', points.block],
      ['branch 1', 'amplifier 1 plus'],
      ['branch 1 return', points.ground],
      ['branch 2', 'amplifier 2 plus'],
      ['branch 2 return', points.returns]
    ])
  })
})
