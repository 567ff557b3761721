/** GET /v1/problems, /v1/cautions, /v1/changes and the reference tables: fixed for a version, so anybody may keep them. */

import type { FastifyInstance, FastifySchema } from 'fastify'
import Type, { type TSchema } from 'typebox'
import { ref } from '../../../contract/field/component.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { say } from '../../../domain/say.ts'
import { referenceTables } from '../../reference/reference-tables.ts'
import { Refusal } from '../../wire/problem/refusal.ts'
import { refusals } from '../operations/operation-routes.ts'
import { type FixedText, fixedText, sendFixed } from '../representation/fixed-text.ts'
import { negotiated } from '../representation/forms.ts'
import { speaking } from '../representation/language.ts'
import {
  CautionCatalogueBody,
  CautionKindBody,
  ChangesBody,
  ProblemCatalogue,
  ProblemKindBody
} from './catalogue-schema.ts'
import { cautionList, problemList } from './catalogues.ts'
import { changes } from './changes.ts'

interface Reading {
  readonly path: string
  readonly operationId: string
  readonly tag: string
  readonly summary: string
  readonly description: string
  readonly schema: TSchema
  /** undefined where there is no such entry. */
  readonly text: (code: string | undefined, language: LanguageCode) => FixedText | undefined
  /** Whether it is there in every language. */
  readonly spoken?: boolean
}

const json = ['application/json'] as const

function documentation({ path, operationId, tag, summary, description, schema }: Reading): FastifySchema {
  const byCode = path.includes(':')
  return {
    operationId,
    tags: [tag],
    summary,
    description,
    ...(byCode
      ? {
          params: Type.Object({ code: Type.String({ description: 'Code of the entry', maxLength: 100 }) })
        }
      : {}),
    response: {
      200: { description: summary, content: { 'application/json': { schema: ref(schema) } } },
      304: { description: 'The client has this already', type: 'null' },
      ...refusals(...(byCode ? [404] : []), 406, 429, 500, 503)
    }
  } as FastifySchema
}

function read(app: FastifyInstance, reading: Reading): void {
  app.get<{ Params: { code?: string } }>(
    reading.path,
    {
      schema: documentation(reading),
      // What is no code is no entry: 404, however long it is.
      validatorCompiler: () => () => true,
      onRequest: async (request, reply) => {
        negotiated(json, request, reply)
      }
    },
    async (request, reply) => {
      const { code } = request.params
      const language = reading.spoken === true ? speaking('application/json', request, reply) : 'en'
      const text = reading.text(code, language)
      if (text === undefined) throw new Refusal('not-found', say('service.no-entry'))
      return sendFixed(request, reply, text, { shared: true })
    }
  )
}

function entry(list: readonly { readonly code: string }[]) {
  const texts = new Map(list.map(item => [item.code, fixedText(item.code, JSON.stringify(item))]))
  return (code: string | undefined) => texts.get(code ?? '')
}

/** One of each language, made when first asked for: all of them were a tenth of a start. */
function inEach<Made>(make: (language: LanguageCode) => Made): (language: LanguageCode) => Made {
  const made = new Map<LanguageCode, Made>()
  return language => {
    const kept = made.get(language) ?? make(language)
    made.set(language, kept)
    return kept
  }
}

const cautions = inEach(language =>
  fixedText(
    language === 'en' ? '/v1/cautions' : `/v1/cautions;${language}`,
    JSON.stringify({ cautions: cautionList(language) })
  )
)
const problems = inEach(language =>
  fixedText(
    language === 'en' ? '/v1/problems' : `/v1/problems;${language}`,
    JSON.stringify({ problems: problemList(language) })
  )
)
const problemEntries = inEach(language => entry(problemList(language)))
const cautionEntries = inEach(language => entry(cautionList(language)))

const moved = fixedText('/v1/changes', JSON.stringify({ versions: changes }))

const catalogues: readonly Reading[] = [
  {
    path: '/v1/changes',
    operationId: 'listChanges',
    tag: 'Catalogues',
    summary: 'Which figures each version moved',
    description:
      'For who keeps answers: `calculation.version` of an answer finds what has moved since, and whether to ask again.',
    schema: ChangesBody,
    text: () => moved
  },
  {
    path: '/v1/problems',
    operationId: 'listProblems',
    tag: 'Catalogues',
    summary: 'Every kind of refusal',
    description: 'What each problem code means and which status it comes with.',
    schema: ProblemCatalogue,
    text: (_, language) => problems(language),
    spoken: true
  },
  {
    path: '/v1/problems/:code',
    operationId: 'describeProblem',
    tag: 'Catalogues',
    summary: 'One kind of refusal',
    description: 'The documentation that `type` of a problem document leads to.',
    schema: ProblemKindBody,
    text: (code, language) => problemEntries(language)(code),
    spoken: true
  },
  {
    path: '/v1/cautions',
    operationId: 'listCautions',
    tag: 'Catalogues',
    summary: 'Every kind of caution',
    description: 'What each caution code means, how grave it is and where its threshold comes from.',
    schema: CautionCatalogueBody,
    text: (_, language) => cautions(language),
    spoken: true
  },
  {
    path: '/v1/cautions/:code',
    operationId: 'describeCaution',
    tag: 'Catalogues',
    summary: 'One kind of caution',
    description: 'What the code means and what to do.',
    schema: CautionKindBody,
    text: (code, language) => cautionEntries(language)(code),
    spoken: true
  }
]

export function registerCatalogues(app: FastifyInstance): void {
  for (const reading of catalogues) read(app, reading)
  for (const { name, operationId, summary, description, schema, text } of referenceTables) {
    const path = `/v1/reference/${name}`
    const kept = fixedText(path, text)
    read(app, { path, operationId, tag: 'Reference tables', summary, description, schema, text: () => kept })
  }
}
