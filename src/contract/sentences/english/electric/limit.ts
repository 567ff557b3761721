/** What decided the size of a cable. */
export const limitSentences = {
  'limit.ampacity': 'ampacity',
  'limit.drop': 'drop',
  'limit.fuse': 'fuse',
  'limit.short-circuit': 'short-circuit',
  'limit.smallest-size': 'smallest-size',
  'limit.terminal': 'terminal'
} as const
