/** German for what the room `driver` says. */
import type { driverSentences } from '../../english/acoustic/driver.ts'
import { translation } from '../../form/translation.ts'

export const germanDriver = translation<typeof driverSentences>()({
  'driver-figures-disagree': '{relation} gilt auf diesem Datenblatt nicht: {detail}.',
  'driver-unit-slip': '{detail}. Nichts wurde geändert: das Datenblatt prüfen und die richtige Zahl senden.',
  'driver-value-unusual':
    '{symbol} {valueRatio} {unit} liegt außerhalb des Üblichen, {lowRatio} bis {highRatio} {unit}.',
  'driver-value-unusual.density':
    'Mms durch Sd ist {densityKgPerM2} kg/m²: ungewöhnlich für einen Basslautsprecher; Vas, Sd oder Mms kann falsch sein.',
  'inductance-missing':
    'Keine Induktivität der Spule ist angegeben: Pegel über etwa 80 Hz werden besser aussehen, als sie sind.',
  'rated-impedance-odd':
    'Re {reOhm} Ω ist das {ratio}-Fache der Nennimpedanz {ratedImpedanceOhm} Ω, üblich ist {lowRatio} bis {highRatio}: vielleicht {hint}.',
  'rated-impedance-odd.parallel': 'ein Nennwert in Reihe neben dem Re paralleler oder einer einzigen Spule',
  'rated-impedance-odd.series': 'ein Nennwert je Spule neben dem Re von Spulen in Reihe',
  'rating-assumed':
    'Das Datenblatt nennt keine Belastbarkeit: {powerW} W sind aus der Größe der Membran angenommen, niedrig geschätzt, um die Spule zu schonen. Der Pegel ist danach eingestellt; vor lauterem Betrieb den Hersteller fragen.',
  'travel-assumed':
    'Das Datenblatt nennt kein Xmax: {xmaxMm} mm in eine Richtung sind angenommen, niedrig geschätzt, um die Membran zu schonen. Filter und Pegel sind danach eingestellt; vor lauterem Betrieb den Hersteller fragen.',
  'sensitivity-disagrees':
    'Das Datenblatt nennt {statedDb} dB bei {drive}, seine Parameter ergeben {computedDb} dB im Halbraum in 1 m: 1 W und 2,83 V können verwechselt sein, oder die Zahl ist ein Spitzenwert oder einer im Auto.'
})
