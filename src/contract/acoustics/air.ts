/** Schema of the air, either by its state or by its two properties. */
import Type, { type Static } from 'typebox'
import { component } from '../field/component.ts'
import { quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

export const AirBody = component(
  'Air',
  'Either temperature and pressure, or density and speed of sound. Absent: dry air at 20 °C and 101 325 Pa.',
  {
    temperatureC: Type.Optional(quantity('°C', 'Air temperature', { from: -60, to: 90 })),
    pressurePa: Type.Optional(quantity('Pa', 'Static pressure', { from: 30_000, to: 120_000 })),
    densityKgPerM3: Type.Optional(quantity('kg/m³', 'Density', { from: 0.1, to: 5 })),
    soundSpeedMPerS: Type.Optional(quantity('m/s', 'Speed of sound', { from: 100, to: 1000 }))
  }
)
export interface AirRequest extends Si<Static<typeof AirBody>> {}
