/** What a laid-out box is: the answer of `layOutBox`, in SI. */
import type { BoxShape, DisplacedItem } from '../../../contract/boxes/words.ts'
import type { BoxFit } from '../boot/box-fit.ts'
import type { Panel, Point3 } from '../shell/panel.ts'
import type { PortLayout } from '../slot/port-layout.ts'
import type { BoxVibration } from '../stiffness/box-vibration.ts'
import type { StandingWave } from '../stiffness/standing-waves.ts'

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

interface VolumeBalance {
  /** Outer envelope. */
  readonly externalM3: number
  /** Wood of the shell. */
  readonly boardM3: number
  /** Hollow before a recessed baffle; outside the panels, inside the envelope. */
  readonly recessM3: number
  /** Inside of the panels, empty. */
  readonly grossM3: number
  readonly displaced: Displaced
  readonly rows: readonly VolumeRow[]
  /** The air that acts as the spring. */
  readonly netM3: number
  /** The net volume asked for, and how far the box is from it [%]; present when asked. */
  readonly targetM3?: number
  readonly errorPercent?: number
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

export interface BoxLayout {
  readonly shape: BoxShape
  readonly outer: OuterSize
  readonly inner: { readonly widthM: number; readonly heightM: number; readonly depthM: number }
  readonly volume: VolumeBalance
  readonly chambers?: readonly Chamber[]
  readonly panels: readonly Panel[]
  /** Blanks of all parts, cut-outs not taken off [m²]. */
  readonly boardAreaM2: number
  readonly port?: PortLayout
  readonly vibration: BoxVibration
  readonly standingWaves: readonly StandingWave[]
  readonly fit?: BoxFit
  readonly clearances: readonly Clearance[]
  /** The whole box with its drivers and fittings, as far as their mass is given or estimated. */
  readonly massKg: number
  /** Wood alone, cut-outs taken off. */
  readonly boardMassKg: number
  readonly centreOfGravity: Point3
}
