/** A sheet material on the wire: a name from the table, and whatever the caller knows better. */
import Type, { type Static } from 'typebox'
import { component } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { boardIds } from './words.ts'

export const BoardBody = component('Board', 'The board a box is made of; what is left out comes from the table.', {
  material: Type.Optional(choice('Board', boardIds)),
  densityKgPerM3: Type.Optional(quantity('kg/m³', 'Density', { from: 50, to: 10_000 })),
  elasticModulusGpa: Type.Optional(
    quantity('GPa', 'Modulus in bending, along the face grain', { from: 0.01, to: 500 })
  ),
  acrossModulusGpa: Type.Optional(quantity('GPa', 'Modulus in bending across the face grain', { from: 0.01, to: 500 })),
  shearModulusGpa: Type.Optional(quantity('GPa', 'Shear modulus in the plane of the board', { from: 0.001, to: 500 })),
  poisson: Type.Optional(quantity('1', 'Poisson ratio, strain along to stress across', { from: 0, to: 0.49 }))
})
export interface BoardGiven extends Si<Static<typeof BoardBody>> {}
