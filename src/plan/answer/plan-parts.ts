/** Each part of a plan is what its own resource gives for its own request. */
import type { AmplifierMatch, AmplifierMatchRequest } from '../../contract/amplifiers/amplifier-matching.ts'
import type { CoilWiring, CoilWiringRequest } from '../../contract/coils/coil-wiring.ts'
import type { CircuitPart } from '../electric/graph/plan-graph.ts'
import type { SignalPart } from '../electric/plan-signal.ts'
import type { CablePart, CurrentPart } from '../electric/plan-supply.ts'
import type { FusePart } from '../electric/plan-trunk.ts'
import type { BoxPart } from '../enclosure/parts/plan-box.ts'
import type { SizingPart } from '../enclosure/parts/plan-candidates.ts'
import type { DriverPart } from '../enclosure/parts/plan-drivers.ts'
import type { PortPart } from '../enclosure/parts/plan-port.ts'
import type { ResponsePart } from '../enclosure/parts/plan-response.ts'
import type { SheetsPart } from '../enclosure/parts/plan-sheets.ts'
import type { Part } from '../request/part.ts'

export interface PlanParts {
  readonly matching: Part<AmplifierMatchRequest, AmplifierMatch>
  readonly wiring: Part<CoilWiringRequest, CoilWiring>
  readonly driver: DriverPart
  readonly sizing: SizingPart
  readonly port?: PortPart
  readonly box: BoxPart
  readonly response: ResponsePart
  readonly sheets: SheetsPart
  readonly current: CurrentPart
  readonly cable: CablePart
  readonly fuse: FusePart
  /** All of it together: every voltage and current of the plan. */
  readonly circuit: CircuitPart
  readonly signal: SignalPart
}
