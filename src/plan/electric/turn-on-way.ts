/** How the amplifiers are switched on, decided once for bill, picture, steps and circuit. */

import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { assumptions } from '../../domain/assume.ts'
import { ampacity } from '../../domain/circuit/cable/ampacity.ts'
import { cableSize } from '../../domain/circuit/cable/cable-size.ts'
import { cableDefaults } from '../../domain/circuit/cable/defaults.ts'
import { type TurnOn, turnOn } from '../../domain/signal/turn-on.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { TURN_ON_SIZE } from './wiring-practice.ts'

/** The relay stands beside the amplifiers: its feed from a plus terminal, and the wire from its contact [m]. Common practice, no source. */
export const RELAY_WIRE_M = 0.5

/** Where an accessory circuit is tapped for the coil of the relay [A]. Common practice, no source. */
const TAP_FUSE_A = 1

/** Sizes that are sold for it. */
const feedSizes = [TURN_ON_SIZE, '1.5 mm²', '2.5 mm²', '4 mm²', '6 mm²'] as const

/** The thinnest that its fuse guards in the cabin, its insulation unknown. */
function feedSize(fuseA: number): string {
  const { insulationC, ambientCabinC, bundledConductors } = cableDefaults
  const around = {
    insulationC: insulationC.value,
    ambientC: ambientCabinC.value,
    bundledConductors: bundledConductors.value
  }
  const guarded = feedSizes.find(
    size => (ampacity(cableSize(size, undefined, 'size'), 'copper', around).ampacityA ?? 0) >= fuseA
  )
  return guarded ?? '10 mm²'
}

/** @returns nothing where nothing was said of it; its defaults are told by the part `signal`, which decides the same */
export function turnOnOf({ turnOn: asked, amplifierV, supply }: SupplyBrief): TurnOn | undefined {
  if (asked === undefined) return undefined
  return turnOn(asked, { amplifierV, vehicleV: supply.systemVoltageV }, assumptions())
}

export function turnOnRelayOf(brief: SupplyBrief): PlanCircuit['turnOnRelay'] {
  const { method, relay } = turnOnOf(brief) ?? {}
  if (relay === undefined) return undefined
  const { fuseA, coilCurrentA } = relay
  return {
    fuseA,
    coilCurrentA,
    coilVoltageV: brief.supply.systemVoltageV,
    designation: feedSize(fuseA),
    wireM: 2 * RELAY_WIRE_M,
    ...(method === 'accessory-relay' ? { tapFuseA: TAP_FUSE_A } : {})
  }
}
