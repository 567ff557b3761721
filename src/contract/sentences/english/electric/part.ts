/** Names of parts. */
export const partSentences = {
  'part.beside.amplifier': 'the amplifier',
  'part.chemistry.agm': 'AGM',
  'part.chemistry.flooded': 'flooded',
  'part.chemistry.gel': 'gel',
  'part.chemistry.lithium': 'lithium',
  'part.lead.screened': 'screened signal cable',
  'part.lead.twisted': 'twisted pair {areaMm2} mm², unscreened',
  'part.port-round': '{diameter} clear diameter',
  'part.port-slot': '{width} × {height} slot',
  'part.ports': '{portCount, plural, one {One port, {size}} other {# ports, {size} each}}',
  'part.screw.machine': 'machine screw M5 with T-nut',
  'part.screw.wood': 'pan-head wood screw 4.5 × 30 mm',
  'part.second-battery-name': '{capacityAh} A·h, {chemistry}'
} as const
