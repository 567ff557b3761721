/** What the room `plan` says. */
export const planSentences = {
  'box-restraint':
    'In a crash at 20 g the {massKg} kg of the box pull with {crashForceN} N, under hard braking with {drivingForwardN} N. Bolt it through load plates to the body structure; of straps it takes at least {strapCount}, each with its eyes good for {weakestN} N, none steeper than {strapSlopeDeg}° to the floor or more than {strapSpreadDeg}° aside. Never use child-seat anchors, belt or seat bolts. A yardstick, not proved for a crash.',
  'closed-box-high-pass':
    'At {powerW} W the cone of this closed box needs the high-pass at {cornerHz} Hz; without it the cone reaches Xmax at {unfilteredPowerW} W. {cost}',
  'closed-box-high-pass.resonance': 'The box resonates at {fcHz} Hz.',
  'closed-box-high-pass.takes-bass':
    'It lies above half the resonance of the box, {fcHz} Hz, and takes bass that the cabin would have given: a smaller box or less power keeps it.',
  'figure.qtc': '{value}',
  'figure.tuning': '{value} Hz',
  'figure.volume': '{value} l',
  'leaflet-box':
    'The box is built as the leaflet says, {box}, taken as air beside driver and port. Without fs, Q and Vas nothing can be said of its level, how low it plays, how far the cone moves or whether it suits the driver{port}. Ask the maker for them, or measure them, before you cut.',
  'leaflet-box.closed': '{volume}',
  'leaflet-box.port': '; the port is as large as a cone of this size may need',
  'leaflet-box.vented': '{volume} tuned to {tuningHz} Hz',
  'list.and': '{first} and {rest}',
  'list.clauses': '{first}; {rest}',
  'list.commas': '{first}, {rest}',
  'list.or': '{first} or {rest}',
  'no-design-found': 'No combination keeps every limit; the rejections name the limit each breaks and by how much.',
  'no-speaker-cable.inside':
    'No wire from 16 to 8 AWG carries the {currentA} A of each driver inside the box: it is not in this bill. Take drivers or an amplifier that work at a higher load.',
  'not-as-asked': '{what}: {asked} asked, {built} built.',
  'not-as-asked.closed': 'Kind: {asked} asked, a closed box is built.',
  'not-as-asked.gain': 'Gain: {askedW} W asked, {setW} W set; amplifier and drivers bear no more.',
  'not-as-asked.port': 'a {portShape} port was',
  'not-as-asked.tuning': 'a tuning of {tuningHz} Hz was',
  'not-as-asked.vented': 'Kind: a closed box with Qtc {askedQ} was asked, a vented one is built.',
  'not-as-asked.wish':
    'Wish: of the boxes searched for `{goal}` none could be laid out in this space; an alignment of the textbooks is built instead.',
  'not-planned.others': 'Signal leads, loudspeakers and their wires of {names} are not planned and not in this bill.',
  'not-planned.second-battery':
    'No cable passes for the lead of the second battery: its lead, fuse and ground are not planned and not in this bill. It is a source and needs its own fuse. The voltages are those without it.',
  'of-branch': '{name}: {message}',
  'port-shape.round': 'round',
  'port-shape.slot': 'slot',
  'seams-out-of-reach':
    'The last seams cannot be reached once "{name}" is on: lay a full bead of sealant before it goes on.',
  sentences: '{all}',
  'solvent-vapour':
    'Spray adhesive and paint are extremely flammable and their vapour is heavier than air: use them outdoors, no flame, no smoking, no powered amplifier near; let them flash off before the box or the car is closed.',
  'what.qtc': 'Qtc',
  'what.tuning': 'Tuning',
  'what.volume': 'Net volume',
  'wood-dust':
    'Wood dust can cause asthma and, hardwood above all, cancer of the nose: extract it at the tool, wear a P3 (P100) mask, work out of doors where you can. Recommended limit 1 mg/m³ (NIOSH), hardwood 2 mg/m³ in the EU; board also gives off a little formaldehyde.',
  'cones-out-of-sight':
    'Behind the front nobody sees the cones, the chambers swallow the knock of one that strikes, and a coil that burns is smelt late. Set gain and filters just as planned, smell at the port after the first loud minutes, and at the first changed sound switch off and take the front off.'
} as const
