import { describe, expect, it } from 'vitest'
import type { EnclosureCandidate, SizingRequest } from '../../../src/contract/enclosures/enclosure-sizing.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { sizeEnclosure } from '../../../src/domain/enclosure/sizing/size-enclosure.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

/** Without inductance, so that the closed forms and the network describe the same circuit. */
const bare = { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4 }
const size = (request: Partial<SizingRequest> = {}) => sizeEnclosure({ driver: bare, ...request })
const find = (candidates: readonly EnclosureCandidate[], alignment: string, kind = 'vented') =>
  candidates.find(candidate => candidate.alignment === alignment && candidate.kind === kind)

describe('sizing an enclosure', () => {
  it('offers closed boxes of the usual Qtc and the flat vented box, each with its default echoed', () => {
    const { result, assumed } = size()
    const closed = result.candidates.filter(({ kind }) => kind === 'closed')
    expect(closed.map(({ qtc }) => qtc?.toFixed(3))).toEqual(['0.577', '0.707', '0.900'])
    // (Qtc/Qts)² − 1 by hand: Qts 0.412844, (0.707/0.412844)² − 1 = 1.93274 → 31.04 L
    expect(closed[1]?.netVolumeM3).toBeCloseTo(0.031_044, 5)
    expect(find(result.candidates, 'c4')?.preferred).toBe(true)
    expect(assumed.map(({ field }) => field)).toEqual(
      expect.arrayContaining(['wanted.qtc', 'losses.leakQ', 'kinds', 'drivers.count'])
    )
  })

  it('agrees between closed form and network within 1e-9 for seeded drivers, losses, sources and groups', () => {
    const random = randomStream(1976)
    const worst = { closed: 0, vented: 0 }
    for (let round = 0; round < 40; round++) {
      const uniform = (low: number, high: number) => low + (high - low) * random.uniform()
      const driver = { ...bare, fsHz: uniform(20, 50), qes: uniform(0.28, 0.7), vasM3: uniform(0.02, 0.2) }
      const inSeries = round % 2 === 0 ? 1 : 2
      const { result } = sizeEnclosure({
        driver,
        drivers: { count: 2, inSeries },
        source: { seriesOhm: uniform(0, 0.3) },
        losses: { leakQ: uniform(5, 20) },
        kinds: ['vented']
      })
      const tight = sizeEnclosure({
        driver,
        drivers: { count: 2, inSeries },
        source: { seriesOhm: 0.2 },
        kinds: ['closed']
      })
      for (const { kind, response, alignmentF3Hz = 0 } of [...result.candidates, ...tight.result.candidates]) {
        const deviation = Math.abs((response.f3Hz ?? 0) / alignmentF3Hz - 1)
        worst[kind as 'closed'] = Math.max(worst[kind as 'closed'], deviation)
      }
    }
    console.log('closed form against network, worst f3:', worst)
    expect(worst.closed).toBeLessThan(1e-9)
    expect(worst.vented).toBeLessThan(1e-9)
  })

  it('says of a candidate what the response of the same enclosure says', () => {
    const driver = { ...bare, leH: 0.0015 }
    const { result } = size({ driver, kinds: ['vented'] })
    const { netVolumeM3, tuningHz = 0, response } = find(result.candidates, 'c4') as EnclosureCandidate
    const areaM2 = 0.011
    const lengthM = (areaM2 * 343.21 ** 2) / (netVolumeM3 * (2 * Math.PI * tuningHz) ** 2)
    const direct = computeResponse({
      driver,
      enclosure: { kind: 'vented', rear: { netVolumeM3, leakQ: 7, port: { areaM2, lengthM, endFactor: 0 } } },
      source: { voltageV: 2.83 },
      frequenciesHz: [31.5]
    }).result
    expect((response.f3Hz ?? 0) / (direct.scalars.f3Hz ?? 1)).toBeCloseTo(1, 9)
    const level = (direct.curves.levelDb[0] ?? 0) - (direct.scalars.referenceLevelDb ?? 0)
    expect(response.levels.find(({ frequencyHz }) => frequencyHz === 31.5)?.relativeDb).toBeCloseTo(level, 9)
  })

  it('re-solves for other losses instead of reading a lossless table (α of Small 1973 at QL 5, 7, 15, from memory)', () => {
    // Qts 0.35 exactly.
    const driver = { ...bare, qms: 5, qes: 1 / (1 / 0.35 - 1 / 5) }
    const alpha = (leakQ: number) => find(size({ driver, losses: { leakQ } }).result.candidates, 'qb3')?.alpha ?? 0
    expect(Math.abs(alpha(5) / 1.7444 - 1)).toBeLessThan(1e-4)
    expect(Math.abs(alpha(7) / 1.7964 - 1)).toBeLessThan(1e-4)
    expect(Math.abs(alpha(15) / 1.8629 - 1)).toBeLessThan(1e-4)
  })

  it('takes the resistance of the source into Qts: cable of 0.34 Ω before 3.4 Ω adds a tenth to Qes', () => {
    const { drivers } = size({ source: { seriesOhm: 0.34 } }).result
    expect(drivers.qtsWithSource).toBeCloseTo(1 / (1 / 5 + 1 / 0.495), 12)
    const pair = size({ drivers: { count: 2, inSeries: 2 }, source: { seriesOhm: 0.68 } }).result.drivers
    expect(pair.qtsWithSource).toBeCloseTo(drivers.qtsWithSource, 12)
    expect(pair.vasM3).toBeCloseTo(0.12, 12)
  })

  it('judges a volume and a tuning asked for as they are', () => {
    const { result } = size({ kinds: ['vented', 'closed'], wanted: { netVolumeM3: 0.05, tuningHz: 33 } })
    const vented = find(result.candidates, 'as-asked')
    expect([vented?.netVolumeM3, vented?.tuningHz]).toEqual([0.05, 33])
    const closed = find(result.candidates, 'as-asked', 'closed')
    expect(closed?.qtc).toBeCloseTo(0.412_844 * Math.sqrt(1 + 0.06 / 0.05), 5)
  })

  it('says what does not fit, and what would in the space there is', () => {
    const { result } = size({ space: { netVolumeM3: 0.025 } })
    const flat = find(result.candidates, 'c4')
    expect(flat?.suits).toBe(false)
    expect(flat?.why.join()).toMatch(/more than the space/)
    const fitted = find(result.candidates, 'in-your-space')
    expect(fitted?.netVolumeM3).toBe(0.025)
    expect(fitted?.preferred).toBe(true)
    for (const { netVolumeM3, kind } of result.candidates.filter(({ suits }) => suits)) {
      expect(netVolumeM3, kind).toBeLessThanOrEqual(0.025)
    }
  })

  it('says why a driver of high Qts suits neither a flat vented box nor a tight closed one', () => {
    const { result } = size({ driver: { ...bare, qes: 1.1 } })
    expect(result.unsuited.map(({ alignment }) => alignment)).toEqual(expect.arrayContaining(['closed-qtc', 'b4']))
    expect(result.unsuited.find(({ kind }) => kind === 'closed')?.why).toMatch(/can only raise it/)
    const vented = result.candidates.filter(({ kind }) => kind === 'vented')
    expect(vented.every(({ suits }) => !suits)).toBe(true)
    expect(vented.flatMap(({ why }) => why).join()).toMatch(/ripple|leans to closed/)
  })

  it('makes lined boxes smaller to build by the apparent volume, no more than isothermal air allows', () => {
    const { result, assumed } = size({ lining: { amount: 'filled' }, kinds: ['closed'] })
    for (const { builtVolumeM3 = 0, netVolumeM3 } of result.candidates) {
      expect(netVolumeM3 / builtVolumeM3).toBeCloseTo(1.15, 12)
    }
    expect(assumed.map(({ field }) => field)).toContain('lining.volumeFactor')
    expect(size({ lining: { amount: 'filled' } }).cautions.map(({ code }) => code)).toContain('lining-in-opened-box')
  })

  it('tunes passive radiators by mass, and shows their notch', () => {
    const { result } = size({ kinds: ['passive-radiator'], passiveRadiators: { count: 2, areaM2: 0.05 } })
    const { passiveRadiators: radiators, tuningHz = 0, netVolumeM3 } = result.candidates[0] as EnclosureCandidate
    if (radiators === undefined) throw new Error('no radiators')
    const notch = 1 / (2 * Math.PI * Math.sqrt(radiators.massKg * radiators.complianceMPerN))
    expect(radiators.resonanceHz).toBeCloseTo(notch, 9)
    const stiffness = 1.2041 * 343.21 ** 2
    const boxed = (2 * stiffness * 0.05 ** 2 * radiators.complianceMPerN) / netVolumeM3
    expect(notch * Math.sqrt(1 + boxed)).toBeCloseTo(tuningHz, 9)
  })

  it('gives a band-pass its wanted edges by the network too', () => {
    const { result } = size({ kinds: ['band-pass-4'], wanted: { lowHz: 38, highHz: 95 } })
    const [{ response, alignmentF3Hz }] = result.candidates as readonly [EnclosureCandidate]
    expect(alignmentF3Hz).toBeCloseTo(38, 9)
    // Half power re the peak, which for a shape without ripple is the centre.
    const ripples = response.peakDb
    expect(Number.isFinite(ripples)).toBe(true)
    expect(Math.abs((response.f3UpperHz ?? 0) / 95 - 1)).toBeLessThan(0.05)
    const none = size({ kinds: ['band-pass-4'], wanted: { lowHz: 15, highHz: 40 } }).result
    expect(none.unsuited[0]?.why).toMatch(/not above the resonance/)
  })

  it('refuses half an edge, strings that do not divide, and a driver that is none', () => {
    const code = (request: Partial<SizingRequest>) => {
      try {
        size(request)
      } catch (error) {
        return (error as { code: string }).code
      }
      return 'answered'
    }
    expect(code({ kinds: ['band-pass-4'], wanted: { lowHz: 40 } })).toBe('missing-input')
    expect(code({ kinds: ['band-pass-4'], wanted: { lowHz: 90, highHz: 40 } })).toBe('conflicting-input')
    expect(code({ drivers: { count: 3, inSeries: 2 } })).toBe('conflicting-input')
    expect(code({ driver: { ...bare, fsHz: 2000, qes: 1e-320 } })).toBe('out-of-range')
  })
})
