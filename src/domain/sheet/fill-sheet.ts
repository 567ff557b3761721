/** Fills one sheet with edge-to-edge cuts: the greedy step that the search repeats with many tastes. Where the pieces lie is told by `cutTreeOf`. */
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

/** What goes into one free part: nothing, or a kind with how it lies and which cut comes first. */
export interface Placement {
  readonly kind: number
  readonly turned: boolean
  readonly alongFirst: 'length' | 'width'
}

export interface FilledSheet {
  /** One number a free part, in the order in which they are filled; see {@link placementOf}. */
  readonly choices: readonly number[]
  /** Of the two rests of a cut the smaller is filled first. */
  readonly smallestFirst: boolean
  /** Copies of each kind on this sheet. */
  readonly taken: Int32Array
  readonly area: number
  /** Placements weighed, the measure of work done. */
  readonly work: number
}

/** What finding a free part and joining its tree costs, in placements weighed. */
const workOfAPart = 40

/** Nothing fits into the part. */
export const NOTHING = -1

/** A placement as one number: a search weighs millions and keeps a few. */
const numbered = (kind: number, turn: number, order: number) => 4 * kind + 2 * turn + order

export function placementOf(choice: number): Placement | undefined {
  if (choice === NOTHING) return undefined
  return { kind: choice >> 2, turned: (choice & 2) !== 0, alongFirst: (choice & 1) === 0 ? 'length' : 'width' }
}

interface Bench {
  readonly kinds: readonly PieceKind[]
  readonly kerf: number
  readonly left: Int32Array
  readonly taste: Taste
  /** Shortest side of any kind: a narrower strip is waste. */
  readonly narrowest: number
  readonly choices: number[]
  work: number
}

function bestPlacement(bench: Bench, length: number, width: number): number {
  const { kinds, kerf, left, taste, narrowest } = bench
  const { wastePenalty, largeRest } = taste
  bench.work += workOfAPart
  let best = NOTHING
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
        const score = worth - wastePenalty * waste + largeRest * Math.max(endArea, sideArea)
        if (score > bestScore) {
          bestScore = score
          best = numbered(kind, turn, order)
        }
      }
    }
  }
  return best
}

/** The placement of most worth goes into a corner; two cuts free it, and what they leave beyond the kerf is filled in turn. */
function fillPart(bench: Bench, length: number, width: number): void {
  const choice = bestPlacement(bench, length, width)
  bench.choices.push(choice)
  if (choice === NOTHING) return
  const kind = choice >> 2
  const piece = bench.kinds[kind] as PieceKind
  bench.left[kind] = (bench.left[kind] ?? 0) - 1
  const [turned, alongLength] = [(choice & 2) !== 0, (choice & 1) === 0]
  const l = turned ? piece.width : piece.length
  const w = turned ? piece.length : piece.width
  const [restL, restW] = [length - l - bench.kerf, width - w - bench.kerf]
  const [endL, endW] = alongLength ? [restL, w] : [l, restW]
  const [farL, farW] = alongLength ? [length, restW] : [restL, width]
  const hasEnd = endL > 0 && endW > 0
  const hasFar = farL > 0 && farW > 0
  const endFirst = !hasFar || endL * endW === farL * farW || endL * endW < farL * farW === bench.taste.smallestFirst
  if (hasEnd && endFirst) fillPart(bench, endL, endW)
  if (hasFar) fillPart(bench, farL, farW)
  if (hasEnd && !endFirst) fillPart(bench, endL, endW)
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
  for (let kind = 0; kind < kinds.length; kind++) {
    const { length, width } = kinds[kind] as PieceKind
    if ((left[kind] ?? 0) > 0) narrowest = Math.min(narrowest, length, width)
  }
  const bench: Bench = { kinds, kerf, left: left.slice(), taste, narrowest, choices: [], work: 0 }
  fillPart(bench, sheet.length, sheet.width)
  const taken = new Int32Array(left.length)
  let area = 0
  for (let kind = 0; kind < kinds.length; kind++) {
    const { length, width } = kinds[kind] as PieceKind
    const count = (left[kind] ?? 0) - (bench.left[kind] ?? 0)
    taken[kind] = count
    area += count * length * width
  }
  return { choices: bench.choices, smallestFirst: taste.smallestFirst, taken, area, work: bench.work }
}
