/** The languages, each with its templates and how it writes figures. */

import { american, americanBriefs, americanMeanings, americanPhrases } from '../contract/sentences/american.ts'
import { german, germanMeanings } from '../contract/sentences/german.ts'
import { germanBriefs } from '../contract/sentences/german-briefs.ts'
import { germanPhrases } from '../contract/sentences/german-phrases.ts'
import type { LanguageCode } from '../contract/sentences/words.ts'
import { phrasebook } from './phrases.ts'
import { englishLanguage, type Language } from './say.ts'

const germanPlurals = new Intl.PluralRules('de')

const germanWriting = { decimalMark: ',', pluralOf: (count: number) => germanPlurals.select(count) }

/** Texts by code under ids of their own, as `say.ts` holds the English ones. */
const under = (prefix: string, texts: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(texts).map(([code, text]) => [`${prefix}.${code}`, text]))

export const languages: Readonly<Record<LanguageCode, Language>> = {
  en: englishLanguage,
  'en-US': {
    ...englishLanguage,
    tag: 'en-US',
    templates: {
      ...englishLanguage.templates,
      ...american,
      ...under('meaning', americanMeanings),
      ...under('brief', americanBriefs)
    },
    phrase: phrasebook(americanPhrases, englishLanguage)
  },
  de: {
    tag: 'de',
    templates: { ...german, ...under('meaning', germanMeanings), ...under('brief', germanBriefs) },
    phrase: phrasebook(germanPhrases, germanWriting),
    ...germanWriting
  }
}
