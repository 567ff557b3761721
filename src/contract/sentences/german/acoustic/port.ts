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
  'port-reason.below-radius': '{length} ist kürzer als der Radius: die Enden bestimmen, und die Abstimmung ist geraten',
  'port-reason.flares': '{length} ist kürzer als die beiden Rundungen von {flare}',
  'port-reason.flat': '{times}-mal so breit wie hoch, {height} hoch',
  'port-reason.long': '{length} lang, Platz ist für {room}',
  'port-reason.no-length':
    'eine so kleine Fläche stimmt schon als bloßes Loch tiefer ab als gewünscht: sie muss größer sein',
  'port-reason.pipe': 'schwingt als Pfeife bei {resonance} Hz, dem {times}-fachen der Tiefpassecke',
  'port-reason.share': 'enthält {share} % der Luft des Gehäuses: stimmt {low} % tiefer ab als die Formel',
  'port-reason.speed': '{speed} m/s Spitze gegen eine Grenze von {limit} m/s',
  'port-reason.too-flat':
    '{flat}: über dem {flattest}-fachen oder unter {lowest} bremsen die Wände die Luft, und jeder Millimeter Höhe zählt (übliche Praxis)',
  'port-way.bend': 'ein Gehrungsbogen: {length} auf der Mittellinie, Platz für {room}',
  'port-way.cheek': 'eine Wange, die den Schlitz auf {width} × {height} schließt: dieselbe Fläche, etwa {length} lang',
  'port-way.drive': 'insgesamt {area}, was passt, hält {limit} m/s bis {share} % der Leistung',
  'port-way.fewer': '{fewer} statt {count}: {length}{speed}',
  'port-way.flare':
    'mit beiden Mündungen gerundet sind {limit} m/s kaum zu hören: insgesamt {area}, {length} und was die Rundungen dazugeben',
  'port-way.larger-area':
    'ab insgesamt {area} ist der Kanal so lang wie sein Radius und lässt sich schneiden: {length}',
  'port-way.larger-box': '{volume} netto nähmen diese Fläche bei dieser Abstimmung auf {room}',
  'port-way.none': 'nichts gefunden',
  'port-way.radiator':
    'Passivmembranen mit insgesamt {area} und {mass} g stimmen gleich ab, wenn sie sehr weich sind; mit dem 1,5-fachen der Masse, wenn sie doppelt so nachgiebig sind wie das Gehäuse',
  'port-way.smaller-area': 'insgesamt {area} passen auf {room}{judged}',
  'port-way.smaller-area.audible': ', {speed} m/s: bei voller Aussteuerung hörbar, unter {highest} m/s',
  'port-way.smaller-area.too-fast': ', {speed} m/s: zu schnell bei dieser Aussteuerung',
  'port-way.smaller-box':
    'ein kleineres Gehäuse von {volume} netto, auf {tuning} Hz abgestimmt, nimmt diese Fläche auf {room}',
  'port-way.speed': ', {speed} m/s',
  'port-way.tuning': 'diese Fläche auf {room} stimmt auf {tuning} Hz ab',
  'port-speed-unchecked': 'Nichts sagt, wie viel Luft der Kanal führt: ihre Geschwindigkeit wurde nicht geprüft.',
  'slot-end-uncertain':
    'Die genaue Länge eines Schlitzes an einer Wand ist unsicher: nach zwei Verfahren stimmt dieselbe Länge auf {tuningHz} oder {otherTuningHz} Hz ab. Lang schneiden, messen, kürzen.'
})
