/** A laid sheet as a person cuts it: pieces where they lie, numbered cuts with their fence settings, offcuts. */
import type {
  FreedPart,
  LaidPiece,
  Offcut,
  SheetCut,
  SheetLayout,
  SheetStock
} from '../../contract/boxes/box-sheets.ts'
import { present } from '../present.ts'
import { type BoardGroup, toM, toUnits } from './board-group.ts'
import { areaOf, type CutNode, type DividedNode, offcuts, pieces } from './cut-tree.ts'
import { cutTreeOf } from './fill-tree.ts'
import type { LaidSheet, SheetKind } from './search-layout.ts'

interface Bench {
  readonly group: BoardGroup
  readonly kerfM: number
  readonly trimM: number
  readonly keepOffcutM: number
}

/** Numbers the copies of each panel across all sheets, in the order they are laid. */
export type CopyCounter = Map<number, number>

function copyNumbers(root: CutNode, counter: CopyCounter): ReadonlyMap<CutNode, number> {
  const numbers = new Map<CutNode, number>()
  for (const leaf of pieces(root)) {
    const copy = (counter.get(leaf.piece) ?? 0) + 1
    counter.set(leaf.piece, copy)
    numbers.set(leaf, copy)
  }
  return numbers
}

function laidPieces(root: CutNode, copies: ReadonlyMap<CutNode, number>, { group, trimM }: Bench): LaidPiece[] {
  return pieces(root).map(leaf => ({
    panel: group.panels[leaf.piece]?.name ?? '',
    copy: copies.get(leaf) ?? 1,
    xM: toM(leaf.region.x) + trimM,
    yM: toM(leaf.region.y) + trimM,
    lengthM: toM(leaf.region.length),
    widthM: toM(leaf.region.width),
    turned: leaf.turned
  }))
}

function laidOffcuts(root: CutNode, { trimM, keepOffcutM }: Bench): Offcut[] {
  return offcuts(root)
    .map(({ region }) => ({
      xM: toM(region.x) + trimM,
      yM: toM(region.y) + trimM,
      lengthM: toM(region.length),
      widthM: toM(region.width),
      reusable: Math.min(toM(region.length), toM(region.width)) >= keepOffcutM
    }))
    .sort((a, b) => b.lengthM * b.widthM - a.lengthM * a.widthM)
}

/** Of the parts that are free the next one to cut: at the setting that the fence has, else the oldest. */
function nextOf<Part extends { readonly node: DividedNode }>(
  waiting: Part[],
  set: DividedNode | undefined
): Part | undefined {
  const same = waiting.findIndex(({ node }) => node.along === set?.along && node.distance === set.distance)
  return waiting.splice(Math.max(0, same), 1)[0]
}

/** Every cut in the order of sawing: a part is only cut once it is free, and equal settings of the fence follow each other. */
function numberedCuts(root: CutNode, copies: ReadonlyMap<CutNode, number>, bench: Bench): SheetCut[] {
  const cuts: SheetCut[] = []
  const waiting: { node: DividedNode; part: number }[] = root.kind === 'divided' ? [{ node: root, part: 1 }] : []
  let parts = 1
  const freed = (node: CutNode): FreedPart => {
    const size = { lengthM: toM(node.region.length), widthM: toM(node.region.width) }
    if (node.kind === 'offcut') return { is: 'offcut', ...size }
    if (node.kind === 'piece') {
      const { name = '', quantity = 1 } = bench.group.panels[node.piece] ?? {}
      return { is: 'panel', panel: name, ...present({ copy: quantity > 1 ? copies.get(node) : undefined }), ...size }
    }
    parts += 1
    waiting.push({ node, part: parts })
    return { is: 'part', part: parts, ...size }
  }
  for (let next = nextOf(waiting, undefined); next !== undefined; next = nextOf(waiting, next.node)) {
    const { node, part } = next
    const { x, y, length, width } = node.region
    const rip = node.along === 'length'
    cuts.push({
      step: cuts.length + 1,
      part,
      along: node.along,
      distanceM: toM(node.distance),
      cutLengthM: toM(rip ? length : width),
      atM: toM((rip ? y : x) + node.distance) + bench.trimM,
      fromM: toM(rip ? x : y) + bench.trimM,
      toM: toM(rip ? x + length : y + width) + bench.trimM,
      near: freed(node.near),
      ...present({ far: node.far && freed(node.far) })
    })
  }
  return cuts
}

export function sheetLayout(
  { sheet, fill }: LaidSheet,
  number: number,
  counter: CopyCounter,
  bench: Bench
): SheetLayout {
  const stock = bench.group.sheets[sheet] as SheetStock
  const { kinds, sheetKinds } = bench.group
  const root = cutTreeOf(fill, kinds, sheetKinds[sheet] as SheetKind, toUnits(bench.kerfM))
  const copies = copyNumbers(root, counter)
  const used = pieces(root).reduce((sum, { region }) => sum + areaOf(region), 0)
  return {
    number,
    sheet: stock.name,
    ...present({ material: stock.material }),
    thicknessM: stock.thicknessM,
    lengthM: stock.lengthM,
    widthM: stock.widthM,
    trimM: bench.trimM,
    usedPercent: (100 * toM(toM(used))) / (stock.lengthM * stock.widthM),
    pieces: laidPieces(root, copies, bench),
    cuts: numberedCuts(root, copies, bench),
    offcuts: laidOffcuts(root, bench)
  }
}
