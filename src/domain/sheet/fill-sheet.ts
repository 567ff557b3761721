/** Fills one sheet with edge-to-edge cuts: the greedy step that the search repeats with many tastes. */
import { present } from '../present.ts'
import type { CutNode, Region } from './cut-tree.ts'

/** Pieces of one size. Lengths in hundredths of a millimetre. */
export interface PieceKind {
  readonly length: number
  readonly width: number
  readonly copies: number
  /** The piece's length may run along the sheet's length. */
  readonly straight: boolean
  /** The piece's length may run along the sheet's width. */
  readonly turned: boolean
}

/** What one greedy run prefers. */
export interface Taste {
  /** Worth of a kind of piece for each unit of its area. */
  readonly worth: Float64Array
  /** How much a strip that nothing fits counts against a placement. */
  readonly wastePenalty: number
  /** Reward for leaving one large part instead of two middling ones. */
  readonly largeRest: number
  readonly smallestFirst: boolean
}

export interface FilledSheet {
  readonly root: CutNode
  /** Copies of each kind on this sheet. */
  readonly taken: Int32Array
  readonly area: number
  /** Placements weighed, the measure of work done. */
  readonly work: number
}

/** What finding a free part and joining its tree costs, in placements weighed. */
const workOfAPart = 40

interface Placement {
  readonly kind: number
  readonly turned: boolean
  readonly alongFirst: 'length' | 'width'
}

interface Bench {
  readonly kinds: readonly PieceKind[]
  readonly kerf: number
  readonly left: Int32Array
  readonly taste: Taste
  /** Shortest side of any kind: a narrower strip is waste. */
  readonly narrowest: number
  work: number
}

function bestPlacement(bench: Bench, length: number, width: number): Placement | undefined {
  const { kinds, kerf, left, taste, narrowest } = bench
  bench.work += workOfAPart
  let best: Placement | undefined
  let bestScore = Number.NEGATIVE_INFINITY
  for (let kind = 0; kind < kinds.length; kind++) {
    const piece = kinds[kind]
    if (piece === undefined || left[kind] === 0) continue
    for (let turn = piece.straight ? 0 : 1; turn < (piece.turned ? 2 : 1); turn++) {
      const l = turn === 0 ? piece.length : piece.width
      const w = turn === 0 ? piece.width : piece.length
      if (l > length || w > width) continue
      bench.work += 1
      const restL = Math.max(0, length - l - kerf)
      const restW = Math.max(0, width - w - kerf)
      const endDead = restL < narrowest
      const sideDead = restW < narrowest
      const worth = (taste.worth[kind] ?? 1) * l * w
      for (let order = 0; order < 2; order++) {
        const endArea = restL * (order === 0 ? w : width)
        const sideArea = restW * (order === 0 ? length : l)
        const waste = (endDead ? endArea : 0) + (sideDead ? sideArea : 0)
        const score = worth - taste.wastePenalty * waste + taste.largeRest * Math.max(endArea, sideArea)
        if (score > bestScore) {
          bestScore = score
          best = { kind, turned: turn === 1, alongFirst: order === 0 ? 'length' : 'width' }
        }
      }
    }
  }
  return best
}

/** The near part of a cut and what the kerf leaves of the far one. */
function divide(
  region: Region,
  along: 'length' | 'width',
  distance: number,
  kerf: number
): [Region, Region | undefined] {
  const { x, y, length, width } = region
  if (along === 'length') {
    const rest = width - distance - kerf
    const far = rest > 0 ? { x, y: y + distance + kerf, length, width: rest } : undefined
    return [{ x, y, length, width: distance }, far]
  }
  const rest = length - distance - kerf
  const far = rest > 0 ? { x: x + distance + kerf, y, length: rest, width } : undefined
  return [{ x, y, length: distance, width }, far]
}

/** Cuts the placement free and hands both rests on; nodes are joined once their parts are known. */
function cutFree(
  bench: Bench,
  region: Region,
  placement: Placement,
  rest: (parts: readonly Region[]) => CutNode[]
): CutNode {
  const piece = bench.kinds[placement.kind] as PieceKind
  const l = placement.turned ? piece.width : piece.length
  const w = placement.turned ? piece.length : piece.width
  const first = placement.alongFirst
  const second = first === 'length' ? 'width' : 'length'
  const size = (along: 'length' | 'width') => (along === 'length' ? w : l)
  const full = (part: Region, along: 'length' | 'width') => (along === 'length' ? part.width : part.length)
  const [strip, far] =
    full(region, first) > size(first) ? divide(region, first, size(first), bench.kerf) : [region, undefined]
  const [exact, end] =
    full(strip, second) > size(second) ? divide(strip, second, size(second), bench.kerf) : [strip, undefined]
  const rests = [end, far].filter(part => part !== undefined)
  const nodes = rest(rests)
  const nodeOf = (part: Region | undefined) => (part === undefined ? undefined : nodes[rests.indexOf(part)])
  const freed: CutNode = { kind: 'piece', region: exact, piece: placement.kind, turned: placement.turned }
  const joined = (whole: Region, along: 'length' | 'width', near: CutNode, farNode: CutNode | undefined): CutNode =>
    full(whole, along) === size(along)
      ? near
      : {
          kind: 'divided',
          region: whole,
          along,
          distance: size(along),
          near,
          ...present({ far: farNode })
        }
  return joined(region, first, joined(strip, second, freed, nodeOf(end)), nodeOf(far))
}

function fillRegion(bench: Bench, region: Region): CutNode {
  const placement = bestPlacement(bench, region.length, region.width)
  if (placement === undefined) return { kind: 'offcut', region }
  bench.left[placement.kind] = (bench.left[placement.kind] ?? 0) - 1
  return cutFree(bench, region, placement, parts => {
    const order = parts.map((part, index) => ({ part, index }))
    const sign = bench.taste.smallestFirst ? 1 : -1
    order.sort((a, b) => sign * (a.part.length * a.part.width - b.part.length * b.part.width))
    const nodes: CutNode[] = []
    for (const { part, index } of order) nodes[index] = fillRegion(bench, part)
    return nodes
  })
}

/**
 * One sheet filled greedily: into each free part goes the piece of most worth for the waste it causes, into a corner;
 * two cuts free it, and the two rests are filled in turn.
 *
 * @param left  copies of each kind still to be placed; not changed
 * @validity guillotine (edge-to-edge) cuts only; the recursion is as deep as pieces on the sheet
 * @source list heuristics with free rectangles as surveyed in J. Jylänki, "A thousand ways to pack the bin", 2010; the worth and waste terms are ours
 */
export function fillSheet(
  kinds: readonly PieceKind[],
  left: Int32Array,
  sheet: { readonly length: number; readonly width: number },
  kerf: number,
  taste: Taste
): FilledSheet {
  let narrowest = Number.POSITIVE_INFINITY
  kinds.forEach((kind, index) => {
    if ((left[index] ?? 0) > 0) narrowest = Math.min(narrowest, kind.length, kind.width)
  })
  const bench: Bench = { kinds, kerf, left: left.slice(), taste, narrowest, work: 0 }
  const root = fillRegion(bench, { x: 0, y: 0, length: sheet.length, width: sheet.width })
  const taken = left.map((count, index) => count - (bench.left[index] ?? 0))
  let area = 0
  kinds.forEach((kind, index) => {
    area += (taken[index] ?? 0) * kind.length * kind.width
  })
  return { root, taken, area, work: bench.work }
}
