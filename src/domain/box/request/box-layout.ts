import type { DisplacedItem } from '../../../contract/boxes/words.ts'

export interface OuterSize {
  readonly widthM: number
  readonly heightM: number
  /** At the floor of a wedge. */
  readonly depthM: number
  /** Wedge only: depth at the lid. */
  readonly topDepthM?: number
  /** Wedge only: lean of the sloped face from the vertical [°]. */
  readonly slopeDeg?: number
}

/** How a volume is known. */
export type Known = 'given' | 'computed' | 'estimated'

export interface VolumeRow {
  readonly item: DisplacedItem
  readonly volumeM3: number
  readonly known: Known
  /** How the figure was reached, in a sentence. */
  readonly how: string
}

/** Litres that each thing takes from the empty inside. */
export interface Displaced {
  readonly driversM3: number
  readonly portsM3: number
  readonly bracesM3: number
  readonly amplifierM3: number
  readonly terminalM3: number
  readonly liningM3: number
  readonly baffleRingsM3: number
  readonly cleatsM3: number
  readonly dividerM3: number
  readonly otherM3: number
  readonly totalM3: number
}

export interface Chamber {
  readonly name: 'rear' | 'front'
  readonly grossM3: number
  readonly displacedM3: number
  readonly netM3: number
}

export interface Clearance {
  /** What is measured, e.g. `driver 1 magnet to back`. */
  readonly between: string
  readonly availableM: number
  readonly neededM: number
  readonly passes: boolean
  readonly why: string
}
