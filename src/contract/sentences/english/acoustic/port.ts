/** What the room `port` says. */
export const portSentences = {
  'judged.above': 'above',
  'judged.within': 'within',
  'port-air-speed.sizing': '{speedMPerS} m/s peak in the port at full drive, {judged} the {limitMPerS} m/s asked for.',
  'port-does-not-fit': 'No port of the kind asked for keeps all limits; nearest: {name}, {why}. What would: {ways}.',
  'port-large-for-box':
    'The port is large against the box: as a waveguide it tunes to {waveguideTuningHz} Hz instead of {tuningHz} Hz.',
  'port-pipe-resonance':
    'The port also resonates at {resonanceHz} Hz, like an organ pipe: a low-pass of {cornerHz} Hz or below keeps it quiet, a shorter port moves it up.',
  'port-reason.below-radius': '{length} is shorter than its radius: the ends rule and the tuning is a guess',
  'port-reason.flares': '{length} is shorter than its two flares of {flare}',
  'port-reason.flat': '{times} times as wide as high, {height} high',
  'port-reason.long': '{length} long, there is room for {room}',
  'port-reason.no-length': 'so small an area tunes lower than asked even as a bare hole: it needs more area',
  'port-reason.pipe': 'resonates as a pipe at {resonance} Hz, {times} times the low-pass corner',
  'port-reason.share': "holds {share} % of the box's air: tunes {low} % lower than the formula",
  'port-reason.speed': '{speed} m/s peak against a limit of {limit} m/s',
  'port-reason.too-flat':
    '{flat}: beyond {flattest} times or below {lowest} the walls brake the air and each millimetre of height counts (common practice)',
  'port-way.bend': 'one mitred bend: {length} along the centre line, room for {room}',
  'port-way.cheek': 'a cheek that closes the slot to {width} × {height}: the same area, about {length} long',
  'port-way.drive': '{area} in all, which fits, keeps {limit} m/s up to {share} % of the power',
  'port-way.fewer': '{fewer} instead of {count}: {length}{speed}',
  'port-way.flare':
    'with both mouths flared {limit} m/s are hardly heard: {area} in all, {length} and what the flares add',
  'port-way.larger-area': 'from {area} in all the port is as long as its radius and can be cut: {length}',
  'port-way.larger-box': '{volume} net would take this area at this tuning in {room}',
  'port-way.none': 'nothing found',
  'port-way.radiator':
    'passive radiators of {area} and {mass} g in all tune alike if very soft; 1.5 times the mass if twice as compliant as the box',
  'port-way.smaller-area': '{area} in all fits in {room}{judged}',
  'port-way.smaller-area.audible': ', {speed} m/s: audible at full drive, below {highest} m/s',
  'port-way.smaller-area.too-fast': ', {speed} m/s: too fast at this drive',
  'port-way.smaller-box': 'a smaller box of {volume} net tuned to {tuning} Hz takes this area in {room}',
  'port-way.speed': ', {speed} m/s',
  'port-way.tuning': 'this area in {room} tunes to {tuning} Hz',
  'port-speed-unchecked': 'Nothing tells how much air the port carries: its speed was not checked.',
  'slot-end-uncertain':
    'The exact length of a slot beside a wall is uncertain: by two methods the same length tunes to {tuningHz} or {otherTuningHz} Hz. Cut it long, measure, trim.'
} as const
