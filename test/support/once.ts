/** What is asked again is told again: put around the plan in a run of tests, where a dozen files plan the same estate car. */
import { DesignError } from '../../src/domain/design-error.ts'

/** So that no page, drawing or test can change what the next one reads. */
function frozen<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value
  Object.freeze(value)
  for (const each of Object.values(value)) frozen(each)
  return value
}

type Told<Answer> = { readonly answer: Answer } | { readonly refusal: DesignError }

function told<Request, Answer>(afresh: (request: Request) => Answer, request: Request): Told<Answer> {
  try {
    return { answer: frozen(afresh(request)) }
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    return { refusal: error }
  }
}

export function once<Request, Answer>(afresh: (request: Request) => Answer): (request: Request) => Answer {
  const known = new Map<string, Told<Answer>>()
  return request => {
    const key = JSON.stringify(request)
    const said = known.get(key) ?? told(afresh, request)
    known.set(key, said)
    if ('refusal' in said) throw said.refusal
    return said.answer
  }
}
