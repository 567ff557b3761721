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
    'Most vehicle amplifiers are made for 12 V, and {nominalV} V destroys those. {amplifier} was taken as made for {nominalV} V: read the supply range on its rating plate or data sheet before it is connected.',
  'amplifier.the': 'The amplifier',
  'amplifier.this': 'This one',
  'assumed-body':
    'It rests on an assumed body: measure the resistance from ground point to negative post and plan with it, or run a return cable.',
  'assumed-resistance': 'It rests on an assumed resistance: measure it and ask again, or run a return cable.',
  'at-level': 'At {level}: {message}',
  'battery-assists':
    'The alternator gives {currentA} A; amplifiers ({totalCurrentA} A) and vehicle take more, so the battery helps and the supply falls to {nodeVoltageV} V.',
  'battery-assists.circuit':
    'At {when}: the charging system gives {chargedA} A, the batteries {batteriesA} A more, so they discharge.',
  'below-drop-out': '{voltageV} V are left at {name}; its converter stops below {dropOutV} V. {bass} {settles}',
  'below-drop-out.cable': '{amplifierVoltageV} V are left at the amplifier; it stops below {dropOutV} V.',
  'below-drop-out.circuit':
    'At {when}: {voltageV} V are left at {name}; its converter stops below {dropOutV} V. {bass} {settles}',
  'capacitor-charge':
    'The capacitor of {capacitanceF} F takes {storedJ} J: charge it through a resistor ({resistor}) for about {time}, until less than 1 V is left across the resistor, and only then put the fuse in. Put on bare it draws what the battery can give, and welds or bursts the contact.',
  'capacitor-discharge':
    'The capacitor stays charged with the battery off: discharge it through the same resistor ({resistor}, about {time}) until less than 1 V is left before anybody works on it.',
  'capacitor-no-energy':
    'The capacitor holds full level for {holdUpMs} ms; it smooths bass ripple and gives no energy.',
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
  'circuit-level.full-sine': 'full level',
  'circuit-level.heavy': 'dense bass',
  'circuit-level.silence': 'silence',
  'circuit-state': '{level}, {engine}',
  'cold-start':
    'In a cold start {voltageV} V are left at {name}, which stops below {dropOutV} V: it goes off and on again. Take its turn-on from where the start interrupts it.',
  'collapse-margin':
    'The supply would collapse at {marginTimes} times this power; the ripple of bass peaks at twice the mean.',
  'collapse-margin.driving':
    'At full level, driving: the supply would collapse at {collapseMarginTimes} times this power; the ripple of bass peaks at twice the mean.',
  'collapse-margin.loop': 'The supply would collapse at {marginTimes} times this power.',
  'converter-input': '{highestV} V reach the input of the {id}; its sheet allows {allowedV} V.',
  'converter-too-small':
    'At full level the amplifiers take {mostA} A at {outputV} V; the converter gives {ratedA} A: above that its voltage falls until they stop. {heavy} Take the next rating, less gain, or amplifiers for the voltage of the vehicle.',
  'converter-too-small.heavy': 'Even dense bass takes {heavyA} A.',
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
  'feed-collapse': 'There is no steady state: the amplifiers ask for {askedTimes} times what this run carries. {most}',
  'feed-collapse.loop': 'The load asks for {askedTimes} times what this loop can carry: the voltage collapses.',
  'feed-collapse.most': 'The source drives at most {maximumPowerW} W through these resistances.',
  'feed-collapse.nothing-left': 'There is no steady state: the source has nothing left for the amplifiers.',
  'governed-charging':
    'The vehicle sets its charging between {lowestSetV} and {highestSetV} V: with dense bass, driving, {name} gets {lowV} to {highV} V.',
  'ground-noise':
    'Supply ripple puts {noiseMv} mV into the shared ground, {levelDb} dB under the signal: share one ground point with the source unit or use differential inputs.',
  'high-voltage-orange':
    'If the vehicle has orange cables, leave them alone; whether it is a combustion, hybrid or electric vehicle was not told.',
  'late-cut-off':
    'With the engine off {name} stops by itself only when the battery rests at {stopsAtV} V; at {halfV} V it is half empty and may no longer start the engine. Stop by the clock.',
  'no-supply': 'Nothing feeds {name} at {when}. {why}',
  'no-supply.stopped': 'The input of {names} is too low: it stops.',
  'parasitic-drain': '{standbyMa} mA flow while switched off; 1 mA is the aim.',
  'power-bounded.supply':
    'No power is published for {loadOhm} Ω; current, cable and fuse are calculated for the {ratedPowerW} W at {ratedOhm} Ω, for no higher load draws more.',
  'rating-implausible.supply':
    '{claimedW} W is claimed, but {plausibleW} W is all its on-board fuses of {fuses} A pass at {ratedVoltageV} V with efficiency {efficiencyRatio}: current, cable and fuse are calculated for {plausibleW} W.',
  resistor: '{resistanceOhm} Ω, {ratedW} W',
  'sizing-above-nominal':
    'Currents are given at {systemVoltageV} V; at nominal {nominalV} V a regulated amplifier draws {morePercent} % more.',
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
    'One battery is {known}, the chemistry of the other is not said: read it on its label. Unless both are alike they must not be joined in parallel, so they were not counted as one. {remedy}',
  'unlike-batteries-parallel.charging':
    'they want different charging voltages, so one is overcharged or the other never fills',
  'unlike-batteries-parallel.volts':
    '{id} rests at {firstV} V and {otherId} at {secondV} V, and they are tied together: {flowA} A would run from one into the other. Tie only batteries of one voltage; between others belongs a charger or converter.',
  'fuse-in-return':
    'Fuse {id} lies in the return: when it opens, plus is still live and the current looks for another way home, through the screens of signal leads. A fuse belongs in the plus side, next to the source.',
  'unlike-batteries-parallel.circuit':
    '{id} ({chemistry}) and {otherId} ({otherChemistry}) are tied together: they do not want the same charging voltage. Join them by a charger made for the second one, with a fuse at each end, or take two of one kind.',
  'unlike-batteries-parallel.equalising':
    'about {flowA} A flow between them at rest, for hours, and the lead battery never fills',
  'unlike-batteries-parallel.known':
    'A {one} and a {other} battery must not be joined in parallel: {why}. They were not counted as one. {remedy}',
  'unlike-batteries-parallel.remedy':
    'Join them by a DC-DC charger made for the second battery, with a fuse at each end (arrangement `isolated`), or take two of one kind.',
  'unregulated-sizing':
    '{amplifier} does not regulate, so it draws most while the battery is being charged: {sizingA} A at {voltageV} V against {fullSineA} A at nominal voltage. Fuse and cable follow the {sizingA} A.'
} as const
