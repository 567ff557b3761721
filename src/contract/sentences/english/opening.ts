/** Sentences made of others. */
export const openingSentences = {
  opening: '{of}'
} as const
