/** Least modulus in bending by class of thickness, up to and with so many millimetres: EN 622-5, MDF, dry; from memory. */
export const mdfModulusRecalled = [
  [9, 2700],
  [12, 2500],
  [19, 2200],
  [30, 2100],
  [45, 1900]
] as const

/** The same of EN 312, type P2; from memory. */
export const particleboardModulusRecalled = [
  [13, 1800],
  [20, 1600],
  [25, 1500],
  [32, 1350]
] as const

/** Whole sheets as they are sold, length × width [mm]: feet by fives and fours, or a press of 2.07 m; common practice, no source. */
export const sheetsSold = {
  mdf: ['2440 × 1220', '2800 × 2070', '3050 × 1220'],
  'birch-plywood': ['2440 × 1220', '2500 × 1250', '3050 × 1525', '1525 × 1525'],
  'poplar-plywood': ['2440 × 1220', '2500 × 1220'],
  particleboard: ['2800 × 2070', '2620 × 2070']
} as const
