import { describe, expect, it } from 'vitest'
import { wireCoils } from '../../../src/domain/coils/wire-coils.ts'

describe('coil wiring', () => {
  it('presents two 4 Ω coils as 2 Ω or 8 Ω (series and parallel connection)', () => {
    const { result } = wireCoils({ driverCount: 2, coilsPerDriver: 1, coilOhm: 4 })
    expect(result.loads.map(load => load.ohm)).toEqual([2, 8])
  })
})
