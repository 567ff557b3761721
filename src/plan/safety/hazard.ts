/** What the register says of one danger, and what its conditions may look at. */

import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { Conductor, Drive } from '../../contract/supply/words.ts'
import type { HazardHands, HazardHarm } from '../../contract/systems/words.ts'

/** Given facts, or what a part of the plan found; nothing assumed. */
export interface SafetyFacts {
  readonly drive?: Drive
  readonly driverMassKg?: number
  readonly conductor?: Conductor
  readonly secondBattery: boolean
  readonly speakerLevel: boolean
  /** Codes that a part of the plan gave. */
  readonly found: ReadonlySet<CautionCode>
}

export interface Hazard {
  readonly id: string
  readonly harm: HazardHarm
  /** Absent: wherever one of its steps is. */
  readonly when?: (facts: SafetyFacts) => boolean
  /** Brought by what was chosen for this plan, not by the work as such. */
  readonly peculiar?: true
  /** Where it can happen, in any order; it is said at the first of them that a plan has. */
  readonly steps: readonly string[]
  readonly barrier: Said
  readonly proof: Said
  readonly hands: HazardHands
  /** The caution that says it; absent where the words of the step do. */
  readonly caution?: CautionCode
  /** Of one that no caution says; a caution brings its own. */
  readonly basis?: Said
}

/** Engine on board, for all that was told. */
export const burnsFuel = ({ drive }: SafetyFacts): boolean => drive !== 'electric'
