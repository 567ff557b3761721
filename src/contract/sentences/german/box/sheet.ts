/** German for what the room `sheet` says. */
import type { sheetSentences } from '../../english/box/sheet.ts'
import { translation } from '../../form/translation.ts'

export const germanSheet = translation<typeof sheetSentences>()({
  'narrow-strip':
    'Die Platte „{panel}“ ist nur {widthMm} mm breit: Hände aus der Linie des Blattes, mit Schiebestock oder geklemmter Schiene.',
  'sheet-plan-above-bound':
    '{sheetCount} Tafeln von {thicknessMm} mm gegen eine untere Schranke von {leastSheetCount}. {why}'
})
