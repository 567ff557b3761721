/** Schemas of the cable between amplifier and box. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, label, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { conductorFields } from './electrical.ts'

export const SpeakerCableBody = component('SpeakerCableRequest', 'The cable from an amplifier to its load.', {
  lengthM: quantity('m', 'Way from the amplifier to the box; both conductors are counted', { above: 0, to: 30 }),
  designation: Type.Optional(
    label('A size to be judged instead of chosen, with its series: "14 AWG", "SAE 14", "2.5 mm2"', 20)
  ),
  conductor: conductorFields.conductor,
  strandingFactor: conductorFields.strandingFactor,
  insulationC: Type.Optional(quantity('°C', 'Temperature class of the insulation', { from: 60, to: 200 })),
  ambientC: Type.Optional(quantity('°C', 'Surroundings of the cable', { from: -40, to: 150 })),
  resistanceLimitPercent: Type.Optional(
    quantity('%', 'Most of the load that may be in the wire', { from: 0.1, to: 50 })
  ),
  amplifierDampingFactor: Type.Optional(
    quantity('1', 'Damping factor of the data sheet at this load', { from: 1, to: 100_000 })
  ),
  reOhm: Type.Optional(
    quantity('Ω', 'Direct-current resistance of the whole load, for the effect on Qes', { from: 0.01, to: 1000 })
  ),
  qes: Type.Optional(quantity('1', 'Electrical Q of the drivers, needs reOhm', { from: 0.01, to: 20 }))
})
export interface SpeakerCableRequest extends Si<Static<typeof SpeakerCableBody>> {}

const rowFields = {
  designation: Type.String({ description: 'Size with its series' }),
  loopOhm: quantity('Ω', 'Resistance there and back at 20 °C'),
  resistancePercent: quantity('%', 'Share of the load'),
  ampacityA: Type.Optional(quantity('A', 'Current the cable carries for good; absent outside the table')),
  fails: Type.Optional(choice('The limit this size breaks; absent when it passes', ['resistance', 'ampacity']))
}

export const SpeakerCableResult = component('SpeakerCable', 'A loudspeaker cable and what its resistance does.', {
  ...rowFields,
  areaMm2: quantity('mm²', 'Conductor section'),
  currentA: quantity('A', 'RMS current at full sine'),
  lossDb: quantity('dB', 'Level against a cable without resistance'),
  sourceSeriesOhm: quantity(
    'Ω',
    'Cable, and the output of the amplifier where its damping factor is given: the acoustic calculation takes it as `source.seriesOhm`'
  ),
  governedBy: Type.Optional(
    choice('The limit that ruled out the next smaller size', ['resistance', 'ampacity', 'smallest-size'])
  ),
  dampingFactor: Type.Optional(quantity('1', 'Damping factor at the load, cable included')),
  qesFactor: Type.Optional(quantity('1', 'Qes with cable and output resistance over Qes without')),
  qes: Type.Optional(quantity('1', 'Qes with cable and output resistance'))
})
export interface SpeakerCable extends Si<Static<typeof SpeakerCableResult>> {}

const Candidate = component('SpeakerCableCandidate', 'A size that was considered.', rowFields)
export interface SpeakerCableCandidate extends Si<Static<typeof Candidate>> {}

export const speakerCableCandidates = Type.Array(ref(Candidate), {
  description: 'Every size considered, thin to thick, each with the limit it breaks'
})
