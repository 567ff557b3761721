/** What one volt of the source does to everything that has a limit. */
import { type ResponseSystem, solveGrid } from '../model/response-system.ts'
import { airSpeed, excursionCurve, levelCurve, radiatorExcursion, responseCurves } from './curves.ts'

interface UnitOpening {
  /** Of the chamber in a preset, its own in a custom enclosure. */
  readonly name: string
  /** Peak air speed [m/s] or peak excursion [m] for one volt. */
  readonly perVolt: readonly number[]
}

export interface UnitDrive {
  readonly frequenciesHz: Float64Array
  readonly levelDb: readonly number[]
  /** Peak excursion of the cone that moves most [m]. */
  readonly coneM: readonly number[]
  /** RMS into the group [A]. */
  readonly currentA: readonly number[]
  /** RMS at the terminals of the group [V]. */
  readonly terminalV: readonly number[]
  readonly ports: readonly UnitOpening[]
  readonly radiators: readonly UnitOpening[]
}

/** @param system  with or without filters before it */
export function atOneVolt(system: ResponseSystem, frequenciesHz: Float64Array): UnitDrive {
  const solution = solveGrid(system, frequenciesHz)
  const curves = responseCurves({ ...system, voltageV: 1 }, solution, [...frequenciesHz])
  const cones = solution.velocities.map((_, group) => excursionCurve(solution, 1, group))
  return {
    frequenciesHz,
    levelDb: levelCurve(solution, system.air.densityKgPerM3, 1),
    coneM: curves.coneExcursionM.map((_, k) => Math.max(...cones.map(cone => cone[k] as number))),
    currentA: curves.currentA,
    terminalV: curves.currentA.map((current, k) => current * (curves.impedanceOhm[k] as number)),
    ports: system.ports.map(port => ({ name: port.name, perVolt: airSpeed(solution, port, 1) })),
    radiators: system.radiators.map(unit => ({ name: unit.name, perVolt: radiatorExcursion(solution, unit, 1) }))
  }
}
