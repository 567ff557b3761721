/** What the catalogue says of batteries, charging and what they last, in German. */
import type { energyCautions } from '../../cautions/energy.ts'

export const energyMeanings = {
  'charge-deficit-idle':
    'Im Leerlauf deckt die Ladeanlage Fahrzeug und Musik nicht; die Batterie trägt den Rest und leert sich im Stau.',
  'charge-deficit-heavy':
    'Bei dichtem Bass kommt die Ladeanlage selbst auf der Fahrt nicht nach; die Batterie erholt sich nur in leiseren Stellen.',
  'charge-deficit-cruise':
    'Selbst auf der Fahrt zieht gewöhnliche Musik mehr, als die Ladeanlage gibt. Eine größere Lichtmaschine oder ein größerer Wandler ist nötig; eine zweite Batterie oder ein Kondensator ändert einen mittleren Mangel nicht.',
  'engine-off-time':
    'Wie lange die Batterie bei stehendem Motor und mittlerer Musik spielt, bis sie halb leer ist; eine tiefere Entladung kann das Anlassen verhindern.',
  'cold-start':
    'Während der Anlasser dreht, bekommt der Verstärker weniger, als sein Wandler braucht: er geht aus und wieder an. Seine Einschaltleitung gehört dorthin, wo das Anlassen sie unterbricht, sonst ploppt es.',
  'late-cut-off':
    'Bei stehendem Motor setzt der Verstärker von selbst erst aus, wenn die Batterie längst zu leer zum Anlassen ist: seine Abschaltung schützt ihn, nicht die Batterie.',
  'governed-charging':
    'Ein Fahrzeug mit Batteriesensor regelt seine Ladespannung zwischen zwei Enden; was am Verstärker bleibt, folgt ihr, und ein Lader oder Relais nach Spannung kann sie missverstehen.',
  'second-battery':
    'Eine zweite Batterie: gleiche Art, Trennrelais oder Wandler dazwischen, eine Sicherung an jedem Ende der Verbindung, denn jedes Ende ist eine Quelle, festgeschnallt, Entgasungsschlauch ins Freie, auch bei AGM und Gel.',
  'capacitor-no-energy':
    'Ein Kondensator glättet die Welligkeit im Bass für Millisekunden; er ist keine Energiequelle und heilt weder eine schwache Lichtmaschine noch ein dünnes Kabel.',
  'battery-assists':
    'Die Last übersteigt, was der Lichtmaschine bleibt: die Versorgung sinkt auf Batteriespannung, und die Batterie entlädt sich beim Spielen.'
} as const satisfies Record<keyof typeof energyCautions, string>
