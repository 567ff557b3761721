/** What the room `refusals-acoustic` says. */
export const refusalsAcousticSentences = {
  'refused.a-band-pass-needs-both-half': 'A band-pass needs both half-power edges, the lower below the upper.',
  'refused.a-band-pass-needs-its-upper':
    'A band-pass needs its upper half-power edge at least a fifth above the lower one.',
  'refused.a-cabin-needs-its-volume-its': 'A cabin needs its volume, its length or a measured curve.',
  'refused.a-closed-box-can-only-raise': 'a closed box can only raise Qts {qts}, not lower it to {qtc}',
  'refused.a-custom-enclosure-counts-and-joins':
    'A custom enclosure counts and joins its drivers in enclosure.driverGroups.',
  'refused.a-enclosure-has-a-chamber': 'A {kind} enclosure has a {name} chamber.',
  'refused.a-filter-of-chosen-q-has': 'A filter of chosen Q has order 2, not {order}.',
  'refused.a-frequency-of-losses-says-nothing': 'A frequency of losses says nothing without a loss Q.',
  'refused.a-linkwitz-riley-filter-has-an': 'A Linkwitz-Riley filter has an even order; {order} is odd.',
  'refused.a-measured-curve-takes-the-place': 'A measured curve takes the place of the cabin model; give one of them.',
  'refused.a-resistance-across-the-inductance-needs': 'A resistance across the inductance needs the inductance.',
  'refused.a-resistance-across-the-second-inductance':
    'A resistance across the second inductance needs that inductance.',
  'refused.air-that-is-given-by-its': 'Air that is given by its density and speed of sound has no temperature to vary.',
  'refused.both-faces-of-the-cone-look':
    'Both faces of the cone look at one place: what the one gives, the other takes, and nothing is heard.',
  'refused.box-driver-and-port-lie-too': 'Box, driver and port lie too far apart to be computed.',
  'refused.chamber-loss-frequency': 'A loss Q of a custom chamber needs the frequency it holds at.',
  'refused.damping-needs-two-of-qms-or': 'Damping needs two of: Qms (or Rms), Qes (or Bl), Qts.',
  'refused.density-and-speed-of-sound-go': 'Density and speed of sound go together.',
  'refused.drivers-cannot-be-split-into-strings':
    '{driverCount} drivers {each} cannot be split into strings of {stringCount}.',
  'refused.drivers-cannot-be-split-into-strings.2': '{count} drivers cannot be split into strings of {inSeries}.',
  'refused.full-drive-is-not-told-give':
    'Full drive is not told: give a voltage, a power, or the rated power of the driver.',
  'refused.give-either-temperature-and-pressure-or':
    'Give either temperature and pressure, or density and speed of sound.',
  'refused.give-one-of-the-three-a': 'Give one of the three: a driver with its drive, a swept volume, or a peak flow.',
  'refused.give-the-coil-either-as-inductances': 'Give the coil either as inductances or as the power law K·(jω)^n.',
  'refused.give-the-tuning-from-which-the':
    'Give the tuning, from which the length follows, or the length, from which the tuning follows.',
  'refused.give-the-tuning-or-a-port':
    'Give the tuning, or a port with its size and its length, from which the tuning follows.',
  'refused.give-the-voltage-or-the-power': 'Give the voltage or the power.',
  'refused.give-voltagev-or-powerw-with-loadohm': 'Give voltageV, or powerW with loadOhm, not both.',
  'refused.in-its-place': '{names} would do in its place.',
  'refused.is-missing': '{symbol} is missing. {or}',
  'refused.is-neither-a-chamber-nor-outside': '"{name}" is neither a chamber nor "outside" or "behind".',
  'refused.isobaric-drivers-come-in-pairs-every':
    'Isobaric drivers come in pairs; every driver counts, so the count is even.',
  'refused.list-and': '{first} and {last}',
  'refused.list-or': '{first} or {last}',
  'refused.mmd-needs-sd-from-which-the': 'Mmd needs Sd, from which the air load follows.',
  'refused.mms-and-mmd-are-the-same': 'Mms and Mmd are the same mass with and without air load: give one of them.',
  'refused.names-another-place-already': '"{name}" names another place already.',
  'refused.no-limit-is-known-give-the':
    'No limit is known: give the excursion or power of the driver, or what the amplifier can do.',
  'refused.none-of-them': 'none of them',
  'refused.not-enough-figures-for-this-driver': 'Not enough figures for this driver. {usual}; this one gives {given}.',
  'refused.nothing-that-these-cones-move-leads':
    'Nothing that these cones move leads to `outside`: no sound would be heard. Give a cone, a port, passive radiators or a leak that does.',
  'refused.on-each-side': 'on each side',
  'refused.only-bears-on-the-air-that':
    '`{idle}` only bears on the air that a driver moves: give the driver, or leave it out.',
  'refused.port-loss-frequency': 'A loss Q of a custom port needs the frequency it holds at.',
  'refused.qts-must-lie-below': 'Qts {qts} must lie below {name} {other}.',
  'refused.samples-of-this-enclosure-at-frequencies':
    '{samples} samples of this enclosure at {points} frequencies would take too long; at most {maximum}, or fewer frequencies.',
  'refused.series-parallel-needs-four-coils-the': 'series-parallel needs four coils, the driver has {count}',
  'refused.the-amplifier-is-given-by-its': 'The amplifier is given by its voltage and by its power; give one of them.',
  'refused.the-chamber-of-a-enclosure-needs':
    'The {name} chamber of a {kind} enclosure needs either ports or passive radiators.',
  'refused.the-family-chosen-q-needs-its': 'The family chosen-q needs its q.',
  'refused.the-family-fixes-the-q-of':
    'The family {family} fixes the Q of its sections; leave q out or choose chosen-q.',
  'refused.the-frequencies-of-the-measured-curve':
    'The frequencies of the measured curve must rise; number {fault} does not.',
  'refused.the-leak-corner-must-lie-below': 'The leak corner must lie below the corner of the cabin, {cornerHz} Hz.',
  'refused.the-load-of-the-amplifier-belongs': 'The load of the amplifier belongs to its power; give both or neither.',
  'refused.the-measured-curve-has-frequencies-and':
    'The measured curve has {frequencyHz} frequencies and {gainDb} gains.',
  'refused.the-moving-system-needs-two-of':
    'The moving system needs two of: resonance (fs), compliance (Vas or Cms), moving mass (Mms).',
  'refused.the-network-has-states-the-response':
    'The network has {order} states; the response in time is followed for at most {mostStates}.',
  'refused.the-orders-of-all-filters-add':
    'The orders of all filters add up to {order}; at most {highestTotalOrder} together.',
  'refused.the-parts-of-this-network-differ':
    'The parts of this network differ too far in size for its response in time to be followed.',
  'refused.the-power-law-k-j-n': 'The power law K·(jω)^n needs both K and n.',
  'refused.the-programme-ends-at-hz-not': 'The programme ends at {toHz} Hz, not above its start at {fromHz} Hz.',
  'refused.the-range-ends-at-hz-not': 'The range ends at {toHz} Hz, not above its start at {fromHz} Hz.',
  'refused.the-size-of-the-port-needs':
    'The size of the port needs the air it carries: give a driver with its drive, a swept volume, a peak flow, or the size itself.',
  'refused.these-figures-exclude-each-other-no':
    'These figures exclude each other: no {symbol} above nought fits {relation} with the {otherSymbol} given.',
  'refused.usual-figures': 'A sheet usually gives fs, Qms, Qes (or Qts), Vas, Sd and Re',
  'refused.a-radiator-needs-its-compliance':
    'A passive radiator needs its compliance, its free resonance or its Vas: one of them at least.',
  'refused.the-sheet-of-the-radiator-contradicts':
    'By this figure the compliance of the passive radiator is {other} mm/N, by the one before {first} mm/N: they are not of one thing.',
  'refused.a-front-chamber-needs-the-one-behind':
    'A front chamber needs the closed one behind the drivers: give both volumes.'
} as const
