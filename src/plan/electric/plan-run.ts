/** Trunk and branches as they are bought and laid: one size, one length, one fuse each; bill, picture and steps read them here. */
import type { ChosenFuse } from '../../contract/supply/fuse.ts'
import type { CableChoice } from '../../contract/supply/supply-cables.ts'
import type { PlanCircuit, PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { PlanSupply } from '../../contract/systems/plan-request.ts'

/** `2 × 1/0 AWG`: cables side by side are bought and named together. */
export const sizeOfRun = ({ runs, designation }: Pick<PowerRun, 'runs' | 'designation'>): string =>
  runs === 1 ? designation : `${runs} × ${designation}`

/** Of the piece from an isolating relay to the block: the size of the trunk, and where that is several cables the one of the second battery's lead, which carries all of it. */
export const relayPieceSize = (trunk: PowerRun, lead: PowerRun | undefined): string =>
  trunk.runs > 1 && lead !== undefined ? lead.designation : trunk.designation

export interface BranchRun extends PowerRun {
  /** Name of the amplifier it feeds. */
  readonly amplifier: string
}

/** With one amplifier behind a converter its branch begins there: no block between. */
export const hasBlock = ({ branches, converter }: Pick<PlanCircuit, 'branches' | 'converter'>): boolean =>
  branches.length > 1 || (branches.length > 0 && converter === undefined)

/** Ways into the distribution block: each cable of the trunk, or the one from a relay or charger, and the second battery. */
export function blockInputs({
  trunk,
  secondBattery,
  converter
}: Pick<PlanCircuit, 'trunk' | 'secondBattery' | 'converter'>): number {
  if (converter !== undefined) return 1
  const runs = trunk?.runs ?? 1
  if (secondBattery === undefined) return runs
  return (secondBattery.link === 'joined' ? runs : 1) + 1
}

/** The single cable that was chosen, or the runs side by side where no single one passes. */
export function sizeOf({
  cable,
  parallel
}: CableChoice): { readonly designation: string; readonly runs: number } | undefined {
  if (cable !== undefined) return { designation: cable.designation, runs: 1 }
  return parallel === undefined ? undefined : { designation: parallel.designation, runs: parallel.runs }
}

/** Cable before the fuse: where the caller puts it, else up to the limit; in a sheath that is longer. */
export function fuseTailM({ fuseDistanceM, sheathed }: PlanSupply, fuse: ChosenFuse): number {
  const { usualM, sheathedM } = fuse.placement
  return fuseDistanceM ?? (sheathed === true ? sheathedM : usualM)
}

export const dropOf = ({ cable, parallel }: CableChoice): number => cable?.dropV ?? parallel?.dropV ?? 0
