/** What the room `signal` says. */
export const signalSentences = {
  'accessory-turn-on':
    'An accessory feed turns the amplifier on with the ignition, music or not; tap it behind a fuse of its own and never at an airbag, engine or brake circuit.',
  'airbag-looms':
    'Loudspeaker wires are often picked up in doors and pillars, beside airbag and belt-tensioner looms: identify every wire by the vehicle maker’s plan, touch no yellow connector, and leave the rest to a qualified workshop.',
  'allowance-clips':
    'An allowance of {quietRecordingDb} dB for quiet recordings clips loud ones: average power, and the heat in the coils, can rise by up to {quietRecordingDb} dB.',
  'boost-after-gain':
    'The reading leaves {boostDb} dB for a boost that is switched on later; any further boost needs the gain lower by as much.',
  'bridge-tied-source': 'Both wires of the loudspeaker output rest at half the supply. {remedy}',
  'bridge-tied-source.converter': 'The line-output converter must be isolated or differential at its input.',
  'bridge-tied-source.differential':
    'Connect both wires of each output to a differential input, never one of them to ground.',
  'bridge-tied-source.ground':
    'This input ties its minus to ground and would short the source: use an isolated line-output converter.',
  'connector-pins':
    'Most, not all, source connectors follow ISO 10487 (B1 to B8 loudspeakers, A5 switched output; some makes exchange A4 and A7): measure before connecting.',
  'differential-output':
    'A differential output on a single-ended input: leave its minus open or use an isolator, as the maker says; never tie it to ground.',
  'factory-processing':
    'The vehicle’s own source may equalise, delay and cut bass as the volume rises: measure its response at the volume in use before trusting filters and gain.',
  'ground-loop':
    'If you hear alternator whine: first one ground point for source and amplifier, then a differential input, then an isolator. Never take off a safety or vehicle ground.',
  'input-too-high':
    '{levelV} V reach an input for at most {highestV} V: it may clip before the gain control; attenuate by {excessDb} dB.',
  'input-too-high.speaker-level':
    '{sourceV} V are more than the {speakerLevelV} V of the speaker-level input: a line-output converter stands between.',
  'input-too-low':
    '{levelV} V reach the input, {lowestV} V are needed: full gain gives {sharePercent} % of the power, with more noise.',
  'no-protective-high-pass':
    'Nothing says below which frequency the cone needs protection: give the tuning or the excursion limit of the response. A vented box without a high-pass lets the cone run away below its tuning.',
  'output-overloaded':
    '{id} gives at most {limitMa} mA, and {currentMa} mA hang on it: put a relay between, fed behind a fuse of its own.',
  'relay-coil-load':
    'The relay coil draws {coilCurrentMa} mA, more than the {limitMa} mA of the switched output: take a relay with a coil of higher resistance or a transistor switch.',
  'signal-sensing':
    'Signal sensing may cut the first bars, may not switch off, and may drop out when a start-stop system mutes the source: measure the parked current after a night.',
  'tone-outside-band':
    'A tone of {toneHz} Hz lies outside the band of the filters: switch them off for the setting, or the gain comes out too high.',
  'turn-on-overload': '{loadMa} mA are more than the {limitMa} mA of the switched output: it drives a relay instead.',
  'turn-on.accessory':
    'The source has no switched output and the amplifier does not sense: an accessory feed switches a relay.',
  'turn-on.drawn': '{loadMa} mA of {limitMa} mA are drawn.',
  'turn-on.other-voltage':
    'The switched output carries {vehicleV} V, the turn-on terminal takes {amplifierV} V: it drives a relay that is fed by the converter.',
  'turn-on.sensing': 'The source has no switched output; the amplifier senses the signal.'
} as const
