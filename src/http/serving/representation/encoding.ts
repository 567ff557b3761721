/** Which compression a caller reads, and what is worth compressing. */
import { withoutQuoted } from './negotiate.ts'

/** The better first: where a caller reads both alike it gets this one. */
export const encodings = ['br', 'gzip'] as const
export type Encoding = (typeof encodings)[number]

/** Below it the frame of a compressed text eats what it saves. */
export const LEAST_COMPRESSED_BYTES = 1_024

/** Text, JSON and drawings shrink to a third and less; PDF holds compressed streams, lines of a stream must leave as they come. */
const compressible = /^(text\/|image\/(svg\+xml|vnd\.dxf)|model\/gltf-binary|application\/([\w.]+\+)?(json|yaml)\b)/
export const isCompressible = (type: string): boolean => compressible.test(type)

/** A weight has at most three decimals and lies in 0 … 1; anything else makes the coding void. */
const entry = /^([\w*!#$%&'+.^`|~-]+)\s*(?:;\s*q\s*=\s*(0(?:\.\d{0,3})?|1(?:\.0{0,3})?))?$/i

function weights(header: string): ReadonlyMap<string, number> {
  return new Map(
    withoutQuoted(header)
      .split(',')
      .flatMap(text => {
        const [, coding, weight = '1'] = entry.exec(text.trim()) ?? []
        return coding === undefined ? [] : [[coding.toLowerCase().replace(/^x-gzip$/, 'gzip'), Number(weight)] as const]
      })
  )
}

/**
 * @param header  the Accept-Encoding header, if there is one
 * @returns undefined where the answer leaves as it is
 * @source RFC 9110 §12.5.3 (from memory): `*` stands for every coding not named, q=0 refuses one
 */
export function acceptedEncoding(header: string | undefined): Encoding | undefined {
  if (header === undefined) return undefined
  const given = weights(header)
  const weightOf = (encoding: Encoding) => given.get(encoding) ?? given.get('*') ?? 0
  const [best] = encodings.filter(encoding => weightOf(encoding) > 0).sort((a, b) => weightOf(b) - weightOf(a))
  return best !== undefined && weightOf(best) >= (given.get('identity') ?? 0) ? best : undefined
}
