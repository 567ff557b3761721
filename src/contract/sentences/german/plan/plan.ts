/** German for what the room `plan` says. */
import type { planSentences } from '../../english/plan/plan.ts'
import { translation } from '../../form/translation.ts'

export const germanPlan = translation<typeof planSentences>()({
  'box-restraint':
    'Bei einem Aufprall mit 20 g ziehen die {massKg} kg des Gehäuses mit {crashForceN} N, bei Vollbremsung mit {drivingForwardN} N. Durch Lastplatten mit der Struktur der Karosserie verschrauben; Gurte braucht es mindestens {strapCount}, jeden mit Ösen für {weakestN} N, keinen steiler als {strapSlopeDeg}° zum Boden oder mehr als {strapSpreadDeg}° zur Seite. Nie Kindersitzverankerungen, Gurt- oder Sitzschrauben nehmen. Ein Anhalt, für keinen Unfall nachgewiesen.',
  'closed-box-high-pass':
    'Bei {powerW} W braucht die Membran dieses geschlossenen Gehäuses den Hochpass bei {cornerHz} Hz; ohne ihn erreicht sie Xmax bei {unfilteredPowerW} W. {cost}',
  'closed-box-high-pass.resonance': 'Das Gehäuse schwingt bei {fcHz} Hz.',
  'closed-box-high-pass.takes-bass':
    'Er liegt über der halben Resonanz des Gehäuses, {fcHz} Hz, und nimmt Bass weg, den der Innenraum gegeben hätte: ein kleineres Gehäuse oder weniger Leistung behält ihn.',
  'figure.qtc': '{value}',
  'figure.tuning': '{value} Hz',
  'figure.volume': '{value} l',
  'leaflet-box':
    'Das Gehäuse wird gebaut, wie das Merkblatt sagt, {box}, verstanden als Luft neben Lautsprecher und Kanal. Ohne fs, Q und Vas lässt sich nichts über seinen Pegel sagen, wie tief es spielt, wie weit sich die Membran bewegt oder ob es zum Lautsprecher passt{port}. Vor dem Sägen den Hersteller danach fragen oder messen.',
  'leaflet-box.closed': '{volume}',
  'leaflet-box.port': '; der Kanal ist so groß, wie ihn eine Membran dieser Größe brauchen kann',
  'leaflet-box.vented': '{volume}, abgestimmt auf {tuningHz} Hz',
  'list.and': '{first} und {rest}',
  'list.clauses': '{first}; {rest}',
  'list.commas': '{first}, {rest}',
  'list.or': '{first} oder {rest}',
  'no-design-found':
    'Keine Zusammenstellung hält alle Grenzen ein; die Ablehnungen nennen die Grenze, die jede bricht, und um wie viel.',
  'no-speaker-cable.inside':
    'Kein Draht von 16 bis 8 AWG trägt die {currentA} A jedes Lautsprechers im Gehäuse: er steht nicht in dieser Stückliste. Lautsprecher oder einen Verstärker für eine höhere Last nehmen.',
  'not-as-asked': '{what}: {asked} gewünscht, {built} gebaut.',
  'not-as-asked.closed': 'Art: {asked} gewünscht, gebaut wird ein geschlossenes Gehäuse.',
  'not-as-asked.gain':
    'Verstärkung: {askedW} W gewünscht, {setW} W eingestellt; Verstärker und Lautsprecher vertragen nicht mehr.',
  'not-as-asked.port': 'ein Kanal ({portShape}) war',
  'not-as-asked.tuning': 'eine Abstimmung auf {tuningHz} Hz war',
  'not-as-asked.vented': 'Art: ein geschlossenes Gehäuse mit Qtc {askedQ} war gewünscht, gebaut wird eines mit Kanal.',
  'not-as-asked.wish':
    'Wunsch: von den für `{goal}` gesuchten Gehäusen ließ sich keines in diesem Platz anordnen; gebaut wird stattdessen eine Abstimmung der Lehrbücher.',
  'not-planned.others':
    'Signalleitungen, Lautsprecher und deren Leitungen von {names} sind nicht geplant und nicht in dieser Stückliste.',
  'not-planned.second-battery':
    'Für die Leitung der zweiten Batterie genügt kein Kabel: ihre Leitung, Sicherung und Masse sind nicht geplant und nicht in dieser Stückliste. Sie ist eine Quelle und braucht ihre eigene Sicherung. Die Spannungen gelten ohne sie.',
  'of-branch': '{name}: {message}',
  'port-shape.round': 'rund',
  'port-shape.slot': 'Schlitz',
  'seams-out-of-reach':
    'Die letzten Fugen sind nicht mehr erreichbar, sobald „{name}“ sitzt: vorher einen vollen Strang Dichtstoff legen.',
  sentences: '{all}',
  'solvent-vapour':
    'Sprühkleber und Lack sind extrem entzündbar, und ihr Dampf ist schwerer als Luft: im Freien verwenden, keine Flamme, nicht rauchen, kein eingeschalteter Verstärker in der Nähe; ablüften lassen, bevor Gehäuse oder Auto geschlossen werden.',
  'what.qtc': 'Qtc',
  'what.tuning': 'Abstimmung',
  'what.volume': 'Nettovolumen',
  'wood-dust':
    'Holzstaub kann Asthma und, vor allem von Hartholz, Nasenkrebs auslösen: am Werkzeug absaugen, Maske P3 tragen, möglichst im Freien arbeiten. Empfohlener Grenzwert 1 mg/m³ (NIOSH), Hartholz 2 mg/m³ in der EU; Platten geben auch etwas Formaldehyd ab.',
  'cones-out-of-sight':
    'Hinter der Front sieht niemand die Membranen, die Kammern schlucken das Klopfen, wenn eine anschlägt, und eine verbrennende Spule riecht man spät. Pegel und Filter genau wie geplant einstellen, nach den ersten lauten Minuten am Kanal riechen, und beim ersten veränderten Klang abschalten und die Front abnehmen.'
})
