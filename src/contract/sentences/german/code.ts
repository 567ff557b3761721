/** German: words for programs. */
import type { codeSentences } from '../english/code.ts'
import { translation } from '../form/translation.ts'

export const germanCode = translation<typeof codeSentences>()({
  code: '{code}'
})
