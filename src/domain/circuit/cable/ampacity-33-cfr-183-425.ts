/** Allowable current of insulated stranded copper conductors, as a US federal regulation prints it. */

export const ampacity33Cfr183425 = {
  source: '33-cfr-183-425',
  table: 'Table 5, allowable amperage of conductors',
  ambientC: 30,
  unit: 'A',
  insulationC: [60, 75, 80, 90, 105, 125, 200],
  rows: [
    ['18', [10, 10, 15, 20, 20, 25, 25]],
    ['16', [15, 15, 20, 25, 25, 30, 35]],
    ['14', [20, 20, 25, 30, 35, 40, 45]],
    ['12', [25, 25, 35, 40, 45, 50, 55]],
    ['10', [40, 40, 50, 55, 60, 70, 70]],
    ['8', [55, 65, 70, 70, 80, 90, 100]],
    ['6', [80, 95, 100, 100, 120, 125, 135]],
    ['4', [105, 125, 130, 135, 160, 170, 180]],
    ['3', [120, 145, 150, 155, 180, 195, 210]],
    ['2', [140, 170, 175, 180, 210, 225, 240]],
    ['1', [165, 195, 210, 210, 245, 265, 280]],
    ['1/0', [195, 230, 245, 245, 285, 305, 325]],
    ['2/0', [225, 265, 285, 285, 330, 355, 370]],
    ['3/0', [260, 310, 330, 330, 385, 410, 430]],
    ['4/0', [300, 360, 385, 385, 445, 475, 510]]
  ]
} as const

/** Note 2: conductors that carry current in one bundle, from `from` on. */
export const bundling33Cfr183425 = {
  source: '33-cfr-183-425-note-2',
  table: 'Table 5 note 2; the regulation applies it from 50 V, here at any voltage',
  rows: [
    [1, 1],
    [3, 0.7],
    [4, 0.6],
    [7, 0.5],
    [25, 0.4]
  ]
} as const
