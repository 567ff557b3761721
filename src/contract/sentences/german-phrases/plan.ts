/** German of what a plan or a search takes by itself, and of why a combination is none, by the English wording. */
export const planPhrases: Readonly<Record<string, string>> = {
  'amplifier and box side by side in the boot': 'Verstärker und Gehäuse nebeneinander im Kofferraum',
  'most front loudspeakers play down to about 80 Hz; the crossover follows them':
    'die meisten vorderen Lautsprecher spielen bis etwa 80 Hz hinab; die Trennfrequenz richtet sich nach ihnen',
  'distribution block and amplifiers stand together': 'Verteiler und Verstärker stehen beieinander',
  'ground lead of half a metre': 'Masseleitung von einem halben Meter',
  'metres of lead from the second battery to the block, and to its ground point':
    'Meter Leitung von der zweiten Batterie zum Verteiler und zu ihrem Massepunkt',
  'metres of lead from the converter to the block, and to its ground point':
    'Meter Leitung vom Wandler zum Verteiler und zu seinem Massepunkt',
  'metres of lead from the block or the amplifier to the capacitor':
    'Meter Leitung vom Verteiler oder Verstärker zum Kondensator',
  'even bass from 25 to 63 Hz in a box worth its room; another wish gives another box':
    'gleichmäßiger Bass von 25 bis 63 Hz in einem Gehäuse, das seinen Platz wert ist; ein anderer Wunsch gibt ein anderes Gehäuse',
  'a saw along a fence and a router; a cutting service, or jigsaw and drill, have steps of their own':
    'eine Säge am Anschlag und eine Oberfräse; Zuschnitt im Baumarkt oder Stichsäge und Bohrer haben eigene Schritte',
  'the sheet gives no Xmax: a fiftieth of the diameter of the piston, one way, is low for a bass driver and spares the cone':
    'das Datenblatt nennt kein Xmax: ein Fünfzigstel des Kolbendurchmessers in eine Richtung ist für einen Tieftöner wenig und schont die Membran',
  'the leaflet gives no Xmax: for the port alone a twentieth of the diameter of the piston, one way, is high, so that its air stays slow':
    'das Faltblatt nennt kein Xmax: für den Kanal allein ist ein Zwanzigstel des Kolbendurchmessers in eine Richtung viel, damit seine Luft langsam bleibt',
  'the sheet gives no power rating: half a watt for each square centimetre of cone is low for a bass driver and spares the coil':
    'das Datenblatt nennt keine Belastbarkeit: ein halbes Watt je Quadratzentimeter Membran ist für einen Tieftöner wenig und schont die Spule',
  'the sheet gives no Le: half a millihenry for each ohm of Re is usual; it moves the level at 80 Hz by a few tenths of a decibel':
    'das Datenblatt nennt kein Le: üblich ist ein halbes Millihenry je Ohm Re; es verschiebt den Pegel bei 80 Hz um wenige Zehntel Dezibel',
  'm/s of air in the port up to which levels are held and boxes are searched: from there flared ends are heard too':
    'm/s Luft im Kanal, bis zu denen Pegel gehalten und Gehäuse gesucht werden: darüber sind auch gerundete Enden zu hören',
  'amperes of a charging system that is not described: it gives whatever is asked':
    'Ampere einer Ladeanlage, die nicht beschrieben ist: sie gibt, was verlangt wird',
  'and holds its voltage': 'und hält ihre Spannung',
  'amperes of the starter in a cold start: 150 to 400': 'Ampere des Anlassers beim Kaltstart: 150 bis 400',
  'a starter takes half the cold cranking current': 'ein Anlasser nimmt den halben Kaltstartstrom auf',
  'volts for each 12 that a vehicle with a battery sensor lets its charging fall to':
    'Volt je 12, auf die ein Fahrzeug mit Batteriesensor die Ladung sinken lässt',
  'volts for each 12 that it raises its charging to': 'Volt je 12, auf die es die Ladung hebt',
  'volts at the battery while the engine runs: 13.8 for each 12':
    'Volt an der Batterie bei laufendem Motor: 13,8 je 12',
  'lashing capacity of one small strap, 500 daN: common practice; read its label':
    'Zurrkraft eines kleinen Gurts, 500 daN: übliche Praxis; das Etikett lesen',
  'lashing eye of a passenger car, DIN 75410-2 (from memory); read the figure in the handbook':
    'Zurröse eines Pkw, DIN 75410-2 (aus dem Gedächtnis); den Wert im Handbuch lesen',
  'engineering choice: eyes in a boot floor, straps over the box':
    'unsere Wahl: Ösen im Kofferraumboden, Gurte über dem Gehäuse',
  'engineering choice: eyes in the corners of a boot, aside from the direction of travel':
    'unsere Wahl: Ösen in den Ecken des Kofferraums, seitlich der Fahrtrichtung',
  'the room is a round well': 'der Platz ist eine runde Mulde',
  'the room has a footprint of its own': 'der Platz hat einen eigenen Grundriss',
  'a wedge fills the room under a leaning seat back': 'ein Keil füllt den Platz unter einer geneigten Lehne',
  'the simplest to saw': 'am einfachsten zu sägen',
  'a stave of a round box is narrower than a driver':
    'eine Daube eines runden Gehäuses ist schmaler als ein Lautsprecher',
  'walls lined with 25 mm of wadding, as is usual; it damps standing waves':
    'Wände mit 25 mm Vlies belegt, wie üblich; es dämpft stehende Wellen',
  'covered with boot carpet; 4 mm a face are taken off the space':
    'mit Teppich bezogen; je Seite gehen 4 mm vom Platz ab',
  'sheets of 4 × 8 ft, as that market sells them': 'Tafeln von 4 × 8 Fuß, wie sie dort verkauft werden',
  '{given} mm is taken as {parts}/32 in, so that sums in inches add up':
    '{given} mm gelten als {parts}/32 Zoll, damit Summen in Zoll aufgehen',
  'm: the blade of a panel saw in a shop, 4 to 5 mm': 'm: Blatt einer Plattensäge im Handel, 4 bis 5 mm',
  'm: two lines with a jigsaw between them, planed to on both sides':
    'm: zwei Linien, dazwischen die Stichsäge, von beiden Seiten zugehobelt',
  'one driver and a pair': 'ein Lautsprecher und ein Paar',
  'the kinds a plan builds': 'die Arten, die ein Plan baut',
  'no cone is driven beyond its rated excursion': 'keine Membran wird über ihren Nennhub getrieben',
  'level, reach, box, price and current': 'Pegel, Tiefgang, Gehäuse, Preis und Strom',
  'where the weight of a bass line lies (common practice, no source)':
    'wo das Gewicht einer Basslinie liegt (übliche Praxis, ohne Quelle)',
  'the boxes that serve what decides the order': 'die Gehäuse, die dem dienen, was die Reihenfolge bestimmt',
  'the first ten of each list': 'die ersten zehn jeder Liste',
  'a decibel of level counts one': 'ein Dezibel Pegel zählt eins',
  'an octave of f3 counts nine decibels, as efficiency goes with its third power':
    'eine Oktave f3 zählt neun Dezibel, denn der Wirkungsgrad geht mit ihrer dritten Potenz',
  'half the box counts three decibels, as efficiency goes with volume':
    'das halbe Gehäuse zählt drei Dezibel, denn der Wirkungsgrad geht mit dem Volumen',
  'half the price counts three decibels, as half the power':
    'der halbe Preis zählt drei Dezibel, wie die halbe Leistung',
  'half the current counts three decibels, as half the power':
    'der halbe Strom zählt drei Dezibel, wie die halbe Leistung',
  'a price is missing, so none counts': 'ein Preis fehlt, also zählt keiner',
  'drivers and amplifier cost {is}, {over} above the most allowed, {bound}':
    'Lautsprecher und Verstärker kosten {is}, {over} über dem Erlaubten, {bound}',
  'the supply gives at full sine {is}, {over} above the most allowed, {bound}':
    'die Versorgung gibt bei vollem Sinus {is}, {over} über dem Erlaubten, {bound}',
  'the supply gives on average {is}, {over} above the most allowed, {bound}':
    'die Versorgung gibt im Mittel {is}, {over} über dem Erlaubten, {bound}',
  'the box takes {is}, {over} above the most allowed, {bound}':
    'das Gehäuse nimmt {is} ein, {over} über dem Erlaubten, {bound}',
  'the box weighs {is}, {over} above the most allowed, {bound}':
    'das Gehäuse wiegt {is}, {over} über dem Erlaubten, {bound}',
  'half power lies at {is}, {over} above the most allowed, {bound}':
    'die halbe Leistung liegt bei {is}, {over} über dem Erlaubten, {bound}',
  'the level reaches {is}, {over} below the least allowed, {bound}':
    'der Pegel erreicht {is}, {over} unter dem Verlangten, {bound}',
  'the cone moves, of Xmax, {is}, {over} above the most allowed, {bound}':
    'die Membran bewegt sich, bezogen auf Xmax, um {is}, {over} über dem Erlaubten, {bound}',
  'the air in the port moves at {is}, {over} above the most allowed, {bound}':
    'die Luft im Kanal bewegt sich mit {is}, {over} über dem Erlaubten, {bound}',
  '{first}; {count} more limits are broken': '{first}; {count} weitere Grenzen sind überschritten',
  'No current is known.': 'Der Strom ist nicht bekannt.',
  'No branch cable to {amplifier} passes.': 'Kein Abzweigkabel zu {amplifier} genügt.',
  'the room slopes': 'der Platz ist schräg',
  'a box that fits': 'ein Gehäuse, das passt',
  'a matched amplifier': 'einen passenden Verstärker',
  'the complete data of the driver': 'die vollständigen Daten des Lautsprechers',
  'a port': 'einen Kanal',
  'a port that fits': 'einen Kanal, der passt',
  'a tuning': 'eine Abstimmung',
  'a load that the amplifier can drive': 'eine Last, die der Verstärker treiben kann',
  'a cable': 'ein Kabel',
  'a cable that passes': 'ein Kabel, das genügt',
  'a branch cable to {amplifier} that passes': 'ein Abzweigkabel zu {amplifier}, das genügt',
  'a cable that passes for the output of the converter': 'ein Kabel, das für den Ausgang des Wandlers genügt',
  'the power the amplifier gives into the wired load': 'die Leistung, die der Verstärker an die verdrahtete Last gibt',
  'the current': 'den Strom'
}
