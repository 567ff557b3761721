/** RFC 9457 problem documents: the shape that leaves, in the language asked for. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { inLanguage } from '../../../domain/in-language.ts'
import { languages } from '../../../domain/languages.ts'
import { present } from '../../../domain/present.ts'
import { germanProblems } from './german-problems.ts'
import { type ProblemCode, type ProblemWords, problemKinds } from './problem-kinds.ts'

/** Title and meaning of every code in a language. */
export const problemWords = (language: LanguageCode): Readonly<Record<ProblemCode, ProblemWords>> =>
  language === 'de' ? germanProblems : problemKinds

export interface ProblemError {
  readonly pointer: string
  /** Name of the query parameter, where the request was spelled in one. */
  readonly parameter?: string
  readonly code: string
  readonly detail: string
  /** The sentence behind the detail; it does not leave. */
  readonly said?: { readonly detail: Said }
  readonly bounds?: Readonly<Record<string, number | string | readonly (string | number)[]>>
}

export interface Problem {
  readonly type: string
  readonly title: string
  readonly status: number
  readonly detail: string
  readonly instance?: string
  readonly code: ProblemCode
  readonly errors?: readonly ProblemError[]
}

/** The errors in a language, without the sentences behind them. */
function toldIn(language: LanguageCode, errors: readonly ProblemError[] | undefined) {
  return errors === undefined
    ? undefined
    : inLanguage(errors, languages[language]).map(({ said: _, ...error }): ProblemError => error)
}

export function problem(
  code: ProblemCode,
  detail: string,
  errors?: readonly ProblemError[],
  language: LanguageCode = 'en'
): Problem {
  const { status } = problemKinds[code]
  const { title } = problemWords(language)[code]
  return { type: `/v1/problems/${code}`, title, status, detail, code, ...present({ errors: toldIn(language, errors) }) }
}
