/** The circuit over the wire: against the calculators that ask the same, Kirchhoff, and graphs that are none. */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { computeFeeder } from '../../../src/domain/circuit/graph/compute-feeder.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'
import { supplyCircuit } from '../../../src/http/operations/supply/supply-circuit.ts'
import { postTo } from '../../support/post-to.ts'

const post = postTo(supplyCircuit)

const amplifier = { powerW: 1500, class: 'D', efficiency: 0.85, regulation: 'regulated' } as const
const battery = { id: 'battery', plus: 'p', minus: 'm', openCircuitV: 12.6, resistanceOhm: 0.006 } as const
const simple: CircuitRequest = {
  systemVoltageV: 12,
  batteries: [battery],
  fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: 150, resistanceOhm: 0.0006, breakingA: 5000 }],
  cables: [
    {
      id: 'run',
      from: 'f',
      to: 'a',
      designation: '1/0 AWG',
      conductor: 'copper',
      lengthM: 5,
      joints: 0,
      insulationC: 105,
      ambientC: 30,
      bundledConductors: 1
    }
  ],
  amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', ...amplifier }]
}
const codes = (request: CircuitRequest) => computeCircuit(request).cautions.map(({ code, level }) => `${code} ${level}`)
const stateAt = (request: CircuitRequest, level: string, engine: string) =>
  computeCircuit(request).result.states.find(state => state.level === level && state.engine === engine)
const partAt = (request: CircuitRequest, id: string, level: string, engine = 'idling') =>
  stateAt(request, level, engine)?.parts.find(part => part.id === id)

describe('a circuit', () => {
  it('has the voltage of the feeder that asks the same', () => {
    const cable = { designation: '1/0 AWG', conductor: 'copper', positiveLengthM: 5 } as const
    const { result } = computeFeeder({
      systemVoltageV: 12,
      source: { voltageV: 12.6, resistanceOhm: 0.006 },
      trunk: { cable, fuse: { ratingA: 150, resistanceOhm: 0.0006 }, joints: 0 },
      amplifiers: [amplifier],
      conductorTemperatureC: 20
    })
    expect(partAt(simple, 'bass', 'full-sine')?.voltageV).toBeCloseTo(result.amplifiers[0]?.voltageV ?? 0, 6)
    expect(partAt(simple, 'run', 'full-sine')?.currentA).toBeCloseTo(result.amplifiers[0]?.currentA ?? 0, 5)
  })

  it('draws at each level the power that the current calculation gives', () => {
    const { currents } = supplyCurrent({ systemVoltageV: 12, amplifiers: [amplifier] }).result
    const watts = (level: string) => {
      const part = partAt(simple, 'bass', level)
      return (part?.voltageV ?? 0) * (part?.currentA ?? 0)
    }
    expect(watts('silence')).toBeCloseTo(12 * currents.quiescentA, 5)
    expect(watts('average')).toBeCloseTo(12 * currents.averageA, 5)
    expect(watts('heavy')).toBeCloseTo(12 * currents.heavyA, 5)
    expect(watts('full-sine')).toBeCloseTo(12 * currents.fullSineA, 5)
  })

  it('shows the voltage of a worked-out fault: cold 150 A fuse 0.38 mΩ, 6 mΩ, 12.6 V', () => {
    expect(computeCircuit(simple).result.fuses[0]?.prospectiveA).toBeCloseTo(12.6 / (0.006 + 0.057 / 150), 6)
    expect(codes(simple)).toEqual([])
  })

  it('says when nothing stands, and how much of it would: E²/(4·P·R)', () => {
    const large = { ...simple, amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', ...amplifier, powerW: 6000 }] }
    const ohm =
      (12.6 - (partAt(simple, 'bass', 'full-sine')?.voltageV ?? 0)) /
      (partAt(simple, 'bass', 'full-sine')?.currentA ?? 1)
    const state = stateAt(large, 'full-sine', 'idling')
    expect(state?.stands).toBe(false)
    expect(state?.sustainableShare).toBeCloseTo(12.6 ** 2 / (4 * ohm * (6000 / 0.85)), 3)
    expect(codes(large)).toContain('circuit-collapse stop')
  })

  it('stops a second battery without a fuse, and a run that it can burn from behind', () => {
    const second = { ...battery, id: 'second', plus: 'a' }
    const two = { ...simple, batteries: [battery, second] }
    expect(computeCircuit(two).result.bareSources).toEqual(['second'])
    const fused = {
      ...simple,
      batteries: [battery, { ...second, plus: 'q' }],
      fuses: [...(simple.fuses ?? []), { id: 'second-main', from: 'q', to: 'a', ratingA: 400, breakingA: 5000 }]
    }
    const { bareSources, cables } = computeCircuit(fused).result
    expect(bareSources).toEqual([])
    expect(cables[0]).toMatchObject({ fromStartA: 150, fromEndA: 400, guarded: false })
    expect(codes(fused)).toContain('cable-unguarded stop')
  })

  it('stops a cable that its load overheats, in the return and before the first fuse too', () => {
    const thin = { designation: '8 AWG', conductor: 'copper', lengthM: 0.3, joints: 0, insulationC: 105 } as const
    const place = { ambientC: 30, bundledConductors: 1 } as const
    const lead = (id: string, from: string, to: string) => ({ id, from, to, ...thin, ...place })
    const ground = {
      ...simple,
      cables: [...(simple.cables ?? []), lead('ground', 'g', 'm')],
      amplifiers: [{ id: 'bass', plus: 'a', minus: 'g', ...amplifier }]
    }
    const tail = {
      ...simple,
      cables: [...(simple.cables ?? []), lead('tail', 'p', 't')],
      fuses: [{ id: 'main', from: 't', to: 'f', ratingA: 150, breakingA: 5000 }]
    }
    for (const request of [ground, tail]) {
      // 8 AWG, 105 °C, 30 °C: 80 A (33 CFR 183.425 Table 5); the load is 147 A at 12 V
      const [found, ...more] = computeCircuit(request).cautions.filter(({ code }) => code === 'cable-overloaded')
      expect(found).toMatchObject({ level: 'stop', at: 'cables[1]' })
      expect(more).toEqual([])
    }
    const { ambientC: _, ...unplaced } = lead('ground', 'g', 'm')
    expect(codes({ ...ground, cables: [...(simple.cables ?? []), unplaced] })).toContain('cable-overloaded care')
  })

  it('stops batteries of unlike chemistry that are tied together, not those that a relay keeps for itself', () => {
    const agm = { ...battery, chemistry: 'agm' } as const
    const joined = (chemistry: 'agm' | 'lithium' | undefined, plus: string): CircuitRequest => ({
      ...simple,
      batteries: [agm, { ...battery, id: 'second', plus, ...(chemistry === undefined ? {} : { chemistry }) }],
      fuses: [...(simple.fuses ?? []), { id: 'second-main', from: 'q', to: 'a', ratingA: 150, breakingA: 5000 }]
    })
    const code = 'unlike-batteries-parallel'
    expect(codes(joined('lithium', 'q'))).toContain(`${code} stop`)
    expect(codes(joined(undefined, 'q'))).toContain(`${code} care`)
    expect(codes(joined('agm', 'q')).join()).not.toContain(code)
    const apart = { ...joined('lithium', 'alone'), fuses: simple.fuses ?? [] }
    expect(codes(apart).join()).not.toContain(code)
  })

  it('opens the relay with the engine, and says what it leaves dark', () => {
    const relay = { id: 'relay', from: 'p2', to: 'p', resistanceOhm: 0.0004, opensWithoutEngine: true }
    const switched = {
      ...simple,
      fuses: [{ id: 'main', from: 'p2', to: 'f', ratingA: 150, breakingA: 5000 }],
      links: [relay]
    }
    expect(stateAt(switched, 'average', 'off')?.withoutSupply).toEqual(['bass'])
    expect(stateAt(switched, 'average', 'idling')?.withoutSupply).toEqual([])
    expect(codes(switched)).toContain('no-supply care')
  })

  it('turns the starter in a cold start: 12.6 V · R/(R + 6 mΩ), the amplifier off', () => {
    const off = { id: 'bass', plus: 'a', minus: 'm', ...amplifier, quiescentW: 0 }
    const cold = { ...simple, amplifiers: [off], starter: { plus: 'p', minus: 'm', resistanceOhm: 0.03 } }
    expect(partAt(cold, 'starter', 'cold-start', 'cranking')?.voltageV).toBeCloseTo((12.6 * 30) / 36, 6)
  })
})

describe('POST /v1/supply/circuit', () => {
  const bad: readonly (readonly [string, CircuitRequest, string])[] = [
    ['a name used twice', { ...simple, batteries: [battery, battery] }, '/batteries/1'],
    ['a part with no source', { ...simple, links: [{ id: 'l', from: 'x', to: 'y', resistanceOhm: 1 }] }, '/links/0'],
    ['a part on one point', { ...simple, links: [{ id: 'l', from: 'p', to: 'p', resistanceOhm: 1 }] }, '/links/0'],
    [
      'a fuse of too low a voltage',
      { ...simple, fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: 150, ratedVoltageV: 10 }] },
      '/fuses/0/ratedVoltageV'
    ]
  ]
  for (const [name, request, pointer] of bad) {
    it(`refuses ${name}`, async () => {
      const { status, body } = await post('/v1/supply/circuit', request)
      expect(status).toBe(422)
      expect(JSON.stringify(body)).toContain(pointer)
    })
  }
})
