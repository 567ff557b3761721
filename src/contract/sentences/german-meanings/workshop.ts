/** What the catalogue says of these cautions, in German. */
import type { workshopCautions } from '../../cautions/workshop.ts'

export const workshopMeanings = {
  'sheet-plan-above-bound':
    'Der Zuschnitt braucht mehr als 5 % mehr Tafeln als die bewiesene untere Schranke; die Meldung sagt, was dazwischen liegt.',
  'narrow-strip':
    'Eine Platte ist so schmal, dass die Hand dem Blatt nahe kommt; einen Schiebestock nehmen oder sie mit geklemmter Schiene aus einem breiteren Teil schneiden.',
  'wood-dust':
    'Holzstaub kann Asthma und, vor allem von Hartholz, Nasenkrebs auslösen. Am Werkzeug absaugen, Maske P3 tragen, aus Wohnräumen fernhalten.',
  'solvent-vapour':
    'Kontaktkleber, Sprühlack und manche Dichtstoffe sind entzündlich, und ihr Dampf schadet. Im Freien oder bei starker Lüftung; trocknen lassen, bevor etwas geschlossen oder eingeschaltet wird.',
  'seams-out-of-reach':
    'Kein Loch lässt einen Arm an die letzten Fugen: sie dichtet ein Strang, der liegt, bevor die schließende Platte aufgesetzt wird.',
  'box-restraint':
    'Ein loses Gehäuse wird bei einem Aufprall zum Geschoss. Vor allem mit der Struktur der Karosserie verschrauben; Gurte zählen mit ihrem Winkel und der Festigkeit der Öse. Nie an Kindersitzverankerungen, Gurt- oder Sitzschrauben. Die Kraft ist ein Anhalt aus Vorschriften für Sitze, für keinen Unfall nachgewiesen und keine gesetzliche Forderung an Gehäuse.',
  'under-car':
    'Nie unter ein Auto auf dem Wagenheber: Rampen oder Böcke auf ebenem Grund, Räder mit Keilen gesichert, von Hand gerüttelt, bevor man darunter geht, jemand in Rufweite.',
  'turning-blade':
    'Platte und Schiene festklemmen, beide Hände am Werkzeug, warten, bis es steht, und vor dem Wechsel von Blatt oder Fräser den Stecker ziehen. Keine Handschuhe, losen Ärmel oder offenen Haare nahe an Drehendem.',
  'eyes-and-ears':
    'Schutzbrille und Gehörschutz vor dem Einschalten: Säge und Oberfräse sind laut genug, um Ohren innerhalb einer Stunde zu schaden.',
  'mains-tools':
    'Elektrowerkzeug am Netz hinter einem FI-Schutzschalter von 30 mA, Leitungen unbeschädigt und abgerollt, nichts davon im Nassen.',
  'loose-disc':
    'Die Scheibe, die aus einem Loch fällt, verklemmt den Fräser oder fliegt: vor dem letzten Durchgang auf Abfallholz darunter schrauben.',
  'sharp-knife': 'Auskleidung und Bezug mit frischer Klinge schneiden, auf einem Brett, weg von der haltenden Hand.',
  'acid-sealant': 'Dichtstoff, der nach Essig riecht, korrodiert Kontakte: neutral vernetzenden oder Acryl nehmen.',
  'compressed-air':
    'Nur mit dem Mund blasen, nie mit Druckluft: ein Zehntel Bar drückt eine Platte mit Tausenden Newton.',
  'vapour-and-foam':
    'Dichtstoff und Kleber sind ausgehärtet, bevor ein Lautsprecher hineinkommt: ihr Dampf greift Sicken aus Schaum und Gummi an.',
  'strong-magnet':
    'Der Magnet eines schweren Lautsprechers schnappt an Stahl und quetscht Finger: mit der Vorderseite nach oben auf Holz ablegen, kein Werkzeug in Reichweite. Wer einen Herzschrittmacher trägt, hält 300 mm Abstand.',
  'sweep-level':
    'Ein steigender Ton mit hohem Pegel zerstört Lautsprecher und Gehör: leise halten und über Abstimmung oder Resonanz des Gehäuses beginnen.',
  'airbag-path':
    'Nichts im Weg von Seiten- und Vorhangairbags oder auf ihren Abdeckungen: kein Kabel, keine Klammer, kein Verstärker, kein Gehäuse. Was dort liegt, wird in den Innenraum geschossen.',
  'fuel-vapour':
    'Wo Kraftstoff zu riechen ist, wird nichts gebohrt, erwärmt oder geschaltet; nie nahe an Tank, Einfüllstutzen, deren Schläuchen oder Entlüftungen. Ein Gastank ist Arbeit für die eigene Fachwerkstatt.',
  'amplifier-restraint':
    'Verstärker und Batterie werden bei einem Aufprall wie das Gehäuse geschleudert: Durchgangsschrauben mit Scheiben in das, was mit der Karosserie verschraubt ist, nie Holzschrauben in die Seite eines Gehäuses.',
  'aluminium-joint':
    'Aluminium kriecht und korrodiert unter einem Kupferkabelschuh, bis die Verbindung brennt: Kabelschuhe für Aluminium mit ihrer Paste, und das Drehmoment nach einem Monat nachsehen.',
  'hot-air': 'Heißluft und Flammen fern von Batterie, Kraftstoff, Kleber und Verkleidung halten.',
  'fire-drill':
    'Ein Feuerlöscher in Reichweite, jemand in Rufweite, der Weg hinaus frei. Bei Rauch: Hauptsicherung oder Minuspol ab, wenn eine Hand sicher hinkommt, alle hinaus, Türen auf, dann die Feuerwehr.',
  'engine-parts':
    'Prüfleitungen, Ärmel und Haare fern von Riemen und Lüfter: ein Lüfter kann von selbst anlaufen, auch bei stehendem Motor.',
  'no-design-found':
    'Keine Zusammenstellung der Kandidaten hält alle Grenzen der Suche ein. Die Grenze lockern, die die meisten brechen, oder weitere Kandidaten zufügen.'
} as const satisfies Record<keyof typeof workshopCautions, string>
