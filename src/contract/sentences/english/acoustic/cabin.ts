/** What the room `cabin` says. */
export const cabinSentences = {
  'cabin-curve-held':
    'The measured cabin curve runs from {lowestHz} Hz to {highestHz} Hz; beyond its ends its last values are held.',
  'cabin-model':
    'The level at the seat comes from a model of the cabin and is within about ±{uncertaintyDb} dB; a curve measured in the car is better.',
  'cabin-modes':
    'The level at the seat is a model of the cabin: within about ±{uncertaintyDb} dB up to {limitHz} Hz, and up to 10 dB off above, where standing waves begin. Measure the curve in the car and give it.',
  'hearing-exposure':
    'Up to {levelDb} dB {where} ({frequencyHz} Hz). The bass alone, {weightedDb} dB A-weighted at {weightedHz} Hz, uses up the recommended daily dose in {time} {orLess}; the rest of the music comes on top. Sit outside or wear ear protection for tests at full level; children bear less. Ringing or dull ears mean turning it down at once.',
  'hearing-exposure.or-less': 'or less',
  'hearing-extreme':
    'At full level nobody sits in the car: {levelDb} dB {where} are {peakDb} dB(C) at the peak of the wave; {peakLimitDb} dB(C) is the limit at work.',
  'place.half-space': 'in half space at 1 m',
  'place.half-space-and-more': 'in half space at 1 m, and more in the car',
  'place.seat': 'at the seat',
  'time.hours': '{timeHours} h',
  'time.under-a-minute': 'under a minute'
} as const
