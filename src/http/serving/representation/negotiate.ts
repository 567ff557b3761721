/** Which form of an answer a caller wants: the Accept header against the media types there are. */

interface Range {
  readonly type: string
  readonly subtype: string
  readonly quality: number
}

/** A weight has at most three decimals and lies in 0 … 1; anything else makes the range void. */
const weight = /^(0(\.\d{0,3})?|1(\.0{0,3})?)$/

/** @returns nothing where it is no weight; 1 where none is given */
export function weightOf(given: string | undefined): number | undefined {
  if (given === undefined) return 1
  return weight.test(given) ? Number(given) : undefined
}

function rangeOf(text: string): Range | undefined {
  const [range = '', ...parameters] = text.split(';').map(part => part.trim())
  const [type = '', subtype = '', ...rest] = range.toLowerCase().split('/')
  if (type === '' || subtype === '' || rest.length > 0 || (type === '*' && subtype !== '*')) return undefined
  const given = parameters.find(parameter => /^q\s*=/i.test(parameter))?.replace(/^q\s*=\s*/i, '')
  const quality = weightOf(given)
  return quality === undefined ? undefined : { type, subtype, quality }
}

/** Exact type 3, any of a type 2, anything 1, no match 0. */
function closeness({ type, subtype }: Range, offer: string): number {
  const [offerType, offerSubtype] = offer.split('/')
  if (type === offerType && subtype === offerSubtype) return 3
  if (type === offerType && subtype === '*') return 2
  return type === '*' ? 1 : 0
}

function qualityOf(ranges: readonly Range[], offer: string): number {
  let closest = 0
  let quality = 0
  for (const range of ranges) {
    const close = closeness(range, offer)
    if (close === 0 || close < closest) continue
    quality = close > closest ? range.quality : Math.max(quality, range.quality)
    closest = close
  }
  return quality
}

/** Commas within quotes part nothing. A string that does not end takes the rest with it, so that each sign is read once. */
export const withoutQuoted = (header: string) => header.replace(/"(?:[^"\\]|\\.?)*(?:"|$)/gs, '""')

/**
 * The media type to answer with.
 *
 * @param accept  the Accept header, if there is one; parameters other than q are not told apart
 * @param offers  what there is, the service's own preference first; without parameters
 * @returns undefined when the caller takes none of them (406)
 * @source RFC 9110 §12.4.2, §12.5.1 (from memory): the most specific range of an offer gives its weight, q=0 refuses it
 */
export function acceptedType<const Offer extends string>(
  accept: string | undefined,
  offers: readonly [Offer, ...Offer[]]
): Offer | undefined {
  if (accept === undefined || accept.trim() === '') return offers[0]
  const ranges = withoutQuoted(accept)
    .split(',')
    .flatMap(text => rangeOf(text) ?? [])
  let best: Offer | undefined
  let bestQuality = 0
  for (const offer of offers) {
    const quality = qualityOf(ranges, offer)
    if (quality > bestQuality) {
      best = offer
      bestQuality = quality
    }
  }
  return best
}
