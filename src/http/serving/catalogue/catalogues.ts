/** The catalogues as they are served: derived from the tables that the code itself uses, so that none is missing. */
import { cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { languages } from '../../../domain/languages.ts'
import { present } from '../../../domain/present.ts'
import type { Language } from '../../../domain/say.ts'
import { problemWords } from '../../wire/problem/problem.ts'
import { type ProblemCode, problemKinds } from '../../wire/problem/problem-kinds.ts'

const byCode = ({ code: a }: { code: string }, { code: b }: { code: string }) => (a < b ? -1 : 1)

export const problemList = (language: LanguageCode) =>
  Object.entries(problemKinds)
    .map(([code, { status }]) => ({
      code,
      type: `/v1/problems/${code}`,
      status,
      ...problemWords(language)[code as ProblemCode]
    }))
    .map(({ code, type, status, title, meaning }) => ({ code, type, status, title, meaning }))
    .sort(byCode)

/** The sentences of each code: its own, and its code with a dot. One walk for all codes: there are thousands of sentences. */
function byCodeOf({ templates }: Language): ReadonlyMap<string, readonly { id: string; text: string }[]> {
  const found = new Map<string, { id: string; text: string }[]>()
  for (const [id, text] of Object.entries(templates)) {
    const [code = id] = id.split('.', 1)
    found.set(code, [...(found.get(code) ?? []), { id, text }])
  }
  return found
}

export function cautionList(language: LanguageCode) {
  const { templates: said, phrase = (text: string) => text } = languages[language]
  const templates = byCodeOf(languages[language])
  return Object.entries(cautionCatalogue)
    .map(([code, { level, meaning, basis }]) => ({
      code,
      level,
      ...present({ brief: said[`brief.${code}`] }),
      meaning: said[`meaning.${code}`] ?? meaning,
      basis: phrase(basis),
      templates: templates.get(code) ?? []
    }))
    .sort(byCode)
}
