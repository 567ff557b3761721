/** What decided the size of a cable. */
export const limitSentences = {
  'limit.ampacity': 'ampacity',
  'limit.drop': 'voltage drop',
  'limit.fuse': 'the fuse',
  'limit.short-circuit': 'a short circuit',
  'limit.smallest-size': 'the smallest size there is',
  'limit.terminal': 'the terminal'
} as const
