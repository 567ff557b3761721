/** The conductors of a plan, on the wire. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { ChosenFuse } from '../supply/fuse.ts'

const runFields = {
  designation: Type.String({ description: 'Size with its series' }),
  runs: Type.Integer({ description: 'Equal cables side by side, each with a fuse of its own' }),
  positiveLengthM: quantity('m', 'Positive conductor, of one cable'),
  returnBy: choice('`body`: a lead to bare metal; `cable`: a return conductor', ['body', 'cable']),
  returnLengthM: quantity('m', 'Return conductor or lead, of one cable; 0 where the branches have it'),
  fuse: Type.Optional(ref(ChosenFuse, 'Of each cable; absent where none could be rated'))
}
const Trunk = component('PlanTrunk', 'From the battery to the amplifier, or to the distribution block.', runFields)
const Branch = component('PlanBranch', 'From the distribution block to one amplifier.', {
  amplifier: Type.String({ description: 'Amplifier it feeds' }),
  ...runFields
})

const SpeakerWire = component('PlanSpeakerWire', 'Two-core loudspeaker wire of one size.', {
  designation: Type.String({ description: 'Size with its series' }),
  areaMm2: quantity('mm²', 'Conductor section'),
  lengthM: quantity('m', 'Length of one'),
  count: Type.Integer({ description: 'How many of them' }),
  currentA: quantity('A', 'Full sine in one of them, RMS')
})

const SignalLead = component('PlanSignalLead', 'From the source to the amplifier.', {
  kind: choice('`screened` for a line level; `twisted-pair` for a loudspeaker level, without a screen', [
    'screened',
    'twisted-pair'
  ]),
  name: Type.String({ description: 'What to buy' }),
  lengthM: quantity('m', 'Length of one'),
  count: Type.Integer({ description: 'How many of them' }),
  converter: Type.Boolean({ description: 'Whether it ends in a line-output converter beside the amplifier' }),
  turnOnLengthM: quantity('m', 'Turn-on wire; 0 where the source switches none')
})

const NotPlanned = component('PlanNotPlanned', 'A part of the system that this plan leaves out.', {
  what: Type.String({ description: 'The part' }),
  text: Type.String({ description: 'What is missing of it' }),
  level: choice('Gravity', ['note', 'care', 'stop'])
})

export const PlanCircuitBody = component(
  'PlanCircuit',
  'Every conductor once, with size, length and fuse; bill, picture and steps show these.',
  {
    amplifiers: Type.Array(Type.String(), { description: 'Amplifiers on the run, the bass amplifier first' }),
    trunk: Type.Optional(ref(Trunk, 'Absent where no size passes')),
    branches: Type.Array(ref(Branch), { description: 'Behind the block; empty with one amplifier' }),
    speakerWire: Type.Optional(ref(SpeakerWire, 'From each output to the box; absent where no size fits')),
    insideWire: Type.Optional(ref(SpeakerWire, 'To each driver inside the box, by its share of the current')),
    signalLead: ref(SignalLead),
    notPlanned: Type.Array(ref(NotPlanned), { description: 'In no bill and no picture' })
  }
)
export interface PlanCircuit extends Si<Static<typeof PlanCircuitBody>> {}
