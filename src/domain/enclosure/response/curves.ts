/** Curves over frequency, from the complex amplitudes of a solved network. Excursion and air speed are peak, all else RMS. */

import type { PartCurve } from '../../../contract/enclosures/response.ts'
import type { ComplexColumn } from '../../../numeric/linear/complex-column.ts'
import { REFERENCE_PRESSURE_PA } from '../../constants.ts'
import { branchFlow } from '../../network/branch-flow.ts'
import type { Solution } from '../../network/solution.ts'
import type { Opening } from '../model/built-network.ts'
import { DISTANCE_M, type ResponseSystem } from '../model/response-system.ts'

type Curve = number[]

export interface ResponseCurves {
  readonly frequencyHz: Curve
  readonly levelDb: Curve
  /** Of the sound pressure against the source voltage, without travel time. */
  readonly phaseDeg: Curve
  readonly groupDelayS: Curve
  /** Peak, one way. */
  readonly coneExcursionM: Curve
  /** RMS. */
  readonly coneVelocityMPerS: Curve
  /** At the terminals of the driver group. */
  readonly impedanceOhm: Curve
  readonly impedancePhaseDeg: Curve
  /** RMS into the driver group. */
  readonly currentA: Curve
  readonly apparentPowerVa: Curve
  /** RMS inside the chambers. */
  readonly rearChamberPressurePa?: Curve
  readonly frontChamberPressurePa?: Curve
  /** Peak, mean over the area of one port. */
  readonly rearPortAirSpeedMPerS?: Curve
  readonly frontPortAirSpeedMPerS?: Curve
  /** Peak, one unit. */
  readonly passiveRadiatorExcursionM?: Curve
  readonly frontPassiveRadiatorExcursionM?: Curve
}

const DEGREES = 180 / Math.PI
/** Added to a squared pressure ratio: the level of silence is −300 dB, not minus infinity. */
const SILENCE = 1e-30

/** Allocated at its length and then filled with doubles only: the quickest plain array. */
const empty = (length: number): Curve => new Array(length)

/**
 * Level of the far field in half space.
 *
 *   p = ρ·ω·|U|·E/(2πr)    L = 20·lg(p/20 µPa)
 *
 * @source point source on an infinite plane: Kinsler et al., "Fundamentals of Acoustics" (from memory)
 */
export function levelCurve(
  { radiated: { re, im }, omegas }: Solution,
  densityKgPerM3: number,
  voltageV: number
): Curve {
  const scale = ((densityKgPerM3 * voltageV) / (2 * Math.PI * DISTANCE_M * REFERENCE_PRESSURE_PA)) ** 2
  const values = empty(omegas.length)
  for (let k = 0; k < omegas.length; k++) {
    const omega = omegas[k] as number
    const r = re[k] as number
    const i = im[k] as number
    values[k] = 10 * Math.log10(scale * omega * omega * (r * r + i * i) + SILENCE)
  }
  return values
}

/** τ = −dφ/dω = −Im(U'/U); the factor jω of the pressure turns by no angle. */
export function groupDelayCurve({ radiated: { re, im, dre, dim }, omegas }: Solution): Curve {
  const values = empty(omegas.length)
  for (let k = 0; k < omegas.length; k++) {
    const r = re[k] as number
    const i = im[k] as number
    const size = r * r + i * i
    values[k] = size > 0 ? ((dre[k] as number) * i - (dim[k] as number) * r) / size : 0
  }
  return values
}

/** Phase of p = jωρU/(2πr): 90° ahead of U. */
function phaseCurve({ radiated: { re, im }, omegas }: Solution): Curve {
  const values = empty(omegas.length)
  for (let k = 0; k < omegas.length; k++) values[k] = Math.atan2(re[k] as number, -(im[k] as number)) * DEGREES
  return values
}

function modulus({ re, im }: Pick<ComplexColumn, 're' | 'im'>, scale: number): Curve {
  const values = empty(re.length)
  for (let k = 0; k < re.length; k++) {
    const r = re[k] as number
    const i = im[k] as number
    values[k] = scale * Math.sqrt(r * r + i * i)
  }
  return values
}

/** x = √2·|u|/ω */
export function excursionCurve({ velocities, omegas }: Solution, voltageV: number, group = 0): Curve {
  const values = modulus(velocities[group] as ComplexColumn, Math.SQRT2 * voltageV)
  for (let k = 0; k < values.length; k++) values[k] = (values[k] as number) / (omegas[k] as number)
  return values
}

function impedanceCurves({ terminal, current, omegas }: Solution) {
  const impedanceOhm = empty(omegas.length)
  const impedancePhaseDeg = empty(omegas.length)
  const { re: tRe, im: tIm } = terminal
  const { re: iRe, im: iIm } = current
  for (let k = 0; k < omegas.length; k++) {
    const tr = tRe[k] as number
    const ti = tIm[k] as number
    const ir = iRe[k] as number
    const ii = iIm[k] as number
    impedanceOhm[k] = Math.sqrt((tr * tr + ti * ti) / (ir * ir + ii * ii))
    impedancePhaseDeg[k] = Math.atan2(ti * ir - tr * ii, tr * ir + ti * ii) * DEGREES
  }
  return { impedanceOhm, impedancePhaseDeg }
}

/** √2·|U|/(n·S): peak air speed in one port. */
export function airSpeed(solution: Solution, { branch, count, areaM2 }: Opening, voltageV: number): Curve {
  const flow = branchFlow(solution, branch)
  const scale = (Math.SQRT2 * voltageV) / (count * areaM2)
  const values = empty(flow.length)
  for (let k = 0; k < flow.length; k++) values[k] = scale * (flow[k] as number)
  return values
}

/** √2·|U|/(n·S·ω): peak excursion of one radiator. */
export function radiatorExcursion(solution: Solution, opening: Opening, voltageV: number): Curve {
  const values = airSpeed(solution, opening, voltageV)
  for (let k = 0; k < values.length; k++) values[k] = (values[k] as number) / (solution.omegas[k] as number)
  return values
}

/** RMS inside the chamber of that name; nothing where there is none. */
export function chamberPressure(system: ResponseSystem, solution: Solution, name: string): Curve | undefined {
  const column = solution.pressures[system.chamberNames.indexOf(name)]
  return column === undefined ? undefined : modulus(column, system.voltageV)
}

function chamberCurves(system: ResponseSystem, solution: Solution) {
  const { ports, radiators, voltageV } = system
  const speed = (name: string) => {
    const port = ports.find(opening => opening.name === name)
    return port === undefined ? undefined : airSpeed(solution, port, voltageV)
  }
  const excursion = (name: string) => {
    const unit = radiators.find(opening => opening.name === name)
    return unit === undefined ? undefined : radiatorExcursion(solution, unit, voltageV)
  }
  return {
    rearChamberPressurePa: chamberPressure(system, solution, 'rear'),
    frontChamberPressurePa: chamberPressure(system, solution, 'front'),
    rearPortAirSpeedMPerS: speed('rear'),
    frontPortAirSpeedMPerS: speed('front'),
    passiveRadiatorExcursionM: excursion('rear'),
    frontPassiveRadiatorExcursionM: excursion('front')
  }
}

/** Every named part of a custom enclosure or of isobaric pairs. */
export function partCurves(system: ResponseSystem, solution: Solution): readonly PartCurve[] {
  const { voltageV } = system
  return [
    ...system.groupNames.map((name, group) => ({
      part: 'drivers' as const,
      name,
      excursionM: excursionCurve(solution, voltageV, group)
    })),
    ...system.chamberNames.map((name, node) => ({
      part: 'chamber' as const,
      name,
      pressurePa: modulus(solution.pressures[node] as ComplexColumn, voltageV)
    })),
    ...system.ports.map(port => ({
      part: 'port' as const,
      name: port.name,
      airSpeedMPerS: airSpeed(solution, port, voltageV)
    })),
    ...system.radiators.map(unit => ({
      part: 'passive-radiator' as const,
      name: unit.name,
      excursionM: radiatorExcursion(solution, unit, voltageV)
    }))
  ]
}

type Defined<T> = { readonly [Key in keyof T]: Exclude<T[Key], undefined> }

function defined<T extends object>(fields: T): Partial<Defined<T>> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<Defined<T>>
}

/** Every curve of a system at its source voltage. */
export function responseCurves(
  system: ResponseSystem,
  solution: Solution,
  frequencyHz: readonly number[]
): ResponseCurves {
  const { voltageV, air } = system
  const currentA = modulus(solution.current, voltageV)
  const apparentPowerVa = modulus(solution.terminal, voltageV)
  for (let k = 0; k < currentA.length; k++)
    apparentPowerVa[k] = (apparentPowerVa[k] as number) * (currentA[k] as number)
  return {
    frequencyHz: [...frequencyHz],
    levelDb: levelCurve(solution, air.densityKgPerM3, voltageV),
    phaseDeg: phaseCurve(solution),
    groupDelayS: groupDelayCurve(solution),
    coneExcursionM: excursionCurve(solution, voltageV),
    coneVelocityMPerS: modulus(solution.velocities[0] as ComplexColumn, voltageV),
    ...impedanceCurves(solution),
    currentA,
    apparentPowerVa,
    ...(system.custom ? {} : defined(chamberCurves(system, solution)))
  }
}
