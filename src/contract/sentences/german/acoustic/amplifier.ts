/** German for what the room `amplifier` says. */
import type { amplifierSentences } from '../../english/acoustic/amplifier.ts'
import { translation } from '../../form/translation.ts'

export const germanAmplifier = translation<typeof amplifierSentences>()({
  'all-coils-driven':
    '{coils} jedes Lautsprechers mit gleicher Polung anschließen: eine offene Spule halbiert die Kraft, eine verpolte hebt sie auf.',
  'amplifier-heat':
    'Etwa {averageW} W Wärme bei Musik und {fullSineW} W bei einem Ton mit Vollpegel: freie Luft um jeden Verstärker, kein Teppich darüber.',
  'amplifiers.more': '{amplifierCount} Verstärkern',
  'amplifiers.one': 'einem Verstärker',
  bridged: 'gebrückt',
  'bridged-minimum-low':
    '{minimumBridgedOhm} Ω gebrückt belasten jeden Kanal mit {channelOhm} Ω, weniger als die {minimumOhm} Ω eines Kanals: {leastOhm} Ω gebrückt gelten als kleinste Last. Erlaubt das Datenblatt {channelOhm} Ω je Kanal, das als minimumOhm angeben.',
  'bridged-power-derived':
    '{outputPowerW} W sind das Doppelte der veröffentlichten Leistung eines Kanals an {channelOhm} Ω; das gilt, wenn mit allen Kanälen gemessen wurde.',
  'bridged-terminals':
    'Beide Klemmen eines gebrückten Paares führen Spannung: keine darf Masse, die Karosserie oder eine Klemme eines anderen Ausgangs berühren.',
  'coil-advice':
    'Mit {coils} wäre die Last {loadOhm} Ω {bridged} {each}, und dort sind {outputPowerW} W veröffentlicht.',
  'coil-advice.dual': 'zwei Spulen von {coilOhm} Ω je Lautsprecher',
  'coil-advice.each': 'an jedem von {outputCount} Ausgängen',
  'coil-advice.many': '{coilCount} Spulen von {coilOhm} Ω je Lautsprecher',
  'coil-advice.quadruple': 'vier Spulen von {coilOhm} Ω je Lautsprecher',
  'coil-advice.single': 'einer Spule von {coilOhm} Ω je Lautsprecher',
  'coil-advice.triple': 'drei Spulen von {coilOhm} Ω je Lautsprecher',
  'coils.all': 'Alle {coilCount} Spulen',
  'coils.both': 'Beide Spulen',
  'equal-gains':
    '{outputCount} Ausgänge teilen sich die Lautsprecher: jede Verstärkung auf dieselbe Spannung, jedes Filter gleich einstellen und prüfen, dass sich alle Membranen gleich bewegen.',
  'impedance-dip':
    'Eine Last mit Nennwert {loadOhm} Ω kann auf {dipOhm} Ω sinken, unter die {minimumOhm} Ω des Ausgangs; für eine Nennlast ausgelegte Verstärker sind dafür gemacht, einer ohne Wärmeschutz nicht.',
  'load.bridged': '{loadOhm} Ω gebrückt',
  'load.plain': '{loadOhm} Ω',
  'match-advice.below':
    '{loadOhm} Ω liegen unter den {lowestOhm} Ω, die dieser Ausgang treiben darf: nicht anschließen.',
  'match-advice.bound': 'Mindestens {outputPowerW} W, nach der Spannung von {ratedPowerW} W an {ratedOhm} Ω.',
  'match-advice.equal':
    'Der Verstärker gibt, was die Lautsprecher vertragen: die Verstärkung darauf einstellen, ohne Zuschlag.',
  'match-advice.less':
    '{ratioPercent} % der Belastbarkeit der Lautsprecher: die Verstärkung ohne Zuschlag einstellen, damit laute Stellen nicht übersteuern.',
  'match-advice.more':
    '{ratioPercent} % der Belastbarkeit der Lautsprecher: die Verstärkung auf die Leistung der Lautsprecher einstellen, nicht auf die des Verstärkers.',
  'match-advice.over':
    'Das {ratioTimes}-Fache der Belastbarkeit der Lautsprecher: nur brauchbar, wenn die Verstärkung auf die Leistung der Lautsprecher gestellt ist und ein Hochpass schützt; ein Ausrutscher der Verstärkung überhitzt die Spulen.',
  'match-advice.quiet':
    '{ratioPercent} % der Belastbarkeit der Lautsprecher: leise für diese Lautsprecher, doch selbst ein voll übersteuerter Ausgang bleibt innerhalb ihrer Belastbarkeit. Übersteuern klingt trotzdem schlecht: die Verstärkung ohne Zuschlag einstellen.',
  'match-advice.under':
    '{ratioPercent} % der Belastbarkeit der Lautsprecher: bis zum Übersteuern aufgedreht nähert sich der Ausgang einem Rechteck mit doppelter Leistung und kann die Spulen überhitzen. Die Verstärkung ohne Zuschlag einstellen.',
  'match-advice.unknown':
    'Für {loadOhm} Ω {bridged} oder eine erlaubte kleinere Last ist keine Dauerleistung veröffentlicht (veröffentlicht: {ratings}). Auf eine kleinere Last wird nicht umgerechnet: den Hersteller fragen.',
  'no-allowed-load':
    'Die höchste Last dieser Lautsprecher an {amplifiers} ist {highestOhm} Ω; die Ausgänge brauchen {lowestOhm} Ω oder mehr. {otherCoils}',
  'output-touch-voltage':
    'Die Lautsprecherklemmen erreichen {targetVoltageV} V effektiv, über den {touchLimitV} V, unter denen UN R100 keinen Schutz verlangt: jede Verbindung isolieren, Prüfspitzen bei ausgeschaltetem Verstärker anklemmen, im Betrieb Hände weg.',
  'power-bounded':
    'Für {loadOhm} Ω ist keine Leistung veröffentlicht. Die Spannung von {ratedPowerW} W an {ratedOhm} Ω wird auch dort erreicht, er gibt also mindestens {boundW} W; die Versorgung ist für {ratedPowerW} W ausgelegt, denn keine höhere Last zieht mehr. {otherCoils}',
  'power-unknown':
    'Für keine Last, die diese Lautsprecher bilden können ({loads}), ist eine Dauerleistung veröffentlicht. Auf eine kleinere Last wird nicht umgerechnet, also passt nichts zusammen: den Hersteller fragen. {otherCoils}',
  'rating-below-minimum':
    'Für {loadOhm} Ω {bridged} ist eine Leistung veröffentlicht, unter der kleinsten Last von {lowestOhm} Ω; die kleinste Last gilt.',
  'rating-implausible':
    '{claimedW} W werden behauptet, doch Gerätesicherungen von {fuses} A lassen bei {ratedVoltageV} V {loss} nur {plausibleW} W durch: mit mehr wird nicht gerechnet.',
  'rating-implausible.efficiency': 'mit Wirkungsgrad {efficiencyRatio}',
  'rating-implausible.no-loss': 'selbst ohne jeden Verlust',
  'ratings-contradict':
    '{powerW} W an {loadOhm} Ω sind mehr, als {otherPowerW} W an {otherLoadOhm} Ω zulassen: höchstens {mostW} W bei gleicher Spannung. Eine davon ist keine Dauerleistung; nachlesen, welche der beiden als Effektivleistung (RMS) gemessen wurde.'
})
