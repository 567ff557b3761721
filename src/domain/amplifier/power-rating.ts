/** Which power figures can be compared: continuous RMS at a stated load, and nothing else. */
import type { RatingKind } from '../../contract/amplifiers/words.ts'
import { DesignError, type Fault } from '../design-error.ts'

/** What each other kind leaves open. 14.4 V across 4 Ω shows it: 25.9 W as a sine, 51.8 W as a square wave. */
const leftOpen: Readonly<Record<Exclude<RatingKind, 'rms'>, string>> = {
  peak: 'a peak figure is the power of one instant; a sine peaks at twice its own average, and how long the peak lasts or how distorted it is nobody states',
  max: 'a maximum figure states neither duration nor distortion; the same supply across the same load gives twice the power as a square wave that it gives as a sine',
  total: 'a total figure adds channels or drivers without saying how many, at which load and whether all at once'
}

/** @returns a fault, unless the figure is continuous RMS */
export function ratingFault(field: string, kind: RatingKind): readonly Fault[] {
  if (kind === 'rms') return []
  return [
    {
      field,
      value: kind,
      detail: `Only continuous RMS power can be matched: ${leftOpen[kind]}. Look for watts RMS at a stated load; ANSI/CTA-2006 rates amplifiers at 14.4 V and 1 % distortion.`
    }
  ]
}

/** @throws DesignError `undefined-rating` with every fault found */
export function requireContinuous(faults: readonly Fault[]): void {
  const [first, ...others] = faults
  if (first !== undefined) throw new DesignError('undefined-rating', first, ...others)
}
