/** The panel that closes the box: the one whose hole lets an arm in to seal the last seams. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { armRule } from './workshop-practice.ts'

export interface ClosingPanel {
  readonly name: string
  /** Largest hole [m]; 0 when there is none. */
  readonly openingM: number
  /** From the hole to the farthest corner of the panel [m]. */
  readonly reachM: number
  /** The last seams can be sealed through the hole; otherwise a bead is laid before the panel goes on. */
  readonly reachable: boolean
}

const openingOf = ({ kind, purpose, diameterM, widthM, heightM, rebateDepthM }: CutOut): number => {
  if (rebateDepthM !== undefined || purpose === 'brace-window') return 0
  return kind === 'circle' ? (diameterM ?? 0) : Math.min(widthM ?? 0, heightM ?? 0)
}

/** @returns undefined for a box without panels */
export function closingPanel(panels: readonly Panel[]): ClosingPanel | undefined {
  const shell = panels.filter(({ role }) => ['front', 'back', 'top', 'bottom', 'side', 'wall'].includes(role))
  const candidates = shell.map(panel => {
    const holes = panel.cutOuts.map(cutOut => ({ cutOut, openingM: openingOf(cutOut) }))
    const largest = holes.reduce<(typeof holes)[number] | undefined>(
      (best, hole) => (best === undefined || hole.openingM > best.openingM ? hole : best),
      undefined
    )
    const corners = panel.outline.map(({ uM, vM }) =>
      Math.min(
        ...holes
          .filter(({ openingM }) => openingM >= armRule.openingM)
          .map(({ cutOut }) => Math.hypot(uM - cutOut.uM, vM - cutOut.vM)),
        Number.MAX_VALUE
      )
    )
    const reachM = Math.max(...corners, 0)
    const openingM = largest?.openingM ?? 0
    return { name: panel.name, openingM, reachM, reachable: openingM >= armRule.openingM && reachM <= armRule.reachM }
  })
  const best = candidates.reduce<ClosingPanel | undefined>(
    (found, next) => (found === undefined || next.openingM > found.openingM ? next : found),
    undefined
  )
  return best === undefined ? undefined : { ...best, reachM: best.openingM < armRule.openingM ? 0 : best.reachM }
}
