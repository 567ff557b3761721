/** BS 7671 Table 4F3A, flexible cords, direct or single-phase current, as reprinted by a cable seller (second-hand): mm², A. */
export const flexibleCords = [
  ['0.5', '3'],
  ['0.75', '6']
] as const

/** Its factors for 60 °C thermoplastic or thermosetting insulation: ambient °C, factor. */
export const cordFactors = [
  ['35', '0.91'],
  ['40', '0.82'],
  ['45', '0.71'],
  ['50', '0.58'],
  ['55', '0.41']
] as const
