/** Sentences made of others. */
export const openingSentences = {
  capital: '{of}',
  opening: '{of}',
  phrase: '{text}'
} as const
