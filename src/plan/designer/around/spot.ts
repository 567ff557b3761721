/** A box on or near the planned one, in the few figures that its sound follows from. */
import { effectiveLengthM, endLengthM, tuningHz } from '../../../domain/port/port-length.ts'
import { present } from '../../../domain/present.ts'
import type { BoxDesign } from '../evaluate/box-response.ts'

interface SpotPort {
  readonly count: number
  /** Of one. */
  readonly areaM2: number
  readonly lengthM: number
  /** Both ends, in radii. */
  readonly endFactor: number
}

export interface Spot {
  readonly netVolumeM3: number
  /** Leaks and the friction of the port together. */
  readonly leakQ?: number
  /** Absent: closed. */
  readonly port?: SpotPort
}

/** Gain before the filters, and the protective high-pass that is set. */
export interface SpotDrive {
  readonly voltageV: number
  readonly highPassHz?: number
}

export const openAreaM2 = ({ port }: Spot): number | undefined => port && port.count * port.areaM2

export const spotTuningHz = ({ netVolumeM3, port }: Spot, soundSpeedMPerS: number): number | undefined =>
  port && tuningHz(port.lengthM + endLengthM(port.areaM2, port.endFactor), netVolumeM3, port, soundSpeedMPerS)

/** The same box with its port cut for another tuning. */
export function retuned(spot: Spot, wantedHz: number, soundSpeedMPerS: number): Spot {
  const { port, netVolumeM3 } = spot
  if (port === undefined) return spot
  const ends = endLengthM(port.areaM2, port.endFactor)
  return { ...spot, port: { ...port, lengthM: effectiveLengthM(wantedHz, netVolumeM3, port, soundSpeedMPerS) - ends } }
}

export const designOf = (spot: Spot, soundSpeedMPerS: number): BoxDesign => {
  const hz = spotTuningHz(spot, soundSpeedMPerS)
  return {
    netVolumeM3: spot.netVolumeM3,
    ...present({ tuningHz: hz, leakQ: hz === undefined ? undefined : spot.leakQ })
  }
}
