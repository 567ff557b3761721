/** A second battery at the amplifiers: how it is tied to the first, its own fuse, cable and ground. */

import type { BatteryRequest, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { Charger, PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { Caution } from '../../domain/caution.ts'
import { converterDefaults } from '../../domain/circuit/load/defaults.ts'
import { unlike } from '../../domain/circuit/source/unlike-batteries.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { planDefaults } from '../request/defaults.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { wiringDefaults } from './defaults.ts'
import { cautionsOf } from './plan-branches.ts'
import { shortLead } from './short-lead.ts'

/** `relay` closes while the engine runs; `charger` raises or lowers the voltage for a battery of another kind; `joined` for good. */
export type SecondLink =
  | { readonly kind: 'relay' | 'joined' }
  | {
      readonly kind: 'charger'
      /** Its output [A]. */
      readonly ratedA: number
    }

/**
 * What a charger draws at its full output.
 *
 *   Iin = Iout·Uout/(η·Uin)
 *
 * @source conservation of energy; η and the voltages common practice, no source
 * @check  30 A → 40.9 A
 */
export const chargerInputA = (ratedA: number): number =>
  (ratedA * wiringDefaults.chargerOverNominal.value) / converterDefaults.efficiency.value

/** Ordinary music decides, since that is what it replaces on the whole. */
export function secondLink({ supply }: SupplyBrief, { currents }: SupplyCurrent): SecondLink | undefined {
  const { secondBattery, battery, source } = supply
  if (secondBattery === undefined) return undefined
  if (secondBattery.arrangement === 'parallel') return { kind: 'joined' }
  const first: Pick<BatteryRequest, 'chemistry'> = { ...battery, ...source }
  if (!unlike(first, secondBattery)) return { kind: 'relay' }
  const sold = wiringDefaults.chargersA.value
  return { kind: 'charger', ratedA: sold.find(ratedA => ratedA >= currents.averageA) ?? Math.max(...sold) }
}

/** Above all that the fuses of the trunk let through. */
export function relayRating({ runs, fuse }: PowerRun): number {
  const throughA = runs * (fuse?.ratingA ?? 0)
  const { relaysA, relayStepA } = wiringDefaults
  return relaysA.value.find(ratedA => ratedA >= throughA) ?? Math.ceil(throughA / relayStepA.value) * relayStepA.value
}

interface SecondLead {
  /** From the second battery to the block; absent where no single size passes. */
  readonly run: PowerRun | undefined
  readonly cautions: readonly Caution[]
  readonly assumed: readonly Assumption[]
}

export function chargerOf(brief: SupplyBrief, link: SecondLink | undefined): Charger | undefined {
  if (link?.kind !== 'charger') return undefined
  const { ratedA } = link
  const { supply, second: source } = brief
  const carried = { currentA: ratedA, heavyCurrentA: ratedA, systemVoltageV: supply.systemVoltageV, source }
  const { run: lead } = shortLead(brief, carried, planDefaults.secondLeadM.value)
  return lead && { ratedA, inputA: chargerInputA(ratedA), lead }
}

/** With the engine off it feeds all amplifiers alone. */
export function secondLead(brief: SupplyBrief, { sizing }: SupplyCurrent): SecondLead {
  const { value, why } = planDefaults.secondLeadM
  const { supply, second: source } = brief
  const { systemVoltageV } = supply
  const carried = { currentA: sizing.fullSineA, heavyCurrentA: sizing.heavyA, systemVoltageV, source }
  const { run, part } = shortLead(brief, carried, value)
  return {
    run,
    cautions: cautionsOf(part, 'Lead of the second battery'),
    assumed: [{ field: 'supply.secondBattery', value, why }]
  }
}
