/** What the catalogue says of these cautions, in German. */
import type { electricalCautions } from '../../cautions/electrical.ts'

export const electricalMeanings = {
  'rating-implausible':
    'Die Gerätesicherungen ließen die behauptete Dauerleistung nicht durch: gerechnet wurde mit dem, was sie durchlassen. Zeigt ein Datenblatt mit gemessenem Eingangsstrom mehr, diesen und die zugehörigen Sicherungen angeben.',
  'efficiency-implausible':
    'Der angegebene Wirkungsgrad oder Eingangsstrom liegt außerhalb dessen, was Verstärker dieser Klasse erreichen; prüfen, bei welcher Last und Leistung er gemessen wurde.',
  'supply-type-unknown':
    'Es ist nicht bekannt, ob der Verstärker seine Leistung hält, wenn die Versorgung sinkt: der Strom ist gerechnet, als hielte er sie, die Leistung, als hielte er sie nicht.',
  'parasitic-drain':
    'Die Verstärker ziehen ausgeschaltet Strom; über 1 mA je Gerät leidet die Batterie eines geparkten Autos über Wochen.',
  'sizing-above-nominal':
    'Eine Systemspannung über der Nennspannung wurde angegeben; ein geregelter Verstärker zieht bei niedriger Spannung am meisten, die Nennspannung ist also die sichere Seite.',
  'feed-collapse':
    'Die Verstärker verlangen mehr Leistung, als die Quelle durch diesen Widerstand treiben kann: die Spannung bricht zusammen, es gibt keinen stehenden Zustand. Die Leitung kürzen oder verdicken, die Spannung erhöhen oder die Leistung senken.',
  'below-drop-out':
    'Die Spannung am Verstärker liegt unter dem Punkt, an dem sein Wandler aussetzt; an lauten Stellen würde er abschalten.',
  'collapse-margin':
    'Die Versorgung bricht bei weniger als der doppelten verlangten Leistung zusammen; Spitzen im Bass erreichen das Doppelte des Mittels.',
  'total-drop':
    'Kabel, Sicherung, Verbindungen und Rückweg nehmen zusammen bei heißem Leiter mehr als 5 % der Nennspannung; über 10 % nicht so bauen. Wo der Widerstand der Karosserie angenommen wurde, zählt er in keinen Stopp: messen, oder eine Rückleitung legen.',
  'conductor-hot': 'Bei dauerndem Vollpegel überschreitet der Leiter nach Schätzung die Klasse seiner Isolierung.',
  'composition-unknown':
    'Das Metall des Kabels ist nicht bekannt; gerechnet wurde mit Aluminium und 10 % Kupfer, dem schlechtesten, das als Stromkabel verkauft wird. Reines Kupfer gleicher Größe hätte um mehr als ein Drittel weniger Widerstand.',
  'insulation-unknown':
    'Die Isolierklasse wurde nicht angegeben, übliches Fahrzeug-PVC wurde angenommen; ein Kabel mit höherer gedruckter Klasse darf dünner sein, wo Strombelastbarkeit oder Sicherung bestimmen.',
  'no-cable-fits':
    'Keine Größe der Reihe hält jede Grenze ein. Parallele Leitungen nehmen, jede mit eigener Sicherung, einen kürzeren Weg, besseren Leiter oder bessere Isolierung, oder eine höhere Systemspannung.',
  'parallel-runs':
    'Parallele Leitungen teilen den Strom nur bei gleicher Länge, Größe und gleichen Kabelschuhen; jede braucht an der Quelle ihre eigene Sicherung, und eine, die auslöst, überlastet die übrigen.',
  'chassis-unmeasured':
    'Der Widerstand der Karosserie als Rückweg wurde angenommen; er ist von Auto zu Auto verschieden. Unter Last den Spannungsfall zwischen Masseklemme des Verstärkers und Minuspol der Batterie messen.',
  'chassis-no-return':
    'Auf diese Karosserie ist als Leiter kein Verlass: eine Rückleitung in der Größe der Plusleitung zum Minuspol der Batterie oder zu ihrem Massepunkt legen.',
  'ground-noise':
    'Die Welligkeit der Versorgung über einem Widerstand, den sie mit der Signalmasse teilt, ist laut genug, um hörbar zu sein. Einen gemeinsamen Massepunkt mit dem Radio nehmen, Differenzeingänge, Leistung und Signal getrennt führen; nie eine Schutz- oder Werksmasse abnehmen.',
  'no-fuse-rating':
    'Keine erlaubte Sicherungsbauform hat einen so großen Nennstrom; die Last in Zweige mit eigenen Sicherungen teilen.',
  'breaking-capacity':
    'Ein Kurzschluss gleich hinter der Sicherung kann mehr Strom treiben, als sie sicher abschaltet: sie kann bersten oder weiterbrennen. Eine Bauform oder einen Sicherungseinsatz nehmen, dessen Hersteller bei dieser Spannung mehr nennt, oder die Last hinter einer größeren Sicherung speisen.',
  'fault-current-low':
    'Ein Kurzschluss am fernen Ende treibt vielleicht nicht genug Strom, um die Sicherung schnell auszulösen; die Leitung ist lang oder dünn für ihre Sicherung.',
  'maker-fuse-too-small':
    'Die vom Hersteller des Verstärkers genannte Sicherung liegt unter dem, was die Last bei Vollpegel zieht; sie wurde nicht genommen. Last und Leistung prüfen.',
  'maker-fuse-not-obeyed':
    'Die vom Hersteller des Verstärkers genannte Sicherung ist größer, als die Last braucht oder das Kabel trägt; sie wurde nicht genommen.',
  'maker-fuse-used':
    'Der Hersteller des Verstärkers nennt eine kleinere Sicherung, als die Lastregel ergibt, und sie führt den Vollpegel noch: sie wurde genommen.',
  'fuse-above-onboard':
    'Die Sicherung des Kabels ist größer als die Gerätesicherungen zusammen; für das Kabel ist das richtig, den Verstärker schützen weiter seine eigenen.',
  'fuse-too-far':
    'Das ungesicherte Stück zwischen Quelle und Sicherung ist länger, als es sein sollte; über 450 mm braucht es ein volles Schutzrohr, über 1016 mm die Sicherung versetzen.',
  'link-both-ends':
    'Jedes Ende einer Verbindung zweier Batterien ist eine Quelle: an beide Enden eine Sicherung, jede nahe ihrer Batterie.',
  'selectivity-poor':
    'Haupt- und Zweigsicherung liegen nahe beieinander: ein Fehler hinter dem Zweig kann auch die Hauptsicherung auslösen.',
  'branch-unprotected':
    'Ein Zweig, dünner als die Hauptsicherung erlaubt, hat am Verteiler keine eigene Sicherung; ein Fehler darauf würde das Kabel verbrennen, bevor die Hauptsicherung auslöst.',
  'cable-unguarded':
    'Die Sicherung vor diesem Kabel ist größer, als das Kabel trägt: ein Fehler oder eine Überlast verbrennte es zuerst. Eine kleinere Sicherung, wenn die Last es erlaubt, sonst ein größeres Kabel.',
  'fuse-overcurrent':
    'Eine Sicherung hält den Strom nicht bei ihrem Nennwert: ein Drittel darüber kann eine halbe Stunde fließen. Darum bleibt der Nennwert bei oder unter dem, was das Kabel trägt.',
  'time-current-uncertain':
    'Die Auslösezeiten dieser Bauform sind aus der Erinnerung, nicht gelesen; die Kennlinie des Herstellers nehmen, bevor man sich darauf verlässt.'
} as const satisfies Record<keyof typeof electricalCautions, string>
