/** What the vehicle itself does to the supply of a plan: it starts its engine, and may govern its charging. */
import type { CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import type { Assumption } from '../../../domain/outcome.ts'
import { twelves } from '../../../domain/twelves.ts'
import { planDefaults } from '../../request/defaults.ts'
import type { SupplyBrief } from '../../request/supply-brief.ts'
import { points } from './graph-pieces.ts'

/** Orange cables turn the engine, where there is one. */
const turnsByStarter = ({ drive, supply: { charging } }: SupplyBrief): boolean =>
  drive !== 'hybrid' && drive !== 'electric' && charging?.kind !== 'converter'

/** Half of what the battery is made to give in the cold, in whole amperes; else what a middling engine takes. */
function usualStarter({ starter: { coldCrankingA } }: SupplyBrief): { readonly value: number; readonly why: string } {
  const { starterA, starterOfCranking } = planDefaults
  if (coldCrankingA === undefined) return { value: starterA.value, why: starterA.why }
  return { value: Math.round(starterOfCranking.value * coldCrankingA), why: starterOfCranking.why }
}

/**
 * The starter as the resistance that takes its current at the voltage of a loaded battery.
 *
 *   R = 9.6 V/I for each 12 V
 *
 * @source load test of a starter battery, half the cold cranking current above 9.6 V, from memory
 * @check  680 A of cold cranking current: 340 A, 28.2 mΩ
 */
export function starterOf(brief: SupplyBrief, minus: string): CircuitRequest['starter'] {
  if (!turnsByStarter(brief)) return undefined
  const currentA = brief.supply.starterA ?? usualStarter(brief).value
  const resistanceOhm = (planDefaults.starterVPer12V.value * twelves(brief.supply.systemVoltageV)) / currentA
  return { plus: points.batteryPlus, minus, resistanceOhm }
}

export function starterAssumed(brief: SupplyBrief): readonly Assumption[] {
  if (!turnsByStarter(brief) || brief.supply.starterA !== undefined) return []
  return [{ field: 'supply.starterA', ...usualStarter(brief) }]
}

const isGoverned = ({ supply: { batterySensor, charging } }: SupplyBrief): boolean =>
  batterySensor === true && charging?.kind === 'alternator'

/** A battery sensor is there for the vehicle to govern its alternator by. */
export function chargingEnds(brief: SupplyBrief): { readonly lowestSetV?: number; readonly highestSetV?: number } {
  if (!isGoverned(brief)) return {}
  const each12 = twelves(brief.supply.systemVoltageV)
  return {
    lowestSetV: planDefaults.governedLowestV.value * each12,
    highestSetV: planDefaults.governedHighestV.value * each12
  }
}

export const endsAssumed = (brief: SupplyBrief): readonly Assumption[] =>
  isGoverned(brief)
    ? [planDefaults.governedLowestV, planDefaults.governedHighestV].map(({ value, why }) => ({
        field: 'supply.charging',
        value,
        why
      }))
    : []
