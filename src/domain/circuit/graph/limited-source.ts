/** An alternator that gives only so much, and the battery that helps out. */
import { present } from '../../present.ts'
import { type Branch, collapseFactor, type TrunkState, trunkState } from './shared-trunk.ts'

export interface Source {
  /** Regulated voltage, or the open-circuit voltage of a source without a limit. */
  readonly voltageV: number
  /** Between that voltage and the node the trunk starts at [Ω]. */
  readonly resistanceOhm: number
  readonly limit?: {
    readonly currentA: number
    readonly baseLoadA: number
    readonly batteryV: number
    readonly batteryOhm: number
  }
}

/** `regulated`: the source carries all; `battery-assists`: the limit is passed; `boundary`: battery and regulator meet. */
type SourceMode = 'regulated' | 'battery-assists' | 'boundary'

export interface SourceState {
  readonly mode: SourceMode
  /** The source the state was solved with: voltage and resistance behind the trunk. */
  readonly behindV: number
  readonly behindOhm: number
  readonly nodeV?: number
  /** Absent on collapse. */
  readonly state?: TrunkState
  readonly collapseFactor?: number
}

function solve(
  mode: SourceMode,
  behindV: number,
  behindOhm: number,
  trunkOhm: number,
  branches: readonly Branch[]
): SourceState {
  const state = trunkState(behindV, behindOhm + trunkOhm, branches)
  const factor = collapseFactor(behindV, behindOhm + trunkOhm, branches)
  return {
    mode,
    behindV,
    behindOhm,
    ...(state === undefined ? {} : { state, nodeV: behindV - behindOhm * state.totalA }),
    ...present({ collapseFactor: factor })
  }
}

/**
 * State of a source with a current limit and its feeder.
 *
 *   within the limit: V_reg behind its resistance;  beyond: Vocv + Rb·(I_alt − I_base) behind Rb
 *
 * @returns state with its mode; a node that would lie above V_reg stays at it
 * @source node balance of alternator and battery, derived
 * @check  600 W, 6 mΩ, 14.2 V, 60 A, base 35 A, 12.6 V, 10 mΩ → battery assists, node 12.3522 V, 12.0536 V, 49.778 A; 150 W → alternator, 14.1363 V
 */
export function sourceState(source: Source, trunkOhm: number, branches: readonly Branch[]): SourceState {
  const { voltageV, resistanceOhm, limit } = source
  const regulated = solve('regulated', voltageV, resistanceOhm, trunkOhm, branches)
  if (limit === undefined) return regulated
  const spareA = limit.currentA - limit.baseLoadA
  if (regulated.state !== undefined && regulated.state.totalA <= spareA) return regulated
  const assisted = solve(
    'battery-assists',
    limit.batteryV + limit.batteryOhm * spareA,
    limit.batteryOhm,
    trunkOhm,
    branches
  )
  if (assisted.nodeV !== undefined && assisted.nodeV > voltageV) return { ...regulated, mode: 'boundary' }
  return assisted
}
