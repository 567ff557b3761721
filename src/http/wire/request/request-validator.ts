/** One strict validator (JSON Schema 2020-12) for every request: nothing is coerced, removed or defaulted. */
import type { Options } from 'ajv'
import { Ajv2020 } from 'ajv/dist/2020.js'
import type { TSchema } from 'typebox'
import { namedComponents } from '../../../contract/field/component.ts'

const strict = {
  strict: true,
  strictRequired: false,
  strictTypes: false,
  allErrors: true,
  coerceTypes: false,
  removeAdditional: false,
  useDefaults: false,
  discriminator: true,
  // The refusal of an unknown kind lists the known ones from its schema.
  verbose: true,
  // The schemas are ours: a test holds them against the published schema of schemas, a start need not.
  validateSchema: false,
  // An object that many hold is checked by one function, not by a copy in each.
  inlineRefs: false
} as const satisfies Options

export function requestValidator(more: Options = {}, components: readonly TSchema[] = namedComponents()): Ajv2020 {
  const ajv = new Ajv2020({ ...strict, ...more })
  for (const schema of components) ajv.addSchema(schema)
  return ajv
}
