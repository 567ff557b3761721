/** What the vehicle itself does to the supply of a plan: it starts its engine, and may govern its charging. */
import type { CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import type { Assumption } from '../../../domain/outcome.ts'
import { twelves } from '../../../domain/twelves.ts'
import { usual } from '../../request/plan-usual.ts'
import { starterSource } from '../battery-sources.ts'
import { minusOf, points } from './graph-pieces.ts'

/** Volts that the usual load test of a battery leaves, for each 12 V. From memory. */
const LOADED_V = 9.6
/** And its current, of the cold cranking current. From memory. */
const LOADED_SHARE = 0.5

/** Orange cables turn the engine, where there is one. */
const turnsByStarter = ({ car: { drive }, supply: { charging } }: PlanRequest): boolean =>
  drive !== 'hybrid' && drive !== 'electric' && charging?.kind !== 'converter'

/** Half of what the battery is made to give in the cold, in whole amperes; else what a middling engine takes. */
function usualStarter({ supply }: PlanRequest): { readonly value: number; readonly why: string } {
  const { coldCrankingA } = starterSource(supply)
  if (coldCrankingA === undefined) return usual.starterA
  return { value: Math.round(LOADED_SHARE * coldCrankingA), why: 'a starter takes half the cold cranking current' }
}

/**
 * The starter as the resistance that takes its current at the voltage of a loaded battery.
 *
 *   R = 9.6 V/I for each 12 V
 *
 * @source load test of a starter battery, half the cold cranking current above 9.6 V, from memory
 * @check  680 A of cold cranking current: 340 A, 28.2 mΩ
 */
export function starterOf(request: PlanRequest): CircuitRequest['starter'] {
  if (!turnsByStarter(request)) return undefined
  const currentA = request.supply.starterA ?? usualStarter(request).value
  const resistanceOhm = (LOADED_V * twelves(request.supply.systemVoltageV)) / currentA
  return { plus: points.batteryPlus, minus: minusOf(request), resistanceOhm }
}

export function starterAssumed(request: PlanRequest): readonly Assumption[] {
  if (!turnsByStarter(request) || request.supply.starterA !== undefined) return []
  return [{ field: 'supply.starterA', ...usualStarter(request) }]
}

const isGoverned = ({ supply: { batterySensor, charging } }: PlanRequest): boolean =>
  batterySensor === true && charging?.kind === 'alternator'

/** A battery sensor is there for the vehicle to govern its alternator by. */
export function chargingEnds(request: PlanRequest): { readonly lowestSetV?: number; readonly highestSetV?: number } {
  if (!isGoverned(request)) return {}
  const each12 = twelves(request.supply.systemVoltageV)
  return { lowestSetV: usual.governedLowestV.value * each12, highestSetV: usual.governedHighestV.value * each12 }
}

export const endsAssumed = (request: PlanRequest): readonly Assumption[] =>
  isGoverned(request)
    ? [usual.governedLowestV, usual.governedHighestV].map(end => ({ field: 'supply.charging', ...end }))
    : []
