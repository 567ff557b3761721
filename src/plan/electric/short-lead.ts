/** A short lead beside the amplifiers with its return: of a second battery, a charger or a converter. */
import type { CableChoice, CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { PowerRun } from '../../contract/systems/plan-circuit.ts'
import { chooseCable } from '../../domain/circuit/choice/choose-cable.ts'
import { present } from '../../domain/present.ts'
import type { Part } from '../request/part.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { sizeOf } from './plan-run.ts'

type Carried = Pick<CableChoiceRequest, 'currentA' | 'heavyCurrentA' | 'systemVoltageV' | 'source'>

interface ShortLead {
  /** Absent where no single size passes. */
  readonly run: PowerRun | undefined
  readonly part: Part<CableChoiceRequest, CableChoice>
}

/** @param lengthM  of the lead, and of its return */
export function shortLead(brief: SupplyBrief, carried: Carried, lengthM: number): ShortLead {
  const { dropAllowedV: dropLimitV, inTheBoot, returnBy, supply } = brief
  const { gaugeSystem, insulationMaterial } = supply
  const part = brief.run<CableChoiceRequest, CableChoice>(
    {
      ...carried,
      positiveLengthM: lengthM,
      return: { kind: 'cable', lengthM },
      dropLimitV,
      ...inTheBoot,
      ...present({ gaugeSystem, insulationMaterial })
    },
    chooseCable
  )
  const size = part.done ? sizeOf(part.outcome.result) : undefined
  if (size === undefined || size.runs > 1 || !part.done) return { run: undefined, part }
  const { fuse } = part.outcome.result
  return { run: { ...size, positiveLengthM: lengthM, returnBy, returnLengthM: lengthM, ...present({ fuse }) }, part }
}
