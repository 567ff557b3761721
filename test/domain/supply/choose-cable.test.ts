import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CableChoiceRequest } from '../../../src/contract/supply/supply-cables.ts'
import { assumptions } from '../../../src/domain/assume.ts'
import { leastAreaForDrop } from '../../../src/domain/circuit/choice/cable-candidate.ts'
import { cableTask } from '../../../src/domain/circuit/choice/cable-request.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { groundNoise } from '../../../src/domain/circuit/choice/ground.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { supplyCables } from '../../../src/http/operations/supply/supply-cables.ts'
import { jointLoss } from '../../support/electrical-forms.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(supplyCables)

/** Class D at 0.85, 12 V, 6 m and a 0.5 m ground lead, 3 %, copper, 105 °C insulation in 50 °C. */
const wire = (powerW: number) => ({
  loadPowerW: powerW / 0.85,
  systemVoltageV: 12,
  positiveLengthM: 6,
  return: { kind: 'chassis', leadLengthM: 0.5 },
  conductor: 'copper',
  gaugeSystem: 'awg',
  insulationC: 105,
  ambientC: 50
})
const base = wire(1000) as CableChoiceRequest
const codes = (request: CableChoiceRequest) =>
  chooseCable(request).cautions.map(({ code, level }) => `${code} ${level}`)
const refusal = (request: CableChoiceRequest): string => {
  try {
    chooseCable(request)
  } catch (error) {
    if (error instanceof DesignError) return `${error.code} ${error.faults[0]?.field}`
    throw error
  }
  return 'accepted'
}

describe('POST /v1/supply/cables', () => {
  // electrical handbook table of this project's reference: RMS power, current, fuse, AWG, cable drop
  for (const [powerW, currentA, fuseA, awg, dropV] of [
    [300, '29.4', 30, '6 AWG', '0.253'],
    [640, '62.7', 70, '4 AWG', '0.339'],
    [750, '73.5', 80, '2 AWG', '0.250'],
    [1000, '98.0', 100, '2 AWG', '0.333'],
    [1500, '147.1', 150, '1/0 AWG', '0.314'],
    [2000, '196.1', 200, '2/0 AWG', '0.332'],
    [3000, '294.1', 300, '4/0 AWG', '0.314']
  ] as const) {
    it(`runs ${powerW} W over 6 m of ${awg} behind ${fuseA} A, dropping ${dropV} V`, async () => {
      const { status, body } = await post('/v1/supply/cables?digits=full', wire(powerW))
      expect(status).toBe(200)
      expectPrinted(body.result.load.currentA, currentA)
      expect(body.result.fuse.ratingA).toBe(fuseA)
      expect(body.result.cable.designation).toBe(awg)
      expectPrinted(body.result.cable.dropV, dropV)
      expect(body.result.cable.governedBy).toBe('drop')
    })
  }

  it('lets ampacity govern with 60 °C insulation: 1/0 AWG, 112.6 A, where 2 AWG has 80.8 A', async () => {
    const { body } = await post('/v1/supply/cables', { ...wire(1000), insulationC: 60 })
    expect(body.result.cable).toMatchObject({ designation: '1/0 AWG', governedBy: 'ampacity' })
    expectPrinted(body.result.cable.ampacityA, '112.6')
    const two = body.result.candidates.find(({ designation }: { designation: string }) => designation === '2 AWG')
    expectPrinted(two.ampacityA, '80.8')
    expect(two.fails).toEqual(['ampacity', 'fuse'])
  })

  it('needs 2 AWG in 10 % clad, 25 mm² in metric, 8 AWG at 48 V with a full return', async () => {
    const clad = await post('/v1/supply/cables', { ...wire(520), conductor: 'copper-clad-10' })
    expect(clad.body.result.cable.designation).toBe('2 AWG')
    const metric = await post('/v1/supply/cables', { ...wire(520), gaugeSystem: 'mm2' })
    expect(metric.body.result.cable.designation).toBe('25 mm2')
    const sixteen = metric.body.result.candidates.find(
      ({ designation }: { designation: string }) => designation === '16 mm2'
    )
    expectPrinted(sixteen.dropV, '0.401')
    const high = await post('/v1/supply/cables?digits=full', {
      ...wire(2000),
      systemVoltageV: 48,
      return: { kind: 'cable', lengthM: 6 }
    })
    expect(high.body.result.cable.designation).toBe('8 AWG')
    expect(high.body.result.fuse).toMatchObject({ ratingA: 50, voltageV: 58 })
    expectPrinted(high.body.result.cable.dropV, '1.2366')
  })

  it('upsizes the cable when no rating fits: 62 A, 8 AWG carries 68.5 A, so 6 AWG and 70 A, governed by the fuse', async () => {
    const { loadPowerW: _, ...rest } = wire(520)
    const { body } = await post('/v1/supply/cables', { ...rest, currentA: 62, positiveLengthM: 1 })
    expect(body.result.cable).toMatchObject({ designation: '6 AWG', governedBy: 'fuse' })
    expect(body.result.fuse.ratingA).toBe(70)
  })

  it('falls into no SAE trap: 65 A drop 0.3513 V on 4 AWG and fail on SAE 4 with 0.3925 V', async () => {
    const { loadPowerW: _, ...rest } = wire(520)
    const of = async (gaugeSystem: string) => {
      const { body } = await post('/v1/supply/cables?digits=full', { ...rest, currentA: 65, gaugeSystem, sizes: ['4'] })
      return body.result.candidates[0]
    }
    const awg = await of('awg')
    const sae = await of('sae')
    expectPrinted(awg.dropV, '0.3513')
    expect(awg.fails).toEqual([])
    expectPrinted(sae.dropV, '0.3925')
    expect(sae.fails).toEqual(['drop'])
  })

  it('reproduces the trade rule "50 to 65 A over 20 ft take 4 AWG" on the positive run alone (common practice, no source)', async () => {
    for (const currentA of [50, 65]) {
      const { body } = await post('/v1/supply/cables', {
        currentA,
        systemVoltageV: 12,
        positiveLengthM: 6.1,
        return: { kind: 'chassis', leadLengthM: 0 },
        conductor: 'copper',
        gaugeSystem: 'awg',
        strandingFactor: 1,
        checks: ['drop']
      })
      expect(body.result.cable.designation).toBe('4 AWG')
    }
  })

  it('counts the way back: 50 A there and back through 4 AWG lose 0.507 V, 4.2 %', async () => {
    const { body } = await post('/v1/supply/cables?digits=full', {
      currentA: 50,
      systemVoltageV: 12,
      positiveLengthM: 6.1,
      return: { kind: 'cable', lengthM: 6.1 },
      conductor: 'copper',
      gaugeSystem: 'awg',
      sizes: ['4 AWG']
    })
    expectPrinted(body.result.candidates[0].dropV, '0.5072')
    expect(body.result.candidates[0].fails).toContain('drop')
  })

  it('says that nothing fits, which limits every size fails, and what parallel runs would do', async () => {
    const { status, body } = await post('/v1/supply/cables', { ...wire(3000), insulationC: 80, ambientC: 70 })
    expect(status).toBe(200)
    expect(body.result.cable).toBeUndefined()
    expect(body.result.amplifierVoltageV).toBeUndefined()
    for (const { fails } of body.result.candidates) expect(fails.length).toBeGreaterThan(0)
    expect(body.result.candidates.at(-1).fails).toEqual(['ampacity', 'fuse'])
    const { runs, fuseRatingA, ampacityA, currentA } = body.result.parallel
    expect(runs).toBeGreaterThan(1)
    expect(runs * currentA).toBeCloseTo(body.result.load.currentA, 3)
    expect(fuseRatingA).toBeLessThanOrEqual(ampacityA)
    expect(fuseRatingA).toBeGreaterThanOrEqual(currentA)
    // cables side by side are a way that passes every limit: no stop
    const none = body.cautions.find(({ code }: { code: string }) => code === 'no-cable-fits')
    expect(none).toMatchObject({ level: 'care' })
    expect(none.message).toContain(`${runs} runs`)
    expect(none.figures.currentA).toBeCloseTo(294.118, 2)
  })

  it('asks more of a short circuit question than the chosen size: k 115, 900 A for 1 s, 7.826 mm²', async () => {
    const { body } = await post('/v1/supply/cables?digits=full', {
      ...wire(300),
      shortCircuit: { currentA: 900, durationS: 1, startC: 70, endC: 160 }
    })
    expect(Math.abs(body.result.shortCircuit.k - 115)).toBeLessThan(0.7)
    expect(Math.abs(body.result.shortCircuit.minimumAreaMm2 - 7.826)).toBeLessThan(0.05)
    for (const { withstands, survivesS, survivesA } of body.result.shortCircuit.sizes) {
      expect(withstands).toBe(survivesS >= 1)
      expect(withstands).toBe(survivesA >= 900)
    }
  })

  it('puts the safety notes where they belong and the gravest first', async () => {
    const { body } = await post('/v1/supply/cables', { ...wire(3000), positiveLengthM: 9 })
    const levels = body.cautions.map(({ level }: { level: string }) => level)
    const rank = { stop: 0, care: 1, note: 2 } as Record<string, number>
    expect(levels.map((level: string) => rank[level])).toEqual(levels.map((level: string) => rank[level]).toSorted())
    const named = body.cautions.map(({ code }: { code: string }) => code)
    expect(named).toEqual(
      expect.arrayContaining(['battery-disconnect', 'fuse-last', 'airbag-looms', 'bulkhead-grommet', 'licensed-work'])
    )
    const boot = await post('/v1/supply/cables', { ...wire(300), spaces: ['boot'] })
    expect(boot.body.cautions.map(({ code }: { code: string }) => code)).not.toContain('bulkhead-grommet')
  })
})

describe('cable choice', () => {
  it('has for its copper the diameter of the gauge: 0.127·92^((36 − n)/39) mm, 4 AWG 5.189 mm (ASTM B258)', () => {
    const four = chooseCable(base).result.candidates.find(({ designation }) => designation === '4 AWG')
    expectPrinted(1000 * (four?.diameterM ?? 0), '5.189')
  })

  it('needs 16.19 mm² for 50.98 A, 6.5 m and 0.36 V; 15.87 without the stranding allowance', () => {
    const of = (strandingFactor: number) =>
      leastAreaForDrop(cableTask({ ...(wire(520) as CableChoiceRequest), strandingFactor }, assumptions()))
    expectPrinted((of(1.02) ?? 0) * 1e6, '16.19')
    expectPrinted((of(1) ?? 0) * 1e6, '15.87')
  })

  it('agrees with the circular-mil formula of marine wiring: 10 A, 21 ft, 0.36 V → 6271 CM at K 10.75 (29 °C)', () => {
    const task = cableTask(
      {
        currentA: 10,
        systemVoltageV: 12,
        positiveLengthM: 21 * 0.3048,
        return: { kind: 'chassis', leadLengthM: 0 },
        conductor: 'copper',
        strandingFactor: 1,
        dropLimitV: 0.36,
        conductorTemperatureC: 29
      },
      assumptions()
    )
    const mils = (leastAreaForDrop(task) ?? 0) / ((Math.PI / 4) * 2.54e-5 ** 2)
    expect(Math.abs(mils / 6271 - 1)).toBeLessThan(0.002)
  })

  it('meets its least area from both sides', () => {
    const area =
      (leastAreaForDrop(cableTask({ ...base, gaugeSystem: 'mm2', metricResistance: 'nominal-area' }, assumptions())) ??
        0) * 1e6
    const request = { ...base, gaugeSystem: 'mm2', metricResistance: 'nominal-area', checks: ['drop'] } as const
    const fits = (mm2: number) => chooseCable({ ...request, sizes: [String(mm2)] }).result.cable !== undefined
    expect(fits(Number((area * 1.0001).toFixed(6)))).toBe(true)
    expect(fits(Number((area * 0.9999).toFixed(6)))).toBe(false)
  })

  it('covers 41.9 to 66.6 A with 4 AWG at 6 + 0.5 m and 3 %', () => {
    const smallest = (currentA: number) => {
      const { loadPowerW: _, ...rest } = base
      return chooseCable({ ...rest, currentA, checks: ['drop'] }).result.cable?.designation
    }
    expect([smallest(41.8), smallest(42), smallest(66.5), smallest(66.7)]).toEqual(['6 AWG', '4 AWG', '4 AWG', '2 AWG'])
  })

  it('solves a constant power exactly: 900 W at 13.8 V over 4.4 m and back, 35 °C, 0.5 V', () => {
    const request = {
      loadPowerW: 900,
      loadModel: 'constant-power',
      systemVoltageV: 12,
      sourceVoltageV: 13.8,
      dropLimitV: 0.5,
      positiveLengthM: 4.4,
      return: { kind: 'cable', lengthM: 4.4 },
      conductorTemperatureC: 35,
      resistivityOhmM: 1.724e-8,
      temperatureCoefficientPerK: 0.00393,
      strandingFactor: 1,
      checks: ['drop']
    } as const
    const awg = chooseCable({ ...request, gaugeSystem: 'awg', sizes: ['4', '2', '1'] }).result
    // worked by hand from the quadratic: V = (13.8 + √(13.8² − 4·900·R))/2
    const R = (1.724e-8 * (1 + 0.00393 * 15) * 8.8) / ((Math.PI / 4) * (0.127e-3 * 92 ** (34 / 39)) ** 2)
    expect(awg.cable?.designation).toBe('2 AWG')
    expect(awg.cable?.dropV).toBeCloseTo(13.8 - (13.8 + Math.sqrt(13.8 ** 2 - 3600 * R)) / 2, 10)
    const { candidates } = chooseCable({
      ...request,
      loadPowerW: 20_000,
      dropLimitV: 6,
      gaugeSystem: 'awg',
      sizes: ['16']
    }).result
    expect(candidates[0]).toMatchObject({ fails: ['drop'] })
    expect(candidates[0]?.dropV).toBeUndefined()
  })

  it('says collapse, drop-out, total drop, low fault current and composite bodies, each with figures', () => {
    const long = {
      ...base,
      sizes: ['4/0'],
      checks: ['ampacity'],
      positiveLengthM: 50,
      return: { kind: 'cable', lengthM: 50 }
    } as const
    expect(codes({ ...long, loadPowerW: 3000 })).toContain('feed-collapse stop')
    expect(codes({ ...long, loadPowerW: 1000 })).toContain('below-drop-out stop')
    const measured = { kind: 'chassis', leadLengthM: 0.5, resistanceOhm: 0.002 } as const
    expect(codes({ ...base, loadPowerW: 3600, return: measured })).toContain('total-drop stop')
    expect(codes({ ...base, loadPowerW: 3600 })).toContain('total-drop care')
    expect(codes({ ...base, loadPowerW: 3530 })).toContain('fault-current-low care')
    expect(codes({ ...base, return: { kind: 'chassis', body: 'composite' } })).toContain('chassis-no-return stop')
    expect(codes(base)).toContain('chassis-unmeasured note')
    expect(codes({ ...base, return: { kind: 'chassis', resistanceOhm: 0.001 } })).not.toContain(
      'chassis-unmeasured note'
    )
    expect(codes({ ...base, conductor: 'unknown' })).toContain('composition-unknown care')
    const { insulationC: _, ...bare } = base
    expect(
      chooseCable({ ...bare, ambientC: 70 }).cautions.find(({ code }) => code === 'insulation-unknown')?.message
    ).toContain('2 AWG')
    const strips = { ...base, fuseTypes: ['SF30', 'SF51'], source: { resistanceOhm: 0.002 } } as const
    expect(codes(strips)).toContain('breaking-capacity stop')
    expect(codes({ ...base, makerFuseA: 60 })).toContain('maker-fuse-too-small care')
  })

  it('takes a size whose far end could not open the fuse as failing the short circuit', () => {
    const weak = chooseCable({ ...base, loadPowerW: 3530, source: { resistanceOhm: 0.03 } }).result
    // 12.6 V over 30 mΩ and the loop stays below twice 300 A, where a strip fuse promises nothing
    for (const { fails, faultA } of weak.candidates) {
      expect(faultA).toBeLessThan(600)
      expect(fails).toContain('short-circuit')
    }
    const strong = chooseCable({ ...base, loadPowerW: 3530 }).result
    expect(strong.candidates.at(-1)?.fails).toEqual([])
  })

  it('sizes fuse and ampacity for the lowest voltage a constant power may fall to', () => {
    const { load, fuse } = chooseCable({
      ...base,
      loadPowerW: 600,
      loadModel: 'constant-power',
      dropLimitV: 1.2
    }).result
    expectPrinted(load.currentA, '55.56')
    expect(fuse?.ratingA).toBe(60)
  })

  it('names the smallest size as such when nothing kept smaller ones out', () => {
    const { loadPowerW: _, ...rest } = base
    expect(chooseCable({ ...rest, currentA: 5, positiveLengthM: 0.5, fuseTypes: ['C'] }).result.cable).toMatchObject({
      designation: '16 AWG',
      governedBy: 'smallest-size'
    })
  })

  it('refuses what cannot be', () => {
    expect(refusal({ ...base, currentA: 50 })).toBe('conflicting-input currentA')
    expect(refusal({ ...base, dropLimitV: 0.3, dropLimitPercent: 3 })).toBe('conflicting-input dropLimitV')
    const { loadPowerW: _, ...rest } = base
    expect(refusal(rest)).toBe('missing-input loadPowerW')
    expect(refusal({ ...base, insulationC: 60, ambientC: 60 })).toBe('insulation-below-ambient insulationC')
    expect(refusal({ ...base, systemVoltageV: 48, fuseTypes: ['SF51'] })).toBe('fuse-voltage fuseTypes')
    expect(refusal({ ...base, sizes: ['7/0'] })).toBe('unknown-designation sizes[0]')
    expect(refusal({ ...base, fuseA: 80 })).toBe('conflicting-input fuseA')
    expect(refusal({ ...base, fuseA: 110 })).toBe('unknown-designation fuseA')
    expect(refusal({ ...base, loadModel: 'constant-power', dropLimitV: 6 })).toBe('out-of-range dropLimitV')
    expect(refusal({ ...base, shortCircuit: { currentA: 1, durationS: 1, startC: 160, endC: 160 } })).toBe(
      'conflicting-input shortCircuit.endC'
    )
  })

  it('keeps a fuse that is there, lays more for the next amplifier, and obeys a terminal', () => {
    expect(chooseCable({ ...base, fuseA: 150 }).result).toMatchObject({
      fuse: { ratingA: 150 },
      cable: { designation: '2 AWG' }
    })
    expect(chooseCable({ ...base, fuseA: 200 }).result.cable).toMatchObject({
      designation: '1/0 AWG',
      governedBy: 'fuse'
    })
    const next = chooseCable({ ...base, futureLoadPowerW: 500 / 0.85 }).result
    expect(next.upsized).toEqual({ designation: '1/0 AWG', fuseRatingA: 150 })
    expect(next.cable?.designation).toBe('2 AWG')
    expect(
      chooseCable({ ...base, terminalAreaM2: 25e-6 }).result.candidates.find(
        ({ designation }) => designation === '2 AWG'
      )?.fails
    ).toEqual(['terminal'])
  })

  it('judges ground by millivolts: 5 mΩ at 50 A is 0.25 V and 12.5 W; 10 A through 2 mΩ is −46.02 dB under 4 V', () => {
    expect(jointLoss(0.005, 50)).toEqual({ dropV: 0.25, heatW: 12.5 })
    expectPrinted(groundNoise(10, 0.002, 4).levelDb, '-46.02')
    const { ground } = chooseCable(base).result
    expect(ground.designation).toBe('2 AWG')
  })

  const requests = fc.record({
    currentA: fc.double({ min: 1, max: 400, noNaN: true }),
    systemVoltageV: fc.constantFrom(12, 24, 48),
    positiveLengthM: fc.double({ min: 0.2, max: 10, noNaN: true }),
    return: fc.constantFrom({ kind: 'cable', lengthM: 3 } as const, { kind: 'chassis' } as const),
    conductor: fc.constantFrom('copper' as const, 'copper-clad-15' as const, 'unknown' as const, 'aluminium' as const),
    gaugeSystem: fc.constantFrom('awg' as const, 'sae' as const, 'mm2' as const),
    insulationC: fc.constantFrom(80, 105, 125),
    ambientC: fc.double({ min: 0, max: 75, noNaN: true })
  })

  it('never allows a thinner cable for a longer run', () => {
    fc.assert(
      fc.property(requests, fc.double({ min: 0.01, max: 5, noNaN: true }), (request, further) => {
        const near = chooseCable(request).result.cable
        const far = chooseCable({ ...request, positiveLengthM: request.positiveLengthM + further }).result.cable
        expect(far?.areaM2 ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(near?.areaM2 ?? Number.POSITIVE_INFINITY)
      }),
      { seed: 3, numRuns: 250 }
    )
  })

  it('never gives a cable without a fuse, nor one its fuse does not protect, nor parallel runs unfused', () => {
    fc.assert(
      fc.property(requests, request => {
        const { cable, fuse, load, parallel } = chooseCable(request).result
        if (cable !== undefined) {
          expect(fuse?.ratingA).toBeLessThanOrEqual(cable.ampacityA ?? 0)
          expect(fuse?.ratingA).toBeGreaterThanOrEqual(load.currentA * (1 - 1e-9))
          expect(cable.dropV).toBeLessThanOrEqual(0.03 * request.systemVoltageV * (1 + 1e-9))
        }
        if (parallel !== undefined) expect(parallel.fuseRatingA).toBeLessThanOrEqual(parallel.ampacityA)
      }),
      { seed: 4, numRuns: 250 }
    )
  })
})
