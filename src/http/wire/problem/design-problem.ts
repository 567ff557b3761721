/** A refusal of the domain as a problem document: fields become pointers, values and bounds take the public unit. */

import type { JsonSchema } from '../../../contract/field/component.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import type { DesignError, Fault } from '../../../domain/design-error.ts'
import { inLanguage } from '../../../domain/in-language.ts'
import { languages } from '../../../domain/languages.ts'
import { present } from '../../../domain/present.ts'
import { wirePath } from '../answer/wire-path.ts'
import { type Problem, type ProblemError, problem } from './problem.ts'

function wireError(code: string, fault: Fault, request: JsonSchema): ProblemError {
  const { pointer, perSi } = wirePath(request, fault.field)
  const bounds = {
    ...present({
      minimum: fault.minimum === undefined ? undefined : fault.minimum * perSi,
      maximum: fault.maximum === undefined ? undefined : fault.maximum * perSi
    })
  }
  return { pointer, code, detail: fault.detail, ...(Object.keys(bounds).length === 0 ? {} : { bounds }) }
}

export function designProblem(
  { code, faults }: Pick<DesignError, 'code' | 'faults'>,
  request: JsonSchema,
  language?: LanguageCode
): Problem {
  // What is already said in a language stays so.
  const told = language === undefined ? faults : inLanguage(faults, languages[language])
  return problem(
    code,
    // two fields may share one fault; its sentence is said once
    [...new Set(told.map(({ detail }) => detail))].join(' '),
    told.map(fault => wireError(code, fault, request)),
    language
  )
}
