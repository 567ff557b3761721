/** What a layout costs in processor time; fitted to measurement, see scripts/bench/cost.ts. */
import type { Static } from 'typebox'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'

/** Sizes are searched for a volume, a slot is laid anew at each of them, and frames and battens are tried one after the other. */
const factors = { volume: 2, slot: 4, bracing: 5, divider: 2.5 } as const

/** @source common practice, no source: a fit by eye to this service's own times on a busy machine, within a factor of two of the examples */
export function boxCostMs({ netVolumeL, port, bracing, divider }: Static<typeof BoxRequest>): number {
  return (
    (netVolumeL === undefined ? 1 : factors.volume) *
    (port?.kind === 'slot' ? factors.slot : 1) *
    (bracing === undefined ? 1 : factors.bracing) *
    (divider === undefined ? 1 : factors.divider)
  )
}
