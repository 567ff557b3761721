/** What the room `amplifier` says. */
export const amplifierSentences = {
  'all-coils-driven':
    'Connect {coils} of each driver, with the same polarity: an open coil halves the force, a reversed one cancels it.',
  'amplifier-heat':
    'About {averageW} W of heat with music and {fullSineW} W with a full-level tone: free air around each amplifier, no carpet over it.',
  'amplifiers.more': '{amplifierCount} amplifiers',
  'amplifiers.one': 'one amplifier',
  bridged: 'bridged',
  'bridged-minimum-low':
    '{minimumBridgedOhm} Ω bridged puts {channelOhm} Ω on each channel, below the {minimumOhm} Ω of a channel: {leastOhm} Ω bridged is taken as the least. If the sheet allows {channelOhm} Ω a channel, give that as minimumOhm.',
  'bridged-power-derived':
    '{outputPowerW} W is twice the published power of one channel at {channelOhm} Ω; it holds if that figure was measured with all channels driven.',
  'bridged-terminals':
    'Both terminals of a bridged pair are live: neither may touch ground, the body of the car, or a terminal of another output.',
  'coil-advice': 'With {coils} the load would be {loadOhm} Ω {bridged} {each}, where {outputPowerW} W are published.',
  'coil-advice.dual': 'dual {coilOhm} Ω coils',
  'coil-advice.each': 'on each of {outputCount} outputs',
  'coil-advice.many': '{coilCount} {coilOhm} Ω coils',
  'coil-advice.quadruple': 'quadruple {coilOhm} Ω coils',
  'coil-advice.single': 'single {coilOhm} Ω coil versions',
  'coil-advice.triple': 'triple {coilOhm} Ω coils',
  'coils.all': 'all {coilCount} coils',
  'coils.both': 'both coils',
  'equal-gains':
    '{outputCount} outputs share the drivers: set every gain to the same voltage, every filter alike, and check that all cones move the same way.',
  'impedance-dip':
    'A load rated {loadOhm} Ω may dip to {dipOhm} Ω, below the {minimumOhm} Ω of the output; amplifiers rated for a nominal load are meant for this, one without thermal protection is not.',
  'load.bridged': '{loadOhm} Ω bridged',
  'load.plain': '{loadOhm} Ω',
  'match-advice.below': '{loadOhm} Ω lies below the {lowestOhm} Ω this output may drive: not to be wired.',
  'match-advice.bound': 'At least {outputPowerW} W, by the voltage of {ratedPowerW} W at {ratedOhm} Ω.',
  'match-advice.equal': 'The amplifier gives what the drivers take: set the gain to it, without an allowance.',
  'match-advice.less':
    "{ratioPercent} % of the drivers' rating: set the gain without an allowance, so that loud passages do not clip.",
  'match-advice.more':
    "{ratioPercent} % of the drivers' rating: set the gain to the drivers' power, not to the amplifier's.",
  'match-advice.over':
    "{ratioTimes} times the drivers' rating: usable only with the gain set to the drivers' power and a protective high-pass; a slip of the gain overheats the coils.",
  'match-advice.quiet':
    "{ratioPercent} % of the drivers' rating: quiet for these drivers, yet even a fully clipped output stays within their heat rating. Clipping still sounds bad: set the gain without an allowance.",
  'match-advice.under':
    "{ratioPercent} % of the drivers' rating: turned up until it clips, the output approaches a square wave of twice the power and can overheat the coils. Set the gain without an allowance.",
  'match-advice.unknown':
    'No continuous power is published for {loadOhm} Ω {bridged} or a load below it that is allowed (published: {ratings}). It is not scaled to a lower load: ask the maker.',
  'no-allowed-load':
    'The highest load of these drivers on {amplifiers} is {highestOhm} Ω; the outputs need {lowestOhm} Ω or more. {otherCoils}',
  'output-touch-voltage':
    'The loudspeaker terminals reach {targetVoltageV} V RMS, above the {touchLimitV} V below which UN R100 asks no protection: insulate every joint, clip probes on with the amplifier off, hands off while it plays.',
  'power-bounded':
    'No power is published for {loadOhm} Ω. The voltage of {ratedPowerW} W at {ratedOhm} Ω is reached there too, so it gives at least {boundW} W; the supply is sized for {ratedPowerW} W, for no higher load draws more. {otherCoils}',
  'power-unknown':
    'No continuous power is published for any load these drivers can present ({loads}). It is not scaled to a lower load, so nothing is matched: ask the maker. {otherCoils}',
  'rating-below-minimum':
    'A power is published for {loadOhm} Ω {bridged}, below the minimum load of {lowestOhm} Ω; the minimum is obeyed.',
  'rating-implausible':
    '{claimedW} W are claimed, but {plausibleW} W is all that on-board fuses of {fuses} A pass at {ratedVoltageV} V {loss}: no more than that is counted on.',
  'rating-implausible.efficiency': 'with efficiency {efficiencyRatio}',
  'rating-implausible.no-loss': 'even without any loss',
  'ratings-contradict':
    '{powerW} W at {loadOhm} Ω is more than {otherPowerW} W at {otherLoadOhm} Ω allow: at most {mostW} W at the same voltage. One of them is no continuous power; read which of the two was measured as RMS.'
} as const
