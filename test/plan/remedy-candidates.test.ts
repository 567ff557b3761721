/** What is tried for a supply that is short of something, by what is known of it: common practice, no source. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { candidates } from '../../src/plan/remedies/candidates.ts'
import type { ElectricOutcome } from '../../src/plan/remedies/electric-outcome.ts'

const base = {
  supply: { systemVoltageV: 12, positiveLengthM: 5, return: { kind: 'cable', lengthM: 5 }, insulationC: 125 },
  driver: { coils: { count: 2, ratedOhm: 2 } },
  amplifier: { minimumOhm: 2, channels: 1, ratings: [{ loadOhm: 2, powerW: 800 }] }
}
const now: ElectricOutcome = {
  figures: {},
  problems: new Map([['total-drop', 1]]),
  joined: true,
  weak: false
}
const tried = (supply: object = {}, more: object = {}, outcome: object = {}) =>
  candidates({ ...base, ...more, supply: { ...base.supply, ...supply } } as unknown as PlanRequest, {
    ...now,
    ...outcome
  })
const ids = (...given: Parameters<typeof tried>) => tried(...given).map(({ id }) => id)
const patchOf = (id: string, ...given: Parameters<typeof tried>) => tried(...given).find(each => each.id === id)?.patch

describe('what is tried', () => {
  it('is a second battery of the kind and size of the first, 70 A·h flooded where nothing is said; none beside one', () => {
    expect(ids()).toEqual(['second-battery'])
    const second = (battery: object) => patchOf('second-battery', battery)?.supply?.secondBattery
    expect(second({})).toEqual({ arrangement: 'isolated', capacityAh: 70, chemistry: 'flooded' })
    expect(second({ battery: { capacityAh: 92, chemistry: 'agm' } })).toMatchObject({
      capacityAh: 92,
      chemistry: 'agm'
    })
    expect(ids({ secondBattery: {} })).toEqual([])
  })

  it('is an alternator stronger by two fifths, in whole tens and within 1000 A: 120 A to 170 A, 100 A to 140 A', () => {
    const next = (ratedA: number) => {
      const patch = patchOf('stronger-alternator', { charging: { kind: 'alternator', ratedA } })
      return (patch?.supply?.charging as { ratedA?: number } | undefined)?.ratedA
    }
    expect([100, 120, 180, 800].map(next)).toEqual([140, 170, 260, 1000])
    expect(ids({ charging: { kind: 'dc-dc', ratedA: 100 } })).not.toContain('stronger-alternator')
  })

  it('is nothing for a plan that misses nothing, and other coils alone where there is no load', () => {
    expect(ids({}, {}, { problems: new Map() })).toEqual([])
    expect(tried({}, {}, { joined: false }).map(({ patch }) => patch.driver?.coils.ratedOhm)).toEqual([1, 4])
  })

  it('is a converter where the amplifier is made for less, and the next that is sold where the one given is too small', () => {
    const class24 = { problems: new Map([['amplifier-voltage-class', 2]]) }
    expect(patchOf('converter', { systemVoltageV: 24 }, {}, class24)).toEqual({ supply: { converter: {} } })
    expect(ids({ systemVoltageV: 24 })).not.toContain('converter')
    const small = { problems: new Map([['converter-too-small', 2]]), fullSineA: 45 }
    const next = patchOf('converter', { converter: { ratedA: 30 } }, {}, small)?.supply?.converter as { ratedA: number }
    expect(next.ratedA).toBeGreaterThanOrEqual(45)
    expect(next.ratedA).toBeLessThan(2 * 45)
    expect(ids({ converter: { ratedA: 30 } })).not.toContain('converter')
    expect(ids({ converter: {} }, {}, small)).not.toContain('converter')
    expect(ids({ converter: { ratedA: 30 } }, {}, { ...small, fullSineA: 1e4 })).not.toContain('converter')
    expect(ids({ converter: { ratedA: 30 }, secondBattery: {} }, {}, small)).not.toContain('converter')
  })

  it('is 2 dB less gain, 63.1 % of the power, and other coils where the voltage falls; not where a cable is thin', () => {
    const falling = { problems: new Map([['below-drop-out', 2]]), powerW: 1000 }
    expect(patchOf('lower-gain', {}, {}, falling)).toEqual({ signal: { gainPowerW: 631 } })
    expect(ids({}, {}, falling)).toContain('other-coils')
    expect(ids({}, {}, { powerW: 1000 })).not.toContain('lower-gain')
    const { powerW: _, ...unknown } = falling
    expect(ids({}, {}, unknown)).not.toContain('lower-gain')
  })

  it('is a bridge for a weak amplifier whose sheet says neither channels nor a bridge: each channel sees half', () => {
    const amplifier = { minimumOhm: 2, ratings: [{ loadOhm: 2, powerW: 200 }] }
    const weak = { weak: true, problems: new Map() }
    expect(patchOf('bridging', {}, { amplifier }, weak)).toEqual({
      amplifier: { channels: 2, minimumBridgedOhm: 4 }
    })
    for (const told of [
      { channels: 2 },
      { minimumBridgedOhm: 4 },
      { ratings: [{ loadOhm: 4, powerW: 800, bridged: true }] }
    ])
      expect(ids({}, { amplifier: { ...amplifier, ...told } }, weak)).toEqual([])
    expect(ids({}, { amplifier })).not.toContain('bridging')
  })
})

describe('another cable', () => {
  it('is one that prints 105 °C where nothing or less is printed, cross-linked at 125 °C above that, none beyond', () => {
    const of = (insulationC?: number) => {
      const found = tried({ insulationC }).find(({ id }) => id === 'other-insulation')
      return [found?.patch.supply?.insulationC, found?.cost]
    }
    expect(of()).toEqual([105, 'reading'])
    expect([of(80), of(104), of(105), of(124)].map(([classC]) => classC)).toEqual([105, 105, 125, 125])
    expect(of(80)[1]).toBe('cable')
    expect(patchOf('other-insulation', { insulationC: 105 })?.supply?.insulationMaterial).toBe('xlpe')
    expect([of(125), of(150)]).toEqual([
      [undefined, undefined],
      [undefined, undefined]
    ])
  })

  it('is the next size where the chosen one loses more than 0.2 %: a limit a hundredth under its loss', () => {
    const limit = (lossPercent?: number) => patchOf('next-size', {}, {}, { lossPercent })?.supply?.dropLimitPercent
    expect([limit(), limit(0.1), limit(0.2)]).toEqual([undefined, undefined, undefined])
    expect(limit(2)).toBeCloseTo(1.98, 9)
  })

  it('is the size below where it just misses, by a limit that lets it pass and no more than a thousandth beyond', () => {
    const nearMiss = { designation: '2/0 AWG', missPercent: 1.2, limitPercent: 3 }
    const allowed = patchOf('smaller-size', {}, {}, { nearMiss })?.supply?.dropLimitPercent ?? 0
    expect(allowed).toBeGreaterThan(3)
    expect(allowed).toBeLessThanOrEqual(3.003)
    expect(ids({}, {}, { nearMiss, problems: new Map() })).toEqual(['smaller-size'])
  })

  it('is one more beside stiff ones of 50 mm² and over, up to four', () => {
    const runs = (of: number, sectionM2: number) =>
      patchOf('parallel-runs', {}, {}, { runs: of, sectionM2 })?.supply?.runs
    expect([runs(1, 49e-6), runs(1, 50e-6), runs(3, 99e-6), runs(4, 99e-6)]).toEqual([undefined, 2, 4, undefined])
  })

  it('is full copper for clad, and a cable back or a measured body where the body carries', () => {
    expect(ids({ conductor: 'copper' })).not.toContain('full-copper')
    expect(patchOf('full-copper', { conductor: 'copper-clad-10' })).toEqual({ supply: { conductor: 'copper' } })
    const chassis = { return: { kind: 'chassis' } }
    expect(patchOf('return-cable', chassis)?.supply?.return).toMatchObject({ kind: 'cable', lengthM: 5 })
    expect(patchOf('measure-body', chassis)?.supply?.return).toMatchObject({ resistanceOhm: 0.0006 })
    expect(ids({ return: { kind: 'chassis', resistanceOhm: 0.001 } })).not.toContain('measure-body')
    expect(ids()).not.toContain('return-cable')
  })
})
