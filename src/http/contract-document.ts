/** What the generator cannot know: worked examples with their answers, and the names of tagged branches. */
import { operations } from './operations.ts'
import type { JsonSchema } from './schemas/component.ts'

interface MediaType {
  schema?: unknown
  examples?: Record<string, { summary: string; value: unknown }>
}
interface ContractOperation {
  requestBody?: { content: Record<string, MediaType> }
  responses: Record<string, { content?: Record<string, MediaType> }>
}
export interface ContractDocument {
  paths: Record<string, Record<string, ContractOperation>>
  components: {
    schemas: Record<string, JsonSchema & { discriminator?: { propertyName: string; mapping?: Record<string, string> } }>
  }
  tags?: { name: string }[]
}

function addExamples(document: ContractDocument): void {
  for (const { path, examples, answerText } of operations) {
    const operation = document.paths[path]?.post
    const request = operation?.requestBody?.content['application/json']
    const answer = operation?.responses['200']?.content?.['application/json']
    if (request === undefined || answer === undefined) continue
    request.examples = {}
    answer.examples = {}
    for (const [name, example] of Object.entries(examples)) {
      request.examples[name] = { summary: example.summary, value: example.request }
      const value = JSON.parse(answerText(example.request, { digits: 'six', basis: false }))
      answer.examples[name] = { summary: example.summary, value }
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

export function contractDocument(document: ContractDocument): ContractDocument {
  addExamples(document)
  addMappings(document)
  return document
}
