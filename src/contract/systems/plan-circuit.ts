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
  fuse: Type.Optional(ref(ChosenFuse, 'Of each cable; absent where none could be rated')),
  endFuse: Type.Optional(ref(ChosenFuse, 'Of each cable at its far end, where a second battery feeds that too'))
}
const Lead = component('PlanLead', 'A cable with its way back and its fuse.', runFields)
export interface PowerRun extends Si<Static<typeof Lead>> {}
const Trunk = component('PlanTrunk', 'From the battery to the amplifier, or to the distribution block.', runFields)
const Branch = component('PlanBranch', 'From the distribution block to one amplifier.', {
  amplifier: Type.String({ description: 'Amplifier it feeds' }),
  ...runFields
})

export const SpeakerWire = component('PlanSpeakerWire', 'Two-core loudspeaker wire of one size.', {
  designation: Type.String({ description: 'Size with its series' }),
  areaMm2: quantity('mm²', 'Conductor section'),
  lengthM: quantity('m', 'Length of one'),
  count: Type.Integer({ description: 'How many of them' }),
  currentA: quantity('A', 'Full sine in one of them, RMS')
})
export interface SpeakerWire extends Si<Static<typeof SpeakerWire>> {}

const SignalLead = component('PlanSignalLead', 'From the source to the amplifier.', {
  kind: choice('`screened` for a line level; `twisted-pair` for a loudspeaker level, without a screen', [
    'screened',
    'twisted-pair'
  ]),
  name: Type.String({ description: 'What to buy' }),
  lengthM: quantity('m', 'Length of one'),
  count: Type.Integer({ description: 'How many of them' }),
  converter: Type.Boolean({ description: 'Whether it ends in a line-output converter beside the amplifier' }),
  turnOnLengthM: quantity('m', 'Turn-on wire to the amplifier or its relay; 0 where the amplifier senses its signal'),
  jumperM: Type.Optional(quantity('m', 'Turn-on wire on from one amplifier to the next'))
})

export const Charger = component(
  'PlanCharger',
  'Raises the voltage of the first battery for a second one of another kind.',
  {
    ratedA: quantity('A', 'Output'),
    inputA: quantity('A', 'What it draws for that'),
    lead: ref(Lead, 'To the block; its fuse sits at the block, where the battery feeds it')
  }
)
export interface Charger extends Si<Static<typeof Charger>> {}
const SecondBattery = component('PlanSecondBattery', 'The second battery, beside the block.', {
  name: Type.String({ description: 'Capacity and kind' }),
  link: choice('What ties it to the first: `relay` closes while the engine runs; `charger`; `joined` for good', [
    'relay',
    'charger',
    'joined'
  ]),
  relayA: Type.Optional(quantity('A', 'Rating of the relay, above all that the fuses let through')),
  charger: Type.Optional(ref(Charger)),
  signalWireM: Type.Optional(
    quantity('m', 'Wire from a feed that is live while the engine runs, to the coil of the relay or to the charger')
  ),
  signalFuseA: Type.Optional(quantity('A', 'Fuse where that wire begins')),
  sealed: Type.Optional(Type.Boolean({ description: 'Whether it has no vent to lead outside' })),
  lead: Type.Optional(ref(Lead, 'From it to the block; absent where no size passes'))
})
const GroundLead = component('PlanGroundLead', 'A lead to the ground point.', {
  designation: Type.String({ description: 'Size with its series' }),
  lengthM: quantity('m', 'Its length')
})
const Converter = component('PlanConverter', 'Between the vehicle and amplifiers of another voltage, beside them.', {
  inputV: quantity('V', 'Nominal voltage of the vehicle'),
  nominalV: quantity('V', 'Nominal voltage of the amplifiers'),
  outputV: quantity('V', 'Voltage it holds'),
  ratedA: quantity('A', 'Its output'),
  ratedInputA: quantity('A', 'What it draws for that; the trunk and its fuse follow it'),
  lead: Type.Optional(ref(Lead, 'To the block, its fuse at the converter; one amplifier has its branch there instead')),
  ground: Type.Optional(ref(GroundLead, 'From its minus, where the body is the return and it has no lead to a block'))
})
const Capacitor = component('PlanCapacitor', 'The capacitor, beside the amplifier or the block.', {
  capacitanceF: quantity('F', 'Capacitance'),
  designation: Type.String({ description: 'Size of its leads' }),
  lengthM: quantity('m', 'Each of its two leads'),
  at: Type.String({ description: 'What it stands beside' })
})
const TurnOnRelay = component('PlanTurnOnRelay', 'The relay that switches the amplifiers on.', {
  fuseA: quantity('A', 'Fuse of its feed'),
  coilCurrentA: quantity('A', 'Current of its coil'),
  coilVoltageV: quantity('V', 'Voltage of its coil: what the source or the accessory feed switches'),
  designation: Type.String({ description: 'Size of the wires of its feed and contact' }),
  wireM: quantity('m', 'Wire of its feed and from its contact, from what feeds the amplifiers beside it'),
  tapFuseA: Type.Optional(quantity('A', 'Fuse where an accessory circuit is tapped for its coil'))
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
    batterySensor: Type.Optional(
      Type.Boolean({ description: 'A sensor on the negative post: returns and grounds end on its body side' })
    ),
    signalLead: ref(SignalLead),
    secondBattery: Type.Optional(ref(SecondBattery)),
    converter: Type.Optional(ref(Converter)),
    capacitor: Type.Optional(ref(Capacitor)),
    turnOnRelay: Type.Optional(ref(TurnOnRelay)),
    notPlanned: Type.Array(ref(NotPlanned), { description: 'In no bill and no picture' })
  }
)
export interface PlanCircuit extends Si<Static<typeof PlanCircuitBody>> {}
