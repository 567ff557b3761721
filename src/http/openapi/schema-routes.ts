/** GET /v1/schemas/…: one schema of the contract with all it refers to, so that a form or a check need not load the rest. */

import type { FastifyInstance } from 'fastify'
import Type from 'typebox'
import { component, ref } from '../../contract/field/component.ts'
import { say } from '../../domain/say.ts'
import { refusals } from '../serving/operations/operation-routes.ts'
import { type FixedText, fixedText, sendFixed } from '../serving/representation/fixed-text.ts'
import { negotiated } from '../serving/representation/forms.ts'
import { Refusal } from '../wire/problem/refusal.ts'
import { conditionKeywords } from '../wire/request/conditions.ts'
import { isObject, type Json, type JsonObject, reached, rewritten } from './json-tree.ts'

const SchemaBody = component(
  'Schema',
  'A schema of JSON Schema 2020-12, `$schema` and `$id` with it, that refers to nothing outside itself.',
  {
    $defs: Type.Unsafe<Record<string, unknown>>({
      type: 'object',
      description: 'Every schema that it leads to, by name',
      additionalProperties: true
    })
  }
)

const inside = (schema: JsonObject): JsonObject => {
  const { $ref, discriminator: _tag, ...rest } = schema
  // A discriminator is a word of OpenAPI; its branches tell themselves apart by their tags.
  return typeof $ref === 'string' ? { ...rest, $ref: `#/$defs/${$ref.split('/').pop()}` } : rest
}

/** What goes together and what does not, in words that the contract leaves to the refusal. */
const conditional = (name: string, schema: Json, within: string): Json =>
  isObject(schema) ? { ...schema, ...(conditionKeywords(name, within) as JsonObject) } : schema

function selfContained(name: string, schemas: JsonObject): Json | undefined {
  const schema = Object.hasOwn(schemas, name) ? schemas[name] : undefined
  if (schema === undefined || !isObject(schema)) return undefined
  const names = [...reached(schema, schemas)].sort()
  const definitions = names.map((each): [string, Json] => [
    each,
    conditional(each, rewritten(schemas[each] ?? {}, inside), name)
  ])
  const own = rewritten(schema, inside)
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `/v1/schemas/${name}`,
    ...(isObject(own) ? own : {}),
    ...(conditionKeywords(name, name) as JsonObject),
    $defs: Object.fromEntries(definitions)
  }
}

const documentation = {
  operationId: 'describeShape',
  tags: ['Catalogues'],
  summary: 'One schema of the contract, whole',
  description:
    'The schema of a request or an answer under its name in the contract, with every schema it leads to under `$defs`: for a form that is made from it, or a check before a call.',
  params: Type.Object({ name: Type.String({ description: 'Name of the schema in the contract', maxLength: 100 }) }),
  response: {
    200: { description: 'The schema', content: { 'application/json': { schema: ref(SchemaBody) } } },
    304: { description: 'The client has this already', type: 'null' },
    ...refusals(404, 406, 429, 500, 503)
  }
}

export function schemaRoutes(app: FastifyInstance): void {
  const kept = new Map<string, FixedText>()
  let schemas: JsonObject | undefined
  app.get<{ Params: { name: string } }>(
    '/v1/schemas/:name',
    {
      schema: documentation,
      // What is no name is no schema: 404, however long it is.
      validatorCompiler: () => () => true,
      onRequest: async (request, reply) => {
        negotiated(['application/json'], request, reply)
      }
    },
    async (request, reply) => {
      const { name } = request.params
      schemas ??= JSON.parse((await app.contract()).json).components.schemas
      const schema = selfContained(name, schemas ?? {})
      if (schema === undefined) throw new Refusal('not-found', say('service.no-schema'))
      const text = kept.get(name) ?? fixedText(`/v1/schemas/${name}`, JSON.stringify(schema))
      kept.set(name, text)
      return sendFixed(request, reply, text, { shared: true })
    }
  )
}
