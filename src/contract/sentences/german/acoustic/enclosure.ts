/** German for what the room `enclosure` says. */
import type { enclosureSentences } from '../../english/acoustic/enclosure.ts'
import { translation } from '../../form/translation.ts'

export const germanEnclosure = translation<typeof enclosureSentences>()({
  'air-spring-stiffens':
    'Die Luft in {name, select, rear {der hinteren Kammer} front {der vorderen Kammer} other {der Kammer „{name}“}} wird bei {frequencyHz} Hz um {sharePercent} % ihres Volumens gestaucht: etwa {harmonicPercent} % zweite Harmonische allein von der Luft, {pressureKpa} kPa effektiv auf die Wände.',
  'amplifier-out-of-reach': '{drive}; der Verstärker gibt {amplifierV} V.',
  'amplifier-out-of-reach.current':
    'Die Lautsprecher nehmen {currentA} A bei {frequencyHz} Hz; der Verstärker gibt {amplifierA} A.',
  'amplifier-out-of-reach.filtered':
    'Mit den Filtern davor verlangt die Aussteuerung {voltageV} V bei {frequencyHz} Hz',
  'amplifier-out-of-reach.plain': 'Die Aussteuerung ist {voltageV} V',
  'chamber-taken-as-tight':
    'Kein Leck wurde angegeben, also gilt {name, select, rear {die hintere Kammer} front {die vordere Kammer} other {die Kammer „{name}“}} als dicht: bei ihrer Abstimmung von {lossHz} Hz ist das {louderDb} dB lauter als mit einem Leck von Q {leakQ}, wie man es an offenen Gehäusen meist misst.',
  'chamber-too-small':
    '{name, select, rear {Die hintere Kammer} front {Die vordere Kammer} other {Die Kammer „{name}“}} fasst {volumeL} L; {measure} {leastL} L. Die Lautsprecher passen kaum hinein, und ihre Luftfeder ist weit von linear.',
  'chamber-too-small.cones': 'die Membranen selbst nehmen etwa',
  'chamber-too-small.sweep': 'das {sweptTimes}-Fache dessen, was die Membranen bis Xmax verdrängen, sind',
  'coil-too-hot': 'Die Spule käme auf {coilC} °C; {maximumCoilC} °C verträgt sie.',
  'cone-unloaded-below-tuning':
    'Unter der Abstimmung hält bei Kanal und Passivmembran nichts die Membran: dort einen Hochpass vorsehen.',
  'dimensions-held': 'Die Teile eines eigenen Gehäuses behalten ihr Nennmaß; nur Lautsprecher und Luft streuen.',
  'drive-above-thermal-rating':
    'Bei {frequencyHz} Hz nähmen die Spulen {heatW} W Wärme auf; sie sind für {ratedW} W ausgelegt.',
  'drive-above-thermal-rating.voltage':
    'Bei {frequencyHz} Hz liegen {voltageV} V an den Lautsprechern; ihre Belastbarkeit, als Spannung gelesen, ist {ratedV} V.',
  'excursion-above-xmax':
    'Die Membran würde bei {frequencyHz} Hz {excursionMm} mm in eine Richtung auslenken; ihr Xmax ist {xmaxMm} mm.',
  'excursion-by-chance': 'Nur {withinPercent} % solcher Anlagen bleiben bei dieser Aussteuerung innerhalb Xmax.',
  'level-lost-at-drive':
    'Bei {frequencyHz} Hz kosten warme Spulen und schnelle Luft in den Kanälen etwa {lossDb} dB Pegel (eine Schätzung).',
  'lining-in-opened-box':
    'Ein gefülltes Gehäuse mit Öffnung verliert das meiste von dem, was die Öffnung bringt: nur die Wände auskleiden.',
  'no-box-suits': 'Keines der gewünschten Gehäuse passt zu diesem Lautsprecher und Platz; jedes sagt, warum.',
  'passive-radiator-excursion':
    'Eine Passivmembran würde bei {frequencyHz} Hz {excursionMm} mm in eine Richtung auslenken; sie kann {travelMm} mm.',
  'passive-radiator-travel-unknown':
    'Eine Passivmembran würde bei {frequencyHz} Hz {excursionMm} mm in eine Richtung auslenken; mit ihrem Datenblatt vergleichen und ihren Hub angeben.',
  'port-air-speed': 'Die Luft im Kanal erreicht {airSpeedMPerS} m/s bei {frequencyHz} Hz.',
  'port-air-speed.named':
    'Die Luft {name, select, rear {im hinteren Kanal} front {im vorderen Kanal} other {im Kanal „{name}“}} erreicht {airSpeedMPerS} m/s bei {frequencyHz} Hz.',
  'port-jets-left-out':
    'Die Verluste der Strahlen in {portCount} Kanälen bei {frequencyCount} Frequenzen blieben außer Acht; nach weniger Frequenzen fragen.',
  'unprotected-below-tuning': '{travel} Unter {tuningHz} Hz hält sie nichts: ein Hochpass muss es.'
})
