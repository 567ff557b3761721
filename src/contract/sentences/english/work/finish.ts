/** Steps from the closed box to the box in the car. */
export const finishSentences = {
  'finish.a-lashing-eye-is-often-weaker':
    'A lashing eye is often weaker than its strap: {eyeStrength} N counted here; read the figure in the handbook.',
  'finish.all-cones-move-the-same-way': 'All cones move the same way.',
  'finish.and-the-port': ' and the port',
  'finish.before-you-drill-find-what-lies':
    'Before you drill find what lies behind, from both sides: tank, brake lines, wiring, airbags, a drive battery. To look from below, ramps or stands on level ground and wheels chocked, never a jack.',
  'finish.bolt-it-to-the-body-structure':
    'Bolt it to the body structure with load plates behind the board, or strap it to lashing eyes; never to child-seat, belt or seat anchors.',
  'finish.bolt-the-box-to-the-body':
    'Bolt the box to the body structure first of all; straps to lashing eyes come second. Leaning on the seat back is no restraint: lock its latch.',
  'finish.brush-edge-sealer-on-every-sawn': 'Brush edge sealer on every sawn edge and into the driver hole, twice.',
  'finish.check-polarity-and-resistance': 'Check polarity and resistance',
  'finish.close-the-driver-hole-with-boards':
    'Close the driver hole{more} with boards on gaskets, blow in gently by mouth through a small tube, and listen and feel along every seam, or brush on soap water.',
  'finish.close-the-hole-of-the-terminal': 'Close the hole of the terminal cup with a board on a gasket too.',
  'finish.connect-the-inner-wires-to-the': 'Connect the inner wires to the cup, lay its gasket, screw it down.',
  'finish.cover-the-box': 'Cover the box',
  'finish.cut-out-the-holes-from-the': 'Cut out the holes from the middle and turn the edges in.',
  'finish.driver': 'driver',
  'finish.drivers': '{driverCount} drivers',
  'finish.every-cone-comes-back-slowly-over':
    'Every cone comes back slowly, over half a second or more; at once means a leak.',
  'finish.fasten-the-box-in-the-car': 'Fasten the box in the car',
  'finish.fill-and-sand': 'Fill and sand',
  'finish.fill-round-over-and-sand': 'Fill, round over and sand',
  'finish.fill-screw-heads-and-seams-let': 'Fill screw heads and seams, let it dry.',
  'finish.fit-the': 'Fit the {more}{more2}',
  'finish.fit-the-terminal-cup-and-feet': 'Fit the terminal cup and feet',
  'finish.glue-the-wrap-first-with-its':
    'Glue the wrap first with its seam at the back or below, then the ends, with the pile lying one way.',
  'finish.keep-above-the-tuning-frequency-at': ', keep above the tuning frequency at first',
  'finish.kg-to-rest-it-on-a': '{carried} kg{more}: {people} to rest it on a board over the sill and slide it in.',
  'finish.lay-the-gasket-strip-connect-the':
    'Lay the gasket strip, connect the wires as the wiring diagram shows, lower the driver in.{driverMass}',
  'finish.leave-the-outer-edges-sharp-a':
    'Leave the outer edges sharp, a seam runs in or near them; only break them with abrasive.',
  'finish.listen-for-leaks-and-rattles': 'Listen for leaks and rattles',
  'finish.load-the-box': 'Load the box',
  'finish.look-from-both-sides-before-drilling':
    'Look from both sides before drilling: never into the tank, brake lines, wiring, airbag areas or the battery of the drive.',
  'finish.lower-it-with-two-hands-or': ' Lower it with two hands or two people; a slip tears the cone.',
  'finish.mark-every-leak-seal-it-test': 'Mark every leak, seal it, test again.',
  'finish.measure-the-resistance-at-the-terminal':
    'Measure the resistance at the terminal and compare it with the plan.',
  'finish.mind-fingers-at-the-sill-and':
    'Mind fingers at the sill and what lies behind it: belts, release cables, trim.',
  'finish.never-fasten-it-to-child-seat':
    'Never fasten it to child-seat anchors (rigid bars or top-tether points), to belt anchors or to seat bolts.',
  'finish.never-under-a-car-on-its':
    'Never under a car on its jack: ramps or stands on level ground, wheels chocked, somebody within call.',
  'finish.no-hiss-no-draught-and-no': 'No hiss, no draught and no bubble at any seam.',
  'finish.nothing-is-pinched-behind-it-flaps':
    'Nothing is pinched behind it; flaps, hatches and the inner release of the tailgate stay free.',
  'finish.play-a-slow-tone-sweep-at':
    'Play a slow tone sweep at low level, from any small amplifier{more}; feel along the seams, touch what buzzes.',
  'finish.press-every-cone-gently-inwards-with':
    'Press every cone gently inwards with flat fingers near its centre, and let go.',
  'finish.pull-at-each-wire-as-hard': 'Pull at each wire as hard as at a full shopping bag, about 50 N: nothing moves.',
  'finish.push-and-pull-in-all-directions': 'Push and pull in all directions by hand: the box does not move.',
  'finish.put-load-plates-of-at-least':
    'Put load plates of at least 50 × 50 mm behind the board: wood pulls through before a bolt gives way.',
  'finish.round-over-the-outer-edges-that':
    'Round over the outer edges that the cut list names, to {roundingRadius} at most; keep screws out of the way of the bit, and leave mitres and slanted joints sharp.',
  'finish.sand-with-p120-then-p180': 'Sand with P120, then P180.',
  'finish.sanding-block-by-hand-plane-and':
    'Sanding block by hand; plane and abrasive round an edge as well as a router does.',
  'finish.screw-on-the-feet': 'Screw on the feet.',
  'finish.seal-the-sawn-edges': 'Seal the sawn edges',
  'finish.test-for-leaks': 'Test for leaks',
  'finish.test-for-leaks-with-the-cone': 'Test for leaks with the cone',
  'finish.the-crash-force-is-a-yardstick':
    'The crash force is a yardstick from seat rules; nothing here is proved for a crash.',
  'finish.the-gasket-is-pressed-evenly-all': 'The gasket is pressed evenly all round.',
  'finish.the-resistance-lies-a-little-below': 'The resistance lies a little below the rated load of the plan.',
  'finish.the-seat-back-is-locked': 'The seat back is locked.',
  'finish.tighten-crosswise-in-two-rounds-by': 'Tighten crosswise in two rounds, by hand.',
  'finish.touch-a-1-5-v-cell':
    'Touch a 1.5 V cell to the terminal, positive to positive, for an instant: every cone must move outwards.',
  'finish.wear-gloves-let-it-flash-off':
    'Wear gloves; let it flash off for a day before the box goes into a closed car.',
  'finish.when-the-box-stands-in-the': ' when the box stands in the car',
  'finish.without-its-drivers': ' without its drivers',
  'finish.weight-the-radiators': 'Weight the passive radiators',
  'finish.weigh-what-is-added':
    'Weigh {addedG} g for each of the {count, plural, one {one radiator} other {# radiators}}, bolt, nut and washers in it, to the gram and alike: with its own the cone then moves {massG} g.',
  'finish.fix-the-weight-on-the-axis':
    'Fix the weight on the axis of the cone as its maker says, with thread lock or a lock nut; beside the axis it makes the cone tilt.',
  'finish.nothing-rattles-when-shaken': 'Shaken by hand nothing rattles, and the cone stands straight in its surround.',
  'finish.a-weight-that-comes-loose':
    'A weight that comes loose at full travel tears the cone and flies about in the box.',
  'finish.fit-the-radiators': 'Fit the {count, plural, one {passive radiator} other {# passive radiators}}',
  'finish.lay-the-gasket-strip-set-the-radiator':
    'Lay the gasket strip and set the radiator in by its basket, never by its cone or weight.',
  'finish.pressed-in-by-hand-it-comes-back':
    'Pressed in with flat fingers as far as it goes the cone rubs nowhere and touches nothing behind it.',
  'finish.press-a-cone-and-hold-it':
    'Press a driver cone in gently with flat fingers near its middle, and hold it there.',
  'finish.the-radiators-stay-out':
    'The passive radiators come out and go back slowly, over half a second or more; at once means a leak.',
  'finish.and-those-of-the-radiators': ' and those of the passive radiators',
  'finish.take-the-front-off':
    'Unscrew the front and lay it aside with its gasket; the hole between the chambers lies open.',
  'finish.screw-the-front-on-again': 'Screw the front on again',
  'finish.nothing-lies-in-the-chamber':
    'See that nothing lies in the chamber and no wire touches a cone; then screw the front on over its gasket, crosswise and by hand, without glue.',
  'finish.close-the-port-with-a-board':
    'Close the port with a board on a gasket, blow in gently by mouth through a small tube, and listen and feel along every seam and round the front, or brush on soap water.',
  'finish.cover-the-front-by-itself':
    'Cover the front by itself, off the box, and keep the edges it lies on bare for the gasket.'
} as const
