/** What joining the voice coils of one driver does to its parameters. */
import type { CoilConnection } from '../../contract/drivers/words.ts'
import { DesignError } from '../design-error.ts'
import { say } from '../say.ts'

interface CoilFactors {
  /** Against one coil alone, the others open. */
  readonly resistance: number
  readonly forceFactor: number
  readonly inductance: number
  readonly electricalQ: number
}

/**
 * Factors of a connection against one coil: s coils in series in each of p strings.
 *
 *   Re·s/p   Bl·s   Le·s²   Qes/(s·p)
 *
 * The coils share one magnetic path, so inductance and the loss beside it go with the turns squared.
 *
 * @param count  coils of the driver, 1, 2 or 4
 * @throws DesignError `conflicting-input`
 * @validity Equal, fully coupled coils. fs, Vas, Mms, Cms, Rms, Qms and Sd do not change.
 * @source derived: turns in a shared field
 * @check  2 coils of 2 Ω and 9 T·m, Mms 150 g, Cms 0.18 mm/N → Qes 0.356389 in series and in parallel, 0.712778 for one coil
 */
export function coilFactors(count: number, connection: CoilConnection, field: string): CoilFactors {
  if (connection === 'one-coil') return { resistance: 1, forceFactor: 1, inductance: 1, electricalQ: 1 }
  if (connection === 'series-parallel' && count !== 4) {
    throw new DesignError('conflicting-input', {
      field,
      value: connection,
      detail: say('refused.series-parallel-needs-four-coils-the', { count })
    })
  }
  const inSeries = connection === 'series' ? count : connection === 'parallel' ? 1 : 2
  const strings = count / inSeries
  return {
    resistance: inSeries / strings,
    forceFactor: inSeries,
    inductance: inSeries ** 2,
    electricalQ: 1 / count
  }
}
