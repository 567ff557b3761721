/** Words for programs. */
export const codeSentences = {
  code: '{code}'
} as const
