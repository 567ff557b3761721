/** Mounts the operations: schema, one call, the text of the answer. */
import type { FastifyInstance } from 'fastify'
import Type from 'typebox'
import type { AnswerOptions, Operation } from '../operation.ts'
import { problemKinds } from '../problem.ts'
import { ref } from '../schemas/component.ts'
import { ProblemBody } from '../schemas/problem.ts'
import { choice } from '../schemas/quantities.ts'

export const AnswerQuery = Type.Object(
  {
    digits: Type.Optional(choice('`six` significant digits (the default) or `full` precision', ['six', 'full'])),
    basis: Type.Optional(choice('`true` adds how each figure was reached', ['true', 'false']))
  },
  { additionalProperties: false }
)

export type AnswerText = (operation: Operation, request: unknown, options: AnswerOptions) => string | Promise<string>

const refusals = Object.fromEntries(
  [400, 413, 415, 422, 429, 500, 503].map(status => [
    status,
    {
      description: Object.entries(problemKinds)
        .filter(([, kind]) => kind.status === status)
        .map(([code, kind]) => `\`${code}\`: ${kind.title}`)
        .join('. '),
      content: { 'application/problem+json': { schema: ref(ProblemBody) } }
    }
  ])
)

export function registerOperations(
  app: FastifyInstance,
  operations: readonly Operation[],
  answerText: AnswerText
): void {
  for (const operation of operations) {
    app.post<{ Querystring: { digits?: AnswerOptions['digits']; basis?: 'true' | 'false' } }>(
      operation.path,
      {
        schema: {
          operationId: operation.operationId,
          tags: [operation.tag],
          summary: operation.summary,
          description: operation.description,
          querystring: AnswerQuery,
          body: operation.body,
          response: {
            200: { description: 'The result', content: { 'application/json': { schema: ref(operation.answer) } } },
            ...refusals
          }
        }
      },
      async ({ body, query }, reply) =>
        reply
          .type('application/json; charset=utf-8')
          .header('cache-control', 'no-store')
          .send(await answerText(operation, body, { digits: query.digits ?? 'six', basis: query.basis === 'true' }))
    )
  }
}
