/** Strong entity tags of answers that depend on nothing but the version and the input, known before anything is computed. */
import { createHash } from 'node:crypto'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { version } from '../wire/version.ts'

/** JSON with its names in one order, so that `?a=1&b=2` and `?b=2&a=1` are one resource. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${members.map(([name, inner]) => `${JSON.stringify(name)}:${canonical(inner)}`).join(',')}}`
}

export function entityTag(resource: string, input: unknown): string {
  const text = canonical([version, resource, input])
  return `"${createHash('sha256').update(text).digest('base64url').slice(0, 27)}"`
}

/** If-None-Match by the weak comparison of RFC 9110 §8.8.3.2; `*` is no tag and matches nothing here. */
export function isKnown(header: string | undefined, tag: string): boolean {
  return (header ?? '').split(',').some(known => known.trim().replace(/^W\//, '') === tag)
}

/** A text that stays as it is: tag and bytes are made once, so that many askers cost little. */
export interface FixedText {
  readonly tag: string
  readonly bytes: Buffer
}

export function fixedText(path: string, text: string): FixedText {
  return { tag: entityTag(path, text), bytes: Buffer.from(text) }
}

const DAY_S = 86_400

/**
 * Sends what a cache may keep: 304 without computing where the client has it already.
 * @param text  makes the body; only called when it is needed
 */
export async function sendCacheable(
  request: FastifyRequest,
  reply: FastifyReply,
  { tag, shared, type = 'application/json; charset=utf-8' }: { tag: string; shared: boolean; type?: string },
  text: () => string | Buffer | Promise<string | Buffer>
): Promise<FastifyReply> {
  const known = request.headers['if-none-match']
  const kept = () =>
    reply
      .header('etag', tag)
      .header(
        'cache-control',
        `${shared ? 'public' : 'private'}, max-age=${DAY_S}, stale-while-revalidate=${7 * DAY_S}`
      )
  if (isKnown(known, tag)) return kept().code(304).send()
  const body = await text()
  return known?.trim() === '*' ? kept().code(304).send() : kept().type(type).send(body)
}
