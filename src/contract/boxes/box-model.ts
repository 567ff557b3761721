/** Answer of the 3D model. */
import Type from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import { Point3Body } from './panel.ts'
import { bodyKinds } from './words.ts'

const ModelBody = component('ModelBody', 'One thing of the model, where it stands in the box.', {
  name: Type.String({ description: 'Name, as in the cut list or on the clearances; that of its node in the model' }),
  kind: choice('What it is', bodyKinds),
  lowest: ref(Point3Body, 'Corner of the block round it that lies left, in front and low'),
  highest: ref(Point3Body, 'The corner across'),
  volumeL: quantity('L', 'What it fills as it is shown: a board less its holes, a tube without its bore')
})

export const BoxModelResult = component('BoxModel', 'A box as what it is put together from.', {
  bodies: Type.Array(ref(ModelBody), { description: 'Boards first, one by one, then what is set into them' })
})
