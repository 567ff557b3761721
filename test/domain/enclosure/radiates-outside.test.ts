/** An enclosure of the caller's own that sends nothing outside is refused: its levels would be the noise of the arithmetic. */
import { describe, expect, it } from 'vitest'
import type { CustomEnclosureRequest } from '../../../src/contract/enclosures/enclosure.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'

const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4 }
const chambers = [
  { name: 'back', netVolumeM3: 0.04 },
  { name: 'front', netVolumeM3: 0.02 }
] as const
const cone = { name: 'cone', front: 'front', rear: 'back' } as const
const tube = { name: 'tube', areaM2: 0.01, lengthM: 0.2 } as const
const respond = (enclosure: Omit<CustomEnclosureRequest, 'kind'>) =>
  computeResponse({
    driver,
    enclosure: { kind: 'custom', ...enclosure },
    source: { voltageV: 20 },
    frequenciesHz: [30, 60]
  })

function refusal(enclosure: Omit<CustomEnclosureRequest, 'kind'>) {
  try {
    respond(enclosure)
  } catch (error) {
    return error as { code: string; faults: { field: string; detail: string }[] }
  }
  return undefined
}

describe('an enclosure that nothing is heard of', () => {
  it('is refused where both chambers are closed, and where what opens them leads elsewhere', () => {
    const closed = refusal({ chambers, driverGroups: [cone] })
    expect(closed?.code).toBe('conflicting-input')
    expect(closed?.faults[0]?.field).toBe('enclosure.driverGroups')
    expect(closed?.faults[0]?.detail).toContain('outside')
    expect(refusal({ chambers, driverGroups: [cone], ports: [{ ...tube, from: 'front', to: 'back' }] })).toBeDefined()
    expect(refusal({ chambers, driverGroups: [cone], ports: [{ ...tube, from: 'front', to: 'behind' }] })).toBeDefined()
    expect(refusal({ chambers, driverGroups: [{ ...cone, front: 'behind' }] })).toBeDefined()
  })

  it('is refused where the only opening belongs to a chamber that nothing drives', () => {
    const three = [...chambers, { name: 'spare', netVolumeM3: 0.01 }]
    const ports = [{ ...tube, from: 'spare', to: 'outside' }]
    expect(refusal({ chambers: three, driverGroups: [cone], ports })).toBeDefined()
    const joined = [...ports, { ...tube, name: 'inner', from: 'front', to: 'spare' }]
    expect(refusal({ chambers: three, driverGroups: [cone], ports: joined })).toBeUndefined()
  })

  it('is refused where both faces of a cone look at one place, which hears their difference: nothing', () => {
    for (const place of ['outside', 'back', 'behind']) {
      const found = refusal({ chambers, driverGroups: [{ name: 'cone', front: place, rear: place }] })
      expect(found?.faults[0]?.field).toBe('enclosure.driverGroups[0].rear')
    }
  })

  it('is answered where a cone, a port, a radiator or a leak leads outside, and its level is then that of sound', () => {
    const unit = { name: 'unit', from: 'front', to: 'outside', areaM2: 0.05, massKg: 0.4, complianceMPerN: 3e-4 }
    const systems: readonly Omit<CustomEnclosureRequest, 'kind'>[] = [
      { chambers, driverGroups: [{ ...cone, front: 'outside' }] },
      { chambers, driverGroups: [{ ...cone, rear: 'behind' }], ports: [{ ...tube, from: 'outside', to: 'front' }] },
      { chambers, driverGroups: [cone], passiveRadiators: [unit] },
      { chambers, driverGroups: [cone], leaks: [{ from: 'back', to: 'outside', resistancePaSPerM3: 1e5 }] },
      { chambers: [chambers[0], { ...chambers[1], leakQ: 5, lossHz: 40 }], driverGroups: [cone] }
    ]
    for (const system of systems) {
      expect(refusal(system)).toBeUndefined()
      expect(respond(system).result.curves.levelDb[0]).toBeGreaterThan(60)
    }
  })
})
