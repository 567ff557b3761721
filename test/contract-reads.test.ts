/** A field of a request that no inner room reads would be taken and dropped. */
import { describe, expect, it } from 'vitest'
import type { JsonSchema } from '../src/contract/field/component.ts'
import { resolve } from '../src/contract/field/component.ts'
import { operations } from '../src/http/operations.ts'
import { contractFields, contractProgram, fieldsRead } from './support/field-reads.ts'

/** Names of the components that requests are made of. */
function requestComponents(): ReadonlySet<string> {
  const names = new Set<string>()
  const walk = (given: JsonSchema): void => {
    const schema = resolve(given)
    if (schema.$id !== undefined) {
      if (names.has(schema.$id)) return
      names.add(schema.$id)
    }
    for (const inner of Object.values(schema.properties ?? {})) walk(inner)
    for (const inner of [...(schema.oneOf ?? []), ...(schema.anyOf ?? [])]) walk(inner)
    if (schema.items !== undefined) walk(schema.items)
  }
  for (const { body } of operations) walk(body as JsonSchema)
  return names
}

/**
 * Fields that the compiler cannot follow to a reader yet: what reads them has an interface of its own, not derived from the
 * contract. The number may only fall.
 */
const NOT_FOLLOWED = 173

describe('requests', () => {
  const program = contractProgram()
  const read = fieldsRead(program, /^(domain|plan|documents)\//)
  const fields = contractFields(program, requestComponents())

  it('hold no field more that no inner room reads', () => {
    expect(fields.length).toBeGreaterThan(900)
    const unread = fields.filter(({ place }) => !read.has(place)).map(({ component, field }) => `${component}.${field}`)
    expect(unread.length, unread.join(' ')).toBeLessThanOrEqual(NOT_FOLLOWED)
  })

  it('are followed from a use to their line in the contract', () => {
    const of = (component: string) => fields.filter(field => field.component === component)
    const seen = (component: string) => of(component).filter(({ place }) => read.has(place)).length
    expect(of('FuseRequest').length).toBeGreaterThan(12)
    expect(seen('FuseRequest')).toBe(of('FuseRequest').length)
  })
})
