/** Every series-parallel network of a few coils, each once. */
import { MOST_COILS_LISTED_IN_FULL } from '../../contract/coils/words.ts'
import { type CoilNetwork, joined } from './coil-network.ts'

/** A leaf is the index of a kind of coil; coils of a kind are alike and not told apart. */
type Kinds = CoilNetwork<number>

/** The networks that use one choice of coils. */
interface Parts {
  /** How many coils of each kind they use. */
  readonly uses: readonly number[]
  readonly lowestKind: number
  readonly networks: readonly Kinds[]
}

interface Place {
  readonly choice: number
  readonly network: number
}

const total = (uses: readonly number[]) => uses.reduce((sum, count) => sum + count, 0)
const minus = (uses: readonly number[], less: readonly number[]) => uses.map((count, k) => count - (less[k] ?? 0))

/** Every non-empty choice of coils smaller than the whole. */
function smallerChoices(counts: readonly number[]): readonly (readonly number[])[] {
  const choices = counts.reduce<readonly (readonly number[])[]>(
    (found, count) => found.flatMap(uses => Array.from({ length: count + 1 }, (_, used) => [...uses, used])),
    [[]]
  )
  return choices.filter(uses => total(uses) > 0 && total(uses) < total(counts))
}

/** All ways of making `left` up from parts, never going back in the list, so that no order counts twice. */
function fill(parts: readonly Parts[], left: readonly number[], from: Place): readonly (readonly Kinds[])[] {
  if (total(left) === 0) return [[]]
  // The parts are sorted by their lowest kind: one that leaves out the lowest kind still open can never be completed.
  const open = left.findIndex(count => count > 0)
  return parts.flatMap(({ uses, lowestKind, networks }, choice) => {
    const fits = lowestKind === open && uses.every((count, kind) => count <= (left[kind] ?? 0))
    if (!fits || choice < from.choice) return []
    const first = choice === from.choice ? from.network : 0
    return networks
      .slice(first)
      .flatMap((network, index) =>
        fill(parts, minus(left, uses), { choice, network: first + index }).map(rest => [network, ...rest])
      )
  })
}

/**
 * Series-parallel networks that use every coil exactly once; order within a connection does not count.
 *
 * @param counts  how many coils there are of each kind; few in all, the number grows by a factor of 3 to 14 a coil
 * @returns the networks, leaves holding the index of the kind
 * @source derived by enumeration; the counts agree with OEIS A000084 (alike) and A006351 (all different), both from memory
 * @check  alike: 1, 2, 4, 10, 24, 66 networks of 1 to 6 coils; all different: 1, 2, 8, 52
 */
export function seriesParallelNetworks(counts: readonly number[]): readonly Kinds[] {
  const [count = 0] = counts
  if (counts.length > 1 || count > MOST_COILS_LISTED_IN_FULL) return enumerated(counts)
  alike[count] ??= enumerated(counts)
  return alike[count]
}

/** By the number of like coils: what most calls ask, and six lists in all. */
const alike: (readonly Kinds[])[] = []

function enumerated(counts: readonly number[]): readonly Kinds[] {
  const known = new Map<string, readonly Kinds[]>()
  const endingIn = (join: 'series' | 'parallel', uses: readonly number[]): readonly Kinds[] => {
    if (total(uses) === 1) return [{ join: 'coil', leaf: uses.indexOf(1) }]
    const key = `${join} ${uses.join()}`
    const found =
      known.get(key) ?? fill(partsOf(join, uses), uses, { choice: 0, network: 0 }).map(parts => joined(join, parts))
    known.set(key, found)
    return found
  }
  const partsOf = (join: 'series' | 'parallel', whole: readonly number[]): readonly Parts[] =>
    smallerChoices(whole)
      .map(uses => ({
        uses,
        lowestKind: uses.findIndex(count => count > 0),
        networks: endingIn(join === 'series' ? 'parallel' : 'series', uses)
      }))
      .sort((a, b) => a.lowestKind - b.lowestKind)
  return total(counts) === 1
    ? endingIn('series', counts)
    : [...endingIn('parallel', counts), ...endingIn('series', counts)]
}
