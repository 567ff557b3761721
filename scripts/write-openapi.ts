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

/** A property with a default stays optional: this service puts no defaults into schemas, another generator might. */
async function clientTypes(yaml: string): Promise<string> {
  const types = await openapiTypes(parse(yaml), { defaultNonNullable: false, alphabetize: true })
  return `/** Generated from openapi.yaml by npm run openapi. */\n${astToString(types)}`
}

const app = await buildApp()
await app.ready()
const { yaml } = await app.contract()
keep('openapi.yaml', yaml)
keep('client/schema.ts', await clientTypes(yaml))
await app.close()
