/** A text that stays as it is: tag, bytes and compressed bytes are made once, so that many askers cost little. */
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip } from 'node:zlib'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { placedFixed } from './base-path.ts'
import { acceptedEncoding, type Encoding, isCompressible, LEAST_COMPRESSED_BYTES } from './encoding.ts'
import { entityTag, sendCacheable } from './etag.ts'
import { builtPacked } from './fixed-file.ts'

export interface FixedText {
  readonly path: string
  readonly tag: string
  readonly bytes: Buffer
  readonly packed: (encoding: Encoding) => Promise<Buffer>
}

const brotli = promisify(brotliCompress)
const zip = promisify(gzip)

/** The hardest that the format knows takes a second for the contract: for the build, where nobody waits. */
const HARDEST = constants.BROTLI_MAX_QUALITY
const QUICK = 5

export function pack(bytes: Buffer, encoding: Encoding, brotliQuality: number = HARDEST): Promise<Buffer> {
  return encoding === 'gzip'
    ? zip(bytes, { level: constants.Z_BEST_COMPRESSION })
    : brotli(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: brotliQuality } })
}

export function fixedText(path: string, text: string): FixedText {
  const bytes = Buffer.from(text)
  const made = new Map<Encoding, Promise<Buffer>>()
  const packedNow = async (encoding: Encoding) => builtPacked(path, encoding) ?? pack(bytes, encoding, QUICK)
  return {
    path,
    tag: entityTag(path, text),
    bytes,
    packed: encoding => {
      const packed = made.get(encoding) ?? packedNow(encoding)
      made.set(encoding, packed)
      return packed
    }
  }
}

interface Sending {
  readonly shared: boolean
  readonly type?: string
}

const byPlace = new WeakMap<FixedText, FixedText>()

/** The text as it stands behind a gateway with a path of its own; made once as well. */
function here(fixed: FixedText, type: string, basePath: string): FixedText {
  if (basePath === '') return fixed
  const made =
    byPlace.get(fixed) ?? fixedText(basePath + fixed.path, placedFixed(fixed.bytes.toString(), type, basePath))
  byPlace.set(fixed, made)
  return made
}

/** Sends a fixed text, in the compressed bytes that were kept where the caller reads them. */
export async function sendFixed(
  request: FastifyRequest,
  reply: FastifyReply,
  fixed: FixedText,
  { shared, type = 'application/json; charset=utf-8' }: Sending
): Promise<FastifyReply> {
  const { tag, bytes, packed } = here(fixed, type, request.server.basePath)
  const wanted = acceptedEncoding(request.headers['accept-encoding'])
  const encoding = isCompressible(type) && bytes.length >= LEAST_COMPRESSED_BYTES ? wanted : undefined
  return sendCacheable(request, reply, { tag, shared, type }, async () => {
    if (encoding === undefined) return bytes
    reply.header('content-encoding', encoding)
    return packed(encoding)
  })
}
