/** German of reasons about cable, fuse, circuit and battery, by their English wording. */
export const electricPhrases: Readonly<Record<string, string>> = {
  'stranded conductor, 2 % above the solid one (agrees with NFPA 70 Ch. 9 Table 8)':
    'Litze, 2 % über dem massiven Leiter (stimmt mit NFPA 70 Kap. 9 Tabelle 8 überein)',
  'insulation not stated: common vehicle PVC, 80 °C; use a higher class only if it is printed on the cable':
    'Isolierung nicht angegeben: gängiges Fahrzeug-PVC, 80 °C; eine höhere Klasse nur, wenn sie auf dem Kabel steht',
  'material of the insulation not stated: PVC, which stands 160 °C once whatever its class; cross-linked polyethylene stands 250 °C':
    'Werkstoff der Isolierung nicht angegeben: PVC, das in jeder Klasse einmal 160 °C aushält; vernetztes Polyethylen hält 250 °C aus',
  'a run from the battery usually crosses the engine bay: 70 °C; its hottest stretch decides':
    'eine Leitung von der Batterie läuft meist durch den Motorraum: 70 °C; das heißeste Stück entscheidet',
  'closed cabin or boot in summer: 50 °C': 'geschlossener Innen- oder Kofferraum im Sommer: 50 °C',
  'no other power conductor in the same loom': 'kein anderer Leistungsleiter im selben Strang',
  'drop is judged at 20 °C as cable tables print it; the hot drop is given beside it':
    'der Spannungsfall wird wie in Kabeltabellen bei 20 °C beurteilt; der heiße steht daneben',
  'full copper as in the ampacity table; say "unknown" when no copper standard is printed on the cable':
    'Vollkupfer wie in der Tabelle der Strombelastbarkeit; „unknown“ angeben, wenn keine Kupfernorm auf dem Kabel steht',
  'series not stated: AWG': 'Reihe nicht angegeben: AWG',
  'sized at nominal voltage, where a regulated amplifier draws most':
    'bei Nennspannung bemessen, wo ein geregelter Verstärker am meisten aufnimmt',
  'conductor at the class of its insulation before the fault':
    'Leiter vor dem Kurzschluss so warm, wie seine Isolierung darf',
  'sizes on sale everywhere; others when listed': 'Größen, die es überall gibt; andere, wenn sie genannt sind',
  'sizes on sale everywhere; odd gauges and 3/0 are rare':
    'Größen, die es überall gibt; ungerade Nummern und 3/0 sind selten',
  'sizes on sale everywhere': 'Größen, die es überall gibt',
  'aluminium is drawn from 10 mm² up': 'Aluminium gibt es ab 10 mm²',
  'strands fill three quarters of the circle around them': 'Litzen füllen drei Viertel des Kreises um sie',
  'surface of black or coloured plastic': 'Oberfläche aus schwarzem oder farbigem Kunststoff',
  'continuous load at most 75 % of the rating, common practice (75 to 80 %)':
    'Dauerlast höchstens 75 % des Nennstroms, übliche Praxis (75 bis 80 %)',
  'dense bass as class AB draws it, √(1/3) of the full sine; give heavyCurrentA from the current calculation':
    'dichter Bass, wie Klasse AB ihn aufnimmt, √(1/3) des vollen Sinus; besser heavyCurrentA aus der Stromberechnung angeben',
  'the fuse lies in the surroundings of its cable': 'die Sicherung liegt in der Umgebung ihres Kabels',
  'where the derating of the data sheet ends': 'wo die Minderung des Datenblatts endet',
  'blades and strips are what is sold for cars': 'Flach- und Streifensicherungen gibt es für Autos zu kaufen',
  'single-bolt fuses where 58 V are needed': 'Sicherungen mit einer Schraube, wo 58 V nötig sind',
  'rating at most the ampacity of the cable': 'Nennstrom höchstens die Strombelastbarkeit des Kabels',
  '150 % of the table where a boat’s rule allows it': '150 % der Tabelle, wo die Vorschrift für Boote es erlaubt',
  'circuits under 50 V': 'Stromkreise unter 50 V',
  'of ratings in series, so that the nearer one opens':
    'Verhältnis von Nennströmen in Reihe, damit die nähere Sicherung auslöst',
  'times its rating a fault must drive to open a fuse soon':
    'so viele Nennströme muss ein Kurzschluss treiben, damit eine Sicherung bald auslöst',
  '7 in to the fuse, rounded down: it is a limit': '7 Zoll bis zur Sicherung, abgerundet: es ist eine Grenze',
  'as far as a fuse is usually let stand from its battery':
    'so weit steht eine Sicherung üblicherweise höchstens von ihrer Batterie',
  '40 in, where the conductor is sheathed all the way': '40 Zoll, wo der Leiter durchgehend im Schutzschlauch liegt',
  'the planned piece of cable before the fuse, once': 'das geplante Stück Kabel vor der Sicherung, einmal',
  'the fuse on the battery post, where a short circuit is strongest':
    'die Sicherung am Batteriepol, wo ein Kurzschluss am stärksten ist',
  'battery 10 mΩ per 12 V (3 to 20) for drop and clearing, 3 mΩ and 12.8 V for what the fuse must break, common practice; from its cold cranking current when given':
    'Batterie 10 mΩ je 12 V (3 bis 20) für Spannungsfall und Auslösen, 3 mΩ und 12,8 V für das, was die Sicherung abschalten muss, übliche Praxis; aus dem Kaltstartstrom, wenn angegeben',
  'battery 3 mΩ per 12 V for what the fuse must break, the strong end of 3 to 20, common practice; give its resistance, cold cranking current, or kind and capacity':
    'Batterie 3 mΩ je 12 V für das, was die Sicherung abschalten muss, das starke Ende von 3 bis 20, übliche Praxis; Widerstand, Kaltstartstrom oder Art und Kapazität angeben',
  'a warm full battery: volts over cold cranking current': 'eine warme volle Batterie: Volt über Kaltstartstrom',
  'where the cold test of a battery ends, for each 12 V': 'wo die Kälteprüfung einer Batterie endet, je 12 V',
  'a full lead battery at rest': 'eine volle Bleibatterie in Ruhe',
  'lithium iron phosphate, four cells, not fresh from the charger':
    'Lithium-Eisenphosphat, vier Zellen, nicht frisch vom Ladegerät',
  'a full lead battery after charging over one at rest, for each 12 V':
    'eine volle Bleibatterie nach dem Laden über einer in Ruhe, je 12 V',
  'the same of a full lithium one': 'dasselbe bei einer vollen Lithiumbatterie',
  'the highest rest voltage': 'die höchste Ruhespannung',
  'over its rating the resistance of a fuse; two data-sheet points at 40 A: 75 mV and 96 mV':
    'Widerstand einer Sicherung über ihrem Nennstrom; zwei Datenblattwerte bei 40 A: 75 mV und 96 mV',
  'the same cold: a data sheet gives 1.4 mΩ at 40 A': 'dasselbe kalt: ein Datenblatt nennt 1,4 mΩ bei 40 A',
  'source taken as stiff; give its resistance, or describe the battery with currentLimitA':
    'Quelle als starr angesetzt; ihren Widerstand angeben oder die Batterie mit currentLimitA beschreiben',
  'the whole current ripples when nothing stores energy at the amplifiers':
    'der ganze Strom pulsiert, wenn an den Verstärkern nichts Energie speichert',
  'no fuse described: the next standard rating above the full sine, or the maker’s where that carries it':
    'keine Sicherung beschrieben: der nächste Nennwert über dem vollen Sinus, oder der des Herstellers, wenn er ihn trägt',
  'a lug at each end of each conductor': 'ein Kabelschuh an jedem Ende jedes Leiters',
  'a nearly full battery takes charge through about 0.2 Ω per 12 V':
    'eine fast volle Batterie nimmt Ladung über etwa 0,2 Ω je 12 V auf',
  'the regulator lets its voltage fall by 2 mV per ampere': 'der Regler lässt seine Spannung je Ampere um 2 mV sinken',
  'a lug at each end': 'ein Kabelschuh an jedem Ende',
  'a good lug or contact, 0.2 mΩ': 'ein guter Kabelschuh oder Kontakt, 0,2 mΩ',
  'a converter lets its voltage fall by 2 mV per ampere': 'ein Wandler lässt seine Spannung je Ampere um 2 mV sinken',
  'a converter stops below three quarters of the nominal input: 18 V of 24 V in the data sheets seen':
    'ein Wandler setzt unter drei Vierteln der Nenneingangsspannung aus: 18 V von 24 V in den gesehenen Datenblättern',
  'what a converter gives into a fault, over its rating: 1.1 to 1.5 in the data sheets seen':
    'was ein Wandler in einen Kurzschluss gibt, über seinem Nennstrom: 1,1 bis 1,5 in den gesehenen Datenblättern',
  'cables at 20 °C': 'Kabel bei 20 °C',
  'PVC at work, for the smallest fault': 'PVC im Betrieb, für den kleinsten Kurzschlussstrom',
  'of its rating a fuse-link carries for hours': 'Anteil des Nennstroms, den ein Sicherungseinsatz stundenlang führt',
  'a discharged battery below its rest voltage, for each 12 V':
    'eine entladene Batterie unter ihrer Ruhespannung, je 12 V',
  'a battery full or not, for each 12 V': 'eine volle oder nicht volle Batterie, je 12 V',
  'of a stated battery resistance': 'eines angegebenen Batteriewiderstands',
  'of a regulator by temperature, for each 12 V': 'eines Reglers mit der Temperatur, je 12 V',
  'of what an alternator can give': 'dessen, was eine Lichtmaschine geben kann',
  'length 5 %, section 3 %, temperature 6 %, and lugs':
    'Länge 5 %, Querschnitt 3 %, Temperatur 6 % und die Kabelschuhe',
  'of the resistance of a fuse, by make': 'des Widerstands einer Sicherung, je nach Fabrikat',
  'of a measured body or contact': 'einer gemessenen Karosserie oder Verbindung',
  'of a body that nobody measured': 'einer Karosserie, die niemand gemessen hat',
  'music is no steady load': 'Musik ist keine gleichmäßige Last',
  'of a steady load': 'einer gleichmäßigen Last',
  'what the vehicle itself takes comes and goes': 'was das Fahrzeug selbst verbraucht, kommt und geht',
  'upper end for {chemistry} of this capacity; measure it or give the maker’s figure':
    'oberes Ende für {chemistry} dieser Kapazität; messen oder den Wert des Herstellers angeben',
  'rest voltage of a full battery, {volts} V per 12 V': 'Ruhespannung einer vollen Batterie, {volts} V je 12 V',
  'what {material} survives once, IEC 60364-4-43 and 60724':
    'was {material} einmal übersteht, IEC 60364-4-43 und 60724',
  '{each}; four of them': '{each}; vier davon',
  '{drop}; main cable and branch share it by their lengths':
    '{drop}; Hauptkabel und Abzweig teilen ihn nach ihrer Länge',
  'the practice of boats': 'Praxis aus dem Bootsbau',
  'Put the fuse at the source, before the cable passes any metal: within {ideal} mm, at most {most} mm of conductor.':
    'Die Sicherung an die Quelle setzen, bevor das Kabel an Metall vorbeiführt: innerhalb von {ideal} mm, höchstens {most} mm Leiter.',
  'Put the fuse one at each end of the link, at its battery: within {ideal} mm, at most {most} mm of conductor.':
    'Je eine Sicherung an jedes Ende der Verbindung setzen, an ihre Batterie: innerhalb von {ideal} mm, höchstens {most} mm Leiter.',
  'Return cable of the size of the positive to the battery’s negative post, to the body side of a battery sensor where there is one, beside the positive run, no fuse in it.':
    'Rückleitung im Querschnitt der Plusleitung an den Minuspol der Batterie, bei einem Batteriesensor an dessen Karosserieseite, neben der Plusleitung, ohne Sicherung.',
  'Ground lead of the size of the positive, at most half a metre, to its own bolt on bare body metal, not a seat or belt bolt, locked and sealed against rust; the strap from battery to body carries the amplifier too and gets the same size.':
    'Masseleitung im Querschnitt der Plusleitung, höchstens einen halben Meter, an eine eigene Schraube auf blankem Karosserieblech, nicht an Sitz- oder Gurtschrauben, gesichert und gegen Rost versiegelt; das Masseband der Batterie führt auch den Verstärker und bekommt denselben Querschnitt.',
  'block of the returns': 'Verteiler der Rückleitungen',
  'blade fuses of the turn-on feed': 'Flachsicherungen des Einschaltzweigs'
}
