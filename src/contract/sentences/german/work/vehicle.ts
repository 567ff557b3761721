/** German: steps in the vehicle. */
import type { vehicleSentences } from '../../english/work/vehicle.ts'
import { translation } from '../../form/translation.ts'

export const germanVehicle = translation<typeof vehicleSentences>()({
  'vehicle.a-capacitor-that-is-in-already': 'Ein schon eingebauter Kondensator wird über seinen Widerstand entladen.',
  'vehicle.a-copy-of-the-wiring-picture': 'Eine Kopie des Schaltbilds kommt in die Bordmappe.',
  'vehicle.a-fuse-holder-at-each-end':
    '{second} Je ein Sicherungshalter an jedem Ende dessen, was die Batterien verbindet, und einer an ihrem eigenen Pol. Alle Sicherungen bleiben draußen.',
  'vehicle.a-relay-with-its-diode-switched':
    'Ein Relais mit Diode neben dem Verstärker{fuse}, geschaltet von einem Zubehörstromkreis, den das Handbuch freigibt, angezapft hinter einer Sicherung von {tapFuseA} A.',
  'vehicle.a-spanner-wrapped-in-tape-but': 'Ein Schraubenschlüssel, bis auf das Maul mit Band umwickelt.',
  'vehicle.a-straightened-wire-hanger-does-for':
    'Ein gerader Kleiderbügeldraht mit umklebtem Ende ersetzt den Einziehdraht.',
  'vehicle.a-thick-rubber-glove-tied-over': 'Ein dicker Gummihandschuh, über die Klemme gebunden.',
  'vehicle.all-cables': 'alle {runs} Kabel {designation}',
  'vehicle.all-fuses-stay-out': '{circuit} Alle Sicherungen bleiben draußen.',
  'vehicle.amplifier': 'Verstärker',
  'vehicle.amplifiers': '{length} Verstärker',
  'vehicle.an-old-plastic-card-or-a': 'Eine alte Plastikkarte oder ein Holzspatel ersetzt den Hebel.',
  'vehicle.as-short-as-it-goes': 'so kurz wie möglich',
  'vehicle.as-the-handbook-says-ready-mode':
    'Nach dem Handbuch: Fahrbereitschaft aus, Schlüssel weg, Ladekabel ab. Von allen orangefarbenen Kabeln fernbleiben.',
  'vehicle.at-most-of-cable-between-the': 'Höchstens {tail} Kabel zwischen Pol und Sicherung, {more}.',
  'vehicle.beside-the-amplifier-terminals-covered-its':
    'Neben dem Verstärker, Anschlüsse abgedeckt, die Kabel noch nicht daran. Den Ladewiderstand daneben anbinden.',
  'vehicle.beside-the-amplifier-upright-with-air':
    'Neben dem Verstärker, stehend, mit Luft um die Rippen, {rated} A: seine {input}-V-Seite zur Hauptleitung, seine {nominal}-V-Seite zum Verstärker. Beide kennzeichnen.',
  'vehicle.between-two-clips-nothing-moves-by':
    'Zwischen zwei Schellen lässt sich von Hand nichts bewegen; Pedale und Sitze gehen ihren ganzen Weg.',
  'vehicle.clear-of-pedals-steering-seat-rails':
    'Frei von Pedalen, Lenkung, Sitzschienen, Auspuff, Kraftstoffleitungen und Airbagleitungen; an beiden Enden 100 mm übrig lassen. Nichts anschließen.',
  'vehicle.connect-the-amplifier': 'Den Verstärker anschließen',
  'vehicle.crimp-the-lugs': 'Die Kabelschuhe verpressen',
  'vehicle.dealers-crimp-cut-lengths-above-25':
    'Händler verpressen abgelängte Kabel; über 25 mm² braucht es eine hydraulische Zange.',
  'vehicle.draw-through-the-new-grommet-and': 'Jetzt {trunk} durch die neue Tülle ziehen und rundum abdichten.',
  'vehicle.each-fuse-lies-within-its-distance': 'Jede Sicherung liegt innerhalb ihres Abstands von ihrer Batterie.',
  'vehicle.each-rating-can-be-read-with': 'Jeder Nennstrom ist bei geschlossenem Deckel lesbar.',
  'vehicle.empty-the-boot': 'Den Kofferraum leeren',
  'vehicle.every-fuse-is-out-and-the': 'Jede Sicherung ist draußen, und das Lautsprecherkabel bleibt ab.',
  'vehicle.every-ground-stays-on-the-body':
    'Jede Masse bleibt auf der Karosserieseite des Batteriesensors; am Minuspol sitzt nur der Sensor.',
  'vehicle.find-each-pair-by-measuring-note':
    'Jedes Paar durch Messen finden, die Farben notieren, dann Ader für Ader verbinden und sofort isolieren.',
  'vehicle.fit-the-distribution-block': 'Den Verteiler befestigen',
  'vehicle.fit-the-fuse-holder': 'Den Sicherungshalter befestigen',
  'vehicle.from-its-output-over-its-fuse': 'Vom Ausgang {designation} über den Sicherungshalter zum Verteiler.',
  'vehicle.from-its-output-over-the-fuse':
    'Vom Ausgang {designation} über den Sicherungshalter daneben zu {amplifier}.',
  'vehicle.from-the-switched-output-of-the': 'Vom Schaltausgang der Quelle zum Einschaltanschluss des Verstärkers.',
  'vehicle.ground-first-then-signal-and-turn':
    'Masse zuerst, dann Signal und Einschaltleitung, das Pluskabel zuletzt, mit dem Drehmoment seines Datenblatts.',
  'vehicle.in-a-tray-with-a-strap':
    'In einer Wanne mit Gurt oder Rahmen, an der Karosserie verschraubt, Pole abgedeckt; ihr Entgasungsschlauch führt nach außen, außer bei Lithium.',
  'vehicle.in-its-sheath-all-the-way': 'ganz im Schutzschlauch',
  'vehicle.input-and-output-are-not-exchanged':
    'Eingang und Ausgang sind nicht vertauscht; kein Kabel der einen Seite reicht an einen Anschluss der anderen.',
  'vehicle.it-bends-nowhere-tighter-than-five': 'Nirgends enger gebogen als der fünffache Durchmesser.',
  'vehicle.it-cannot-be-moved-by-hand': 'Von Hand lässt sich nichts bewegen; Regler und Sicherungen sind erreichbar.',
  'vehicle.it-does-not-move-when-you': 'Es rührt sich nicht, wenn man schiebt.',
  'vehicle.it-ends-on-the-body-side':
    'Sie endet auf der Karosserieseite des Batteriesensors, wo der Hersteller Massen vorsieht; am Minuspol sitzt nur der Sensor.',
  'vehicle.it-ends-where-the-maker-wants':
    'Sie endet, wo der Hersteller Massen vorsieht: auf der Karosserieseite eines Batteriesensors, nie dahinter.',
  'vehicle.its-fuses-stay-out': 'Seine Sicherungen bleiben draußen.',
  'vehicle.its-own-a-fuse-in-the': ', gespeist von dessen Plusanschluss über eine Sicherung von {fuseA} A',
  'vehicle.its-service-disconnect-is-for-a':
    'Die Servicetrennstelle ist Sache einer Person, die für dieses Fahrzeug geschult ist.',
  'vehicle.label-it': 'Beschriften',
  'vehicle.lay-m-from-the-battery-to':
    'Jetzt {trunk}, {positiveLength} m, von der Batterie zum Platz des Verstärkers verlegen, mit so vielen Schellen, wie die Stückliste zählt.',
  'vehicle.lay-the-loudspeaker-cable': 'Das Lautsprecherkabel verlegen',
  'vehicle.lay-the-power-cable': 'Das Stromkabel verlegen',
  'vehicle.lay-the-return': 'Die Rückleitung verlegen',
  'vehicle.lay-the-return-beside-the-positive':
    'Die Rückleitung neben dem Pluskabel verlegen, ebenfalls {designation}, {returnLength} m.',
  'vehicle.lay-the-signal-lead': 'Die Signalleitung verlegen',
  'vehicle.turn-on-from-one-to-the-next':
    'Vom Einschaltanschluss jedes Verstärkers weiter zum nächsten, {length} m, beide Adern in einer Zwillingshülse.',
  'vehicle.lay-the-turn-on-wire': 'Die Einschaltleitung verlegen',
  'vehicle.lay-the-twisted-pairs-m-away':
    'Die verdrillten Paare verlegen, {length} m, abseits vom Stromkabel{more}; kein Schirm, keine Ader an die Karosserie. Noch nicht an den Verstärker.',
  'vehicle.leave-it-off-the-amplifier': 'Noch nicht an den Verstärker.',
  'vehicle.leave-it-off-the-amplifier-its': 'Noch nicht an den Verstärker, Enden isoliert.',
  'vehicle.leave-the-tailgate-and-a-window':
    'Heckklappe und ein Fenster offen lassen: ohne Batterie gehen die Schlösser vielleicht nicht mehr auf.',
  'vehicle.leave-yellow-connectors-closed': 'Gelbe Stecker geschlossen lassen.',
  'vehicle.less-than-0-1-from-the':
    'Weniger als 0,1 Ω vom Kabelschuh zur gelösten Minusklemme, die Messleitungen selbst abgezogen.',
  'vehicle.less-than-1-v-across-it': 'Weniger als 1 V darüber, bevor eine Hand in die Nähe kommt.',
  'vehicle.level-ground-in-the-open-or':
    'Ebener Grund, im Freien oder bei weit offener Tür; Feststellbremse an, Räder verkeilt, Schlüssel außer Reichweite des Autos.',
  'vehicle.lugs-cut-square-strip-to-the':
    '{lugs} Kabelschuhe: gerade abschneiden, auf Hülsentiefe abisolieren, mit dem Einsatz dieses Querschnitts verpressen, den Schrumpfschlauch darüberziehen.',
  'vehicle.m-from-the-amplifier-to-the':
    '{more}{designation}, {length} m, vom Verstärker zum Anschlussterminal des Gehäuses, Plus gekennzeichnet.',
  'vehicle.m-on-the-other-side-of':
    '{length} m auf der anderen Fahrzeugseite als das Stromkabel; dieses nur im rechten Winkel kreuzen.',
  'vehicle.make-the-ground-point': 'Den Massepunkt herstellen',
  'vehicle.make-the-ground-points': 'Die Massepunkte herstellen',
  'vehicle.measured-along-the-cable-the-distance': 'Am Kabel entlang gemessen stimmt der Abstand.',
  'vehicle.mount-the': '{more} befestigen',
  'vehicle.mount-the-capacitor': 'Den Kondensator befestigen',
  'vehicle.mount-the-converter': 'Den Wandler befestigen',
  'vehicle.mount-the-second-battery': 'Die zweite Batterie befestigen',
  'vehicle.never-from-a-circuit-of-airbags': 'Nie von einem Stromkreis für Airbags, Bremsen, Lenkung oder Licht.',
  'vehicle.no-connector-hangs-open': 'Kein Stecker hängt offen.',
  'vehicle.no-core-reads-less-than-1': 'Keine Ader hat weniger als 1 kΩ zur Karosserie.',
  'vehicle.no-other-wire-is-touched': 'Keine andere Leitung ist berührt.',
  'vehicle.no-ready-light-charging-cable-out': 'Keine Fahrbereitschaftsleuchte; Ladekabel ab.',
  'vehicle.no-solder-it-wicks-under-the':
    'Nicht löten: das Lot zieht unter die Isolierung, wo die Litzen dann brechen.',
  'vehicle.no-strand-lies-outside-a-clamp': 'Kein Draht liegt außerhalb einer Klemme; an jedem Kabel ziehen.',
  'vehicle.note-what-must-stay-within-reach':
    'Notieren, was erreichbar bleiben muss: Reserverad oder Pannenset, Wagenheber, Abschleppöse, Warndreieck, Entriegelung der Heckklappe, Luken, Entlüftungen.',
  'vehicle.open-the-trim': 'Die Verkleidung öffnen',
  'vehicle.park-it-safely': 'Sicher abstellen',
  'vehicle.pass-the-bulkhead': 'Das Kabel durch die Spritzwand führen',
  'vehicle.pull-at-each-with-both-hands':
    'An jedem mit beiden Händen ziehen, so fest es geht: nichts rührt sich, kein Draht liegt außen.',
  'vehicle.pull-in-each-direction-with-twice':
    'In jede Richtung mit ihrem doppelten Gewicht ziehen: sie bewegt sich weniger als 25 mm.',
  'vehicle.scrape-to-bright-metal-then-lug':
    'Metallisch blank schaben, dann Kabelschuh, Zahnscheibe, Schraube mit ihrem Drehmoment; Fett oder Lack darüber.',
  'vehicle.screw-down-beside-the-battery': 'Jetzt {more} neben der Batterie anschrauben. {facts}',
  'vehicle.screw-it-down-beside-the-amplifiers':
    'Neben den Verstärkern anschrauben, abgedeckt. Die Abzweige legen: {join}.',
  'vehicle.sizes-as-in-the-wiring-picture': 'Querschnitte wie im Schaltbild.',
  'vehicle.switch-the-electric-drive-off': 'Den elektrischen Antrieb ausschalten',
  'vehicle.take-a-grommet-of-the-vehicle':
    'Eine Tülle des Fahrzeugs nehmen, die Platz hat, sonst bohren, wo beide Seiten frei sind, mit Tiefenanschlag; entgraten, die Kante streichen.',
  'vehicle.take-out-the-floor-and-its': 'Boden und Abdeckung herausnehmen, so weit nötig.',
  'vehicle.take-the-battery-off': 'Die Batterie abnehmen',
  'vehicle.take-the-negative-terminal-off-first':
    'Die Minusklemme zuerst abnehmen und isoliert so festbinden, dass sie nicht auf den Pol springt.',
  'vehicle.tap-the-loudspeaker-wires-of-the': 'Die Lautsprecherleitungen der Quelle anzapfen',
  'vehicle.the-cable': 'das Kabel {designation}',
  'vehicle.the-cable-moves-in-the-grommet':
    'Das Kabel bewegt sich in der Tülle und berührt kein Metall; daneben kommt kein Licht durch.',
  'vehicle.the-charger-beside-the-block-with':
    'Das Ladegerät neben den Verteiler, mit Luft ringsum, {rated} A, sein Signal von einem Anschluss, der nur bei laufendem Motor Spannung führt. ',
  'vehicle.the-free-gap-is-measured': 'Der freie Abstand ist gemessen.',
  'vehicle.the-fuse-stays-in-your-pocket': 'Die Sicherung bleibt in der Tasche, und noch kommt nichts an die Batterie.',
  'vehicle.the-holder': 'den Halter',
  'vehicle.the-holders': 'die {runs} Halter',
  'vehicle.the-list-of-what-must-stay': 'Die Liste dessen, was erreichbar bleiben muss, hängt neben dem Plan.',
  'vehicle.the-negative-terminal-is-off-and':
    'Die Minusklemme ist ab und kann den Pol nicht berühren; 0 V von ihr zum Pluspol.',
  'vehicle.the-relay-beside-the-block-its':
    'Das Relais neben den Verteiler, seine Spule an eine Leitung, die nur bei laufendem Motor Spannung führt. ',
  'vehicle.the-same-size-is-printed-on': 'Auf beiden Kabeln ist derselbe Querschnitt aufgedruckt.',
  'vehicle.the-size-of-the-plan-is': 'Der Querschnitt des Plans ist aufgedruckt; kein loser Draht.',
  'vehicle.the-stripe-of-the-diode-points': 'Der Ring der Diode zeigt zur Plusseite der Spule.',
  'vehicle.the-switched-output-of-the-source':
    'Der Schaltausgang der Quelle steuert ein Relais mit Diode neben dem Verstärker{fuse}.',
  'vehicle.thick-body-metal-or-a-ground':
    'Dickes Karosserieblech oder ein Massebolzen des Herstellers; nie eine Schraube von Sitz, Gurt oder Airbag.',
  'vehicle.through-bolt-it-to-a-board':
    'Mit Durchgangsschrauben an ein Brett oder einen Halter an der Karosserie, nicht an eine Wand des Gehäuses: die rüttelt ihn los, und seine Schrauben machen sie undicht.',
  'vehicle.to': '{designation} zu {amplifier}',
  'vehicle.to-the-converter-beside-the-amplifier': ', zum Pegelwandler neben dem Verstärker',
  'vehicle.two-blocks-of-wood-one-on': 'Zwei Holzklötze, je einer auf jeder Seite eines Rades, ersetzen Keile.',
  'vehicle.unclip-sills-and-side-trim-along':
    'Einstiegsleisten und Seitenverkleidung entlang der Kabelwege mit einem Kunststoffhebel ausclipsen; jede Klammer fotografieren.',
  'vehicle.upright-or-flat-with-its-fins':
    'Stehend oder flach mit freien Rippen, mindestens 50 mm Luft auf jeder Seite (oder was sein Datenblatt verlangt), kein Teppich darüber; nicht am tiefsten Punkt des Kofferraums, wo sich Wasser sammelt, und nicht unter einem Sitz, dessen Stecker dafür zu öffnen wäre.',
  'vehicle.wait-as-long-as-the-handbook':
    'So lange warten, wie das Handbuch verlangt, bevor nahe an Airbagleitungen gearbeitet wird.',
  'vehicle.where-the-negative-post-wears-a':
    'Trägt der Minuspol einen Batteriesensor, bleibt jede Masse auf dessen Karosserieseite.',
  'vehicle.where-the-two-run-side-by': 'Wo beide nebeneinander laufen, liegen mindestens 200 mm dazwischen.',
  'vehicle.where-the-vehicle-has-a-second':
    'Hat das Fahrzeug schon eine zweite Batterie, auch deren Minusklemme abnehmen.',
  'vehicle.write-each-fuse-rating-beside-its':
    'Jeden Nennstrom neben seinen Sicherungshalter schreiben und „Stromkabel“ dorthin, wo es in den Innenraum kommt.'
})
