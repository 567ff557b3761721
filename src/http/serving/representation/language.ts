/** Which language a caller reads: the Accept-Language header against the languages there are. */
import type { FastifyReply, FastifyRequest } from 'fastify'
import Type from 'typebox'
import { choice } from '../../../contract/field/quantities.ts'
import { type LanguageCode, languageCodes } from '../../../contract/sentences/words.ts'
import { weightOf, withoutQuoted } from './negotiate.ts'
import { varyBy } from './vary.ts'

interface Range {
  readonly tag: string
  readonly quality: number
}

function rangeOf(text: string): Range | undefined {
  const [tag = '', parameter] = text.split(';').map(part => part.trim().toLowerCase())
  // A parameter that is no weight makes the range void, as a weight does that is none.
  const given = parameter === undefined ? undefined : (/^q\s*=\s*(.*)$/.exec(parameter)?.[1] ?? '')
  const quality = weightOf(given)
  return quality === undefined ? undefined : { tag, quality }
}

/** The language of a tag: the one it names, else the one whose first part it has. */
const codeOf = ({ tag }: Range): LanguageCode | undefined =>
  languageCodes.find(code => code.toLowerCase() === tag) ?? languageCodes.find(code => tag.startsWith(`${code}-`))

/**
 * The language to answer in; English where none of those asked for is spoken, for an answer in a foreign language is better
 * than none.
 *
 * @source RFC 9110 §12.5.4, RFC 4647 §3.4 (both from memory): the weights, and lookup by the first part of a tag
 * @check  `de-AT, en;q=0.8` → de; `en-US, en;q=0.9` → en-US; `fr` → en; `en, de` → en; `de;q=0` → en
 */
export function acceptedLanguage(header: string | undefined): LanguageCode {
  if (header === undefined) return 'en'
  const ranges = withoutQuoted(header)
    .split(',')
    .flatMap(text => rangeOf(text) ?? [])
  const asked = languageCodes
    .map(code => ({
      code,
      quality: Math.max(0, ...ranges.filter(range => codeOf(range) === code).map(({ quality }) => quality))
    }))
    .filter(({ quality }) => quality > 0)
    .toSorted((a, b) => b.quality - a.quality)
  const [first, second] = asked
  if (first === undefined) return 'en'
  if (second === undefined || second.quality < first.quality) return first.code
  // Of two as welcome the one named first.
  return ranges.flatMap(range => codeOf(range) ?? [])[0] ?? 'en'
}

/** Read by programs, whoever asks: columns, layers and meshes have the names of the contract. */
const forMachines = /^(text\/csv|image\/vnd\.dxf|model\/)/

export const languageChoice = Type.Optional(
  choice('Language of what a person reads, for a link that is kept or printed; stands before Accept-Language', [
    ...languageCodes
  ])
)

function namedLanguage({ query }: FastifyRequest): LanguageCode | undefined {
  const { language } = (query ?? {}) as { readonly language?: unknown }
  return languageCodes.find(code => code === language)
}

/** The language of this answer, said in its headers. */
export function speaking(form: string, request: FastifyRequest, reply: FastifyReply): LanguageCode {
  const named = namedLanguage(request)
  if (named === undefined) varyBy(reply, 'Accept-Language')
  const code = forMachines.test(form) ? 'en' : (named ?? acceptedLanguage(request.headers['accept-language']))
  reply.header('content-language', code)
  return code
}
