/** German: sentences made of others. */
import type { openingSentences } from '../english/opening.ts'
import { translation } from '../form/translation.ts'

export const germanOpening = translation<typeof openingSentences>()({
  capital: '{of}',
  opening: '{of}',
  phrase: '{text}'
})
