/** Trunk and branches as they are bought and laid: one size, one length, one fuse each; bill, picture and steps read them here. */
import type { ChosenFuse } from '../../contract/supply/fuse.ts'
import type { CableChoice } from '../../contract/supply/supply-cables.ts'

export interface PowerRun {
  readonly designation: string
  /** Equal cables side by side, each with a fuse of its own. */
  readonly runs: number
  /** Of one cable. */
  readonly positiveLengthM: number
  /** `body`: a lead to bare metal; `cable`: back to the battery or to the block of the returns. */
  readonly returnBy: 'body' | 'cable'
  /** Of one cable; 0 where the ground leads belong to the branches. */
  readonly returnLengthM: number
  /** Of each cable; absent where none could be rated. */
  readonly fuse?: ChosenFuse
}

export interface BranchRun extends PowerRun {
  /** Name of the amplifier it feeds. */
  readonly amplifier: string
}

/** The single cable that was chosen, or the runs side by side where no single one passes. */
export function sizeOf({
  cable,
  parallel
}: CableChoice): { readonly designation: string; readonly runs: number } | undefined {
  if (cable !== undefined) return { designation: cable.designation, runs: 1 }
  return parallel === undefined ? undefined : { designation: parallel.designation, runs: parallel.runs }
}

export const dropOf = ({ cable, parallel }: CableChoice): number => cable?.dropV ?? parallel?.dropV ?? 0
