/**
 * The check of a schema, compiled when first needed. A build puts checks that it has written as code in the place of this file
 * (`scripts/built-checks.ts`): compiling takes up to a quarter of a second of the thread that answers everybody.
 */
import type { ValidateFunction } from 'ajv'
import type { Ajv2020 } from 'ajv/dist/2020.js'
import { namedComponents } from '../../../contract/field/component.ts'
import { requestValidator } from './request-validator.ts'
import { schemaName } from './schema-key.ts'

let validator: Ajv2020 | undefined
let known = 0

export function schemaCheck(schema: object): ValidateFunction {
  const components = namedComponents()
  // Modules loaded since have brought components that the validator of before cannot refer to.
  if (validator === undefined || components.length > known) {
    validator = requestValidator({}, components)
    known = components.length
  }
  const name = schemaName(schema)
  return (name === undefined ? undefined : validator.getSchema(name)) ?? validator.compile(schema)
}
