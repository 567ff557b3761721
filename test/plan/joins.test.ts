/** One figure in every part that takes it: each example, and cars that differ from it in one thing. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'
import { joinFaults } from '../support/plan-joins.ts'

const { amplifier, supply, board, car, driver, signal } = hatchbackPlan
const doors = { name: 'doors', powerW: 200, class: 'AB', regulation: 'regulated' }
const second = { arrangement: 'isolated', capacityAh: 80, chemistry: 'flooded' }

/** The hatchback is quick to plan: one thing is changed at a time. */
const changes: Readonly<Record<string, object>> = {
  'two drivers': {
    driverCount: 2,
    enclosure: { kind: 'closed', netVolumeL: 60 },
    car: { space: { widthMm: 1000, heightMm: 420, depthMm: 420 } }
  },
  'three outputs': {
    driverCount: 3,
    amplifier: { ...amplifier, channels: 3, ratings: [{ loadOhm: 4, powerW: 300 }], minimumOhm: 4 },
    enclosure: { kind: 'closed', netVolumeL: 90 },
    car: { space: { widthMm: 1300, heightMm: 420, depthMm: 420 } }
  },
  'a heavy van, lined': {
    car: { ...car, massKg: 2600, cabin: { lengthM: 3 } },
    finish: { lined: true, covered: true },
    air: { temperatureC: 5 }
  },
  'a second board in front and other sheets': {
    board: { ...board, frontLayers: 2, sheet: { lengthMm: 1525, widthMm: 1525, kerfMm: 4 } }
  },
  'an amplifier of the doors': { supply: { ...supply, otherAmplifiers: [doors] } },
  'a second battery': { supply: { ...supply, secondBattery: second } },
  'a capacitor': { supply: { ...supply, capacitor: { capacitanceF: 2 } } },
  'a light driver': { driver: { ...driver, mounting: { ...driver.mounting, massKg: 4, screwCount: 6 } } },
  'less gain': { signal: { ...signal, gainPowerW: 150 } }
}

const faultsOf = (wire: unknown) => {
  const request = toSi(wire) as PlanRequest
  return joinFaults(request, planSystem(request).result)
}

describe('what one part hands to the next', () => {
  it.each(Object.entries(changes))('is the same in both: %s', (_, change) => {
    expect(faultsOf({ ...hatchbackPlan, ...change })).toEqual([])
  })

  it.each(Object.entries({ estatePlan, hatchbackPlan, leaningPlan }))('is the same in both: %s', (_, wire) => {
    expect(faultsOf(wire)).toEqual([])
  })
})
