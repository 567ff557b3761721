/** Where the pieces of a filled sheet lie: its choices as a tree of cuts. */
import { present } from '../present.ts'
import { areaOf, type CutNode, type Region } from './cut-tree.ts'
import { type FilledSheet, NOTHING, type PieceKind, type Placement, placementOf } from './fill-sheet.ts'

interface Filling {
  readonly kinds: readonly PieceKind[]
  readonly kerf: number
  readonly smallestFirst: boolean
  readonly next: () => Placement | undefined
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
  { kinds, kerf }: Filling,
  region: Region,
  placement: Placement,
  rest: (parts: readonly Region[]) => CutNode[]
): CutNode {
  const piece = kinds[placement.kind] as PieceKind
  const l = placement.turned ? piece.width : piece.length
  const w = placement.turned ? piece.length : piece.width
  const first = placement.alongFirst
  const second = first === 'length' ? 'width' : 'length'
  const size = (along: 'length' | 'width') => (along === 'length' ? w : l)
  const full = (part: Region, along: 'length' | 'width') => (along === 'length' ? part.width : part.length)
  const [strip, far] =
    full(region, first) > size(first) ? divide(region, first, size(first), kerf) : [region, undefined]
  const [exact, end] =
    full(strip, second) > size(second) ? divide(strip, second, size(second), kerf) : [strip, undefined]
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

function filledRegion(filling: Filling, region: Region): CutNode {
  const placement = filling.next()
  if (placement === undefined) return { kind: 'offcut', region }
  return cutFree(filling, region, placement, parts => {
    const order = parts.map((part, index) => ({ part, index }))
    const sign = filling.smallestFirst ? 1 : -1
    order.sort((a, b) => sign * (areaOf(a.part) - areaOf(b.part)))
    const nodes: CutNode[] = []
    for (const { part, index } of order) nodes[index] = filledRegion(filling, part)
    return nodes
  })
}

/** The cuts of a filled sheet: its choices followed in the order in which they were made. */
export function cutTreeOf(
  { choices, smallestFirst }: FilledSheet,
  kinds: readonly PieceKind[],
  sheet: { readonly length: number; readonly width: number },
  kerf: number
): CutNode {
  let part = 0
  const next = () => placementOf(choices[part++] ?? NOTHING)
  const { length, width } = sheet
  return filledRegion({ kinds, kerf, smallestFirst, next }, { x: 0, y: 0, length, width })
}
