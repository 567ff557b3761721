/** Terminal numbers of vehicle wiring. */

export const terminalsDin72552 = {
  standard: 'DIN 72552',
  /** Rows marked `memory` were recalled, the others read in reprints. */
  status: 'second-hand',
  rows: [
    ['15', 'battery positive through the ignition switch', 'reprint'],
    ['30', 'battery positive, unswitched', 'reprint'],
    ['30a', 'from the second battery, or 12/24 V changeover', 'reprint'],
    ['31', 'return to battery negative or body', 'reprint'],
    ['31b', 'switched return', 'reprint'],
    ['58', 'lights and illumination', 'memory'],
    ['75', 'accessory position, radio', 'memory'],
    ['85', 'relay coil, negative end', 'reprint'],
    ['86', 'relay coil, positive end', 'reprint'],
    ['87', 'relay output', 'reprint']
  ]
} as const
