/** What can flow into a point for good with every fuse whole. */

/** A source at its plus pole. */
export interface Feed {
  readonly point: string
  /** Infinity for a battery. */
  readonly limitA: number
}

/** A way between two points that lets at most this through, either way round. */
export interface Way {
  readonly from: string
  readonly to: string
  readonly limitA: number
}

interface Edge {
  readonly to: string
  /** Number of the edge that goes back. */
  readonly back: number
  leftA: number
}

function residual(ways: readonly Way[]) {
  const edges: Edge[] = []
  const out = new Map<string, number[]>()
  const leave = (point: string, edge: number) => out.set(point, [...(out.get(point) ?? []), edge])
  for (const { from, to, limitA } of ways) {
    const first = edges.length
    edges.push({ to, back: first + 1, leftA: limitA }, { to: from, back: first, leftA: limitA })
    leave(from, first)
    leave(to, first + 1)
  }
  return { edges, out }
}

/** Shortest way from start to end with something left, as numbers of edges. */
function path(edges: readonly Edge[], out: ReadonlyMap<string, readonly number[]>, start: string, end: string) {
  const came = new Map<string, readonly number[]>([[start, []]])
  for (const [point, taken] of came) {
    if (point === end) return taken
    for (const number of out.get(point) ?? []) {
      const edge = edges[number]
      if (edge !== undefined && edge.leftA > 1e-9 && !came.has(edge.to)) came.set(edge.to, [...taken, number])
    }
  }
  return undefined
}

const ALL = '\u0000all sources'

/**
 * Largest flow from all sources to one point, fuse ratings as limits.
 *
 * @param ways  limits [A]; Infinity for a way without a fuse
 * @returns [A], Infinity where a way without any fuse leads there, 0 where none leads there
 * @source Ford and Fulkerson, Maximal flow through a network, 1956; shortest ways first: Edmonds and Karp, 1972 (both from memory)
 * @check  150 A and 150 A from one battery to a block, 300 A from a second: 450 A into the block end of the first run
 */
export function largestFlowA(ways: readonly Way[], sources: readonly Feed[], end: string): number {
  if (sources.some(({ point, limitA }) => point === end && limitA === Number.POSITIVE_INFINITY))
    return Number.POSITIVE_INFINITY
  const feeds = sources.map(({ point, limitA }) => ({ from: ALL, to: point, limitA }))
  const { edges, out } = residual([...feeds, ...ways])
  let total = 0
  for (let taken = path(edges, out, ALL, end); taken !== undefined; taken = path(edges, out, ALL, end)) {
    const share = Math.min(...taken.map(number => edges[number]?.leftA ?? 0))
    if (share === Number.POSITIVE_INFINITY) return share
    total += share
    for (const number of taken) {
      const edge = edges[number]
      const back = edge && edges[edge.back]
      if (edge === undefined || back === undefined) continue
      edge.leftA -= share
      back.leftA += share
    }
  }
  return total
}
