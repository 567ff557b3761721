/** Words that requests and answers of this resource choose from. */

/** Order is part of the meaning: nothing loud before polarity, nothing connected before the gain stands. */
export const signalStepIds = [
  'start-safe',
  'speaker-resistance',
  'cone-polarity',
  'turn-on',
  'source-level',
  'speakers-off',
  'gain',
  'bridge-halves',
  'clipping',
  'speakers-on',
  'filters',
  'acoustic-polarity',
  'level',
  'warm-check'
] as const
