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
    'Die Spulen haben verschiedene Nennimpedanz: die Anteile folgen den Nennwerten nur, soweit die Lautsprecher sonst gleich sind, und ungleiche Lautsprecher sollten sich keine Kammer teilen.'
})
