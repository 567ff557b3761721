/** What would make a box fit, and what is built then. */
export const wayOutSentences = {
  'way-out.built': '{kind}, {netVolumeL} L{tuned}: {outerVolumeL} L of room{level}{air}{price}',
  'way-out.change-and-box': '{change} {builds}.',
  'way-out.closed': 'Closed',
  'way-out.driver-count': 'Take {driverCount, plural, one {one driver} other {# drivers}}.',
  'way-out.front': 'Set the drivers into the front.',
  'way-out.level': ', {levelDb} dB {heard} from 25 to 63 Hz',
  'way-out.top': 'Set the drivers into the top, facing up.',
  'way-out.open': 'Leave open what the box shall be.',
  'way-out.price': ', {price} for what has a price of drivers, amplifier and boards',
  'way-out.room': 'Make the room {by}.',
  'way-out.room-depth': '{byMm} mm deeper',
  'way-out.room-height': '{byMm} mm higher',
  'way-out.room-width': '{byMm} mm wider',
  'way-out.uncovered': 'Leave its carpet off: paint it or leave it bare.',
  'way-out.vented': 'Vented',
  'way-out.passive-radiator': 'With passive radiators',
  'way-out.band-pass-4': 'Band-pass'
} as const
