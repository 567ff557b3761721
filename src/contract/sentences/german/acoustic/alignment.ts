/** German: names of boxes that a sizing finds. */
import type { alignmentSentences } from '../../english/acoustic/alignment.ts'
import { translation } from '../../form/translation.ts'

export const germanAlignment = translation<typeof alignmentSentences>()({
  'alignment.as-asked': 'wie gewünscht',
  'alignment.b4': 'maximal flacher Pegel (B4)',
  'alignment.be4': 'flachste Laufzeit, Bessel (BE4)',
  'alignment.c4': 'tiefste Grenze mit Welligkeit (C4)',
  'alignment.closed': 'Geschlossen, Qtc {qtc}',
  'alignment.in-your-space': 'im vorhandenen Platz, {how}',
  'alignment.lowest': 'auf die tiefste halbe Leistung mit höchstens {peakDb} dB Überhöhung abgestimmt',
  'alignment.qb3': 'klein und flach, quasi dritter Ordnung (QB3)',
  'alignment.sbb4': 'abgestimmt auf die Resonanz des Lautsprechers (SBB4)',
  'alignment.sc4': 'weniger Laufzeit für etwas mehr Volumen (SC4)',
  'alignment.band-pass-as-asked': 'Bandpass, wie gewünscht',
  'alignment.vented': 'Bassreflex, {how}'
})
