/** Random vehicles against a nodal solution of our own, written from the request alone; the simulator beside it: scripts/bench/circuit-oracles.ts. */
import { describe, expect, it } from 'vitest'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'
import { circuitOf, nodalVolts } from '../../support/circuit-oracle.ts'
import { randomCircuit } from '../../support/random-circuits.ts'
import { seeded } from '../../support/random-requests.ts'

const moments = [
  { level: 'heavy', engine: 'idling' },
  { level: 'full-sine', engine: 'driving' },
  { level: 'average', engine: 'off' }
] as const

describe('a whole circuit solved by other hands', () => {
  it('has the same voltage at every point of six random vehicles', () => {
    const random = seeded(31)
    let compared = 0
    let lost = 0
    for (let turn = 0; turn < 6; turn++) {
      const request = randomCircuit(random)
      const { states } = computeCircuit(request).result
      for (const moment of moments) {
        const state = states.find(({ level, engine }) => level === moment.level && engine === moment.engine)
        const circuit = circuitOf(request, moment, () => undefined)
        const points = (states[0]?.points ?? []).map(({ point }) => point).filter(point => point !== circuit.reference)
        const volts = nodalVolts(circuit, points)
        // where a battery takes over from an alternator the other way may stop short
        if (volts === undefined) lost++
        for (const { point, voltageV } of volts === undefined ? [] : (state?.points ?? [])) {
          compared++
          expect(Math.abs(voltageV - (volts?.get(point) ?? 0)), `${turn} ${point}`).toBeLessThan(1e-5)
        }
      }
    }
    expect(compared).toBeGreaterThan(100)
    expect(lost).toBeLessThanOrEqual(2)
  })
})
