/** What the room `refusals-electric` says. */
export const refusalsElectricSentences = {
  'rating-kind.max':
    'a maximum figure states neither duration nor distortion; the same supply across the same load gives twice the power as a square wave that it gives as a sine',
  'rating-kind.peak':
    'a peak figure is the power of one instant; a sine peaks at twice its own average, and how long the peak lasts or how distorted it is nobody states',
  'rating-kind.total':
    'a total figure adds channels or drivers without saying how many, at which load and whether all at once',
  'refused.a-a-fuse-opens-on-the': 'A {fuseA} A fuse opens on the {loadA} A the load draws.',
  'refused.a-at-v-is-less-than': '{inputCurrentA} A at {ratedVoltageV} V is less than the {powerW} W that come out.',
  'refused.a-capacity-says-what-a-battery':
    'A capacity says what a battery drives into a short circuit only with its kind.',
  'refused.a-capacity-says-what-a-battery.2':
    'The capacity of a flooded battery says too little of its resistance: give the cold cranking current on its label.',
  'refused.a-converter-gives-the-same-at':
    'A converter gives the same at any engine speed: idle and hot figures belong to an alternator. Give what it really gives as ratedA.',
  'refused.a-drop-limit-of-v-reaches':
    'A drop limit of {dropLimitV} V reaches {share, select, half {half the source} other {the source}} of {sourceV} V.',
  'refused.a-high-pass-at-hz-and':
    'A high-pass at {cornerHz} Hz and a low-pass at {otherCornerHz} Hz leave no band between them.',
  'refused.a-is-no-standard-rating-a': '{fuseA} A is no standard rating. {next}',
  'refused.a-loudspeaker-cable-is-chosen-by': 'A loudspeaker cable is chosen by its current: give totalPowerW as well.',
  'refused.a-loudspeaker-output-needs-levelv-or':
    'A loudspeaker output needs levelV, or its continuous powerW with the loadOhm it is rated for.',
  'refused.a-second-battery-needs-the-first': 'A second battery needs the first one described too.',
  'refused.battery-shorted':
    'Without any load {leftV} V are left at the poles of {id}: its plus and minus are exchanged, or a way joins them. Look at every cable, fuse and link between the two.',
  'refused.capacitor-voltage':
    'Capacitor {id} is made for {ratedVoltageV} V, and {highestV} V may stand across it: take one for more.',
  'refused.more-at-idle':
    'It gives {idleA} A at idle and {drivingA} A when driving: it cannot give more at idle. Are the two exchanged?',
  'refused.charging-outside-its-ends':
    'It holds {setV} V, outside the {lowestSetV} to {highestSetV} V between which it is governed.',
  'refused.begins-and-ends-at-the-same': '{id} begins and ends at the same point {from}.',
  'refused.by-policy': 'and may be fused at {fuseA} A by the policy {policy}',
  'refused.coilsohm-has-entries-but-drivers-with':
    'coilsOhm has {coilsOhm} entries, but {driverCount} drivers with {coilsPerDriver} coils each have {count}.',
  'refused.does-not-say-its-series-write':
    '{designation} does not say its series: write "4 AWG", "SAE 4" or "25 mm2". SAE sizes are 3 to 11 % smaller.',
  'refused.feeds-itself':
    'The output of {id} leads back to its own input: current would go round and feed nothing. Join its output to what it shall feed alone.',
  'refused.fuse-for-too-few-volts':
    'It is made for {standsV} V, and {highestV} V may stand across it: its arc may not go out. Take the same rating of {types}, or one whose sheet says {highestV} V or more.',
  'refused.fuses-are-made-for-v-a':
    '{types} fuses are made for {highestV} V; a {systemVoltageV} V system needs {neededV} V, or the arc may not go out.',
  'refused.give-coilohm-when-all-coils-are':
    'Give coilOhm when all coils are alike, or coilsOhm with one entry a coil.',
  'refused.give-either-coilohm-or-coilsohm-not': 'Give either coilOhm or coilsOhm, not both.',
  'refused.give-either-powerw-at-the-wired': 'Give either powerW at the wired load or ratings with loadOhm.',
  'refused.give-the-amplifier-s-class-its':
    'Give the amplifier’s class, its efficiency or its input current at rated output.',
  'refused.give-the-continuous-rms-power-at':
    'Give the continuous RMS power at the wired load, or ratings with loadOhm.',
  'refused.give-the-drop-limit-in-volts': 'Give the drop limit in volts or in percent, not both.',
  'refused.give-the-efficiency-or-the-measured': 'Give the efficiency or the measured input current, not both.',
  'refused.give-the-level-of-the-loudspeaker':
    'Give the level of the loudspeaker output in volts, or its power with its load, not both.',
  'refused.give-the-output-at-idle-in':
    'Give the output at idle in amperes or as a share of the rated output, not both.',
  'refused.give-the-power-drawn-at-full': 'Give the power drawn at full sine, or its current.',
  'refused.give-the-power-drawn-or-the': 'Give the power drawn or the current, not both.',
  'refused.give-the-power-drawn-the-current': 'Give the power drawn, the current, or power and class: one of them.',
  'refused.idle-output-twice': 'Give the speed of the shaft at idle, or the output there, not both.',
  'refused.insulation-of-class-c-cannot-carry':
    '{insulationC} °C insulation carries nothing at {ambientC} °C: use a higher class or a cooler route.',
  'refused.is-no-size-of-the-series': '{designation} is no size of the series {series}: {sizes}.',
  'refused.is-not-of-the-series-awg':
    '{designation} is not of the series {system}; AWG, SAE and mm² are different sizes.',
  'refused.lies-outside-the-ampacity-table-18':
    '{designation} lies outside the ampacity table, 0.5 mm² to 4/0 AWG (107 mm²).',
  'refused.min-at-25-a-and-ah':
    '{reserveMinutesMin} min at 25 A and {capacityAh} Ah over {ratedHours} h do not belong to one battery.',
  'refused.more-volts-than-said':
    '{id} would see {voltageV} V, and its side of the circuit is said to have {nominalV} V: look at the voltages of batteries and charging, and give each battery of a series its own openCircuitV.',
  'refused.next-rating': 'The next is {ratingA} A.',
  'refused.no-fuse-link-of-the-allowed':
    'No fuse-link of the allowed families reaches {lowestA} A: split the load into runs with a fuse each.',
  'refused.no-published-power':
    'No published power for {load} Ω or below (published: {published}); power is not scaled to a lower load.',
  'refused.nothing-joins-the-point-of-to':
    'Nothing joins the point {lost} of {id} to the first battery: join it by a cable, a fuse or a link, or leave it out.',
  'refused.nothing-to-draw':
    'No way of joining these coils reaches the minimum load, so there is nothing to draw; the JSON answer lists the loads.',
  'refused.one-channel-cannot-be-bridged-it':
    'One channel cannot be bridged: it takes two. Give the number of channels, or leave this out.',
  'refused.one-direct-current-resistance-stands-for':
    'One direct-current resistance stands for like coils only; these coils differ.',
  'refused.only-continuous-rms-power-can-be':
    'Only continuous RMS power can be matched: {kind}. Look for watts RMS at a stated load; ANSI/CTA-2006 rates amplifiers at 14.4 V and 1 % distortion.',
  'refused.parallel-runs': 'no size of this series does here: use parallel runs with a fuse each',
  'refused.peak-maximum-and-total-powers-fix':
    'Peak, maximum and total powers fix no current: their duration, distortion and driven channels are undefined. Give the continuous RMS power.',
  'refused.poles-exchanged':
    '{id} would see its poles exchanged: join its plus to the plus side and its minus to the minus side.',
  'refused.ranking-by-needs-the-of-every': 'Ranking by {rankBy} needs the {rankBy} of every amplifier.',
  'refused.say-the-insulation': 'Say of what the insulation is.',
  'refused.stands-c-once-so-none-is':
    '{material} stands {standsC} °C once, so none is of class {insulationC} °C. {ask}',
  'refused.the-effect-of-the-cable-on':
    'The effect of the cable on qes needs the direct-current resistance of the load, reOhm.',
  'refused.the-load-draws-a-but-carries':
    'The load draws {loadA} A, but {designation} carries {ampacityA} A for good here, whatever its fuse: {advice}.',
  'refused.the-load-draws-a-but-carries.2':
    'The load needs a {ratingA} A fuse, but {designation} may be fused at {highestFuseA} A here: {advice}. A smaller fuse would open on the load, a larger one would not protect the cable.',
  'refused.the-name-is-used-twice': 'The name {id} is used twice.',
  'refused.the-other-power-at-the-same': 'The other power at the same load.',
  'refused.the-vehicle-has-v-and-the':
    'The vehicle has {systemVoltageV} V and the converter gives the same voltage; leave it out. A second battery is charged by what secondBattery asks for.',
  'refused.two-of-the-amplifiers-are-called':
    'Two of the amplifiers are called {name}; the answer could not tell them apart.',
  'refused.unlike-coils-are-worked-out-for':
    'Unlike coils are worked out for at most {mostCoilsListedInFull} coils; wire alike coils to sub-groups and ask for each.',
  'refused.unstated': 'an unstated',
  'refused.use-stronger': 'use {designation}, which carries {ampacityA} A {policy}',
  'refused.v-is-no-12-24-or':
    '{systemVoltageV} V is no 12, 24 or 48 V system (10 to 16, 20 to 32, 40 to 58 V): its rest, charging and drop-out voltages are not known here.',
  'refused.w-and-w-are-both-stated':
    '{powerW} W and {otherPowerW} W are both stated for {loadOhm} Ω {bridged}; give the continuous one.',
  'refused.write-awg': 'write 40 to 1, 1/0, 2/0, 3/0 or 4/0 before AWG',
  'refused.write-mm2': 'write its section, 0.05 to 500, before mm2'
} as const
