/** German of reasons about air, cabin, enclosures and their limits, by their English wording. */
export const acousticPhrases: Readonly<Record<string, string>> = {
  'room temperature': 'Zimmertemperatur',
  'standard atmosphere at sea level': 'Normatmosphäre auf Meereshöhe',
  'engineering choice: joins the pressure vessel to free radiation without a bump':
    'unsere Wahl: verbindet Druckkammer und freie Abstrahlung ohne Buckel',
  'engineering choice: joins the leak without a bump': 'unsere Wahl: schließt die Undichtheit ohne Buckel an',
  'engineering choice: cars leak and flex below 8 to 25 Hz':
    'unsere Wahl: unter 8 bis 25 Hz sind Autos undicht und geben nach',
  'engineering choice: holds the gain to 20 dB, the most that cars usually show':
    'unsere Wahl: hält den Zuwachs auf 20 dB, mehr zeigen Autos selten',
  'how far real cars lie from the model': 'so weit liegen wirkliche Autos vom Modell',
  'usual hand-over to the front speakers': 'übliche Übergabe an die vorderen Lautsprecher',
  'protective high-pass a third of an octave below the tuning; give excursionLimitHz from the response instead':
    'schützender Hochpass eine Drittel-Oktave unter der Abstimmung; besser excursionLimitHz aus dem Frequenzgang angeben',
  'below it few recordings reach': 'tiefer reichen wenige Aufnahmen',
  'above it the front loudspeakers play': 'darüber spielen die vorderen Lautsprecher',
  'twenty-four to the octave': 'vierundzwanzig je Oktave',
  'far below what is heard': 'weit unter dem Hörbaren',
  'below what a builder can measure': 'unter dem, was sich beim Bau messen lässt',
  'common practice: 5 % of the speed of sound, for straight ports with sharp ends':
    'übliche Praxis: 5 % der Schallgeschwindigkeit, für gerade Kanäle mit scharfen Enden',
  'a continuous full sine, the worst case; music heats with 0.13 to 0.2 of that (common practice)':
    'ein dauernder voller Sinus, der schlimmste Fall; Musik heizt mit dem 0,13- bis 0,2-Fachen (übliche Praxis)',
  'sharp ends, 0.5 for the way in and 1.0 for the way out: an upper estimate':
    'scharfe Enden, 0,5 für den Eintritt und 1,0 für den Austritt: eher zu hoch geschätzt',
  'a rating does not say how it was measured; the lower reading is safe':
    'eine Belastbarkeit sagt nicht, wie sie gemessen wurde; die niedrigere Lesart ist sicher',
  'the DC resistance of the drivers as they are joined, a little below the rated impedance: safe':
    'der Gleichstromwiderstand der verbundenen Lautsprecher, etwas unter der Nennimpedanz: sicher',
  'the load at which the power of source or amplifier is stated':
    'die Last, bei der die Leistung von Quelle oder Verstärker angegeben ist',
  'engineering choice: a rise of 180 K at the rated power': 'unsere Wahl: 180 K Erwärmung bei Nennleistung',
  'a mild car; parked in the sun it is 50 °C and more':
    'ein mäßig warmes Auto; in der Sonne geparkt sind es 50 °C und mehr',
  'engineering choice: what common coil adhesives stand': 'unsere Wahl: was gängige Spulenkleber aushalten',
  'most coils are wound of copper': 'die meisten Spulen sind aus Kupfer gewickelt',
  'music seldom reaches lower': 'tiefer reicht Musik selten',
  'the range of a bass system': 'der Bereich einer Bassanlage',
  'a single port': 'ein einzelner Kanal',
  'a single radiator': 'eine einzelne Passivmembran',
  'a single driver': 'ein einzelner Lautsprecher',
  'one pair': 'ein Paar',
  'all drivers in parallel': 'alle Lautsprecher parallel',
  'wired like the others': 'verdrahtet wie die anderen',
  'the lower impedance': 'die niedrigere Impedanz',
  'every group across the terminals': 'jede Gruppe an den Klemmen',
  'cable and amplifier without resistance': 'Kabel und Verstärker ohne Widerstand',
  'opened boxes of 25 to 100 L measure 5 to 10 (Small 1973)':
    'an offenen Gehäusen von 25 bis 100 L werden 5 bis 10 gemessen (Small 1973)',
  'the DC resistance of the drivers as they are joined': 'der Gleichstromwiderstand der verbundenen Lautsprecher',
  'the rated power of the drivers': 'die Belastbarkeit der Lautsprecher',
  'a tight chamber': 'eine dichte Kammer',
  'a tight chamber; opened boxes of 25 to 100 L measure 5 to 10 (Small 1973)':
    'eine dichte Kammer; an offenen Gehäusen von 25 bis 100 L werden 5 bis 10 gemessen (Small 1973)',
  'nothing in the chamber absorbs': 'in der Kammer dämpft nichts',
  'nothing in the box absorbs': 'im Gehäuse dämpft nichts',
  'no friction in the port': 'keine Reibung im Kanal',
  'a suspension without loss': 'eine Aufhängung ohne Verluste',
  'enough for a smooth curve': 'genug für eine glatte Kurve',
  'a few periods of the lowest bass': 'einige Perioden des tiefsten Basses',
  'half a millisecond apart at 200 ms': 'bei 200 ms eine halbe Millisekunde auseinander',
  'engineering choice: no published spread was found; together these give the 8 to 15 % that data sheets promise':
    'unsere Wahl: keine veröffentlichte Streuung gefunden; zusammen ergeben sich die 8 bis 15 % der Datenblätter',
  'engineering choice: what a careful builder cuts': 'unsere Wahl: so genau sägt, wer sorgfältig baut',
  'engineering choice: losses of a box are hardly known before it is built':
    'unsere Wahl: vor dem Bau sind die Verluste eines Gehäuses kaum bekannt',
  'engineering choice: summer and winter in a heated car': 'unsere Wahl: Sommer und Winter im geheizten Auto',
  'enough for the 5 and 95 percentiles to settle': 'genug, damit die Perzentile 5 und 95 feststehen',
  'the same request gives the same answer': 'dieselbe Anfrage ergibt dieselbe Antwort',
  'the middle and the range of nine in ten': 'die Mitte und der Bereich von neun aus zehn',
  'lining: {amount} (practice, no source)': 'Auskleidung: {amount} (Praxis, ohne Quelle)',
  '{range} in practice (no source)': '{range} in der Praxis (ohne Quelle)',
  'the board between the chambers': 'das Brett zwischen den Kammern',
  'strips behind the front': 'Leisten hinter der Front',
  'below this the cone passes its limit at the target power, as the response shows':
    'darunter überschreitet die Membran bei der Zielleistung ihre Grenze, wie der Frequenzgang zeigt',
  'where the front speakers begin, held between 50 and 120 Hz: below it stays hidden, above it tells where the box stands':
    'wo die vorderen Lautsprecher beginnen, zwischen 50 und 120 Hz gehalten: tiefer bleibt das Gehäuse verborgen, höher verrät es, wo es steht',
  'as given': 'wie angegeben',
  'high-pass in Hz: {why}': 'Hochpass in Hz: {why}',
  'the least corner most dials reach, and below the lowest music':
    'die tiefste Ecke der meisten Regler, unter der tiefsten Musik',
  '1.05 to 1.10': '1,05 bis 1,10',
  '1.10 to 1.25': '1,10 bis 1,25',
  '1.00 to 1.00': '1,00',
  bare: 'keine',
  walls: 'Wände',
  filled: 'gefüllt'
}
