/** Schemas of a batch: many calls in one, each with its own answer or problem. */
import Type from 'typebox'
import { component, ref } from '../../../contract/field/component.ts'
import { choice, count, label, list } from '../../../contract/field/quantities.ts'
import { operations } from '../../operations.ts'
import { ProblemBody } from '../../wire/problem-schema.ts'

export const MOST_CALLS = 100

const BatchCall = component('BatchCall', 'One call of a batch.', {
  id: Type.Optional(label('Name of the call; comes back beside its answer')),
  operationId: choice(
    'Which calculation',
    operations.map(({ operationId }) => operationId)
  ),
  request: Type.Unsafe<Readonly<Record<string, unknown>>>({
    type: 'object',
    description: 'Body of the call, as the operation takes it',
    additionalProperties: true
  })
})

export const BatchBody = component('BatchRequest', 'Many calls in one; none depends on another.', {
  calls: list('The calls, answered in this order', ref(BatchCall), 1, MOST_CALLS)
})

const BatchItem = component('BatchItem', 'What one call of a batch gave: an answer or a problem.', {
  index: count('Place of the call in the request, from 0', 0, MOST_CALLS - 1),
  id: Type.Optional(label('Name of the call')),
  status: Type.Integer({ description: 'HTTP status the call alone would have had', minimum: 200, maximum: 599 }),
  answer: Type.Optional(
    Type.Unsafe<Readonly<Record<string, unknown>>>({
      type: 'object',
      description: 'Body of the answer, as the operation gives it',
      additionalProperties: true
    })
  ),
  problem: Type.Optional(ref(ProblemBody))
})

const BatchSummary = component('BatchSummary', 'How the calls went; the last line of a stream.', {
  calls: count('Calls in the request', 1, MOST_CALLS),
  fromIndex: count('First call that was run', 0, MOST_CALLS),
  answered: count('Calls with an answer', 0, MOST_CALLS),
  refused: count('Calls with a problem', 0, MOST_CALLS)
})

export const BatchAnswer = component('BatchAnswer', 'Every call with its own status.', {
  items: Type.Array(ref(BatchItem), { description: 'In the order of the request', maxItems: MOST_CALLS }),
  summary: ref(BatchSummary)
})
