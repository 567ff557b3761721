/** What the catalogue says of these cautions, in German. */
import type { signalCautions } from '../../cautions/signal.ts'

export const signalMeanings = {
  'bridge-tied-source':
    'Lautsprecherausgänge von Fahrzeugen liegen mit beiden Drähten auf halber Versorgung: einen an Masse zu legen zerstört die Quelle. Eingänge müssen differenziell oder galvanisch getrennt sein.',
  'differential-output':
    'Ein differenzieller Vorverstärkerausgang trifft auf einen Eingang, der sein Minus an Masse legt.',
  'ground-loop':
    'Quelle und Verstärker an verschiedenen Massepunkten fangen das Pfeifen der Lichtmaschine ein. Der Reihe nach: ein gemeinsamer Massepunkt, Differenzeingänge, ein Trennübertrager, Signal- und Stromleitungen auf verschiedenen Seiten, ein guter Schirm. Nie eine Schutz- oder Fahrzeugmasse wegnehmen.',
  'factory-processing': 'Entzerrer, Verzögerung und pegelabhängiger Bass des Fahrzeugs bleiben im Signal.',
  'connector-pins': 'Die Belegung der Stecker ist von Marke zu Marke verschieden: vor dem Anschließen messen.',
  'input-too-low':
    'Die Quelle ist selbst bei voller Verstärkung zu schwach für volle Leistung; ein Vorverstärker oder ein anderer Ausgang ist nötig.',
  'input-too-high': 'Die Quelle ist stärker, als der Eingang verträgt; er übersteuert vor jedem Regler.',
  'allowance-clips': 'Ein Zuschlag für leise Aufnahmen übersteuert laute: mehr Wärme in Verstärker und Spulen.',
  'boost-after-gain': 'Eine Anhebung um x dB nach dem Einstellen nimmt dem Verstärker x dB mehr.',
  'tone-outside-band': 'Der Prüfton wird von einem Filter geschwächt, die Verstärkung geriete also zu hoch.',
  'true-rms-meter':
    'Viele Messgeräte stimmen nur bei Sinus um 50 Hz oder darüber: eines nehmen, das beim Prüfton den echten Effektivwert zeigt.',
  'no-protective-high-pass':
    'Keine Eckfrequenz ist bekannt für das Filter, das die Membran unter dem Band am Davonlaufen hindert.',
  'turn-on-overload':
    'Die Schalteingänge ziehen zusammen mehr, als der Schaltausgang liefern darf; ein Relais übernimmt.',
  'output-overloaded':
    'Der Schaltausgang einer Quelle gibt weniger, als an ihm hängt: seine Spannung bricht ein, sodass nichts einschaltet, oder er wird zerstört. Ein Relais, gespeist hinter einer eigenen Sicherung, nimmt ihm die Last ab.',
  'relay-coil-load': 'Schon die Spule eines üblichen Fahrzeugrelais ist zu viel für den Schaltausgang.',
  'signal-sensing': 'Ein Verstärker, der sich am Signal einschaltet, kann spät kommen, anbleiben oder aussetzen.',
  'accessory-turn-on':
    'Einen Verstärker über Zündungsplus einzuschalten verlangt eine eigene Sicherung und einen Stromkreis, der angezapft werden darf.'
} as const satisfies Record<keyof typeof signalCautions, string>
