/** Equal parts that bear different marks, or the mirror image of each other, as a panel each. */
import type { Panel } from '../../contract/boxes/panel.ts'
import { isMirrored } from './mirrored.ts'

type Copy = NonNullable<Panel['copies']>[number]

const widthOf = ({ outline }: Panel) => Math.max(...outline.map(({ uM }) => uM))

/** Geometry of the marks to a tenth of a millimetre, whichever end comes first; u turned round where mirrored. */
function key({ marks }: Copy, mirrorM?: number): string {
  const point = ({ uM, vM }: { readonly uM: number; readonly vM: number }) =>
    `${Math.round((mirrorM === undefined ? uM : mirrorM - uM) * 1e4)} ${Math.round(vM * 1e4)}`
  return marks
    .map(({ face, from, to }) => `${face} ${[point(from), point(to)].toSorted().join(' ')}`)
    .toSorted()
    .join('; ')
}

/** A part seen from its own outer face whose twin is its mirror image. */
function mirrored(panel: Panel): Pick<Panel, 'outline' | 'edges' | 'cutOuts'> {
  const width = widthOf(panel)
  const turned = <Point extends { readonly uM: number }>(point: Point): Point => ({ ...point, uM: width - point.uM })
  const count = panel.outline.length
  return {
    outline: panel.outline.map(turned).toReversed(),
    // Edge n ran from point n to the next; turned round, its points stand in the other order.
    edges: panel.edges.map(each => ({ ...each, edge: (2 * count - 2 - each.edge) % count })),
    cutOuts: panel.cutOuts.map(turned)
  }
}

export const sameHoles = (a: Panel, b: Panel): boolean => JSON.stringify(a.cutOuts) === JSON.stringify(b.cutOuts)

/** One drawing serves all copies that are marked alike; a twin is drawn by itself where its marks are not the mirror image. */
export function drawnApart(panel: Panel): readonly Panel[] {
  const { copies = [] } = panel
  const [first] = copies
  if (first === undefined || copies.length < 2) return [panel]
  const isTwin = panel.role === 'side'
  const alike = copies.every(copy => key(copy) === key(first, isTwin && copy !== first ? widthOf(panel) : undefined))
  if (alike) return [panel]
  const turns = isMirrored(panel)
  return copies.map((copy, i) => ({
    ...panel,
    ...(i > 0 && turns ? mirrored(panel) : {}),
    name: copy.name,
    quantity: 1,
    copies: [copy]
  }))
}
