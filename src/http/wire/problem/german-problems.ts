/** Titles and meanings of refusals in German. */
import type { ProblemCode, ProblemWords } from './problem-kinds.ts'

export const germanProblems: Readonly<Record<ProblemCode, ProblemWords>> = {
  'not-positive': {
    title: 'Keine positive Zahl',
    meaning: 'Eine Größe, die über null liegen muss, tut es nicht.'
  },
  'out-of-range': {
    title: 'Außerhalb des Bereichs',
    meaning: 'Eine Größe liegt außerhalb des Bereichs, in dem die Rechnung gilt; `bounds` sagt, welcher es ist.'
  },
  'missing-input': {
    title: 'Zu wenige Angaben',
    meaning: 'Die Angaben bestimmen die Antwort nicht; die Einzelheit nennt, was es täte.'
  },
  'conflicting-input': {
    title: 'Widersprüchliche Angaben',
    meaning: 'Zwei Felder schließen einander aus oder widersprechen sich.'
  },
  'no-solution': {
    title: 'Kein solcher Entwurf',
    meaning: 'Die Anfrage ist gültig, aber kein Entwurf erfüllt sie; die Einzelheit sagt, was im Weg steht.'
  },
  'unknown-designation': {
    title: 'Unbekannte Bezeichnung',
    meaning: 'Eine Bezeichnung steht nicht in ihrer veröffentlichten Reihe; die Tabellen listen sie.'
  },
  'undefined-rating': {
    title: 'Leistungsangabe ohne feste Bedeutung',
    meaning:
      'Spitzen-, Maximal- und Summenleistung nennen weder Dauer noch Verzerrung noch Zahl der Kanäle; nur Dauerleistung (RMS) an einer genannten Last lässt sich zuordnen.'
  },
  'insulation-below-ambient': {
    title: 'Isolierung unter der Umgebung',
    meaning: 'Kabelisolierung dieser Klasse darf in so heißer Umgebung keinen Strom führen.'
  },
  'fuse-voltage': {
    title: 'Sicherung unter der Bordnetzspannung',
    meaning: 'Eine Sicherung, die nur eine kleinere Spannung abschalten darf, würde den Lichtbogen nicht löschen.'
  },
  'invalid-request': {
    title: 'Anfrage passt nicht zum Vertrag',
    meaning: 'Jeder Fehler steht mit einem Zeiger in die Anfrage da.'
  },
  'unreadable-body': {
    title: 'Inhalt ist kein JSON',
    meaning:
      'Der Inhalt ließ sich nicht als ein JSON-Text lesen, oder Leser wären sich darüber uneins: ein doppelter Name, eine Zahl jenseits doppelter Genauigkeit, mehr als 16 Ebenen.'
  },
  'malformed-http': {
    title: 'Kein HTTP',
    meaning: 'Die Bytes auf der Verbindung sind keine HTTP-Anfrage; die Verbindung wird geschlossen.'
  },
  unauthorised: {
    title: 'Schlüssel fehlt oder ist unbekannt',
    meaning: 'Dieser Dienst verlangt einen Schlüssel; im Kopf X-Api-Key senden.'
  },
  'not-found': { title: 'Nicht vorhanden', meaning: 'Unter diesem Pfad liegt nichts.' },
  'method-not-allowed': {
    title: 'Methode nicht erlaubt',
    meaning: 'Der Kopf Allow listet die Methoden dieses Pfads.'
  },
  'not-acceptable': {
    title: 'Kein solches Format',
    meaning: 'Die Einzelheit listet die Formate, die es gibt.'
  },
  'too-slow': {
    title: 'Anfrage zu langsam',
    meaning: 'Die Anfrage kam nicht rechtzeitig an; die Verbindung wird geschlossen.'
  },
  'body-too-large': { title: 'Inhalt zu groß', meaning: 'Der Inhalt ist größer, als der Dienst liest.' },
  'unsupported-media-type': {
    title: 'Format nicht unterstützt',
    meaning: 'Inhalte müssen application/json sein, in UTF-8, nicht gepackt.'
  },
  'headers-too-large': {
    title: 'Kopfzeilen zu groß',
    meaning: 'Anfragezeile und Kopfzeilen sind größer, als der Dienst liest.'
  },
  'too-many-requests': { title: 'Zu viele Anfragen', meaning: 'So lange warten, wie Retry-After sagt.' },
  internal: {
    title: 'Innerer Fehler',
    meaning: 'Die Anfrage traf einen Fehler des Dienstes; die Kennung der Anfrage findet ihn im Protokoll.'
  },
  'out-of-time': {
    title: 'Zeit abgelaufen',
    meaning:
      'Die Rechnung dauerte länger, als der Dienst einer Anfrage gibt; weniger verlangen oder später wieder fragen.'
  },
  overloaded: {
    title: 'Überlastet',
    meaning: 'Der Dienst wirft Last ab; so lange warten, wie Retry-After sagt.'
  }
}
