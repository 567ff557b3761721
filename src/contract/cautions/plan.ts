/** Cautions of a whole plan: what was asked for beside what is built. */
import type { CautionCatalogue } from './entry.ts'

export const wholePlanCautions = {
  'not-as-asked': {
    level: 'care',
    meaning:
      'Something that was asked for by wish, kind, volume, tuning or Qtc is not what is built; the message names both figures where there are figures. Ask for what fits, or give more room.',
    basis: 'the request beside the plan; differences up to 1 % (Qtc 2 %) are the step of the saw'
  },
  'leaflet-box': {
    level: 'care',
    meaning:
      'The box is built by volume and tuning of a leaflet, and the sheet does not say what the driver is: nothing was computed of level, reach, excursion or whether the box suits. Send fs, Q, Vas and Sd, from the maker or measured, before you cut.',
    basis: 'what a small-signal set is needed for; the port by the rule of Small 1973, from memory'
  },
  'closed-box-high-pass': {
    level: 'note',
    meaning:
      'A high-pass before a closed box keeps the cone within its travel and takes away bass that the cabin would have given; the message says at which power the box needs none. From half the resonance of the box on it is `care`: a smaller box or less power then gives more bass.',
    basis: 'computed excursion against Xmax; half the resonance is our choice'
  },
  'cones-out-of-sight': {
    level: 'care',
    meaning:
      'The drivers of a band-pass play into a closed box: a cone that strikes is not seen and hardly heard, a coil that burns is smelt late. Keep to gain and filters of the plan, and take the front off at the first changed sound.',
    basis: 'common practice, no source'
  }
} as const satisfies CautionCatalogue
