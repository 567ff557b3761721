/** The first page of a plan, on the wire: what it is, what it does, what was asked, what to know before anything else. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { CautionBody } from '../field/envelope.ts'
import { choice, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { earPlaces, radiatorFaces } from './words.ts'

const finding = Type.String({ description: 'What the chart shows, as its title' })
const held = Type.Boolean({ description: 'Whether it keeps to the limit' })

const Band = component('PlanBand', 'The band of use: all within 6 dB of the loudest, around it.', {
  finding,
  place: choice('`seat`: with the cabin of the request. `half-space`: at 1 m, for no cabin is known', earPlaces),
  fromHz: quantity('Hz', 'Lower end'),
  toHz: quantity('Hz', 'Upper end'),
  loudestDb: quantity('dB', 'Highest level at the gain of the plan'),
  loudestHz: quantity('Hz', 'Where'),
  uncertaintyDb: Type.Optional(quantity('dB', 'Real cars lie within ± this of the model'))
})

const Travel = component('PlanTravel', 'Largest excursion of a cone at the gain of the plan.', {
  finding,
  held,
  peakMm: quantity('mm', 'One way from rest'),
  peakHz: quantity('Hz', 'Where'),
  limitMm: Type.Optional(quantity('mm', 'Xmax of the driver'))
})

const PortAir = component('PlanPortAir', 'Fastest air in a port at the gain of the plan.', {
  finding,
  held,
  peakMPerS: quantity('m/s', 'Peak'),
  peakHz: quantity('Hz', 'Where'),
  quietMPerS: quantity('m/s', 'Up to here sharp ends are not heard'),
  limitMPerS: quantity('m/s', 'Beyond this nothing is built')
})

const RadiatorTravel = component(
  'PlanRadiatorTravel',
  'Passive radiators of the box: what each carries, and how far it goes at the gain of the plan.',
  {
    finding,
    held,
    peakMm: quantity('mm', 'One way from rest'),
    peakHz: quantity('Hz', 'Where'),
    limitMm: quantity('mm', 'Travel of the radiator, less what a cone that lies flat hangs through'),
    count: Type.Integer({ description: 'Radiators in the box' }),
    face: choice('Where they stand; `sides`: half of them on each', radiatorFaces),
    addedG: quantity('g', 'To be added to each'),
    massG: quantity('g', 'Moving mass of each with what is added'),
    resonanceHz: quantity('Hz', 'Of each so loaded, in free air: the notch below the tuning'),
    sagMm: Type.Optional(quantity('mm', 'How far a cone that lies flat hangs through by its own weight'))
  }
)

const kept = Type.Boolean({ description: 'Whether what is built is what was asked' })
const free = 'absent where the plan was free to choose'

const AskedVolume = component('PlanAskedVolume', 'Net volume, asked beside built.', {
  askedL: Type.Optional(quantity('L', `Asked; ${free}`)),
  builtL: quantity('L', 'Built'),
  kept
})
const AskedTuning = component(
  'PlanAskedTuning',
  'Tuning of a box with a port or passive radiators, asked beside built.',
  {
    askedHz: Type.Optional(quantity('Hz', `Asked; ${free}`)),
    builtHz: quantity('Hz', 'Built'),
    kept
  }
)
const AskedDamping = component('PlanAskedDamping', 'Total Q of a closed box, asked beside built.', {
  askedQtc: Type.Optional(quantity('1', `Asked; ${free}`)),
  builtQtc: quantity('1', 'Built'),
  kept
})
const AskedSpace = component('PlanAskedSpace', 'The boot beside the box with its covering.', {
  widthMm: Type.Optional(quantity('mm', 'Width of the space')),
  heightMm: Type.Optional(quantity('mm', 'Height of the space')),
  depthMm: Type.Optional(quantity('mm', 'Depth of the space')),
  boxWidthMm: quantity('mm', 'Width of the box, covered'),
  boxHeightMm: quantity('mm', 'Height of the box, covered'),
  boxDepthMm: quantity('mm', 'Depth of the box, covered'),
  coveringMm: quantity('mm', 'Carpet on each face; 0 without')
})

const AskedBody = component('PlanAsked', 'What was asked beside what is built.', {
  volume: ref(AskedVolume),
  tuning: Type.Optional(ref(AskedTuning)),
  damping: Type.Optional(ref(AskedDamping)),
  space: ref(AskedSpace)
})

const PageOne = component('PlanFirstCaution', 'A caution in short; the whole of it stands at its step or part.', {
  code: CautionBody.properties.code,
  clause: Type.String({ description: 'The danger in a few words' }),
  sentence: Type.String({ description: 'Its first sentence, with the figures of this design' }),
  step: Type.Optional(Type.Integer({ description: 'Number of the step where it counts' }))
})
export interface FirstCaution extends Si<Static<typeof PageOne>> {}

export const PlanCoverBody = component(
  'PlanCover',
  'The first page: one sentence, the band of use, what it rests on, what to know before anything else.',
  {
    sentence: Type.String({ description: 'The system in one sentence' }),
    powerW: Type.Optional(
      quantity('W', 'What all drivers get at the gain of the plan; absent where nothing is matched')
    ),
    band: Type.Optional(ref(Band)),
    travel: Type.Optional(ref(Travel)),
    portAir: Type.Optional(ref(PortAir)),
    radiators: Type.Optional(ref(RadiatorTravel)),
    asked: Type.Optional(ref(AskedBody, 'Absent where no box fits')),
    pageOne: Type.Array(ref(PageOne), {
      description: 'Cautions of this design, those that can hurt first, licensed work last; at most seven'
    })
  }
)
export interface PlanCover extends Si<Static<typeof PlanCoverBody>> {}
