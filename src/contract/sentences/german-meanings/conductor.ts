/** What the catalogue says of these cautions, in German. */
import type { conductorCautions } from '../../cautions/conductor.ts'

export const conductorMeanings = {
  'near-miss':
    'Die nächstkleinere Größe verfehlt nur den Spannungsfall, und knapp: ein etwas kürzerer Weg oder ein etwas größerer erlaubter Spannungsfall ließe sie genügen.',
  'terminal-too-small':
    'Der Leiter ist größer, als die Klemme des Verstärkers fasst: einen Reduzierstift der Klemmengröße aufpressen, nie Litzen abschneiden; oder eine passende Größe nehmen.',
  'cable-overloaded':
    'Die Last ist mehr, als dieses Kabel in seiner Umgebung dauernd führen darf, welche Sicherung auch davor sitzt. Eine größere Größe, eine bessere Isolierung oder einen kühleren Weg nehmen.',
  'bare-source':
    'Von dieser Batterie läuft ein Kabel zu einer Last, zu einer anderen Batterie oder weiter als erlaubt, bevor es eine Sicherung trifft: ein Kurzschluss darauf setzt das Auto in Brand. Eine Sicherung an den Pol setzen, an beide Enden dessen, was zwei Batterien verbindet.',
  'fuse-in-return':
    'Eine Sicherung in der Rückleitung lässt den Verstärker unter Spannung, wenn sie auslöst, und sein Strom findet einen anderen Weg, durch die Schirme der Signalleitungen. Sicherungen gehören in die Plusseite, nahe an jede Quelle.',
  'fuse-below-load':
    'Diese Sicherung führt bei Musik oder Prüfton mehr, als wofür sie gemacht ist: sie wird auslösen. Den nächsten Nennstrom nehmen, den ihr Kabel trägt, oder weniger Verstärkung.',
  'circuit-collapse':
    'In diesem Zustand können die Quellen die Verstärker nicht speisen: die Spannung sinkt, bis sie abschalten. Verstärkung senken, den Weg dicker oder kürzer machen oder eine Quelle nahe den Verstärkern zufügen.',
  'converter-input':
    'Das Fahrzeug hält mehr Volt, als der Wandler am Eingang erlaubt: er wird zerstört und kann sie zu einem 12-V-Verstärker durchlassen. Einen nehmen, dessen Datenblatt die Ladespannung und ihre Spitzen erlaubt.',
  'converter-too-small':
    'Die Verstärker nehmen mehr, als der Wandler gibt: seine Spannung sinkt, bis sie aussetzen, und keine Sicherung merkt es. Die nächste Größe, weniger Verstärkung oder Verstärker für die Spannung des Fahrzeugs nehmen.',
  'no-supply': 'In diesem Zustand speist nichts dieses Gerät: ein offenes Relais trennt es von jeder Quelle.'
} as const satisfies Record<keyof typeof conductorCautions, string>
