/** POST /v1/coils/wiring */
import Type from 'typebox'
import { wireCoils as compute } from '../../domain/coils/wire-coils.ts'
import { defineOperation } from '../operation.ts'
import { component, ref } from '../schemas/component.ts'
import { count, list, quantity } from '../schemas/quantities.ts'

const Body = component('CoilWiringRequest', 'Equal coils to be joined to one load.', {
  driverCount: count('Drivers', 1, 16),
  coilsPerDriver: count('Voice coils of each driver', 1, 4),
  coilOhm: quantity('Ω', 'Rated impedance of one coil', { above: 0, to: 64 }),
  totalPowerW: Type.Optional(quantity('W', 'Power into the whole load', { above: 0, to: 100_000 }))
})

const Load = component('CoilLoad', 'One way of joining the coils.', {
  ohm: quantity('Ω', 'Load the amplifier sees'),
  coilPowerW: Type.Optional(quantity('W', 'Power in each coil'))
})

const Result = component('CoilWiringResult', 'The loads the coils can present.', {
  loads: list('Loads, ascending', ref(Load), 1, 64)
})

export const wireCoils = defineOperation({
  path: '/v1/coils/wiring',
  operationId: 'wireCoils',
  tag: 'Coils and amplifier',
  summary: 'Loads that drivers and coils can present',
  description:
    'Every balanced way of joining equal coils, with the load the amplifier sees and the share of each coil.',
  body: Body,
  result: Result,
  compute,
  examples: {
    twoDrivers: {
      summary: 'Two single-coil drivers',
      request: { driverCount: 2, coilsPerDriver: 1, coilOhm: 4, totalPowerW: 800 }
    }
  }
})
