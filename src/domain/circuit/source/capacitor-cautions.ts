/** A capacitor on a fuse draws the fault current of the battery, and keeps its charge when the battery is off. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { CapacitorEffect } from '../../../contract/supply/supply-current.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { inEnglish, say } from '../../say.ts'
import { prechargeRatingW } from './capacitor.ts'

/** The resistor as it is bought. */
export const saidResistor = (ohm: number, peakW: number): Said =>
  say('resistor', { resistanceOhm: toDigits(ohm), ratedW: prechargeRatingW(peakW) })

/** How long it takes, as a person says it. */
export const saidWait = (seconds: number): Said =>
  seconds < 180
    ? say('time.seconds', { secondsS: toDigits(seconds, 2) })
    : say('time.minutes', { minutesMin: toDigits(seconds / 60, 2) })

export const resistorText = (ohm: number, peakW: number): string => inEnglish(saidResistor(ohm, peakW))
export function prechargeCautions(capacitanceF: number, effect: CapacitorEffect): readonly Caution[] {
  const { prechargeOhm, prechargePeakW, prechargeDoneS, storedJ } = effect
  if (prechargeOhm === undefined || prechargePeakW === undefined || prechargeDoneS === undefined) return []
  const resistor = saidResistor(prechargeOhm, prechargePeakW)
  const about = saidWait(prechargeDoneS)
  const place = { at: 'capacitor', figures: { storedJ, prechargeOhm, prechargePeakW, prechargeDoneS } }
  return [
    caution(
      'capacitor-charge',
      say('capacitor-charge', { capacitanceF, storedJ: toDigits(storedJ, 2), resistor, time: about }),
      place
    ),
    caution('capacitor-discharge', say('capacitor-discharge', { resistor, time: about }), place)
  ]
}
