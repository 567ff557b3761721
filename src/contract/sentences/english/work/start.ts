/** Steps of the first start on the vehicle side. */
export const startSentences = {
  'start.a-for': '{ratingA} A for {amplifier}',
  'start.a-main-fuse': '{ratingA} A main fuse',
  'start.a-rated-fuse': '{ratingA} A fuse',
  'start.a-short-round-with-familiar-music':
    'A short round with familiar music, hands off its controls; then feel fuse holder and lugs. After a month look at torque, straps and lugs again.',
  'start.about-mv-at-most-mv-more':
    'About {expected} mV, at most {highest} mV; more means a joint to remake, or a body that conducts worse than the plan took it: measure and plan again.',
  'start.all-that-lie-side-by-side': ', all {runs} that lie side by side',
  'start.and-the-a-fuse-at-the': ' and the {ratingA} A fuse at the converter',
  'start.at-each-end': ' at each end',
  'start.at-most-ma': 'At most {value} mA.',
  'start.at-one-metre-no-whine-and':
    'At one metre no whine and no click; the radio receives and the key works as before.',
  'start.battery-on-main-fuse-out': 'Battery on, main fuse out',
  'start.before-any-later-work': 'Before any later work',
  'start.before-any-later-work-on-the':
    'Before any later work on the supply: main fuse out, negative terminal off, then the resistor ({precharge}) across the two terminals of the capacitor. Tie it up beside the capacitor.',
  'start.body-side-of-the-battery-sensor': 'body side of the battery sensor',
  'start.box-amplifier-battery-lugs-by-torque':
    'Box, amplifier, battery, lugs: by torque and by hand. Open the list of what must stay within reach.',
  'start.charge-the-capacitor': 'Charge the capacitor',
  'start.connect-the-battery-again-negative-last':
    'Connect the battery again, negative last, face turned away. The main fuse stays out.',
  'start.current-of-the-parked-car': 'Current of the parked car',
  'start.drop-of-the-ground': 'Drop of the ground',
  'start.drop-of-the-plus-side': 'Drop of the plus side',
  'start.engine-off-listen-at-the-isolating':
    'Engine off: listen at the isolating relay, and measure its coil. Then start the engine and measure over its closed contacts.',
  'start.everything-is-held': 'Everything is held',
  'start.everything-off-doors-latched-the-vehicle':
    'Everything off, doors latched, the vehicle asleep after half an hour: a DC clamp meter for milliamperes round the positive cable of the amplifier. Never the current range of a meter across a battery.',
  'start.everything-to-its-minimum': 'Everything to its minimum',
  'start.filters': 'Filters',
  'start.first-drive': 'First drive',
  'start.fuse-out-amplifier-leads-joined-measure':
    'Fuse out, amplifier leads joined: measure from the amplifier end of the positive cable to the body.',
  'start.gain-by-meter': 'Gain by meter',
  'start.halves-of-the-bridge': 'Halves of the bridge',
  'start.hand-it-over': 'Hand it over',
  'start.hold-the-resistor-across-with-insulated':
    'Hold the resistor ({precharge}) across {holder} with insulated clips for about {prechargeDone}; it gets hot.',
  'start.in-the-open-engine-or-ready':
    'In the open: engine or ready mode on, volume at its lowest; then lamps, fan and rear window heater on, one after the other.',
  'start.it-gives-nothing-with-the-engine': 'It gives nothing with the engine off. {readings}',
  'start.last-the-a-fuse-of-the': ' Last the {ratingA} A fuse of the second battery.',
  'start.less-than-1-v-across-the': 'Less than 1 V across the resistor; only then the fuse.',
  'start.less-than-1-v-across-the-2': 'Less than 1 V across the capacitor before a hand or a tool goes near it.',
  'start.level-of-the-bass': 'Level of the bass',
  'start.level-of-the-source': 'Level of the source',
  'start.listen-for-noise': 'Listen for noise',
  'start.look-along-from-end-to-end':
    'Look along {what}{along} from end to end: grommet in every metal wall, clear of heat, pedals, seat rails and sharp edges, clamped.',
  'start.look-along-the-whole-cable': 'Look along the whole cable',
  'start.look-for-a-short': 'Look for a short',
  'start.look-for-clipping': 'Look for clipping',
  'start.loudspeaker-leads-on': 'Loudspeaker leads on',
  'start.main-fuse': 'main fuse',
  'start.main-fuse-out-put-then-the': 'Main fuse out, put {where}: {join}{own}. Then the main fuse again.',
  'start.meter-on-speakers-off': 'Meter on, speakers off',
  'start.no-bare-metal-touches-it-and': 'No bare metal touches it and it cannot move or chafe.',
  'start.no-clip-is-left-over-no': 'No clip is left over, no cable shows.',
  'start.no-core-shows-less-than-1':
    'No core shows less than 1 kΩ to the body or to the other pair; within a pair there are a few ohms of loudspeaker, or nothing where it is disconnected.',
  'start.no-joint-is-warm': '{readings} No joint is warm.',
  'start.no-more-than-a-small-spark': 'No more than a small spark as the amplifier charges; no smell, nothing warm.',
  'start.no-voltage-at-the-coil-with':
    'No voltage at the coil with the engine off; with it running the relay closes. {readings}',
  'start.no-warm-joint': 'No warm joint.',
  'start.nobody-inside-or-everybody-with-ear':
    'Nobody inside, or everybody with ear protection. With dense bass music at full level, engine idling, measure from the {from} to the positive terminal of the amplifier, over the fuse holder and at the amplifier.',
  'start.nothing-moves-spare-wheel-towing-eye':
    'Nothing moves; spare wheel, towing eye and the release of the tailgate are reached as before, and the rear view is free.',
  'start.only-the-in-every-fuse-behind':
    'Only the {main} in, every fuse behind the converter out: measure at its input and at its output. Then take the main fuse out again.',
  'start.output-of-the-converter': '{pole} output of the converter',
  'start.output-of-the-converter-before-anything': 'Output of the converter, before anything hangs on it',
  'start.polarity-at-the-steering-wheel': 'Polarity at the steering wheel',
  'start.polarity-of-the-cones': 'Polarity of the cones',
  'start.post-of-the-battery': '{pole} post of the battery',
  'start.put-a-in-the-holder-of': 'Put a {rated} in the holder of each of the {runs} cables{ends}.',
  'start.put-fuses': '{block}{main}{second}',
  'start.put-the-fuse-in': 'Put the fuse in',
  'start.put-the-fuses-of-the-branches': 'Put in the fuses of the branches: {join}. ',
  'start.put-the-in-its-holder': 'Put the {rated} in its holder{ends}.',
  'start.put-the-trim-back-clip-by':
    'Put the trim back clip by clip, from your photographs; no cable under the cover of an airbag.',
  'start.resistance-of-the-loudspeaker-leads': 'Resistance of the loudspeaker leads',
  'start.set-the-charger-to-the-kind':
    'Set the charger to the kind of the second battery, by its handbook. Start the engine: it gives up to {rated} A; stop it again.',
  'start.show-whoever-drives-the-car-where':
    'Show whoever drives the car: where the main fuse is and what to do if it smokes (main fuse or negative terminal off, everybody out), a spare of the same rating only, how loud for how long. Hand over plan, readings and papers for inspection and insurer.',
  'start.sirens-and-horns-are-heard-nothing':
    'Sirens and horns are heard; nothing loose, nothing warm, no warning lamp.',
  'start.source-off-the-twisted-signal-pairs':
    'Source off, the twisted signal pairs off the amplifier or its converter: measure each core to the body, and the cores of each pair to those of the other.',
  'start.start-the-engine-nothing-plays-gain':
    'Start the engine, nothing plays, gain at its minimum: measure the voltage at the battery and at each amplifier.',
  'start.test-the-signal-lead': 'Test the signal lead',
  'start.the-cable': 'the cable',
  'start.the-cables': '{cableCount, plural, one {the {sizes} cable} other {the {sizes} cables}}',
  'start.the-empty-fuse-holder': 'the empty fuse holder',
  'start.the-empty-fuse-holder-behind-the': 'the empty fuse holder behind the converter, the main fuse in for this,',
  'start.the-fuse-at-the-output-of': 'the fuse at the output of the converter',
  'start.the-fuses-of-the-branches-in': 'the fuses of the branches',
  'start.the-main-fuse-was-pulled-and': 'The main fuse was pulled and put back once by that person.',
  'start.the-reading-rises-beyond-1-k':
    'The reading rises beyond 1 kΩ once the amplifier’s capacitors have charged from the meter; a steady few ohms is a short.',
  'start.the-readings-of-this-step-lie': 'The readings of this step lie within their limits.',
  'start.the-voltage-of-the-v-battery':
    'The voltage of the {input} V battery at the input, about {output} V at the output. Anything else: nothing behind it is joined, for an amplifier made for {nominal} V does not survive {input} V. {readings}',
  'start.trim-back': 'Trim back',
  'start.try-the-charger': 'Try the charger',
  'start.try-the-isolating-relay': 'Try the isolating relay',
  'start.turn-on': 'Turn-on',
  'start.voltages-with-the-engine-running': 'Voltages with the engine running',
  'start.warm-check': 'Warm check',
  'start.warning-lamps-go-out-as-they': 'Warning lamps go out as they did before; nothing else happens.',
  'start.with-the-same-music-measure-from':
    'With the same music, measure from the amplifier’s ground terminal to the {more}.'
} as const
