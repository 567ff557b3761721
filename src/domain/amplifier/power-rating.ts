/** Which power figures can be compared: continuous RMS at a stated load, and nothing else. */
import type { RatingKind } from '../../contract/amplifiers/words.ts'
import { DesignError, type FoundFault } from '../design-error.ts'
import { say } from '../say.ts'

/** @returns a fault, unless the figure is continuous RMS */
export function ratingFault(field: string, kind: RatingKind): readonly FoundFault[] {
  if (kind === 'rms') return []
  return [
    {
      field,
      value: kind,
      detail: say('refused.only-continuous-rms-power-can-be', { kind: say(`rating-kind.${kind}`) })
    }
  ]
}

/** @throws DesignError `undefined-rating` with every fault found */
export function requireContinuous(faults: readonly FoundFault[]): void {
  const [first, ...others] = faults
  if (first !== undefined) throw new DesignError('undefined-rating', first, ...others)
}
