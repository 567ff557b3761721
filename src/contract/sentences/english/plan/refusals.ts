/** What the room `refusals-plan` says. */
export const refusalsPlanSentences = {
  refused: '{field} {given}: {meaning} {bounds}',
  'refused.a-slot-follows-four-walls':
    'A slot starts in the front and follows the walls of a rectangular box or a wedge: ask for a round port.',
  'refused.the-shape-asked-has-no-use': 'The shape asked for has no use for this: leave one of them out.',
  'refused.the-shape-asked-needs-its-outline': 'The shape asked for needs this.',
  'refused.a-room-is-round-or-free': 'A room is round or has corners: give the diameter or the footprint.',
  'refused.staves-are-mitred-all-round': 'The staves of a round box are mitred, all of one board: leave this out.',
  'refused.a-closed-box-has-no-port': 'A closed box has no port; leave this out, or let vented boxes in.',
  'refused.a-closed-box-has-no-port.vented': 'A closed box has no port; leave this out, or ask for a vented box.',
  'refused.a-second-battery-behind-a-converter':
    'A second battery behind a converter from another voltage is not planned: leave one of the two out, or charge that battery by a charger for it and plan the amplifiers without the converter.',
  'refused.a-tight-box-is-closed-leave':
    'A tight box is closed; leave out what belongs to a port, or choose another wish.',
  'refused.a-vented-box-has-no-qtc': 'A vented box has no Qtc to ask for; leave it out, or ask for a closed box.',
  'refused.a-volume-or-qtc-that-is':
    'A volume or Qtc that is given leaves nothing to search; give the wish or the figure.',
  'refused.allowed': 'Allowed: {bounds}.',
  'refused.cannot-be-compared-without-its': '{name} cannot be compared without its {figure}.',
  'refused.conflicting-input': 'Two inputs exclude or contradict each other.',
  'refused.drivers-counts-amplifiers-kinds-of-box':
    '{driverCount} drivers × {counts} counts × {amplifierCount} amplifiers × {kinds} kinds of box are {all} to weigh; at most {maximum} in one call.',
  'refused.fuse-voltage': 'A fuse is rated for less than the voltage it would have to break.',
  'refused.given': '= {value} {unit}',
  'refused.given-twice':
    'The amplifier is given {field} {own} and, in draw, {older}; give it once, beside the ratings.',
  'refused.insulation-below-ambient': 'The insulation of a cable may not get as hot as the place it lies in.',
  'refused.last-part': 'Of {parts} parts the last has index {last}.',
  'refused.part-of-another-request': 'The part is of another request.',
  'refused.part-does-not-add-up': 'What stands and what was dropped is not what was weighed.',
  'refused.first-part-of': 'The first part is one of {parts}.',
  'refused.parts-counted': 'There are {parts} parts, counted from 0.',
  'refused.part-twice': 'Part {part} is there twice.',
  'refused.parts-missing': 'Of {parts} parts these are missing: {absent}.',
  'refused.no-such-sentence': 'No caution of the catalogue says this.',
  'refused.no-such-driver': 'The search has no such driver.',
  'refused.no-such-amplifier': 'The search has no such amplifier.',
  'refused.no-such-caution': 'The part has no such caution.',
  'refused.no-box-fits': 'No box fits.',
  'refused.no-driver-suits':
    'No driver of this size finds a box in this space. Ask for smaller or fewer drivers, or give more room.',
  'refused.leaflet-without-size':
    'A port needs the size of the cone: give the nominal diameter, Sd, or the area of the port.',
  'refused.least': 'at least {bound} {unit}',
  'refused.missing-input': 'The inputs given do not determine what was asked for.',
  'refused.most': 'at most {bound} {unit}',
  'refused.no-solution': 'The inputs are valid, but no design satisfies them.',
  'refused.not-positive': 'A quantity that must be a finite number above zero is not.',
  'refused.one-amplifier-on-one-battery-has':
    'One amplifier on one battery has no distribution block and no branch; leave this out, or give the other amplifiers, a second battery or a converter.',
  'refused.one-way-excursion': 'one-way excursion',
  'refused.other-place': 'The other place of the same figure.',
  'refused.out-of-range': 'A quantity lies outside the range in which the calculation holds.',
  'refused.qtc-belongs-to-a-closed-box':
    'Qtc belongs to a closed box, the port to a vented one; give those of one kind.',
  'refused.request': 'the request',
  'refused.rms-rating': 'continuous RMS rating',
  'refused.two-of-the-are-called-the':
    'Two of the {list, select, drivers {given drivers} other {given amplifiers}} are called {name}; the answer could not tell them apart.',
  'refused.undefined-rating': 'A power rating is not a continuous RMS figure and cannot be compared with one.',
  'refused.unknown-designation': 'A designation names no member of its published series.',
  'refused.volume-and-qtc-of-a-closed': 'Volume and Qtc of a closed box follow from each other; give one of them.',
  'refused.waiting': 'This part needs {what}, which the plan does not have.',
  'refused.where-price-counts-every-driver-and': 'Where price counts, every driver and every amplifier needs one.',
  'refused.with-every-weight-zero-there-is': 'With every weight zero there is no order.',
  'refused.a-box-has-a-port-or-radiators':
    'A box has a port or passive radiators: leave out what belongs to the other.',
  'refused.radiators-on-both-sides-come-in-pairs':
    'Passive radiators on both sides come in pairs: give an even number, or one face.',
  'refused.a-box-with-radiators-needs-theirs':
    'A box with passive radiators needs their sheet: area, moving mass, compliance (or resonance, or Vas), travel one way, hole, flange and depth of one.{region}',
  'refused.radiators-sweep':
    ' Look for radiators that together sweep {volumeL} L one way, area times travel: about twice what the drivers do (common practice, no source).',
  'refused.no-box-for-the-radiators':
    'No kind of box asked for has passive radiators: leave them out, or let boxes with them in.',
  'refused.a-front-chamber-belongs-to-a-band-pass':
    'A front chamber belongs to a band-pass: ask for that kind, or leave it out.',
  'refused.a-band-pass-has-tubes':
    'The port of a band-pass is a tube, and not on the back: a slot would cross the divider, and the back closes the other chamber.',
  'refused.a-band-pass-has-its-drivers-between':
    'The drivers of a band-pass stand between its two chambers: leave out their face.',
  'refused.a-band-pass-has-four-walls':
    'A band-pass is planned between four walls with an upright front: another kind of box fits this room.'
} as const
