/** What a caller says of the whole job, in SI: what was bought, where it goes, what feeds it. */
import type { shellFaces } from '../../contract/boxes/words.ts'
import type { DesignGoal, PlannedKind } from '../../contract/systems/words.ts'

export interface PlanEnclosure {
  /** Chosen by driver and space when absent. */
  readonly kind?: PlannedKind
  /** What volume, tuning and port are searched for. */
  readonly goal?: DesignGoal
  readonly qtc?: number
  readonly netVolumeM3?: number
  readonly tuningHz?: number
  readonly portShape?: 'round' | 'slot'
  readonly portFace?: (typeof shellFaces)[number]
  readonly portAreaM2?: number
  readonly airSpeedMPerS?: number
}
