/** A field of a request that no inner room reads would be taken and dropped. */
import { describe, expect, it } from 'vitest'
import type { JsonSchema } from '../src/contract/field/component.ts'
import { operations } from '../src/http/operations.ts'
import { contractFields, contractProgram, fieldsRead } from './support/field-reads.ts'
import { objectsOf } from './support/schema-walk.ts'

/** Names of the components that requests are made of; what a join takes are answers, handed back. */
const requestComponents = (): ReadonlySet<string> =>
  new Set(
    [
      ...objectsOf(
        operations.flatMap(({ operationId, body }) => (operationId === 'mergeDesigns' ? [] : [body as JsonSchema]))
      )
    ].flatMap(({ $id }) => $id ?? [])
  )

/**
 * Fields that the compiler cannot follow to a reader yet: what reads them has an interface of its own, not derived from the
 * contract. The number may only fall.
 */
const NOT_FOLLOWED = 161

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
