/** German: steps of the first start on the signal side. */
import type { listenSentences } from '../../english/work/listen.ts'
import { translation } from '../../form/translation.ts'

export const germanListen = translation<typeof listenSentences>()({
  'listen.a-little-less-than-between-the': 'Etwas weniger als {load} Ω zwischen den Leitungen; offen zur Karosserie.',
  'listen.a-sine-at-the-end-of': 'Ein Sinus am Ende der Signalleitung, oder nach Gehör keine Härte.',
  'listen.all-controls-seen-and-noted': 'Alle Regler gesehen und notiert.',
  'listen.and-the-protective-high-pass-to': ' und den Schutzhochpass auf {corner}, {value} dB je Oktave',
  'listen.bass-joins-the-front-speakers-without':
    'Der Bass schließt an die vorderen Lautsprecher an, ohne aufzufallen; kein Klappern, kein Kanalgeräusch.',
  'listen.clean-bass-at-low-level-no': 'Sauberer Bass bei kleinem Pegel; keine Membran bewegt sich ohne Signal.',
  'listen.clip-on-with-the-amplifier-off': ' Bei ausgeschaltetem Verstärker anklemmen; Hände weg, solange er spielt.',
  'listen.each-reads-half': 'Jeder zeigt die Hälfte, {meterVoltage}.',
  'listen.every-cone-moves-the-same-way': 'Jede Membran geht in dieselbe Richtung.',
  'listen.everything-off-loudspeaker-leads-onto-the':
    'Alles aus, Lautsprecherleitungen an den Verstärker, Plus an Plus. Wieder an bei kleinster Lautstärke, niemand im Auto.',
  'listen.it-comes-on-with-music-and': 'Er geht mit Musik an und nach der Verzögerung seiner Anleitung wieder aus.',
  'listen.its-turn-on-terminal-has-more':
    'An seinem Einschaltanschluss liegen bei eingeschalteter Quelle mehr als {switchedOn_} und bei ausgeschalteter weniger als 1 V, auch bei Zündung aus.',
  'listen.keep-the-polarity-that-is-louder':
    'Die Polung behalten, die am Platz lauter ist; alle Basslautsprecher bleiben gleich gepolt.',
  'listen.look-at-the-output-with-an':
    'Den Ausgang mit einem Oszilloskop ansehen: zwei Tastköpfe, Kanal A minus Kanal B, keine Masseklemme an einem Lautsprecheranschluss. Ohne Oszilloskop auf die erste Härte horchen, über einen kleinen Lautsprecher hinter einem Widerstand von {ohm} Ω für {ratedW} W oder mehr, denn {toPrecision} W gehen hinein.{live}',
  'listen.loudspeaker-leads-off-the-amplifier-measure':
    'Lautsprecherleitungen vom Verstärker ab: den Gleichstromwiderstand zwischen beiden und von jeder zur Karosserie messen.',
  'listen.loudspeaker-leads-still-off-switch-the':
    'Lautsprecherleitungen noch ab: die Quelle bei Verstärkung am Minimum ein- und ausschalten.',
  'listen.loudspeaker-terminals': 'die Lautsprecheranschlüsse',
  'listen.lower-the-level-of-the-bass':
    'Den Pegel des Basses an Quelle oder Prozessor senken, nie durch mehr Verstärkung heben, bis Musik ganz klingt.',
  'listen.measure-from-each-terminal-of-the':
    'Von jedem Anschluss des Brückenpaars zur Masse messen, nur das Messgerät.',
  'listen.no-driver-is-connected-the-meter':
    'Kein Lautsprecher ist angeschlossen; ohne Signal zeigt das Messgerät fast 0 V. Ein Verstärker ohne geregelte Versorgung zeigt ohne Last einige Prozent zu viel.',
  'listen.no-thump-no-smell-no-warm': '{off} Kein Knall, kein Geruch, kein warmes Kabel.',
  'listen.nobody-inside-doors-shut-or-everybody':
    'Niemand im Auto, Türen zu, oder alle mit Gehörschutz: eine Viertelstunde Musik mit dem lautesten gewünschten Pegel. Aus beim ersten Lackgeruch. Dann ausschalten, am Gehäuse riechen, den Handrücken an Verstärker, Kabel und Sicherungshalter erst annähern, dann anlegen.',
  'listen.nothing-is-too-hot-to-keep':
    'Nichts ist zu heiß, um die Hand daran zu lassen, und nichts riecht nach heißem Lack.',
  'listen.play-a-sine-of-at-db':
    'Einen Sinus von {tone} mit {toneLevelDb} dBFS spielen und die Verstärkung langsam vom Minimum erhöhen.',
  'listen.play-a-tone-at-from-all':
    'Einen Ton von {corner} mit mäßigem Pegel aus allen Lautsprechern spielen und am Platz hinter dem Lenkrad mit beiden Polungen des Basses hören oder messen.',
  'listen.play-the-test-tone-and-set':
    'Den Prüfton spielen und die Quelle auf die höchste Stufe ohne Verzerrung stellen; etwa drei Viertel ihres Bereichs, wo nichts Besseres bekannt ist. Die Stufe notieren.',
  'listen.set-the-low-pass-to-db': 'Den Tiefpass auf {corner}, {value} dB je Oktave einstellen{protection}.',
  'listen.source-off-every-gain-at-its':
    'Quelle aus, jede Verstärkung am Minimum, Bassanhebung und Equalizer neutral, Filter aus. Während dieser Prüfungen kein Kind und kein Tier im Auto oder dahinter.',
  'listen.the-loudspeaker-leads-stay-off-the':
    'Die Lautsprecherleitungen bleiben vom Verstärker ab, isoliert. Motor an oder ein Ladegerät, das {held_} hält. Ein Echteffektiv-Messgerät, das bei {tone} richtig anzeigt, kommt an {more}.',
  'listen.the-meter-reads-leave-the-gain': 'Das Messgerät zeigt {meterVoltage}; die Verstärkung dort lassen.',
  'listen.the-sine-has-no-flat-tops':
    'Der Sinus hat am Ziel keine flachen Kuppen; hat er welche, die Verstärkung senken, bis sie weg sind, und so lassen.',
  'listen.touch-a-1-5-v-cell':
    'Eine Zelle von 1,5 V einen Augenblick an die Lautsprecherleitungen halten, Plus an Plus.',
  'listen.two-terminals-of-the-bridged-pair': 'die beiden Anschlüsse des Brückenpaars',
  'listen.voices-do-not-come-from-the':
    'Stimmen kommen nicht aus dem Gehäuse; ein Ton eine Oktave unter dem Hochpass bewegt die Membran kaum.'
})
