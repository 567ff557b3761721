/** One strict validator (JSON Schema 2020-12) for every request: nothing is coerced, removed or defaulted. */
import { Ajv2020 } from 'ajv/dist/2020.js'
import type { FastifyInstance } from 'fastify'
import { namedComponents } from '../schemas/component.ts'

export function requestValidator(): Ajv2020 {
  const ajv = new Ajv2020({
    strict: true,
    strictRequired: false,
    strictTypes: false,
    allErrors: true,
    coerceTypes: false,
    removeAdditional: false,
    useDefaults: false,
    discriminator: true
  })
  for (const schema of namedComponents()) ajv.addSchema(schema)
  return ajv
}

export function registerValidation(app: FastifyInstance): void {
  const ajv = requestValidator()
  for (const schema of namedComponents()) app.addSchema(schema)
  app.setValidatorCompiler(({ schema }) => {
    const id = (schema as { $id?: string }).$id
    return (id === undefined ? undefined : ajv.getSchema(id)) ?? ajv.compile(schema)
  })
}
