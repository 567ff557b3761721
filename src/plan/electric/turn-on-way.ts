/** How the amplifiers are switched on, decided once for bill, picture, steps and circuit. */

import type { TurnOn } from '../../contract/signals/signal-result.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { assumptions } from '../../domain/assume.ts'
import { ampacity } from '../../domain/circuit/cable/ampacity.ts'
import { cableSize } from '../../domain/circuit/cable/cable-size.ts'
import { cableDefaults } from '../../domain/circuit/cable/defaults.ts'
import { turnOn } from '../../domain/signal/turn-on.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { wiringDefaults } from './defaults.ts'

/** The thinnest that its fuse guards in the cabin, its insulation unknown. */
function feedSize(fuseA: number): string {
  const { insulationC, ambientCabinC, bundledConductors } = cableDefaults
  const around = {
    insulationC: insulationC.value,
    ambientC: ambientCabinC.value,
    bundledConductors: bundledConductors.value
  }
  const sold = wiringDefaults.feedSizes.value
  const guarded = sold.find(
    size => (ampacity(cableSize(size, undefined, 'size'), 'copper', around).ampacityA ?? 0) >= fuseA
  )
  return guarded ?? (sold.at(-1) as string)
}

/** @returns nothing where nothing was said of it; its defaults are told by the part `signal`, which decides the same */
export function turnOnOf({ turnOn: asked, amplifierV, supply }: SupplyBrief): TurnOn | undefined {
  if (asked === undefined) return undefined
  return turnOn(asked, { amplifierV, vehicleV: supply.systemVoltageV }, assumptions())
}

/** From one amplifier to the next, as far as over the block between them [m]; nothing with one amplifier. */
export const jumperM = ({ supply, branchM }: SupplyBrief): number | undefined =>
  supply.otherAmplifiers === undefined ? undefined : 2 * branchM

/** As thick as the wire it goes on from: behind a relay that which its fuse asks. */
export const jumperSize = ({ turnOnRelay }: Pick<PlanCircuit, 'turnOnRelay'>): string =>
  turnOnRelay?.designation ?? wiringDefaults.turnOnSize.value

export function turnOnRelayOf(brief: SupplyBrief): PlanCircuit['turnOnRelay'] {
  const { method, relay } = turnOnOf(brief) ?? {}
  if (relay === undefined) return undefined
  const { fuseA, coilCurrentA } = relay
  return {
    fuseA,
    coilCurrentA,
    coilVoltageV: brief.supply.systemVoltageV,
    designation: feedSize(fuseA),
    wireM: 2 * wiringDefaults.relayWireM.value,
    ...(method === 'accessory-relay' ? { tapFuseA: wiringDefaults.tapFuseA.value } : {})
  }
}
