/** The forms of an answer: asked for by name in the query, else by Accept. */

import type { FastifyReply, FastifyRequest } from 'fastify'
import Type from 'typebox'
import { choice } from '../../../contract/field/quantities.ts'
import { say, worded } from '../../../domain/say.ts'
import type { Operation } from '../../wire/operation.ts'
import { Refusal } from '../../wire/problem/refusal.ts'
import { acceptedType } from './negotiate.ts'
import { varyBy } from './vary.ts'

/** The one place where a form has its short name and its media type. */
const mediaTypeByName = {
  json: 'application/json',
  compact: 'application/vnd.cabinbass.compact+json',
  ndjson: 'application/x-ndjson',
  html: 'text/html',
  pdf: 'application/pdf',
  text: 'text/plain',
  markdown: 'text/markdown',
  csv: 'text/csv',
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  gltf: 'model/gltf-binary'
} as const satisfies Readonly<Record<string, string>>

/** The short name of each media type. */
export const formNames: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(mediaTypeByName).map(([name, type]) => [type, name])
)

export const NDJSON = mediaTypeByName.ndjson

function nameOf(mediaType: string): string {
  const name = formNames[mediaType]
  if (name === undefined) throw new TypeError(`the form ${mediaType} has no short name`)
  return name
}

type Forms = readonly [string, ...string[]]

export interface FormQuery {
  readonly form?: string
}

/** The names of these media types, JSON before them, as a parameter of the query. */
export const formChoice = (others: readonly string[]) =>
  Type.Optional(
    choice('Form of the answer, for who cannot set Accept; stands before it', [
      nameOf('application/json'),
      ...others.map(nameOf)
    ])
  )

export const mediaTypes = ({ forms }: Operation): Forms => [
  'application/json',
  ...forms.map(({ mediaType }) => mediaType)
]

export const isText = (form: string) =>
  /^(text\/|application\/([\w.]+\+)?json|application\/x-ndjson|image\/svg)/.test(form)

/** Text leaves in UTF-8 and says so; bytes say nothing of it. */
export const contentType = (form: string) => (isText(form) ? `${form}; charset=utf-8` : form)

function unknownForm(forms: Forms): Refusal {
  const allowed = forms.map(nameOf)
  return new Refusal('invalid-request', say('service.forms', { forms: allowed.join(', ') }), {
    errors: [
      {
        pointer: '/form',
        parameter: 'form',
        code: 'unknown-value',
        ...worded({ detail: say('contract.one-of', { allowed: allowed.join(', ') }) }),
        bounds: { allowed }
      }
    ]
  })
}

/** Chooses the form before a body is read. @throws Refusal 400 for a name that is none, 406 */
export function negotiated(forms: Forms, { headers, query }: FastifyRequest, reply: FastifyReply): string {
  const { form: named } = query as FormQuery
  if (named !== undefined && forms.length > 1) {
    const form = forms.find(mediaType => nameOf(mediaType) === named)
    if (form === undefined) throw unknownForm(forms)
    return form
  }
  if (forms.length > 1) varyBy(reply, 'Accept')
  const form = acceptedType(headers.accept, forms)
  if (form === undefined) throw new Refusal('not-acceptable', say('service.media-types', { types: forms.join(', ') }))
  return form
}
