/** German: steps of the first start on the vehicle side. */
import type { startSentences } from '../../english/work/start.ts'
import { translation } from '../../form/translation.ts'

export const germanStart = translation<typeof startSentences>()({
  'start.a-for': '{ratingA} A für {amplifier}',
  'start.a-main-fuse': 'Hauptsicherung {ratingA} A',
  'start.a-rated-fuse': 'Sicherung {ratingA} A',
  'start.a-short-round-with-familiar-music':
    'Eine kurze Runde mit bekannter Musik, Hände weg von den Reglern; dann Sicherungshalter und Kabelschuhe befühlen. Nach einem Monat Drehmoment, Gurte und Kabelschuhe nachsehen.',
  'start.about-mv-at-most-mv-more':
    'Etwa {expected} mV, höchstens {highest} mV; mehr heißt: eine Verbindung ist neu zu machen, oder die Karosserie leitet schlechter als angenommen: messen und neu planen.',
  'start.all-that-lie-side-by-side': ', alle {runs}, die nebeneinander liegen,',
  'start.and-the-a-fuse-at-the': ' und die Sicherung {ratingA} A am Wandler',
  'start.at-each-end': ' an jedem Ende',
  'start.at-most-ma': 'Höchstens {value} mA.',
  'start.at-one-metre-no-whine-and':
    'In einem Meter Abstand kein Pfeifen und kein Knacken; Radio und Schlüssel arbeiten wie zuvor.',
  'start.battery-on-main-fuse-out': 'Batterie an, Hauptsicherung draußen',
  'start.before-any-later-work': 'Vor jeder späteren Arbeit',
  'start.before-any-later-work-on-the':
    'Vor jeder späteren Arbeit an der Versorgung: Hauptsicherung heraus, Minusklemme ab, dann den Widerstand ({precharge}) an die beiden Anschlüsse des Kondensators. Er bleibt beim Kondensator angebunden.',
  'start.body-side-of-the-battery-sensor': 'zur Karosserieseite des Batteriesensors',
  'start.box-amplifier-battery-lugs-by-torque':
    'Gehäuse, Verstärker, Batterie, Kabelschuhe: mit Drehmoment und von Hand. Die Liste dessen öffnen, was erreichbar bleiben muss.',
  'start.charge-the-capacitor': 'Den Kondensator laden',
  'start.connect-the-battery-again-negative-last':
    'Die Batterie wieder anschließen, Minus zuletzt, Gesicht abgewandt. Die Hauptsicherung bleibt draußen.',
  'start.current-of-the-parked-car': 'Strom des geparkten Autos',
  'start.drop-of-the-ground': 'Spannungsfall der Masse',
  'start.drop-of-the-plus-side': 'Spannungsfall der Plusseite',
  'start.engine-off-listen-at-the-isolating':
    'Motor aus: am Trennrelais horchen und seine Spule messen. Dann den Motor starten und über den geschlossenen Kontakten messen.',
  'start.everything-is-held': 'Alles ist befestigt',
  'start.everything-off-doors-latched-the-vehicle':
    'Alles aus, Türen verriegelt, Fahrzeug nach einer halben Stunde im Ruhezustand: Gleichstromzange für Milliampere um das Pluskabel des Verstärkers. Nie den Strombereich eines Messgeräts an eine Batterie.',
  'start.everything-to-its-minimum': 'Alles auf Minimum',
  'start.filters': 'Filter',
  'start.first-drive': 'Erste Fahrt',
  'start.fuse-out-amplifier-leads-joined-measure':
    'Sicherung draußen, Leitungen am Verstärker angeschlossen: vom Verstärkerende des Pluskabels zur Karosserie messen.',
  'start.gain-by-meter': 'Verstärkung nach Messgerät',
  'start.halves-of-the-bridge': 'Hälften der Brücke',
  'start.hand-it-over': 'Übergeben',
  'start.hold-the-resistor-across-with-insulated':
    'Den Widerstand ({precharge}) mit isolierten Klemmen etwa {prechargeDone} lang an {holder} halten; er wird heiß.',
  'start.in-the-open-engine-or-ready':
    'Im Freien: Motor oder Fahrbereitschaft an, Lautstärke am kleinsten; dann Licht, Gebläse und Heckscheibenheizung nacheinander an.',
  'start.it-gives-nothing-with-the-engine': 'Bei stehendem Motor gibt es nichts ab. {readings}',
  'start.last-the-a-fuse-of-the': ' Zuletzt die Sicherung {ratingA} A der zweiten Batterie.',
  'start.less-than-1-v-across-the': 'Weniger als 1 V über dem Widerstand; erst dann die Sicherung.',
  'start.less-than-1-v-across-the-2':
    'Weniger als 1 V über dem Kondensator, bevor Hand oder Werkzeug in die Nähe kommt.',
  'start.level-of-the-bass': 'Pegel des Basses',
  'start.level-of-the-source': 'Pegel der Quelle',
  'start.listen-for-noise': 'Auf Störgeräusche horchen',
  'start.look-along-from-end-to-end':
    'Von Ende zu Ende nachsehen: {what}{along}. Tülle in jeder Blechwand, frei von Hitze, Pedalen, Sitzschienen und scharfen Kanten, befestigt.',
  'start.look-along-the-whole-cable': 'Das ganze Kabel ansehen',
  'start.look-for-a-short': 'Auf Kurzschluss prüfen',
  'start.look-for-clipping': 'Auf Übersteuerung prüfen',
  'start.loudspeaker-leads-on': 'Lautsprecherleitungen an',
  'start.main-fuse': 'Hauptsicherung',
  'start.main-fuse-out-put-then-the':
    'Hauptsicherung heraus, dann {where} einsetzen: {join}{own}. Danach wieder die Hauptsicherung.',
  'start.meter-on-speakers-off': 'Messgerät an, Lautsprecher ab',
  'start.no-bare-metal-touches-it-and': 'Kein blankes Metall berührt es, und es kann sich weder bewegen noch scheuern.',
  'start.no-clip-is-left-over-no': 'Keine Klammer ist übrig, kein Kabel zu sehen.',
  'start.no-core-shows-less-than-1':
    'Keine Ader hat weniger als 1 kΩ zur Karosserie oder zum anderen Paar; innerhalb eines Paars liegen wenige Ohm Lautsprecher oder nichts, wo er abgeklemmt ist.',
  'start.no-joint-is-warm': '{readings} Keine Verbindung ist warm.',
  'start.no-more-than-a-small-spark':
    'Nicht mehr als ein kleiner Funke, während der Verstärker lädt; kein Geruch, nichts warm.',
  'start.no-voltage-at-the-coil-with':
    'Bei stehendem Motor keine Spannung an der Spule; läuft er, zieht das Relais an. {readings}',
  'start.no-warm-joint': 'Keine warme Verbindung.',
  'start.nobody-inside-or-everybody-with-ear':
    'Niemand im Auto oder alle mit Gehörschutz. Bei dichter Bassmusik mit vollem Pegel und Motor im Leerlauf {from} zum Plusanschluss des Verstärkers messen, über dem Sicherungshalter und am Verstärker.',
  'start.nothing-moves-spare-wheel-towing-eye':
    'Nichts rührt sich; Reserverad, Abschleppöse und Entriegelung der Heckklappe sind erreichbar wie zuvor, und die Sicht nach hinten ist frei.',
  'start.only-the-in-every-fuse-behind':
    'Nur die {main} eingesetzt, jede Sicherung hinter dem Wandler draußen: an seinem Eingang und an seinem Ausgang messen. Dann die Hauptsicherung wieder herausnehmen.',
  'start.output-of-the-converter':
    '{pole, select, positive {vom Plusausgang des Wandlers} other {zum Minusausgang des Wandlers}}',
  'start.output-of-the-converter-before-anything': 'Ausgang des Wandlers, bevor etwas daran hängt',
  'start.polarity-at-the-steering-wheel': 'Polung am Lenkrad',
  'start.polarity-of-the-cones': 'Polung der Membranen',
  'start.post-of-the-battery': '{pole, select, positive {vom Pluspol der Batterie} other {zum Minuspol der Batterie}}',
  'start.put-a-in-the-holder-of': 'Je eine {rated} in den Halter jedes der {runs} Kabel einsetzen{ends}.',
  'start.put-fuses': '{block}{main}{second}',
  'start.put-the-fuse-in': 'Die Sicherung einsetzen',
  'start.put-the-fuses-of-the-branches': 'Die Sicherungen der Abzweige einsetzen: {join}. ',
  'start.put-the-in-its-holder': 'Die {rated} in ihren Halter einsetzen{ends}.',
  'start.put-the-trim-back-clip-by':
    'Die Verkleidung Klammer für Klammer nach den Fotos zurücksetzen; kein Kabel unter der Abdeckung eines Airbags.',
  'start.resistance-of-the-loudspeaker-leads': 'Widerstand der Lautsprecherleitungen',
  'start.set-the-charger-to-the-kind':
    'Das Ladegerät nach seiner Anleitung auf die Art der zweiten Batterie einstellen. Motor starten: es gibt bis zu {rated} A ab; Motor wieder aus.',
  'start.show-whoever-drives-the-car-where':
    'Wer das Auto fährt, erfährt: wo die Hauptsicherung sitzt und was bei Rauch zu tun ist (Hauptsicherung oder Minusklemme ab, alle hinaus), Ersatz nur mit gleichem Nennstrom, wie laut wie lange. Plan, Messwerte und Papiere für Prüfstelle und Versicherung übergeben.',
  'start.sirens-and-horns-are-heard-nothing':
    'Martinshorn und Hupen sind zu hören; nichts lose, nichts warm, keine Warnleuchte.',
  'start.source-off-the-twisted-signal-pairs':
    'Quelle aus, die verdrillten Signalpaare vom Verstärker oder seinem Wandler ab: jede Ader zur Karosserie messen, und die Adern jedes Paars zu denen des anderen.',
  'start.start-the-engine-nothing-plays-gain':
    'Motor starten, nichts spielt, Verstärkung am Minimum: die Spannung an der Batterie und an jedem Verstärker messen.',
  'start.test-the-signal-lead': 'Die Signalleitung prüfen',
  'start.the-cable': 'das Kabel',
  'start.the-cables': '{cableCount, plural, one {das Kabel {sizes}} other {die Kabel {sizes}}}',
  'start.the-empty-fuse-holder': 'dem leeren Sicherungshalter',
  'start.the-empty-fuse-holder-behind-the':
    'dem leeren Sicherungshalter hinter dem Wandler (dafür die Hauptsicherung eingesetzt)',
  'start.the-fuse-at-the-output-of': 'die Sicherung am Ausgang des Wandlers',
  'start.the-fuses-of-the-branches-in': 'die Sicherungen der Abzweige',
  'start.the-main-fuse-was-pulled-and': 'Diese Person hat die Hauptsicherung einmal gezogen und wieder eingesetzt.',
  'start.the-reading-rises-beyond-1-k':
    'Die Anzeige steigt über 1 kΩ, sobald das Messgerät die Kondensatoren des Verstärkers geladen hat; stehende wenige Ohm sind ein Kurzschluss.',
  'start.the-readings-of-this-step-lie': 'Die Messwerte dieses Schritts liegen in ihren Grenzen.',
  'start.the-voltage-of-the-v-battery':
    'Am Eingang die Spannung der {input}-V-Batterie, am Ausgang etwa {output} V. Bei allem anderen: dahinter nichts anschließen, denn ein Verstärker für {nominal} V übersteht {input} V nicht. {readings}',
  'start.trim-back': 'Verkleidung zurück',
  'start.try-the-charger': 'Das Ladegerät probieren',
  'start.try-the-isolating-relay': 'Das Trennrelais probieren',
  'start.turn-on': 'Einschalten',
  'start.voltages-with-the-engine-running': 'Spannungen bei laufendem Motor',
  'start.warm-check': 'Warmprüfung',
  'start.warning-lamps-go-out-as-they': 'Die Warnleuchten gehen aus wie zuvor; sonst geschieht nichts.',
  'start.with-the-same-music-measure-from': 'Bei derselben Musik vom Masseanschluss des Verstärkers {more} messen.'
})
