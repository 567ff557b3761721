/** Whether the second of two equal parts must be cut as the mirror image of the first. */
import type { Panel } from '../../contract/boxes/panel.ts'

/** Left and right parts of one kind are mirror images unless the part is its own mirror image. */
export function isMirrored({ quantity, role, outline, cutOuts }: Panel): boolean {
  if (quantity !== 2 || role !== 'side') return false
  const full = Math.max(...outline.map(({ uM }) => uM))
  const key = (uM: number, vM: number) => `${Math.round(uM * 1e4)} ${Math.round(vM * 1e4)}`
  const same = (points: readonly { readonly uM: number; readonly vM: number }[]) => {
    const here = new Set(points.map(({ uM, vM }) => key(uM, vM)))
    return points.every(({ uM, vM }) => here.has(key(full - uM, vM)))
  }
  return !(same(outline) && same(cutOuts))
}
