/** Schemas of joints and steps, shared by coil wiring and amplifier matching. */
import Type from 'typebox'
import { component, ref } from '../field/component.ts'

const Joint = component('CoilJoint', 'Terminals that are joined together.', {
  name: Type.String({ description: '`amplifier +`, `amplifier -`, or a joint between coils' }),
  terminals: Type.Array(Type.String({ description: 'Terminal of a coil' }), {
    description: 'The terminals that meet here'
  })
})

export const wiringFields = {
  joints: Type.Array(ref(Joint), { description: 'Every joint, the two of the amplifier first' }),
  steps: Type.Array(Type.String({ description: 'One step' }), {
    description: 'The work in its order, ending with the checks'
  })
}
