/** German: what would make a box fit, and what is built then. */
import type { wayOutSentences } from '../../english/plan/way-out.ts'
import { translation } from '../../form/translation.ts'

export const germanWayOut = translation<typeof wayOutSentences>()({
  'way-out.built': '{kind}, {netVolumeL} L{tuned}: {outerVolumeL} L Platzbedarf{level}{air}{price}',
  'way-out.change-and-box': '{change} {builds}.',
  'way-out.closed': 'Geschlossen',
  'way-out.driver-count': '{driverCount, plural, one {Einen Lautsprecher} other {# Lautsprecher}} nehmen.',
  'way-out.front': 'Die Lautsprecher in die Front setzen.',
  'way-out.level': ', {levelDb} dB {heard} von 25 bis 63 Hz',
  'way-out.top': 'Die Lautsprecher in den Deckel setzen, nach oben.',
  'way-out.open': 'Offen lassen, was für ein Gehäuse es sein soll.',
  'way-out.price': ', {price} für das, was von Lautsprechern, Verstärker und Platten einen Preis hat',
  'way-out.room': 'Den Platz vergrößern: {by}.',
  'way-out.room-depth': '{byMm} mm tiefer',
  'way-out.room-height': '{byMm} mm höher',
  'way-out.room-width': '{byMm} mm breiter',
  'way-out.uncovered': 'Den Teppich weglassen: lackieren oder roh lassen.',
  'way-out.vented': 'Bassreflex',
  'way-out.passive-radiator': 'Mit Passivmembranen',
  'way-out.band-pass-4': 'Bandpass'
})
