/** Designs side by side: each as the response has it, single changes against closed forms, and what cannot be asked. */
import { describe, expect, it } from 'vitest'
import { DesignError } from '../../../src/domain/design-error.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import { compareDesigns } from '../../../src/domain/enclosure/comparison/compare-designs.ts'
import { expectPrinted } from '../../support/printed.ts'

const driver = { fsHz: 28, qms: 5.5, qes: 0.45, vasM3: 0.062, sdM2: 0.0495, reOhm: 3.2, leH: 0.0016, xmaxM: 0.014 }
const vented = (netVolumeM3: number, port: { readonly areaM2: number; readonly lengthM: number }) =>
  ({ kind: 'vented', rear: { netVolumeM3, leakQ: 7, port } }) as const
const port = { areaM2: 0.011, lengthM: 0.3 }
const design = (name: string, more: object = {}) => ({
  name,
  driver,
  enclosure: vented(0.05, port),
  source: { voltageV: 30 },
  ...more
})
const highPass = { kind: 'high-pass', family: 'butterworth', order: 2, cornerHz: 30 } as const
const cabin = { lengthM: 2.6 }
const asked = (...designs: readonly object[]) =>
  compareDesigns({ designs, cabin } as Parameters<typeof compareDesigns>[0])

describe('designs side by side', () => {
  it('have the curves and levels of their own responses', () => {
    const large = design('large', { enclosure: vented(0.08, port) })
    const { result } = asked(design('small'), large)
    const { name: _, ...request } = large
    const own = computeResponse({ ...request, cabin, frequenciesHz: result.comparedHz }).result
    expect(result.designs[1]?.figures.levelsDb).toEqual(own.curves.seatLevelDb)
    const whole = computeResponse({ ...request, cabin }).result
    expect(result.designs[1]?.curves.coneExcursionM).toEqual(whole.curves.coneExcursionM)
    expect(result.designs[1]?.figures.f3Hz).toBe(whole.scalars.f3Hz)
  })

  it('differ by the opposite when they change places', () => {
    const pair = [design('small'), design('large', { enclosure: vented(0.08, port) })] as const
    const [there] = asked(pair[0], pair[1]).result.differences
    const [back] = asked(pair[1], pair[0]).result.differences
    there?.change.levelsDb.forEach((change, at) => {
      expect(change).toBeCloseTo(-(back?.change.levelsDb[at] ?? 0), 9)
    })
    expect(there?.causes.map(({ parameter }) => parameter)).toEqual(back?.causes.map(({ parameter }) => parameter))
  })

  it('of four times the power: 20·lg 2 dB more at every mark, twice the travel, no other cause, tuning unmoved', () => {
    const { differences, differing, designs } = asked(
      design('soft'),
      design('hard', { source: { voltageV: 60 } })
    ).result
    const [{ causes, togetherDb } = { causes: [], togetherDb: [] }] = differences
    expect(causes.map(({ parameter }) => parameter)).toEqual(['source'])
    for (const change of causes[0]?.change?.levelsDb ?? [Number.NaN]) expectPrinted(change, '6.021')
    for (const left of togetherDb) expect(left).toBeCloseTo(0, 9)
    const [soft, hard] = designs.map(({ figures }) => figures.coneExcursionM)
    expect(hard).toBeCloseTo(2 * (soft ?? 0), 12)
    expect(differing).not.toContain('tuning')
    expect(differing).toEqual(expect.arrayContaining(['levels', 'voltage', 'cone-excursion', 'port-air-speed']))
  })

  it('of twice the volume on one port: tuned lower by the root of two, with the volume as the only cause', () => {
    const { designs, differences } = asked(design('small'), design('large', { enclosure: vented(0.1, port) })).result
    const [small, large] = designs.map(({ figures }) => figures.tuningHz)
    expect((small ?? 0) / (large ?? 1)).toBeCloseTo(Math.SQRT2, 6)
    expect(differences[0]?.causes.map(({ parameter }) => parameter)).toEqual(['rear-volume'])
  })

  it('leave what parameters do through each other: the whole less the single ones', () => {
    const other = design('other', { enclosure: vented(0.08, { areaM2: 0.02, lengthM: 0.2 }), source: { voltageV: 40 } })
    const [difference] = asked(design('one'), other).result.differences
    const { causes = [], change, togetherDb = [] } = difference ?? {}
    expect(causes.map(({ parameter }) => parameter)).toEqual(['rear-volume', 'rear-port', 'source'])
    change?.levelsDb.forEach((all, at) => {
      const single = causes.reduce((sum, cause) => sum + (cause.change?.levelsDb[at] ?? Number.NaN), 0)
      expect(togetherDb[at]).toBeCloseTo(all - single, 9)
    })
    expect(togetherDb.some(left => Math.abs(left) > 0.1)).toBe(true)
  })

  const pair = [
    design('one'),
    design('other', { enclosure: vented(0.08, port), source: { voltageV: 40 }, filters: [highPass] })
  ] as const
  const causesOf = (from: object, to: object) => asked(from, to).result.differences[0]?.causes ?? []

  it('tell what a parameter does last of all: in the other order it is the first, with its sign turned', () => {
    const [there, back] = [causesOf(...pair), causesOf(pair[1], pair[0])]
    expect(there.map(({ parameter }) => parameter)).toEqual(['rear-volume', 'source', 'filters'])
    for (const [place, { lastDb, change }] of there.entries()) {
      lastDb?.forEach((last, at) => {
        expect(last).toBeCloseTo(-(back[place]?.change?.levelsDb[at] ?? Number.NaN), 9)
        expect(change?.levelsDb[at]).toBeCloseTo(-(back[place]?.lastDb?.[at] ?? Number.NaN), 9)
      })
    }
  })

  it('share the whole change of two parameters among the means of first and last (causeOf; value of a game of two, by algebra)', () => {
    const other = design('other', { enclosure: vented(0.08, { areaM2: 0.02, lengthM: 0.2 }) })
    const { causes = [], change } = asked(design('one'), other).result.differences[0] ?? {}
    expect(causes).toHaveLength(2)
    change?.levelsDb.forEach((whole, at) => {
      const shared = causes.map(cause => ((cause.change?.levelsDb[at] ?? Number.NaN) + (cause.lastDb?.[at] ?? 0)) / 2)
      expect(shared.reduce((sum, each) => sum + each, 0)).toBeCloseTo(whole, 9)
    })
    const [volume] = causes
    expect(Math.abs((volume?.change?.levelsDb[1] ?? 0) - (volume?.lastDb?.[1] ?? 0))).toBeGreaterThan(0.05)
  })

  it('of one with a filter and one without: the filter alone is the whole, which way round they stand', () => {
    const filters = [{ kind: 'high-pass', family: 'butterworth', order: 2, cornerHz: 40 }]
    const filtered = design('filtered', { filters })
    for (const pair of [
      [filtered, design('plain')],
      [design('plain'), filtered]
    ]) {
      const [difference] = asked(...pair).result.differences
      expect(difference?.causes.map(({ parameter }) => parameter)).toEqual(['filters'])
      // half power at the corner of 40 Hz, the third mark
      expect(Math.abs(difference?.change.levelsDb[2] ?? 0)).toBeCloseTo(10 * Math.log10(2), 6)
      expect(difference?.causes[0]?.change?.levelsDb).toEqual(difference?.change.levelsDb)
    }
  })

  it('of unlike kinds: the enclosure as a whole is the cause', () => {
    const closed = design('closed', { enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } } })
    const { differing, differences } = asked(design('vented'), closed).result
    expect(differences[0]?.causes.map(({ parameter }) => parameter)).toEqual(['enclosure'])
    expect(differing).toEqual(expect.arrayContaining(['qtc', 'tuning', 'port-air-speed']))
  })

  it('of one design twice: nothing, whatever the order of its fields (figureChanges)', () => {
    const { reOhm, ...rest } = driver
    const { differing, differences } = asked(design('one'), design('two', { driver: { reOhm, ...rest } })).result
    expect(differing).toEqual([])
    expect(differences[0]?.causes).toEqual([])
  })

  it('say why a parameter cannot go over alone: ports beside passive radiators in one chamber', () => {
    const rear = { netVolumeM3: 0.06 }
    const front = { netVolumeM3: 0.03, port }
    const radiators = { areaM2: 0.05, massKg: 0.3, complianceMPerN: 0.0004 }
    const inBand = (name: string, opening: object) =>
      design(name, { enclosure: { kind: 'band-pass-6-parallel', rear: { ...rear, ...opening }, front } })
    const [difference] = asked(inBand('ports', { port }), inBand('radiators', { passiveRadiators: radiators })).result
      .differences
    const refused = difference?.causes.filter(({ refusal }) => refusal !== undefined) ?? []
    expect(refused.length).toBeGreaterThan(0)
    for (const { change } of refused) expect(change).toBeUndefined()
  })
})

describe('a comparison refuses', () => {
  const refusal = (...designs: readonly object[]) => {
    try {
      asked(...designs)
    } catch (error) {
      if (error instanceof DesignError) return error
    }
    throw new Error('not refused')
  }

  it('two designs of one name', () => {
    expect(refusal(design('same'), design('same')).faults[0]?.field).toBe('designs[1].name')
  })

  it('what a response refuses, with the place in its design', () => {
    const { code, faults } = refusal(design('one'), design('two', { source: { voltageV: 30, powerW: 100 } }))
    expect(code).toBe('conflicting-input')
    expect(faults[0]?.field).toMatch(/^designs\[1\]\.source/)
  })
})
