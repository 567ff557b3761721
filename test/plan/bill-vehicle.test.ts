import { describe, expect, it } from 'vitest'
import type { PlanCircuit } from '../../src/contract/systems/plan-circuit.ts'
import { vehicleRows } from '../../src/plan/bill/bill-vehicle.ts'

const fuse = { ratingA: 100 } as NonNullable<PlanCircuit['branches'][number]['fuse']>
const run = { designation: '4 AWG', runs: 2, fuse, positiveLengthM: 5, returnBy: 'body' as const, returnLengthM: 0.5 }
const circuit = { amplifiers: ['bass'], trunk: run, branches: [] } as unknown as PlanCircuit
const needs = (given: PlanCircuit, tailM = 0) =>
  Object.fromEntries(vehicleRows(given, tailM).map(({ part, need }) => [part, need]))

describe('small things of the vehicle', () => {
  it('counts a bolt for each lead to the body, four for an amplifier, a label for each fuse and one for the wall', () => {
    expect(needs(circuit)).toEqual({ 'amplifier-bolt': 4, 'ground-bolt': 2, 'metal-guard': 1, 'cable-label': 3 })
    const branch = { ...run, runs: 1, amplifier: 'doors' }
    const split = {
      ...circuit,
      amplifiers: ['bass', 'doors'],
      trunk: { ...run, runs: 1, returnLengthM: 0 },
      branches: [branch, branch]
    }
    expect(needs(split as PlanCircuit)).toEqual({
      'amplifier-bolt': 8,
      'ground-bolt': 2,
      'metal-guard': 1,
      'cable-label': 4
    })
    // a second battery: a fuse at its post, one more at the far end of the trunk
    const tied = { ...split, trunk: { ...split.trunk, endFuse: fuse }, secondBattery: { lead: { ...run, runs: 1 } } }
    expect(needs(tied as unknown as PlanCircuit)['cable-label']).toBe(6)
  })

  it('needs no ground bolt where a cable goes back, and a sheath as long as all pieces before the fuses', () => {
    expect(needs({ ...circuit, trunk: { ...run, returnBy: 'cable' } })).not.toHaveProperty('ground-bolt')
    expect(needs(circuit, 0.25).sheath).toBeCloseTo(0.5, 12)
  })
})
