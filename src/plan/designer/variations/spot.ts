/** A box on or near the planned one, in the few figures that its sound follows from, and how it is heard. */
import type { Air } from '../../../domain/air/air.ts'
import { radiatorTuning } from '../../../domain/enclosure/alignment/passive-radiator.ts'
import type { RadiatorUnit } from '../../../domain/enclosure/alignment/radiator-sheet.ts'
import { tunedRadiators } from '../../../domain/enclosure/model/tuned-radiators.ts'
import { effectiveLengthM, endLengthM, tuningHz } from '../../../domain/port/port-length.ts'
import { present } from '../../../domain/present.ts'
import { type BoxCurves, type DriveLimits, solveBox } from '../evaluate/box-response.ts'
import type { DriverTables } from '../evaluate/driver-tables.ts'
import { solveLoaded } from '../evaluate/loaded-response.ts'
import { radiatorLoad } from '../evaluate/radiator-load.ts'

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
  /** Absent with the radiators: closed. */
  readonly port?: SpotPort
  readonly radiators?: SpotRadiators
}

interface SpotRadiators {
  readonly unit: RadiatorUnit
  readonly count: number
  readonly isFlat: boolean
  /** Of one, with what is added. */
  readonly massKg: number
}

/** Gain before the filters, and the protective high-pass that is set. */
export interface SpotDrive {
  readonly voltageV: number
  readonly highPassHz?: number
}

export const openAreaM2 = ({ port }: Spot): number | undefined => port && port.count * port.areaM2

export function spotTuningHz({ netVolumeM3, port, radiators }: Spot, { soundSpeedMPerS, stiffnessPa }: Air) {
  if (port !== undefined) {
    return tuningHz(port.lengthM + endLengthM(port.areaM2, port.endFactor), netVolumeM3, port, soundSpeedMPerS)
  }
  if (radiators === undefined) return undefined
  const { unit, count, massKg } = radiators
  return tunedRadiators({ ...unit, count, massKg }, netVolumeM3, stiffnessPa).tuningHz
}

/** The same box with its port cut, or its radiators weighted, for another tuning. */
export function retuned(spot: Spot, wantedHz: number, { soundSpeedMPerS, stiffnessPa }: Air): Spot {
  const { port, radiators, netVolumeM3 } = spot
  if (radiators !== undefined) {
    const { unit, count } = radiators
    const size = { count, areaM2: unit.areaM2 }
    const { massKg } = radiatorTuning(wantedHz, netVolumeM3, size, unit.complianceMPerN, stiffnessPa)
    return { ...spot, radiators: { ...radiators, massKg } }
  }
  if (port === undefined) return spot
  const ends = endLengthM(port.areaM2, port.endFactor)
  return { ...spot, port: { ...port, lengthM: effectiveLengthM(wantedHz, netVolumeM3, port, soundSpeedMPerS) - ends } }
}

/** What the spot is at one volt, its limits in it; the travel of radiators only where it is asked for. */
export function solveSpot(
  tables: DriverTables,
  spot: Spot,
  { drive, travels = false }: { readonly drive: DriveLimits; readonly travels?: boolean },
  into: BoxCurves
): void {
  const { netVolumeM3, leakQ, radiators } = spot
  const tuned = present({ tuningHz: spotTuningHz(spot, tables.air) })
  const leak = tuned.tuningHz === undefined ? {} : present({ leakQ })
  if (radiators === undefined || tuned.tuningHz === undefined) {
    solveBox(tables, { netVolumeM3, ...tuned, ...leak }, drive, into)
    return
  }
  const { unit, count, isFlat } = radiators
  const set = { netVolumeM3, tuningHz: tuned.tuningHz, count, isFlat, ...leak }
  const held = travels ? unit : { ...unit, travelM: Infinity }
  solveLoaded(tables, radiatorLoad(tables.air, { ...set, unit: held }, drive), drive, into)
}
