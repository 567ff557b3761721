/** German of reasons about amplifier, load, charging and signal, by their English wording. */
export const supplyPhrases: Readonly<Record<string, string>> = {
  'ratings taken as continuous RMS, all channels driven; peak, maximum and total figures cannot be matched':
    'Leistungen als Dauerleistung (RMS) mit allen Kanälen gelesen; Spitzen-, Höchst- und Gesamtwerte lassen sich nicht abgleichen',
  'driver power taken as continuous RMS of one driver, all its coils together':
    'Belastbarkeit als Dauerleistung (RMS) eines Lautsprechers mit allen Spulen gelesen',
  'no number of channels given: taken as a mono-block': 'keine Kanalzahl angegeben: als Monoblock angesetzt',
  'it bridges, so it has at least two channels': 'er ist brückbar, hat also mindestens zwei Kanäle',
  'each channel of a bridged pair sees half the load': 'jeder Kanal eines gebrückten Paars sieht die halbe Last',
  'one amplifier unless more are offered': 'ein Verstärker, wenn nicht mehr angeboten sind',
  'the power closest to the drivers’ rating first; price and size only count when asked for':
    'zuerst die Leistung, die der Belastbarkeit am nächsten kommt; Preis und Größe zählen nur, wenn danach gefragt ist',
  'rating supply of ANSI/CTA-2006, 14.4 V per 12 V, for what its own fuses pass':
    'Messspannung nach ANSI/CTA-2006, 14,4 V je 12 V, für das, was die eigenen Sicherungen durchlassen',
  'partial-load law from the efficiency': 'Teillastverhalten aus dem Wirkungsgrad',
  'full-scale test tone: the reading is the target itself':
    'Testton bei Vollaussteuerung: der Messwert ist das Ziel selbst',
  'no allowance for quiet recordings: the loudest music just reaches the target; an allowance is louder and clips loud recordings':
    'kein Zuschlag für leise Aufnahmen: die lauteste Musik erreicht gerade das Ziel; ein Zuschlag spielt lauter und übersteuert laute Aufnahmen',
  'class {class} at rated output, common practice; a data-sheet figure wins':
    'Klasse {class} bei Nennleistung, übliche Praxis; ein Wert aus dem Datenblatt geht vor',
  'idle draw of class {class}, common practice': 'Ruheaufnahme der Klasse {class}, übliche Praxis',
  'volts that a converter for 12 V units holds: 13.2 to 13.8 are usual':
    'Volt, die ein Wandler für 12-V-Geräte hält: üblich sind 13,2 bis 13,8',
  'output over input of a converter: data sheets say 0.82 to 0.92':
    'Abgabe zu Aufnahme eines Wandlers: Datenblätter nennen 0,82 bis 0,92',
  'a converter takes about 4 W with nothing at its output': 'ein Wandler nimmt im Leerlauf etwa 4 W auf',
  'amperes of the next rating that is sold above the full sine':
    'Ampere des nächsten käuflichen Nennstroms über dem vollen Sinus',
  'outputs that are sold': 'Ausgangsströme, die es zu kaufen gibt',
  'no class B output stage behind a converter gets this far, so an unnamed class above it is taken as D':
    'so weit kommt keine Endstufe der Klasse B hinter einem Wandler; eine ungenannte Klasse darüber gilt als D',
  'partial-load law from the efficiency: only a switching stage gets this far':
    'Teillastverhalten aus dem Wirkungsgrad: so weit kommt nur eine schaltende Endstufe',
  'partial-load law from the efficiency: a class AB stage, which draws more at part load':
    'Teillastverhalten aus dem Wirkungsgrad: eine Endstufe der Klasse AB, die bei Teillast mehr aufnimmt',
  'idle draw is never taken above a fifth of the full draw':
    'die Ruheaufnahme wird nie über einem Fünftel der vollen angesetzt',
  'mean power of music, over that of the sine': 'mittlere Leistung von Musik, bezogen auf die des Sinus',
  'the same of dense bass': 'dasselbe bei dichtem Bass',
  'more empties a battery in weeks': 'mehr leert eine Batterie in Wochen',
  'rating supply of ANSI/CTA-2006, 14.4 V per 12 V': 'Messspannung nach ANSI/CTA-2006, 14,4 V je 12 V',
  'usual charging voltage with the engine running': 'übliche Ladespannung bei laufendem Motor',
  'music source, displays and door electronics of a parked car: 3 A, our choice; measure it':
    'Radio, Anzeigen und Türelektronik des geparkten Autos: 3 A, unsere Wahl; messen',
  'a 12 V amplifier’s converter stops near 10.5 V when its sheet says nothing':
    'das Netzteil eines 12-V-Verstärkers setzt bei etwa 10,5 V aus, wenn das Datenblatt nichts sagt',
  'alternator output at idle 0.4 to 0.6 of its rating, common practice; give idleA when the rating line is known':
    'Lichtmaschine im Leerlauf beim 0,4- bis 0,6-Fachen des Nennstroms, übliche Praxis; idleA angeben, wenn das Typenschild bekannt ist',
  'a hot alternator gives about 85 % of its rating, common practice':
    'eine heiße Lichtmaschine gibt etwa 85 % ihres Nennstroms, übliche Praxis',
  'engine, lights and blower draw 20 to 60 A, common practice':
    'Motor, Licht und Gebläse nehmen 20 bis 60 A auf, übliche Praxis',
  'battery type not stated: flooded, which lasts shortest':
    'Batterieart nicht angegeben: Nassbatterie, die am kürzesten hält',
  'capacity is printed for 20 h': 'die Kapazität ist für 20 h aufgedruckt',
  'a starting battery is not discharged below half, common practice':
    'eine Starterbatterie wird nicht unter die Hälfte entladen, übliche Praxis',
  'a lithium battery is used to four fifths, common practice; its own management ends it':
    'eine Lithiumbatterie wird zu vier Fünfteln genutzt, übliche Praxis; ihre eigene Überwachung beendet es',
  'charged to running voltage': 'auf Fahrspannung geladen',
  'let down to nominal voltage': 'auf Nennspannung entladen',
  'engineering choice: about 20 W in the resistor at first, as a 21 W lamp takes':
    'unsere Wahl: zu Beginn etwa 20 W im Widerstand, so viel wie eine 21-W-Lampe',
  'a crimped lug or ring 0.2 mΩ, common practice': 'ein gepresster Kabelschuh 0,2 mΩ, übliche Praxis',
  'body return 2 mΩ (0.5 to 10): measure it, bonded, aluminium and composite bodies differ':
    'Rückweg durch die Karosserie 2 mΩ (0,5 bis 10): messen, geklebte, Aluminium- und Verbundkarosserien weichen ab',
  'main feeder: 3 % of nominal voltage on the cable, as electronics and feeders are classed':
    'Hauptleitung: 3 % der Nennspannung auf dem Kabel, wie für Elektronik und Zuleitungen üblich',
  'from here a drop from source to amplifier is too much':
    'von hier an ist der Spannungsfall von der Quelle zum Verstärker zu groß',
  'from here an amplifier starves': 'von hier an fehlt einem Verstärker Spannung',
  'ground lead of half a metre to bare metal of the body':
    'Masseleitung von einem halben Meter an blankes Karosserieblech',
  'a ground reading over its design: length, area, lugs and meter':
    'Messwert der Masse über dem berechneten: Länge, Querschnitt, Kabelschuhe und Messgerät',
  'more cables side by side are never laid': 'mehr Kabel nebeneinander verlegt niemand',
  'a size that lacks no more of its section is told': 'genannt wird eine Größe, der nicht mehr am Querschnitt fehlt',
  'of the most a source gives over what is drawn': 'vom Höchsten, was eine Quelle über die Aufnahme hinaus gibt',
  'ripple this loud under the signal is taken as audible':
    'so laut unter dem Nutzsignal gilt eine Brummspannung als hörbar',
  'a single channel, not a bridged pair': 'ein einzelner Kanal, kein gebrücktes Paar',
  'equaliser and bass boost stay flat': 'Klangregelung und Bassanhebung bleiben auf null',
  '50 Hz, or the middle of the band where 50 Hz is not half an octave inside it':
    '50 Hz, oder die Mitte des Bandes, wenn 50 Hz nicht eine halbe Oktave darin liegen',
  'power taken as continuous RMS into this load': 'Leistung als Dauerleistung (RMS) an dieser Last gelesen',
  'line outputs have 100 to 1000 Ω; the upper half is taken':
    'Line-Ausgänge haben 100 bis 1000 Ω; die obere Hälfte ist angesetzt',
  'amplifier inputs have 10 to 22 kΩ; the lowest is taken':
    'Verstärkereingänge haben 10 bis 22 kΩ; der niedrigste ist angesetzt',
  'one amplifier input on the line': 'ein Verstärkereingang an der Leitung',
  'nearly all loudspeaker outputs of vehicles are bridge-tied: both wires rest at half the supply':
    'fast alle Lautsprecherausgänge von Fahrzeugen sind Brückenausgänge: beide Adern liegen in Ruhe auf der halben Versorgung',
  'usual line level, inside the range of most inputs': 'üblicher Line-Pegel, im Bereich der meisten Eingänge',
  'full scale of a converter’s line output when its sheet says nothing':
    'Vollaussteuerung am Line-Ausgang eines Wandlers, wenn das Datenblatt nichts sagt',
  'switched output of ISO 10487: 150 to 300 mA; only the lower is certain':
    'Schaltausgang nach ISO 10487: 150 bis 300 mA; sicher ist nur der untere Wert',
  'turn-on input of an amplifier: 5 to 50 mA; the upper is taken':
    'Einschalteingang eines Verstärkers: 5 bis 50 mA; der obere ist angesetzt',
  'coil of a common 12 V vehicle relay: 80 to 100 Ω': 'Spule eines gängigen 12-V-Fahrzeugrelais: 80 bis 100 Ω',
  'vehicle voltage not stated: 12 V': 'Bordspannung nicht angegeben: 12 V',
  'highest usual voltage with the engine running, 14.4 V per 12 V':
    'höchste übliche Spannung bei laufendem Motor, 14,4 V je 12 V',
  '24 dB an octave, as most amplifiers and processors offer':
    '24 dB je Oktave, wie die meisten Verstärker und Prozessoren es bieten',
  'fuses of the turn-on feed': 'Sicherungen der Einschaltleitung',
  'share of its rating that fills a fuse of the feed': 'Anteil des Nennstroms, bis zu dem eine Sicherung belegt wird',
  'half an octave of room between the tone and a filter corner':
    'eine halbe Oktave Abstand zwischen Ton und Filterecke',
  'a narrower band between the corners is none': 'ein schmaleres Band zwischen den Ecken ist keines',
  'A digital output needs a converter; its line output feeds the amplifier.':
    'Ein Digitalausgang braucht einen Wandler; dessen Line-Ausgang speist den Verstärker.',
  'A line output feeds the line input directly.': 'Ein Line-Ausgang speist den Line-Eingang unmittelbar.',
  'The speaker-level input takes {input} V, the source gives {source} V.':
    'Der Hochpegeleingang verträgt {input} V, die Quelle gibt {source} V.',
  'The amplifier has no speaker-level input, so the level is brought down to a line level.':
    'Der Verstärker hat keinen Hochpegeleingang, also wird der Pegel auf Line-Pegel gesenkt.',
  'The source gives {source} V, more than the {input} V of the speaker-level input.':
    'Die Quelle gibt {source} V, mehr als die {input} V des Hochpegeleingangs.',
  'line output of the source': 'Line-Ausgang der Quelle',
  'loudspeaker output of the source': 'Lautsprecherausgang der Quelle',
  'digital output of the source and its converter, at full scale':
    'Digitalausgang der Quelle mit Wandler, bei Vollaussteuerung',
  'line input of the amplifier': 'Line-Eingang des Verstärkers',
  'speaker-level input of the amplifier': 'Hochpegeleingang des Verstärkers',
  'line-output converter and line input of the amplifier': 'Pegelwandler und Line-Eingang des Verstärkers',
  'loudspeaker terminals of the amplifier': 'Lautsprecherklemmen des Verstärkers',
  '{output}; cathode (ring) of the quenching diode': '{output}; Kathode (Ring) der Löschdiode',
  'switched output of the source': 'geschalteter Ausgang der Quelle',
  'ground (31); anode of the quenching diode': 'Masse (31); Anode der Löschdiode',
  'battery positive behind a fuse of {fuse} A': 'Batterieplus hinter einer Sicherung von {fuse} A',
  'output of the converter behind a fuse of {fuse} A': 'Ausgang des Wandlers hinter einer Sicherung von {fuse} A',
  'turn-on terminals of the amplifiers': 'Einschaltklemmen der Verstärker',
  'usual exponent of {chemistry} batteries; give reserveMinutes for this one’s':
    'üblicher Exponent von Batterien der Art {chemistry}; reserveMinutes nennt den eigenen',
  flooded: 'Nassbatterie',
  lithium: 'Lithium',
  'of what a coil or a turn-on input takes': 'dessen, was eine Spule oder ein Einschalteingang aufnimmt'
}
