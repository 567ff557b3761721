/** 33 CFR 183.455(c)(1) lets the fuse be 150 % of the table, 183.425(b) never the load. */
import { describe, expect, it } from 'vitest'
import type { FuseRequest } from '../../../src/contract/supply/supply-fuses.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { rateFuse } from '../../../src/domain/circuit/fuse/rate-fuse.ts'
import { DesignError } from '../../../src/domain/design-error.ts'

/** 8 AWG, 105 °C: 80 A by the table; √((105 − 70)/75) = 0.683 and four in a bundle 0.6 leave 32.8 A, the fuse may be 120 A. */
const hotBundle: FuseRequest = {
  currentA: 95,
  heavyCurrentA: 32,
  systemVoltageV: 12,
  policy: 'cfr-150',
  cable: { designation: '8 AWG', insulationC: 105, ambientC: 70, bundledConductors: 4 }
}
const refusal = (request: FuseRequest): string => {
  try {
    return `${rateFuse(request).result.fuse.ratingA} A`
  } catch (error) {
    if (error instanceof DesignError) return `${error.code} ${error.faults[0]?.field}: ${error.message}`
    throw error
  }
}

describe('fuse at 150 % of the table', () => {
  it('refuses 95 A on a cable that carries 32.8 A for good, whatever its fuse', () => {
    const text = refusal(hotBundle)
    expect(text).toMatch(/^no-solution cable.designation: The load draws 95.0 A, but 8 AWG carries 32.8 A/)
    expect(refusal({ ...hotBundle, currentA: 32 })).toBe('60 A')
  })

  it('advises by its own rule: 6 AWG, 120 A by the table, carries 49.2 A here and may be fused at 180 A', () => {
    // strict would need In ≤ Iz: 60 A only on 4 AWG (160 A by the table, 65.6 A here)
    const thin = { ...hotBundle, currentA: 46, cable: { ...hotBundle.cable, designation: '10 AWG' } }
    expect(refusal(thin)).toContain('use 6 AWG, which carries 49.2 A and may be fused at 180.0 A by the policy cfr-150')
    expect(refusal({ ...thin, policy: 'strict' })).toMatch(/use (4|2|1\/0) AWG/)
    expect(refusal({ ...thin, policy: 'strict' })).not.toContain('policy')
  })

  it('holds every further cable to the load as well', () => {
    const both = { ...hotBundle, currentA: 60, cable: { designation: '1/0 AWG', insulationC: 105, ambientC: 50 } }
    const thin = { designation: '12 AWG', insulationC: 105, ambientC: 50 }
    expect(refusal({ ...both, alsoProtects: [thin] })).toMatch(/^no-solution alsoProtects\[0\].designation/)
  })
})

describe('a cable that its fuse does not guard', () => {
  const base = {
    currentA: 122,
    systemVoltageV: 12,
    positiveLengthM: 1,
    return: { kind: 'chassis', leadLengthM: 0.3 },
    insulationC: 105,
    ambientC: 70,
    conductor: 'copper',
    gaugeSystem: 'awg'
  } as const
  const stops = (request: Parameters<typeof chooseCable>[0]) =>
    chooseCable(request)
      .cautions.filter(({ level }) => level === 'stop')
      .map(({ code }) => code)

  it('is a stop whatever checks are named: 122 A and a 125 A fuse on the 8 AWG that keeps the drop', () => {
    const { cable, fuse } = chooseCable({ ...base, checks: ['drop'] }).result
    // 80 A by the table, 0.683 at 70 °C: 55 A
    expect([cable?.designation, fuse?.ratingA, cable?.ampacityA?.toFixed(0)]).toEqual(['8 AWG', 125, '55'])
    expect(stops({ ...base, checks: ['drop'] })).toEqual(['cable-overloaded', 'cable-unguarded'])
    // 2 AWG: 210 A by the table, 143.5 A here, behind 150 A
    expect(stops({ ...base, currentA: 143, checks: ['drop', 'ampacity'] })).toEqual(['cable-unguarded'])
    expect(stops(base)).toEqual([])
    // a class that is only assumed makes no stop
    const { insulationC: _, ...unread } = base
    const said = chooseCable({ ...unread, checks: ['drop'] }).cautions.filter(({ code }) => code === 'cable-unguarded')
    expect(said.map(({ level }) => level)).toEqual(['care'])
    expect(said[0]?.message).toContain('print on the cable')
  })

  it('is none by the policy that allows the fuse, as long as it carries the load', () => {
    const policy = 'cfr-150' as const
    expect(stops({ ...base, currentA: 40, fuseA: 60, policy, checks: ['drop'], sizes: ['10'] })).toEqual([])
    expect(stops({ ...base, currentA: 50, fuseA: 60, policy, checks: ['drop'], sizes: ['10'] })).toEqual([
      'cable-overloaded'
    ])
  })
})
