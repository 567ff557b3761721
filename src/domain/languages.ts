/** The languages, each with its templates and how it writes figures. */

import { german, germanMeanings } from '../contract/sentences/german.ts'
import { germanBriefs } from '../contract/sentences/german-briefs.ts'
import { germanPhrases } from '../contract/sentences/german-phrases.ts'
import type { LanguageCode } from '../contract/sentences/words.ts'
import { phrasebook } from './phrases.ts'
import { englishLanguage, type Language } from './say.ts'

const germanPlurals = new Intl.PluralRules('de')

const germanWriting = { decimalMark: ',', pluralOf: (count: number) => germanPlurals.select(count) }

const meanings = Object.fromEntries(Object.entries(germanMeanings).map(([code, text]) => [`meaning.${code}`, text]))

const briefs = Object.fromEntries(Object.entries(germanBriefs).map(([code, text]) => [`brief.${code}`, text]))

export const languages: Readonly<Record<LanguageCode, Language>> = {
  en: englishLanguage,
  de: {
    tag: 'de',
    templates: { ...german, ...meanings, ...briefs },
    phrase: phrasebook(germanPhrases, germanWriting),
    ...germanWriting
  }
}
