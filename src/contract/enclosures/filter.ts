/** Schema of a filter or equaliser of a chain. */
import Type, { type Static } from 'typebox'
import { byTag, component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { filterFamilies } from './words.ts'

const pass = {
  family: choice(
    '`butterworth` and `bessel`: half power (−3.01 dB) at the corner. `linkwitz-riley`: −6.02 dB there, even orders. `chosen-q`: order 2 with the given Q',
    filterFamilies
  ),
  order: count('Order: 6 dB an octave each', 1, 8),
  cornerHz: quantity('Hz', 'Corner frequency', { from: 1, to: 2000 }),
  q: Type.Optional(quantity('1', 'Q of the pole pair, only with the family `chosen-q`', { from: 0.1, to: 10 }))
}

const shelf = {
  cornerHz: quantity('Hz', 'Frequency at which half of the gain in dB is reached', { from: 1, to: 2000 }),
  gainDb: quantity('dB', 'Gain of the shelf; negative cuts', { from: -24, to: 24 }),
  q: Type.Optional(
    quantity('1', 'Steepness; 0.7071, the steepest without overshoot, when absent', { from: 0.1, to: 2 })
  )
}

const tag = <const Kind extends string>(kind: Kind) => Type.Literal(kind, { description: 'Kind of filter' })

const HighPass = component('HighPassFilter', 'Passes what lies above its corner.', { kind: tag('high-pass'), ...pass })
const LowPass = component('LowPassFilter', 'Passes what lies below its corner.', { kind: tag('low-pass'), ...pass })
export type PassFilter = Si<Static<typeof HighPass>> | Si<Static<typeof LowPass>>

const LowShelf = component('LowShelfFilter', 'Raises or lowers what lies below its corner.', {
  kind: tag('low-shelf'),
  ...shelf
})
const HighShelf = component('HighShelfFilter', 'Raises or lowers what lies above its corner.', {
  kind: tag('high-shelf'),
  ...shelf
})
export type ShelfFilter = Si<Static<typeof LowShelf>> | Si<Static<typeof HighShelf>>

const Peaking = component('PeakingFilter', 'Raises or lowers a band around its centre.', {
  kind: tag('peaking'),
  centreHz: quantity('Hz', 'Centre frequency', { from: 1, to: 2000 }),
  gainDb: quantity('dB', 'Gain at the centre; negative cuts', { from: -24, to: 24 }),
  q: quantity('1', 'Q: centre over the bandwidth at half the gain in dB', { from: 0.1, to: 30 })
})

export interface PeakingFilter extends Si<Static<typeof Peaking>> {}
export type Filter = PassFilter | ShelfFilter | PeakingFilter

const FilterBody = byTag('Filter', 'A filter or equaliser before the amplifier.', 'kind', [
  HighPass,
  LowPass,
  LowShelf,
  HighShelf,
  Peaking
])

export const filterChain = list('Filters and equalisers before the amplifier, in any order', ref(FilterBody), 1, 8)
