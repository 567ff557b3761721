/** Schemas of the car around the seat. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const MeasuredTransferBody = component(
  'MeasuredTransfer',
  'What a microphone at the seat found, against half space at 1 m.',
  {
    frequencyHz: list('Frequencies, rising', quantity('Hz', 'Frequency', { from: 1, to: 20_000 }), 2, 512),
    gainDb: list(
      'Level at the seat over the level in half space at 1 m, one for each frequency',
      quantity('dB', 'Gain', { from: -60, to: 60 }),
      2,
      512
    )
  }
)
export interface MeasuredTransfer extends Si<Static<typeof MeasuredTransferBody>> {}

export const CabinBody = component(
  'Cabin',
  'The car around the seat: volume or length for the pressure-vessel model, or a measured curve, which takes its place.',
  {
    volumeL: Type.Optional(
      quantity('L', 'Air volume of the cabin, boot included if open to it', { from: 500, to: 30_000 })
    ),
    lengthM: Type.Optional(quantity('m', 'Longest inner dimension of the cabin', { from: 0.8, to: 10 })),
    cornerQ: Type.Optional(quantity('1', 'Q of the corner below which the level rises', { from: 0.3, to: 3 })),
    leakCornerHz: Type.Optional(quantity('Hz', 'Corner below which leaks stop the rise', { from: 0.5, to: 100 })),
    leakQ: Type.Optional(quantity('1', 'Q of that corner', { from: 0.3, to: 3 })),
    measured: Type.Optional(ref(MeasuredTransferBody))
  }
)
export interface Cabin extends Si<Static<typeof CabinBody>> {}

export const CabinModelBody = component('CabinModel', 'How the level at the seat was reached.', {
  model: choice('`pressure-vessel`: modelled. `measured`: the curve given', ['pressure-vessel', 'measured']),
  cornerHz: Type.Optional(quantity('Hz', 'Below it the cabin acts as a pressure vessel')),
  lowestModeHz: Type.Optional(quantity('Hz', 'Lowest standing wave of the cabin; the model leaves it out')),
  leakCornerHz: Type.Optional(quantity('Hz', 'Corner below which leaks stop the rise')),
  uncertaintyDb: quantity('dB', 'Real cars lie within ± this of the curve; 0 for a measured one')
})
export interface CabinModel extends Si<Static<typeof CabinModelBody>> {}
