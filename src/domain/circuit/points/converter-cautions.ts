/** What the input of a converter may not see. */
import type { Circuit, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { inputOf } from './circuit-elements.ts'
import type { CircuitParts } from './circuit-parts.ts'

const inputV = ({ parts }: CircuitState, id: string): number =>
  parts.find(part => part.id === inputOf(id))?.voltageV ?? 0

export function converterInputCautions({ states }: Circuit, { converters }: CircuitParts): readonly Caution[] {
  return converters.flatMap(({ asked: { id, highestInputV } }, index) => {
    const highest = Math.max(...states.map(state => inputV(state, id)))
    if (highestInputV === undefined || highest <= highestInputV) return []
    const message = say('converter-input', { highestV: toDigits(highest), id, allowedV: toDigits(highestInputV) })
    return [
      caution('converter-input', message, { at: `converters[${index}].highestInputV`, figures: { highestInputV } })
    ]
  })
}
