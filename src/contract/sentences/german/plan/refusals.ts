/** German for what the room `refusals-plan` says. */
import type { refusalsPlanSentences } from '../../english/plan/refusals.ts'
import { translation } from '../../form/translation.ts'

export const germanRefusalsPlan = translation<typeof refusalsPlanSentences>()({
  refused: '{field} {given}: {meaning} {bounds}',
  'refused.a-slot-follows-four-walls':
    'Ein Schlitz beginnt in der Front und folgt den Wänden eines Quaders oder Keils: einen runden Kanal verlangen.',
  'refused.the-shape-asked-has-no-use': 'Die verlangte Form braucht dies nicht: eines von beiden weglassen.',
  'refused.the-shape-asked-needs-its-outline': 'Die verlangte Form braucht dies.',
  'refused.a-room-is-round-or-free': 'Ein Raum ist rund oder hat Ecken: den Durchmesser oder den Grundriss angeben.',
  'refused.staves-are-mitred-all-round':
    'Die Dauben eines runden Gehäuses sind auf Gehrung, alle aus einer Platte: dies weglassen.',
  'refused.a-closed-box-has-no-port':
    'Ein geschlossenes Gehäuse hat keinen Kanal; das weglassen oder Gehäuse mit Kanal zulassen.',
  'refused.a-closed-box-has-no-port.vented':
    'Ein geschlossenes Gehäuse hat keinen Kanal; das weglassen oder ein Gehäuse mit Kanal verlangen.',
  'refused.a-second-battery-behind-a-converter':
    'Eine zweite Batterie hinter einem Wandler von anderer Spannung wird nicht geplant: eines von beiden weglassen, oder diese Batterie mit einem Ladegerät dafür laden und die Verstärker ohne den Wandler planen.',
  'refused.a-tight-box-is-closed-leave':
    'Ein straffes Gehäuse ist geschlossen; weglassen, was zu einem Kanal gehört, oder einen anderen Wunsch wählen.',
  'refused.a-vented-box-has-no-qtc':
    'Ein Gehäuse mit Kanal hat kein Qtc; das weglassen oder ein geschlossenes verlangen.',
  'refused.a-volume-or-qtc-that-is':
    'Ein angegebenes Volumen oder Qtc lässt nichts zu suchen; den Wunsch oder die Zahl angeben.',
  'refused.allowed': 'Erlaubt: {bounds}.',
  'refused.cannot-be-compared-without-its': '{name} lässt sich nicht vergleichen ohne {figure}.',
  'refused.conflicting-input': 'Zwei Angaben schließen einander aus oder widersprechen sich.',
  'refused.drivers-counts-amplifiers-kinds-of-box':
    '{driverCount} Lautsprecher × {counts} Anzahlen × {amplifierCount} Verstärker × {kinds} Gehäusearten ergeben {all} Fälle; höchstens {maximum} je Anfrage.',
  'refused.fuse-voltage': 'Eine Sicherung ist für weniger Spannung gemacht, als sie abschalten müsste.',
  'refused.given': '= {value} {unit}',
  'refused.given-twice':
    'Der Verstärker ist mit {field} {own} angegeben und in draw mit {older}; einmal angeben, neben den ratings.',
  'refused.insulation-below-ambient':
    'Die Isolierung eines Kabels darf nicht so warm werden wie der Ort, an dem es liegt.',
  'refused.last-part': 'Von {parts} Teilen hat der letzte den Index {last}.',
  'refused.part-of-another-request': 'Der Teil gehört zu einer anderen Anfrage.',
  'refused.part-does-not-add-up': 'Was besteht und was ausschied, ist nicht, was gewogen wurde.',
  'refused.first-part-of': 'Der erste Teil ist einer von {parts}.',
  'refused.parts-counted': 'Es gibt {parts} Teile, ab 0 gezählt.',
  'refused.part-twice': 'Teil {part} ist doppelt da.',
  'refused.parts-missing': 'Von {parts} Teilen fehlen: {absent}.',
  'refused.no-such-sentence': 'Kein Hinweis des Katalogs sagt das.',
  'refused.no-such-driver': 'Die Suche hat keinen solchen Lautsprecher.',
  'refused.no-such-amplifier': 'Die Suche hat keinen solchen Verstärker.',
  'refused.no-such-caution': 'Der Teil hat keinen solchen Hinweis.',
  'refused.no-box-fits': 'Kein Gehäuse passt.',
  'refused.no-driver-suits':
    'Kein Lautsprecher dieser Größe findet in diesem Raum ein Gehäuse. Kleinere oder weniger Lautsprecher nehmen, oder mehr Raum geben.',
  'refused.leaflet-without-size':
    'Ein Kanal braucht die Größe der Membran: Nenndurchmesser, Sd oder die Fläche des Kanals angeben.',
  'refused.least': 'mindestens {bound} {unit}',
  'refused.missing-input': 'Die Angaben bestimmen nicht, wonach gefragt ist.',
  'refused.most': 'höchstens {bound} {unit}',
  'refused.no-solution': 'Die Angaben sind gültig, aber kein Entwurf erfüllt sie.',
  'refused.not-positive': 'Eine Größe, die eine endliche Zahl über null sein muss, ist es nicht.',
  'refused.one-amplifier-on-one-battery-has':
    'Ein Verstärker an einer Batterie hat keinen Verteiler und keinen Zweig; das weglassen, oder die anderen Verstärker, eine zweite Batterie oder einen Wandler angeben.',
  'refused.one-way-excursion': 'seine Auslenkung in eine Richtung',
  'refused.other-place': 'Der andere Ort derselben Angabe.',
  'refused.out-of-range': 'Eine Größe liegt außerhalb des Bereichs, in dem die Rechnung gilt.',
  'refused.qtc-belongs-to-a-closed-box':
    'Qtc gehört zu einem geschlossenen Gehäuse, der Kanal zu einem offenen; nur die Angaben einer Art machen.',
  'refused.request': 'die Anfrage',
  'refused.rms-rating': 'seine Dauerleistung (RMS)',
  'refused.two-of-the-are-called-the':
    'Zwei der {list, select, drivers {angegebenen Lautsprecher} other {angegebenen Verstärker}} heißen {name}; die Antwort könnte sie nicht unterscheiden.',
  'refused.undefined-rating':
    'Eine Leistungsangabe ist keine Dauerleistung (RMS) und lässt sich mit keiner vergleichen.',
  'refused.unknown-designation': 'Eine Bezeichnung nennt kein Glied ihrer veröffentlichten Reihe.',
  'refused.volume-and-qtc-of-a-closed':
    'Volumen und Qtc eines geschlossenen Gehäuses folgen auseinander; eines davon angeben.',
  'refused.waiting': 'Dieser Teil braucht {what}, und das hat der Plan nicht.',
  'refused.where-price-counts-every-driver-and':
    'Wo der Preis zählt, braucht jeder Lautsprecher und jeder Verstärker einen.',
  'refused.with-every-weight-zero-there-is': 'Sind alle Gewichte null, gibt es keine Reihenfolge.',
  'refused.a-box-has-a-port-or-radiators':
    'Ein Gehäuse hat einen Kanal oder Passivmembranen: weglassen, was zum anderen gehört.',
  'refused.radiators-on-both-sides-come-in-pairs':
    'Passivmembranen auf beiden Seiten gibt es paarweise: eine gerade Zahl angeben, oder eine Fläche.',
  'refused.a-box-with-radiators-needs-theirs':
    'Ein Gehäuse mit Passivmembranen braucht deren Datenblatt: Fläche, bewegte Masse, Nachgiebigkeit (oder Resonanz, oder Vas), Hub in eine Richtung, Ausschnitt, Flansch und Tiefe von einer.{region}',
  'refused.radiators-sweep':
    ' Zu suchen sind Passivmembranen, die zusammen {volumeL} L in eine Richtung bewegen, Fläche mal Hub: etwa das Doppelte der Lautsprecher (übliche Praxis, ohne Quelle).',
  'refused.no-box-for-the-radiators':
    'Keine verlangte Gehäuseart hat Passivmembranen: sie weglassen oder Gehäuse mit ihnen zulassen.',
  'refused.a-front-chamber-belongs-to-a-band-pass':
    'Eine vordere Kammer gehört zum Bandpass: diese Art verlangen oder die Kammer weglassen.',
  'refused.a-band-pass-has-tubes':
    'Der Kanal eines Bandpasses ist ein Rohr, und nicht an der Rückwand: ein Schlitz liefe durch die Trennwand, und die Rückwand schließt die andere Kammer.',
  'refused.a-band-pass-has-its-drivers-between':
    'Die Lautsprecher eines Bandpasses stehen zwischen seinen zwei Kammern: ihre Fläche weglassen.',
  'refused.a-band-pass-has-four-walls':
    'Ein Bandpass wird zwischen vier Wänden mit aufrechter Front geplant: in diesen Raum passt eine andere Art Gehäuse.'
})
