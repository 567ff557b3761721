/** A refusal of the domain as a problem document: fields become pointers, values and bounds take the public unit. */
import type { JsonSchema } from '../../contract/field/component.ts'
import type { DesignError, Fault } from '../../domain/design-error.ts'
import { type Problem, type ProblemError, problem } from './problem.ts'
import { wirePath } from './wire-path.ts'

function wireError(code: string, fault: Fault, request: JsonSchema): ProblemError {
  const { pointer, perSi } = wirePath(request, fault.field)
  const bounds = {
    ...(fault.minimum === undefined ? {} : { minimum: fault.minimum * perSi }),
    ...(fault.maximum === undefined ? {} : { maximum: fault.maximum * perSi })
  }
  return { pointer, code, detail: fault.detail ?? code, ...(Object.keys(bounds).length === 0 ? {} : { bounds }) }
}

export function designProblem(error: Pick<DesignError, 'code' | 'message' | 'faults'>, request: JsonSchema): Problem {
  return problem(
    error.code,
    error.message,
    error.faults.map(fault => wireError(error.code, fault, request))
  )
}
