/** What the catalogue says of these cautions, in German. */
import type { loadCautions } from '../../cautions/load.ts'

export const loadMeanings = {
  'impedance-dip':
    'Der Betrag einer Nennimpedanz kann 20 % darunter sinken; ein Verstärker an seiner kleinsten Last hat keine Reserve.',
  'load-below-minimum':
    'Einige Lasten liegen unter dem, was der Verstärker treiben darf; sie sind gekennzeichnet und dürfen nicht angeschlossen werden.',
  'no-allowed-load':
    'Keine Schaltung dieser Spulen erreicht die kleinste Last des Verstärkers: er würde überhitzen, abschalten oder ausfallen. Andere Spulen, weniger Lautsprecher je Ausgang oder einen anderen Verstärker nehmen.',
  'unequal-power':
    'Die Spulen teilen die Leistung nicht gleich: die heißeste setzt die Grenze der ganzen Gruppe, die anderen langweilen sich. Nicht empfohlen.',
  'all-coils-driven':
    'Jede Spule eines Lautsprechers mit gleicher Polung anschließen: eine offene Spule halbiert die Antriebskraft, eine verpolte hebt sie auf.',
  'unlike-coils':
    'Spulen verschiedener Impedanz gehören in der Regel zu verschiedenen Lautsprechern: ihre Leistungen passen nicht zusammen, und verschiedene Lautsprecher sollten sich keine Kammer teilen.',
  'drivers-in-series':
    'Lautsprecher in Reihe führen denselben Strom: jeder sieht die Impedanz der anderen als Quellwiderstand, und eine gebrochene Spule lässt ihre Kette verstummen.',
  'power-unknown':
    'Die Leistung an der angeschlossenen Last ist nicht veröffentlicht. Sie folgt nicht aus einer höheren Last: Versorgung, Stromgrenze und Wärme beugen das 1/Z-Gesetz.',
  'under-powered':
    'Der Verstärker gibt weniger als drei Viertel dessen, was die Lautsprecher vertragen. Leiser, und sicher, solange er nicht bis zum Übersteuern aufgedreht wird, denn ein Rechteck hat die doppelte Leistung des Sinus gleicher Spitze.',
  'over-powered':
    'Der Verstärker kann mehr als das Anderthalbfache dessen geben, was die Lautsprecher vertragen: zwischen ihm und verbrannten Spulen stehen nur die Einstellung der Verstärkung und ein Hochpass.',
  'rating-below-minimum':
    'Das Datenblatt nennt eine Leistung an einer Last unter seiner eigenen kleinsten Last; die kleinste Last gilt.',
  'bridged-terminals':
    'Beide Klemmen eines gebrückten Paares führen Spannung. Eine an Masse zu legen oder mit einem anderen Ausgang zu verbinden zerstört den Verstärker und kann einen Brand auslösen.',
  'bridged-power-derived':
    'Für diese Last ist keine gebrückte Leistung veröffentlicht; genommen wurde das Doppelte der Leistung eines Kanals an der halben Last.',
  'output-touch-voltage':
    'Lautsprecherklemmen starker Verstärker überschreiten die 30 V, unter denen kein Schutz verlangt wird: jede Verbindung isolieren, Prüfspitzen bei ausgeschaltetem Verstärker anklemmen.',
  'equal-gains':
    'Mehrere Ausgänge treiben eine Gruppe von Lautsprechern: ungleiche Verstärkung oder Polung belastet einen mehr oder löscht Bass aus.',
  'no-speaker-cable': 'Kein übliches Lautsprecherkabel ist dick genug für diese Last und Länge.',
  'speaker-cable-too-thin':
    'Das genannte Lautsprecherkabel trägt für diese Last und Länge zu wenig Strom oder hat zu viel Widerstand.',
  'unregulated-sizing':
    'Ein Verstärker, der nicht regelt, zieht umso mehr, je höher die Versorgung: Sicherung und Kabel sind für die Ladespannung ausgelegt, den größeren Fall.',
  'not-planned': 'Ein Teil der Anlage ist hier nicht geplant: er steht in keiner Stückliste und keinem Bild.',
  'target-off':
    'Keine erlaubte Last mit gleichen Anteilen liegt bei der gewünschten; angegeben ist die nächste, oder die gleichmäßigste, wo kein Netz die Leistung gleich teilt.'
} as const satisfies Record<keyof typeof loadCautions, string>
