/** The one way a body is read: application/json in UTF-8, as it stands. */

import type { FastifyInstance, FastifyRequest } from 'fastify'
import { say } from '../../domain/say.ts'
import { Refusal } from '../wire/problem/refusal.ts'
import { readJson } from '../wire/request/json-reader.ts'

const utf8 = new TextDecoder('utf-8', { fatal: true })

function decoded(bytes: Buffer): string {
  try {
    return utf8.decode(bytes)
  } catch {
    throw new Refusal('unreadable-body', say('service.body-no-utf8'))
  }
}

function refuseForeignForm(contentType: string, contentEncoding: string | undefined): void {
  const charset = /;\s*charset\s*=\s*"?([^";\s]*)/i.exec(contentType)?.[1]
  const plain = contentEncoding === undefined || contentEncoding === '' || contentEncoding.toLowerCase() === 'identity'
  if (charset !== undefined && !/^utf-?8$/i.test(charset)) {
    throw new Refusal('unsupported-media-type', say('service.body-in-utf8'), { headers: acceptPost })
  }
  if (!plain) {
    const headers = { ...acceptPost, 'accept-encoding': 'identity' }
    throw new Refusal('unsupported-media-type', say('service.body-uncompressed'), { headers })
  }
}

const acceptPost = { 'accept-post': 'application/json' } as const

export function registerBodies(app: FastifyInstance): void {
  app.removeAllContentTypeParsers()
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'buffer' },
    async (request: FastifyRequest, bytes: Buffer) => {
      refuseForeignForm(request.headers['content-type'] ?? '', request.headers['content-encoding'])
      return readJson(decoded(bytes))
    }
  )
}
