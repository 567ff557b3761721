/** German: what decided the size of a cable. */
import type { limitSentences } from '../../english/electric/limit.ts'
import { translation } from '../../form/translation.ts'

export const germanLimit = translation<typeof limitSentences>()({
  'limit.ampacity': 'Strombelastbarkeit',
  'limit.drop': 'Spannungsfall',
  'limit.fuse': 'Sicherung',
  'limit.short-circuit': 'Kurzschluss',
  'limit.smallest-size': 'kleinster Querschnitt',
  'limit.terminal': 'Anschluss'
})
