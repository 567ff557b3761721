/** What is made for one caller leaves compressed where it can be read so; fixed texts are compressed once, see etag.ts. */
import compress from '@fastify/compress'
import type { FastifyInstance, FastifyReply, RouteOptions } from 'fastify'
import { encodings, isCompressible, LEAST_COMPRESSED_BYTES } from './encoding.ts'
import { packedTag } from './etag.ts'
import { varyBy } from './vary.ts'

/** Up to here compressing at once is cheaper than a stream for it, and well below a millisecond. */
const LONGEST_AT_ONCE_BYTES = 16_384

/** Bytes that differ have tags that differ (RFC 9110 §8.8.3.3), and a cache is told what they depend on. */
function describeEncoding(reply: FastifyReply): void {
  if (!isCompressible(String(reply.getHeader('content-type') ?? ''))) return
  varyBy(reply, 'Accept-Encoding')
  const [encoding, tag] = [reply.getHeader('content-encoding'), reply.getHeader('etag')]
  if (encoding !== undefined && tag !== undefined) reply.header('etag', packedTag(String(tag), String(encoding)))
}

const hooks = <Hook>(given: Hook | Hook[] | undefined): Hook[] =>
  given === undefined ? [] : Array.isArray(given) ? given : [given]

export async function registerCompression(app: FastifyInstance): Promise<void> {
  await app.register(compress, {
    globalDecompression: false,
    encodings: [...encodings],
    customTypes: isCompressible,
    threshold: LEAST_COMPRESSED_BYTES,
    syncThreshold: LONGEST_AT_ONCE_BYTES
  })
  // The plugin compresses in a hook of the route, and so this one, which must come after, is one as well.
  app.addHook('onRoute', (route: RouteOptions) => {
    route.onSend = [
      ...hooks(route.onSend),
      (_request, reply, payload, done) => {
        describeEncoding(reply)
        done(null, payload)
      }
    ]
  })
}
