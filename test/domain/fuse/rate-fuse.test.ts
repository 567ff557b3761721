import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FuseRequest } from '../../../src/contract/supply/supply-fuses.ts'
import { rateFuse } from '../../../src/domain/circuit/fuse/rate-fuse.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { supplyFuses } from '../../../src/http/operations/supply/supply-fuses.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(supplyFuses)

const cool = { insulationC: 105, ambientC: 50 } as const
const base: FuseRequest = { currentA: 48.3, systemVoltageV: 12, cable: { designation: '4 AWG', ...cool } }
const codes = (request: FuseRequest) => rateFuse(request).cautions.map(({ code, level }) => `${code} ${level}`)
const refusal = (request: FuseRequest): string => {
  try {
    rateFuse(request)
  } catch (error) {
    if (error instanceof DesignError) return `${error.code} ${error.faults[0]?.field}: ${error.message}`
    throw error
  }
  return 'accepted'
}

describe('fuse of a cable', () => {
  it('puts 50 A on 48.3 A and 4 AWG', () => expect(rateFuse(base).result.fuse.ratingA).toBe(50))

  it('never oversizes the fuse nor starves the load: 62 A on 8 AWG is sent to 6 AWG', () => {
    const text = refusal({ ...base, currentA: 62, cable: { designation: '8 AWG', ...cool } })
    expect(text).toMatch(/^no-solution cable.designation/)
    expect(text).toContain('use 6 AWG')
    expect(text).toContain('68.5 A')
    expect(rateFuse({ ...base, currentA: 62, cable: { designation: '6 AWG', ...cool } }).result.fuse.ratingA).toBe(70)
  })

  it('allows 150 % of the table only when asked, and only below 50 V (33 CFR 183.455(c)(1))', () => {
    const warm = { designation: '8 AWG', insulationC: 105, ambientC: 30 } as const
    const of = (policy: 'strict' | 'cfr-150', systemVoltageV = 12) =>
      rateFuse({ ...base, currentA: 60, cable: warm, policy, systemVoltageV }).result.bounds.highestA
    expect(of('strict')).toBe(80)
    expect(of('cfr-150')).toBe(120)
    expect(of('cfr-150', 52)).toBe(80)
  })

  it('protects the weakest of several cables', () => {
    expect(refusal({ ...base, currentA: 60, alsoProtects: [{ designation: '8 AWG', ...cool }] })).toMatch(/^accepted/)
    expect(refusal({ ...base, currentA: 75, alsoProtects: [{ designation: '8 AWG', ...cool }] })).toMatch(
      /^no-solution alsoProtects\[0\].designation/
    )
  })

  it('needs 58 V at 48 V: a 32 V strip is refused with both figures', async () => {
    expect(rateFuse({ ...base, systemVoltageV: 48 }).result.fuse).toMatchObject({ type: 'single-bolt', voltageV: 58 })
    const { status, body } = await post('/v1/supply/fuses', { ...base, systemVoltageV: 48, types: ['SF30'] })
    expect(status).toBe(422)
    expect(body).toMatchObject({ code: 'fuse-voltage', errors: [{ pointer: '/types', bounds: { minimum: 58 } }] })
    expect(body.detail).toContain('32 V')
  })

  it('reports a maker’s fuse that contradicts, and obeys only the one that is safe', () => {
    expect(codes({ ...base, makerFuseA: 40 })).toContain('maker-fuse-too-small care')
    expect(codes({ ...base, makerFuseA: 80 })).toContain('maker-fuse-not-obeyed note')
    expect(codes({ ...base, makerFuseA: 150 })).toContain('maker-fuse-not-obeyed care')
    for (const makerFuseA of [40, 80, 150]) expect(rateFuse({ ...base, makerFuseA }).result.fuse.ratingA).toBe(50)
    const tone = { ...base, continuousTone: true }
    expect(rateFuse(tone).result.fuse.ratingA).toBe(80)
    expect(rateFuse({ ...tone, makerFuseA: 60 }).result.fuse.ratingA).toBe(60)
    expect(codes({ ...tone, makerFuseA: 60 })).toContain('maker-fuse-used note')
  })

  it('places it: 175 mm fine (7 in, 33 CFR 183.455), 300 sleeve, 700 conduit, further move it, both ends of a battery link', () => {
    const far = (distanceM: number, sheathed = false) =>
      codes({ ...base, distanceM, sheathed }).filter(text => text.startsWith('fuse-too-far'))
    expect(far(0.175)).toEqual([])
    expect(far(7.01 * 0.0254)).toEqual(['fuse-too-far note'])
    expect(far(0.3)).toEqual(['fuse-too-far note'])
    // at a limit it still is within it
    expect(far(0.45)).toEqual(['fuse-too-far note'])
    expect(far(1.016, true)).toEqual(['fuse-too-far care'])
    expect(far(0.46)).toEqual(['fuse-too-far stop'])
    expect(far(0.46, true)).toEqual(['fuse-too-far care'])
    expect(far(1.1, true)).toEqual(['fuse-too-far stop'])
    const link = rateFuse({ ...base, linksTwoBatteries: true })
    expect(link.result.fuse.placement.bothEnds).toBe(true)
    expect(link.cautions.map(({ code }) => code)).toContain('link-both-ends')
  })

  it('states selectivity over each branch', () => {
    const trunk = { ...base, currentA: 133.99, cable: { designation: '1/0 AWG', ...cool } }
    expect(rateFuse({ ...trunk, branchFusesA: [80, 60] }).result.selectivity).toEqual([
      { branchRatingA: 80, ratio: 1.875, selective: true },
      { branchRatingA: 60, ratio: 2.5, selective: true }
    ])
    expect(codes({ ...trunk, branchFusesA: [100] })).toContain('selectivity-poor note')
  })

  it('gives the operating times of an overcurrent and says what a rating is not', () => {
    const blade = rateFuse({ ...base, currentA: 30, types: ['C'], source: { resistanceOhm: 0.02 }, overcurrentA: 60 })
    expect(blade.result.timeCurrent).toEqual({ percent: 200, minimumS: 0.15, maximumS: 5 })
    expect(blade.cautions.map(({ code }) => code)).toContain('fuse-overcurrent')
    expect(codes({ ...base, overcurrentA: 100 })).toContain('time-current-uncertain note')
  })

  it('takes unknown metal as 10 % clad and says so', () => {
    const unknown = { ...base, cable: { ...base.cable, conductor: 'unknown' } } as const
    expectPrinted(rateFuse(unknown).result.bounds.highestA / rateFuse(base).result.bounds.highestA, '0.793')
    expect(codes(unknown)).toContain('composition-unknown care')
  })

  it('refuses insulation below its surroundings and sizes outside the table', () => {
    expect(refusal({ ...base, cable: { designation: '4 AWG', insulationC: 60, ambientC: 70 } })).toMatch(
      /^insulation-below-ambient cable.insulationC/
    )
    expect(refusal({ ...base, cable: { designation: '22 AWG', ...cool } })).toMatch(/^out-of-range cable.designation/)
    expect(refusal({ ...base, currentA: 600, cable: { designation: '4/0 AWG', ...cool } })).toMatch(
      /^no-solution currentA/
    )
  })

  const requests = fc.record({
    currentA: fc.double({ min: 1, max: 300, noNaN: true }),
    systemVoltageV: fc.constantFrom(12, 24, 48),
    cable: fc.record({
      designation: fc.constantFrom('10 AWG', '8 AWG', '4 AWG', '1/0 AWG', 'SAE 4', '25 mm2', '50 mm2', '4/0 AWG'),
      conductor: fc.constantFrom('copper' as const, 'copper-clad-10' as const, 'unknown' as const),
      insulationC: fc.constantFrom(75, 80, 105, 125),
      ambientC: fc.double({ min: 0, max: 70, noNaN: true }),
      bundledConductors: fc.integer({ min: 1, max: 10 })
    })
  })
  const ratingOf = (request: FuseRequest) => {
    try {
      return rateFuse(request).result
    } catch (error) {
      if (error instanceof DesignError && error.code === 'no-solution') return undefined
      throw error
    }
  }

  it('never exceeds any cable it protects, never starves the load', () => {
    fc.assert(
      fc.property(requests, request => {
        const answer = ratingOf(request)
        if (answer === undefined) return
        for (const { ampacityA } of answer.cables) expect(answer.fuse.ratingA).toBeLessThanOrEqual(ampacityA)
        expect(answer.fuse.ratingA).toBeGreaterThanOrEqual(request.currentA * (1 - 1e-9))
        expect(answer.fuse.voltageV).toBeGreaterThan(request.systemVoltageV)
      }),
      { seed: 7, numRuns: 400 }
    )
  })

  it('never allows a larger fuse on the same cable in a hotter bay', () => {
    fc.assert(
      fc.property(requests, fc.double({ min: 0.1, max: 4, noNaN: true }), (request, hotter) => {
        const cold = ratingOf(request)
        if (cold === undefined) return
        const hot = ratingOf({ ...request, cable: { ...request.cable, ambientC: request.cable.ambientC + hotter } })
        const highestA = hot?.bounds.highestA ?? 0
        expect(highestA).toBeLessThanOrEqual(cold.bounds.highestA)
        if (request.cable.ambientC >= 30) expect(highestA).toBeLessThan(cold.bounds.highestA)
      }),
      { seed: 8, numRuns: 400 }
    )
  })
})
