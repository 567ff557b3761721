/** Sources whose cable no fuse guards: the plus side cut at every fuse. */
import { reached } from './reach.ts'

interface Stretch {
  readonly from: string
  readonly to: string
  readonly lengthM: number
}

interface PlusSide {
  readonly sources: readonly { readonly id: string; readonly plus: string }[]
  /** Everything a fuse does not part: cables, links, closed relays. */
  readonly unfused: readonly Stretch[]
  readonly loads: readonly string[]
}

/**
 * Ids of the batteries whose unfused piece holds a load, another battery, or more cable than allowed.
 *
 * @param longestM  [m] of conductor between source and fuse
 * @source 33 CFR 183.455(b) (read); the length in cars common practice
 * @check  0.15 m before the fuse passes, 1.4 m does not, a second battery that joins behind the fuse is bare
 */
export function bareSources({ sources, unfused, loads }: PlusSide, longestM: number): readonly string[] {
  return sources
    .filter(({ id, plus }) => {
      const piece = reached([plus], unfused)
      const lengthM = unfused.reduce((sum, way) => (piece.has(way.from) ? sum + way.lengthM : sum), 0)
      const others = sources.some(other => other.id !== id && piece.has(other.plus))
      return others || lengthM > longestM || loads.some(point => piece.has(point))
    })
    .map(({ id }) => id)
}
