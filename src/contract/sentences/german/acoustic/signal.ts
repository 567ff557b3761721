/** German for what the room `signal` says. */
import type { signalSentences } from '../../english/acoustic/signal.ts'
import { translation } from '../../form/translation.ts'

export const germanSignal = translation<typeof signalSentences>()({
  'accessory-turn-on':
    'Ein Zündungsplus schaltet den Verstärker mit der Zündung ein, mit oder ohne Musik; hinter einer eigenen Sicherung abgreifen und nie an einem Stromkreis von Airbag, Motor oder Bremse.',
  'airbag-looms':
    'Lautsprecherleitungen werden oft in Türen und Säulen abgegriffen, neben den Kabelbäumen von Airbag und Gurtstraffer: jede Leitung nach dem Plan des Fahrzeugherstellers bestimmen, keinen gelben Stecker berühren und den Rest einer Fachwerkstatt überlassen.',
  'allowance-clips':
    'Ein Zuschlag von {quietRecordingDb} dB für leise Aufnahmen übersteuert laute: mittlere Leistung und Wärme in den Spulen können um bis zu {quietRecordingDb} dB steigen.',
  'boost-after-gain':
    'Die Einstellung lässt {boostDb} dB für eine Anhebung, die später eingeschaltet wird; jede weitere verlangt um ebenso viel weniger Verstärkung.',
  'bridge-tied-source': 'Beide Drähte des Lautsprecherausgangs liegen auf halber Versorgung. {remedy}',
  'bridge-tied-source.converter': 'Der Pegelwandler muss am Eingang galvanisch getrennt oder differenziell sein.',
  'bridge-tied-source.differential':
    'Beide Drähte jedes Ausgangs an einen Differenzeingang anschließen, nie einen davon an Masse.',
  'bridge-tied-source.ground':
    'Dieser Eingang legt sein Minus an Masse und würde die Quelle kurzschließen: einen galvanisch getrennten Pegelwandler nehmen.',
  'connector-pins':
    'Die meisten, nicht alle Stecker von Radios folgen ISO 10487 (B1 bis B8 Lautsprecher, A5 Schaltausgang; manche vertauschen A4 und A7): vor dem Anschließen messen.',
  'differential-output':
    'Ein Differenzausgang an einem massebezogenen Eingang: sein Minus offen lassen oder einen Trennübertrager nehmen, wie der Hersteller sagt; nie an Masse legen.',
  'factory-processing':
    'Die Quelle des Fahrzeugs kann entzerren, verzögern und bei steigender Lautstärke Bass wegnehmen: ihren Frequenzgang bei der benutzten Lautstärke messen, bevor Filtern und Verstärkung getraut wird.',
  'ground-loop':
    'Ist das Pfeifen der Lichtmaschine zu hören: zuerst ein gemeinsamer Massepunkt für Quelle und Verstärker, dann ein Differenzeingang, dann ein Trennübertrager. Nie eine Schutz- oder Fahrzeugmasse abnehmen.',
  'input-too-high':
    '{levelV} V erreichen einen Eingang für höchstens {highestV} V: er kann vor dem Verstärkungsregler übersteuern; um {excessDb} dB abschwächen.',
  'input-too-high.speaker-level':
    '{sourceV} V sind mehr als die {speakerLevelV} V des Lautsprecherpegel-Eingangs: ein Pegelwandler gehört dazwischen.',
  'input-too-low':
    '{levelV} V erreichen den Eingang, {lowestV} V werden gebraucht: volle Verstärkung gibt {sharePercent} % der Leistung, mit mehr Rauschen.',
  'no-protective-high-pass':
    'Nichts sagt, unter welcher Frequenz die Membran Schutz braucht: die Abstimmung oder die Hubgrenze angeben. Ein Gehäuse mit Kanal ohne Hochpass lässt die Membran unter seiner Abstimmung davonlaufen.',
  'output-overloaded':
    '{id} gibt höchstens {limitMa} mA, und {currentMa} mA hängen daran: ein Relais dazwischen setzen, gespeist hinter einer eigenen Sicherung.',
  'relay-coil-load':
    'Die Relaisspule zieht {coilCurrentMa} mA, mehr als die {limitMa} mA des Schaltausgangs: ein Relais mit höherem Spulenwiderstand oder einen Transistorschalter nehmen.',
  'signal-sensing':
    'Die Signalerkennung kann die ersten Takte abschneiden, nicht abschalten oder aussetzen, wenn Start-Stopp die Quelle stumm schaltet: nach einer Nacht den Ruhestrom messen.',
  'tone-outside-band':
    'Ein Ton von {toneHz} Hz liegt außerhalb des Bandes der Filter: sie zum Einstellen ausschalten, sonst gerät die Verstärkung zu hoch.',
  'turn-on-overload':
    '{loadMa} mA sind mehr als die {limitMa} mA des Schaltausgangs: er steuert stattdessen ein Relais.',
  'turn-on.accessory':
    'Die Quelle hat keinen Schaltausgang und der Verstärker keine Signalerkennung: ein Zündungsplus schaltet ein Relais.',
  'turn-on.drawn': '{loadMa} mA von {limitMa} mA werden gezogen.',
  'turn-on.other-voltage':
    'Der Schaltausgang führt {vehicleV} V, der Schalteingang nimmt {amplifierV} V: er steuert ein Relais, das der Wandler speist.',
  'turn-on.sensing': 'Die Quelle hat keinen Schaltausgang; der Verstärker erkennt das Signal.'
})
