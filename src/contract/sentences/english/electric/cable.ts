/** What the room `cable` says. */
export const cableSentences = {
  'bare-source': 'No fuse at the end of {bare}: put one within {idealMm} mm of its plus pole, before any branch.',
  'battery-strength.assumed':
    'if the battery is as strong as it may be (its measured resistance or its maker’s short-circuit current settles it)',
  'battery-strength.given': 'by the resistance given for the battery',
  'battery-strength.may-be': 'if the battery is as strong as it may be',
  'branch-unprotected': '{designation} has no fuse before it at all.',
  'breaking-capacity':
    'Up to {prospectiveA} A flow into a dead short right behind the {ratingA} A fuse, {strength}; type {type} breaks {breakingA} A. {way}',
  'breaking-capacity.each': '{fuse} {flowA} A, breaks {brokenA} A',
  'breaking-capacity.family': 'A {form} ({standard}) breaks {breakingA} A.',
  'breaking-capacity.none':
    'None of the families listed here breaks that at this rating: use a fuse-link whose maker states at least {leastA} A of direct current at this voltage, or feed the load from behind a larger fuse and a length of cable.',
  'breaking-capacity.none-listed':
    'None of the families listed here breaks that: use a fuse-link whose maker states at least {leastA} A of direct current at this voltage.',
  'breaking-capacity.several':
    'A dead short right behind a fuse may drive more than it breaks, {strength}: {each}. {way}',
  'cable-limit.ampacity': 'ampacity',
  'cable-limit.drop': 'drop',
  'cable-limit.fuse': 'fuse',
  'cable-limit.short-circuit': 'short-circuit',
  'cable-limit.terminal': 'terminal',
  'cable-overloaded':
    '{cable}, {designation}, carries {ampacityA} A for good here; at full level {currentA} A flow in it. {readIt}',
  'cable-overloaded.chosen': '{designation} carries {ampacityA} A for good here, the load draws {currentA} A. {readIt}',
  'cable-unguarded':
    '{cable} carries {carries}; with every fuse whole a fault on it draws {first} from its first end, {second} from its second. {readIt}',
  'cable-unguarded.chosen':
    '{designation} may be fused at {highestFuseA} A here, the fuse before it is {ratingA} A. {readIt}',
  'cable-unguarded.no-fuse': '{designation} has no fuse before it.',
  'cable-unguarded.stretch': '{designation} carries {current} here, the fuse before it is {fuseRatingA} A. {readIt}',
  'cable.the': 'The cable',
  'composition-unknown':
    '{designation}: the metal is not known, so it was calculated as aluminium with 10 % copper: 59 % more resistance and 21 % less current than full copper of the size.',
  'conductor-hot':
    '{designation} is estimated at {conductorC} °C at a sustained load, above its {insulationC} °C insulation.',
  'conductor-hot.cable':
    'At a sustained full level the conductor is estimated at {conductorC} °C, above its {insulationC} °C insulation.',
  'current.flowing': '{flowA} A',
  'current.known': '{ampacityA} A',
  'current.unknown': 'an unknown current',
  'fault-current-low': 'A dead short at {name} drives no current through any fuse: none can open.',
  'fault-current-low.cable':
    'A short circuit at the amplifier drives {faultA} A, {multipleTimes} times the fuse; three times is wanted.',
  'fault-current-low.through':
    'A dead short at {name} drives {currentA} A through {fuse}, {multipleTimes} times its rating: too little to open it in time.',
  'fault-flow.no-limit': 'no limit',
  'fuse-above-onboard': "The cable's fuse, {ratingA} A, is above the amplifier's own, {onboardA} A together.",
  'fuse-below-load':
    '{fuse}, {ratingA} A, carries {loadA} A at full level and {heavyA} A with dense bass: it opens while it is used. Take the next rating that its cable carries, or a lower gain.',
  'fuse-overcurrent': '{ratingA} A is not a current limit: {at135PercentA} A may flow {long} before it opens.',
  'fuse-overcurrent.minutes': 'for minutes',
  'fuse-overcurrent.seconds': 'for up to {longestS} s',
  'fuse-too-far': '{distanceMm} mm of conductor before the fuse are unprotected: {advice}.',
  'fuse-too-far.conduit': 'only with a conduit over its whole length',
  'fuse-too-far.move': 'move the fuse nearer',
  'fuse-too-far.move-or-sheath': 'move the fuse nearer, or sheath the piece and stay within 1016 mm',
  'fuse-too-far.sheath-conduit': 'its sheath must be a conduit over the whole length',
  'fuse-too-far.sheath-whole': 'its sheath must stay whole',
  'fuse-too-far.sleeve': 'sleeve this piece against chafing',
  'insulation-unknown':
    '{insulationC} °C insulation was assumed and decided the size. With 105 °C printed on the insulation {size} would do.',
  'insulation-unknown.none': 'no listed size',
  'link-both-ends': 'Both batteries can feed a fault on this link: fit a fuse of this rating at each end.',
  'maker-fuse-not-obeyed': 'The maker states {makerA} A; {ratingA} A was chosen: {reason}.',
  'maker-fuse-not-obeyed.cable': 'the cable carries only {cableA} A',
  'maker-fuse-not-obeyed.sooner': '{ratingA} A carries the load and protects the cable sooner',
  'maker-fuse-too-small':
    'The maker states {makerFuseA} A, the fuse before this amplifier is {ratingA} A; it draws {loadA} A at full level.',
  'maker-fuse-too-small.chosen':
    'The maker states {makerA} A, the wired load draws {loadA} A at full level: it would open. {ratingA} A was chosen; check load and power.',
  'maker-fuse-used': "The maker's {makerA} A carries the {loadA} A of full level and is what is chosen.",
  'near-miss':
    '{designation} misses the drop limit by {missPercent} %: {dropV} V for {dropLimitV} V. It would do with {lengthM} m of conductor out and back instead of {conductorLengthM} m.',
  'no-cable-fits': 'No listed size carries {currentA} A within every limit; {largest} fails {limits}. {way}',
  'no-cable-fits.all': 'all limits',
  'no-cable-fits.largest': 'the largest',
  'no-cable-fits.nothing': 'Not even four parallel runs do: shorten the way, raise the voltage or lower the power.',
  'no-cable-fits.runs': '{runCount} runs of {designation}, each with a {fuseRatingA} A fuse, would.',
  'no-fuse-rating': 'No fuse-link of the allowed families reaches {lowestA} A.',
  'parallel-runs':
    '{runCount} runs share {currentA} A only if they are alike; each gets its own {fuseRatingA} A fuse at the source.',
  'part.cable': 'cable {id}',
  'part.cable-first': 'Cable {id}',
  'part.fuse': 'fuse {id}',
  'part.fuse-first': 'Fuse {id}',
  'part.own-name': '{id}',
  'read-the-print': 'Its insulation class or place is assumed: read the print on the cable, say where it lies.',
  'selectivity-poor':
    'Main {mainA} A over branch {branchRatingA} A is a ratio of {ratio}, below 1.6: a fault behind the branch may open the main fuse too.',
  'selectivity-poor.series':
    '{before} over {behind} is a ratio of {ratio}, below {wantedRatio}: a fault behind the second may open the first too.',
  'terminal-too-small': '{designation}, {areaMm2} mm² in all, ends in a terminal for {terminalMm2} mm².'
} as const
