/** Every conductor of the system once, with its size, length and fuse: bill, picture and steps are views of this record. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanSignal } from '../../contract/systems/plan-request.ts'
import type { Caution } from '../../domain/caution.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import type { PlannedLoad } from '../load/plan-load.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { accessories } from './accessories.ts'
import { notPlanned, notPlannedCautions } from './not-planned.ts'
import { planLead } from './plan-lead.ts'
import type { SignalPart } from './plan-signal.ts'
import type { PowerRuns } from './plan-supply.ts'
import { planWires } from './plan-wires.ts'

interface PlannedCircuit {
  readonly circuit: PlanCircuit
  readonly cautions: readonly Caution[]
  readonly assumed: readonly Assumption[]
}

export function planCircuit(
  brief: SupplyBrief,
  load: PlannedLoad,
  runs: PowerRuns,
  asked: PlanSignal,
  signal: SignalPart
): PlannedCircuit {
  const { trunk, branches, amplifiers, cautions, assumed, converter } = runs
  const wires = planWires(load)
  const missing = notPlanned(brief, amplifiers, runs)
  return {
    circuit: {
      amplifiers,
      ...present({ trunk }),
      branches,
      ...present({ speakerWire: wires.toBox, insideWire: wires.inside }),
      signalLead: planLead(brief, asked, signal),
      ...present({ converter, batterySensor: brief.supply.batterySensor }),
      ...accessories(brief, runs),
      notPlanned: missing
    },
    cautions: [...cautions, ...wires.cautions, ...notPlannedCautions(missing)],
    assumed
  }
}
