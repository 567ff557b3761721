/** A converter for amplifiers of 12 V, where its sheet is not at hand. */
export const converterJudgement = {
  outputV: { value: 13.6, why: 'volts that a converter for 12 V units holds: 13.2 to 13.8 are usual' },
  efficiency: { value: 0.88, why: 'output over input of a converter: data sheets say 0.82 to 0.92' },
  idleW: { value: 4, why: 'a converter takes about 4 W with nothing at its output' },
  /** Outputs that are sold [A]. Common practice, no source. */
  ratingsA: [5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100]
} as const
