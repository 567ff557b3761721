/** What the room `circuit` says. */
export const circuitSentences = {
  'amplifier-voltage-class':
    '{name} is rated at {ratedV} V, the system has {nominalV} V: {fate}. {remedy}; or take an amplifier for {nominalV} V. If its sheet allows {nominalV} V, give the supply voltage and power it is rated at there.',
  'amplifier-voltage-class.between': 'Put a DC-DC converter from {nominalV} to {converterV} V between',
  'amplifier-voltage-class.converter':
    '{between}, rated for the full draw of the amplifier at {converterV} V, with a fuse on both sides',
  'amplifier-voltage-class.rated-converter':
    '{between}, rated for at least {outA} A at {converterV} V, with a fuse on both sides: the next rating above {outA} A at its output and above {inA} A at its input, near the battery',
  'amplifier-voltage-class.too-high': 'the higher voltage destroys it and may set it on fire',
  'amplifier-voltage-class.too-low': 'it does not start on so little',
  'amplifier-voltage-unknown':
    'Most vehicle amplifiers are made for 12 V, and {nominalV} V destroys those. {amplifier} was reckoned as made for {nominalV} V: read the supply range on its rating plate or data sheet before it is connected.',
  'amplifier.the': 'The amplifier',
  'amplifier.this': 'This one',
  'assumed-body':
    'It rests on an assumed body: measure the resistance from ground point to negative post and plan with it, or run a return cable.',
  'assumed-resistance': 'It rests on an assumed resistance: measure it and ask again, or run a return cable.',
  'at-level': 'At {level}: {message}',
  'bare-source': 'No fuse at the end of {bare}: put one within {idealMm} mm of its plus pole, before any branch.',
  'battery-assists':
    'The alternator gives {currentA} A; amplifiers ({totalCurrentA} A) and vehicle take more, so the battery helps and the supply falls to {nodeVoltageV} V.',
  'battery-assists.circuit':
    'At {when}: the charging system gives {chargedA} A, the batteries {batteriesA} A more, so they discharge.',
  'battery-strength.assumed':
    'if the battery is as strong as it may be (its measured resistance or its maker’s short-circuit current settles it)',
  'battery-strength.given': 'by the resistance given for the battery',
  'battery-strength.may-be': 'if the battery is as strong as it may be',
  'below-drop-out': '{voltageV} V are left at {name}; its converter stops below {dropOutV} V. {bass} {settles}',
  'below-drop-out.cable': '{amplifierVoltageV} V are left at the amplifier; it stops below {dropOutV} V.',
  'below-drop-out.circuit':
    'At {when}: {voltageV} V are left at {name}; its converter stops below {dropOutV} V. {bass} {settles}',
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
    '{cable}, {designation}, carries {ampacityA} A for good here; at full sine {currentA} A flow in it. {readIt}',
  'cable-overloaded.chosen': '{designation} carries {ampacityA} A for good here, the load draws {currentA} A. {readIt}',
  'cable-unguarded':
    '{cable} carries {carries}; with every fuse whole a fault on it draws {first} from its first end, {second} from its second. {readIt}',
  'cable-unguarded.chosen':
    '{designation} may be fused at {highestFuseA} A here, the fuse before it is {ratingA} A. {readIt}',
  'cable-unguarded.no-fuse': '{designation} has no fuse before it.',
  'cable-unguarded.stretch': '{designation} carries {current} here, the fuse before it is {fuseRatingA} A.',
  'cable.the': 'The cable',
  'capacitor-charge':
    'The capacitor of {capacitanceF} F takes {storedJ} J: charge it through a resistor ({resistor}) for about {time}, until less than 1 V is left across the resistor, and only then put the fuse in. Put on bare it draws what the battery can give, and welds or bursts the contact.',
  'capacitor-discharge':
    'The capacitor stays charged with the battery off: discharge it through the same resistor ({resistor}, about {time}) until less than 1 V is left before anybody works on it.',
  'capacitor-no-energy':
    'The capacitor holds the full sine for {holdUpMs} ms; it smooths bass ripple and gives no energy.',
  'charge-deficit-cruise':
    'Driving with ordinary music leaves {shortA} A short: {availableA} A come from {source, select, alternator {the alternator} other {the converter}}. Fit a larger one; batteries and capacitors do not mend a mean deficit.',
  'charge-deficit-heavy': 'With dense bass even driving leaves {shortA} A short.',
  'charge-deficit-idle':
    'At idle with ordinary music {shortA} A come out of the battery: {availableA} A are available, the vehicle takes {baseLoadA} A.',
  'chemistry.agm': 'agm',
  'chemistry.flooded': 'flooded',
  'chemistry.gel': 'gel',
  'chemistry.lithium': 'lithium',
  'chemistry.unknown': 'kind not said',
  'circuit-collapse':
    'At {when}: no steady voltage; about {sustainableSharePercent} % of the power of the regulated amplifiers could be fed. {limits} {settles}',
  'circuit-collapse.limit': 'the {id} gives at most {ratedA} A at {setV} V',
  'circuit-collapse.limits': 'Of what feeds them {limits}: above that its voltage falls until the amplifier stops.',
  'circuit-level.average': 'ordinary music',
  'circuit-level.cold-start': 'a cold start',
  'circuit-level.full-sine': 'full sine',
  'circuit-level.heavy': 'dense bass',
  'circuit-level.silence': 'silence',
  'circuit-state': '{level}, {engine}',
  'collapse-margin':
    'The supply would collapse at {marginTimes} times this power; the ripple of bass peaks at twice the mean.',
  'collapse-margin.driving':
    'At full sine, driving: the supply would collapse at {collapseMarginTimes} times this power; the ripple of bass peaks at twice the mean.',
  'collapse-margin.loop': 'The supply would collapse at {marginTimes} times this power.',
  'composition-unknown':
    '{designation}: the metal is not known, so it was reckoned as aluminium with 10 % copper: 59 % more resistance and 21 % less current than full copper of the size.',
  'conductor-hot':
    '{designation} is estimated at {conductorC} °C at a sustained load, above its {insulationC} °C insulation.',
  'conductor-hot.cable':
    'At a sustained full sine the conductor is estimated at {conductorC} °C, above its {insulationC} °C insulation.',
  'converter-input': '{highestV} V reach the input of the {id}; its sheet allows {allowedV} V.',
  'current.flowing': '{flowA} A',
  'current.known': '{ampacityA} A',
  'current.unknown': 'an unknown current',
  'dense-bass.voltage': 'Dense bass leaves {voltageV} V.',
  'dense-bass.voltage-and-drop': 'Dense bass leaves {voltageV} V and loses {dropPercent} %.',
  'efficiency-implausible':
    'Efficiency {efficiencyRatio} lies outside {lowestRatio} to {highestRatio}, which class {class} amplifiers reach at rated output; check at which load and output it was measured.',
  'engine-off-time':
    'With the engine off the battery lasts about {usableHours} h at {currentA} A before its usable share is gone ({emptyHours} h to empty).',
  'engine.cranking': 'engine cranking',
  'engine.driving': 'driving',
  'engine.idling': 'engine idling',
  'engine.off': 'engine off',
  'fault-current-low': 'A dead short at {name} drives no current through any fuse: none can open.',
  'fault-current-low.cable':
    'A short circuit at the amplifier drives {faultA} A, {multipleTimes} times the fuse; three times is wanted.',
  'fault-current-low.through':
    'A dead short at {name} drives {currentA} A through {fuse}, {multipleTimes} times its rating: too little to open it in time.',
  'fault-flow.no-limit': 'no limit',
  'feed-collapse':
    'There is no steady state: the amplifiers ask for {askedTimes} times what this feeder carries. {most}',
  'feed-collapse.loop': 'The load asks for {askedTimes} times what this loop can carry: the voltage collapses.',
  'feed-collapse.most': 'The source drives at most {maximumPowerW} W through these resistances.',
  'feed-collapse.nothing-left': 'There is no steady state: the source has nothing left for the amplifiers.',
  'fuse-above-onboard': "The cable's fuse, {ratingA} A, is above the amplifier's own, {onboardA} A together.",
  'fuse-below-load':
    '{fuse}, {ratingA} A, carries {loadA} A at full sine and {heavyA} A with dense bass: it opens while it is used. Take the next rating that its cable carries, or a lower gain.',
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
  'ground-noise':
    'Supply ripple puts {noiseMv} mV into the shared ground, {levelDb} dB under the signal: share one ground point with the source unit or use differential inputs.',
  'high-voltage-orange':
    'If the vehicle has orange cables, leave them alone; whether it is a combustion, hybrid or electric vehicle was not told.',
  'insulation-unknown':
    '{insulationC} °C insulation was assumed and decided the size. With 105 °C printed on the insulation {size} would do.',
  'insulation-unknown.none': 'no listed size',
  'link-both-ends': 'Both batteries can feed a fault on this link: fit a fuse of this rating at each end.',
  'maker-fuse-not-obeyed': 'The maker states {makerA} A; {ratingA} A was chosen: {reason}.',
  'maker-fuse-not-obeyed.cable': 'the cable carries only {cableA} A',
  'maker-fuse-not-obeyed.sooner': '{ratingA} A carries the load and protects the cable sooner',
  'maker-fuse-too-small':
    'The maker states {makerFuseA} A, the fuse before this amplifier is {ratingA} A; it draws {loadA} A at full sine.',
  'maker-fuse-too-small.chosen':
    'The maker states {makerA} A, the wired load draws {loadA} A at full sine: it would open. {ratingA} A was chosen; check load and power.',
  'maker-fuse-used': "The maker's {makerA} A carries the full sine of {loadA} A and is what is chosen.",
  'near-miss':
    '{designation} misses the drop limit by {missPercent} %: {dropV} V for {dropLimitV} V. It would do with {lengthM} m of conductor out and back instead of {conductorLengthM} m.',
  'no-cable-fits': 'No listed size carries {currentA} A within every limit; {largest} fails {limits}. {way}',
  'no-cable-fits.all': 'all limits',
  'no-cable-fits.largest': 'the largest',
  'no-cable-fits.nothing': 'Not even four parallel runs do: shorten the way, raise the voltage or lower the power.',
  'no-cable-fits.runs': '{runCount} runs of {designation}, each with a {fuseRatingA} A fuse, would.',
  'no-fuse-rating': 'No fuse-link of the allowed families reaches {lowestA} A.',
  'no-supply': 'Nothing feeds {name} at {when}. {why}',
  'no-supply.stopped': 'The input of {names} is too low: it stops.',
  'parallel-runs':
    '{runCount} runs share {currentA} A only if they are alike; each gets its own {fuseRatingA} A fuse at the source.',
  'parasitic-drain': '{standbyMa} mA flow while switched off; 1 mA is the aim.',
  'part.cable': 'cable {id}',
  'part.cable-first': 'Cable {id}',
  'part.fuse': 'fuse {id}',
  'part.fuse-first': 'Fuse {id}',
  'part.own-name': '{id}',
  'power-bounded.supply':
    'No power is published for {loadOhm} Ω; current, cable and fuse are reckoned for the {ratedPowerW} W at {ratedOhm} Ω, for no higher load draws more.',
  'rating-implausible.supply':
    '{claimedW} W is claimed, but {plausibleW} W is all its on-board fuses of {fuses} A pass at {ratedVoltageV} V with efficiency {efficiencyRatio}: current, cable and fuse are reckoned for {plausibleW} W.',
  'read-the-print': 'Its insulation class or place is assumed: read the print on the cable, say where it lies.',
  resistor: '{resistanceOhm} Ω, {ratedW} W',
  'selectivity-poor':
    'Main {mainA} A over branch {branchRatingA} A is a ratio of {ratio}, below 1.6: a fault behind the branch may open the main fuse too.',
  'selectivity-poor.series':
    '{before} over {behind} is a ratio of {ratio}, below {wantedRatio}: a fault behind the second may open the first too.',
  'sizing-above-nominal':
    'Currents are given at {systemVoltageV} V; at nominal {nominalV} V a regulated amplifier draws {morePercent} % more.',
  'terminal-too-small': '{designation}, {areaMm2} mm² in all, ends in a terminal for {terminalMm2} mm².',
  'time.minutes': '{minutesMin} min',
  'time.seconds': '{secondsS} s',
  'total-drop': '{dropV} V, {dropPercent} % of nominal, are lost on the way to {name}. {bass} {settles}',
  'total-drop.body':
    '{bodyV} V of it is the body, assumed at {assumedMohm} mΩ: measure from ground point to negative post and plan with that, or run a return cable.',
  'total-drop.cable':
    'The whole run, fuse, joints and return with it, loses {dropV} V ({dropPercent} %) at full level with the conductor at {conductorC} °C, and {heavyPercent} % with dense bass. {body}',
  'total-drop.circuit':
    'At {when}: {dropV} V, {dropPercent} % of nominal, are lost on the way to {name}. {bass} {settles}',
  'unlike-batteries-parallel':
    'One battery is {known}, the chemistry of the other is not said: read it on its label. Unless both are alike they must not be joined in parallel, so they were not reckoned as one. {remedy}',
  'unlike-batteries-parallel.charging':
    'they want different charging voltages, so one is overcharged or the other never fills',
  'unlike-batteries-parallel.circuit':
    '{id} ({chemistry}) and {otherId} ({otherChemistry}) are tied together: they do not want the same charging voltage. Join them by a charger made for the second one, with a fuse at each end, or take two of one kind.',
  'unlike-batteries-parallel.equalising':
    'about {flowA} A flow between them at rest, for hours, and the lead battery never fills',
  'unlike-batteries-parallel.known':
    'A {one} and a {other} battery must not be joined in parallel: {why}. They were not reckoned as one. {remedy}',
  'unlike-batteries-parallel.remedy':
    'Join them by a DC-DC charger made for the second battery, with a fuse at each end (arrangement `isolated`), or take two of one kind.',
  'unregulated-sizing':
    '{amplifier} does not regulate, so it draws most while the battery is being charged: {sizingA} A at {voltageV} V against {fullSineA} A at nominal voltage. Fuse and cable follow the {sizingA} A.'
} as const
