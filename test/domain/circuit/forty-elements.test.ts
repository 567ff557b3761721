/** The circuit whose time `scripts/bench/circuit.ts` tells is one, and is solved. */
import { describe, expect, it } from 'vitest'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'
import { circuitOf, nodalVolts } from '../../support/circuit-oracle.ts'
import { fortyElements } from '../../support/forty-elements.ts'
import { seeded } from '../../support/random-requests.ts'

const moments = [
  { level: 'heavy', engine: 'idling' },
  { level: 'average', engine: 'off' }
] as const

describe('a vehicle of forty elements', () => {
  it.each([1, 2])('has forty, and the voltages of a nodal solution written from the request alone, seed %s', seed => {
    const request = fortyElements(seeded(seed))
    const { states } = computeCircuit(request).result
    let compared = 0
    for (const { level, engine } of moments) {
      const state = states.find(each => each.level === level && each.engine === engine)
      if (engine !== 'off') expect(state?.parts).toHaveLength(40)
      const circuit = circuitOf(request, { level, engine }, () => undefined)
      const points = (state?.points ?? []).map(({ point }) => point).filter(point => point !== circuit.reference)
      const volts = nodalVolts(circuit, points)
      expect(points.length).toBeGreaterThan(20)
      if (volts === undefined) continue
      compared++
      for (const { point, voltageV } of state?.points ?? [])
        if (point !== circuit.reference) expect(voltageV, point).toBeCloseTo(volts.get(point) ?? Number.NaN, 5)
    }
    expect(compared).toBe(2)
  })
})
