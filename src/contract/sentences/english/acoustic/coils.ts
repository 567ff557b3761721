/** What the room `coils` says. */
export const coilsSentences = {
  'drivers-in-series': 'The chosen network puts drivers in series: use identical drivers in equal volumes of air.',
  'load-below-minimum':
    '{belowCount} of {loadCount} loads lie below {minimumOhm} Ω and must not be wired to this output.',
  'no-allowed-load.coils':
    'The highest load of these coils is {highestOhm} Ω, below the {minimumOhm} Ω that the output may drive.',
  'no-speaker-cable':
    'No loudspeaker cable from 16 to 8 AWG carries {need}: move the amplifier to the box, wire a higher load, or run a pair to each driver.',
  'speaker-cable-too-thin': '{designation} does not manage {need}.',
  'speaker-cable.need': '{currentA} A and at most {lossPercent} % of {loadOhm} Ω over {lengthM} m',
  'target-off': 'The nearest load that can be used is {loadOhm} Ω, {off}.',
  'target-off.off': '{offPercent} % off the {targetOhm} Ω asked for',
  'target-off.uneven':
    'The most even load that can be used, {loadOhm} Ω, is {off}; the nearest, {nearestOhm} Ω, shares the power less evenly.',
  'unequal-power': 'The hottest coil takes {hottestPercent} % of the power instead of {equalPercent} %.',
  'unequal-power.listed':
    '{unevenCount} of {loadCount} loads share the power unequally, up to {worstTimes} times an equal share in one coil; they are listed so that you recognise them; do not wire them.',
  'unlike-coils':
    'The coils differ in rated impedance: shares follow the ratings only as far as the drivers are otherwise alike, and unlike drivers should not share a chamber.'
} as const
