/** The envelope of an answer: paths of the domain become pointers on the wire, assumed values take the public unit. */
import type { JsonSchema } from '../../../contract/field/component.ts'
import { type Caution, gravestFirst } from '../../../domain/caution.ts'
import type { Outcome } from '../../../domain/outcome.ts'
import type { Calculation } from './calculation.ts'
import { wirePath } from './wire-path.ts'

function wireCautions(cautions: readonly Caution[], request: JsonSchema) {
  return gravestFirst(cautions).map(({ at, ...rest }) =>
    at === undefined ? rest : { ...rest, at: wirePath(request, at).pointer }
  )
}

export function wireOutcome<Result>(
  { result, cautions, assumed, sources, basis }: Outcome<Result>,
  request: JsonSchema,
  resultSchema: JsonSchema,
  withBasis: boolean,
  calculation: Calculation
) {
  return {
    result,
    cautions: wireCautions(cautions, request),
    assumed: assumed.map(({ field, value, why }) => {
      const { pointer, perSi } = wirePath(request, field)
      return { pointer, value: typeof value === 'number' ? value * perSi : value, why }
    }),
    sources: [...new Set([...sources, ...basis.map(({ source }) => source)])].sort(),
    ...(withBasis
      ? {
          basis: basis.map(({ quantity, ...rest }) => ({ quantity: wirePath(resultSchema, quantity).pointer, ...rest }))
        }
      : {}),
    calculation
  }
}
