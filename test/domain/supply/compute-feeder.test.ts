import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FeederRequest } from '../../../src/contract/supply/supply-feeder.ts'
import { computeFeeder } from '../../../src/domain/circuit/graph/compute-feeder.ts'
import { sourceState } from '../../../src/domain/circuit/graph/limited-source.ts'
import { trunkState } from '../../../src/domain/circuit/graph/shared-trunk.ts'
import { largestPower, voltageAtConstantPower } from '../../../src/domain/circuit/load/constant-power-feeder.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { supplyFeeder } from '../../../src/http/operations/supply/supply-feeder.ts'
import { largestLoop } from '../../support/electrical-forms.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(supplyFeeder)

const P1000 = 1000 / 0.85
const one = (voltageV: number, inputPowerW: number, resistanceOhm: number): FeederRequest => ({
  systemVoltageV: 12,
  source: { voltageV, resistanceOhm: 0 },
  trunk: { resistanceOhm },
  amplifiers: [{ inputPowerW }]
})
const codes = (request: FeederRequest) => computeFeeder(request).cautions.map(({ code, level }) => `${code} ${level}`)

describe('constant power behind a resistance', () => {
  it('gives 11.8072 V and 99.64 A for 1176 W from 13.8 V through 20 mΩ, where a division gives 85.25 A', () => {
    const { result } = computeFeeder(one(13.8, P1000, 0.02))
    expectPrinted(result.amplifiers[0]?.voltageV ?? 0, '11.8072')
    expectPrinted(result.amplifiers[0]?.currentA ?? 0, '99.64')
    expectPrinted(result.amplifiers[0]?.firstGuessA ?? 0, '85.25')
    expectPrinted(result.maximumPowerW ?? 0, '2380.5')
    expectPrinted(largestPower(13.8, 0.02) ?? 0, '2380.5')
  })

  it('finds the root below every usable voltage and says that the amplifier stops there: 8.3966 V', () => {
    const { result, cautions } = computeFeeder(one(12.6, P1000, 0.03))
    expectPrinted(result.amplifiers[0]?.voltageV ?? 0, '8.3966')
    expect(result.amplifiers[0]?.runs).toBe(false)
    expect(cautions.find(({ code }) => code === 'below-drop-out')?.figures).toMatchObject({ dropOutV: 10.5 })
  })

  it('collapses without a number: 1764.7 W from 12 V through 30 mΩ, at most 1200 W', async () => {
    const { status, body } = await post('/v1/supply/feeder', one(12, 1500 / 0.85, 0.03))
    expect(status).toBe(200)
    expect(body.result.feasible).toBe(false)
    expect(body.result.maximumPowerW).toBeCloseTo(1200, 6)
    expect(body.result.amplifiers[0]).not.toHaveProperty('voltageV')
    const stop = body.cautions.find(({ code }: { code: string }) => code === 'feed-collapse')
    expect(stop.level).toBe('stop')
    expect(stop.figures.maximumPowerW).toBeCloseTo(1200, 6)
    expect(body.cautions[0].code).toBe('feed-collapse')
  })

  it('has the source voltage without resistance, and stays above half of it up to the limit', () => {
    expect(computeFeeder(one(14.4, 588.235, 0)).result.amplifiers[0]).toMatchObject({ voltageV: 14.4, feasible: true })
    expectPrinted(voltageAtConstantPower(12.6, 0.98 * (largestPower(12.6, 0.03) ?? 0), 0.03) ?? 0, '7.191')
    expect(voltageAtConstantPower(12, 1200, 0.03)).toBeCloseTo(6, 6)
    expect(largestLoop(12, 1200)).toBeCloseTo(0.03, 12)
  })

  it('shares a trunk: 700 W and 500 W at 13.8 V', () => {
    const { result } = computeFeeder({
      systemVoltageV: 12,
      source: { voltageV: 13.8, resistanceOhm: 0 },
      trunk: { resistanceOhm: 0.008 },
      amplifiers: [
        { inputPowerW: 700, branch: { resistanceOhm: 0.003 } },
        { inputPowerW: 500, branch: { resistanceOhm: 0.004 } }
      ]
    })
    expectPrinted(result.blockVoltageV ?? 0, '13.0556')
    expect(result.amplifiers.map(({ voltageV }) => voltageV?.toFixed(4))).toEqual(['12.8927', '12.9005'])
    expect(result.amplifiers.map(({ currentA }) => currentA?.toFixed(3))).toEqual(['54.294', '38.758'])
  })

  it('collapses on a shared trunk: 1500 W and 1000 W from 12 V through 15 mΩ', () => {
    const branches = [
      { load: { kind: 'power', amount: 1500 }, ohm: 0.003 },
      { load: { kind: 'power', amount: 1000 }, ohm: 0.004 }
    ] as const
    expect(trunkState(12, 0.015, branches)).toBeUndefined()
  })

  it('lets the battery help an exhausted alternator, and not a sufficient one', () => {
    const source = {
      voltageV: 14.2,
      resistanceOhm: 0,
      limit: { currentA: 60, baseLoadA: 35, batteryV: 12.6, batteryOhm: 0.01 }
    }
    const at = (powerW: number) => sourceState(source, 0.006, [{ load: { kind: 'power', amount: powerW }, ohm: 0 }])
    expect(at(600)).toMatchObject({ mode: 'battery-assists' })
    expectPrinted(at(600).nodeV ?? 0, '12.3522')
    expectPrinted(at(600).state?.loads[0]?.voltageV ?? 0, '12.0536')
    expectPrinted(at(600).state?.totalA ?? 0, '49.778')
    expect(at(150)).toMatchObject({ mode: 'regulated' })
    expectPrinted(at(150).state?.loads[0]?.voltageV ?? 0, '14.1363')
    expectPrinted(at(150).state?.totalA ?? 0, '10.611')
  })
})

/** A full Newton search over all unknowns at once: a second way to the state. */
function newton(
  sourceV: number,
  trunkOhm: number,
  loads: readonly (readonly [powerW: number, ohm: number])[]
): readonly number[] {
  let volts = loads.map(() => sourceV)
  for (let step = 0; step < 200; step++) {
    const total = loads.reduce((sum, [powerW], i) => sum + powerW / (volts[i] ?? 1), 0)
    volts = volts.map((v, i) => {
      const [powerW, ohm] = loads[i] ?? [0, 0]
      const f = sourceV - trunkOhm * total - (ohm * powerW) / v - v
      const slope = (trunkOhm * powerW) / v ** 2 + (ohm * powerW) / v ** 2 - 1
      return v - (0.5 * f) / slope
    })
  }
  return volts
}

const anyFeeder = fc.record({
  sourceV: fc.double({ min: 11, max: 15, noNaN: true }),
  trunkOhm: fc.double({ min: 0, max: 0.01, noNaN: true }),
  loads: fc.array(
    fc.tuple(fc.double({ min: 1, max: 1200, noNaN: true }), fc.double({ min: 0, max: 0.01, noNaN: true })),
    { minLength: 2, maxLength: 6 }
  )
})

describe('shared trunk', () => {
  const branchesOf = (loads: readonly (readonly [number, number])[]) =>
    loads.map(([amount, ohm]) => ({ load: { kind: 'power' as const, amount }, ohm }))

  it('agrees with a damped Newton search over all voltages wherever a margin is left', () => {
    fc.assert(
      fc.property(anyFeeder, ({ sourceV, trunkOhm, loads }) => {
        if (trunkState(sourceV, trunkOhm, branchesOf(loads), 1.2) === undefined) return
        const state = trunkState(sourceV, trunkOhm, branchesOf(loads))
        for (const [index, voltageV] of newton(sourceV, trunkOhm, loads).entries()) {
          expect(state?.loads[index]?.voltageV).toBeCloseTo(voltageV, 6)
        }
      }),
      { seed: 11, numRuns: 200 }
    )
  })

  it('balances power: what the source gives is what loads take and resistances heat', () => {
    fc.assert(
      fc.property(anyFeeder, ({ sourceV, trunkOhm, loads }) => {
        const state = trunkState(sourceV, trunkOhm, branchesOf(loads))
        if (state === undefined) return
        const heat = loads.reduce(
          (sum, [, ohm], i) => sum + ohm * (state.loads[i]?.currentA ?? 0) ** 2,
          trunkOhm * state.totalA ** 2
        )
        const taken = loads.reduce((sum, [powerW]) => sum + powerW, 0)
        expect((heat + taken) / (sourceV * state.totalA)).toBeCloseTo(1, 9)
      }),
      { seed: 12, numRuns: 300 }
    )
  })

  it('asks twice as much of an unregulated amplifier by half its resistance', () => {
    const branches = [
      { load: { kind: 'resistance', amount: 0.4 }, ohm: 0.01 },
      { load: { kind: 'current', amount: 10 }, ohm: 0.01 }
    ] as const
    // node equation by hand: (12 − v)/0.02 = v/(0.2 + 0.01) + 20
    const v = (12 / 0.02 - 20) / (1 / 0.02 + 1 / 0.21)
    expect(trunkState(12, 0.02, branches, 2)?.blockV).toBeCloseTo(v, 9)
  })

  it('is one loop when one load is left, and lower for every watt more', () => {
    const pair = (powerW: number) =>
      trunkState(
        13.8,
        0.008,
        branchesOf([
          [powerW, 0.003],
          [1e-9, 0.004]
        ])
      )
    expect(pair(700)?.loads[0]?.voltageV).toBeCloseTo(voltageAtConstantPower(13.8, 700, 0.011) ?? 0, 9)
    expect(pair(701)?.loads[0]?.voltageV).toBeLessThan(pair(700)?.loads[0]?.voltageV ?? 0)
  })

  it('has the collapse margin of the closed form when two equal branches stand for one', () => {
    const request: FeederRequest = {
      systemVoltageV: 12,
      source: { voltageV: 12, resistanceOhm: 0 },
      trunk: { resistanceOhm: 0.01 },
      amplifiers: [{ inputPowerW: 300 }, { inputPowerW: 300 }]
    }
    const { result } = computeFeeder(request)
    expect(result.collapseMargin).toBeCloseTo(144 / (4 * 0.01 * 600), 6)
    expect(result.maximumPowerW).toBeCloseTo(3600, 2)
  })
})

const branch = (designation: string, positiveLengthM: number) => ({
  cable: {
    designation,
    conductor: 'copper' as const,
    positiveLengthM,
    insulationC: 105,
    ambientC: 50,
    return: { kind: 'cable' as const, lengthM: 0.5 }
  }
})
/** One class D and one class AB behind trunk and block, as a builder describes them; no fuse named. */
const two: FeederRequest = {
  systemVoltageV: 12,
  source: { voltageV: 13.8, resistanceOhm: 0.003 },
  trunk: {
    cable: {
      designation: '2/0 AWG',
      conductor: 'copper',
      positiveLengthM: 5,
      insulationC: 105,
      ambientC: 60,
      return: { kind: 'chassis', leadLengthM: 0, resistanceOhm: 0.001 }
    }
  },
  amplifiers: [
    { name: 'bass', powerW: 800, class: 'D', regulation: 'regulated', branch: branch('4 AWG', 1) },
    { name: 'doors', powerW: 400, class: 'AB', regulation: 'regulated', branch: branch('6 AWG', 1.2) }
  ]
}

describe('a class D and a class AB amplifier behind one trunk', () => {
  it('has 150 A before 80 A and 60 A, every cable guarded, both branches selective (protectionOf: 800 W class D, 400 W class AB)', async () => {
    const { status, body } = await post('/v1/supply/feeder', two)
    expect(status).toBe(200)
    const { protection } = body.result
    expect(protection.mainRatingA).toBe(150)
    expect(protection.branches).toEqual([
      { stretch: '0', branchRatingA: 80, ratio: 1.875, selective: true },
      { stretch: '1', branchRatingA: 60, ratio: 2.5, selective: true }
    ])
    for (const { guarded, fuseRatingA, ampacityA } of protection.cables) {
      expect(guarded).toBe(true)
      expect(fuseRatingA).toBeLessThanOrEqual(ampacityA)
    }
    expect(protection.cables).toHaveLength(3)
    for (const { voltageV, dropOutV, runs } of body.result.amplifiers) {
      expect(runs).toBe(true)
      expect(voltageV).toBeGreaterThan(dropOutV)
    }
    const fuses = body.assumed.filter(({ pointer }: { pointer: string }) => pointer.endsWith('/ratingA'))
    expect(fuses.map(({ value }: { value: number }) => value)).toEqual([150, 80, 60])
  })

  it('stops for a cable of a given class and place, and asks for the print where they are assumed', () => {
    const laid = (cable: object): FeederRequest => ({
      ...two,
      amplifiers: [
        { ...two.amplifiers[0], branch: { cable: { designation: '10 AWG', positiveLengthM: 1, ...cable } } },
        ...two.amplifiers.slice(1)
      ]
    })
    const found = (cable: object) => computeFeeder(laid(cable)).cautions.find(({ code }) => code === 'cable-unguarded')
    expect(found({ insulationC: 105, ambientC: 50 })).toMatchObject({ level: 'stop' })
    expect(found({ insulationC: 105 })).toMatchObject({ level: 'care' })
    expect(found({})?.level).toBe('care')
    expect(found({})?.message).toMatch(/read the print/i)
  })

  it('names the cable its fuse does not guard and the branch without one', () => {
    const thin = {
      ...two,
      amplifiers: [{ ...two.amplifiers[0], branch: branch('10 AWG', 1) }, ...two.amplifiers.slice(1)]
    }
    const unguarded = computeFeeder(thin).cautions.find(({ code }) => code === 'cable-unguarded')
    expect(unguarded).toMatchObject({ level: 'stop', at: 'amplifiers[0].branch' })
    expect(unguarded?.figures).toMatchObject({ fuseRatingA: 80 })
    const bare = {
      ...two,
      amplifiers: [
        { ...two.amplifiers[0], branch: { ...branch('4 AWG', 1), unfused: true } },
        ...two.amplifiers.slice(1)
      ]
    }
    expect(codes(bare)).toContain('branch-unprotected stop')
    const stout = {
      ...two,
      amplifiers: [
        { ...two.amplifiers[0], branch: { ...branch('1/0 AWG', 1), unfused: true } },
        ...two.amplifiers.slice(1)
      ]
    }
    expect(codes(stout)).not.toContain('branch-unprotected stop')
    const close = {
      ...two,
      amplifiers: [
        { ...two.amplifiers[0], branch: { ...branch('2 AWG', 1), fuse: { ratingA: 100 } } },
        ...two.amplifiers.slice(1)
      ]
    }
    expect(codes(close)).toContain('selectivity-poor note')
  })

  it('warms its conductors until current and resistance agree, and heats what it loses', () => {
    const { result } = computeFeeder(two)
    const held = computeFeeder({ ...two, conductorTemperatureC: result.trunk?.conductorC ?? 0 }).result
    expect(held.trunk?.parts.positive).toBeCloseTo(result.trunk?.parts.positive ?? 0, 7)
    const stages = [result.trunk, ...result.amplifiers.map(amplifier => amplifier.branch)]
    for (const stage of stages) {
      expect(stage?.conductorC).toBeGreaterThan(50)
      const sum = Object.values(stage?.parts ?? {}).reduce((total, ohm) => total + ohm, 0)
      expect(sum).toBeCloseTo(stage?.resistanceOhm ?? 0, 15)
    }
    expect(result.lossW).toBeCloseTo(
      stages.reduce((sum, stage) => sum + (stage?.lossW ?? 0), 0),
      9
    )
    const cold = computeFeeder({ ...two, conductorTemperatureC: 20 }).result
    expect(cold.amplifiers[0]?.voltageV).toBeGreaterThan(result.amplifiers[0]?.voltageV ?? 99)
  })

  it('halves conductors and fuse of a trunk in two runs, each with its own fuse', () => {
    const runs = (n: number) =>
      computeFeeder({
        ...two,
        conductorTemperatureC: 20,
        trunk: { cable: { ...two.trunk?.cable, runs: n } as never, fuse: { ratingA: 150 } }
      }).result
    expect(runs(2).trunk?.parts.positive).toBeCloseTo((runs(1).trunk?.parts.positive ?? 0) / 2, 15)
    expect(runs(2).trunk?.parts.fuse).toBeCloseTo((runs(1).trunk?.parts.fuse ?? 0) / 2, 15)
    expect(runs(2).protection.mainRatingA).toBe(300)
  })

  it('plays ordinary music at less drop than a test tone, and dips lower at the crest of the ripple', () => {
    const at = (level: 'full-sine' | 'heavy' | 'average') => computeFeeder({ ...two, level }).result.amplifiers[0]
    expect(at('average')?.voltageV).toBeGreaterThan(at('heavy')?.voltageV ?? 99)
    expect(at('heavy')?.voltageV).toBeGreaterThan(at('full-sine')?.voltageV ?? 99)
    expect(at('full-sine')?.troughVoltageV).toBeLessThan(at('full-sine')?.voltageV ?? 0)
  })

  it('reckons ground noise: 10 A through 2 mΩ under 4 V is 20 mV, −46.02 dB', () => {
    const { result, cautions } = computeFeeder({ ...two, groundNoise: { sharedOhm: 0.002, signalV: 4, rippleA: 10 } })
    expect(result.groundNoise?.noiseV).toBeCloseTo(0.02, 12)
    expectPrinted(result.groundNoise?.levelDb ?? 0, '-46.02')
    expect(cautions.map(({ code }) => code)).toContain('ground-noise')
    expect(codes({ ...two, groundNoise: { sharedOhm: 0.0001, signalV: 4, rippleA: 10 } })).not.toContain(
      'ground-noise care'
    )
  })

  it('warns of a hot conductor, unknown metal, a small margin and a helping battery', () => {
    const hot = { ...two, trunk: { cable: { ...two.trunk?.cable, designation: '6 AWG' } as never } }
    expect(codes(hot)).toContain('conductor-hot care')
    const unknown = { ...two, trunk: { cable: { ...two.trunk?.cable, conductor: 'unknown' } as never } }
    expect(codes(unknown)).toContain('composition-unknown care')
    expect(codes(one(12.6, P1000, 0.02))).toContain('collapse-margin care')
    expect(codes({ ...two, source: { voltageV: 14.2, currentLimitA: 90 } })).toContain('battery-assists care')
  })
})

describe('POST /v1/supply/feeder', () => {
  it('takes power over efficiency with idle draw stated apart', async () => {
    const { body } = await post('/v1/supply/feeder?digits=full', {
      systemVoltageV: 12,
      source: { voltageV: 12.8, resistanceOhm: 0 },
      trunk: { resistanceOhm: 0.014 },
      amplifiers: [{ powerW: 750, efficiency: 0.78, extraPowerW: 25, regulation: 'regulated' }]
    })
    const P = 750 / 0.78 + 25
    expect(body.result.amplifiers[0].voltageV).toBeCloseTo((12.8 + Math.sqrt(12.8 ** 2 - 4 * 0.014 * P)) / 2, 10)
  })

  it('refuses two statements of one load', () => {
    const refused = () => computeFeeder({ ...two, amplifiers: [{ inputPowerW: 100, currentA: 10 }] })
    expect(refused).toThrow(DesignError)
  })

  it('answers or refuses at the bounds of its contract, never anything else', async () => {
    for (const voltageV of [1, 100]) {
      for (const load of [
        { inputPowerW: 0 },
        { inputPowerW: 200_000 },
        { currentA: 10_000 },
        { currentA: 0 },
        { powerW: 1e-9, class: 'A' }
      ]) {
        for (const resistanceOhm of [0, 1e-9, 100]) {
          for (const limit of [{}, { currentLimitA: 0.001, baseLoadA: 1000 }]) {
            const { status } = await post('/v1/supply/feeder', {
              systemVoltageV: 12,
              source: { voltageV, ...limit },
              trunk: { resistanceOhm },
              amplifiers: [load, load],
              groundNoise: { sharedOhm: 1e-6, signalV: 20 }
            })
            expect(status, JSON.stringify({ voltageV, load, resistanceOhm, limit })).toBe(200)
          }
        }
      }
    }
  })
})

describe('a fuse that nobody described', () => {
  /** 1000 W of class D, 0.85: 98.0 A at 12 V, so 100 A whatever passage is played. */
  const at = (level: FeederRequest['level']): FeederRequest => ({
    systemVoltageV: 12,
    source: { voltageV: 13.8 },
    trunk: { cable: { designation: '8 AWG', positiveLengthM: 4, insulationC: 105, ambientC: 50 } },
    amplifiers: [
      {
        powerW: 1000,
        class: 'D',
        efficiency: 0.85,
        regulation: 'regulated',
        branch: { cable: { designation: '10 AWG', positiveLengthM: 1, insulationC: 105, ambientC: 50 } }
      }
    ],
    ...(level === undefined ? {} : { level })
  })

  it('is rated by the full sine at every level: 100 A, and neither cable is guarded', () => {
    for (const level of ['full-sine', 'heavy', 'average'] as const) {
      const { cables } = computeFeeder(at(level)).result.protection
      expect(
        cables.map(({ fuseRatingA, guarded }) => [fuseRatingA, guarded]),
        level
      ).toEqual([
        [100, false],
        [100, false]
      ])
      expect(codes(at(level)).filter(text => text.endsWith('stop'))).toContain('cable-unguarded stop')
    }
  })

  it('follows an unregulated amplifier too: 600 W at 14.4 V, efficiency 0.8, is 0.2765 Ω, 51.4 A at the 14.2 V of its source, at every level', () => {
    const loose = (level: 'full-sine' | 'average') =>
      computeFeeder({
        ...at(level),
        source: { voltageV: 14.2 },
        amplifiers: [{ powerW: 600, class: 'AB', efficiency: 0.8, regulation: 'unregulated', ratedVoltageV: 14.4 }]
      }).result.protection.mainRatingA
    expect([loose('full-sine'), loose('average')]).toEqual([60, 60])
  })
})

describe('a branch and its amplifier', () => {
  const branch = (more: object, cable: object = {}): FeederRequest => ({
    systemVoltageV: 12,
    source: { voltageV: 13.8 },
    trunk: { cable: { designation: '1/0 AWG', positiveLengthM: 4, insulationC: 105, ambientC: 70 } },
    amplifiers: [
      {
        powerW: 600,
        class: 'D',
        efficiency: 0.85,
        regulation: 'regulated',
        ...more,
        branch: { cable: { designation: '2 AWG', positiveLengthM: 1, insulationC: 105, ...cable } }
      },
      { powerW: 400, class: 'D', efficiency: 0.85, regulation: 'regulated' }
    ]
  })
  const said = (request: FeederRequest, code: string) =>
    computeFeeder(request).cautions.filter(caution => caution.code === code)

  it('is judged by its own terminal: 33.6 mm² into 21.5, the trunk of 53.5 mm² that ends in a block is not', () => {
    const [caution, ...more] = said(branch({ terminalAreaM2: 21.5e-6 }), 'terminal-too-small')
    expect(caution).toMatchObject({ level: 'care', at: 'amplifiers[0].terminalAreaM2' })
    expect(caution?.message).toContain('33.6 mm²')
    expect(more).toEqual([])
    expect(said(branch({ terminalAreaM2: 34e-6 }), 'terminal-too-small')).toEqual([])
  })

  it('takes its maker’s fuse where that carries it: 58.8 A, 60 A by the list, 75 A of the maker above', () => {
    const rating = (makerFuseA: number) =>
      computeFeeder(branch({ makerFuseA })).result.protection.cables.find(({ stretch }) => stretch === '0')?.fuseRatingA
    expect([rating(60), rating(75), rating(40)]).toEqual([60, 60, 60])
    expect(said(branch({ makerFuseA: 40 }), 'maker-fuse-too-small')[0]).toMatchObject({
      at: 'amplifiers[0].makerFuseA'
    })
    expect(said(branch({ makerFuseA: 75 }), 'maker-fuse-too-small')).toEqual([])
  })

  it('has surroundings of its own: 2 AWG at 210 A carries 143 A at 70 °C and 180 A in a boot of 50 °C', () => {
    const carries = (cable: object) =>
      computeFeeder(branch({}, cable)).result.protection.cables.find(({ stretch }) => stretch === '0')?.ampacityA
    expectPrinted(carries({ ambientC: 70 }) ?? 0, '143')
    expectPrinted(carries({ spaces: ['boot'] }) ?? 0, '180')
  })
})

describe('a stop on an assumed body', () => {
  const long = (resistanceOhm?: number): FeederRequest => ({
    systemVoltageV: 12,
    source: { voltageV: 12.4 },
    trunk: {
      cable: {
        designation: '1/0 AWG',
        conductor: 'copper',
        positiveLengthM: 4.8,
        insulationC: 105,
        ambientC: 50,
        return: { kind: 'chassis', ...(resistanceOhm === undefined ? {} : { resistanceOhm }) }
      }
    },
    amplifiers: [{ powerW: 2400, class: 'D', efficiency: 0.85, regulation: 'regulated', dropOutV: 11.4 }]
  })
  const levels = (request: FeederRequest) =>
    computeFeeder(request)
      .cautions.filter(({ code }) => code === 'total-drop' || code === 'below-drop-out')
      .map(({ code, level }) => `${code} ${level}`)

  it('is care that names measure and return cable, with the voltage that dense bass leaves; a measured body stops', () => {
    expect(levels(long())).toEqual(['below-drop-out care', 'total-drop care'])
    const [low] = computeFeeder(long()).cautions.filter(({ code }) => code === 'below-drop-out')
    expect(low?.message).toContain('Dense bass leaves')
    expect(low?.message).toContain('run a return cable')
    expect(levels(long(0.002))).toEqual(['below-drop-out stop', 'total-drop stop'])
  })
})
