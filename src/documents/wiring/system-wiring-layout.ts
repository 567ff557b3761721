/** Where each device of the wiring drawing stands: one row an amplifier, the bass amplifier last, beside its drivers. */

export interface WiringLayout {
  readonly width: number
  readonly plusY: readonly number[]
  readonly minusY: number
  readonly batteryHeight: number
  readonly blockX: number
  readonly blockWidth: number
  readonly amplifierX: number
  /** Tops of the amplifiers, the bass amplifier last. */
  readonly rows: readonly number[]
  readonly bassY: number
  readonly driversX: number
  readonly secondY: number
  readonly returnY: number
  readonly sourceY: number
  readonly legendY: number
}

export const TOP = 84
export const OTHER_HEIGHT = 84
export const BASS_HEIGHT = 150
const BLOCK_WIDTH = 56
export const SECOND_HEIGHT = 84
/** Between cables side by side. */
const RUN_PITCH = 22
const ROW_PITCH = 134
/** What a capacitor below the only amplifier takes. */
const CAPACITOR_PITCH = 42

export function wiringLayout({ runs, block, secondBattery, capacitor, driverCount }: SystemWiring): WiringLayout {
  const others = block?.others.length ?? 0
  const bassY = TOP + others * ROW_PITCH
  const extra = Math.max(0, runs - 2) * RUN_PITCH
  const batteryHeight = 118 + extra
  const secondY = TOP + batteryHeight + 56
  const amplifierX = block === undefined ? 400 : 690
  const drivers = Math.min(driverCount, 4) * 76 + 6
  const beside = block === undefined && capacitor !== undefined ? CAPACITOR_PITCH : 0
  const sourceY = Math.max(bassY + 206 + beside, secondBattery === undefined ? 0 : secondY + SECOND_HEIGHT + 30)
  return {
    width: block === undefined ? 760 : 1050,
    plusY: Array.from({ length: runs }, (_, index) => 111 + index * RUN_PITCH),
    minusY: 176 + extra,
    batteryHeight,
    blockX: block?.title === 'Converter' ? 372 : 400,
    blockWidth: block?.title === 'Converter' ? 84 : BLOCK_WIDTH,
    amplifierX,
    rows: Array.from({ length: others + 1 }, (_, index) => TOP + index * ROW_PITCH),
    bassY,
    driversX: amplifierX + 240,
    secondY,
    returnY: bassY + BASS_HEIGHT + 22,
    sourceY,
    legendY: Math.max(sourceY + 86, bassY - 28 + drivers + 20)
  }
}
/** From the distribution block to one amplifier. */

export interface WiringBranch {
  /** Rating and type; absent when there is no fused branch. */
  readonly fuse?: string
  readonly positive: string
  readonly negative: string
}
export interface WiringBlock {
  /** A converter stands in its place before a single amplifier. */
  readonly title: 'Block' | 'Converter'
  readonly ways: readonly string[]
  readonly bass: WiringBranch
  readonly others: readonly (WiringBranch & { readonly amplifier: string })[]
}
export interface WiringBattery {
  readonly name: string
  /** Rating and type; absent where its lead could not be planned. */
  readonly fuse?: string
  readonly positive?: string
  readonly negative?: string
}
/** What ties the second battery to the first, in the trunk before the block. */
export interface WiringLink {
  readonly title: string
  readonly lines: readonly string[]
  /** At the end of its output, with the cable there, a line each. */
  readonly fuse?: readonly string[]
}
export interface SystemWiring {
  readonly battery: string
  readonly secondBattery?: WiringBattery
  readonly link?: WiringLink
  /** Whether each cable of the trunk has the same fuse at its far end. */
  readonly fusedAtEnd?: boolean
  /** Its size and its leads. */
  readonly capacitor?: readonly string[]
  /** Cables of the trunk side by side, each with its fuse. */
  readonly runs: number
  /** Rating and type; absent when the fuse could not be rated. */
  readonly fuse?: string
  readonly fusePlace?: string
  readonly positive: string
  readonly negative: string
  /** `body`: both ends go to the body of the car; `cable`: a cable runs back to the battery. */
  readonly returnBy: 'body' | 'cable'
  /** Absent with one amplifier. */
  readonly block?: WiringBlock
  readonly amplifier: readonly string[]
  readonly speakerWire: string
  readonly load: string
  readonly driverCount: number
  /** How the coils are joined, a sentence each. */
  readonly joints: readonly string[]
  readonly source: string
  readonly signal: string
  /** What stands between that lead and the amplifier. */
  readonly signalEnd?: string
  /** Absent when the amplifier wakes by the signal. */
  readonly turnOn?: string
  /** What belongs to the system and is not in the drawing, a sentence each. */
  readonly notDrawn: readonly string[]
}
