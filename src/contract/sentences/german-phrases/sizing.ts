/** German of what speaks for a box or against it, by the English wording. */
export const sizingPhrases: Readonly<Record<string, string>> = {
  'flattest delay, flattest level, small box (common practice, no source)':
    'ebenste Laufzeit, ebenster Pegel, kleines Gehäuse (übliche Praxis, ohne Quelle)',
  'more ripple than this is heard as one-note bass': 'mehr Welligkeit klingt nach Bass auf einem Ton',
  'peak that a tuning chosen for a given volume may have':
    'Überhöhung, die eine für das Volumen gewählte Abstimmung haben darf',
  'A box whose half power lies above this carries no bass of its own':
    'Liegt die halbe Leistung darüber, bringt ein Gehäuse keinen eigenen Tiefbass',
  'A closed box larger than this many Vas hardly stiffens the cone: an infinite baffle does the same':
    'Ein geschlossenes Gehäuse über so vielen Vas federt die Membran kaum noch: eine unendliche Wand täte dasselbe',
  'compliance of passive radiators over that of the box where none is given, at least; δ ≥ α':
    'Nachgiebigkeit der Passivmembranen über der des Gehäuses, wenn keine angegeben ist, mindestens; δ ≥ α',
  'at least as compliant against the box as the drivers, and twice the box: the notch stays low (practice)':
    'gegen das Gehäuse mindestens so nachgiebig wie die Lautsprecher, und doppelt so wie die Luft: die Kerbe bleibt tief (Praxis)',
  'twice the area of the drivers moves twice their volume (practice, no source)':
    'doppelte Fläche der Lautsprecher bewegt ihr doppeltes Volumen (Praxis, ohne Quelle)',
  'the area of one driver': 'die Fläche eines Lautsprechers',
  '1 to 2.6 times the resonance of the driver': 'das 1- bis 2,6-Fache der Resonanz des Lautsprechers',
  'the two every builder weighs first': 'die zwei, die jeder zuerst erwägt',
  'board of a box whose outer size is estimated': 'Plattendicke eines Gehäuses, dessen Außenmaß geschätzt wird',
  'what driver, port and braces take of the net volume of a box whose outer size is estimated':
    'Anteil von Lautsprecher, Kanal und Streben am Nettovolumen eines Gehäuses, dessen Außenmaß geschätzt wird',
  'step of tunings tried for a given volume: a builder can cut to it':
    'Schritt der versuchten Abstimmungen: so genau lässt sich ein Kanal ablängen',
  'range of tunings tried for a given volume': 'Bereich der Abstimmungen, die zu einem Volumen versucht werden',
  'frequencies at which candidates are compared': 'Frequenzen, bei denen Vorschläge verglichen werden',
  '{best}. Half power at {half} Hz, {level} dB at 31.5 Hz, {delay} ms of delay there.':
    '{best}. Halbe Leistung bei {half} Hz, {level} dB bei 31,5 Hz, dort {delay} ms Laufzeit.',
  '{best}. Half power at {half} Hz, {level} dB at 31.5 Hz.':
    '{best}. Halbe Leistung bei {half} Hz, {level} dB bei 31,5 Hz.',
  '{best}. {level} dB at 31.5 Hz.': '{best}. {level} dB bei 31,5 Hz.',
  'tightest: transients settle fastest and level falls gently from high up; the cabin fills it in':
    'am straffsten: schwingt am schnellsten aus, und der Pegel fällt sanft von weit oben; der Innenraum gleicht es aus',
  'tight and flat; rolls off at 12 dB an octave, which the rise of a cabin can make good':
    'straff und eben; fällt mit 12 dB je Oktave, was der Anstieg im Innenraum ausgleichen kann',
  'small; a little fuller around its resonance, still tight': 'klein; um die Resonanz etwas voller, noch straff',
  'smallest; boomy around its resonance, little below it': 'am kleinsten; dröhnt um die Resonanz, darunter kommt wenig',
  'flat, louder and lower than closed for its volume': 'eben, für sein Volumen lauter und tiefer als geschlossen',
  'small for a vented box, flat, loud above its tuning':
    'klein für ein Bassreflexgehäuse, eben, laut über der Abstimmung',
  'reaches lowest, loudest in the bottom octave, with ripple and longer delay':
    'reicht am tiefsten, in der untersten Oktave am lautesten, mit Welligkeit und längerer Laufzeit',
  'less delay than the quasi third order for a little more volume':
    'weniger Laufzeit als die quasi dritte Ordnung bei etwas mehr Volumen',
  'flattest delay a vented box can have, gentle slope': 'ebenste Laufzeit, die Bassreflex haben kann, sanfter Abfall',
  'tightest of the vented boxes, tuned low, gentle slope':
    'das straffste der Bassreflexgehäuse, tief abgestimmt, sanfter Abfall',
  'louder and lower than closed around its tuning; nothing holds the cone below it':
    'um die Abstimmung lauter und tiefer als geschlossen; darunter hält nichts die Membran',
  'loudest in its band, steep below it; all sound by ports, and small errors of volume or port show':
    'in seinem Band am lautesten, darunter steil; aller Schall kommt aus Kanälen, und kleine Fehler in Volumen oder Kanal zeigen sich',
  'vented bass without port noise or a long port; steep below its tuning, a notch at the free resonance':
    'Bass wie mit Kanal, ohne dessen Geräusch und Länge; unter der Abstimmung steil, eine Kerbe bei der freien Resonanz',
  'filters itself: {low} to {high} Hz, cone well held; all sound by the port, errors of volume hardly forgiven':
    'filtert selbst: {low} bis {high} Hz, Membran gut gehalten; aller Schall kommt aus dem Kanal, Fehler im Volumen wiegen schwer',
  'needs {net} of the {space} of space': 'braucht {net} der {space} Platz',
  'needs {net}, {over} more than the space': 'braucht {net}, {over} mehr als Platz ist',
  'never reaches half power of its reference': 'erreicht nie die halbe Leistung seines Bezugs',
  'half power only at {half} Hz: no low bass of its own': 'halbe Leistung erst bei {half} Hz: kein eigener Tiefbass',
  '{ripple} dB of ripple, more than {most} dB': '{ripple} dB Welligkeit, mehr als {most} dB',
  '{air} is {times} times the {swept} that Sd·Xmax sweeps, less than {least} times: the air spring alone distorts by more than a tenth':
    '{air} sind das {times}-Fache der {swept}, die Sd·Xmax überstreicht, weniger als das {least}-Fache: allein die Luftfeder verzerrt um mehr als ein Zehntel',
  '{air} is less than the drivers themselves take behind their cones ({drivers})':
    '{air} sind weniger, als die Lautsprecher selbst hinter ihren Membranen brauchen ({drivers})',
  'fs/Qes {ebp} Hz (practice: below {closed} closed, above {opened} vented or band-pass) leans to closed':
    'fs/Qes {ebp} Hz (Praxis: unter {closed} geschlossen, über {opened} Bassreflex oder Bandpass) spricht für geschlossen',
  'fs/Qes {ebp} Hz (practice: below {closed} closed, above {opened} vented or band-pass) leans to vented':
    'fs/Qes {ebp} Hz (Praxis: unter {closed} geschlossen, über {opened} Bassreflex oder Bandpass) spricht für Bassreflex',
  'fs/Qes {ebp} Hz (practice: below {closed} closed, above {opened} vented or band-pass) suits both':
    'fs/Qes {ebp} Hz (Praxis: unter {closed} geschlossen, über {opened} Bassreflex oder Bandpass) passt zu beidem',
  "Qtc {qtc} lies not above the driver's Qts {qts} (source resistance in it): a closed box can only raise it":
    'Qtc {qtc} liegt nicht über dem Qts {qts} des Lautsprechers (mit dem Widerstand der Quelle): ein geschlossenes Gehäuse kann es nur erhöhen',
  'asks for Qts {wanted} with these losses, the driver has {has}':
    'verlangt Qts {wanted} bei diesen Verlusten, der Lautsprecher hat {has}',
  'Qts {qts} lies above the {flat} that is maximally flat with these losses':
    'Qts {qts} liegt über den {flat}, die mit diesen Verlusten am ebensten sind',
  'Qts {qts} lies below the {flat} that is maximally flat with these losses':
    'Qts {qts} liegt unter den {flat}, die mit diesen Verlusten am ebensten sind',
  'Qts {qts} lies above the Qtc {qtc} of a rear chamber at the level of the bare driver':
    'Qts {qts} liegt über dem Qtc {qtc} einer hinteren Kammer auf dem Pegel des bloßen Lautsprechers',
  'no flat opened box for Qts {qts} with these losses; ask for a volume and a tuning':
    'zu Qts {qts} gibt es mit diesen Verlusten kein ebenes offenes Gehäuse; Volumen und Abstimmung nennen',
  '{peak} dB at its peak against the bare driver': '{peak} dB an der Spitze gegen den bloßen Lautsprecher',
  'Passive radiators, volume and tuning of the flat vented box':
    'Passivmembranen, Volumen und Abstimmung des ebenen Bassreflexgehäuses',
  'Passive radiators, as asked': 'Passivmembranen, wie verlangt',
  'Band-pass, for your edges': 'Bandpass, für die genannten Grenzen',
  'power-law fit for QL about 7 (Margolis & Small 1981, from memory)':
    'Potenzgesetz für QL um 7 (Margolis & Small 1981, aus dem Gedächtnis)',
  '{ebp} leans to a closed box: {rule}': '{ebp} spricht für ein geschlossenes Gehäuse: {rule}',
  '{ebp} leans to a vented or band-pass box: {rule}': '{ebp} spricht für Bassreflex oder Bandpass: {rule}',
  '{ebp} lies between, closed and vented both work: {rule}':
    '{ebp} liegt dazwischen, geschlossen und Bassreflex gehen beide: {rule}',
  'below {closed} Hz closed, above {vented} Hz vented or band-pass (common practice, no source)':
    'unter {closed} Hz geschlossen, über {vented} Hz Bassreflex oder Bandpass (übliche Praxis, ohne Quelle)',
  'notch at {notch} Hz, radiator {radiator} times as compliant as the box, drivers {drivers} times':
    'Kerbe bei {notch} Hz, Passivmembran {radiator}-mal so nachgiebig wie die Luft, Lautsprecher {drivers}-mal',
  '{level} dB at its centre against the bare driver': '{level} dB in der Mitte gegen den bloßen Lautsprecher',
  '{volume} is {times} times Vas and hardly stiffens the cone: an infinite baffle does the same':
    '{volume} sind das {times}-Fache von Vas und federn die Membran kaum: eine unendliche Wand täte dasselbe',
  'Band-pass, flat': 'Bandpass, eben',
  'Band-pass, 0.35 dB of ripple': 'Bandpass, 0,35 dB Welligkeit',
  'Sixth-order band-pass, both chambers open to the outside':
    'Bandpass sechster Ordnung, beide Kammern nach außen offen',
  'Sixth-order band-pass, rear chamber opens into the front':
    'Bandpass sechster Ordnung, hintere Kammer öffnet in die vordere',
  'no fourth-order shape spans {low} to {high} Hz around this driver':
    'keine Form vierter Ordnung spannt {low} bis {high} Hz um diesen Lautsprecher',
  'the centre {centre} Hz lies not above the resonance {resonance} Hz of the driver':
    'die Mitte bei {centre} Hz liegt nicht über der Resonanz des Lautsprechers, {resonance} Hz'
}
