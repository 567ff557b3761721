/** What a circuit says of itself: fuses under their load, guesses, shorts that drive nothing, fuses in series, the margin. */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'

const amplifier = { id: 'bass', plus: 'a', minus: 'm', powerW: 1500, class: 'D', efficiency: 0.85 } as const
const place = { insulationC: 105, ambientC: 30, bundledConductors: 1 } as const
const run = {
  id: 'run',
  from: 'f',
  to: 'a',
  designation: '1/0 AWG',
  conductor: 'copper',
  lengthM: 5,
  joints: 0
} as const
const simple: CircuitRequest = {
  systemVoltageV: 12,
  batteries: [{ id: 'battery', plus: 'p', minus: 'm', openCircuitV: 12.6, resistanceOhm: 0.006 }],
  fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: 150, breakingA: 5000 }],
  cables: [{ ...run, ...place }],
  amplifiers: [{ ...amplifier, regulation: 'regulated' }]
}
const find = (request: CircuitRequest, code: string) =>
  computeCircuit(request).cautions.find(each => each.code === code)
const fused = (ratingA: number): CircuitRequest => ({
  ...simple,
  fuses: [{ id: 'main', from: 'p', to: 'f', ratingA, breakingA: 5000 }]
})

describe('a fuse and its load', () => {
  // 1500/0.85 = 1765 W at some 11.2 V are 158 A at full sine; a third of it, 598 W at 12.2 V, 49 A with dense bass
  it('is told where the test tone passes 110 % of the rating, not at the next one', () => {
    expect(find(fused(125), 'fuse-below-load')).toMatchObject({ level: 'care', at: 'fuses[0]' })
    expect(find(fused(150), 'fuse-below-load')).toBeUndefined()
  })

  it('is told where dense bass passes 75 % of it: class AB draws √(1/3) of the full sine', () => {
    const loud = { ...amplifier, class: 'AB', efficiency: 0.6, regulation: 'regulated', powerW: 1000 } as const
    const thirsty = (ratingA: number) => ({ ...fused(ratingA), amplifiers: [loud] })
    // 1000/0.6 = 1667 W; √(1/3) of it 962 W at 12 V are 80 A, above 0.75·1.1·90 but below 0.75·1.1·100
    expect(find(thirsty(90), 'fuse-below-load')).toBeDefined()
    expect(find({ ...thirsty(150) }, 'fuse-below-load')).toBeUndefined()
  })

  it('does not count what cannot last: below its drop-out the amplifier stops', () => {
    const starved: CircuitRequest = {
      ...fused(150),
      batteries: [{ id: 'battery', plus: 'p', minus: 'm', openCircuitV: 12.6, resistanceOhm: 0.014 }]
    }
    const { result } = computeCircuit(starved)
    const flows = result.states.find(({ level }) => level === 'full-sine')?.parts.find(({ id }) => id === 'main')
    expect(flows?.currentA ?? 0).toBeGreaterThan(165)
    expect(find(starved, 'below-drop-out')).toBeDefined()
    expect(find(starved, 'fuse-below-load')).toBeUndefined()
  })
})

describe('a guess', () => {
  const body = (assumed: boolean): CircuitRequest => ({
    ...simple,
    links: [{ id: 'body', from: 'g', to: 'm', resistanceOhm: 0.006, ...(assumed ? { assumed } : {}) }],
    amplifiers: [{ ...amplifier, minus: 'g', regulation: 'regulated' }]
  })

  it('makes no stop where the circuit would hold without it', () => {
    expect(find(body(false), 'below-drop-out')?.level).toBe('stop')
    expect(find(body(true), 'below-drop-out')).toMatchObject({ level: 'care' })
    expect(find(body(true), 'below-drop-out')?.message).toContain('measure it')
  })

  it('of insulation and place makes no stop of an unguarded cable; no fuse at all does', () => {
    const thin = (given: object, fuses = simple.fuses): CircuitRequest => ({
      ...simple,
      cables: [{ ...run, designation: '8 AWG', ...given }],
      ...(fuses === undefined ? {} : { fuses })
    })
    expect(find(thin(place), 'cable-unguarded')?.level).toBe('stop')
    expect(find(thin({}), 'cable-unguarded')?.level).toBe('care')
    expect(find(thin({ insulationC: 105 }), 'cable-unguarded')?.message).toContain('print on the cable')
  })
})

describe('a short at an amplifier', () => {
  it('that drives nothing says so in words, not as a rounding of the solver', () => {
    const relay = { id: 'relay', from: 'p2', to: 'p', resistanceOhm: 0.0004, opensWithoutEngine: true }
    const unfused: CircuitRequest = {
      ...simple,
      fuses: [{ id: 'elsewhere', from: 'p', to: 'x', ratingA: 5, breakingA: 5000 }],
      cables: [{ ...run, ...place, from: 'p' }],
      links: [relay]
    }
    const message = find(unfused, 'fault-current-low')?.message ?? ''
    expect(message).toContain('no current through any fuse')
    expect(message).not.toMatch(/e-\d/)
  })
})

describe('fuses in series', () => {
  const chain = (behindA: number): CircuitRequest => ({
    ...fused(150),
    fuses: [
      { id: 'main', from: 'p', to: 'f', ratingA: 150, breakingA: 5000 },
      { id: 'branch', from: 'a', to: 'b', ratingA: behindA, breakingA: 5000 }
    ],
    amplifiers: [{ ...amplifier, plus: 'b', regulation: 'regulated' }]
  })

  it('are found with their ratio, and told below 1.6', () => {
    expect(computeCircuit(chain(100)).result.series).toEqual([{ before: 'main', behind: 'branch', ratio: 1.5 }])
    expect(find(chain(100), 'selectivity-poor')).toBeDefined()
    expect(find(chain(80), 'selectivity-poor')).toBeUndefined()
  })

  it('are none where they lie side by side', () => {
    const two = {
      ...simple,
      fuses: [
        { id: 'one', from: 'p', to: 'f', ratingA: 100, breakingA: 5000 },
        { id: 'two', from: 'p', to: 'f', ratingA: 100, breakingA: 5000 }
      ]
    }
    expect(computeCircuit(two).result.series).toEqual([])
  })
})

describe('the margin', () => {
  it('is that of E²/(4·P·R), and absent from twice upwards', () => {
    const { result } = computeCircuit(simple)
    const bass = result.states.find(({ level }) => level === 'full-sine')?.parts.find(({ id }) => id === 'bass')
    const ohm = (12.6 - (bass?.voltageV ?? 0)) / (bass?.currentA ?? 1)
    expect(12.6 ** 2 / (4 * ohm * (1500 / 0.85))).toBeGreaterThan(2)
    expect(result.collapseMargin).toBeUndefined()
    const large = { ...simple, amplifiers: [{ ...amplifier, powerW: 2600, regulation: 'regulated' as const }] }
    // by halving, to a thousandth
    const byHand = 12.6 ** 2 / (4 * ohm * (2600 / 0.85))
    expect(Math.abs((computeCircuit(large).result.collapseMargin ?? 0) - byHand)).toBeLessThan(0.001)
    expect(find(large, 'collapse-margin')).toBeDefined()
  })
})

describe('a lithium battery', () => {
  it('rests at 13.2 V for each 12 V and is used to four fifths', () => {
    const off = (chemistry: 'lithium' | 'agm') =>
      supplyCurrent({
        systemVoltageV: 24,
        amplifiers: [{ powerW: 500, class: 'D', regulation: 'regulated', ratedVoltageV: 28.8 }],
        battery: { capacityAh: 100, chemistry }
      }).result.engineOff
    expect(off('lithium')?.restV).toBe(26.4)
    expect(off('agm')?.restV).toBe(25.2)
    expect((off('lithium')?.usableHours ?? 0) / (off('lithium')?.hoursToEmpty ?? 1)).toBeCloseTo(0.8, 9)
    expect((off('agm')?.usableHours ?? 0) / (off('agm')?.hoursToEmpty ?? 1)).toBeCloseTo(0.5, 9)
  })
})
