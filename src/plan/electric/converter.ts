/** A converter between the vehicle and amplifiers of another voltage, beside them: its rating, its cables, its ground. */
import type { SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { planDefaults } from '../request/defaults.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import type { BranchRun } from './plan-run.ts'
import { shortLead } from './short-lead.ts'

export type PlannedConverter = NonNullable<PlanCircuit['converter']>

/** Its minus to the ground point, as thick as what leaves it; a return cable of one amplifier ends at it and needs none. */
function groundOf({ returnBy }: SupplyBrief, designation: string): Pick<PlannedConverter, 'ground'> {
  if (returnBy === 'cable') return {}
  return { ground: { designation, lengthM: planDefaults.converterLeadM.value } }
}

/** @returns nothing without one, or where no cable passes for its output */
export function converterOf(
  brief: SupplyBrief,
  { converter, currents }: SupplyCurrent,
  branches: readonly BranchRun[]
): PlannedConverter | undefined {
  const [first] = branches
  if (converter === undefined || first === undefined) return undefined
  const { nominalV, outputV, ratedA, ratedInputA } = converter
  const unit = { inputV: brief.supply.systemVoltageV, nominalV, outputV, ratedA, ratedInputA }
  if (branches.length === 1) return { ...unit, ...groundOf(brief, first.designation) }
  // to the block at most the rating flows, and nothing else feeds it
  const carried = {
    currentA: ratedA,
    heavyCurrentA: Math.min(ratedA, currents.heavyA),
    systemVoltageV: brief.amplifierV
  }
  const { run: lead } = shortLead(brief, carried, planDefaults.converterLeadM.value)
  return lead && { ...unit, lead }
}
