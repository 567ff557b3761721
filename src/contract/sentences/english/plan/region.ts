/** What the page of a region of drivers says. */
export const regionSentences = {
  'region.title': 'Which drivers would suit',
  'region.wish': 'The wish: {goal}.',
  'region.part.shelf': 'Shelf',
  'region.part.boxes': 'Boxes',
  'region.part.assumed': 'Assumed',
  'region.look-for': 'What to look for',
  'region.figure': 'On the data sheet',
  'region.from': 'from',
  'region.to': 'to',
  'region.resonance': 'fs, Hz',
  'region.total-q': 'Qts',
  'region.compliance': 'Vas, L',
  'region.travel': 'Xmax one way, mm',
  'region.power': 'rated power of one, W',
  'region.together':
    'The three ranges belong together: any driver within all of them gives away at most {toleranceDb} dB against the best, as the search of a plan weighs boxes. More travel and more power do no harm.',
  'region.built': 'What was built for it',
  'region.built-text':
    'A box was laid out for the best driver, which comes first, and for those at the corners of the ranges; the last columns are levels in dB {heard} at so many Hz, every limit kept.',
  'region.driver': 'fs / Qts / Vas',
  'region.box': 'box',
  'region.closed': '{netVolumeL} L, closed',
  'region.vented': '{netVolumeL} L at {tuningHz} Hz',
  'region.room': 'room, L',
  'region.taken': 'What else such a driver is taken to be',
  'region.piston': 'Sd, cm²',
  'region.coil': 'Re, Ω, coils joined',
  'region.rated': 'rated impedance, Ω',
  'region.inductance': 'Le, mH',
  'region.mechanical-q': 'Qms',
  'region.flange': 'flange, mm',
  'region.hole': 'hole, mm',
  'region.depth': 'depth behind the front, mm',
  'region.next':
    'With the sheet of a driver in hand ask for the plan: it computes with all its figures, and with the amplifier and the vehicle.'
} as const
