/** Values of a plan that nothing else moves: held by arithmetic, a table or the practice that they stand for. */
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../src/domain/assume.ts'
import { namesOf } from '../../src/plan/electric/plan-branches.ts'
import { blockInputs, hasBlock } from '../../src/plan/electric/plan-run.ts'
import { relayRating } from '../../src/plan/electric/second-battery.ts'
import { shellRequest } from '../../src/plan/enclosure/parts/plan-shell.ts'
import { boxMiss, portMiss } from '../../src/plan/enclosure/plan-miss.ts'
import type { BoxBrief } from '../../src/plan/request/box-brief.ts'
import { crossoverFor } from '../../src/plan/request/plan-crossover.ts'
import { resolvedBoard, sawStep } from '../../src/plan/request/plan-imperial.ts'
import { withInductance, withRating } from '../../src/plan/request/plan-ratings.ts'
import { safetyCase } from '../../src/plan/safety/safety-case.ts'
import { restraint } from '../../src/plan/work/restraint.ts'
import { alderPlan } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'

describe('a box of staves in a round well of 400 mm', () => {
  const brief = (space: object) =>
    ({ space, board: { thicknessM: 0.018 }, drivers: { count: 1 }, lined: false }) as unknown as BoxBrief
  const footprint = (space: object) => shellRequest(brief({ shape: 'round', ...space })).prism?.footprint ?? []

  it('has twelve corners on its circle, an area of 3·R², and a stave square to the front', () => {
    const corners = footprint({ diameterM: 0.4 })
    expect(corners).toHaveLength(12)
    for (const { xM, yM } of corners) expect(Math.hypot(xM - 0.2, yM - 0.2)).toBeCloseTo(0.2, 12)
    const area = corners.reduce((sum, { xM, yM }, i) => {
      const next = corners[(i + 1) % 12] ?? { xM, yM }
      return sum + (xM * next.yM - next.xM * yM) / 2
    }, 0)
    expect(Math.abs(area)).toBeCloseTo(3 * 0.2 ** 2, 12)
    const [first, second] = corners
    expect(first?.yM).toBeCloseTo(0.2 * (1 - Math.cos(Math.PI / 12)), 12)
    expect(second?.yM).toBeCloseTo(first?.yM ?? 9, 12)
    expect((first?.xM ?? 0) + (second?.xM ?? 0)).toBeCloseTo(0.4, 12)
  })

  it('is smaller by carpet and play on every side: 400 less 2·(4 + 10) mm', () => {
    const corners = footprint({ diameterM: 0.4, coveringM: 0.004, clearanceM: 0.01 })
    expect(Math.max(...corners.map(({ xM }) => xM)) / (1 + Math.cos(Math.PI / 12))).toBeCloseTo(0.186, 12)
  })
})

describe('a relay between two batteries', () => {
  it('bears what the fuses of all runs let through: 80 A take one of 100, two of 150 A one of 300, two of 300 A 600', () => {
    const relay = (runs: number, ratingA: number) => relayRating({ runs, fuse: { ratingA } } as never)
    expect([
      relay(1, 80),
      relay(1, 100),
      relay(1, 150),
      relay(2, 150),
      relay(1, 350),
      relay(2, 300),
      relay(2, 325)
    ]).toEqual([100, 100, 200, 300, 500, 600, 700])
  })
})

describe('the hand-over to the front loudspeakers', () => {
  it('follows them between 50 and 120 Hz: above, the ear finds the box; below, they strain (common practice, no source)', () => {
    expect([40, 50, 80, 120, 150].map(crossoverFor)).toEqual([50, 50, 80, 120, 120])
  })
})

describe('a plan in sixteenths of an inch', () => {
  const paper = { units: 'imperial' } as const
  const board = (thicknessM: number) => {
    const assumed = assumptions()
    const resolved = resolvedBoard({ paper, board: { material: 'mdf', thicknessM } }, assumed)
    return { ...resolved, told: assumed.list.map(({ field }) => field) }
  }

  it('takes board of 18 mm as 23/32 in, which is 18.26 mm, and says so; 3/4 in is taken as it is', () => {
    const { thicknessM, told } = board(0.018)
    expect(thicknessM).toBeCloseTo((23 / 32) * 0.0254, 12)
    expect(told).toContain('board.thicknessM')
    expect(board(0.01905).told).not.toContain('board.thicknessM')
  })

  it('cuts from sheets of 4 × 8 ft, 1219.2 × 2438.4 mm, and sets the saw by 1/16 in', () => {
    expect(board(0.018).sheet).toEqual({ lengthM: expect.closeTo(2.4384, 9), widthM: expect.closeTo(1.2192, 9) })
    expect(sawStep({ paper })).toEqual({ sawStepM: 0.0254 / 16 })
    expect(sawStep({ paper: { units: 'metric' } })).toEqual({})
    expect(sawStep({ paper: { units: 'imperial', inches: 'decimal' } } as never)).toEqual({})
  })
})

describe('what a leaflet leaves out', () => {
  const driver = (sheet: object, coils: object = { count: 1, ratedOhm: 4 }) => ({ sheet, coils }) as never

  it('is a power of half a watt for a square centimetre: 490 cm² bear 250 W, less than such drivers do (0.6 to 1.2 W/cm²)', () => {
    expect(withRating(driver({ sdM2: 0.049 }), assumptions()).sheet.powerW).toBe(250)
    expect(withRating(driver({ sdM2: 0.049, powerW: 400 }), assumptions()).sheet.powerW).toBe(400)
  })

  it('is an inductance of half a millisecond times Re: 3.4 Ω have 1.7 mH; none where the sheet speaks of two connections', () => {
    const of = (sheet: object, coils?: object) => withInductance(driver(sheet, coils), assumptions()).sheet.leH
    expect(of({ reOhm: 3.4 })).toBeCloseTo(1.7e-3, 12)
    expect(of({ reOhm: 3.4, leH: 1e-3 })).toBe(1e-3)
    expect(of({})).toBeUndefined()
    expect(
      of({ reOhm: 3.4 }, { count: 2, ratedOhm: 2, statedFor: 'series', resistanceStatedFor: 'parallel' })
    ).toBeUndefined()
    expect(
      of({ reOhm: 3.4 }, { count: 2, ratedOhm: 2, statedFor: 'series', resistanceStatedFor: 'series' })
    ).toBeCloseTo(1.7e-3, 12)
  })
})

describe('the dangers of a plan', () => {
  const steps = ['fit-driver', 'running', 'pass-bulkhead', 'crimp-lugs'].map(id => ({ id, cautions: [] }))
  const ids = (facts: object) =>
    safetyCase({ secondBattery: false, speakerLevel: false, found: new Set(), ...facts } as never, steps).map(
      ({ id }) => id
    )

  it('have a strong magnet from 4 kg on, one that was not weighed has none said of it', () => {
    expect(
      [ids({}), ids({ driverMassKg: 4 }), ids({ driverMassKg: 4.1 })].map(each => each.includes('strong-magnet'))
    ).toEqual([false, false, true])
  })

  it('have single cells and a ready mode in hybrid and electric cars, and in no other', () => {
    for (const [drive, has] of [
      ['hybrid', true],
      ['electric', true],
      ['combustion', false],
      [undefined, false]
    ] as const)
      expect(ids(drive === undefined ? {} : { drive }).includes('ready-mode'), String(drive)).toBe(has)
  })

  it('have an aluminium joint where the cable is of it', () => {
    const has = (conductor?: string) => ids(conductor === undefined ? {} : { conductor }).includes('aluminium-joint')
    expect([has(), has('copper'), has('copper-clad-10')]).toEqual([false, false, true])
  })
})

describe('straps', () => {
  it('hold less of the weight in a van of 3 t than in a car: 0.8 forward and 0.6 sideways for 0.9 and 0.7 (ESV 09-0008, read)', () => {
    const of = (vehicleMassKg?: number) =>
      restraint({ massKg: 40, ...(vehicleMassKg === undefined ? {} : { vehicleMassKg }) }, assumptions())
    const shares = (kg?: number) =>
      [of(kg).drivingForwardN, of(kg).drivingRearwardN, of(kg).drivingSidewaysN].map(force => force / (40 * 9.80665))
    const expectShares = (kg: number | undefined, wanted: readonly number[]) =>
      shares(kg).forEach((share, i) => {
        expect(share).toBeCloseTo(wanted[i] ?? 0, 9)
      })
    expectShares(undefined, [0.9, 0.5, 0.7])
    expectShares(2000, [0.9, 0.5, 0.7])
    expectShares(2001, [0.8, 0.5, 0.6])
    expectShares(3500, [0.8, 0.5, 0.6])
  })
})

describe('a distribution block', () => {
  const branch = { amplifier: 'one' } as never
  const converter = { ratedA: 70 } as never

  it('stands before two amplifiers, before one beside a second battery, and not where one hangs on a converter', () => {
    expect(hasBlock({ branches: [branch, branch] })).toBe(true)
    expect(hasBlock({ branches: [branch] })).toBe(true)
    expect(hasBlock({ branches: [branch], converter })).toBe(false)
    expect(hasBlock({ branches: [branch, branch], converter })).toBe(true)
    expect(hasBlock({ branches: [] })).toBe(false)
  })

  it('has a way in for each cable of the trunk, and one for the second battery; behind a relay or a charger one for both runs', () => {
    const trunk = { runs: 2 } as never
    const second = (link: string) => ({ trunk, secondBattery: { link } as never })
    expect(blockInputs({ trunk })).toBe(2)
    expect([blockInputs(second('joined')), blockInputs(second('relay')), blockInputs(second('charger'))]).toEqual([
      3, 2, 2
    ])
    expect(blockInputs({ trunk, converter })).toBe(1)
  })

  it('calls two amplifiers of one name apart, and one without a name by its place', () => {
    expect(namesOf([{ name: 'a' }, {}, { name: 'a' }, { name: 'b' }] as never)).toEqual([
      'a',
      'amplifier 2',
      'a (3)',
      'b'
    ])
  })
})

describe('limits of the card that no circuit gives', () => {
  const { readings } = electricalHalf(alderPlan(1500))
  const of = (step: string, what: string, unit: string) =>
    readings.find(each => each.step === step && each.what.startsWith(what) && each.unit === unit)

  it('bear three times the idle current and an ampere more, for it is a guess by class', () => {
    const idle = of('fuse-last', 'current drawn idle', 'A')
    expect(idle?.expected).toBeGreaterThan(0.5)
    expect([idle?.lowest, idle?.highest]).toEqual([0, expect.closeTo(3 * (idle?.expected ?? 0) + 1, 1)])
  })

  it('bear at a joint what half a milliohm drops, two and a half times a good one of 0.2 mΩ (common practice, no source)', () => {
    const joint = readings.find(({ what, unit }) => what.startsWith('one joint') && unit === 'mV')
    expect(joint?.lowest).toBe(0)
    expect((joint?.highest ?? 0) / (joint?.expected ?? 1)).toBeCloseTo(0.5 / 0.2, 1)
  })

  it('bear 20 mA of a parked car, and ask 10 V of a turn-on line', () => {
    expect(of('parked-current', '', 'mA')?.highest).toBe(20)
    expect(of('turn-on', '', 'V')?.lowest).toBe(10)
  })
})

describe('by how much a box misses', () => {
  const port = (recommended: object, fits = false) =>
    ({
      done: true,
      request: { space: { straightM: 0.5 } },
      outcome: { result: { fits, recommended: { why: ['one', 'two'], ...recommended }, demand: { limitMPerS: 25 } } }
    }) as never
  const refused = (faults: readonly object[], waiting?: true) =>
    ({ done: false, refusal: { faults, ...(waiting && { waiting }) } }) as never

  it('is the worse of length over room and speed over limit: 600 mm in 500 and 30 m/s for 25 are a fifth', () => {
    expect(portMiss(port({ lengthM: 0.6, airSpeedMPerS: 20 }))).toBeCloseTo(0.2, 12)
    expect(portMiss(port({ lengthM: 0.3, airSpeedMPerS: 30 }))).toBeCloseTo(0.2, 12)
    expect(portMiss(port({ lengthM: 0.6, airSpeedMPerS: 40 }))).toBeCloseTo(0.6, 12)
    expect(portMiss(port({ lengthM: 0.6 }, true))).toBe(0)
    expect(portMiss(undefined)).toBe(0)
  })

  it('is as many as the reasons where neither is too much, and more than any where nothing was found', () => {
    expect(portMiss(port({ lengthM: 0.3, airSpeedMPerS: 20 }))).toBe(2)
    expect(portMiss({ done: false } as never)).toBe(10)
  })

  it('is the share by which a size passes its bound: 50 L for at most 40 are a quarter, 50 for at least 60 a fifth', () => {
    expect(boxMiss(refused([{ value: 0.05, maximum: 0.04 }]))).toBeCloseTo(0.25, 12)
    expect(boxMiss(refused([{ value: 0.05, minimum: 0.06 }]))).toBeCloseTo(0.2, 12)
    expect(
      boxMiss(
        refused([
          { value: 0.05, minimum: 0.06 },
          { value: 0.05, maximum: 0.04 }
        ])
      )
    ).toBeCloseTo(0.25, 12)
    expect([
      boxMiss(refused([{ value: 0.05, maximum: 0 }])),
      boxMiss(refused([{ value: 'a' }])),
      boxMiss(refused([{ value: 1 }]))
    ]).toEqual([10, 10, 10])
    expect(boxMiss(refused([], true))).toBe(0)
  })

  it('is all the room that is lacking over the smallest side: 10 and 20 mm in a box of 300 mm are a tenth', () => {
    const gap = (neededM: number, availableM: number) => ({ neededM, availableM, passes: availableM >= neededM })
    const result = {
      outer: { widthM: 0.6, heightM: 0.4, depthM: 0.3 },
      clearances: [gap(0.02, 0.01), gap(0.02, 0), gap(0.02, 0.5)]
    }
    expect(boxMiss({ done: true, outcome: { result } } as never)).toBeCloseTo(0.1, 12)
  })
})
