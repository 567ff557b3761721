/** German for what the room `coils` says. */
import type { coilsSentences } from '../../english/acoustic/coils.ts'
import { translation } from '../../form/translation.ts'

export const germanCoils = translation<typeof coilsSentences>()({
  'drivers-in-series':
    'Das gewählte Netz legt Lautsprecher in Reihe: gleiche Lautsprecher in gleichen Luftvolumen nehmen.',
  'load-below-minimum':
    '{belowCount} von {loadCount} Lasten liegen unter {minimumOhm} Ω und dürfen nicht an diesen Ausgang.',
  'no-allowed-load.coils':
    'Die höchste Last dieser Spulen ist {highestOhm} Ω, unter den {minimumOhm} Ω, die der Ausgang treiben darf.',
  'no-speaker-cable':
    'Kein Lautsprecherkabel von 16 bis 8 AWG trägt {need}: den Verstärker zum Gehäuse rücken, eine höhere Last verdrahten oder zu jedem Lautsprecher ein eigenes Paar legen.',
  'speaker-cable-too-thin': '{designation} schafft {need} nicht.',
  'speaker-cable.need': '{currentA} A und höchstens {lossPercent} % von {loadOhm} Ω über {lengthM} m',
  'target-off': 'Die nächste brauchbare Last ist {loadOhm} Ω, {off}.',
  'target-off.off': '{offPercent} % neben den gewünschten {targetOhm} Ω',
  'target-off.uneven':
    'Die gleichmäßigste brauchbare Last, {loadOhm} Ω, liegt {off}; die nächste, {nearestOhm} Ω, teilt die Leistung weniger gleichmäßig.',
  'unequal-power': 'Die heißeste Spule nimmt {hottestPercent} % der Leistung statt {equalPercent} %.',
  'unequal-power.listed':
    '{unevenCount} von {loadCount} Lasten teilen die Leistung ungleich, bis zum {worstTimes}-Fachen eines gleichen Anteils in einer Spule; sie stehen da, damit man sie erkennt; nicht so verdrahten.',
  'unlike-coils':
    'Die Spulen haben verschiedene Nennimpedanz: die Anteile folgen den Nennwerten nur, soweit die Lautsprecher sonst gleich sind, und ungleiche Lautsprecher sollten sich keine Kammer teilen.',
  'coils.driver': 'Lautsprecher {driver}',
  'coils.driver-coil': 'Lautsprecher {driver} Spule {letter}',
  'coils.coil': 'Spule {letter}',
  'coils.terminal': '{coil} {side}',
  'coils.drawn-driver': 'Lautspr. {driver}',
  'coils.drawn-joint': 'Verb. {number}',
  'coils.joint': 'Verbindung {number}',
  'coils.amplifier-end': 'Verstärker {side}',
  'coils.own-series': 'Spulen jedes Lautsprechers in Reihe',
  'coils.own-parallel': 'Spulen jedes Lautsprechers parallel',
  'coils.own-series-parallel': 'Spulen jedes Lautsprechers paarweise in Reihe, die Paare parallel',
  'coils.drivers-series': '{driverCount, plural, one {# Lautsprecher} other {# Lautsprecher}} in Reihe',
  'coils.drivers-parallel': '{driverCount, plural, one {# Lautsprecher} other {# Lautsprecher}} parallel',
  'coils.strings':
    '{stringCount, plural, one {# Strang} other {# Stränge}} von {driverCount, plural, one {# Lautsprecher} other {# Lautsprechern}} in Reihe, die Stränge parallel',
  'coils.straight': 'eine Spule unmittelbar am Verstärker',
  'coils.then': '{first}, dann {rest}',
  'coils.in-series': '{first} in Reihe mit {rest}',
  'coils.in-parallel': '{first} parallel zu {rest}',
  'coils.group': '({network})',
  'coils.why.even': 'Kein Netz dieser Spulen ist ausgeglichen; dieses ist das gleichmäßigste erlaubte.',
  'coils.why.lowest': 'Die kleinste ausgeglichene Last, die der Verstärker treiben darf.',
  'coils.why.nearest': 'Die ausgeglichene Last, die {targetOhm} Ω am nächsten liegt.',
  'coils.why.nearest-allowed':
    'Die ausgeglichene Last, die {targetOhm} Ω am nächsten liegt und die der Verstärker treiben darf.',
  'coils.step.off':
    'Den Verstärker ausgeschaltet und seine Lautsprecherklemmen leer lassen, bis die letzte Prüfung bestanden ist.',
  'coils.step.join': '{ends} miteinander verbinden; sonst kommt nichts an diese Verbindung.',
  'coils.step.lead': 'Die Leitung für Verstärker {side} von {ends} abnehmen.',
  'coils.step.measure':
    'Den Gleichstromwiderstand zwischen den beiden Leitungen messen: {expected}. Fast null, offen oder weit daneben heißt, dass eine Verbindung falsch ist.',
  'coils.step.rated':
    'etwas weniger als {loadOhm} Ω ist richtig, weil der Gleichstromwiderstand einer Spule unter ihrer Nennimpedanz liegt',
  'coils.step.known': '{reOhm} Ω und der Widerstand der Messleitungen sind richtig',
  'coils.step.cell':
    'Eine Zelle von 1,5 V kurz an die beiden Leitungen halten, Plus an Plus: Jede Membran muss sich gleich bewegen, bei üblicher Kennzeichnung nach außen.'
})
