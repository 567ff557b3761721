/** Holds every request against the contract before anything is computed. */
import type { ErrorObject, ValidateFunction } from 'ajv'
import type { FastifyInstance } from 'fastify'
import type { TSchema } from 'typebox'
import { branchesOf, namedComponents } from '../../../contract/field/component.ts'
import type { ProblemError } from '../../wire/problem/problem.ts'
import { longLists } from '../../wire/request/long-lists.ts'
import { schemaCheck } from '../../wire/request/schema-check.ts'
import { schemaFaults } from '../../wire/request/schema-faults.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** Holds a request that did not come as a body, in a batch or a query, against the schema of the body. */
    readonly faultsOf: (schema: TSchema, request: unknown) => readonly ProblemError[]
    /** What the routes hold requests against, for the build that writes the checks. */
    readonly checkedSchemas: readonly object[]
  }
}

/** What is wrong with a value; empty where nothing is. */
type Finding = (value: unknown) => readonly ErrorObject[]

function findingsOf(schema: object): Finding {
  const long = longLists(branchesOf(schema))
  let validate: ValidateFunction | undefined
  return value => {
    const lists = long(value, '')
    if (lists.length > 0) return lists
    // When first needed: all of them together are half of the start.
    validate ??= schemaCheck(schema)
    return validate(value) === true ? [] : (validate.errors ?? [])
  }
}

export function registerValidation(app: FastifyInstance): void {
  const checked: object[] = []
  for (const schema of namedComponents()) app.addSchema(schema)
  app.setValidatorCompiler(({ schema }) => {
    checked.push(schema as object)
    const found = findingsOf(schema as object)
    const validate = (value: unknown) => {
      validate.errors = [...found(value)]
      return validate.errors.length === 0
    }
    validate.errors = [] as ErrorObject[]
    return validate
  })
  // Answers leave as text that json-writer made; compiling a serialiser for each route would only cost start-up time.
  app.setSerializerCompiler(() => data => JSON.stringify(data))
  app.decorate('checkedSchemas', checked)
  app.decorate('faultsOf', (schema, request) => schemaFaults(findingsOf(schema)(request)))
}
