/** What surrounds every result: cautions, assumed defaults, sources, and on request the basis of each figure. */
import Type, { type Static, type TSchema } from 'typebox'
import { cautionCodes } from '../cautions/catalogue.ts'
import { sourceIds } from '../sources/source.ts'
import { component, ref } from './component.ts'
import { choice } from './quantities.ts'
import type { Si } from './wire-units.ts'

export const CautionBody = component('Caution', 'A doubt or danger, said beside the result.', {
  code: choice('Code of the caution; /v1/cautions documents each', cautionCodes),
  level: choice('`note`: know this. `care`: change or watch it. `stop`: do not build or switch this on.', [
    'note',
    'care',
    'stop'
  ]),
  message: Type.String({ description: 'What is the matter, with its figures' }),
  at: Type.Optional(Type.String({ description: 'JSON pointer into the request' })),
  figures: Type.Optional(
    Type.Unsafe<Readonly<Record<string, number>>>({
      type: 'object',
      description: 'The figures that triggered it; each name ends in its unit',
      additionalProperties: { type: 'number' }
    })
  )
})

const AssumedBody = component('Assumed', 'A default used because the request left the field out.', {
  pointer: Type.String({ description: 'JSON pointer of the field in the request' }),
  value: Type.Unsafe<number | string | boolean>({
    description: 'The value used, in the unit of the field',
    type: ['number', 'string', 'boolean']
  }),
  why: Type.String({ description: 'Why this value' })
})

const BasisInputBody = component('BasisInput', 'A symbol of a formula, its value and SI unit.', {
  symbol: Type.String({ description: 'Symbol as in the formula' }),
  value: Type.Number({ description: 'Its value' }),
  unit: Type.String({ description: 'Its SI unit' })
})

const BasisBody = component(
  'Basis',
  'One figure of the result, explained so that it can be worked out again. SI units throughout.',
  {
    quantity: Type.String({ description: 'JSON pointer of the figure in the result' }),
    formulaId: Type.String({ description: 'Id of the formula; see /v1/reference/formulas' }),
    formula: Type.String({
      description: 'Plain arithmetic over the input symbols: + - * / ^ sqrt() log10() pi min() max()'
    }),
    inputs: Type.Array(ref(BasisInputBody), { description: 'The values the formula was fed with' }),
    value: Type.Number({ description: 'What the formula gives, in `unit`' }),
    unit: Type.String({ description: 'SI unit of the value' }),
    source: choice('Id of the source', sourceIds)
  }
)
export interface Basis extends Si<Static<typeof BasisBody>> {}

export const CalculationBody = component('Calculation', 'What an answer is cited by; on paper too.', {
  version: Type.String({ description: 'Version of the service; /v1/changes says which figures each version moved' }),
  digest: Type.String({
    description:
      'The first 27 letters of SHA-256 in base64url over `[version, operationId, request]` as canonical JSON (RFC 8785): the same question of the same version has the same digest, and the same answer'
  })
})

/** The body of a successful answer around one kind of result. */
export function answerOf<Result extends TSchema>(name: string, result: Result) {
  return component(name, 'Result with its cautions, assumed defaults and sources.', {
    result: ref(result),
    cautions: Type.Array(ref(CautionBody), { description: 'Doubts and dangers, the gravest first' }),
    assumed: Type.Array(ref(AssumedBody), { description: 'Every default that was used' }),
    sources: Type.Array(choice('Id of a source', sourceIds), {
      description: 'See /v1/reference/sources'
    }),
    basis: Type.Optional(Type.Array(ref(BasisBody), { description: 'With `?basis=true`' })),
    calculation: ref(CalculationBody)
  })
}
