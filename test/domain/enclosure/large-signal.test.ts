import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { jetResistance } from '../../../src/domain/enclosure/limits/jet-resistance.ts'
import type { ResponseRequest } from '../../../src/domain/enclosure/model/request.ts'
import { expectPrinted } from '../../support/printed.ts'

const driver = {
  fsHz: 31,
  qms: 5.2,
  qes: 0.47,
  vasM3: 0.055,
  sdM2: 0.0483,
  reOhm: 3.3,
  leH: 1.4e-3,
  xmaxM: 0.012,
  powerW: 400
}
const port = { areaM2: Math.PI * 0.05 ** 2, lengthM: 0.28 }
const vented: ResponseRequest = {
  driver,
  enclosure: { kind: 'vented', rear: { netVolumeM3: 0.058, leakQ: 7, port } },
  source: { voltageV: 36 },
  frequenciesHz: [12, 20, 27, 33, 45, 70, 120],
  limits: {}
}
const withLimits = (limits: ResponseRequest['limits'], change: Partial<ResponseRequest> = {}) =>
  computeResponse({ ...vented, ...change, limits: limits ?? {} })
const at = (request: ResponseRequest, frequencyHz: number, voltageV: number) => {
  const { limits: _, ...rest } = request
  return computeResponse({ ...rest, source: { voltageV }, frequenciesHz: [frequencyHz] }).result.curves
}

describe('the largest level', () => {
  // derived: 20 lg[ρω²·Sd·Xmax/(√2·2πr)/20 µPa] for ρ 1.2041, Sd 0.0483, 12 mm, worked by hand
  for (const [frequencyHz, printed] of [
    [20, '95.850'],
    [30, '102.893'],
    [40, '107.891']
  ] as const) {
    it(`of a closed box is ${printed} dB at ${frequencyHz} Hz when only the excursion limits`, () => {
      const { powerW: _, ...quiet } = driver
      const enclosure = { kind: 'closed', rear: { netVolumeM3: 0.03 } } as const
      const { result } = withLimits({}, { driver: quiet, enclosure, frequenciesHz: [frequencyHz] })
      expectPrinted(result.curves.maximumLevelDb?.[0] as number, printed)
      expect(result.curves.governingLimit).toEqual(['cone-excursion'])
    })
  }

  it('reaches exactly the governing limit when the system is driven there, and passes no other', () => {
    const limits = { amplifierVoltageV: 41, amplifierCurrentA: 9, ratedOhm: 4, airSpeedMPerS: 20 }
    const { result } = withLimits(limits, { frequenciesHz: [10, 14, 20, 26, 30, 36, 44, 55, 80, 120, 200] })
    const { frequencyHz, maximumVoltageV = [], governingLimit = [], maximumLevelDb = [] } = result.curves
    const seen = new Set<string>()
    for (const [k, frequency] of frequencyHz.entries()) {
      const there = at(vented, frequency, maximumVoltageV[k] as number)
      const ratios = {
        'cone-excursion': (there.coneExcursionM[0] as number) / 0.012,
        'coil-heat': ((there.currentA[0] as number) ** 2 * 3.3) / 400,
        'rated-voltage': (maximumVoltageV[k] as number) ** 2 / 4 / 400,
        'amplifier-voltage': (maximumVoltageV[k] as number) / 41,
        'amplifier-current': (there.currentA[0] as number) / 9,
        'port-air-speed': (there.rearPortAirSpeedMPerS?.[0] as number) / 20,
        'passive-radiator-excursion': 0
      }
      const governing = governingLimit[k] as keyof typeof ratios
      expect(ratios[governing]).toBeCloseTo(1, 9)
      expect(Math.max(...Object.values(ratios))).toBeLessThan(1 + 1e-9)
      expect(there.levelDb[0]).toBeCloseTo(maximumLevelDb[k] as number, 8)
      seen.add(governing)
    }
    expect(seen).toEqual(new Set(['cone-excursion', 'port-air-speed', 'rated-voltage', 'amplifier-current']))
  })

  it('holds a passive radiator to its travel', () => {
    const enclosure = {
      kind: 'passive-radiator',
      rear: { netVolumeM3: 0.05, passiveRadiators: { areaM2: 0.05, massKg: 0.4, complianceMPerN: 4e-4 } }
    } as const
    const change = { enclosure, frequenciesHz: [24, 28, 32] }
    const { result } = withLimits({ passiveRadiatorXmaxM: 0.008 }, change)
    const k = (result.curves.governingLimit ?? []).indexOf('passive-radiator-excursion')
    expect(k).toBeGreaterThanOrEqual(0)
    const voltageV = result.curves.maximumVoltageV?.[k] as number
    const there = at({ ...vented, enclosure }, change.frequenciesHz[k] as number, voltageV)
    expect(there.passiveRadiatorExcursionM?.[0]).toBeCloseTo(0.008, 12)
  })

  it('does not depend on the filters, but the drive of a programme does', () => {
    const filters = [{ kind: 'high-pass', family: 'butterworth', order: 4, cornerHz: 30 }] as const
    const [bare, behind] = [withLimits({}).result, withLimits({}, { filters }).result]
    expect(behind.curves.maximumLevelDb).toEqual(bare.curves.maximumLevelDb)
    expect(behind.limits?.programme.voltageV).toBeGreaterThan(1.3 * (bare.limits?.programme.voltageV as number))
  })

  it('reads the duty factor as power: a quarter of it doubles the thermal voltage', () => {
    const only = { thermalReading: 'coil-heat', airSpeedMPerS: 100 } as const
    const { xmaxM: _, ...strong } = driver
    const full = withLimits(only, { driver: strong, frequenciesHz: [60] }).result.curves.maximumVoltageV?.[0] as number
    const quarter = withLimits({ ...only, dutyFactor: 0.25 }, { driver: strong, frequenciesHz: [60] })
    expect(quarter.result.curves.maximumVoltageV?.[0]).toBeCloseTo(2 * full, 9)
  })

  it('lets a programme go exactly as far as its first limit', () => {
    const filters = [{ kind: 'high-pass', family: 'butterworth', order: 2, cornerHz: 25 }] as const
    const { programme } = withLimits({ airSpeedMPerS: 100 }, { filters }).result.limits as NonNullable<
      ReturnType<typeof withLimits>['result']['limits']
    >
    expect(programme.limit).toBe('cone-excursion')
    const there = at({ ...vented, filters }, programme.atHz, programme.voltageV)
    expect(there.coneExcursionM[0]).toBeCloseTo(0.012, 10)
  })

  for (const [name, limits, change, code, field] of [
    [
      'voltage and power of the amplifier',
      { amplifierVoltageV: 30, amplifierPowerW: 300 },
      {},
      'conflicting-input',
      'limits.amplifierVoltageV'
    ],
    ['a load without a power', { amplifierLoadOhm: 4 }, {}, 'missing-input', 'limits.amplifierPowerW'],
    [
      'a programme that ends before it starts',
      { programmeFromHz: 80, programmeToHz: 40 },
      {},
      'conflicting-input',
      'limits.programmeToHz'
    ],
    [
      'nothing to hold the system against',
      {},
      {
        driver: { fsHz: 31, qms: 5.2, qes: 0.47, vasM3: 0.055, sdM2: 0.0483, reOhm: 3.3 },
        enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } }
      },
      'missing-input',
      'driver.xmaxM'
    ]
  ] as const) {
    it(`refuses ${name}`, () => {
      const refusal = (() => {
        try {
          return withLimits(limits, change)
        } catch (error) {
          return error
        }
      })()
      expect(refusal).toMatchObject({ code, faults: [{ field }] })
    })
  }
})

describe('jets in the ports (jetSolver)', () => {
  const frequencyHz = 27
  const { result } = withLimits({ portLossFactor: 1.5 }, { frequenciesHz: [frequencyHz] })
  const lossDb = result.curves.portCompressionDb?.[0] as number

  it('cost what a port of that friction costs: the fixed point, found again by halving over the loss Q of a linear port', () => {
    const tuningHz = result.scalars.tuningHz as number
    const length = result.scalars.portEffectiveLengthM as number
    const mass = (1.2041 * length) / port.areaM2
    const linear = (lossQ: number) => {
      const rear = { netVolumeM3: 0.058, leakQ: 7, port: { ...port, lossQ } }
      return at({ ...vented, enclosure: { kind: 'vented', rear } }, frequencyHz, 36)
    }
    let [low, high] = [0.1, 1e5]
    for (let round = 0; round < 80; round++) {
      const lossQ = Math.sqrt(low * high)
      const speed = linear(lossQ).rearPortAirSpeedMPerS?.[0] as number
      const resistance = (2 * Math.PI * tuningHz * mass) / lossQ
      if (resistance > jetResistance(1.2041, port.areaM2, 1.5, speed)) low = lossQ
      else high = lossQ
    }
    const plain = at(vented, frequencyHz, 36).levelDb[0] as number
    expect(lossDb).toBeCloseTo((linear(low).levelDb[0] as number) - plain, 5)
    expect(lossDb).toBeLessThan(-1)
  })

  it('of two ports settle together: each at the friction of its own speed', () => {
    const shape = { areaM2: 0.006, lengthM: 0.2 }
    const enclosure = (rearQ?: number, frontQ?: number) =>
      ({
        kind: 'band-pass-6-series',
        rear: { netVolumeM3: 0.05, port: { ...shape, ...(rearQ && { lossQ: rearQ }) } },
        front: { netVolumeM3: 0.03, port: { ...shape, count: 2, ...(frontQ && { lossQ: frontQ }) } }
      }) as const
    const two: ResponseRequest = { ...vented, enclosure: enclosure() }
    const { result: jets } = withLimits({ portLossFactor: 1.2 }, { enclosure: enclosure(), frequenciesHz: [34] })
    const { tuningHz = 0, frontTuningHz = 0, portEffectiveLengthM = 0 } = jets.scalars
    const mass = (1.2041 * portEffectiveLengthM) / shape.areaM2
    let [rear, front] = [1e9, 1e9]
    for (let round = 0; round < 300; round++) {
      const there = at({ ...two, enclosure: enclosure(rear, front) }, 34, 36)
      const next = (speed: number, hz: number) =>
        (2 * Math.PI * hz * mass) / jetResistance(1.2041, shape.areaM2, 1.2, speed)
      rear = 2 / (1 / rear + 1 / next(there.rearPortAirSpeedMPerS?.[0] as number, tuningHz))
      front = 2 / (1 / front + 1 / next(there.frontPortAirSpeedMPerS?.[0] as number, frontTuningHz))
    }
    const lossy = at({ ...two, enclosure: enclosure(rear, front) }, 34, 36).levelDb[0] as number
    const plain = at(two, 34, 36).levelDb[0] as number
    expect(jets.curves.portCompressionDb?.[0]).toBeCloseTo(lossy - plain, 6)
    expect(lossy - plain).toBeLessThan(-0.5)
  })

  it('are left out, and that is said, where many ports meet many frequencies', () => {
    const one = { areaM2: 0.004, lengthM: 0.2, from: 'box', to: 'outside' } as const
    const enclosure = {
      kind: 'custom',
      chambers: [{ name: 'box', netVolumeM3: 0.06 }],
      ports: [1, 2, 3, 4].map(k => ({ ...one, name: `port ${k}` })),
      driverGroups: [{ name: 'cone', front: 'outside', rear: 'box' }]
    } as const
    const codes = (points: number) => {
      const change = { enclosure, frequenciesHz: { fromHz: 15, toHz: 150, points } }
      const { result: found, cautions } = withLimits({}, change)
      return [found.curves.portCompressionDb !== undefined, cautions.some(({ code }) => code === 'port-jets-left-out')]
    }
    expect(codes(250)).toEqual([true, false])
    expect(codes(251)).toEqual([false, true])
  })

  it('cost nothing at K = 0, little at little drive, and more the more there is', () => {
    expect(
      withLimits({ portLossFactor: 0 }).result.curves.portCompressionDb?.every(loss => Math.abs(loss) < 1e-9)
    ).toBe(true)
    const losses = [0.3, 3, 10, 30].map(voltageV => {
      const change = { source: { voltageV }, frequenciesHz: [frequencyHz] }
      return withLimits({}, change).result.curves.portCompressionDb?.[0] as number
    })
    expect(losses[0]).toBeGreaterThan(-0.05)
    expect([...losses].sort((a, b) => b - a)).toEqual(losses)
  })
})

describe('a warm coil', () => {
  const heating = { coilKPerW: 0.5, coilTimeConstantS: 10, magnetKPerW: 0.2, magnetTimeConstantS: 1200 }
  const { result } = withLimits({ heating, portLossFactor: 0 })
  const warm = result.limits?.heating as NonNullable<NonNullable<typeof result.limits>['heating']>

  it('costs what the same motor with that resistance costs', () => {
    const omega = 2 * Math.PI * driver.fsHz
    const cmsMPerN = driver.vasM3 / (1.2041 * 343.21 ** 2 * driver.sdM2 ** 2)
    const mmsKg = 1 / (omega ** 2 * cmsMPerN)
    const { sdM2, leH } = driver
    const motor = {
      sdM2,
      leH,
      mmsKg,
      cmsMPerN,
      rmsKgPerS: (omega * mmsKg) / driver.qms,
      blTm: Math.sqrt((omega * mmsKg * driver.reOhm) / driver.qes)
    }
    const { limits: _, ...plain } = vented
    const cold = computeResponse({ ...plain, driver: { ...motor, reOhm: driver.reOhm } }).result.curves.levelDb
    const hot = computeResponse({ ...plain, driver: { ...motor, reOhm: warm.steadyReOhm } }).result.curves.levelDb
    for (const [k, loss] of (result.curves.coilCompressionDb ?? []).entries()) {
      expect(loss).toBeCloseTo((hot[k] as number) - (cold[k] as number), 6)
    }
  })

  it('takes the heat of the current that flows through it, averaged over the logarithm of the frequency', () => {
    const limits = { heating, portLossFactor: 0, programmeFromHz: 20, programmeToHz: 90, dutyFactor: 0.4 }
    const found = withLimits(limits).result.limits?.heating as typeof warm
    const { fsHz, vasM3, sdM2, leH, qms, reOhm } = driver
    const qes = (driver.qes * found.steadyReOhm) / reOhm
    const hot = { fsHz, vasM3, sdM2, leH, qms, qes, reOhm: found.steadyReOhm }
    const { limits: _, ...plain } = vented
    const frequenciesHz = { fromHz: 20, toHz: 90, points: 192 }
    const { currentA } = computeResponse({ ...plain, driver: hot, frequenciesHz }).result.curves
    const square = currentA.reduce((sum, current) => sum + current ** 2, 0) / currentA.length
    expect(found.coilHeatW).toBeCloseTo(0.4 * square * found.steadyReOhm, 6)
  })

  it('is in balance: the rise is the heat times the way of the heat', () => {
    expect(warm.steadyCoilC).toBeCloseTo(25 + 0.7 * warm.coilHeatW, 6)
    expect(warm.steadyReOhm).toBeCloseTo(3.3 * (1 + 0.00393 * (warm.steadyCoilC - 20)), 9)
    expect(warm.coilHeatW).toBeGreaterThan(20)
  })

  it('warms up to its steady state and loses level on the way', () => {
    const last = warm.warming?.at(-1)
    expect(last?.timeS).toBe(3600)
    expect(Math.abs((last?.coilC as number) - warm.steadyCoilC)).toBeLessThan(0.06 * (warm.steadyCoilC - 25))
    expect(warm.compressionDb).toBeCloseTo(20 * Math.log10(warm.steadyReOhm / 3.3), 12)
  })

  it('is assumed to rise by 180 K at the rated power where no way of the heat is given', () => {
    const { assumed, result: quiet } = withLimits({})
    expect(assumed.find(({ field }) => field === 'limits.heating.coilKPerW')?.value).toBeCloseTo(180 / 400, 12)
    expect(quiet.limits?.heating?.warming).toBeUndefined()
  })

  it('is warned of when it would not survive', () => {
    const { cautions } = withLimits({ heating: { coilKPerW: 5 } })
    expect(cautions.find(({ code }) => code === 'coil-too-hot')?.level).toBe('stop')
  })
})

describe('the high-pass that protects', () => {
  const { limits, scalars } = withLimits({}).result
  const protection = limits?.protection as NonNullable<NonNullable<typeof limits>['protection']>
  const worst = (order: number, cornerHz: number) => {
    const filters = [{ kind: 'high-pass', family: 'butterworth', order, cornerHz }] as const
    const frequenciesHz = { fromHz: 3, toHz: scalars.tuningHz as number, points: 400 }
    const { limits: _, ...plain } = vented
    return Math.max(...computeResponse({ ...plain, filters, frequenciesHz }).result.curves.coneExcursionM)
  }

  it('is needed by a vented box at full drive, for its tuning', () => {
    expect(protection.needed).toBe(true)
    expect(protection.belowHz).toBe(scalars.tuningHz)
    expect(protection.highPass.map(({ order }) => order)).toEqual([2, 3, 4])
  })

  for (const { order, cornerHz } of protection.highPass) {
    it(`of order ${order} just holds the cone, and 2 % lower does not`, () => {
      expect(worst(order, cornerHz) / 0.012).toBeCloseTo(1, 3)
      expect(worst(order, cornerHz * 0.98)).toBeGreaterThan(0.012)
    })
  }

  it('lies at 0.7 to 1 times the tuning, as common practice has it (no source)', () => {
    for (const { cornerHz } of protection.highPass) {
      expect(cornerHz / protection.belowHz).toBeGreaterThan(0.7)
      expect(cornerHz / protection.belowHz).toBeLessThan(1)
    }
  })

  it('is not needed once it is there', () => {
    const [second] = protection.highPass
    const cornerHz = (second?.cornerHz as number) * 1.001
    const filters = [{ kind: 'high-pass', family: 'butterworth', order: 2, cornerHz }] as const
    expect(withLimits({}, { filters }).result.limits?.protection).toMatchObject({ needed: false, highPass: [] })
  })
})

describe('cautions of the drive', () => {
  const codes = (request: ResponseRequest) =>
    computeResponse(request).cautions.map(({ code, level }) => `${code}: ${level}`)

  it('names the unloaded cone, the coil and the port of a vented box at full drive', () => {
    const said = codes(vented)
    expect(said).toContain('unprotected-below-tuning: stop')
    expect(said).toContain('port-air-speed: stop')
    expect(said).toContain('level-lost-at-drive: note')
  })

  it('names the amplifier that cannot give it', () =>
    expect(
      codes({ ...vented, limits: { amplifierVoltageV: 30, amplifierCurrentA: 5 } }).filter(
        code => code === 'amplifier-out-of-reach: care'
      )
    ).toHaveLength(2))

  it('is silent at a whisper', () => expect(codes({ ...vented, source: { voltageV: 0.5 } })).toEqual([]))

  it('grades the air speed: note, care, stop', () => {
    const speed = at(vented, 33, 1).rearPortAirSpeedMPerS?.[0] as number
    for (const [target, level] of [
      [20, 'note'],
      [28, 'care'],
      [40, 'stop']
    ] as const) {
      const { limits: _, ...plain } = vented
      const request = { ...plain, source: { voltageV: target / speed }, frequenciesHz: [33] }
      expect(codes(request)).toContain(`port-air-speed: ${level}`)
    }
  })

  it('warns ears at the seat', () =>
    expect(codes({ ...vented, cabin: { volumeM3: 3 } })).toContain('hearing-exposure: care'))

  it('warns ears without a cabin, and names the highest point of the curve it gives', () => {
    for (const cabin of [undefined, { volumeM3: 3 }]) {
      const { result, cautions } = computeResponse({ ...vented, ...(cabin === undefined ? {} : { cabin }) })
      const { levelDb, seatLevelDb = levelDb } = result.curves
      const said = cautions.find(({ code }) => code === 'hearing-exposure')
      expect(said?.message).toContain(`Up to ${Math.max(...seatLevelDb).toFixed(0)} dB`)
    }
  })
})
