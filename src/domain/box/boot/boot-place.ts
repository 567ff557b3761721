import type { Block } from '../../../contract/boxes/box-panels.ts'

interface Size3 {
  readonly widthM: number
  readonly depthM: number
  readonly heightM: number
}

const overlaps = (from: number, size: number, otherFrom: number, other: number) =>
  from < otherFrom + other - 1e-9 && otherFrom < from + size - 1e-9

export function isClear(
  box: Size3,
  place: { readonly xM: number; readonly yM: number },
  blocks: readonly Block[]
): boolean {
  return blocks.every(
    block =>
      !(
        overlaps(place.xM, box.widthM, block.xM, block.widthM) &&
        overlaps(place.yM, box.depthM, block.yM, block.depthM) &&
        overlaps(0, box.heightM, block.zM, block.heightM)
      )
  )
}

/**
 * A place on the floor of a boot where a block stands clear of all others: the first of the corners where it would touch
 * the walls or another block, nearest the seat, then nearest the middle.
 *
 * @param boot  width and depth of the floor [m]
 * @returns the place, or none
 * @validity The block is not turned. If there is a place, one of these corners is one.
 * @source derived: a block that can move can be pushed left and back until it touches
 */
export function placeInBoot(
  box: Size3,
  boot: { readonly widthM: number; readonly depthM: number },
  blocks: readonly Block[]
): { readonly xM: number; readonly yM: number } | undefined {
  const middle = (boot.widthM - box.widthM) / 2
  const xs = [middle, 0, boot.widthM - box.widthM, ...blocks.flatMap(b => [b.xM + b.widthM, b.xM - box.widthM])]
  const ys = [0, ...blocks.map(b => b.yM + b.depthM)]
  return ys
    .flatMap(yM => xs.map(xM => ({ xM, yM })))
    .filter(
      ({ xM, yM }) => xM >= -1e-9 && xM + box.widthM <= boot.widthM + 1e-9 && yM + box.depthM <= boot.depthM + 1e-9
    )
    .filter(place => isClear(box, place, blocks))
    .toSorted((a, b) => a.yM - b.yM || Math.abs(a.xM - middle) - Math.abs(b.xM - middle))[0]
}
