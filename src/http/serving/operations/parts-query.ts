/** `?parts=summary,billOfMaterials`: only these parts of a large result. */

import Type from 'typebox'
import { say, worded } from '../../../domain/say.ts'
import type { Operation } from '../../wire/operation.ts'
import type { ProblemError } from '../../wire/problem/problem.ts'
import { Refusal } from '../../wire/problem/refusal.ts'
import { nearestName } from '../../wire/request/nearest-name.ts'

export interface PartsQuery {
  readonly parts?: string
}

export const partsParameter = ({ parts }: Operation) =>
  Type.Optional(
    Type.String({
      description: `Only these parts of the result, divided by commas; the summary with the verdict, all cautions and all defaults always come. There are ${parts.map(name => `\`${name}\``).join(', ')}`,
      minLength: 1,
      maxLength: 1_000
    })
  )

function faultOf(names: readonly string[], known: readonly string[]): readonly ProblemError[] {
  return names.flatMap((name, at) => {
    if (known.includes(name)) return []
    const meant = nearestName(name, known)
    const detail = say('service.no-part', { meant: meant === undefined ? [] : say('contract.meant', { name: meant }) })
    return [
      {
        pointer: `/parts/${at}`,
        parameter: 'parts',
        code: 'unknown-value',
        ...worded({ detail }),
        bounds: { allowed: known }
      }
    ]
  })
}

/** @returns nothing where all of the result is wanted. @throws Refusal 400 for an unknown part, or parts of a form that has none */
export function askedParts({ parts: known }: Operation, { parts }: PartsQuery, form: string) {
  if (parts === undefined) return {}
  if (form !== 'application/json') {
    const detail = say('service.parts-of-json')
    throw new Refusal('invalid-request', detail, {
      errors: [{ pointer: '/parts', parameter: 'parts', code: 'not-applicable', ...worded({ detail }) }]
    })
  }
  const names = parts.split(',').map(name => name.trim())
  const errors = faultOf(names, known)
  if (errors.length > 0) throw new Refusal('invalid-request', say('service.parts-unknown'), { errors })
  return { parts: names }
}
