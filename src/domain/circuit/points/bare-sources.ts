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

/** Conductor from a pole to the farthest place of its unfused piece, by the shortest way to each end [m]; tails side by side are no longer for it. */
function farthestM(plus: string, unfused: readonly Stretch[]): number {
  const wayM = new Map([[plus, 0]])
  const shorten = (from: string, to: string, lengthM: number) => {
    const next = (wayM.get(from) ?? Number.POSITIVE_INFINITY) + lengthM
    if (next < (wayM.get(to) ?? Number.POSITIVE_INFINITY)) wayM.set(to, next)
  }
  // no shortest way has more stretches than there are
  for (const _ of unfused)
    for (const { from, to, lengthM } of unfused) {
      shorten(from, to, lengthM)
      shorten(to, from, lengthM)
    }
  const ends = unfused.flatMap(({ from, to, lengthM }) => {
    const nearM = Math.min(wayM.get(from) ?? Number.POSITIVE_INFINITY, wayM.get(to) ?? Number.POSITIVE_INFINITY)
    return Number.isFinite(nearM) ? [nearM + lengthM] : []
  })
  return Math.max(0, ...ends)
}

/**
 * Ids of the batteries whose unfused piece holds a load, another battery, or more cable than allowed.
 *
 * @param longestM  [m] of conductor between source and fuse
 * @source 33 CFR 183.455(b) (read); the length in cars common practice
 * @check  0.15 m before the fuse passes, 1.4 m does not, eight tails of 0.11 m side by side pass; a second battery that joins behind the fuse is bare
 */
export function bareSources({ sources, unfused, loads }: PlusSide, longestM: number): readonly string[] {
  return sources
    .filter(({ id, plus }) => {
      const piece = reached([plus], unfused)
      const others = sources.some(other => other.id !== id && piece.has(other.plus))
      return others || farthestM(plus, unfused) > longestM || loads.some(point => piece.has(point))
    })
    .map(({ id }) => id)
}
