/** Steps before the first cut. */
export const readySentences = {
  'ready.ask-your-insurer-and-your-inspection': 'Ask your insurer and your inspection body what they want to see.',
  'ready.coils-of-one-kind-agree-to': 'Coils of one kind agree to 10 %.',
  'ready.compare-with-the-plan-before-a': 'Compare with the plan before a board is bought.',
  'ready.cut-out-and-flange-within-1': 'Cut-out and flange within 1 mm of the plan.',
  'ready.cut-out-flange-depth-and-screw':
    'Cut-out, flange, depth and screw circle of every driver, the terminals of the amplifier, the cup.',
  'ready.every-figure-that-the-plan-took':
    'Every figure that the plan took instead of your handbook is replaced by the one you found.',
  'ready.firm-trestles-at-the-height-of':
    'Firm trestles at the height of your hips, light, clamps, extraction at the machine; nobody else in the dust.',
  'ready.first-aid-box-and-extinguisher-within': 'First-aid box and extinguisher within reach.',
  'ready.follow-it-with-hand-and-lamp':
    'Follow it with hand and lamp from the battery to the amplifier: a grommet the maker fitted, a place for the fuse, thick body metal for a ground point.',
  'ready.follow-the-way-of-the-cable': 'Follow the way of the cable',
  'ready.lay-a-string-along-it-and': 'Lay a string along it and measure the string.',
  'ready.look-for-what-this-plan-was':
    'Look for what this plan was not told: a gas tank, mains wiring on board, a battery sensor, 48 V, a second battery. Where there is one, give it to the plan or ask its workshop before you open anything.',
  'ready.look-up-how-the-battery-comes':
    'Look up how the battery comes off and what to note before (radio code, windows), how long the airbags need to discharge, what the lashing eyes hold, and how much the vehicle may carry.',
  'ready.measure-the-parts-before-the-wood': 'Measure the parts before the wood',
  'ready.measure-the-place': 'Measure the place',
  'ready.measure-the-resistance-of-each-voice':
    'Measure the resistance of each voice coil. What differs goes into the plan first.',
  'ready.out-of-doors-upwind-of-the': 'Out of doors, upwind of the saw, a mask does without an extractor.',
  'ready.place-and-opening-take-the-outer': 'Place and opening take the outer size of the plan; read the tape twice.',
  'ready.read-the-handbook-of-the-vehicle': 'Read the handbook of the vehicle',
  'ready.set-up-the-bench': 'Set up the bench',
  'ready.the-mask-fits-no-air-passes': 'The mask fits: no air passes beside the nose.',
  'ready.the-string-is-no-longer-than':
    'The string is no longer than the cable of the plan; else ask for the plan again with its length.',
  'ready.width-height-and-depth-of-the':
    'Width, height and depth of the place, and the opening at its narrowest; wheel arches, hinges, hatches and lashing eyes.'
} as const
