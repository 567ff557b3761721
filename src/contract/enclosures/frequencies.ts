/** Schema of the frequencies of a response: a list, or a range. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { count, list, quantity } from '../field/quantities.ts'

export const MOST_FREQUENCIES = 2000

const frequency = (description: string) => quantity('Hz', description, { from: 0.1, to: 20_000 })

const FrequencyRangeBody = component('FrequencyRange', 'Frequencies with equal ratios.', {
  fromHz: frequency('First frequency'),
  toHz: frequency('Last frequency'),
  points: count('Number of frequencies', 2, MOST_FREQUENCIES)
})

/** A curve over the frequencies of an answer. */
export const curve = (unit: string, description: string) =>
  list(description, Type.Number({ description: `Value [${unit}]` }), 1, MOST_FREQUENCIES)
export const someCurve = (unit: string, description: string) => Type.Optional(curve(unit, description))

type Frequencies = number[] | Static<typeof FrequencyRangeBody>

export const frequenciesHz = Type.Unsafe<Frequencies>({
  description: 'A list of frequencies, or a range with equal ratios. Absent: 10 to 300 Hz.',
  anyOf: [
    list('Frequencies [Hz]', frequency('A frequency'), 1, MOST_FREQUENCIES),
    ref(FrequencyRangeBody, 'A range of frequencies')
  ]
})
