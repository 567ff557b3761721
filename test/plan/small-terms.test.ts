/** Terms of a plan that are seen through it in rounded words only, by arithmetic or the reason they stand for. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { pistonAreaM2, pistonDiameterM } from '../../src/plan/request/plan-piston.ts'
import { resolvedSpace } from '../../src/plan/request/plan-space.ts'
import { supplyBrief } from '../../src/plan/request/supply-brief.ts'
import { fewer, frontwards, opened, uncovered, upwards } from '../../src/plan/ways-out/changes.ts'
import { closingPanel } from '../../src/plan/work/closing-panel.ts'

describe('the board that closes a box', () => {
  const outline = [
    { uM: 0, vM: 0 },
    { uM: 0.6, vM: 0 },
    { uM: 0.6, vM: 0.4 },
    { uM: 0, vM: 0.4 }
  ]
  const hole = (given: object) => ({ kind: 'circle', purpose: 'driver', uM: 0.3, vM: 0.2, diameterM: 0.28, ...given })
  const of = (...cutOuts: object[]) => closingPanel({ name: 'front', outline, cutOuts } as never)

  it('lets an arm of 120 mm in and reaches 450 mm: to the far corner by Pythagoras, from the nearest hole', () => {
    // 300 and 200 mm to each corner; 450 and 200 mm from a hole that stands aside
    expect(of(hole({}))).toMatchObject({
      openingM: 0.28,
      reachM: expect.closeTo(Math.hypot(0.3, 0.2), 12),
      reachable: true
    })
    expect(of(hole({ uM: 0.15 }))).toMatchObject({
      reachM: expect.closeTo(Math.hypot(0.45, 0.2), 12),
      reachable: false
    })
    const two = of(hole({ uM: 0.15 }), hole({ uM: 0.45 }))
    expect([two.reachM, two.reachable]).toEqual([expect.closeTo(Math.hypot(0.15, 0.2), 12), true])
    expect([of(hole({ diameterM: 0.12 })).reachable, of(hole({ diameterM: 0.119 })).reachable]).toEqual([true, false])
  })

  it('counts a slot by its narrow side, and no rebate or window of a brace', () => {
    const slot = hole({ kind: 'rectangle', diameterM: undefined, widthM: 0.4, heightM: 0.05 })
    expect(of(slot)).toMatchObject({ openingM: 0.05, reachM: 0, reachable: false })
    expect(of(hole({ rebateDepthM: 0.006 })).openingM).toBe(0)
    expect(of(hole({ purpose: 'brace-window' })).openingM).toBe(0)
    expect(of()).toMatchObject({ openingM: 0, reachM: 0, reachable: false })
  })
})

describe('a piston', () => {
  it('has the circle of its area, or one of the share of a nominal diameter that a surround leaves (common practice)', () => {
    expect(pistonDiameterM({ sdM2: Math.PI * 0.125 ** 2 })).toBeCloseTo(0.25, 12)
    const areaM2 = pistonAreaM2({ nominalDiameterM: 0.3 }) ?? 0
    expect(pistonDiameterM({ sdM2: areaM2 })).toBeCloseTo(pistonDiameterM({ nominalDiameterM: 0.3 }) ?? 0, 12)
    // 470 to 530 cm² stand on the sheets of such drivers
    expect(areaM2).toBeGreaterThan(0.047)
    expect(areaM2).toBeLessThan(0.053)
    expect(pistonAreaM2({ sdM2: 0.05, nominalDiameterM: 0.3 })).toBe(0.05)
    expect(pistonDiameterM({})).toBeUndefined()
  })
})

describe('the shape of a box that nobody named', () => {
  const shape = (space: object, covered = false) => {
    const { shape: found, coveringM } = resolvedSpace({ space } as never, { covered } as never, assumptions())
    return [found, coveringM]
  }
  it('follows the room: round, free, sloping; a wedge under a seat back that leans 10° or more', () => {
    expect([shape({ diameterM: 0.5 })[0], shape({ footprint: [] })[0]]).toEqual(['round', 'prism'])
    expect([shape({ acrossSlopeDeg: 3 })[0], shape({ lidSlopeDeg: 3 })[0]]).toEqual(['wedge', 'wedge'])
    expect([0, 9.9, 10, 25].map(seatSlopeDeg => shape({ seatSlopeDeg })[0])).toEqual([
      'rectangular',
      'rectangular',
      'wedge',
      'wedge'
    ])
    expect(shape({ shape: 'rectangular', seatSlopeDeg: 25 })[0]).toBe('rectangular')
  })

  it('is 4 mm smaller a face under carpet, as given else, and not at all on bare wood', () => {
    expect([shape({})[1], shape({}, true)[1], shape({ coveringM: 0.007 }, true)[1]]).toEqual([undefined, 0.004, 0.007])
  })
})

describe('what the electric rooms work from', () => {
  const brief = (supply: object, signal: object = {}) =>
    supplyBrief({
      amplifier: {},
      car: {},
      signal,
      supply: { systemVoltageV: 12, positiveLengthM: 5, return: { kind: 'chassis' }, ...supply }
    } as never)

  it('is a drop of 3 % unless told, which are 0.36 V of 12 V and 0.72 V of 24 V', () => {
    expect(brief({}).dropAllowedV).toBeCloseTo(0.36, 12)
    expect(brief({ systemVoltageV: 24 }).dropAllowedV).toBeCloseTo(0.72, 12)
    expect(brief({ dropLimitPercent: 5 }).dropAllowedV).toBeCloseTo(0.6, 12)
  })

  it('lays branches in the heat of the boot, unless the caller knows it to be cooler there', () => {
    expect(brief({ spaces: ['engine-bay'] }).inTheBoot).toEqual({ spaces: ['boot'] })
    expect(brief({ ambientC: 30 }).inTheBoot).toEqual({ ambientC: 30 })
    expect(brief({ ambientC: 85 }).inTheBoot).toEqual({ spaces: ['boot'] })
  })

  it('counts one turn-on input for each amplifier on the run, where nobody counted them', () => {
    const loads = (otherAmplifiers: unknown, turnOn: unknown) => brief({ otherAmplifiers }, { turnOn }).turnOn?.loadsA
    expect(loads([{}, {}], {})).toEqual([0.05, 0.05, 0.05])
    expect(loads([{}], { loadsA: [0.2] })).toEqual([0.2])
    expect([loads(undefined, {}), loads([{}], undefined)]).toEqual([undefined, undefined])
  })

  it('takes the capacity of a battery for its strength only where its kind says enough of its resistance', () => {
    const starter = (battery: object) => brief({ battery }).starter
    expect(starter({ capacityAh: 70 })).toEqual({})
    expect(starter({ capacityAh: 70, chemistry: 'flooded' })).toEqual({ chemistry: 'flooded' })
    expect(starter({ capacityAh: 70, chemistry: 'agm' })).toEqual({ capacityAh: 70, chemistry: 'agm' })
  })
})

describe('what can give way', () => {
  const from = (request: object) =>
    ({ texts: [], request: { driverCount: 2, driver: {}, car: { space: {} }, ...request }, patch: {} }) as never
  const requests = (changes: readonly { readonly request: PlanRequest }[]) => changes.map(({ request }) => request)

  it('is a wish, where one was asked', () => {
    expect([opened(from({})), opened(from({ enclosure: {} }))]).toEqual([[], []])
    expect(opened(from({ enclosure: { kind: 'closed' } }))[0]?.patch).toEqual({ enclosure: null })
  })

  it('is the carpet, where there is any', () => {
    const bare = (given: object) => uncovered(from(given)).length
    expect([bare({}), bare({ car: { space: { coveringM: 0.004 } } })]).toEqual([1, 1])
    expect([bare({ car: { space: { coveringM: 0 } } }), bare({ finish: { covered: false } })]).toEqual([0, 0])
    expect(uncovered(from({ car: { space: { coveringM: 0.004 } } }))[0]?.request.car.space.coveringM).toBe(0)
  })

  it('is the face of the drivers: to the front from elsewhere, to the top from the front', () => {
    const onTop = { driver: { mounting: { face: 'top' } } }
    expect([frontwards(from({})).length, upwards(from(onTop)).length]).toEqual([0, 0])
    expect(requests(frontwards(from(onTop)))[0]?.driver.mounting).toEqual({})
    expect(requests(upwards(from({})))[0]?.driver.mounting?.face).toBe('top')
  })

  it('is one driver of several, never the last', () => {
    const counts = [3, 2].map(driverCount => requests(fewer(from({ driverCount, driver: {} })))[0]?.driverCount)
    expect(counts).toEqual([2, 1])
    expect(fewer(from({ driverCount: 1 }))).toEqual([])
  })
})
