/**
 * Twice the copper, twice the batteries and twice the power: every voltage stays and every current doubles (Kirchhoff’s laws hold
 * for k·I over R/k as for I over R).
 */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'
import { randomCircuit } from '../../support/random-circuits.ts'
import { seeded } from '../../support/random-requests.ts'

/** What is stated in amperes, watts and ohms; a rating in volts stays. */
const rises = new Set(['powerW', 'quiescentW', 'idleA', 'drivingA', 'currentA', 'parkedA', 'ratingA'])
const falls = new Set(['resistanceOhm', 'chargingOhm', 'slopeOhm'])

function scaled<Value>(value: Value, k: number): Value {
  if (Array.isArray(value)) return value.map(each => scaled(each, k)) as Value
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => {
      if (typeof inner !== 'number') return [name, scaled(inner, k)]
      return [name, rises.has(name) ? inner * k : falls.has(name) ? inner / k : inner]
    })
  ) as Value
}

const states = (request: CircuitRequest) =>
  computeCircuit(request).result.states.map(({ level, engine, stands, parts }) => ({ level, engine, stands, parts }))

describe('a vehicle of random wires', () => {
  for (const k of [0.5, 3])
    it(`with ${k} times of everything has its voltages, and ${k} times its currents`, () => {
      const random = seeded(77)
      let standing = 0
      for (let n = 0; n < 25; n++) {
        const request = randomCircuit(random)
        const [ones, others] = [states(request), states(scaled(request, k))]
        expect(others.map(({ stands }) => stands)).toEqual(ones.map(({ stands }) => stands))
        ones.forEach(({ parts, stands }, at) => {
          if (!stands) return
          standing++
          parts.forEach(({ id, voltageV, currentA }, place) => {
            const other = others[at]?.parts[place]
            expect(other?.id).toBe(id)
            expect(other?.voltageV).toBeCloseTo(voltageV, 3)
            expect((other?.currentA ?? 0) / k).toBeCloseTo(currentA, 2)
          })
        })
      }
      expect(standing).toBeGreaterThan(50)
    })
})
