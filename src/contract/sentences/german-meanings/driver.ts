/** What the catalogue says of these cautions, in German. */
import type { driverCautions } from '../../cautions/driver.ts'

export const driverMeanings = {
  'driver-figures-disagree':
    'Zwei Wege zum selben Parameter geben verschiedene Werte, um mehr, als das Runden der gedruckten Stellen erklärt. Bis 10 % darüber ist es ein Hinweis, bis 25 % Vorsicht; darüber nicht nach diesem Datenblatt bauen, bis die falsche Zahl gefunden ist.',
  'driver-unit-slip':
    'Ein Versehen bei Einheit, Lesen oder Tippen würde erklären, was an dem Datenblatt seltsam ist. Es wird genannt, nie angewandt: das Datenblatt prüfen und die richtige Zahl senden.',
  'driver-value-unusual':
    'Ein angegebener oder abgeleiteter Parameter liegt außerhalb dessen, was Lautsprecher für tiefe Frequenzen haben.',
  'rated-impedance-odd':
    'Die Nennimpedanz passt kaum zum Spulenwiderstand. Bei Lautsprechern mit mehreren Spulen gelten beide oft für verschiedene Schaltungen; die Last am Verstärker hängt daran.',
  'sensitivity-disagrees':
    'Der gedruckte Kennschalldruck weicht um mehr als 3 dB von dem ab, was die Parameter im Halbraum in 1 m ergeben.',
  'travel-assumed':
    'Das Datenblatt nennt keine lineare Auslenkung. Eine niedrige wurde angenommen, denn ohne sie hielte nichts die Membran: Filter und Pegel sind danach eingestellt. Vor lauterem Betrieb beim Hersteller nach Xmax fragen.',
  'rating-assumed':
    'Das Datenblatt nennt keine Dauerbelastbarkeit. Eine niedrige wurde aus der Fläche der Membran angenommen: der Pegel ist danach eingestellt. Vor lauterem Betrieb beim Hersteller nach der Dauerbelastbarkeit fragen; ein Spitzenwert ist keine.',
  'inductance-missing': 'Ohne die Induktivität der Spule wird das obere Bassband zu laut vorhergesagt.'
} as const satisfies Record<keyof typeof driverCautions, string>
