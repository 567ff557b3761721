/** One strict validator (JSON Schema 2020-12) for every request: nothing is coerced, removed or defaulted. */
import { Ajv2020 } from 'ajv/dist/2020.js'
import { namedComponents } from '../../../contract/field/component.ts'

export function requestValidator(): Ajv2020 {
  const ajv = new Ajv2020({
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
    validateSchema: false
  })
  for (const schema of namedComponents()) ajv.addSchema(schema)
  return ajv
}
