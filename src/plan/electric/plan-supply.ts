/** Amperes: what all amplifiers draw, the cable that carries it, the fuse that guards the cable. */
import type { CableChoice, CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { AmplifierOnSupply, CurrentRequest, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { Charger, PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { Caution } from '../../domain/caution.ts'
import { chooseCable } from '../../domain/circuit/choice/choose-cable.ts'
import { rateFuse } from '../../domain/circuit/fuse/rate-fuse.ts'
import { supplyCurrent } from '../../domain/circuit/load/supply-current.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { type Part, waitingFor } from '../request/part.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { converterOf, type PlannedConverter } from './converter.ts'
import { type Branches, namesOf, planBranches } from './plan-branches.ts'
import { type BranchRun, dropOf, sizeOf } from './plan-run.ts'
import { dropAssumed, type FusePart, trunkCable, trunkFuse, trunkRun } from './plan-trunk.ts'
import { chargerOf, type SecondLink, secondLead, secondLink } from './second-battery.ts'

export type CurrentPart = Part<CurrentRequest, SupplyCurrent>
export type CablePart = Part<CableChoiceRequest, CableChoice>

export interface PlannedSupply {
  readonly current: CurrentPart
  readonly cable: CablePart
  readonly fuse: FusePart
}

/** The power side as it is laid; a trunk without a size, or a branch without one, is absent. */
export interface PowerRuns {
  readonly trunk?: PowerRun
  readonly branches: readonly BranchRun[]
  /** Of the first amplifier for whose branch no size passes. */
  readonly missing?: string
  /** How a second battery is tied to the first. */
  readonly link?: SecondLink
  /** In place of a relay, for a battery of another kind. */
  readonly charger?: Charger
  /** Between the vehicle and amplifiers of another voltage. */
  readonly converter?: PlannedConverter
  /** From the second battery to the block; absent without one, or where no size passes. */
  readonly secondLead?: PowerRun
  /** Of the amplifiers on the run, the bass amplifier first. */
  readonly amplifiers: readonly string[]
  readonly cautions: readonly Caution[]
  readonly assumed: readonly Assumption[]
}

/** Sized for the most the amplifier may draw at the wired load, not for where the gain is left. */
function bassAmplifier({ bass }: SupplyBrief, { supplyPowerW, loadOhm }: JoinedDrivers): AmplifierOnSupply {
  return { ...bass, powerW: supplyPowerW, loadOhm }
}

function currentRequest(brief: SupplyBrief, joined: JoinedDrivers): CurrentRequest {
  const { systemVoltageV, charging, battery, secondBattery, capacitor, converter, otherAmplifiers = [] } = brief.supply
  return {
    amplifiers: [bassAmplifier(brief, joined), ...otherAmplifiers],
    systemVoltageV,
    ...present({ drive: brief.drive, converter, charging, battery, secondBattery, capacitor })
  }
}

/** What all amplifiers of the run draw. */
export const planCurrent = (brief: SupplyBrief, joined: JoinedDrivers): CurrentPart =>
  brief.run(currentRequest(brief, joined), supplyCurrent)

const NO_BRANCHES: Branches = { runs: [], cautions: [] }
const NO_RUNS = { branches: [], cautions: [], assumed: [] } as const

const undone = (names: readonly string[]) => ({ ...NO_RUNS, amplifiers: names })

function laidOut(brief: SupplyBrief, current: CurrentPart & { readonly done: true }) {
  const drawn = current.outcome.result
  const { amplifiers } = current.request
  const names = namesOf(amplifiers)
  const link = secondLink(brief, drawn)
  const shared = amplifiers.length > 1 || link !== undefined || drawn.converter !== undefined
  const task = { current: drawn, shared, ...present({ link }) }
  const cable = brief.run(trunkCable(brief, task), chooseCable)
  if (!cable.done) return { parts: { current, cable, fuse: waitingFor('a cable') }, runs: undone(names) }
  const size = sizeOf(cable.outcome.result)
  const fuse =
    size === undefined ? waitingFor('a cable that passes') : brief.run(trunkFuse(brief, task, size), rateFuse)
  const trunk = size === undefined ? undefined : trunkRun(brief, size, fuse, task)
  // behind a charger or a converter the trunk takes nothing of the drop
  const apart = link?.kind === 'charger' || drawn.converter !== undefined
  const leftV = brief.dropAllowedV - (apart ? 0 : dropOf(cable.outcome.result))
  const branches = task.shared ? planBranches(brief, amplifiers, drawn, trunk, leftV) : NO_BRANCHES
  const second = link === undefined ? undefined : secondLead(brief, drawn)
  return {
    parts: { current, cable, fuse },
    runs: {
      ...present({
        trunk,
        missing: branches.missing,
        link,
        secondLead: second?.run,
        charger: chargerOf(brief, link),
        converter: converterOf(brief, drawn, branches.runs)
      }),
      branches: branches.runs,
      amplifiers: names,
      cautions: [...branches.cautions, ...(second?.cautions ?? [])],
      assumed: [...dropAssumed(brief, task.shared), ...(second?.assumed ?? [])]
    }
  }
}

export function planSupply(
  brief: SupplyBrief,
  joined: JoinedDrivers | undefined
): PlannedSupply & { readonly runs: PowerRuns } {
  if (joined === undefined) {
    const part = waitingFor('the power the amplifier gives into the wired load')
    return {
      current: part,
      cable: part,
      fuse: part,
      runs: { ...NO_RUNS, amplifiers: [] }
    }
  }
  const current = planCurrent(brief, joined)
  if (!current.done) {
    const part = waitingFor('the current')
    return {
      current,
      cable: part,
      fuse: part,
      runs: { ...NO_RUNS, amplifiers: [] }
    }
  }
  const { parts, runs } = laidOut(brief, current)
  return { ...parts, runs }
}
