/** Pins of the usual connectors behind a music source. */

export const connectorIso10487 = {
  standard: 'ISO 10487',
  /** As three descriptions list them; some makes exchange A4 and A7, so measure before connecting. */
  status: 'second-hand',
  rows: [
    ['A4', 'battery positive, permanent'],
    ['A5', 'switched 12 V output for aerial or amplifier, 150 to 300 mA'],
    ['A6', 'illumination'],
    ['A7', 'positive through the ignition switch'],
    ['A8', 'ground'],
    ['B1', 'right rear +'],
    ['B2', 'right rear -'],
    ['B3', 'right front +'],
    ['B4', 'right front -'],
    ['B5', 'left front +'],
    ['B6', 'left front -'],
    ['B7', 'left rear +'],
    ['B8', 'left rear -']
  ],
  /** What the switched output gives for certain, and at most [A]. */
  switchedOutputA: [0.15, 0.3]
} as const
