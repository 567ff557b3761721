/** German for what the room `port` says. */
import type { portSentences } from '../../english/acoustic/port.ts'
import { translation } from '../../form/translation.ts'

export const germanPort = translation<typeof portSentences>()({
  'judged.above': 'über',
  'judged.within': 'innerhalb',
  'port-air-speed.sizing':
    '{speedMPerS} m/s Spitze im Kanal bei voller Aussteuerung, {judged} der gewünschten {limitMPerS} m/s.',
  'port-does-not-fit':
    'Kein Kanal der gewünschten Art hält alle Grenzen ein; am nächsten: {name}, {why}. Was ginge: {ways}.',
  'port-large-for-box':
    'Der Kanal ist groß gegen das Gehäuse: als Wellenleiter stimmt er auf {waveguideTuningHz} Hz ab statt auf {tuningHz} Hz.',
  'port-pipe-resonance':
    'Der Kanal schwingt auch bei {resonanceHz} Hz, wie eine Orgelpfeife: ein Tiefpass bei {cornerHz} Hz oder darunter hält ihn still, ein kürzerer Kanal rückt es höher.',
  'port-speed-unchecked': 'Nichts sagt, wie viel Luft der Kanal führt: ihre Geschwindigkeit wurde nicht geprüft.',
  'slot-end-uncertain':
    'Die genaue Länge eines Schlitzes an einer Wand ist unsicher: nach zwei Verfahren stimmt dieselbe Länge auf {tuningHz} oder {otherTuningHz} Hz ab. Lang schneiden, messen, kürzen.'
})
