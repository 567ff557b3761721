/** How few sheets any plan needs, whatever its layout. Lengths in hundredths of a millimetre. */
import type { PieceKind } from './fill-sheet.ts'
import type { SheetKind } from './search-layout.ts'

type BoundProof = 'area' | 'large-pieces' | 'densest-sheet'

export interface SheetBound {
  readonly leastSheets: number
  readonly leastCost: number
  /** Sheets of the first size by area alone, not rounded up. */
  readonly areaSheets: number
  readonly proof: BoundProof
}

/** A piece with the kerf that parts it from its neighbours, in a sheet lengthened by one kerf: a shape that cannot overlap. */
const claimed = (piece: PieceKind, kerf: number) => (piece.length + kerf) * (piece.width + kerf)
const offered = (sheet: SheetKind, kerf: number) => (sheet.length + kerf) * (sheet.width + kerf)

/**
 * Pieces of which no two share a sheet.
 *
 *   n = number of pieces longer than (L − k)/2 and wider than (W − k)/2, however they may turn
 *
 * @source derived: two such pieces overlap in both directions wherever they lie
 * @check  3 pieces of 60 × 55 on 100 × 100, kerf 1 → 3; of 60 × 49 → 0
 */
export function exclusivePieces(kinds: readonly PieceKind[], length: number, width: number, kerf: number): number {
  return kinds.reduce((sum, { length: l, width: w, copies, straight, turned }) => {
    const ways = [
      ...(straight && l <= length && w <= width ? [[l, w] as const] : []),
      ...(turned && w <= length && l <= width ? [[w, l] as const] : [])
    ]
    const alone = ways.length > 0 && ways.every(([a, b]) => 2 * a + kerf > length && 2 * b + kerf > width)
    return alone ? sum + copies : sum
  }, 0)
}

/** Reachable sums of the sizes up to the limit: where a cut can usefully lie. */
function cutPoints(sizes: readonly number[], limit: number, most: number): readonly number[] | undefined {
  const reached = new Set<number>([0])
  for (const point of reached) {
    for (const size of sizes) if (point + size <= limit) reached.add(point + size)
    if (reached.size > most) return undefined
  }
  return [...reached].sort((a, b) => a - b)
}

const mostCutPoints = 160

/** For points i ≥ a: the index of the last point not beyond points[i] − points[a]. */
function restIndices(points: readonly number[]): readonly (readonly number[])[] {
  return points.map((whole, i) => {
    let index = i
    return points.slice(0, i + 1).map(part => {
      while ((points[index] as number) > whole - part) index -= 1
      return index
    })
  })
}

/**
 * The greatest total value that guillotine cuts can get from one sheet when every piece may be repeated without limit.
 *
 *   F(x, y) = max( v(x, y), F(x', y) + F(x − x', y), F(x, y') + F(x, y − y') )   over the reachable sums x', y'
 *
 * @param pieces  sizes as they lie on the sheet (a turned copy is a row of its own), value ≥ 0; one unit of length for all
 * @returns undefined when there are too many cut points for an exact answer
 * @source J. E. Beasley, J. Oper. Res. Soc. 36 (1985) 297-306; discretisation points after Christofides & Whitlock, Oper. Res. 25 (1977) 30-44 (both from memory)
 * @check  OR-Library instance gcut1, 250 × 250 → 56460 without turning, 58136 with (values published by G. Cintra)
 */
export function densestSheet(
  pieces: readonly { readonly length: number; readonly width: number; readonly value: number }[],
  length: number,
  width: number
): number | undefined {
  const usable = pieces.filter(piece => piece.length <= length && piece.width <= width)
  const xs = cutPoints([...new Set(usable.map(piece => piece.length))], length, mostCutPoints)
  const ys = cutPoints([...new Set(usable.map(piece => piece.width))], width, mostCutPoints)
  if (xs === undefined || ys === undefined) return undefined
  const restX = restIndices(xs)
  const restY = restIndices(ys)
  const best = xs.map(x =>
    ys.map(y => usable.reduce((most, p) => (p.length <= x && p.width <= y ? Math.max(most, p.value) : most), 0))
  )
  const at = (i: number, j: number) => best[i]?.[j] ?? 0
  for (let i = 1; i < xs.length; i++) {
    for (let j = 1; j < ys.length; j++) {
      let most = at(i, j)
      const x = xs[i] as number
      const y = ys[j] as number
      for (let a = 1; a < i && 2 * (xs[a] as number) <= x; a++)
        most = Math.max(most, at(a, j) + at(restX[i]?.[a] ?? 0, j))
      for (let b = 1; b < j && 2 * (ys[b] as number) <= y; b++)
        most = Math.max(most, at(i, b) + at(i, restY[j]?.[b] ?? 0))
      ;(best[i] as number[])[j] = most
    }
  }
  return at(xs.length - 1, ys.length - 1)
}

function densestFill(kinds: readonly PieceKind[], sheet: SheetKind, kerf: number): number | undefined {
  const pieces = kinds.flatMap(({ length: l, width: w, straight, turned }) => [
    ...(straight ? [{ length: l + kerf, width: w + kerf, value: l * w }] : []),
    ...(turned && l !== w ? [{ length: w + kerf, width: l + kerf, value: l * w }] : [])
  ])
  return densestSheet(pieces, sheet.length + kerf, sheet.width + kerf)
}

/** Least cost of enough sheets to hold the area, sheets divisible: the dearest square metre last. */
function divisibleCost(needed: number, sheets: readonly SheetKind[], holds: readonly number[]): number {
  const order = sheets
    .map((sheet, index) => ({ sheet, hold: holds[index] ?? 0 }))
    .sort((a, b) => a.sheet.cost / a.hold - b.sheet.cost / b.hold)
  let rest = needed
  let cost = 0
  for (const { sheet, hold } of order) {
    const used = Math.min(sheet.stock, rest / hold)
    cost += used * sheet.cost
    rest -= used * hold
    if (rest <= 0) break
  }
  return cost
}

/**
 * A lower bound on sheets and cost.
 *
 * @validity guillotine plans with a kerf between neighbouring pieces; each proof alone holds, the strongest is given
 * @source derived: the kerf-enlarged pieces cannot overlap in the kerf-enlarged sheet; see {@link exclusivePieces}, {@link densestSheet}
 */
export function sheetBound(kinds: readonly PieceKind[], sheets: readonly SheetKind[], kerf: number): SheetBound {
  const claimedArea = kinds.reduce((sum, kind) => sum + kind.copies * claimed(kind, kerf), 0)
  const holds = sheets.map(sheet => offered(sheet, kerf))
  const byArea = claimedArea / Math.max(...holds)
  const longest = Math.max(...sheets.map(sheet => sheet.length))
  const widest = Math.max(...sheets.map(sheet => sheet.width))
  const alone = exclusivePieces(kinds, longest, widest, kerf)
  const netArea = kinds.reduce((sum, kind) => sum + kind.copies * kind.length * kind.width, 0)
  const densest = sheets.map(sheet => densestFill(kinds, sheet, kerf))
  const dense = densest.every(fill => fill !== undefined && fill > 0) ? netArea / Math.max(...(densest as number[])) : 0
  const candidates: readonly (readonly [BoundProof, number])[] = [
    ['area', Math.ceil(byArea - 1e-9)],
    ['large-pieces', alone],
    ['densest-sheet', Math.ceil(dense - 1e-9)]
  ]
  const [proof, leastSheets] = candidates.reduce((best, next) => (next[1] > best[1] ? next : best))
  const cheapest = Math.min(...sheets.map(sheet => sheet.cost))
  const cost = Math.max(divisibleCost(claimedArea, sheets, holds), leastSheets * cheapest)
  return { leastSheets, leastCost: cost, areaSheets: byArea, proof }
}
