/** A converter between the vehicle and amplifiers of another voltage, beside them: its rating, its cables, its ground. */
import type { SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { chooseCable } from '../../domain/circuit/choice/choose-cable.ts'
import { amplifierVoltage } from '../../domain/circuit/load/converter-load.ts'
import { present } from '../../domain/present.ts'
import { runPart } from '../request/part.ts'
import { usual } from '../request/plan-usual.ts'
import { bootSurroundings, dropAllowedV } from './plan-branches.ts'
import { type BranchRun, type PowerRun, sizeOf } from './plan-run.ts'

export type PlannedConverter = NonNullable<PlanCircuit['converter']>

/** What the amplifiers are made for [V]. */
export const amplifierV = ({ supply }: Pick<PlanRequest, 'supply'>): number =>
  amplifierVoltage(supply.systemVoltageV, supply.converter)

/** Output to block: at most the rating flows in it, and nothing else feeds it. */
function leadOf(request: PlanRequest, ratedA: number, heavyCurrentA: number): PowerRun | undefined {
  const { gaugeSystem, insulationMaterial } = request.supply
  const lengthM = usual.converterLeadM.value
  const part = runPart(
    {
      currentA: ratedA,
      heavyCurrentA,
      systemVoltageV: amplifierV(request),
      positiveLengthM: lengthM,
      return: { kind: 'cable' as const, lengthM },
      dropLimitV: dropAllowedV(request),
      ...bootSurroundings(request),
      ...present({ gaugeSystem, insulationMaterial })
    },
    chooseCable
  )
  const size = part.done ? sizeOf(part.outcome.result) : undefined
  if (size === undefined || size.runs > 1 || !part.done) return undefined
  const { fuse } = part.outcome.result
  const returnBy = request.supply.return.kind === 'chassis' ? 'body' : 'cable'
  return { ...size, positiveLengthM: lengthM, returnBy, returnLengthM: lengthM, ...present({ fuse }) }
}

/** Its minus to the ground point, as thick as what leaves it; a return cable of one amplifier ends at it and needs none. */
function groundOf(request: PlanRequest, designation: string | undefined): Pick<PlannedConverter, 'ground'> {
  if (designation === undefined || request.supply.return.kind !== 'chassis') return {}
  return { ground: { designation, lengthM: usual.converterLeadM.value } }
}

/** @returns nothing without one, or where no cable passes for its output */
export function converterOf(
  request: PlanRequest,
  { converter, currents }: SupplyCurrent,
  branches: readonly BranchRun[]
): PlannedConverter | undefined {
  const [first] = branches
  if (converter === undefined || first === undefined) return undefined
  const { nominalV, outputV, ratedA, ratedInputA } = converter
  const unit = { inputV: request.supply.systemVoltageV, nominalV, outputV, ratedA, ratedInputA }
  if (branches.length === 1) return { ...unit, ...groundOf(request, first.designation) }
  const lead = leadOf(request, ratedA, Math.min(ratedA, currents.heavyA))
  return lead && { ...unit, lead }
}
