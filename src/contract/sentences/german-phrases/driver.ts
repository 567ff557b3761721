/** German of reasons about drivers, coils, ports and their sheets, by their English wording. */
export const driverPhrases: Readonly<Record<string, string>> = {
  'only Qts is given; Qes follows, and moves by less than 10 % for Qms from 2.5 upwards':
    'nur Qts ist angegeben; Qes folgt daraus und ändert sich für Qms ab 2,5 um weniger als 10 %',
  'coil resistance over rated impedance where a sheet gives only the latter':
    'Spulenwiderstand über Nennimpedanz, wenn ein Datenblatt nur diese nennt',
  'rated impedance is at most 1/0.8 of the lowest modulus, and that is hardly below Re (IEC 60268-5, from memory)':
    'die Nennimpedanz ist höchstens das 1/0,8-Fache des kleinsten Betrags, und der liegt kaum unter Re (IEC 60268-5, aus dem Gedächtnis)',
  'share of the nominal diameter that moves as a piston. 12 in → 0.049 m²':
    'Anteil des Nenndurchmessers, der sich als Kolben bewegt. 12 Zoll → 0,049 m²',
  'sd over the circle of the nominal diameter from which on it was probably calculated from that diameter; real cones lie near 0.67':
    'Sd über dem Kreis des Nenndurchmessers, von dem an es wohl aus diesem berechnet wurde; wirkliche Membranen liegen bei 0,67',
  'one-way excursion beyond which a sheet probably means peak to peak':
    'Hub in eine Richtung, über dem ein Datenblatt wohl Spitze-Spitze meint',
  'one-way excursion over the cone radius beyond which a sheet probably means peak to peak':
    'Hub in eine Richtung über dem Membranradius, ab dem ein Datenblatt wohl Spitze-Spitze meint',
  'below this a driver for low frequencies is hardly described; an inch figure typed as millimetres lands here':
    'so klein ist kaum ein Tieftöner; hier landet eine Zahl in Zoll, die als Millimeter eingegeben wurde',
  'coil inductance of drivers for low frequencies': 'Spuleninduktivität von Tieftönern',
  'efficiency bandwidth product fs/Qes: below, closed; above, vented or band-pass':
    'Produkt fs/Qes: darunter geschlossen, darüber Bassreflex oder Bandpass',
  'the piston taken as 0.82 of the nominal diameter (common practice, no source; ±8 %)':
    'der Kolben mit dem 0,82-Fachen des Nenndurchmessers angesetzt (übliche Praxis, ohne Quelle; ±8 %)',
  'Re taken as 0.85 of the rated impedance (common practice, no source)':
    'Re mit dem 0,85-Fachen der Nennimpedanz angesetzt (übliche Praxis, ohne Quelle)',
  'density and speed of sound are stated: Vas is taken in that air':
    'Dichte und Schallgeschwindigkeit sind angegeben: Vas gilt in dieser Luft',
  'a sheet states Vas for air at sea level (20 °C, 101 325 Pa); Cms follows from it and holds at any height':
    'ein Datenblatt nennt Vas für Luft auf Meereshöhe (20 °C, 101 325 Pa); Cms folgt daraus und gilt in jeder Höhe',
  'sheets usually print the set in series': 'Datenblätter nennen den Satz meist in Reihe',
  'as Bl and the Q of the sheet': 'wie Bl und die Güten des Datenblatts',
  'as on the sheet': 'wie auf dem Datenblatt',
  'moved to the wanted coil connection': 'auf die gewünschte Spulenschaltung umgerechnet',
  'moved to one coil connection': 'auf eine Spulenschaltung umgerechnet',
  'see the assumed values': 'siehe angenommene Werte',
  'Vas looks like cubic feet, not litres': 'Vas sieht nach Kubikfuß aus, nicht nach Litern',
  'Vas looks like cubic inches, not litres': 'Vas sieht nach Kubikzoll aus, nicht nach Litern',
  'Sd looks like mm², not cm²': 'Sd sieht nach mm² aus, nicht nach cm²',
  'Sd looks like square inches, not cm²': 'Sd sieht nach Quadratzoll aus, nicht nach cm²',
  'Re looks like that of one coil, the rest like that of two in series':
    'Re sieht nach einer Spule aus, der Rest nach zweien in Reihe',
  'Re looks like that of one coil, the rest like that of two in parallel':
    'Re sieht nach einer Spule aus, der Rest nach zwei parallelen',
  'Re looks like that of two coils in series, the rest like that of the parallel pair':
    'Re sieht nach zwei Spulen in Reihe aus, der Rest nach dem parallelen Paar',
  'Re looks like that of the parallel pair, the rest like that of two coils in series':
    'Re sieht nach dem parallelen Paar aus, der Rest nach zwei Spulen in Reihe',
  'Qes looks like that of one coil alone, the rest like that of both':
    'Qes sieht nach einer Spule allein aus, der Rest nach beiden',
  'Sd looks four times too large: a diameter taken for a radius':
    'Sd sieht viermal zu groß aus: ein Durchmesser als Radius genommen',
  'Mms looks like kilograms, not grams': 'Mms sieht nach Kilogramm aus, nicht nach Gramm',
  'Mms looks like the bare moving mass without the air load (Mmd)':
    'Mms sieht nach der bloßen bewegten Masse ohne Luftlast aus (Mmd)',
  'Cms looks like µm/N, not mm/N': 'Cms sieht nach µm/N aus, nicht nach mm/N',
  'Cms looks like m/N, not mm/N': 'Cms sieht nach m/N aus, nicht nach mm/N',
  'Sd looks like m², not cm²': 'Sd sieht nach m² aus, nicht nach cm²',
  'Sd looks like dm², not cm²': 'Sd sieht nach dm² aus, nicht nach cm²',
  'Vas looks like m³, not litres': 'Vas sieht nach m³ aus, nicht nach Litern',
  'Rms looks like g/s, not kg/s': 'Rms sieht nach g/s aus, nicht nach kg/s',
  '{stated} against {computed} from {others}: {percent} % apart':
    '{stated} gegen {computed} aus {others}: {percent} % auseinander',
  'Neither a target nor a minimum load was given: a load like that of one coil suits most amplifiers.':
    'Weder Ziel- noch Mindestlast angegeben: eine Last wie die einer Spule passt zu den meisten Verstärkern.',
  'sizes that are sold as loudspeaker cable': 'Querschnitte, die als Lautsprecherkabel verkauft werden',
  'cable resistance up to 5 % of the load costs at most 0.42 dB, common practice':
    'ein Kabelwiderstand bis 5 % der Last kostet höchstens 0,42 dB, übliche Praxis',
  'full-sine current at the 30 °C of the ampacity table: even dense music averages below 58 % of it, which pays for a hot cabin':
    'Strom bei vollem Sinus bei den 30 °C der Tabelle: selbst dichte Musik bleibt im Mittel unter 58 % davon, das gleicht einen heißen Innenraum aus',
  'one end flush with a panel (0.85), one end free (0.613)':
    'ein Ende bündig in einer Platte (0,85), eines frei (0,613)',
  'width over height: a flatter slot is braked by its walls':
    'Breite zu Höhe: einen flacheren Schlitz bremsen seine Wände',
  'a lower slot hangs on every millimetre': 'ein niedrigerer Schlitz hängt an jedem Millimeter',
  'width over height of a slot that is closed in with a cheek instead':
    'Breite zu Höhe eines Schlitzes, der stattdessen eine Wange bekommt',
  'share of the volume that a smaller box with a higher tuning is offered at':
    'Anteil des Volumens, mit dem ein kleineres, höher abgestimmtes Gehäuse angeboten wird',
  'pipe resonance over the low-pass corner below which it is told':
    'Rohrresonanz zu Tiefpassecke, unter der sie genannt wird',
  'pipe resonance over the low-pass corner below which it counts against the port':
    'Rohrresonanz zu Tiefpassecke, unter der sie gegen den Kanal zählt',
  'longest straight run over the cube root of the net volume, no space being given':
    'längstes gerades Stück zur Kubikwurzel des Nettovolumens, wenn kein Platz angegeben ist',
  'air in the ports over net volume from which the lumped tuning is 3 % high':
    'Luft in den Kanälen zum Nettovolumen, ab der die einfache Abstimmung 3 % zu hoch liegt',
  'clear widths of round ports to choose from: whole tens and the usual pipe widths between':
    'lichte Weiten runder Kanäle zur Wahl: volle Zehner und die üblichen Rohrweiten dazwischen',
  'steps of slot heights to offer': 'Schritte der angebotenen Schlitzhöhen',
  'largest number of equal ports to offer': 'größte Zahl gleicher Kanäle im Angebot',
  'the port that is easiest to build': 'der Kanal, der am einfachsten zu bauen ist',
  'plain ends': 'einfache Enden',
  'cheapest to build: the box is three of its walls': 'am günstigsten: drei seiner Wände sind das Gehäuse',
  'the inner end stands free in the box': 'das innere Ende steht frei im Gehäuse',
  'the outer end lies flush in the panel': 'das äußere Ende liegt bündig in der Platte',
  'the length is that of a straight pipe; a rounding of known radius needs a longer one':
    'die Länge gilt für ein gerades Rohr; eine Rundung mit bekanntem Radius verlangt ein längeres',
  'twice the longest straight run': 'das Doppelte des längsten geraden Stücks',
  'a cube of the net volume': 'ein Würfel vom Nettovolumen',
  'music seldom reaches lower, and the high-pass among the filters weighs the flow':
    'tiefer reicht Musik selten, und der Hochpass unter den Filtern gewichtet die Strömung',
  'the corner of the low-pass among the filters': 'die Ecke des Tiefpasses unter den Filtern',
  '5 % of the speed of sound (Small 1973, from memory)':
    '5 % der Schallgeschwindigkeit (Small 1973, aus dem Gedächtnis)',
  'flared ends (choice of this service)': 'gerundete Enden (unsere Wahl)',
  '{share} of the tuning: below it a high-pass has to protect the driver (practice, no source)':
    'das {share}-Fache der Abstimmung: darunter muss ein Hochpass den Lautsprecher schützen (Praxis, ohne Quelle)',
  '{times} times the cube root of the net volume, no space being given':
    'das {times}-Fache der Kubikwurzel des Nettovolumens, weil kein Platz angegeben ist'
}
