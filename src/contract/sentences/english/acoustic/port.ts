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
  'port-speed-unchecked': 'Nothing tells how much air the port carries: its speed was not checked.',
  'slot-end-uncertain':
    'The exact length of a slot beside a wall is uncertain: by two methods the same length tunes to {tuningHz} or {otherTuningHz} Hz. Cut it long, measure, trim.'
} as const
