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

type Answers = Record<string, { content?: Record<string, unknown> }>

/** The typed client speaks JSON; other forms of a resource are fetched by their Accept header. */
function keepJsonOnly(paths: Record<string, Record<string, { responses?: Answers }>>): void {
  for (const { responses = {} } of Object.values(paths).flatMap(path => Object.values(path))) {
    for (const answer of Object.values(responses)) {
      const json = answer.content?.['application/json']
      if (json !== undefined) answer.content = { 'application/json': json }
    }
  }
}

/** A property with a default stays optional: this service puts no defaults into schemas, another generator might. */
async function clientTypes(yaml: string): Promise<string> {
  const document = parse(yaml)
  keepJsonOnly(document.paths)
  const types = await openapiTypes(document, {
    defaultNonNullable: false,
    alphabetize: true
  })
  return `/** Generated from openapi.yaml by npm run openapi. */\n${astToString(types)}`
}

const app = await buildApp()
await app.ready()
const { yaml } = await app.contract()
keep('openapi.yaml', yaml)
keep('client/schema.ts', await clientTypes(yaml))
await app.close()
