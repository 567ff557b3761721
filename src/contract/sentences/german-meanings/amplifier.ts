/** What the catalogue says of these cautions, in German. */
import type { amplifierCautions } from '../../cautions/amplifier.ts'

export const amplifierMeanings = {
  'rating-kind-unknown':
    'Es ist nicht bekannt, wofür die Leistung steht; sie wurde als Dauerleistung genommen. Ist sie ein Spitzen- oder Summenwert, sind Strom, Kabel und Sicherung größer als nötig und das Verstärkungsziel unerreichbar: ein Datenblatt mit Effektivleistung (RMS) an einer Last klärt es.',
  'amplifier-voltage-class':
    'Der Verstärker ist für eine andere Versorgungsspannung gemacht, als das Bordnetz hat: über seiner Klasse wird er zerstört und kann brennen, darunter läuft er nicht an. Einen Gleichspannungswandler für seine volle Stromaufnahme dazwischensetzen, mit Sicherungen auf beiden Seiten, oder einen Verstärker der richtigen Klasse nehmen.',
  'amplifier-voltage-unknown':
    'Die Versorgungsspannung des Verstärkers ist in einem Bordnetz über 12 V nicht angegeben; die meisten Fahrzeugverstärker sind für 12 V gemacht. Typenschild oder Datenblatt lesen.',
  'unlike-batteries-parallel':
    'Zusammengeschaltete Batterien verschiedener Art einigen sich nie auf eine Spannung: eine wird falsch geladen, die andere nie voll, und stundenlang fließt Strom zwischen ihnen. Über einen Ladewandler für die zweite verbinden, an beiden Enden abgesichert, oder zwei gleiche nehmen.',
  'power-bounded':
    'Für die angeschlossene Last ist keine Leistung veröffentlicht, wohl aber für eine kleinere: die dort erreichte Spannung wird auch hier erreicht. Das ist eine untere Schranke der Leistung; die Versorgung ist für die Nennleistung ausgelegt.',
  'bridged-minimum-low':
    'Die kleinste gebrückte Last legt an jeden Kanal weniger, als ein Kanal treiben darf; das Doppelte der kleinsten Last eines Kanals gilt.',
  'ratings-contradict':
    'Zwei veröffentlichte Leistungen können nicht beide Dauerleistungen sein: die kleinere Last brauchte die höhere Spannung. Mehr als die doppelte Leistung an der halben Last ist keine Effektivleistung.'
} as const satisfies Record<keyof typeof amplifierCautions, string>
