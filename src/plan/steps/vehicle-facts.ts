/** What the work in the vehicle depends on; every figure comes from a part of the plan. */

import type { TurnOn } from '../../contract/signals/signal-result.ts'
import type { Drive } from '../../contract/supply/words.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { present } from '../../domain/present.ts'
import { fuseTailM } from '../electric/plan-run.ts'
import type { SignalPart } from '../electric/plan-signal.ts'

export interface VehicleFacts {
  readonly circuit: PlanCircuit
  readonly drive?: Drive
  readonly capacitor: boolean
  readonly turnOn?: TurnOn
  /** Ring lugs of all power cables. */
  readonly lugCount: number
  /** From the terminal to the fuse, along the cable; absent where no fuse could be rated. */
  readonly fuseTailM?: number
  readonly sheathed: boolean
}

interface Planned {
  readonly circuit: PlanCircuit
  readonly signal: SignalPart
  readonly bill: readonly BillRow[]
}

export function vehicleFacts({ car, supply }: PlanRequest, { circuit, signal, bill }: Planned): VehicleFacts {
  const turnOn = signal.done ? signal.outcome.result.turnOn : undefined
  const { fuse } = circuit.trunk ?? {}
  const lugs = bill.filter(({ part }) => part === 'ring-lug')
  return {
    circuit,
    ...present({ drive: car.drive, turnOn, fuseTailM: fuse === undefined ? undefined : fuseTailM(supply, fuse) }),
    capacitor: supply.capacitor !== undefined,
    lugCount: lugs.reduce((sum, { need }) => sum + need, 0),
    sheathed: supply.sheathed === true
  }
}
