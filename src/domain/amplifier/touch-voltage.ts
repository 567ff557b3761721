/** When the output of an amplifier is no longer harmless to touch. */
import { type Caution, caution } from '../caution.ts'

/** Upper limit of the voltage class that needs no protection against touch [V AC, RMS]: UN R100, seen in a national copy. */
export const TOUCH_LIMIT_V = 30

export function touchVoltageCautions(targetVoltageV: number): readonly Caution[] {
  if (targetVoltageV <= TOUCH_LIMIT_V) return []
  return [
    caution(
      'output-touch-voltage',
      `The loudspeaker terminals reach ${targetVoltageV.toFixed(0)} V RMS, above the ${TOUCH_LIMIT_V} V below which UN R100 asks no protection: insulate every joint, clip probes on with the amplifier off, hands off while it plays.`,
      { figures: { targetVoltageV, touchLimitV: TOUCH_LIMIT_V } }
    )
  ]
}
