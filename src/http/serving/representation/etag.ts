/** Strong entity tags of answers that depend on nothing but the version and the input, known before anything is computed. */
import type { FastifyReply, FastifyRequest } from 'fastify'
import { digestOf } from '../../wire/answer/calculation.ts'
import { version } from '../../wire/answer/version.ts'
import { isCompressible } from './encoding.ts'
import { varyBy } from './vary.ts'

/** `?a=1&b=2` and `?b=2&a=1` are one resource. */
export const entityTag = (resource: string, input: unknown): string => `"${digestOf([version, resource, input])}"`

/** The tag of the same answer in compressed bytes; a tag that says so already stays. */
export function packedTag(tag: string, encoding: string): string {
  return tag.endsWith(`-${encoding}"`) ? tag : tag.replace(/"$/, `-${encoding}"`)
}

const unpackedTag = (tag: string) => tag.replace(/-(br|gzip)"$/, '"')

/** The tag among those the client has that names this answer, compressed or not; compared weakly (RFC 9110 §8.8.3.2). */
export function knownTag(header: string | undefined, tag: string): string | undefined {
  const given = (header ?? '').split(',').map(known => known.trim().replace(/^W\//, ''))
  return given.find(known => unpackedTag(known) === tag)
}

/** How long a figure that was wrong may still be read after it was put right [s]; nothing older is served, not even meanwhile. */
const LIFETIME_S = 3_600

interface Cacheable {
  readonly tag: string
  readonly shared: boolean
  readonly type?: string
}

/** Says how long a cache may keep the answer, and under which tag. */
function describeCacheable(reply: FastifyReply, { tag, shared }: Cacheable): FastifyReply {
  const who = shared ? 'public' : 'private'
  return reply.header('etag', tag).header('cache-control', `${who}, max-age=${LIFETIME_S}, must-revalidate`)
}

/**
 * Sends what a cache may keep: 304 without computing where the client has it already.
 * @param text  makes the body; only called when it is needed
 */
export async function sendCacheable(
  request: FastifyRequest,
  reply: FastifyReply,
  { tag, shared, type = 'application/json; charset=utf-8' }: Cacheable,
  text: () => string | Buffer | Promise<string | Buffer>
): Promise<FastifyReply> {
  if (isCompressible(type)) varyBy(reply, 'Accept-Encoding')
  const header = request.headers['if-none-match']
  const known = knownTag(header, tag)
  if (known !== undefined) return describeCacheable(reply, { tag: known, shared }).code(304).send()
  const body = await text()
  const kept = describeCacheable(reply, { tag, shared })
  // `*` is no tag; it says that any answer will do, which needs one to exist.
  return header?.trim() === '*' ? kept.code(304).send() : kept.type(type).send(body)
}
