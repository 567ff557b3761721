/** The OpenAPI document: what the generator says, with names for what repeats, plain spellings and worked examples. */
import { operations } from '../operations.ts'
import type { Operation } from '../wire/operation.ts'
import { sharedLists } from './answer-lists.ts'
import { isObject, type Json, type JsonObject, reached, rewritten } from './json-tree.ts'
import { openAnswers, plainSpelling } from './plain-spelling.ts'
import { sharedParts } from './shared-parts.ts'
import { tags } from './tags.ts'
import { namedWords, vocabularyComponents } from './vocabularies.ts'

/** A longer answer is led to: a reader has it with one click, and the contract stays one that can be read. */
const LONGEST_ANSWER = 2_600

export const examplesPath = ({ operationId }: Operation) => `/docs/examples/${operationId}.json`

/** The one answer that the contract itself shows, of a light operation; undefined where none is short. */
export function shownAnswer({ examples, heavy = false, answerText }: Operation) {
  if (heavy) return undefined
  const answers = Object.entries(examples).map(([name, { summary, request }]) => ({
    name,
    summary,
    text: answerText(request, { digits: 'six', basis: false })
  }))
  const [shortest] = answers.toSorted((a, b) => a.text.length - b.text.length)
  return shortest === undefined || shortest.text.length > LONGEST_ANSWER ? undefined : shortest
}

type Member = readonly [...string[]]

/** The object at a path, rebuilt with more members; the document itself is never written to. */
function within(node: Json | undefined, path: Member, more: JsonObject): JsonObject {
  const here = isObject(node) ? node : {}
  const [name, ...rest] = path
  return name === undefined ? { ...here, ...more } : { ...here, [name]: within(here[name], rest, more) }
}

/** The one request that the contract itself shows, the shortest: the others are led to. */
function shownRequest({ examples }: Operation): JsonObject {
  const [shortest] = Object.entries(examples)
    .map(([name, { summary, request }]) => ({ name, summary, text: JSON.stringify(request) }))
    .toSorted((a, b) => a.text.length - b.text.length)
  if (shortest === undefined) return {}
  const { name, summary, text } = shortest
  return { [name]: { summary, value: JSON.parse(text) } }
}

function withExamples(paths: JsonObject, operation: Operation): JsonObject {
  const { path } = operation
  const shown = shownAnswer(operation)
  const post = [path, 'post']
  const asked = within(paths, [...post, 'requestBody', 'content', 'application/json'], {
    examples: shownRequest(operation)
  })
  const led = within(asked, post, {
    // As a link in the text: the format of a URL that validators ask of externalDocs has a host, which no contract of ours knows.
    description: `${operation.description} [The examples with their answers](${examplesPath(operation)}).`
  })
  if (shown === undefined) return led
  const { name, summary, text } = shown
  return within(led, [...post, 'responses', '200', 'content', 'application/json'], {
    examples: { [name]: { summary, value: JSON.parse(text) } }
  })
}

function addMapping(schema: Json, schemas: JsonObject): Json {
  if (!isObject(schema) || !isObject(schema.discriminator) || !Array.isArray(schema.oneOf)) return schema
  const tag = String(schema.discriminator.propertyName)
  const mapping = schema.oneOf.filter(isObject).map(({ $ref = '' }): [string, Json] => {
    const branch = schemas[String($ref).split('/').pop() ?? '']
    const properties = isObject(branch) && isObject(branch.properties) ? branch.properties : {}
    const word = isObject(properties[tag]) && Array.isArray(properties[tag].enum) ? properties[tag].enum[0] : undefined
    return [String(word), $ref]
  })
  return { ...schema, discriminator: { ...schema.discriminator, mapping: Object.fromEntries(mapping) } }
}

/** By name, so that a schema may move to another file without the document changing. */
function schemasOf(generated: JsonObject): JsonObject {
  const spelled = rewritten(generated, schema => namedWords(plainSpelling(schema)))
  const own = isObject(spelled) ? spelled : {}
  const lists = vocabularyComponents()
  const twice = Object.keys(lists).filter(name => Object.hasOwn(own, name))
  if (twice.length > 0) throw new TypeError(`${twice.join(', ')} names an object and a list of words`)
  const all = sharedLists({ ...own, ...lists })
  const mapped = Object.entries(all).map(([name, schema]): [string, Json] => [name, addMapping(schema, all)])
  return Object.fromEntries(mapped.toSorted(([a], [b]) => (a < b ? -1 : 1)))
}

function requestsOf(paths: JsonObject): Json {
  return Object.values(paths).flatMap(path =>
    Object.values(isObject(path) ? path : {}).map(operation =>
      isObject(operation) ? (operation.requestBody ?? null) : null
    )
  )
}

const member = (node: JsonObject, name: string): JsonObject => {
  const found = node[name]
  return isObject(found) ? found : {}
}

export function contractDocument(generated: JsonObject): JsonObject {
  const spelled = rewritten(member(generated, 'paths'), schema => namedWords(plainSpelling(schema)))
  const plain = isObject(spelled) ? spelled : {}
  const { paths, components } = sharedParts(plain)
  const schemas = schemasOf(member(member(generated, 'components'), 'schemas'))
  const worked = operations.reduce(withExamples, paths)
  const needed = reached([paths, components], schemas)
  const used = Object.fromEntries(Object.entries(schemas).filter(([name]) => needed.has(name)))
  return {
    ...generated,
    tags,
    paths: worked,
    components: {
      ...member(generated, 'components'),
      ...components,
      schemas: openAnswers(used, requestsOf(plain))
    }
  }
}
