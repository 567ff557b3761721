/** The panel that closes the box: the one whose hole lets an arm in to seal the last seams. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { workDefaults } from './defaults.ts'

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
  if (rebateDepthM !== undefined || purpose === 'brace-window' || purpose === 'finger') return 0
  return kind === 'circle' ? (diameterM ?? 0) : Math.min(widthM ?? 0, heightM ?? 0)
}

/** @param panel  the board that goes on last */
export function closingPanel({ name, cutOuts, outline }: Panel): ClosingPanel {
  const holes = cutOuts.map(cutOut => ({ cutOut, openingM: openingOf(cutOut) }))
  const openingM = Math.max(0, ...holes.map(hole => hole.openingM))
  const wide = holes.filter(hole => hole.openingM >= workDefaults.armOpeningM.value)
  const reachM =
    wide.length === 0
      ? 0
      : Math.max(
          ...outline.map(({ uM, vM }) =>
            Math.min(...wide.map(({ cutOut }) => Math.hypot(uM - cutOut.uM, vM - cutOut.vM)))
          )
        )
  return { name, openingM, reachM, reachable: wide.length > 0 && reachM <= workDefaults.armReachM.value }
}
