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
    'The coils differ in rated impedance: shares follow the ratings only as far as the drivers are otherwise alike, and unlike drivers should not share a chamber.',
  'coils.driver': 'driver {driver}',
  'coils.driver-coil': 'driver {driver} coil {letter}',
  'coils.coil': 'coil {letter}',
  'coils.terminal': '{coil} {side}',
  'coils.drawn-driver': 'driver {driver}',
  'coils.drawn-joint': 'joint {number}',
  'coils.joint': 'joint {number}',
  'coils.amplifier-end': 'amplifier {side}',
  'coils.own-series': 'coils of each driver in series',
  'coils.own-parallel': 'coils of each driver in parallel',
  'coils.own-series-parallel': 'coils of each driver in pairs in series, the pairs in parallel',
  'coils.drivers-series': '{driverCount, plural, one {# driver} other {# drivers}} in series',
  'coils.drivers-parallel': '{driverCount, plural, one {# driver} other {# drivers}} in parallel',
  'coils.strings':
    '{stringCount, plural, one {# string} other {# strings}} of {driverCount, plural, one {# driver} other {# drivers}} in series, the strings in parallel',
  'coils.straight': 'one coil straight to the amplifier',
  'coils.then': '{first}, then {rest}',
  'coils.in-series': '{first} in series with {rest}',
  'coils.in-parallel': '{first} parallel to {rest}',
  'coils.group': '({network})',
  'coils.why.even': 'No network of these coils balances; this is the most even one that is allowed.',
  'coils.why.lowest': 'The lowest balanced load that the amplifier may drive.',
  'coils.why.nearest': 'The balanced load nearest to {targetOhm} Ω.',
  'coils.why.nearest-allowed': 'The balanced load nearest to {targetOhm} Ω that the amplifier may drive.',
  'coils.step.off': 'Leave the amplifier off and its loudspeaker terminals empty until the last check is passed.',
  'coils.step.join': 'Join {ends} together; nothing else goes to this joint.',
  'coils.step.lead': 'Take the lead for amplifier {side} from {ends}.',
  'coils.step.measure':
    'Measure the direct-current resistance between the two leads: {expected}. Near zero, open, or far off means a wrong link.',
  'coils.step.rated':
    "a little less than {loadOhm} Ω is right, because a coil's direct-current resistance lies below its rated impedance",
  'coils.step.known': '{reOhm} Ω and the resistance of the meter leads are right',
  'coils.step.cell':
    'Touch a 1.5 V cell to the two leads for a moment, positive to positive: every cone must move the same way, outwards by the usual marking.'
} as const
