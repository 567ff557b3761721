/** What is searched: drivers, limits, wish and room, with what the caller has fixed. */
import type { PlannedKind } from '../../../contract/systems/words.ts'
import type { RadiatorUnit } from '../../../domain/enclosure/alignment/radiator-sheet.ts'
import type { DriveLimits } from '../evaluate/box-response.ts'
import type { DriverTables } from '../evaluate/driver-tables.ts'
import type { Held, Programme } from '../evaluate/held-level.ts'
import type { Goal } from './defaults.ts'

/** How a volume, with or without a port, stands in the space. */
export interface Place {
  /** What the box takes from the space. */
  readonly outerM3: number
}

export interface Room<Placed extends Place> {
  /** Net volume of the smallest and the largest box worth a look. */
  readonly fromM3: number
  readonly toM3: number
  readonly closed: (netVolumeM3: number) => Placed | undefined
  readonly ported: (netVolumeM3: number, tuningHz: number, areaM2: number) => Placed | undefined
  /** A band-pass: behind and before the drivers, tuning and area of its port; absent where none is asked for. */
  readonly divided?: (netM3: number, frontM3: number, tuningHz: number, areaM2: number) => Placed | undefined
}

/** One way to set the radiators at hand into a box. */
export interface RadiatorWay<Placed extends Place> {
  readonly unit: RadiatorUnit
  readonly count: number
  readonly isFlat: boolean
  readonly stands: (netVolumeM3: number) => Placed | undefined
}

export interface DesignProblem<Placed extends Place> {
  readonly tables: DriverTables
  readonly limits: DriveLimits
  readonly airSpeedMPerS: number
  /** Leaks of a vented box, at its tuning. */
  readonly leakQ: number
  readonly programme: Programme
  /** Largest gain [V]. */
  readonly highestV?: number
  readonly gainStepDb: number
  /** Of the car, on the grid; zeros where nothing is known. */
  readonly seatGainDb: Float64Array
  readonly goal: Goal
  /** Mean level of the loudest system, where the goal is measured by it. */
  readonly referenceDb?: number
  readonly room: Room<Placed>
  readonly radiators?: readonly RadiatorWay<Placed>[]
  /** What the caller has fixed. */
  readonly kind?: PlannedKind
  readonly netVolumeM3?: number
  readonly frontVolumeM3?: number
  readonly tuningHz?: number
  readonly areaM2?: number
}

export interface FoundDesign<Placed extends Place> {
  readonly kind: PlannedKind
  readonly netVolumeM3: number
  /** Only of a band-pass. */
  readonly frontVolumeM3?: number
  readonly tuningHz?: number
  readonly areaM2?: number
  readonly place: Placed
  readonly held: Held
  readonly delayS: number
  readonly unevennessDb: number
  readonly score: number
}
