/** Schema of a problem document (RFC 9457) with the members this service adds. */
import Type from 'typebox'
import { component, ref } from '../../../contract/field/component.ts'
import { choice } from '../../../contract/field/quantities.ts'
import { problemKinds } from './problem-kinds.ts'

const ProblemErrorBody = component('ProblemError', 'One fault of the request.', {
  pointer: Type.String({ description: 'JSON pointer (RFC 6901) to the fault in the request' }),
  parameter: Type.Optional(Type.String({ description: 'Query parameter, where the request was spelled in a query' })),
  code: Type.String({ description: 'What kind of fault it is' }),
  detail: Type.String({ description: 'The fault in a sentence' }),
  bounds: Type.Optional(
    Type.Unsafe<Record<string, unknown>>({
      type: 'object',
      description: 'The bound that was broken, or the values allowed',
      additionalProperties: true
    })
  )
})

export const ProblemBody = component('Problem', 'A refusal, as RFC 9457 describes it.', {
  type: Type.String({ description: 'Path of the documentation of this problem' }),
  title: Type.String({ description: 'The problem in a few words, the same for every occurrence' }),
  status: Type.Integer({ description: 'HTTP status' }),
  detail: Type.String({ description: 'This occurrence in a sentence' }),
  instance: Type.Optional(Type.String({ description: 'Carries the request id' })),
  code: choice('Code of the problem; /v1/problems documents each', Object.keys(problemKinds)),
  errors: Type.Optional(Type.Array(ref(ProblemErrorBody), { description: 'Every fault found' }))
})
