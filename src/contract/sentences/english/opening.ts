/** Sentences made of others. */
export const openingSentences = {
  opening: '{of}',
  phrase: '{text}'
} as const
