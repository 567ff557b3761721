/** Steps in the vehicle. */
export const vehicleSentences = {
  'vehicle.a-capacitor-that-is-in-already': 'A capacitor that is in already is discharged through its resistor.',
  'vehicle.a-copy-of-the-wiring-picture': 'A copy of the wiring picture goes into the folder of the handbook.',
  'vehicle.a-fuse-holder-at-each-end':
    '{second}A fuse holder at each end of what joins the batteries, and one at its own post. All fuses stay out.',
  'vehicle.a-relay-with-its-diode-switched':
    'A relay with its diode beside the amplifier{fuse}, switched by an accessory circuit that the handbook frees, tapped behind a fuse of {tapFuseA} A.',
  'vehicle.a-spanner-wrapped-in-tape-but': 'A spanner wrapped in tape but for its jaws.',
  'vehicle.a-straightened-wire-hanger-does-for': 'A straightened wire hanger does for a draw wire, its end taped over.',
  'vehicle.a-thick-rubber-glove-tied-over': 'A thick rubber glove, tied over the terminal.',
  'vehicle.all-cables': 'all {runs} {designation} cables',
  'vehicle.all-fuses-stay-out': '{circuit} All fuses stay out.',
  'vehicle.amplifier': 'amplifier',
  'vehicle.amplifiers': '{length} amplifiers',
  'vehicle.an-old-plastic-card-or-a': 'An old plastic card or a wooden spatula does for a lever.',
  'vehicle.as-short-as-it-goes': 'as short as it goes',
  'vehicle.as-the-handbook-says-ready-mode':
    'As the handbook says: ready mode off, key away, charging cable out. Keep off everything orange.',
  'vehicle.at-most-of-cable-between-the': 'At most {tail} of cable between the post and the fuse, {more}.',
  'vehicle.beside-the-amplifier-terminals-covered-its':
    'Beside the amplifier, terminals covered, its cables not on yet. Tie the charging resistor up beside it.',
  'vehicle.beside-the-amplifier-upright-with-air':
    'Beside the amplifier, upright, with air round its fins, {rated} A: its {input} V side to the main cable, its {nominal} V side to the amplifier. Mark both.',
  'vehicle.between-two-clips-nothing-moves-by':
    'Between two clips nothing moves by hand; pedals and seats go their whole way.',
  'vehicle.clear-of-pedals-steering-seat-rails':
    'Clear of pedals, steering, seat rails, exhaust, fuel lines and airbag looms; leave 100 mm at both ends. Connect nothing.',
  'vehicle.connect-the-amplifier': 'Connect the amplifier',
  'vehicle.crimp-the-lugs': 'Crimp the lugs',
  'vehicle.dealers-crimp-cut-lengths-above-25': 'Dealers crimp cut lengths; above 25 mm² it takes a hydraulic tool.',
  'vehicle.draw-through-the-new-grommet-and': 'Draw {trunk} through the new grommet and seal round it.',
  'vehicle.each-fuse-lies-within-its-distance': 'Each fuse lies within its distance of its own battery.',
  'vehicle.each-rating-can-be-read-with': 'Each rating can be read with the cover on.',
  'vehicle.empty-the-boot': 'Empty the boot',
  'vehicle.every-fuse-is-out-and-the': 'Every fuse is out, and the loudspeaker cable stays off.',
  'vehicle.every-ground-stays-on-the-body':
    'Every ground stays on the body side of the battery sensor; nothing but the sensor sits on the negative post.',
  'vehicle.find-each-pair-by-measuring-note':
    'Find each pair by measuring, note its colours, then join one core at a time and insulate it at once.',
  'vehicle.fit-the-distribution-block': 'Fit the distribution block',
  'vehicle.fit-the-fuse-holder': 'Fit the fuse holder',
  'vehicle.from-its-output-over-its-fuse': 'From its output {designation} over its fuse holder to the block.',
  'vehicle.from-its-output-over-the-fuse':
    'From its output {designation} over the fuse holder beside it to {amplifier}.',
  'vehicle.from-the-switched-output-of-the':
    'From the switched output of the source to the turn-on terminal of the amplifier.',
  'vehicle.ground-first-then-signal-and-turn':
    'Ground first, then signal and turn-on, the positive cable last, with the torque its sheet states.',
  'vehicle.in-a-tray-with-a-strap':
    'In a tray with a strap or a frame bolted to the body, terminals covered; its vent hose leads outside, but for lithium.',
  'vehicle.in-its-sheath-all-the-way': 'in its sheath all the way',
  'vehicle.input-and-output-are-not-exchanged':
    'Input and output are not exchanged; no cable of one side can reach a terminal of the other.',
  'vehicle.it-bends-nowhere-tighter-than-five': 'It bends nowhere tighter than five times its diameter.',
  'vehicle.it-cannot-be-moved-by-hand': 'It cannot be moved by hand; its controls and fuses can be reached.',
  'vehicle.it-does-not-move-when-you': 'It does not move when you push it.',
  'vehicle.it-ends-on-the-body-side':
    'It ends on the body side of the battery sensor, where the maker wants grounds; nothing but the sensor sits on the negative post.',
  'vehicle.it-ends-where-the-maker-wants':
    'It ends where the maker wants grounds: on the body side of a battery sensor, never past it.',
  'vehicle.its-fuses-stay-out': 'Its fuses stay out.',
  'vehicle.its-own-a-fuse-in-the': ', fed from its plus terminal over a fuse of {fuseA} A',
  'vehicle.its-service-disconnect-is-for-a': 'Its service disconnect is for a person trained on this vehicle.',
  'vehicle.label-it': 'Label it',
  'vehicle.lay-m-from-the-battery-to':
    'Lay {trunk}, {positiveLength} m, from the battery to the place of the amplifier, with a clip wherever the bill counts one.',
  'vehicle.lay-the-loudspeaker-cable': 'Lay the loudspeaker cable',
  'vehicle.lay-the-power-cable': 'Lay the power cable',
  'vehicle.lay-the-return': 'Lay the return',
  'vehicle.lay-the-return-beside-the-positive':
    'Lay the return beside the positive cable, {designation} too, {returnLength} m.',
  'vehicle.lay-the-signal-lead': 'Lay the signal lead',
  'vehicle.turn-on-from-one-to-the-next':
    'From the turn-on terminal of each amplifier on to the next, {length} m, both cores in one twin ferrule.',
  'vehicle.lay-the-turn-on-wire': 'Lay the turn-on wire',
  'vehicle.lay-the-twisted-pairs-m-away':
    'Lay the twisted pairs, {length} m, away from the power cable{more}; no screen, no core to the body. Leave them off the amplifier.',
  'vehicle.leave-it-off-the-amplifier': 'Leave it off the amplifier.',
  'vehicle.leave-it-off-the-amplifier-its': 'Leave it off the amplifier, its ends insulated.',
  'vehicle.leave-the-tailgate-and-a-window':
    'Leave the tailgate and a window open: without a battery the locks may not open again.',
  'vehicle.leave-yellow-connectors-closed': 'Leave yellow connectors closed.',
  'vehicle.less-than-0-1-from-the':
    'Less than 0.1 Ω from the lug to the loose negative terminal, the probes’ own reading taken off.',
  'vehicle.less-than-1-v-across-it': 'Less than 1 V across it before a hand goes near.',
  'vehicle.level-ground-in-the-open-or':
    'Level ground, in the open or with the door wide open; parking brake on, wheels chocked, key out of its reach.',
  'vehicle.lugs-cut-square-strip-to-the':
    '{lugs} lugs: cut square, strip to the depth of the barrel, crimp with the die of that size, shrink the sleeve over it.',
  'vehicle.m-from-the-amplifier-to-the':
    '{more}{designation}, {length} m, from the amplifier to the cup of the box, positive marked.',
  'vehicle.m-on-the-other-side-of':
    '{length} m on the other side of the vehicle from the power cable; cross it only at a right angle.',
  'vehicle.make-the-ground-point': 'Make the ground point',
  'vehicle.make-the-ground-points': 'Make the ground points',
  'vehicle.measured-along-the-cable-the-distance': 'Measured along the cable, the distance holds.',
  'vehicle.mount-the': 'Mount the {more}',
  'vehicle.mount-the-capacitor': 'Mount the capacitor',
  'vehicle.mount-the-converter': 'Mount the converter',
  'vehicle.mount-the-second-battery': 'Mount the second battery',
  'vehicle.never-from-a-circuit-of-airbags': 'Never from a circuit of airbags, brakes, steering or lamps.',
  'vehicle.no-connector-hangs-open': 'No connector hangs open.',
  'vehicle.no-core-reads-less-than-1': 'No core reads less than 1 kΩ to the body.',
  'vehicle.no-other-wire-is-touched': 'No other wire is touched.',
  'vehicle.no-ready-light-charging-cable-out': 'No ready light; charging cable out.',
  'vehicle.no-solder-it-wicks-under-the': 'No solder: it wicks under the insulation, where the strands then break.',
  'vehicle.no-strand-lies-outside-a-clamp': 'No strand lies outside a clamp; pull at each cable.',
  'vehicle.note-what-must-stay-within-reach':
    'Note what must stay within reach: spare wheel or repair kit, jack, towing eye, warning triangle, release of the tailgate, hatches, vents.',
  'vehicle.open-the-trim': 'Open the trim',
  'vehicle.park-it-safely': 'Park it safely',
  'vehicle.pass-the-bulkhead': 'Pass the bulkhead',
  'vehicle.pull-at-each-with-both-hands':
    'Pull at each with both hands, as hard as you can: nothing moves, no strand lies outside.',
  'vehicle.pull-in-each-direction-with-twice':
    'Pull in each direction with twice its weight: it moves less than 25 mm.',
  'vehicle.scrape-to-bright-metal-then-lug':
    'Scrape to bright metal, then lug, toothed washer, bolt at its torque; grease or paint over it.',
  'vehicle.screw-down-beside-the-battery': 'Screw {more} down beside the battery. {facts}',
  'vehicle.screw-it-down-beside-the-amplifiers':
    'Screw it down beside the amplifiers, covered. Lay the branches: {join}.',
  'vehicle.sizes-as-in-the-wiring-picture': 'Sizes as in the wiring picture.',
  'vehicle.switch-the-electric-drive-off': 'Switch the electric drive off',
  'vehicle.take-a-grommet-of-the-vehicle':
    'Take a grommet of the vehicle that has room, else drill where both sides are clear, with a depth stop; deburr, paint the edge.',
  'vehicle.take-out-the-floor-and-its': 'Take out the floor and its cover as far as needed.',
  'vehicle.take-the-battery-off': 'Take the battery off',
  'vehicle.take-the-negative-terminal-off-first':
    'Take the negative terminal off first and tie it back, insulated, where it cannot spring onto the post.',
  'vehicle.tap-the-loudspeaker-wires-of-the': 'Tap the loudspeaker wires of the source',
  'vehicle.the-cable': 'the {designation} cable',
  'vehicle.the-cable-moves-in-the-grommet':
    'The cable moves in the grommet and touches no metal; no light comes through beside it.',
  'vehicle.the-charger-beside-the-block-with':
    'The charger beside the block with air round it, {rated} A, its signal from a feed that is live only while the engine runs. ',
  'vehicle.the-free-gap-is-measured': 'The free gap is measured.',
  'vehicle.the-fuse-stays-in-your-pocket': 'The fuse stays in your pocket, and nothing goes onto the battery yet.',
  'vehicle.the-holder': 'the holder',
  'vehicle.the-holders': 'the {runs} holders',
  'vehicle.the-list-of-what-must-stay': 'The list of what must stay within reach hangs beside the plan.',
  'vehicle.the-negative-terminal-is-off-and':
    'The negative terminal is off and cannot touch the post; 0 V from it to the positive post.',
  'vehicle.the-relay-beside-the-block-its':
    'The relay beside the block, its coil on a feed that is live only while the engine runs. ',
  'vehicle.the-same-size-is-printed-on': 'The same size is printed on both cables.',
  'vehicle.the-size-of-the-plan-is': 'The size of the plan is printed on it; no loose strand.',
  'vehicle.the-stripe-of-the-diode-points': 'The stripe of the diode points to the positive side of the coil.',
  'vehicle.the-switched-output-of-the-source':
    'The switched output of the source drives a relay with its diode beside the amplifier{fuse}.',
  'vehicle.thick-body-metal-or-a-ground':
    'Thick body metal or a ground stud of the maker; never a bolt of a seat, a belt or an airbag.',
  'vehicle.through-bolt-it-to-a-board':
    'Through-bolt it to a board or a bracket on the body, not into a wall of the box: that shakes it loose, and its screws leak.',
  'vehicle.to': '{designation} to {amplifier}',
  'vehicle.to-the-converter-beside-the-amplifier': ', to the converter beside the amplifier',
  'vehicle.two-blocks-of-wood-one-on': 'Two blocks of wood, one on each side of a wheel, do for chocks.',
  'vehicle.unclip-sills-and-side-trim-along':
    'Unclip sills and side trim along the way of the cables with a plastic lever; photograph every clip.',
  'vehicle.upright-or-flat-with-its-fins':
    'Upright or flat with its fins free, at least 50 mm of air on every side (or what its sheet asks), no carpet over it; off the lowest point of the boot, where water gathers, and not under a seat whose plug would have to be opened.',
  'vehicle.wait-as-long-as-the-handbook': 'Wait as long as the handbook asks before you work near airbag wiring.',
  'vehicle.where-the-negative-post-wears-a':
    'Where the negative post wears a battery sensor, every ground stays on the body side of it.',
  'vehicle.where-the-two-run-side-by': 'Where the two run side by side there are at least 200 mm between them.',
  'vehicle.where-the-vehicle-has-a-second':
    'Where the vehicle has a second battery already, take its negative terminal off too.',
  'vehicle.write-each-fuse-rating-beside-its':
    'Write each fuse rating beside its holder and "power cable" where it enters the cabin.'
} as const
