/** POST /v1/batches: as one JSON text, or as NDJSON a line at a time. */

import { Readable } from 'node:stream'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import Type from 'typebox'
import { ref } from '../../../contract/field/component.ts'
import { say, worded } from '../../../domain/say.ts'
import type { AnswerOptions, Operation } from '../../wire/operation.ts'
import { Refusal } from '../../wire/problem/refusal.ts'
import type { Work } from '../../work/pool.ts'
import { taskOf } from '../../work/task.ts'
import type { Observed } from '../observability.ts'
import { AnswerQuery, clientGone, refusals } from '../operations/operation-routes.ts'
import { contentType, formChoice, NDJSON, negotiated } from '../representation/forms.ts'
import { speaking } from '../representation/language.ts'
import type { Settings } from '../settings.ts'
import { type BatchCall, type BatchMeans, type BatchText, inOrder, runCall } from './batch.ts'
import { BatchAnswer, BatchBody, MOST_CALLS, MOST_LINES } from './batch-schema.ts'

const forms = ['application/json', NDJSON] as const

/** `fromIndex` is text in the query; its grammar is checked here. */
const BatchQuery = Type.Object(
  {
    ...AnswerQuery.properties,
    form: formChoice([NDJSON]),
    fromIndex: Type.Optional(
      Type.String({
        description: 'Leaves out the calls before this index: where a stream was cut, go on behind its last whole line',
        pattern: '^(0|[1-9]\\d{0,2}|1000)$',
        maxLength: 4
      })
    )
  },
  { additionalProperties: false }
)

interface BatchRoute {
  Body: { readonly calls: readonly BatchCall[] }
  Querystring: { digits?: AnswerOptions['digits']; basis?: string; fromIndex?: string }
}

/** A thousand small calls fit; read and checked within a few milliseconds. */
const LARGER_BODY = 2

/** A batch may take as long as this many single calls. */
const BUDGETS = 3

interface Lines {
  readonly texts: AsyncGenerator<BatchText>
  readonly summary: () => string
}

function linesOf(
  calls: readonly BatchCall[],
  from: number,
  parallel: number,
  run: (index: number) => Promise<BatchText>
) {
  const count = { answered: 0, refused: 0 }
  async function* counted(): AsyncGenerator<BatchText> {
    for await (const item of inOrder(from, calls.length, parallel, run)) {
      count[item.answered ? 'answered' : 'refused']++
      yield item
    }
  }
  const lines: Lines = {
    texts: counted(),
    summary: () => JSON.stringify({ calls: calls.length, fromIndex: from, ...count })
  }
  return lines
}

async function* ndjson({ texts, summary }: Lines): AsyncGenerator<string> {
  for await (const { text } of texts) yield `${text}\n`
  yield `{"summary":${summary()}}\n`
}

async function whole({ texts, summary }: Lines): Promise<string> {
  const items: string[] = []
  for await (const { text } of texts) items.push(text)
  return `{"items":[${items.join(',')}],"summary":${summary()}}`
}

function refuseTooMany(calls: number, most: number): void {
  if (calls <= most) return
  throw new Refusal('invalid-request', say('service.batch-too-long', { calls: most }), {
    errors: [
      {
        pointer: '/calls',
        code: 'too-many',
        ...worded({ detail: say('contract.most-entries', { entries: most }) }),
        bounds: { maxItems: most }
      }
    ]
  })
}

const documentation = {
  operationId: 'runBatch',
  tags: ['Batches'],
  summary: 'Many calls in one',
  description: `Up to ${MOST_CALLS} calls, or ${MOST_LINES} answered line by line, each with its own status and answer or problem, in the order of the request; one bad call spoils only itself. Calls run in parallel in worker threads. With \`Accept: application/x-ndjson\` or \`?form=ndjson\` each item leaves as a line of its own as soon as it and those before it are done, and the last line is \`{"summary": …}\`; a stream without it was cut. Every call is pure, so a client may ask again, with \`fromIndex\` for the rest only. Each call counts against the rate limit.`,
  querystring: BatchQuery,
  body: ref(BatchBody),
  response: {
    200: {
      description: 'Every call with its own status',
      content: {
        'application/json': { schema: ref(BatchAnswer) },
        [NDJSON]: {
          schema: { type: 'string', description: 'A BatchItem a line, then a line with the summary' }
        }
      }
    },
    ...refusals(400, 401, 406, 413, 415, 429, 500, 503)
  }
}

interface Mounting {
  readonly work: Work
  readonly observed: Observed
  readonly settings: Settings
}

type ById = BatchMeans['operations']

function meansOf(
  app: FastifyInstance,
  operations: ById,
  { work, observed, settings }: Mounting,
  request: FastifyRequest,
  reply: FastifyReply
): BatchMeans {
  const ended = AbortSignal.any([clientGone(reply), AbortSignal.timeout(settings.workTimeoutMs * BUDGETS)])
  const inWorker = observed.counted((operation, body, options) => work.run(taskOf(operation, body, options), ended))
  return {
    operations,
    faultsOf: app.faultsOf,
    answer: (operation, body, options) => inWorker(operation, body, options, reply),
    report: err => request.log.error({ err }, 'fault of ours')
  }
}

export function registerBatches(app: FastifyInstance, operations: readonly Operation[], mounting: Mounting): void {
  const { settings } = mounting
  const byId: ById = new Map(operations.map(operation => [operation.operationId, operation]))
  app.post<BatchRoute>(
    '/v1/batches',
    {
      schema: documentation,
      bodyLimit: settings.bodyLimitBytes * LARGER_BODY,
      onRequest: async (request, reply) => {
        negotiated(forms, request, reply)
      }
    },
    async (request, reply) => {
      const { calls } = request.body
      const form = negotiated(forms, request, reply)
      const most = form === NDJSON ? (settings.batchItemsMax * MOST_LINES) / MOST_CALLS : settings.batchItemsMax
      refuseTooMany(calls.length, most)
      const from = Math.min(Number(request.query.fromIndex ?? 0), calls.length)
      await app.spend(request, reply, calls.length - from - 1)
      const language = speaking('application/json', request, reply)
      const options = {
        digits: request.query.digits ?? 'six',
        basis: request.query.basis === 'true',
        language
      } as const
      const means = meansOf(app, byId, mounting, request, reply)
      const lines = linesOf(calls, from, settings.workers, index => {
        const call = calls[index]
        if (call === undefined) throw new RangeError('a batch has no such call')
        return runCall(call, index, options, means)
      })
      reply.type(contentType(form)).header('cache-control', 'no-store')
      return reply.send(form === NDJSON ? Readable.from(ndjson(lines)) : await whole(lines))
    }
  )
}
