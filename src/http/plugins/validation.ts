/** Holds every request against the contract before anything is computed. */
import type { ErrorObject } from 'ajv'
import type { FastifyInstance } from 'fastify'
import type { TSchema } from 'typebox'
import type { ProblemError } from '../problem.ts'
import { requestValidator } from '../request-validator.ts'
import { schemaFaults } from '../schema-faults.ts'
import { namedComponents } from '../schemas/component.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** Holds a request that did not come as a body, in a batch or a query, against the schema of the body. */
    readonly faultsOf: (schema: TSchema, request: unknown) => readonly ProblemError[]
  }
}

export function registerValidation(app: FastifyInstance): void {
  const ajv = requestValidator()
  for (const schema of namedComponents()) app.addSchema(schema)
  const compiled = (schema: object) => {
    const id = (schema as { $id?: string }).$id
    return (id === undefined ? undefined : ajv.getSchema(id)) ?? ajv.compile(schema)
  }
  app.setValidatorCompiler(({ schema }) => compiled(schema as object))
  // Answers leave as text that json-writer made; compiling a serialiser for each route would only cost start-up time.
  app.setSerializerCompiler(() => data => JSON.stringify(data))
  app.decorate('faultsOf', (schema, request) => {
    const validate = compiled(schema)
    return validate(request) === true ? [] : schemaFaults((validate.errors ?? []) as ErrorObject[])
  })
}
