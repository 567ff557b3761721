/** Joints on a drawing: fingers as the outline that they give, with a line of words for each edge; pockets among the holes. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { notchedFace } from '../../domain/box/shell/board-faces.ts'
import { told } from '../../domain/say.ts'
import { dimension, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'

const isFinger = ({ purpose }: CutOut) => purpose === 'finger'

/** Holes and pockets, each with a number; fingers have none. */
export const numberedCuts = ({ cutOuts }: Pick<Panel, 'cutOuts'>): readonly CutOut[] =>
  cutOuts.filter(cut => !isFinger(cut))

/** The blank, or with its fingers what is left of it. */
export function drawnBlank(panel: Panel): Panel['outline'] {
  const fingers = panel.cutOuts.filter(isFinger)
  if (fingers.length === 0) return panel.outline
  return notchedFace({ ...panel, cutOuts: fingers }, 'outer').map(({ x, y }) => ({ uM: x, vM: y }))
}

/** A line for each board that fingers reach into: its gaps by their edges, to which they are sawn. */
export function fingerRows({ cutOuts }: Panel, paper: Reader): readonly string[] {
  const { language } = paper
  const fingers = cutOuts.filter(isFinger)
  return [...new Set(fingers.map(({ label }) => label))].map(label => {
    const own = fingers.filter(each => each.label === label)
    const us = new Set(own.map(({ uM }) => Math.round(uM * 1e4)))
    const alongU = us.size > 1
    const gaps = own
      .map(({ uM, vM, widthM = 0, heightM = 0 }) => (alongU ? [uM, widthM] : [vM, heightM]))
      .map(([at = 0, size = 0]) => [Math.max(0, at - size / 2), at + size / 2] as const)
      .toSorted(([a], [b]) => a - b)
    const [one] = own
    const depth = dimension((alongU ? one?.heightM : one?.widthM) ?? 0, paper)
    const edges = (gap: readonly [number, number] = [0, 0]) => gap.map(each => dimension(each, paper)).join('\u2013')
    const [first, second, third] = gaps
    const pitch = dimension((third?.[0] ?? second?.[0] ?? 0) - (second?.[0] ?? 0), paper)
    const about = { part: panelName(label, paper), count: gaps.length, depth, first: edges(first), next: edges(second) }
    const row = { ...about, pitch, last: edges(gaps.at(-1)) }
    return told(language, alongU ? 'draw.fingers-across' : 'draw.fingers-up', row)
  })
}
