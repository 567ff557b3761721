/** A capacitor on a fuse draws the fault current of the battery, and keeps its charge when the battery is off. */
import type { CapacitorEffect } from '../../../contract/supply/supply-current.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { prechargeRatingW } from './capacitor.ts'

/** The resistor as it is bought. */
export const resistorText = (ohm: number, peakW: number): string => `${inDigits(ohm)} Ω, ${prechargeRatingW(peakW)} W`

/** How long it takes, as a person says it. */
export const waitText = (seconds: number): string =>
  seconds < 180 ? `${inDigits(seconds, 2)} s` : `${inDigits(seconds / 60, 2)} min`

export function prechargeCautions(capacitanceF: number, effect: CapacitorEffect): readonly Caution[] {
  const { prechargeOhm, prechargePeakW, prechargeDoneS, storedJ } = effect
  if (prechargeOhm === undefined || prechargePeakW === undefined || prechargeDoneS === undefined) return []
  const resistor = resistorText(prechargeOhm, prechargePeakW)
  const about = waitText(prechargeDoneS)
  const place = { at: 'capacitor', figures: { storedJ, prechargeOhm, prechargePeakW, prechargeDoneS } }
  return [
    caution(
      'capacitor-charge',
      `The capacitor of ${capacitanceF} F takes ${inDigits(storedJ, 2)} J: charge it through a resistor (${resistor}) for about ${about}, until less than 1 V is left across the resistor, and only then put the fuse in. Put on bare it draws what the battery can give, and welds or bursts the contact.`,
      place
    ),
    caution(
      'capacitor-discharge',
      `The capacitor stays charged with the battery off: discharge it through the same resistor (${resistor}, about ${about}) until less than 1 V is left before anybody works on it.`,
      place
    )
  ]
}
