/** German for what the room `cabin` says. */
import type { cabinSentences } from '../../english/acoustic/cabin.ts'
import { translation } from '../../form/translation.ts'

export const germanCabin = translation<typeof cabinSentences>()({
  'cabin-curve-held':
    'Die gemessene Kurve des Innenraums reicht von {lowestHz} Hz bis {highestHz} Hz; darüber hinaus gelten ihre letzten Werte.',
  'cabin-model':
    'Der Pegel am Sitz stammt aus einem Modell des Innenraums und ist auf etwa ±{uncertaintyDb} dB genau; eine im Auto gemessene Kurve ist besser.',
  'cabin-modes':
    'Der Pegel am Sitz ist ein Modell des Innenraums: bis {limitHz} Hz auf etwa ±{uncertaintyDb} dB genau, darüber, wo stehende Wellen beginnen, bis zu 10 dB daneben. Die Kurve im Auto messen und angeben.',
  'hearing-exposure':
    'Bis zu {levelDb} dB {where} ({frequencyHz} Hz). Allein der Bass, {weightedDb} dB A-bewertet bei {weightedHz} Hz, verbraucht die empfohlene Tagesdosis in {time} {orLess}; die übrige Musik kommt dazu. Bei Prüfungen mit Vollpegel draußen sitzen oder Gehörschutz tragen; Kinder vertragen weniger. Klingeln oder dumpfe Ohren heißt sofort leiser stellen.',
  'hearing-exposure.or-less': 'oder weniger',
  'hearing-extreme':
    'Bei Vollpegel sitzt niemand im Auto: {levelDb} dB {where} sind {peakDb} dB(C) in der Spitze der Welle; {peakLimitDb} dB(C) ist die Grenze bei der Arbeit.',
  'place.half-space': 'im Halbraum in 1 m',
  'place.half-space-and-more': 'im Halbraum in 1 m, und mehr im Auto',
  'place.seat': 'am Sitz',
  'time.hours': '{timeHours} h',
  'time.under-a-minute': 'weniger als einer Minute'
})
