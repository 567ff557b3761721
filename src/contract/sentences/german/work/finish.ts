/** German: steps from the closed box to the box in the car. */
import type { finishSentences } from '../../english/work/finish.ts'
import { translation } from '../../form/translation.ts'

export const germanFinish = translation<typeof finishSentences>()({
  'finish.a-lashing-eye-is-often-weaker':
    'Eine Zurröse ist oft schwächer als ihr Gurt: hier mit {eyeStrength} N gerechnet; den Wert im Handbuch nachlesen.',
  'finish.all-cones-move-the-same-way': 'Alle Membranen gehen in dieselbe Richtung.',
  'finish.and-the-port': ' und den Kanal',
  'finish.before-you-drill-find-what-lies':
    'Vor dem Bohren von beiden Seiten nachsehen, was dahinter liegt: Tank, Bremsleitungen, Kabel, Airbags, Fahrbatterie. Von unten nur auf Rampen oder Böcken auf ebenem Grund, Räder verkeilt, nie auf dem Wagenheber.',
  'finish.bolt-it-to-the-body-structure':
    'Mit Lastplatten hinter der Platte an der Struktur der Karosserie verschrauben oder an Zurrösen festgurten; nie an Kindersitz-, Gurt- oder Sitzverankerungen.',
  'finish.bolt-the-box-to-the-body':
    'Zuerst das Gehäuse mit der Struktur der Karosserie verschrauben; Gurte an Zurrösen kommen danach. Anlehnen an die Sitzlehne ist keine Befestigung: deren Schloss einrasten.',
  'finish.brush-edge-sealer-on-every-sawn':
    'Kantenversiegelung auf jede Schnittkante und in das Lautsprecherloch streichen, zweimal.',
  'finish.check-polarity-and-resistance': 'Polung und Widerstand prüfen',
  'finish.close-the-driver-hole-with-boards':
    'Das Lautsprecherloch{more} mit Platten auf Dichtungen schließen, durch einen dünnen Schlauch sanft mit dem Mund hineinblasen und an jeder Fuge horchen und fühlen oder Seifenwasser aufpinseln.',
  'finish.close-the-hole-of-the-terminal':
    'Das Loch des Anschlussterminals ebenso mit einer Platte auf einer Dichtung schließen.',
  'finish.connect-the-inner-wires-to-the':
    'Die inneren Leitungen am Anschlussterminal anschließen, Dichtung einlegen, festschrauben.',
  'finish.cover-the-box': 'Das Gehäuse beziehen',
  'finish.cut-out-the-holes-from-the': 'Die Löcher von der Mitte her ausschneiden und die Ränder einschlagen.',
  'finish.driver': 'Lautsprecher',
  'finish.drivers': '{driverCount} Lautsprecher',
  'finish.every-cone-comes-back-slowly-over':
    'Jede Membran kommt langsam zurück, in einer halben Sekunde oder länger; sofort heißt undicht.',
  'finish.fasten-the-box-in-the-car': 'Das Gehäuse im Auto befestigen',
  'finish.fill-and-sand': 'Spachteln und schleifen',
  'finish.fill-round-over-and-sand': 'Spachteln, abrunden und schleifen',
  'finish.fill-screw-heads-and-seams-let': 'Schraubenköpfe und Fugen spachteln, trocknen lassen.',
  'finish.fit-the': '{more} einbauen{more2}',
  'finish.fit-the-terminal-cup-and-feet': 'Anschlussterminal und Füße anbringen',
  'finish.glue-the-wrap-first-with-its':
    'Erst den Mantel mit der Naht hinten oder unten kleben, dann die Enden, den Flor in einer Richtung.',
  'finish.keep-above-the-tuning-frequency-at': ', anfangs über der Abstimmfrequenz bleiben',
  'finish.kg-to-rest-it-on-a':
    '{carried} kg{more}: {people}, um es auf ein Brett über der Ladekante zu legen und hineinzuschieben.',
  'finish.lay-the-gasket-strip-connect-the':
    'Das Dichtband einlegen, die Leitungen nach dem Schaltbild anschließen, den Lautsprecher einsetzen.{driverMass}',
  'finish.leave-the-outer-edges-sharp-a':
    'Die äußeren Kanten scharf lassen, in oder nahe ihnen läuft eine Fuge; nur mit Schleifpapier brechen.',
  'finish.listen-for-leaks-and-rattles': 'Auf undichte Stellen und Klappern horchen',
  'finish.load-the-box': 'Das Gehäuse einladen',
  'finish.look-from-both-sides-before-drilling':
    'Vor dem Bohren von beiden Seiten nachsehen: nie in Tank, Bremsleitungen, Kabel, Airbagbereiche oder die Fahrbatterie.',
  'finish.lower-it-with-two-hands-or': ' Mit zwei Händen oder zu zweit absenken; ein Ausrutscher zerreißt die Membran.',
  'finish.mark-every-leak-seal-it-test': 'Jede undichte Stelle anzeichnen, dichten, erneut prüfen.',
  'finish.measure-the-resistance-at-the-terminal':
    'Den Widerstand am Anschlussterminal messen und mit dem Plan vergleichen.',
  'finish.mind-fingers-at-the-sill-and':
    'Auf Finger an der Ladekante achten und auf das, was dahinter liegt: Gurte, Entriegelungszüge, Verkleidung.',
  'finish.never-fasten-it-to-child-seat':
    'Nie an Kindersitzverankerungen (Bügel oder obere Haltepunkte), an Gurtverankerungen oder an Sitzschrauben befestigen.',
  'finish.never-under-a-car-on-its':
    'Nie unter ein Auto auf dem Wagenheber: Rampen oder Böcke auf ebenem Grund, Räder verkeilt, jemand in Rufweite.',
  'finish.no-hiss-no-draught-and-no': 'Kein Zischen, kein Luftzug und keine Blase an einer Fuge.',
  'finish.nothing-is-pinched-behind-it-flaps':
    'Dahinter ist nichts eingeklemmt; Klappen, Luken und die innere Entriegelung der Heckklappe bleiben frei.',
  'finish.play-a-slow-tone-sweep-at':
    'Mit irgendeinem kleinen Verstärker leise einen langsam steigenden Ton spielen{more}; an den Fugen fühlen, berühren, was schnarrt.',
  'finish.press-every-cone-gently-inwards-with':
    'Jede Membran mit flachen Fingern nahe der Mitte sanft eindrücken und loslassen.',
  'finish.pull-at-each-wire-as-hard':
    'An jeder Leitung so stark ziehen wie an einer vollen Einkaufstasche, etwa 50 N: nichts rührt sich.',
  'finish.push-and-pull-in-all-directions':
    'Von Hand in alle Richtungen drücken und ziehen: das Gehäuse rührt sich nicht.',
  'finish.put-load-plates-of-at-least':
    'Lastplatten von mindestens 50 × 50 mm hinter die Platte: Holz reißt aus, bevor eine Schraube nachgibt.',
  'finish.round-over-the-outer-edges-that':
    'Die äußeren Kanten, die die Zuschnittliste nennt, mit höchstens {roundingRadius} abrunden; Schrauben dem Fräser aus dem Weg halten, Gehrungen und schräge Verbindungen scharf lassen.',
  'finish.sand-with-p120-then-p180': 'Mit P120, dann mit P180 schleifen.',
  'finish.sanding-block-by-hand-plane-and':
    'Schleifklotz von Hand; Hobel und Schleifpapier runden eine Kante so gut wie eine Fräse.',
  'finish.screw-on-the-feet': 'Die Füße anschrauben.',
  'finish.seal-the-sawn-edges': 'Die Schnittkanten versiegeln',
  'finish.test-for-leaks': 'Auf Dichtheit prüfen',
  'finish.test-for-leaks-with-the-cone': 'Dichtheit mit der Membran prüfen',
  'finish.the-crash-force-is-a-yardstick':
    'Die Aufprallkraft ist ein Anhalt aus Vorschriften für Sitze; nichts hier ist für einen Unfall nachgewiesen.',
  'finish.the-gasket-is-pressed-evenly-all': 'Die Dichtung ist rundum gleichmäßig gepresst.',
  'finish.the-resistance-lies-a-little-below': 'Der Widerstand liegt etwas unter der Nennlast des Plans.',
  'finish.the-seat-back-is-locked': 'Die Sitzlehne ist eingerastet.',
  'finish.tighten-crosswise-in-two-rounds-by': 'Über Kreuz in zwei Runden von Hand anziehen.',
  'finish.touch-a-1-5-v-cell':
    'Eine Zelle von 1,5 V einen Augenblick an das Anschlussterminal halten, Plus an Plus: jede Membran muss nach außen gehen.',
  'finish.wear-gloves-let-it-flash-off':
    'Handschuhe tragen; einen Tag ablüften lassen, bevor das Gehäuse in ein geschlossenes Auto kommt.',
  'finish.when-the-box-stands-in-the': ', wenn das Gehäuse im Auto steht',
  'finish.without-its-drivers': ' ohne Lautsprecher',
  'finish.weight-the-radiators': 'Passivmembranen beschweren',
  'finish.weigh-what-is-added':
    '{addedG} g für {count, plural, one {die Passivmembran} other {jede der # Passivmembranen}} abwiegen, Schraube, Mutter und Scheiben darin, aufs Gramm und überall gleich: mit ihrer eigenen bewegt die Membran dann {massG} g.',
  'finish.fix-the-weight-on-the-axis':
    'Das Gewicht auf der Achse der Membran befestigen, wie der Hersteller es sagt, mit Schraubensicherung oder selbstsichernder Mutter; neben der Achse kippt die Membran.',
  'finish.nothing-rattles-when-shaken':
    'Beim Schütteln mit der Hand klappert nichts, und die Membran steht gerade in ihrer Sicke.',
  'finish.a-weight-that-comes-loose':
    'Ein Gewicht, das sich bei vollem Hub löst, zerreißt die Membran und fliegt im Gehäuse umher.',
  'finish.fit-the-radiators': '{count, plural, one {Die Passivmembran} other {Die # Passivmembranen}} einsetzen',
  'finish.lay-the-gasket-strip-set-the-radiator':
    'Dichtband legen und die Passivmembran am Korb einsetzen, nie an Membran oder Gewicht.',
  'finish.pressed-in-by-hand-it-comes-back':
    'Mit flachen Fingern so weit es geht eingedrückt reibt die Membran nirgends und berührt nichts hinter sich.',
  'finish.press-a-cone-and-hold-it':
    'Eine Membran eines Lautsprechers mit flachen Fingern nahe der Mitte sanft eindrücken und halten.',
  'finish.the-radiators-stay-out':
    'Die Passivmembranen treten heraus und gehen langsam zurück, über eine halbe Sekunde oder mehr; sofort heißt undicht.',
  'finish.and-those-of-the-radiators': ' und die der Passivmembranen',
  'finish.take-the-front-off':
    'Die Front abschrauben und mit ihrem Dichtband beiseitelegen; das Loch zwischen den Kammern liegt frei.',
  'finish.screw-the-front-on-again': 'Die Front wieder anschrauben',
  'finish.nothing-lies-in-the-chamber':
    'Nachsehen, dass nichts in der Kammer liegt und kein Kabel eine Membran berührt; dann die Front auf ihrem Dichtband anschrauben, über Kreuz und von Hand, ohne Leim.',
  'finish.close-the-port-with-a-board':
    'Den Kanal mit einem Brett auf Dichtband schließen, durch einen kleinen Schlauch sanft mit dem Mund hineinblasen und an jeder Fuge und rings um die Front horchen und fühlen, oder Seifenwasser aufstreichen.',
  'finish.cover-the-front-by-itself':
    'Die Front für sich beziehen, abgenommen, und die Kanten, auf denen sie liegt, für das Dichtband frei lassen.'
})
