/** What the catalogue says of these cautions, in German. */
import type { safetyCautions } from '../../cautions/safety.ts'

export const safetyMeanings = {
  'hearing-exposure':
    'Der Pegel kann den empfohlenen Grenzwert von 85 dB A-bewertet über acht Stunden überschreiten; je 3 dB mehr halbieren die Zeit. Bei Prüfungen mit Vollpegel draußen sitzen oder Gehörschutz tragen; Kinder vertragen weniger.',
  'hearing-extreme':
    'Bei Vollpegel sitzt niemand im Auto: die Spitzen kommen der Grenze nahe, bei der niemand arbeiten darf, wo ein einziger Augenblick auf Dauer schaden kann.',
  'engine-running':
    'Den Motor nur im Freien laufen lassen, nie in einer Garage, auch nicht bei offenem Tor: Abgas (Kohlenmonoxid) tötet unbemerkt. Ein Ladegerät an der Batterie genügt ebenso. Ein Elektro- oder Hybridauto steht fahrbereit, Feststellbremse angezogen, niemand davor oder dahinter: es kann sich lautlos bewegen.',
  'probe-ground':
    'Beide Lautsprecherklemmen können Spannung führen, auch an einem nicht gebrückten Ausgang: die Masseklemme eines Tastkopfs schließt dort den Verstärker kurz. Zwei Tastköpfe und ihre Differenz, oder ein Messgerät mit Batterien.',
  'battery-disconnect':
    'Den Minuspol zuerst ab und zuletzt wieder an, Werkzeug und Ringe ab. Dem Handbuch des Fahrzeugs zu Radiocodes, Speichern und Batteriesensoren folgen.',
  'fuse-last':
    'Das ganze Kabel ohne Sicherung verlegen und anschließen; die Sicherung zuletzt einsetzen, nach einer Prüfung auf Kurzschluss zur Karosserie.',
  'airbag-looms':
    'Kabelbäume und Stecker von Airbag und Gurtstraffer, oft gelb: nie prüfen, schneiden oder anzapfen, kein Kabel daran entlang, und nach dem Abklemmen der Batterie so lange warten, wie der Fahrzeughersteller sagt. Arbeit in ihrer Nähe einer Fachwerkstatt überlassen.',
  'blind-drilling':
    'Vor jedem Loch und jeder Schraube hinter das Blech sehen: Kraftstoff- und Bremsleitungen, Tank, Airbags, Kabelbäume, Hochvoltkabel; einen Tiefenanschlag nehmen.',
  'bulkhead-grommet':
    'Wo das Kabel durch die Spritzwand oder an einer Blechkante entlang geht, muss eine Gummitülle oder Verschraubung es auf Dauer schützen: eine durchgescheuerte Zuleitung ist ein Kurzschluss zur Karosserie.',
  'cable-routing':
    'Die Leitung fern von Auspuff, Pedalen, Lenkung, Sitzschienen, Kraftstoffleitungen und Steuergerätebäumen führen, auf dem Weg befestigen und Signalleitungen auf der anderen Seite halten.',
  'battery-gas':
    'Batterien geben Wasserstoff ab und können Säure spritzen: Augenschutz, keine Funken; eine Batterie in Innenraum oder Kofferraum führt ihren Entgasungsschlauch ins Freie, auch AGM und Gel, die bei Überladung gasen, und ist gegen einen Aufprall befestigt. Ein Ladegerät ausschalten, bevor seine Klemmen bewegt werden.',
  'capacitor-charge':
    'Ein über seine Sicherung angeschlossener Kondensator zieht den vollen Strom der Batterie und kann den Kontakt verschweißen: über einen Widerstand laden, bis daran weniger als 1 V bleibt, dann die Sicherung einsetzen.',
  'capacitor-discharge':
    'Ein Kondensator bleibt bei abgeklemmter Batterie geladen: über denselben Widerstand entladen, bevor er berührt oder daran gearbeitet wird.',
  'high-voltage-orange':
    'Orangefarbene Kabel führen mehr als 60 V Gleichspannung, bis einige hundert, auch bei ausgeschalteter Zündung: in ihrer Nähe nichts berühren, bewegen oder bohren. Dort erst arbeiten, wenn eine für dieses Fahrzeug geschulte Person den Servicestecker geöffnet und die Spannungsfreiheit festgestellt hat, wie es der Hersteller sagt.',
  'ready-mode':
    'Fahrbereit kann das Fahrzeug lautlos anfahren oder seinen Motor starten, und sein Wandler hält die 12-V-Seite unter Spannung: vor der Arbeit Fahrbereitschaft aus und Schlüssel außer Reichweite, bei einer Prüfung P und Handbremse, niemand davor oder dahinter.',
  'forty-eight-volt':
    '48 V liegen unter der Grenze von 60 V Gleichspannung, doch nasse oder verletzte Haut spürt sie, und sie halten einen Lichtbogen: Sicherungen für 58 V oder mehr, abgedeckte Klemmen, 12-V-Verstärker nur hinter einem Wandler und der Rückweg des Herstellers. Eine verlorene Masse kann 48 V in 12-V-Teile bringen; eine Fachkraft fragen.',
  'lithium-battery':
    'Eine Lithiumbatterie kann in einen Kurzschluss mehr Strom treiben, als Schraubsicherungen abschalten, und lädt nur unter ihrer eigenen Überwachung, nicht unter 0 °C; den Lade- und Sicherungsregeln ihres Herstellers folgen.',
  'amplifier-heat':
    'Ein Verstärker setzt den Rest der aufgenommenen Leistung in Wärme um: freie Luft ringsum lassen, mit nichts abdecken.',
  'licensed-work':
    'Diese Zahlen sind technische Hilfe, keine Abnahme. Fahrzeugprüfung, Versicherung, Garantie und örtliche Vorschriften gehen vor; bei hohen Strömen, Elektrofahrzeugen und im Airbagbereich eine zugelassene oder geschulte Fachkraft nehmen.'
} as const satisfies Record<keyof typeof safetyCautions, string>
