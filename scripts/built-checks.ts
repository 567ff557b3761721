/**
 * The checks of all requests as code, for the bundle: what compiling at run time gives, without the compiler. They stand in one
 * file beside the bundle, which is read when the first request comes, not when the service starts.
 */
import type { ValidateFunction } from 'ajv'
import standalone from 'ajv/dist/standalone/index.js'
import { build, type Plugin } from 'esbuild'
import type { TSchema } from 'typebox'
import { namedComponents } from '../src/contract/field/component.ts'
import { requestValidator } from '../src/http/wire/request/request-validator.ts'
import { schemaKey, schemaName } from '../src/http/wire/request/schema-key.ts'

/** Faults speak of members and kinds, never of what a schema says of itself in prose. */
function withoutProse(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withoutProse)
  if (typeof node !== 'object' || node === null) return node
  const kept = Object.entries(node).filter(([name, inner]) => name !== 'description' || typeof inner !== 'string')
  return Object.fromEntries(kept.map(([name, inner]) => [name, withoutProse(inner)]))
}

const plain = (schema: object) => withoutProse(JSON.parse(JSON.stringify(schema))) as TSchema

/** A module of CommonJS, which can be loaded within a call: for each schema its check under its key. */
export async function checksAsCode(schemas: readonly object[]): Promise<string> {
  const ajv = requestValidator({ code: { source: true }, messages: false }, namedComponents().map(plain))
  const byKey = [...new Map(schemas.map(schema => [schemaKey(schema), schema]))]
  const idByKey = byKey.map(([key, schema], at): readonly [key: string, id: string] => {
    if (schemaName(schema) === key) return [key, key]
    ajv.addSchema(plain(schema), `nameless-${at}`)
    return [key, `nameless-${at}`]
  })
  const code = standalone.default(ajv, Object.fromEntries(idByKey.map(([, id], at) => [`check${at}`, id])))
  const table = idByKey.map(([key], at) => `${JSON.stringify(key)}:exports.check${at}`)
  const { outputFiles } = await build({
    stdin: { contents: `${code};module.exports={${table.join(',')}}`, resolveDir: import.meta.dirname },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    minifySyntax: true,
    minifyWhitespace: true
  })
  return outputFiles[0]?.text ?? ''
}

export type Checks = Readonly<Record<string, ValidateFunction>>

export const checksFile = 'checks.cjs'

const fromFile = `import { createRequire } from 'node:module'
import { schemaKey, schemaName } from './schema-key.ts'
let checks
export function schemaCheck(schema) {
  checks ??= createRequire(import.meta.url)('./${checksFile}')
  const check = checks[schemaKey(schema)]
  if (check === undefined) throw new TypeError('the build has written no check of ' + schemaKey(schema))
  return check
}`

/** In the bundle, who asks for a check gets it from that file. */
export const builtChecks: Plugin = {
  name: 'built-checks',
  setup: ({ onLoad }) => {
    onLoad({ filter: /request[\\/]schema-check\.ts$/ }, ({ path }) => ({
      contents: fromFile,
      resolveDir: path.replace(/[\\/][^\\/]*$/, '')
    }))
  }
}
