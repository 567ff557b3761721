/**
 * Every example is worked out once, and is what the contract shows. It tells of a figure that has moved, never of one that is
 * wrong: `npm run mutants` counts what only this sees apart.
 */
import { describe, expect, it } from 'vitest'
import { operations } from '../src/http/operations.ts'
import { committed, contractFaults } from './support/contract-judge.ts'
import { plain, worked } from './support/worked-examples.ts'

describe('an example of the contract', () => {
  for (const operation of operations) {
    const { path, operationId, examples } = operation
    const { examples: shown } = committed.paths[path].post.responses[200].content['application/json']
    for (const [name, { request }] of Object.entries(examples))
      it(`${operationId}: ${name} is answered as shown`, () => {
        const body = plain(worked(operation, request))
        expect(contractFaults(path, 200, 'application/json', body)).toEqual([])
        expect(body).toEqual(shown?.[name]?.value ?? body)
      })
  }
})
