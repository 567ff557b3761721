import { describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { nearestName } from '../../src/http/wire/request/nearest-name.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'
import { schemaFaults } from '../../src/http/wire/request/schema-faults.ts'

const names = ['systemVoltageV', 'positiveLengthM', 'return', 'fuseDistanceMm']

describe('the field that was meant', () => {
  it('differs by two letters at most, or holds what was written', () => {
    expect(nearestName('lengthM', names)).toBe('positiveLengthM')
    expect(nearestName('fuseDistanceM', names)).toBe('fuseDistanceMm')
    expect(nearestName('SystemVoltage', names)).toBe('systemVoltageV')
    expect(nearestName('retrun', names)).toBe('return')
  })

  it('is not guessed from nothing, nor sought in a name without end', () => {
    expect(nearestName('colour', names)).toBeUndefined()
    expect(nearestName('x', names)).toBeUndefined()
    expect(nearestName('return'.repeat(1e5), names)).toBeUndefined()
  })

  it('is said beside the fault', () => {
    const valid = requestValidator().compile(planSystem.body)
    const { positiveLengthM: lengthM, ...supply } = estatePlan.supply
    expect(valid({ ...estatePlan, supply: { ...supply, lengthM, colour: 'red' } })).toBe(false)
    const details = Object.fromEntries(schemaFaults(valid.errors ?? []).map(({ pointer, detail }) => [pointer, detail]))
    expect(details['/supply/lengthM']).toBe('The contract has no such field. Did you mean positiveLengthM?')
    expect(details['/supply/colour']).toBe('The contract has no such field.')
  })
})
