/** Seeded random numbers: the same seed gives the same draws on every machine. */

export interface RandomStream {
  /** Whole number, 0 … 2³² − 1. */
  readonly word: () => number
  /** Uniform in the open interval 0 … 1. */
  readonly uniform: () => number
  /** Standard normal. */
  readonly normal: () => number
}

const rotated = (word: number, by: number) => (word << by) | (word >>> (32 - by))

/** Successive states of a Weyl sequence, mixed; spreads any seed over the whole state (MurmurHash3's finaliser). */
function spread(seed: number): () => number {
  let weyl = seed | 0
  return () => {
    weyl = (weyl + 0x9e3779b9) | 0
    let mixed = Math.imul(weyl ^ (weyl >>> 16), 0x85ebca6b)
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35)
    return (mixed ^ (mixed >>> 16)) >>> 0
  }
}

/** @param seed whole number 0 … 2⁵³ − 1 */
export function randomStream(seed: number): RandomStream {
  const low = spread(seed >>> 0)
  const high = spread(Math.floor(seed / 2 ** 32) ^ 0x5bd1e995)
  return streamFrom([low() ^ high(), low() ^ high(), low() ^ high(), (low() ^ high()) | 1])
}

/**
 * xoshiro128** with the given state; normals by the Box-Muller transform, both of each pair used.
 *
 * @param state four 32-bit words, not all zero
 * @source Blackman & Vigna, Scrambled linear pseudorandom number generators, ACM TOMS 47, 2021 (from memory); Box & Muller 1958
 * @check  state 1, 2, 3, 4 → 11520, 0, 5927040, 70819200, 2031721883
 */
export function streamFrom(state: readonly [number, number, number, number]): RandomStream {
  let [a, b, c, d] = state
  let spare: number | undefined
  const word = () => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0
    const shifted = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= shifted
    d = rotated(d, 11)
    return result
  }
  const uniform = () => ((word() >>> 5) * 2 ** 26 + (word() >>> 6) + 0.5) / 2 ** 53
  const normal = () => {
    if (spare !== undefined) {
      const kept = spare
      spare = undefined
      return kept
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()))
    const angle = 2 * Math.PI * uniform()
    spare = radius * Math.sin(angle)
    return radius * Math.cos(angle)
  }
  return { word, uniform, normal }
}
