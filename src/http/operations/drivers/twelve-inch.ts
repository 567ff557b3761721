/** An invented twelve-inch driver, coils already joined, for the examples of the acoustic resources. */
export const twelveInch = {
  fsHz: 29,
  qms: 5.8,
  qes: 0.44,
  vasL: 58,
  sdCm2: 490,
  reOhm: 3.4,
  leMh: 1.6,
  xmaxMm: 14,
  powerW: 600
} as const
