/** When the output of an amplifier is no longer harmless to touch. */
import { type Caution, caution } from '../caution.ts'
import { fixed } from '../digits.ts'
import { say } from '../say.ts'

/** Upper limit of the voltage class that needs no protection against touch [V AC, RMS]: UN R100, seen in a national copy. */
export const TOUCH_LIMIT_V = 30

export function touchVoltageCautions(targetVoltageV: number): readonly Caution[] {
  if (targetVoltageV <= TOUCH_LIMIT_V) return []
  return [
    caution(
      'output-touch-voltage',
      say('output-touch-voltage', { targetVoltageV: fixed(targetVoltageV, 0), touchLimitV: TOUCH_LIMIT_V }),
      { figures: { targetVoltageV, touchLimitV: TOUCH_LIMIT_V } }
    )
  ]
}
