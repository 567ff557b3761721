/** Allowable current of thin flexible copper conductors, which the regulation for boats does not list. */

export const flexibleCordsBs7671 = {
  source: 'bs-7671-4f3a',
  table: 'Table 4F3A, flexible cords, direct current, 60 °C insulation at 30 °C; Table 5 holds from 18 AWG on',
  /** First column mm², second A. */
  rows: [
    [0.5, 3],
    [0.75, 6]
  ]
} as const
