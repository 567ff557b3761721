/** Steps of the first start on the signal side. */
export const listenSentences = {
  'listen.a-little-less-than-between-the': 'A little less than {load} Ω between the leads; open to the body.',
  'listen.a-sine-at-the-end-of': 'A sine at the end of the signal lead, or no harshness by ear.',
  'listen.all-controls-seen-and-noted': 'All controls seen and noted.',
  'listen.and-the-protective-high-pass-to': ' and the protective high-pass to {corner}, {value} dB an octave',
  'listen.bass-joins-the-front-speakers-without':
    'Bass joins the front speakers without drawing attention; no rattle, no port noise.',
  'listen.clean-bass-at-low-level-no': 'Clean bass at low level; no cone moves without signal.',
  'listen.clip-on-with-the-amplifier-off': ' Clip on with the amplifier off; hands off while it plays.',
  'listen.each-reads-half': 'Each reads half, {meterVoltage}.',
  'listen.every-cone-moves-the-same-way': 'Every cone moves the same way.',
  'listen.everything-off-loudspeaker-leads-onto-the':
    'Everything off, loudspeaker leads onto the amplifier, positive to positive. On again at the lowest volume, nobody inside.',
  'listen.it-comes-on-with-music-and': 'It comes on with music and goes off within the delay its handbook states.',
  'listen.its-turn-on-terminal-has-more':
    'Its turn-on terminal has more than {switchedOn_} with the source on and less than 1 V with it off, also with the ignition off.',
  'listen.keep-the-polarity-that-is-louder':
    'Keep the polarity that is louder at the seat; all bass drivers stay alike.',
  'listen.look-at-the-output-with-an':
    'Look at the output with an oscilloscope: two probes, channel A minus channel B, no ground clip on a loudspeaker terminal. Without one listen for the first harshness through a small loudspeaker behind a resistor of {ohm} Ω rated {ratedW} W or more, for {toPrecision} W go into it.{live}',
  'listen.loudspeaker-leads-off-the-amplifier-measure':
    'Loudspeaker leads off the amplifier: measure the direct-current resistance between the two, and from each to the body of the car.',
  'listen.loudspeaker-leads-still-off-switch-the':
    'Loudspeaker leads still off: switch the source on and off with the gain at its minimum.',
  'listen.loudspeaker-terminals': 'loudspeaker terminals',
  'listen.lower-the-level-of-the-bass':
    'Lower the level of the bass at the source or processor, never by raising the gain, until music sounds whole.',
  'listen.measure-from-each-terminal-of-the': 'Measure from each terminal of the bridged pair to ground, meter only.',
  'listen.no-driver-is-connected-the-meter':
    'No driver is connected; the meter reads near 0 V without signal. An amplifier without a regulated supply reads a few percent high without its load.',
  'listen.no-thump-no-smell-no-warm': '{off} No thump, no smell, no warm cable.',
  'listen.nobody-inside-doors-shut-or-everybody':
    'Nobody inside, doors shut, or everybody with ear protection: play music at the loudest level wanted for a quarter of an hour. Off at the first smell of lacquer. Then switch off, smell at the box, bring the back of the hand near amplifier, cables and fuse holders before it touches them.',
  'listen.nothing-is-too-hot-to-keep': 'Nothing is too hot to keep a hand on, and nothing smells of hot lacquer.',
  'listen.play-a-sine-of-at-db':
    'Play a sine of {tone} at {toneLevelDb} dB full scale and raise the gain slowly from its minimum.',
  'listen.play-a-tone-at-from-all':
    'Play a tone at {corner} from all loudspeakers at a moderate level and listen, or measure, at the seat behind the wheel with both polarities of the bass.',
  'listen.play-the-test-tone-and-set':
    'Play the test tone and set the source to its highest step without distortion; about three quarters of its range where nothing better is known. Note the step.',
  'listen.set-the-low-pass-to-db': 'Set the low-pass to {corner}, {value} dB an octave{protection}.',
  'listen.source-off-every-gain-at-its':
    'Source off, every gain at its minimum, bass boost and equaliser flat, filters off. No child and no animal in or behind the car during these tests.',
  'listen.the-loudspeaker-leads-stay-off-the':
    'The loudspeaker leads stay off the amplifier, insulated. Engine running, or a charger holding {held_}. A true-RMS meter that is right at {tone} goes on the {more}.',
  'listen.the-meter-reads-leave-the-gain': 'The meter reads {meterVoltage}; leave the gain there.',
  'listen.the-sine-has-no-flat-tops':
    'The sine has no flat tops at the target; if it has, lower the gain until they are gone and keep that.',
  'listen.touch-a-1-5-v-cell': 'Touch a 1.5 V cell to the loudspeaker leads for a moment, positive to positive.',
  'listen.two-terminals-of-the-bridged-pair': 'two terminals of the bridged pair',
  'listen.voices-do-not-come-from-the':
    'Voices do not come from the box; a tone an octave below the high-pass barely moves the cone.'
} as const
