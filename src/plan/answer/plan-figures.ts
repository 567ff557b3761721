/** The chief figures of a plan, each from the part that has it. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanFigures } from '../../contract/systems/plan-summary.ts'
import { tuningIn } from '../../domain/enclosure/response/tuning-in.ts'
import { present } from '../../domain/present.ts'
import { airIn } from '../enclosure/parts/plan-box.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { PlanParts } from './plan-parts.ts'

function ofBox({ box }: PlanParts): PlanFigures {
  if (!box.done) return {}
  const { outer, massKg } = box.outcome.result
  return {
    netVolumeM3: airIn(box).netVolumeM3,
    widthM: outer.widthM,
    heightM: outer.heightM,
    depthM: outer.depthM,
    massKg
  }
}

/** Of the port by a leaflet, where there is no response. */
export function builtTuningHz({ port, response }: Pick<PlanParts, 'port' | 'response'>): number | undefined {
  if (response.done) return tuningIn(response.outcome.result.scalars)
  return port?.done ? port.outcome.result.tuningHz : undefined
}

function ofResponse({ response }: PlanParts): PlanFigures {
  if (!response.done) return {}
  const { scalars, limits } = response.outcome.result
  const { coneExcursionM, portAirSpeedMPerS } = limits?.atDrive ?? {}
  return {
    peakLevelDb: scalars.peakLevelDb,
    ...present({ tuningHz: tuningIn(scalars), f3Hz: scalars.f3Hz, coneExcursionM, airSpeedMPerS: portAirSpeedMPerS })
  }
}

function ofSupply({ current }: PlanParts, { trunk }: PlanCircuit): PlanFigures {
  const { fullSineA, averageA } = current.done ? current.outcome.result.currents : {}
  return present({
    fullSineA,
    averageA,
    powerCable: trunk?.designation,
    cableRuns: trunk?.runs,
    fuseA: trunk?.fuse?.ratingA
  })
}

/** @param fits  whether a box fits: of one that does not nothing is told */
export function planFigures(
  parts: PlanParts,
  circuit: PlanCircuit,
  joined: JoinedDrivers | undefined,
  fits: boolean
): PlanFigures {
  return {
    ...present({ loadOhm: joined?.loadOhm, powerW: joined?.powerW, gainV: joined?.targetVoltageV }),
    ...(fits ? { ...ofBox(parts), ...present({ tuningHz: builtTuningHz(parts) }), ...ofResponse(parts) } : {}),
    ...ofSupply(parts, circuit)
  }
}
