/** What the wiring picture carries: devices, conductors by their number, fuses and places, all as text. */
import type { Language } from '../../domain/say.ts'

/** A conductor as picture, table and steps name it: its number in the table, and what stands beside the line. */
export interface WiringLine {
  /** Absent where it could not be planned. */
  readonly number?: number
  readonly text: string
}

/** From the distribution block to one amplifier. */
export interface WiringBranch {
  /** Rating and type; absent when there is no fused branch. */
  readonly fuse?: string
  readonly positive: WiringLine
  readonly negative: WiringLine
}
export interface WiringBlock {
  /** A converter stands in its place before a single amplifier. */
  readonly kind: 'block' | 'converter'
  readonly title: string
  readonly lines: readonly string[]
  readonly bass: WiringBranch
  /** `turnOn` comes from the amplifier before it. */
  readonly others: readonly (WiringBranch & { readonly amplifier: string; readonly turnOn?: WiringLine })[]
}
export interface WiringBattery {
  readonly name: string
  /** Rating and type; absent where its lead could not be planned. */
  readonly fuse?: string
  readonly positive?: WiringLine
  readonly negative?: WiringLine
}
/** A thin wire that comes in beside a device, over its small fuse. */
export interface WiringTap {
  readonly fuse: string
  readonly line: WiringLine
}
/** What ties the second battery to the first, in the trunk before the block. */
export interface WiringLink {
  readonly title: string
  readonly lines: readonly string[]
  /** At the end of its output, and that output. */
  readonly fuse?: string
  readonly output?: WiringLine
  /** From what is live while the engine runs. */
  readonly tap?: WiringTap
}
export interface SystemWiring {
  readonly language: Language
  readonly battery: readonly string[]
  readonly secondBattery?: WiringBattery
  readonly link?: WiringLink
  /** Whether each cable of the trunk has the same fuse at its far end. */
  readonly fusedAtEnd?: boolean
  /** Its size, and its leads. */
  readonly capacitor?: { readonly text: string; readonly leads: WiringLine }
  /** Rating and type; absent when the fuse could not be rated. */
  readonly fuse?: string
  readonly fusePlace?: string
  readonly positive: WiringLine
  readonly negative: WiringLine
  /** `body`: both ends go to the body of the car; `cable`: a cable runs back to the battery. */
  readonly returnBy: 'body' | 'cable'
  /** Absent with one amplifier. */
  readonly block?: WiringBlock
  readonly amplifier: readonly string[]
  readonly speakerWire: WiringLine
  /** Absent where none could be sized. */
  readonly insideWire?: WiringLine
  readonly load: string
  /** Of the amplifier that drive such a load each. */
  readonly outputs: number
  readonly driverCount: number
  /** How the coils are joined, a sentence each. */
  readonly joints: readonly string[]
  readonly source: string
  readonly signal: WiringLine
  /** What stands between that lead and the amplifier. */
  readonly signalEnd?: string
  /** Absent when the amplifier wakes by the signal. */
  readonly turnOn?: WiringLine
  /** At the beginning of that wire, where it taps a circuit of the vehicle. */
  readonly turnOnFuse?: string
  /** What that wire switches, and its feed. */
  readonly turnOnRelay?: { readonly lines: readonly string[]; readonly feed: WiringTap }
  /** What belongs to the system and is not in the drawing, a sentence each. */
  readonly notDrawn: readonly string[]
}
