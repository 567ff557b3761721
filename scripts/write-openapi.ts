/** Writes openapi.yaml and the client's types from the code; with --check only compares and exits 1 where they differ. */
import { readFileSync, writeFileSync } from 'node:fs'
import openapiTypes, { astToString } from 'openapi-typescript'
import { parse } from 'yaml'
import { buildApp } from '../src/app.ts'

const check = process.argv.includes('--check')

function keep(name: string, text: string): void {
  const target = new URL(`../${name}`, import.meta.url)
  if (!check) {
    writeFileSync(target, text)
  } else if (readFileSync(target, 'utf8') !== text) {
    console.error(`${name} is not what the code says: run npm run openapi`)
    process.exitCode = 1
  }
}

interface Contract {
  readonly paths: Record<string, Record<string, { responses?: Answers }>>
  readonly components: {
    readonly schemas: Record<string, { readonly additionalProperties?: unknown; readonly properties?: object }>
    readonly responses: object
    readonly headers: object
  }
}

type Answers = Record<string, { content?: Record<string, unknown> }>

/** The typed client speaks JSON; other forms of a resource are fetched by their Accept header. */
function keepJsonOnly(paths: Record<string, Record<string, { responses?: Answers }>>): void {
  for (const { responses = {} } of Object.values(paths).flatMap(path => Object.values(path))) {
    // A dry run has no data: with it in the types every answer might be none.
    delete responses['204']
    for (const answer of Object.values(responses)) {
      const json = answer.content?.['application/json']
      if (json !== undefined) answer.content = { 'application/json': json }
    }
  }
}

/**
 * A program writes requests and reads answers by their names: what each field of a request means stays beside it, the rest is on the
 * reference page. With every description the package would be twice as large.
 */
function keepWordsOfRequests(document: Contract): void {
  for (const schema of Object.values(document.components.schemas)) {
    if (schema.additionalProperties !== false && schema.properties !== undefined) dropWords(schema)
    else shortenWords(schema)
  }
  dropWords(document.paths)
  dropWords(document.components.responses)
  dropWords(document.components.headers)
}

/** The first sentence; units stand in the names. */
function shortenWords(node: unknown): void {
  if (typeof node !== 'object' || node === null) return
  const members = node as Record<string, unknown>
  if (typeof members.description === 'string') members.description = members.description.split(/[.:;](?= )| \[/)[0]
  for (const inner of Object.values(members)) shortenWords(inner)
}

/** A property that is itself called description is a schema, no text. */
function dropWords(node: unknown): void {
  if (typeof node !== 'object' || node === null) return
  const members = node as Record<string, unknown>
  for (const name of ['description', 'summary']) if (typeof members[name] === 'string') delete members[name]
  for (const inner of Object.values(members)) dropWords(inner)
}

/** Editors show a tag by its name first; a plain comment starts with the words. */
const untagged = (types: string) => types.replaceAll(/^( *(?:\/\*)?\*+ )@description /gm, '$1')

/** A property with a default stays optional: this service puts no defaults into schemas, another generator might. */
async function clientTypes(yaml: string): Promise<string> {
  const document: Contract = parse(yaml)
  keepJsonOnly(document.paths)
  keepWordsOfRequests(document)
  const types = await openapiTypes(document as unknown as Parameters<typeof openapiTypes>[0], {
    defaultNonNullable: false,
    alphabetize: true
  })
  return `/** Generated from openapi.yaml by npm run openapi. */\n${untagged(astToString(types))}`
}

const app = await buildApp()
await app.ready()
const { yaml } = await app.contract()
keep('openapi.yaml', yaml)
keep('client/schema.ts', await clientTypes(yaml))
await app.close()
