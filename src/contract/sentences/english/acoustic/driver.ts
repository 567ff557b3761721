/** What the room `driver` says. */
export const driverSentences = {
  'driver-figures-disagree': '{relation} does not hold on this sheet: {detail}.',
  'driver-unit-slip': '{detail}. Nothing was changed: check the sheet and send the right figure.',
  'driver-value-unusual': '{symbol} {valueRatio} {unit} lies outside the usual {lowRatio} to {highRatio} {unit}.',
  'driver-value-unusual.density':
    'Mms over Sd is {densityKgPerM2} kg/m²: unusual for a bass driver; Vas, Sd or Mms may be wrong.',
  'inductance-missing': 'No coil inductance is given: levels above about 80 Hz will look better than they are.',
  'rated-impedance-odd':
    'Re {reOhm} Ω is {ratio} of the rated {ratedImpedanceOhm} Ω, usually {lowRatio} to {highRatio}: perhaps {hint}.',
  'rated-impedance-odd.parallel': 'a rating in series beside the Re of coils in parallel or of one',
  'rated-impedance-odd.series': 'a rating per coil beside the Re of coils in series',
  'rating-assumed':
    'The sheet gives no power rating: {powerW} W are assumed from the size of the cone, a low guess that spares the coil. The gain is set by it; ask the maker before you play louder.',
  'travel-assumed':
    'The sheet gives no Xmax: {xmaxMm} mm one way is assumed, a low guess that spares the cone. Filter and gain are set by it; ask the maker before you play louder.',
  'sensitivity-disagrees':
    'The sheet says {statedDb} dB at {drive}, its parameters give {computedDb} dB in half space at 1 m: 1 W and 2.83 V may be mixed up, or the figure is a peak or an in-car one.'
} as const
