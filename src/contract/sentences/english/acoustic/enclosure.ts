/** What the room `enclosure` says. */
export const enclosureSentences = {
  'air-spring-stiffens':
    'The air in the {name} chamber is squeezed by {sharePercent} % of its volume at {frequencyHz} Hz: about {harmonicPercent} % of second harmonic from the air alone, {pressureKpa} kPa RMS on the walls.',
  'amplifier-out-of-reach': '{drive}; the amplifier gives {amplifierV} V.',
  'amplifier-out-of-reach.current':
    'The drivers take {currentA} A at {frequencyHz} Hz; the amplifier gives {amplifierA} A.',
  'amplifier-out-of-reach.filtered': 'With the filters before it the drive asks for {voltageV} V at {frequencyHz} Hz',
  'amplifier-out-of-reach.plain': 'The drive is {voltageV} V',
  'chamber-taken-as-tight':
    'No leak was stated, so the {name} chamber counts as tight: at its tuning of {lossHz} Hz that is {louderDb} dB louder than with a leak of Q {leakQ}, which opened boxes usually measure.',
  'chamber-too-small':
    'The {name} chamber holds {volumeL} L; {measure} {leastL} L. The drivers hardly fit in it, and its spring is far from linear.',
  'chamber-too-small.cones': 'the cones themselves take about',
  'chamber-too-small.sweep': '{sweptTimes} times what the cones sweep to Xmax is',
  'coil-too-hot': 'The coil would settle at {coilC} °C; {maximumCoilC} °C is what it stands.',
  'cone-unloaded-below-tuning':
    'Below the tuning of a vented or passive-radiator box nothing holds the cone: plan a high-pass there.',
  'dimensions-held': 'The parts of a custom enclosure are held at their nominal size; only drivers and air vary.',
  'drive-above-thermal-rating':
    'At {frequencyHz} Hz the coils would take {heatW} W of heat; they are rated for {ratedW} W.',
  'drive-above-thermal-rating.voltage':
    'At {frequencyHz} Hz the drivers see {voltageV} V; their rating, read as a voltage, is {ratedV} V.',
  'excursion-above-xmax':
    'The cone would travel {excursionMm} mm one way at {frequencyHz} Hz; its Xmax is {xmaxMm} mm.',
  'excursion-by-chance': 'Only {withinPercent} % of such systems keep to Xmax at this drive.',
  'level-lost-at-drive':
    'At {frequencyHz} Hz warm coils and fast air in the ports take about {lossDb} dB from the level (an estimate).',
  'lining-in-opened-box': 'A filled box with an opening loses most of what the opening adds: line the walls only.',
  'no-box-suits': 'None of the boxes asked for suits this driver and space; each says why.',
  'passive-radiator-excursion':
    'A passive radiator would travel {excursionMm} mm one way at {frequencyHz} Hz; it can travel {travelMm} mm.',
  'passive-radiator-travel-unknown':
    'A passive radiator would travel {excursionMm} mm one way at {frequencyHz} Hz; compare that with its data sheet and give its travel.',
  'port-air-speed': 'Air in the port reaches {airSpeedMPerS} m/s at {frequencyHz} Hz.',
  'port-air-speed.named': 'Air in the {name} port reaches {airSpeedMPerS} m/s at {frequencyHz} Hz.',
  'port-jets-left-out':
    'The losses of the jets in {portCount} ports at {frequencyCount} frequencies were left out; ask for fewer frequencies.',
  'unprotected-below-tuning': '{travel} Below {tuningHz} Hz nothing holds it: a high-pass filter must.'
} as const
