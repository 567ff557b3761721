/** A cold start, music with the engine off, and charging that the vehicle governs: Ohm’s law by hand, no code of the circuit. */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'
import { supplyCircuit } from '../../../src/http/operations/supply/supply-circuit.ts'
import { postTo } from '../../support/post-to.ts'

const battery = { id: 'battery', plus: 'p', minus: 'm', openCircuitV: 12.6, resistanceOhm: 0.008, chargingOhm: 0.2 }
const alternator = { id: 'alternator', plus: 'p', minus: 'm', setV: 13.8, idleA: 60, drivingA: 120, slopeOhm: 1e-4 }
const car: CircuitRequest = {
  systemVoltageV: 12,
  batteries: [battery],
  alternators: [alternator],
  fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: 100, resistanceOhm: 0.0009, breakingA: 6000 }],
  links: [{ id: 'run', from: 'f', to: 'a', resistanceOhm: 0.0031 }],
  amplifiers: [
    {
      ...{ id: 'bass', plus: 'a', minus: 'm', powerW: 800, class: 'D', efficiency: 0.8, quiescentW: 12 },
      ...{ regulation: 'regulated', dropOutV: 10.5 }
    }
  ],
  accessories: [{ id: 'vehicle', plus: 'p', minus: 'm', currentA: 30, parkedA: 2 }],
  starter: { plus: 'p', minus: 'm', resistanceOhm: 0.024 }
}
const told = (request: CircuitRequest, code: string) =>
  computeCircuit(request).cautions.find(caution => caution.code === code)
const atBass = (request: CircuitRequest, level: string, engine: string) =>
  computeCircuit(request)
    .result.states.find(state => state.level === level && state.engine === engine)
    ?.parts.find(({ id }) => id === 'bass')?.voltageV ?? Number.NaN

describe('a cold start', () => {
  it('leaves 12.6 V · 24/(24 + 8), less what the parked car and the idle amplifier take', () => {
    // 2 A and 12 W at 9.4 V: 3.3 A over 8 parallel 24 mΩ
    const bareV = (12.6 * 24) / 32
    const takenV = (2 + 12 / 9.4) * 0.006
    expect(atBass(car, 'cold-start', 'cranking')).toBeCloseTo(bareV - takenV - (12 / 9.4) * 0.004, 3)
    expect(told(car, 'cold-start')).toMatchObject({ level: 'note', at: 'starter' })
    expect(told(car, 'cold-start')?.message).toContain('9.43 V')
  })

  it('is no matter where a battery of its own feeds the amplifier, nor without a starter', () => {
    const apart: CircuitRequest = {
      ...car,
      batteries: [battery, { ...battery, id: 'second', plus: 'q' }],
      fuses: [
        { id: 'main', from: 'p', to: 'r', ratingA: 100, breakingA: 6000 },
        { id: 'own', from: 'q', to: 'f', ratingA: 100, breakingA: 6000 }
      ],
      links: [
        ...(car.links ?? []),
        { id: 'relay', from: 'r', to: 'f', resistanceOhm: 0.0004, opensWithoutEngine: true }
      ]
    }
    const { starter: _, ...still } = car
    for (const request of [apart, still])
      for (const code of ['cold-start', 'late-cut-off']) expect(told(request, code), code).toBeUndefined()
  })

  it('puts nothing but itself into the words: what fails while driving stays what it was', () => {
    const { starter: _, ...still } = car
    const others = (request: CircuitRequest) =>
      computeCircuit(request).cautions.filter(({ code }) => code !== 'cold-start' && code !== 'late-cut-off')
    expect(others(car)).toEqual(others(still))
  })
})

describe('music with the engine off', () => {
  it('is there with dense bass too: 8 + 4 mΩ before 337 W by the closed form of one load', () => {
    // idle power and a third of the way to full: (1000 − 12)/3 + 12 W, and 2 A of the parked car before
    const powerW = 988 / 3 + 12
    const openV = 12.6 - 2 * 0.008
    const byHand = openV / 2 + Math.sqrt((openV / 2) ** 2 - powerW * 0.012)
    expect(atBass(car, 'heavy', 'off')).toBeCloseTo(byHand, 4)
  })

  it('goes on long after the battery is half empty: it stops at 12.6 V less what is left above 10.5 V', () => {
    const leftV = atBass(car, 'average', 'off') - 10.5
    const caution = told(car, 'late-cut-off')
    expect(caution?.figures).toMatchObject({
      halfV: expect.closeTo(12.2, 9),
      stopsAtV: expect.closeTo(12.6 - leftV, 9)
    })
    const early: CircuitRequest = { ...car, amplifiers: car.amplifiers.map(each => ({ ...each, dropOutV: 12.1 })) }
    expect(told(early, 'late-cut-off')).toBeUndefined()
  })
})

describe('charging that the vehicle governs', () => {
  const governed: CircuitRequest = { ...car, alternators: [{ ...alternator, lowestSetV: 12.2, highestSetV: 15 }] }
  const setTo = (setV: number): CircuitRequest => ({ ...car, alternators: [{ ...alternator, setV }] })

  it('is told at both its ends, each as a circuit that holds that voltage', () => {
    const { figures, level } = told(governed, 'governed-charging') ?? {}
    expect(level).toBe('note')
    expect(figures?.lowV).toBeCloseTo(atBass(setTo(12.2), 'heavy', 'driving'), 9)
    expect(figures?.highV).toBeCloseTo(atBass(setTo(15), 'heavy', 'driving'), 9)
    expect(told(car, 'governed-charging')).toBeUndefined()
  })

  it('is care where its low end leaves less than the amplifier needs', () => {
    const needy = { ...governed, amplifiers: car.amplifiers.map(each => ({ ...each, dropOutV: 12.4 })) }
    expect(told(needy, 'governed-charging')?.level).toBe('care')
  })

  it('is refused where the voltage it holds lies outside, and judges the fuse by its high end', async () => {
    const post = postTo(supplyCircuit)
    const outside = await post('/v1/supply/circuit', { ...governed, alternators: [{ ...alternator, lowestSetV: 14 }] })
    expect([outside.status, outside.body.errors[0].pointer]).toEqual([422, '/alternators/0/setV'])
    const low = { ...governed, fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: 100, ratedVoltageV: 14 }] }
    expect((await post('/v1/supply/circuit', low)).status).toBe(422)
  })
})
