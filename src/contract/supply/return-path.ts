/** The way back of a supply cable. */
import Type from 'typebox'
import { byTag, component } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import { bodies } from './words.ts'

const ReturnCable = component('ReturnCable', 'A return conductor of the size of the positive.', {
  kind: Type.Literal('cable', { description: 'Return by cable' }),
  lengthM: quantity('m', 'Conductor length of the return', { from: 0, to: 50 })
})
const ReturnChassis = component('ReturnChassis', 'The body as return, behind a short ground lead.', {
  kind: Type.Literal('chassis', { description: 'Return through the body' }),
  leadLengthM: Type.Optional(quantity('m', 'Ground lead, of the size of the positive', { from: 0, to: 50 })),
  resistanceOhm: Type.Optional(quantity('Ω', 'Body between ground bolt and battery post', { from: 0, to: 1 })),
  body: Type.Optional(choice('What the body is made of', bodies))
})
export const ReturnPath = byTag('ReturnPath', 'The way back to the battery.', 'kind', [ReturnCable, ReturnChassis])
