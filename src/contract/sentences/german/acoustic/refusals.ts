/** German for what the room `refusals-acoustic` says. */
import type { refusalsAcousticSentences } from '../../english/acoustic/refusals.ts'
import { translation } from '../../form/translation.ts'

export const germanRefusalsAcoustic = translation<typeof refusalsAcousticSentences>()({
  'refused.a-band-pass-needs-both-half':
    'Ein Bandpass braucht beide Halbleistungsfrequenzen, die untere unter der oberen.',
  'refused.a-band-pass-needs-its-upper':
    'Ein Bandpass braucht die obere Halbleistungsfrequenz mindestens ein Fünftel über der unteren.',
  'refused.a-cabin-needs-its-volume-its': 'Ein Innenraum braucht Volumen, Länge oder eine gemessene Kurve.',
  'refused.a-closed-box-can-only-raise': 'ein geschlossenes Gehäuse kann Qts {qts} nur erhöhen, nicht auf {qtc} senken',
  'refused.a-custom-enclosure-counts-and-joins':
    'Ein eigenes Gehäuse zählt und verbindet seine Lautsprecher in enclosure.driverGroups.',
  'refused.a-enclosure-has-a-chamber': 'Ein Gehäuse der Art {kind} hat eine Kammer „{name}“.',
  'refused.a-filter-of-chosen-q-has': 'Ein Filter mit gewähltem Q hat die Ordnung 2, nicht {order}.',
  'refused.a-frequency-of-losses-says-nothing': 'Eine Frequenz der Verluste sagt ohne ein Q der Verluste nichts.',
  'refused.a-linkwitz-riley-filter-has-an': 'Ein Linkwitz-Riley-Filter hat gerade Ordnung; {order} ist ungerade.',
  'refused.a-measured-curve-takes-the-place':
    'Eine gemessene Kurve tritt an die Stelle des Modells des Innenraums; eines von beiden angeben.',
  'refused.a-resistance-across-the-inductance-needs': 'Ein Widerstand über der Induktivität braucht die Induktivität.',
  'refused.a-resistance-across-the-second-inductance': 'Ein Widerstand über der zweiten Induktivität braucht diese.',
  'refused.air-that-is-given-by-its':
    'Luft, die mit Dichte und Schallgeschwindigkeit angegeben ist, hat keine Temperatur, die streuen könnte.',
  'refused.both-faces-of-the-cone-look':
    'Beide Seiten der Membran sehen auf einen Ort: was die eine gibt, nimmt die andere, und nichts ist zu hören.',
  'refused.box-driver-and-port-lie-too':
    'Gehäuse, Lautsprecher und Kanal liegen zu weit auseinander, um gerechnet zu werden.',
  'refused.chamber-loss-frequency': 'Ein Q der Verluste einer eigenen Kammer braucht die Frequenz, bei der es gilt.',
  'refused.damping-needs-two-of-qms-or': 'Die Dämpfung braucht zwei von: Qms (oder Rms), Qes (oder Bl), Qts.',
  'refused.density-and-speed-of-sound-go': 'Dichte und Schallgeschwindigkeit gehören zusammen.',
  'refused.drivers-cannot-be-split-into-strings':
    '{driverCount} Lautsprecher {each} lassen sich nicht in Ketten zu {stringCount} teilen.',
  'refused.drivers-cannot-be-split-into-strings.2':
    '{count} Lautsprecher lassen sich nicht in Ketten zu {inSeries} teilen.',
  'refused.full-drive-is-not-told-give':
    'Die volle Aussteuerung ist nicht gesagt: eine Spannung, eine Leistung oder die Belastbarkeit des Lautsprechers angeben.',
  'refused.give-either-temperature-and-pressure-or':
    'Entweder Temperatur und Druck oder Dichte und Schallgeschwindigkeit angeben.',
  'refused.give-one-of-the-three-a':
    'Eines von dreien angeben: einen Lautsprecher mit seiner Aussteuerung, ein verdrängtes Volumen oder einen Spitzenstrom der Luft.',
  'refused.give-the-coil-either-as-inductances':
    'Die Spule entweder als Induktivitäten oder als Potenzgesetz K·(jω)^n angeben.',
  'refused.give-the-tuning-from-which-the':
    'Die Abstimmung angeben, aus der die Länge folgt, oder die Länge, aus der die Abstimmung folgt.',
  'refused.give-the-tuning-or-a-port':
    'Die Abstimmung angeben, oder einen Kanal mit Größe und Länge, aus dem sie folgt.',
  'refused.give-the-voltage-or-the-power': 'Die Spannung oder die Leistung angeben.',
  'refused.give-voltagev-or-powerw-with-loadohm': 'voltageV angeben, oder powerW mit loadOhm, nicht beides.',
  'refused.in-its-place': '{names} genügte stattdessen.',
  'refused.is-missing': '{symbol} fehlt. {or}',
  'refused.is-neither-a-chamber-nor-outside': '„{name}“ ist weder eine Kammer noch "outside" oder "behind".',
  'refused.isobaric-drivers-come-in-pairs-every':
    'Isobare Lautsprecher kommen paarweise; jeder zählt, die Zahl ist also gerade.',
  'refused.list-and': '{first} und {last}',
  'refused.list-or': '{first} oder {last}',
  'refused.mmd-needs-sd-from-which-the': 'Mmd braucht Sd, woraus die Luftlast folgt.',
  'refused.mms-and-mmd-are-the-same': 'Mms und Mmd sind dieselbe Masse mit und ohne Luftlast: eine davon angeben.',
  'refused.names-another-place-already': '„{name}“ benennt schon einen anderen Ort.',
  'refused.no-limit-is-known-give-the':
    'Keine Grenze ist bekannt: Hub oder Belastbarkeit des Lautsprechers angeben, oder was der Verstärker kann.',
  'refused.none-of-them': 'keine davon',
  'refused.not-enough-figures-for-this-driver':
    'Zu wenige Angaben für diesen Lautsprecher. {usual}; dieses gibt {given}.',
  'refused.nothing-that-these-cones-move-leads':
    'Nichts, was diese Membranen bewegen, führt nach `outside`: es wäre nichts zu hören. Eine Membran, einen Kanal, Passivmembranen oder ein Leck angeben, das es tut.',
  'refused.on-each-side': 'auf jeder Seite',
  'refused.only-bears-on-the-air-that':
    '`{idle}` wirkt nur auf Luft, die ein Lautsprecher bewegt: den Lautsprecher angeben oder das weglassen.',
  'refused.port-loss-frequency': 'Ein Q der Verluste eines eigenen Kanals braucht die Frequenz, bei der es gilt.',
  'refused.qts-must-lie-below': 'Qts {qts} muss unter {name} {other} liegen.',
  'refused.samples-of-this-enclosure-at-frequencies':
    '{samples} Stichproben dieses Gehäuses bei {points} Frequenzen dauerten zu lange; höchstens {maximum}, oder weniger Frequenzen.',
  'refused.series-parallel-needs-four-coils-the': 'series-parallel braucht vier Spulen, der Lautsprecher hat {count}',
  'refused.the-amplifier-is-given-by-its':
    'Der Verstärker ist mit Spannung und Leistung angegeben; nur eines davon angeben.',
  'refused.the-chamber-of-a-enclosure-needs':
    'Die Kammer „{name}“ eines Gehäuses der Art {kind} braucht entweder Kanäle oder Passivmembranen.',
  'refused.the-family-chosen-q-needs-its': 'Die Familie chosen-q braucht ihr q.',
  'refused.the-family-fixes-the-q-of':
    'Die Familie {family} legt das Q ihrer Stufen fest; q weglassen oder chosen-q wählen.',
  'refused.the-frequencies-of-the-measured-curve':
    'Die Frequenzen der gemessenen Kurve müssen steigen; Nummer {fault} tut es nicht.',
  'refused.the-leak-corner-must-lie-below':
    'Die Eckfrequenz des Lecks muss unter der des Innenraums liegen, {cornerHz} Hz.',
  'refused.the-load-of-the-amplifier-belongs':
    'Die Last des Verstärkers gehört zu seiner Leistung; beide oder keine angeben.',
  'refused.the-measured-curve-has-frequencies-and':
    'Die gemessene Kurve hat {frequencyHz} Frequenzen und {gainDb} Werte.',
  'refused.the-moving-system-needs-two-of':
    'Das bewegte System braucht zwei von: Resonanz (fs), Nachgiebigkeit (Vas oder Cms), bewegte Masse (Mms).',
  'refused.the-network-has-states-the-response':
    'Das Netz hat {order} Zustände; die Antwort in der Zeit wird für höchstens {mostStates} verfolgt.',
  'refused.the-orders-of-all-filters-add':
    'Die Ordnungen aller Filter ergeben zusammen {order}; höchstens {highestTotalOrder}.',
  'refused.the-parts-of-this-network-differ':
    'Die Teile dieses Netzes sind zu verschieden groß, um seine Antwort in der Zeit zu verfolgen.',
  'refused.the-power-law-k-j-n': 'Das Potenzgesetz K·(jω)^n braucht K und n.',
  'refused.the-programme-ends-at-hz-not': 'Das Programm endet bei {toHz} Hz, nicht über seinem Anfang bei {fromHz} Hz.',
  'refused.the-range-ends-at-hz-not': 'Der Bereich endet bei {toHz} Hz, nicht über seinem Anfang bei {fromHz} Hz.',
  'refused.the-size-of-the-port-needs':
    'Die Größe des Kanals braucht die Luft, die er führt: einen Lautsprecher mit Aussteuerung, ein verdrängtes Volumen, einen Spitzenstrom der Luft oder die Größe selbst angeben.',
  'refused.these-figures-exclude-each-other-no':
    'Diese Angaben schließen einander aus: kein {symbol} über null passt zu {relation} mit {otherSymbol} wie angegeben.',
  'refused.usual-figures': 'Ein Datenblatt nennt meist fs, Qms, Qes (oder Qts), Vas, Sd und Re',
  'refused.a-radiator-needs-its-compliance':
    'Eine Passivmembran braucht ihre Nachgiebigkeit, ihre freie Resonanz oder ihr Vas: wenigstens eines davon.',
  'refused.the-sheet-of-the-radiator-contradicts':
    'Nach dieser Zahl ist die Nachgiebigkeit der Passivmembran {other} mm/N, nach der vorigen {first} mm/N: sie gehören nicht zu einem Ding.',
  'refused.a-front-chamber-needs-the-one-behind':
    'Eine vordere Kammer braucht die geschlossene hinter den Lautsprechern: beide Volumen angeben.'
})
