/** Schemas of a batch: many calls in one, each with its own answer or problem. */
import Type from 'typebox'
import { byTag, component, ref } from '../../../contract/field/component.ts'
import { choice, count, label, list } from '../../../contract/field/quantities.ts'
import { operations } from '../../operations.ts'
import { ProblemBody } from '../../wire/problem/problem-schema.ts'

/** In one JSON text. */
export const MOST_CALLS = 100
/** Line by line, so that no answer is held while the next is made. */
export const MOST_LINES = 10 * MOST_CALLS

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
  calls: list('The calls, answered in this order', ref(BatchCall), 1, MOST_LINES)
})

const itemFields = {
  index: count('Place of the call in the request, from 0', 0, MOST_LINES - 1),
  id: Type.Optional(label('Name of the call')),
  operationId: Type.String({ description: 'Which calculation; says what the answer is' })
}

const BatchAnswered = component('BatchAnswered', 'A call with its answer.', {
  outcome: Type.Literal('answered', { description: 'There is an answer' }),
  ...itemFields,
  status: Type.Literal(200, { description: 'HTTP status the call alone would have had' }),
  answer: Type.Unsafe<Readonly<Record<string, unknown>>>({
    type: 'object',
    description: 'Body of the answer, as the operation gives it',
    additionalProperties: true
  })
})

const BatchRefused = component('BatchRefused', 'A call with its problem.', {
  outcome: Type.Literal('refused', { description: 'There is a problem' }),
  ...itemFields,
  status: Type.Integer({ description: 'HTTP status the call alone would have had', minimum: 400, maximum: 599 }),
  problem: ref(ProblemBody)
})

const BatchItem = byTag('BatchItem', 'What one call of a batch gave.', 'outcome', [BatchAnswered, BatchRefused])

const BatchSummary = component('BatchSummary', 'How the calls went; the last line of a stream.', {
  calls: count('Calls in the request', 1, MOST_LINES),
  fromIndex: count('First call that was run', 0, MOST_LINES),
  answered: count('Calls with an answer', 0, MOST_LINES),
  refused: count('Calls with a problem', 0, MOST_LINES)
})

export const BatchAnswer = component('BatchAnswer', 'Every call with its own status.', {
  items: Type.Array(ref(BatchItem), { description: 'In the order of the request', maxItems: MOST_CALLS }),
  summary: ref(BatchSummary)
})
