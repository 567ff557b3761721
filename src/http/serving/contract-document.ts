/** What the generator cannot know: worked examples with their answers, and the names of tagged branches. */
import type { JsonSchema } from '../../contract/field/component.ts'
import { operations } from '../operations.ts'
import type { Operation } from '../wire/operation.ts'

interface MediaType {
  schema?: unknown
  examples?: Record<string, { summary: string; value: unknown }>
}
interface ContractParameter {
  readonly name: string
  readonly in: string
  readonly required?: boolean
  readonly description?: string
  readonly schema: JsonSchema
}
export interface ContractOperation {
  readonly operationId?: string
  readonly summary?: string
  readonly description?: string
  readonly tags?: readonly string[]
  readonly parameters?: readonly ContractParameter[]
  requestBody?: { content: Record<string, MediaType> }
  responses: Record<string, { description?: string; content?: Record<string, MediaType> }>
}
export interface ContractDocument {
  paths: Record<string, Record<string, ContractOperation>>
  components: {
    schemas: Record<string, JsonSchema & { discriminator?: { propertyName: string; mapping?: Record<string, string> } }>
  }
  tags?: { name: string }[]
}

/** Text of the JSON answer to an example; the service asks its workers where the calculation is heavy. */
export type ExampleAnswer = (operation: Operation, request: unknown) => Promise<string>

type Answers = ReadonlyMap<unknown, Promise<string>>

/** Heavy answers are asked for first, so that the workers are at it while this thread does the light ones. */
function answersOf(answer: ExampleAnswer): Answers {
  const inTurn = [...operations].sort((a, b) => Number(b.heavy ?? false) - Number(a.heavy ?? false))
  const asked = inTurn.flatMap(operation =>
    Object.values(operation.examples).map(example => [example, answer(operation, example.request)] as const)
  )
  return new Map(asked)
}

async function addExamples(document: ContractDocument, answers: Answers): Promise<void> {
  for (const operation of operations) {
    const documented = document.paths[operation.path]?.post
    const request = documented?.requestBody?.content['application/json']
    const success = documented?.responses['200']?.content?.['application/json']
    if (request === undefined || success === undefined) continue
    request.examples = {}
    success.examples = {}
    for (const [name, example] of Object.entries(operation.examples)) {
      const { summary } = example
      request.examples[name] = { summary, value: example.request }
      success.examples[name] = { summary, value: JSON.parse((await answers.get(example)) ?? '') }
    }
  }
}

function addMappings({ components }: ContractDocument): void {
  for (const schema of Object.values(components.schemas)) {
    const { discriminator, oneOf } = schema
    if (discriminator === undefined || oneOf === undefined) continue
    discriminator.mapping = Object.fromEntries(
      oneOf.map(({ $ref = '' }) => {
        const branch = components.schemas[$ref.split('/').pop() ?? '']
        return [String(branch?.properties?.[discriminator.propertyName]?.const), $ref]
      })
    )
  }
}

/** By name, so that a schema may move to another file without the document changing. */
function sortComponents({ components }: ContractDocument): void {
  components.schemas = Object.fromEntries(Object.entries(components.schemas).toSorted(([a], [b]) => (a < b ? -1 : 1)))
}

export async function contractDocument(document: ContractDocument, answer: ExampleAnswer): Promise<ContractDocument> {
  const answers = answersOf(answer)
  // One that fails is reported by the await below, once.
  await Promise.allSettled(answers.values())
  await addExamples(document, answers)
  addMappings(document)
  sortComponents(document)
  return document
}
